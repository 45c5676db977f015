//! How full one raceway is.

use super::contents::Contents;
use super::outcome::{FillLimit, Fullness, RacewayItem, RacewayRoom, RacewayTallyLine};
use super::request::RacewayFillRequest;
use super::sizing::{Admission, Load, Sizer, dimension_of};
use super::{side_by_side, three_eighths};
use crate::checks::{Finding, Status};
use crate::derivation::{Derivation, Figure, Pointer, Relation};
use crate::quantity::Measure;
use crate::rulebook::raceway_fill::{JAMMING, LIMITS, NIPPLE, SAME_SIZE, THREE_EIGHTHS};
use crate::tables::raceway_dimensions::Dimension;
use crate::trade::{RacewayKind, TradeSize};

/// Fills the raceway of a request; `None` where none is given with a trade size, or its figures are not available.
pub(super) fn of(
    proof: &mut Derivation,
    sizer: &mut Sizer,
    request: &RacewayFillRequest,
    contents: &Contents,
    (limit, limit_percent): (FillLimit, Figure),
    findings: &mut Vec<Finding>,
) -> Option<Fullness> {
    let raceway = request.raceway?;
    let (kind, trade_size) = (raceway.kind, raceway.trade_size?);
    let load = &contents.load;
    let Some(inside_area) = sizer.inside_area(proof, kind, trade_size) else {
        findings.push(
            Finding::new(&LIMITS, Status::NotDetermined, "finding-raceway-without-figures")
                .with("raceway", format!("{kind} {trade_size}").as_str())
                .at(Pointer::to(&"/raceway/trade_size")),
        );
        return None;
    };
    let admission = sizer.admits(proof, &LIMITS, (kind, trade_size), load, limit)?;
    let allowed_area = admission.allowed;
    let mut margin = proof.difference(&LIMITS, allowed_area, load.total);
    let fill_percent = proof.percent_against(&LIMITS, (load.total, inside_area), limit_percent)?;
    let by_percent = match load.alike {
        Some(each) => {
            let most = sizer.most_alike(proof, (kind, trade_size), each, limit == FillLimit::Nipple)?;
            Some(side_by_side::most(proof, (kind, trade_size), contents, most).unwrap_or(most))
        }
        None => None,
    };
    let is_three_eighths = three_eighths::is_counted(kind, trade_size);
    let is_counted = is_three_eighths && three_eighths::follows_table(proof, kind);
    findings.extend(side_by_side::judge(proof, (kind, trade_size), contents));
    let mut counted = None;
    if is_counted {
        let judged = three_eighths::judge(proof, request, raceway);
        if let Some((most, number)) = judged.numbers {
            margin = proof.difference(&THREE_EIGHTHS, most, number);
        }
        findings.push(judged.finding);
        counted = Some(judged.numbers);
    } else {
        let percents = (fill_percent, limit_percent);
        let mut finding = by_area(load, (kind, trade_size), percents, admission);
        if is_three_eighths {
            finding.rule = &THREE_EIGHTHS;
        }
        let may_be_nipple = raceway.length.is_none() && raceway.nipple.is_none();
        if finding.status == Status::Violated && may_be_nipple {
            // only looked at: as a nipple it is another raceway than the one that is judged
            let (mut other, mut scratch) = (sizer.clone(), proof.clone());
            let as_nipple =
                other.admits(&mut scratch, &NIPPLE, (kind, trade_size), load, FillLimit::Nipple)?;
            finding.unless.extend(as_nipple.fits.then_some(Pointer::to(&"/raceway/length")));
        }
        findings.push(finding);
    }
    if limit == FillLimit::Nipple && raceway.length.is_none() && !is_counted {
        findings.extend(nipple_of_unknown_length(proof, sizer, (kind, trade_size), load, admission));
    }
    // where a table counts, the percentages are no limit
    let (maximum, room_left) = match counted {
        Some(numbers) => {
            let more = numbers.map(|_| proof.at_least_zero(&THREE_EIGHTHS, margin));
            (
                numbers.map(|(most, _)| most),
                more.map_or_else(Vec::new, |more| counted_room(proof, contents, more)),
            )
        }
        None => (by_percent, room(proof, sizer, (kind, trade_size), contents, limit, by_percent)?),
    };
    let jam_ratio = jamming(proof, (kind, trade_size), contents, findings);
    Some(Fullness {
        kind,
        trade_size,
        limit,
        limit_percent,
        inside_area,
        allowed_area,
        margin,
        fill_percent,
        maximum,
        room_left,
        jam_ratio,
    })
}

/// What is found of a fill by area.
fn by_area(
    load: &Load,
    (kind, trade_size): (RacewayKind, TradeSize),
    (fill_percent, limit_percent): (Figure, Figure),
    admission: Admission,
) -> Finding {
    let (rule, status, message) = match (admission.fits, admission.raised) {
        (true, false) => (&LIMITS, Status::Satisfied, "finding-fill-within"),
        (true, true) => (&SAME_SIZE, Status::Satisfied, "finding-fill-raised"),
        (false, _) => (&LIMITS, Status::Violated, "finding-fill-over"),
    };
    Finding::new(rule, status, message)
        .with("total", load.total)
        .with("allowed", admission.allowed)
        .with("fill", fill_percent)
        .with("limit", limit_percent)
        .with("number", load.number)
        .with("raceway", format!("{kind} {trade_size}").as_str())
        .at(Pointer::to(&"/raceway"))
        .step(admission.step)
}

