//! How much of a raceway may be filled, how many conductors of one size it takes, and the smallest trade size that takes
//! a load: Chapter 9, Tables 1 and 4.
//!
//! Checks that size boxes by their raceways build on this: a cable is transposed to the raceway that its conductors
//! would need, a conduit body takes what its raceway takes. All of it is steps of the caller's own proof:
//!
//! 1. an [`Occupant`] for each kind of conductor: [`insulated`], or any figure of an area with its count;
//! 2. [`Load::of`] adds them up;
//! 3. a [`Sizer`], one for each proof, answers [`Sizer::smallest`], [`Sizer::admits`] and [`Sizer::most_alike`].
//!
//! ```
//! use elbowroom::checks::raceway_fill::sizing::{Load, Sizer, insulated};
//! use elbowroom::derivation::{Derivation, Pointer};
//! use elbowroom::quantity::{Decimal, Measure, Units};
//! use elbowroom::rulebook::{Edition, Rulebook, raceway_fill::COUNTED};
//! use elbowroom::trade::{ConductorSize, Insulation, RacewayKind};
//!
//! // the EMT that four 4/0 AWG THHN of a cable would need
//! let mut proof = Derivation::new(Rulebook::of(Edition::default()), Units::Us);
//! let four = proof.given(&COUNTED, Decimal::whole(4), Measure::Number, Pointer::to(&"/entries/0/cable/count"));
//! let size = ConductorSize::read("4/0").unwrap();
//! let conductors = insulated(&mut proof, (Insulation::Thhn, None), size, four, None).unwrap();
//! let load = Load::of(&mut proof, &[conductors]).unwrap();
//! let mut sizer = Sizer::default();
//! let (limit, percent) = sizer.limit(&mut proof, load.number, false);
//! let smallest = sizer.smallest(&mut proof, RacewayKind::Emt, &load, limit).unwrap();
//! let (trade_size, allowed) = smallest.size.unwrap();
//! // 1.2948 in² against 40 % of 3.3556 in²
//! assert_eq!((trade_size.name(), load.total.value.to_string().as_str()), ("2", "1.2948"));
//! assert!(allowed.value > load.total.value && percent.value == Decimal::whole(40));
//! assert_eq!(proof.replay(), Ok(()));
//! ```

use super::outcome::FillLimit;
use super::three_eighths;
use crate::derivation::{Derivation, Figure, Pointer, Relation, StepId};
use crate::quantity::{Decimal, Measure};
use crate::rulebook::raceway_fill::{AREA, CONDUCTORS, COUNTED, LIMITS, NIPPLE, SAME_SIZE, SINGLE, SMALLEST};
use crate::rulebook::reading::{ConductorArea, EntDimensions, RacewayArea};
use crate::rulebook::{Rule, RuleFigure};
use crate::tables::Cell;
use crate::tables::conductor_dimensions::{self, Dimensions};
use crate::tables::raceway_dimensions::{self, Dimension};
use crate::trade::{ConductorSize, Covering, Insulation, RacewayKind, TradeSize};

/// Conductors or cables of one cross-section.
#[derive(Clone, Copy, Debug)]
pub struct Occupant {
    /// How many.
    pub count: Figure,
    /// The cross-section of one.
    pub each: Figure,
}

/// A number of insulated conductors of Table 5; `None` where the table has no such conductor. `at` is where the request
/// names it.
pub fn insulated(
    proof: &mut Derivation,
    (insulation, covering): (Insulation, Option<Covering>),
    size: ConductorSize,
    count: Figure,
    at: Option<Pointer>,
) -> Option<Occupant> {
    let dimensions = conductor_dimensions::of(insulation, covering, size, proof.units())?;
    let area = area_of(proof, dimensions)?;
    Some(Occupant { count, each: proof.lookup(&CONDUCTORS, area, at) })
}

/// The cross-section of a conductor, read as the rulebook reads it where two are printed.
pub(super) fn area_of(proof: &mut Derivation, dimensions: Dimensions) -> Option<Cell> {
    match dimensions.area_of_diameter {
        Some(other) if proof.reading::<ConductorArea>() == ConductorArea::OfDiameter => Some(other),
        _ => dimensions.area,
    }
}

