//! What the parts of a review say of the box itself: its volume, its inside measures, its opening, where it is.

use super::reading::{number, wet_or_not, word};
use super::{
    BODY, CONSTRUCTION, DEPTHS, FILL, FREE, MOUNTING, PULL, Review, SUPPORTS, Says, Statement, TYPES,
    pointer_to,
};
use crate::quantity::Units;
use crate::tables::standard_boxes::StandardBox;
use serde_json::Value;

/// No device box, and no box of the table, has an opening that is larger every way, in inches.
const SMALL_OPENING: f64 = 7.5;

impl Review<'_> {
    fn standard(&self) -> Option<StandardBox> {
        StandardBox::read(self.get(FILL, "/enclosure/standard")?.as_str()?)
    }

    /// Whether rings or covers add to the box: its volume and depth are then not those of its mark or row.
    fn has_sections(&self) -> bool {
        !self.list(FILL, "/enclosure/sections").is_empty()
    }

    /// The volume of the box. A row of the table is a nominal size: a tenth more or less is the same box.
    pub(super) fn volume(&self) -> Vec<Statement> {
        let mut found = self.statements(&[
            (DEPTHS, "/enclosure/volume", number),
            (SUPPORTS, "/enclosure/volume", number),
            (MOUNTING, "/enclosure/volume", number),
            (CONSTRUCTION, "/enclosure/volume", number),
            (BODY, "/body/marked_volume", number),
        ]);
        if self.has_sections() {
            return found;
        }
        found.extend(self.inside_of_pull_box());
        match self.statement(FILL, "/enclosure/marked_volume", number) {
            Some(marked) => found.push(marked),
            None => found.extend(self.standard().and_then(|row| {
                let gangs = self.get(FILL, "/enclosure/gangs").and_then(Value::as_f64).unwrap_or(1.0);
                let each: f64 = row.volume(self.units).value.to_string().parse().ok()?;
                let volume = if row.shape().is_per_gang() { each * gangs } else { each };
                let says = Says::Between(volume * 0.9, volume * 1.1);
                Some(Statement { at: pointer_to(FILL, "/enclosure/standard"), says })
            })),
        }
        found
    }

    /// What the inside dimensions of a pull box come to. Its walls are not perfectly square: a quarter less is the same box.
    fn inside_of_pull_box(&self) -> Option<Statement> {
        let side = |at| self.get(PULL, at).and_then(Value::as_f64);
        let sides = [side("/box/width")?, side("/box/height")?, side("/box/depth")?];
        let cubic: f64 = sides.iter().product();
        let volume = match self.units {
            Units::Us => cubic,
            Units::Si => cubic / 1000.0,
        };
        let says = Says::Between(volume * 0.75, volume * 1.1);
        Some(Statement { at: pointer_to(PULL, "/box"), says })
    }

    /// The inside depth of the box. A row of the table is a nominal size: a quarter of an inch more or less is the same box.
    pub(super) fn depth(&self) -> Vec<Statement> {
        let mut found = self.statements(&[
            (FILL, "/enclosure/inside_dimensions/depth", number),
            (PULL, "/box/depth", number),
            (BODY, "/body/depth", number),
        ]);
        if self.has_sections() {
            return found;
        }
        found.extend(self.statement(DEPTHS, "/enclosure/internal_depth", number));
        found.extend(self.standard().and_then(|row| {
            let inches = row.key().rsplit_once('x').and_then(|(_, depth)| inches(depth))?;
            let scale = self.scale();
            let says = Says::Between((inches - 0.25) * scale, (inches + 0.25) * scale);
            Some(Statement { at: pointer_to(FILL, "/enclosure/standard"), says })
        }));
        found
    }

    /// The other two inside measures, the longer with the longer: which of them is the width depends on how the box is turned.
    pub(super) fn sides(&self) -> [Vec<Statement>; 2] {
        let (mut longer, mut shorter) = (Vec::new(), Vec::new());
        for (check, one, other) in [
            (FILL, "/enclosure/inside_dimensions/length", "/enclosure/inside_dimensions/width"),
            (PULL, "/box/width", "/box/height"),
            (BODY, "/body/length", "/body/width"),
        ] {
            let measure = |pointer| self.get(check, pointer).and_then(Value::as_f64);
            let (Some(first), Some(second)) = (measure(one), measure(other)) else { continue };
            let (long, short) = if first < second { (other, one) } else { (one, other) };
            longer.extend(self.statement(check, long, number));
            shorter.extend(self.statement(check, short, number));
        }
        [longer, shorter]
    }

    /// The smallest dimension of the opening.
    pub(super) fn opening(&self) -> Vec<Statement> {
        let mut found = self.statements(&[
            (FILL, "/opening/smallest_dimension", number),
            (FREE, "/opening/diameter", number),
        ]);
        let side = |pointer| self.statement(FREE, pointer, number);
        found.extend(match (side("/opening/width"), side("/opening/height")) {
            (Some(width), Some(height)) => {
                Some(if measured(&width.says) <= measured(&height.says) { width } else { height })
            }
            (one, other) => one
                .or(other)
                .map(|only| Statement { says: Says::Between(0.0, measured(&only.says)), at: only.at }),
        });
        // a device box, and any box of the table, has a small opening
        for pointer in ["/enclosure/standard", "/enclosure/gangs"] {
            found.extend(self.get(FILL, pointer).map(|_| Statement {
                at: pointer_to(FILL, pointer),
                says: Says::Between(0.0, SMALL_OPENING * self.scale()),
            }));
        }
        found
    }

    /// The gangs of the opening are those of the box, where no ring says otherwise.
    pub(super) fn gangs_of_opening(&self) -> Vec<Statement> {
        if self.has_sections() {
            return Vec::new();
        }
        self.statements(&[(FILL, "/enclosure/gangs", number), (FREE, "/opening/gangs", number)])
    }

    /// How far behind the opening conductors emerge, where no ring stands between.
    pub(super) fn emergence(&self) -> Vec<Statement> {
        if self.has_sections() || !self.list(FREE, "/rings").is_empty() {
            return Vec::new();
        }
        let mut found = self
            .statements(&[(FILL, "/opening/conductor_depth", number), (FREE, "/emergence_depth", number)]);
        // no deeper than the box is
        found.extend(self.depth().into_iter().map(|depth| {
            let deepest = match depth.says {
                Says::Between(_, deepest) => deepest,
                Says::OneOf(_) => f64::MAX,
            };
            Statement { at: depth.at, says: Says::Between(0.0, deepest) }
        }));
        found
    }

    /// A wet place, at a wood brace.
    pub(super) fn wet_braces(&self, pairs: &mut Vec<[Statement; 2]>) {
        for index in 0..self.list(SUPPORTS, "/means").len() {
            let pointer = format!("/means/{index}/brace/wet_location");
            let Some(brace) = self.statement(SUPPORTS, &pointer, wet_or_not) else { continue };
            let others =
                self.statements(&[(MOUNTING, "/moisture/location", word), (TYPES, "/moisture", word)]);
            pairs.extend(others.into_iter().map(|other| [brace.clone(), other]));
        }
    }
}

fn measured(says: &Says) -> f64 {
    match says {
        Says::Between(from, _) => *from,
        Says::OneOf(_) => 0.0,
    }
}

/// `2-1/8` in inches.
fn inches(text: &str) -> Option<f64> {
    text.split('-').try_fold(0.0, |sum, part| {
        let part = match part.split_once('/') {
            Some((over, under)) => over.parse::<f64>().ok()? / under.parse::<f64>().ok()?,
            None => part.parse().ok()?,
        };
        Some(sum + part)
    })
}