/// A nipple whose length is not said: decided where it is filled alike as a nipple and as an ordinary run.
fn nipple_of_unknown_length(
    proof: &mut Derivation,
    sizer: &mut Sizer,
    raceway: (RacewayKind, TradeSize),
    load: &Load,
    as_nipple: Admission,
) -> Option<Finding> {
    const LENGTHS: &[&str] = &["nipple", "ordinary_run"];
    let at = Pointer::to(&"/raceway/length");
    let (limit, _) = sizer.limit(proof, load.number, false);
    let as_run = sizer.admits(proof, &LIMITS, raceway, load, limit)?;
    if let Some((_, step)) = proof.whatever(&NIPPLE, at, LENGTHS, &[as_nipple.step, as_run.step]) {
        let finding = Finding::new(&NIPPLE, Status::Advisory, "finding-taken-as-nipple");
        return Some(finding.at(Pointer::to(&"/raceway")).step(step));
    }
    let book = proof.rulebook().clone();
    let most = proof.stated(&book.raceway_fill.nipple_length);
    let finding = Finding::new(&NIPPLE, Status::NotDetermined, "finding-nipple-of-unknown-length")
        .with("total", load.total)
        .with("raceway", format!("{} {}", raceway.0, raceway.1).as_str())
        .with("ordinary", as_run.allowed)
        .with("allowed", as_nipple.allowed)
        .with("most", most);
    Some(finding.at(Pointer::to(&"/raceway/nipple")).supply(at).step(as_run.step))
}

/// How many more of each line would fit, of that line alone.
fn room(
    proof: &mut Derivation,
    sizer: &mut Sizer,
    raceway: (RacewayKind, TradeSize),
    contents: &Contents,
    limit: FillLimit,
    maximum: Option<Figure>,
) -> Option<Vec<RacewayRoom>> {
    let load = &contents.load;
    let mut rooms = Vec::with_capacity(contents.lines.len());
    let alike = maximum.map(|maximum| {
        let left = proof.difference(&SAME_SIZE, maximum, load.number);
        proof.at_least_zero(&SAME_SIZE, left)
    });
    for line in &contents.lines {
        let more = match alike {
            Some(more) => more,
            None => more_of(proof, sizer, raceway, load, line.each, limit)?,
        };
        let (name, diameter) = (line.name.clone(), line.diameter);
        rooms.push(RacewayRoom { what: line.what, row: line.row, name, diameter, more });
    }
    Some(rooms)
}

/// How many more of each line would fit where a table counts: it has one bare conductor at the most, for grounding.
fn counted_room(proof: &mut Derivation, contents: &Contents, more: Figure) -> Vec<RacewayRoom> {
    let of = |line: &RacewayTallyLine, proof: &mut Derivation| {
        let is_bare = line.what == RacewayItem::BareConductors;
        let more = if is_bare { proof.nothing(&THREE_EIGHTHS, Measure::Number) } else { more };
        RacewayRoom { what: line.what, row: line.row, name: line.name.clone(), diameter: line.diameter, more }
    };
    contents.lines.iter().map(|line| of(line, proof)).collect()
}

/// How many more of one cross-section fit beside conductors of several. There are two at the least, so any more makes
/// three: the limit for more than two decides, or that for a nipple.
fn more_of(
    proof: &mut Derivation,
    sizer: &mut Sizer,
    (kind, size): (RacewayKind, TradeSize),
    load: &Load,
    each: Figure,
    limit: FillLimit,
) -> Option<Figure> {
    let limit = if limit == FillLimit::Nipple { FillLimit::Nipple } else { FillLimit::OverTwo };
    let allowed = sizer.allowed(proof, kind, size, limit)?;
    let left = proof.difference(&LIMITS, allowed, load.total);
    proof.whole_quotient(&LIMITS, left, each)
}

/// The ratio of diameters at which three conductors may jam, where there are three of one diameter.
fn jamming(
    proof: &mut Derivation,
    (kind, size): (RacewayKind, TradeSize),
    contents: &Contents,
    findings: &mut Vec<Finding>,
) -> Option<Figure> {
    let book = proof.rulebook().clone();
    if contents.load.number.value != book.value(&book.raceway_fill.jam_number, proof.units()).0 {
        proof.does_not_apply(&JAMMING, "not-three", None);
        return None;
    }
    let Some(conductor) = contents.common_diameter(proof, &JAMMING) else {
        proof.does_not_apply(&JAMMING, "diameters-differ", None);
        return None;
    };
    let inside = dimension_of(proof, kind, size, Dimension::Diameter)?;
    let inside = proof.lookup(&JAMMING, inside, None);
    let ratio = proof.quotient(&JAMMING, inside, conductor)?;
    let (from, to) = (proof.stated(&book.raceway_fill.jam_from), proof.stated(&book.raceway_fill.jam_to));
    let (above, _) = proof.compare(&JAMMING, ratio, Relation::AtLeast, from);
    let (below, step) = proof.compare(&JAMMING, ratio, Relation::AtMost, to);
    if above && below {
        findings.push(
            Finding::new(&JAMMING, Status::Advisory, "finding-may-jam")
                .with("ratio", ratio)
                .with("from", from)
                .with("to", to)
                .step(step),
        );
    }
    Some(ratio)
}