/// One inside dimension of a raceway, of the print that the rulebook follows; `None` where the table has no figures for it.
pub(super) fn dimension_of(
    proof: &mut Derivation,
    kind: RacewayKind,
    size: TradeSize,
    dimension: Dimension,
) -> Option<Cell> {
    let is_read = proof.rulebook().raceway_fill.is_read(kind);
    if !is_read && proof.reading::<EntDimensions>() == EntDimensions::AsBefore {
        return raceway_dimensions::of_earlier_ent(size, dimension, proof.units());
    }
    raceway_dimensions::of(kind, size, dimension, proof.units())
}

/// What goes into a raceway, added up.
#[derive(Clone, Copy, Debug)]
pub struct Load {
    /// How many conductors and cables.
    pub number: Figure,
    /// The cross-section of all.
    pub total: Figure,
    /// The cross-section of each, where it is the same for all: Note 7 then applies.
    pub alike: Option<Figure>,
}

impl Load {
    /// Adds up what goes in; `None` for nothing. Order and grouping change no figure.
    pub fn of(proof: &mut Derivation, occupants: &[Occupant]) -> Option<Self> {
        let areas: Vec<Figure> = occupants
            .iter()
            .map(|occupant| proof.product(&COUNTED, occupant.count, occupant.each, None))
            .collect();
        Self::of_areas(proof, occupants, &areas)
    }

    /// As [`Self::of`], where the areas of all occupants are figures already.
    pub fn of_areas(proof: &mut Derivation, occupants: &[Occupant], areas: &[Figure]) -> Option<Self> {
        let first = occupants.first()?.each;
        let counts: Vec<Figure> = occupants.iter().map(|occupant| occupant.count).collect();
        let number = proof.sum(&COUNTED, &counts);
        let total = proof.sum(&COUNTED, areas);
        let alike = occupants.iter().all(|occupant| occupant.each.value == first.value);
        Some(Self { number, total, alike: alike.then_some(first) })
    }
}

/// Whether a raceway takes a load.
#[derive(Clone, Copy, Debug)]
pub struct Admission {
    /// Whether it does.
    pub fits: bool,
    /// The area that may be filled.
    pub allowed: Figure,
    /// Whether the area alone would not do, and only the step of Note 7 admits the number.
    pub raised: bool,
    /// The step that decides.
    pub step: StepId,
}

/// The smallest trade size of a kind.
#[derive(Clone, Copy, Debug)]
pub struct Smallest {
    /// The trade size, with the area of it that may be filled; `None` when no trade size of the table takes the load.
    pub size: Option<(TradeSize, Figure)>,
    /// The comparison that admits the load at this size; where there is none, the one that refuses it at the largest.
    pub step: StepId,
}

/// Limits and inside areas, each brought into a proof once. **Use one for each proof**, and with that proof only.
#[derive(Clone, Debug, Default)]
pub struct Sizer {
    shares: [Option<(Figure, Figure)>; 4],
    quarter_pi: Option<Figure>,
    areas: Vec<((RacewayKind, TradeSize), Figure)>,
    allowed: Vec<((RacewayKind, TradeSize, FillLimit), Figure)>,
    counts: Vec<((StepId, StepId, FillLimit), Figure)>,
}

impl Sizer {
    /// Which limit of Table 1 a number of conductors is under, and the limit in hundredths.
    pub fn limit(&mut self, proof: &mut Derivation, number: Figure, nipple: bool) -> (FillLimit, Figure) {
        let book = proof.rulebook().clone();
        let limit = if nipple {
            FillLimit::Nipple
        } else {
            let many = proof.stated(&book.raceway_fill.number_for_more);
            if proof.compare(&LIMITS, number, Relation::AtLeast, many).0 {
                FillLimit::OverTwo
            } else {
                let two = proof.stated(&book.raceway_fill.number_for_two);
                let (two, _) = proof.compare(&LIMITS, number, Relation::AtLeast, two);
                if two { FillLimit::Two } else { FillLimit::One }
            }
        };
        (limit, self.share(proof, limit).0)
    }

    /// A limit in hundredths, and as a factor.
    fn share(&mut self, proof: &mut Derivation, limit: FillLimit) -> (Figure, Figure) {
        if let Some(known) = self.shares[limit as usize] {
            return known;
        }
        let book = proof.rulebook().clone();
        let figure: &RuleFigure = match limit {
            FillLimit::One => &book.raceway_fill.one,
            FillLimit::Two => &book.raceway_fill.two,
            FillLimit::OverTwo => &book.raceway_fill.over_two,
            FillLimit::Nipple => &book.raceway_fill.nipple,
        };
        let percent = proof.stated(figure);
        let hundredth = proof.stated(&book.raceway_fill.hundredth);
        let unit = proof.units().of(Measure::Number);
        let factor = proof.product_in(rule_of(limit), percent, hundredth, unit);
        *self.shares[limit as usize].insert((percent, factor))
    }

