//! A standard metal box as people write it.

use crate::quantity::Units;
use crate::tables::standard_boxes::StandardBox;
use crate::trade::TradeSize;

/// The standard boxes that a text could mean: none, the one, or several.
///
/// Shape words and dimensions may stand in any order: `square 4 x 2-1/8`, `4x2-1/8 square`, `3x2x3-1/2`, `4" octagonal 1-1/2`.
pub(super) fn meant(text: &str) -> Vec<StandardBox> {
    if let Some(exact) = StandardBox::read(text) {
        return vec![exact];
    }
    let Some((words, dimensions)) = parts(text) else { return Vec::new() };
    StandardBox::all()
        .filter(|known| {
            let (shape, own) = shape_and_dimensions(known.key());
            let fits = own == dimensions
                || dimensions.strip_prefix(own.get(..1).unwrap_or_default()) == Some(&own) && shape == "square"
                // the depth alone may be missing
                || (!dimensions.is_empty() && own.len() == dimensions.len() + 1 && own.starts_with(&dimensions))
                || (dimensions.is_empty() && own.is_empty());
            fits && words.iter().all(|word| shape_has(shape, word))
        })
        .collect()
}

/// Words of shape, and dimensions as sixteenths of an inch.
fn parts(text: &str) -> Option<(Vec<String>, Vec<u32>)> {
    let spelled = text.to_lowercase().replace(['"', '″'], " ").replace(['×', '*'], " x ");
    let (mut words, mut dimensions): (Vec<String>, Vec<u32>) = (Vec::new(), Vec::new());
    // whether the token before is a whole number, so that a fraction belongs to it
    let mut whole = false;
    for token in spelled.split([' ', '\t', ',']).flat_map(split_letters).filter(|token| !token.is_empty()) {
        let fraction = token.contains('/') && !token.contains('-');
        let after_whole = std::mem::replace(&mut whole, token.bytes().all(|byte| byte.is_ascii_digit()));
        match token.as_str() {
            "x" | "by" | "box" | "deep" | "in" | "metal" | "steel" => {}
            word if word.chars().all(char::is_alphabetic) => words.push(word.to_owned()),
            number => {
                let sixteenths = sixteenths(number)?;
                match dimensions.last_mut() {
                    Some(last) if fraction && after_whole => *last += sixteenths,
                    _ => dimensions.push(sixteenths),
                }
            }
        }
    }
    (!words.is_empty() || !dimensions.is_empty()).then_some((words, dimensions))
}

/// Splits `4x2-1/8` at its letters, and `square-4` at the dash between a word and a number.
fn split_letters(token: &str) -> Vec<String> {
    let mut parts: Vec<String> = vec![String::new()];
    for letter in token.chars() {
        let Some(last) = parts.last_mut() else { break };
        let changes =
            last.chars().next_back().is_some_and(|before| before.is_alphabetic() != letter.is_alphabetic());
        if changes { parts.push(letter.to_string()) } else { last.push(letter) }
    }
    parts.into_iter().map(|part| part.trim_matches('-').to_owned()).collect()
}

/// A dimension in sixteenths of an inch: `4`, `2-1/8`, `2.125`, `4-11/16`, `2⅛`.
fn sixteenths(text: &str) -> Option<u32> {
    if let Some(size) = TradeSize::read(text) {
        return size.figure(Units::Us).times(16.into()).whole_quotient(1.into());
    }
    let spelled = text.replace('⅛', "-1/8").replace('⅞', "-7/8");
    if let Ok(decimal) = spelled.parse::<crate::quantity::Decimal>() {
        let all = decimal.times(16.into());
        return all.is_whole().then(|| all.whole_quotient(1.into())).flatten();
    }
    let (whole, fraction) = spelled.rsplit_once('-').unwrap_or(("0", &spelled));
    let (above, below) = fraction.split_once('/')?;
    let (above, below): (u32, u32) = (above.parse().ok()?, below.parse().ok()?);
    let part = (matches!(below, 2 | 4 | 8 | 16) && above < below).then(|| above * 16 / below)?;
    Some(whole.parse::<u32>().ok()?.checked_mul(16)? + part)
}

/// The shape in a key of the table, and its dimensions in sixteenths of an inch.
fn shape_and_dimensions(key: &str) -> (&str, Vec<u32>) {
    match key.find(|letter: char| letter.is_ascii_digit()) {
        None => (key, Vec::new()),
        Some(start) => {
            let (shape, dimensions) = key.split_at(start);
            (shape.trim_end_matches('-'), dimensions.split('x').filter_map(sixteenths).collect())
        }
    }
}

fn shape_has(shape: &str, word: &str) -> bool {
    match word {
        "octagonal" | "octagon" | "oct" | "round" => shape == "octagonal",
        "square" | "sq" => shape == "square",
        "device" | "gangable" | "switch" => shape == "device",
        "masonry" => shape == "masonry",
        "single" | "multiple" | "fs" | "fd" => shape.split('-').any(|part| part == word),
        "cover" => shape.ends_with("cover"),
        _ => false,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn keys(text: &str) -> Vec<&'static str> {
        meant(text).into_iter().map(StandardBox::key).collect()
    }

    #[test]
    fn a_box_is_read_in_any_order_of_words() {
        for (text, key) in [
            ("square-4x2-1/8", "square-4x2-1/8"),
            ("Square 4 x 2-1/8", "square-4x2-1/8"),
            ("4x4x2-1/8", "square-4x2-1/8"),
            ("4\" x 2 1/8\" sq", "square-4x2-1/8"),
            ("4 11/16 x 2 1/8", "square-4-11/16x2-1/8"),
            ("4\" x 2-1/8\" sq", "square-4x2-1/8"),
            ("4 sq x 2.125", "square-4x2-1/8"),
            ("4-11/16 x 1-1/2 square", "square-4-11/16x1-1/2"),
            ("4-11/16x2-1/8", "square-4-11/16x2-1/8"),
            ("octagon 4x1-1/2", "octagonal-4x1-1/2"),
            ("3x2x3-1/2", "device-3x2x3-1/2"),
            ("3 x 2 x 3½ device", "device-3x2x3-1/2"),
            ("4 x 2-1/8 x 1-7/8", "device-4x2-1/8x1-7/8"),
            ("masonry 3-3/4x2x3-1/2", "masonry-3-3/4x2x3-1/2"),
            ("FS single cover", "fs-single-cover"),
        ] {
            assert_eq!(keys(text), [key], "{text}");
        }
        for standard in StandardBox::all() {
            assert_eq!(meant(standard.key()), [standard]);
            assert_eq!(meant(&standard.key().to_uppercase()), [standard]);
        }
    }

    #[test]
    fn what_could_be_several_boxes_is_all_of_them() {
        assert_eq!(keys("4x1-1/2"), ["octagonal-4x1-1/2", "square-4x1-1/2"]);
        assert_eq!(keys("4 square").len(), 3);
        assert_eq!(keys("3x2 device").len(), 6);
        assert_eq!(keys("FS").len(), 2);
        for none in ["", "nonsense", "5x5x2", "square 4x9", "round square 4x1-1/2", "3x2x3-1/3"] {
            assert!(keys(none).is_empty(), "{none}: {:?}", keys(none));
        }
    }
}