    /// A quarter of π times the square of a diameter.
    pub fn circle(&mut self, proof: &mut Derivation, rule: &'static Rule, diameter: Figure) -> Figure {
        let quarter_pi = match self.quarter_pi {
            Some(known) => known,
            None => {
                let book = proof.rulebook().clone();
                *self.quarter_pi.insert(proof.stated(&book.raceway_fill.quarter_pi))
            }
        };
        let unit = proof.units().of(Measure::Area);
        let square = proof.product_in(rule, diameter, diameter, unit);
        proof.product(rule, square, quarter_pi, None)
    }

    /// The inside area of a raceway, read as the rulebook reads it; `None` where the table has no figures for it.
    pub fn inside_area(
        &mut self,
        proof: &mut Derivation,
        kind: RacewayKind,
        size: TradeSize,
    ) -> Option<Figure> {
        if let Some((_, known)) = self.areas.iter().find(|(raceway, _)| *raceway == (kind, size)) {
            return Some(*known);
        }
        let diameter = dimension_of(proof, kind, size, Dimension::Diameter)?;
        let printed = dimension_of(proof, kind, size, Dimension::Area)?;
        let area = match proof.reading::<RacewayArea>() {
            RacewayArea::PrintedColumns => proof.lookup(&AREA, printed, None),
            RacewayArea::UnroundedDiameter => {
                let diameter = proof.lookup(&AREA, diameter, None);
                self.circle(proof, &AREA, diameter)
            }
        };
        self.areas.push(((kind, size), area));
        Some(area)
    }

    /// The area of a raceway that may be filled under a limit; `None` where the table has no figures for it.
    ///
    /// Read by the printed columns it is the printed share, as long as the rulebook's limit is the one that is printed.
    pub fn allowed(
        &mut self,
        proof: &mut Derivation,
        kind: RacewayKind,
        size: TradeSize,
        limit: FillLimit,
    ) -> Option<Figure> {
        if let Some((_, known)) = self.allowed.iter().find(|(asked, _)| *asked == (kind, size, limit)) {
            return Some(*known);
        }
        let (percent, factor) = self.share(proof, limit);
        let allowed = self.share_of(proof, (kind, size), limit, (percent, factor))?;
        self.allowed.push(((kind, size, limit), allowed));
        Some(allowed)
    }

    /// The allowed area before it is kept: the printed share, or the factor times the inside area.
    fn share_of(
        &mut self,
        proof: &mut Derivation,
        (kind, size): (RacewayKind, TradeSize),
        limit: FillLimit,
        (percent, factor): (Figure, Figure),
    ) -> Option<Figure> {
        if proof.reading::<RacewayArea>() == RacewayArea::PrintedColumns
            && let Some(column) = printed_share(percent.value)
        {
            let cell = dimension_of(proof, kind, size, column)?;
            return Some(proof.lookup(rule_of(limit), cell, None));
        }
        let area = self.inside_area(proof, kind, size)?;
        Some(proof.product(rule_of(limit), area, factor, None))
    }

    /// Whether a raceway takes a load under a limit: by area, or of conductors of one size by their number.
    /// `None` where the table has no figures for it.
    pub fn admits(
        &mut self,
        proof: &mut Derivation,
        rule: &'static Rule,
        (kind, size): (RacewayKind, TradeSize),
        load: &Load,
        limit: FillLimit,
    ) -> Option<Admission> {
        let allowed = self.allowed(proof, kind, size, limit)?;
        let (fits, step) = proof.compare(rule, load.total, Relation::AtMost, allowed);
        let by_area = Admission { fits, allowed, raised: false, step };
        let (false, Some(each)) = (fits, load.alike) else { return Some(by_area) };
        let Some(most) = self.raised_count(proof, allowed, each, limit) else { return Some(by_area) };
        let (raised, step) = proof.compare(rule, load.number, Relation::AtMost, most);
        Some(Admission { fits: raised, allowed, raised, step })
    }

    /// The most conductors of one cross-section that a raceway takes; `None` where the table has no figures for it.
    ///
    /// Where the limit for three and more gives fewer than three, that for two is tried, then that for one.
    pub fn most_alike(
        &mut self,
        proof: &mut Derivation,
        (kind, size): (RacewayKind, TradeSize),
        each: Figure,
        nipple: bool,
    ) -> Option<Figure> {
        if nipple {
            let allowed = self.allowed(proof, kind, size, FillLimit::Nipple)?;
            return self.raised_count(proof, allowed, each, FillLimit::Nipple);
        }
        let book = proof.rulebook().clone();
        let allowed = self.allowed(proof, kind, size, FillLimit::OverTwo)?;
        let many = self.raised_count(proof, allowed, each, FillLimit::OverTwo)?;
        let three = proof.stated(&book.raceway_fill.number_for_more);
        if proof.compare(&LIMITS, many, Relation::AtLeast, three).0 {
            return Some(many);
        }
        for (limit, number) in [
            (FillLimit::Two, &book.raceway_fill.number_for_two),
            (FillLimit::One, &book.raceway_fill.number_for_one),
        ] {
            let allowed = self.allowed(proof, kind, size, limit)?;
            let count = self.raised_count(proof, allowed, each, limit)?;
            let number = proof.stated(number);
            if proof.compare(&LIMITS, count, Relation::AtLeast, number).0 {
                return Some(number);
            }
        }
        Some(proof.nothing(&LIMITS, Measure::Number))
    }

    /// The smallest trade size of a kind that takes a load, among those that have figures and are filled by area; `None` for a kind
    /// without any.
    ///
    /// Areas grow with the trade size (a test of the table holds them to it), so the sizes are halved until one takes the
    /// load and the one below does not: both comparisons are in the proof.
    pub fn smallest(
        &mut self,
        proof: &mut Derivation,
        kind: RacewayKind,
        load: &Load,
        limit: FillLimit,
    ) -> Option<Smallest> {
        let by_area = |size: &TradeSize| !three_eighths::is_counted(kind, *size);
        let sizes: Vec<TradeSize> = raceway_dimensions::sizes(kind).filter(by_area).collect();
        let (mut from, mut to) = (0, sizes.len());
        let (mut found, mut refused) = (None, None);
        while from < to {
            let middle = from + (to - from) / 2;
            let size = *sizes.get(middle)?;
            let admission = self.admits(proof, &SMALLEST, (kind, size), load, limit)?;
            if admission.fits {
                to = middle;
                found = Some((size, admission));
            } else {
                from = middle + 1;
                refused = Some(admission.step);
            }
        }
        match found {
            Some((size, admission)) => {
                Some(Smallest { size: Some((size, admission.allowed)), step: admission.step })
            }
            None => refused.map(|step| Smallest { size: None, step }),
        }
    }

    /// How many conductors of one cross-section an area takes, raised to the next whole number from the step of Note 7 on.
    fn raised_count(
        &mut self,
        proof: &mut Derivation,
        allowed: Figure,
        each: Figure,
        limit: FillLimit,
    ) -> Option<Figure> {
        let asked = (allowed.step, each.step, limit);
        if let Some((_, known)) = self.counts.iter().find(|(known, _)| *known == asked) {
            return Some(*known);
        }
        let book = proof.rulebook().clone();
        let (rule, step) = match limit {
            FillLimit::One => (&SINGLE, &book.raceway_fill.single_step),
            FillLimit::Two | FillLimit::OverTwo | FillLimit::Nipple => {
                (&SAME_SIZE, &book.raceway_fill.same_size_step)
            }
        };
        let step = proof.stated(step);
        let count = proof.round_count(rule, allowed, each, step)?;
        self.counts.push((asked, count));
        Some(count)
    }
}

const fn rule_of(limit: FillLimit) -> &'static Rule {
    match limit {
        FillLimit::Nipple => &NIPPLE,
        FillLimit::One | FillLimit::Two | FillLimit::OverTwo => &LIMITS,
    }
}

/// The column in which the table prints the share for a limit.
fn printed_share(percent: Decimal) -> Option<Dimension> {
    [
        (53, Dimension::AreaForOne),
        (31, Dimension::AreaForTwo),
        (40, Dimension::AreaForMore),
        (60, Dimension::AreaForNipple),
    ]
    .into_iter()
    .find_map(|(printed, column)| (Decimal::whole(printed) == percent).then_some(column))
}
