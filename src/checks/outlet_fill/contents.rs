//! The contents side: what takes an allowance, and what does not (314.16(B)).
//!
//! Inputs are read one list at a time into [`Counted`] entries, each with the figure of its allowances; entries of one
//! item and size then become one line of the tally. So neither the order nor the grouping of inputs changes a figure.

use super::outcome::{Item, NotCounted, TallyLine};
use super::request::{
    Canopy, CanopyKind, ClampKind, Conductor, Contents, Device, GroundingKind, Many, Opening, Role,
    SmallPartKind, TerminalBlockKind, Wire,
};
use crate::checks::{Finding, Name, Status};
use crate::derivation::{Derivation, Figure, Pointer, Relation};
use crate::quantity::Measure;
use crate::rulebook::outlet_fill::{
    ALLOWANCE, CANOPY, CLAMP_ASSEMBLY, CLAMPS, CONDUCTORS, DEVICES, GROUNDING, ISOLATED_SET, NOTHING, SUM,
    SUPPORT_FITTINGS, TERMINAL_BLOCKS,
};
use crate::rulebook::reading::{
    CanopyWires, DeviceLeads, FanCanopy, LoopThreshold, MoldedClamps, RailSplices, SmallConductors,
};
use crate::rulebook::{Rule, Rulebook, free_conductor, pull};
use crate::tables::conductor_volume;
use crate::trade::ConductorSize;

/// The count of one space, finished.
pub(super) struct Fill {
    /// The sum of everything that could be counted.
    pub required: Figure,
    /// Whether everything could.
    pub complete: bool,
    pub tally: Vec<TallyLine>,
    pub not_counted: Vec<NotCounted>,
    pub findings: Vec<Finding>,
    /// The allowance of the largest conductor present, where something is sized by it.
    pub largest: Option<Figure>,
    /// How many allowances are sized by it.
    pub by_largest: Option<Figure>,
    assemblies: Vec<Figure>,
    allowances: [Option<Figure>; ConductorSize::COUNT],
}

impl Fill {
    /// Counts the contents of a box, or of one of its spaces.
    pub fn count(
        proof: &mut Derivation,
        contents: &Contents,
        space: Option<usize>,
        opening: Option<&Opening>,
    ) -> Self {
        let book = proof.rulebook().clone();
        let mut counting = Counting {
            proof,
            book,
            contents,
            space,
            counted: Vec::with_capacity(8),
            grounding: Vec::with_capacity(4),
            assemblies: Vec::new(),
            not_counted: Vec::new(),
            findings: Vec::new(),
            allowances: [None; ConductorSize::COUNT],
            present: [false; ConductorSize::COUNT],
            complete: true,
        };
        counting.conductors(opening);
        counting.cables();
        counting.grounding_conductors();
        counting.canopy();
        counting.devices();
        counting.terminal_blocks();
        counting.small_parts();
        counting.finish()
    }

    /// The allowance of a size, looked up once.
    pub fn allowance_of(&mut self, proof: &mut Derivation, size: ConductorSize) -> Option<Figure> {
        look_up(proof, &mut self.allowances, size)
    }

    /// The volume that is left when clamp assemblies have taken theirs.
    pub fn take_off_assemblies(&self, proof: &mut Derivation, volume: Figure) -> Figure {
        if self.assemblies.is_empty() {
            return volume;
        }
        let taken = proof.sum(&CLAMP_ASSEMBLY, &self.assemblies);
        let left = proof.difference(&CLAMP_ASSEMBLY, volume, taken);
        proof.at_least_zero(&CLAMP_ASSEMBLY, left)
    }

    /// The volume that a box must have for the contents and for clamp assemblies.
    pub fn with_assemblies(&self, proof: &mut Derivation) -> Figure {
        let mut parts = vec![self.required];
        parts.extend(&self.assemblies);
        proof.sum(&SUM, &parts)
    }
}

fn look_up(
    proof: &mut Derivation,
    allowances: &mut [Option<Figure>; ConductorSize::COUNT],
    size: ConductorSize,
) -> Option<Figure> {
    let known = &mut allowances[size.index()];
    if known.is_none() {
        *known = conductor_volume::of(size, proof.units()).map(|cell| proof.lookup(&ALLOWANCE, cell, None));
    }
    *known
}

/// One input that takes allowances of one size.
struct Counted<'a> {
    what: Item,
    rule: &'static Rule,
    size: ConductorSize,
    allowances: Figure,
    id: Option<&'a str>,
    at: Pointer,
}

/// Grounding conductors of one size that enter.
struct Entering {
    size: ConductorSize,
    count: Figure,
    isolated: bool,
    at: Pointer,
}

/// The count of one space, under way.
struct Counting<'a, 'p> {
    proof: &'p mut Derivation,
    book: Rulebook,
    contents: &'a Contents,
    space: Option<usize>,
    counted: Vec<Counted<'a>>,
    grounding: Vec<Entering>,
    assemblies: Vec<Figure>,
    not_counted: Vec<NotCounted>,
    findings: Vec<Finding>,
    allowances: [Option<Figure>; ConductorSize::COUNT],
    present: [bool; ConductorSize::COUNT],
    complete: bool,
}

impl<'a> Counting<'a, '_> {
    fn at(&self, pattern: &'static str, index: usize) -> Pointer {
        let item = Pointer::of(pattern, index);
        match self.space {
            Some(space) => item.under("/spaces/#", space),
            None => item,
        }
    }

    fn count_at(&mut self, rule: &'static Rule, count: Option<Many>, item: Pointer) -> Figure {
        self.proof.count(rule, count.map(Many::get), item)
    }

    fn leave_out(&mut self, what: Item, rule: &'static Rule, because: &'static str, at: Pointer) {
        let step = self.proof.does_not_apply(rule, because, Some(at));
        self.not_counted.push(NotCounted { what, rule: rule.id, because, at, step });
    }

    /// Notes that something cannot be counted: one finding for each sentence, with every input that it is about.
    fn open(&mut self, rule: &'static Rule, message: &'static str, at: Pointer, supply: Option<Pointer>) {
        self.complete = false;
        let same = |finding: &&mut Finding| finding.message == message && finding.rule == rule;
        match self.findings.iter_mut().find(same) {
            Some(finding) => {
                finding.at.push(at);
                finding.supply.extend(supply);
            }
            None => {
                let mut finding = Finding::new(rule, Status::NotDetermined, message).at(at);
                finding.supply.extend(supply);
                self.findings.push(finding);
            }
        }
    }

    /// The size whose allowance a conductor takes; `None`, with a finding, where the table has none for it.
    fn sized(&mut self, size: ConductorSize, at: Pointer) -> Option<ConductorSize> {
        self.present[size.index()] = true;
        if size >= ConductorSize::AWG_4 {
            self.open(&pull::APPLIES, "finding-pull-box-size", at, None);
            return None;
        }
        if size >= ConductorSize::AWG_18 {
            return Some(size);
        }
        match self.proof.reading::<SmallConductors>() {
            SmallConductors::AsEighteen => {
                self.present[ConductorSize::AWG_18.index()] = true;
                Some(ConductorSize::AWG_18)
            }
            SmallConductors::NoFigure => {
                self.open(&ALLOWANCE, "finding-no-allowance-published", at, None);
                None
            }
        }
    }

    fn take(
        &mut self,
        what: Item,
        rule: &'static Rule,
        size: ConductorSize,
        allowances: Figure,
        at: Pointer,
    ) {
        self.counted.push(Counted { what, rule, size, allowances, id: None, at });
    }

    fn conductors(&mut self, opening: Option<&Opening>) {
        let contents = self.contents;
        let mut threshold = None;
        for (index, Conductor { size, role, loop_length, count }) in contents.conductors.iter().enumerate() {
            let item = self.at("/contents/conductors/#", index);
            if *role == Role::StaysInside {
                self.present[size.index()] = true;
                self.leave_out(Item::Conductors, &CONDUCTORS, "stays-inside", item);
                continue;
            }
            let Some(size) = self.sized(*size, item.member("/size")) else { continue };
            let many = self.count_at(&CONDUCTORS, *count, item);
            let allowances = match (role, loop_length) {
                (Role::Loop, Some(length)) => {
                    let (length, at) = (length.value(), item.member("/loop_length"));
                    let length = self.proof.given(&CONDUCTORS, length, Measure::Length, at);
                    let threshold = match threshold {
                        Some(threshold) => threshold,
                        None => *threshold.insert(self.loop_threshold(opening)),
                    };
                    let (long, _) = self.proof.compare(&CONDUCTORS, length, Relation::AtLeast, threshold);
                    let figure =
                        if long { self.book.outlet_fill.long_loop } else { self.book.outlet_fill.passing };
                    let each = self.proof.stated(&figure);
                    self.proof.product(&CONDUCTORS, many, each, Some(item))
                }
                (Role::PassesThrough, _) => {
                    let each = self.proof.stated(&self.book.outlet_fill.passing);
                    self.proof.product(&CONDUCTORS, many, each, Some(item))
                }
                _ => many,
            };
            self.take(Item::Conductors, &CONDUCTORS, size, allowances, item);
        }
    }

    /// How long an unbroken loop must be to count twice.
    fn loop_threshold(&mut self, opening: Option<&Opening>) -> Figure {
        let book = self.book.free_conductor.clone();
        let base = self.proof.stated(&book.length);
        let mut least = base;
        if let Some(opening) = opening {
            let (smallest, at) =
                (opening.smallest_dimension.value(), Pointer::to("/opening/smallest_dimension"));
            let smallest = self.proof.given(&free_conductor::OUTSIDE, smallest, Measure::Length, at);
            let limit = self.proof.stated(&book.small_opening);
            let (small, _) = self.proof.compare(&free_conductor::OUTSIDE, smallest, Relation::Below, limit);
            if let (true, Some(depth)) = (small, opening.conductor_depth) {
                let at = Pointer::to("/opening/conductor_depth");
                let depth = self.proof.given(&free_conductor::OUTSIDE, depth.value(), Measure::Length, at);
                let outside = self.proof.stated(&book.outside);
                let reach = self.proof.sum(&free_conductor::OUTSIDE, &[depth, outside]);
                let longer = reach.value > base.value;
                if longer && self.proof.reading::<LoopThreshold>() == LoopThreshold::TwiceRequired {
                    least = self.proof.largest(&free_conductor::OUTSIDE, &[base, reach]).unwrap_or(base);
                }
            }
        }
        let multiple = self.proof.stated(&self.book.outlet_fill.loop_multiple);
        let threshold = self.proof.product(&CONDUCTORS, multiple, least, None);
        let finding = Finding::new(&CONDUCTORS, Status::Advisory, "finding-loop-threshold");
        self.findings.push(finding.with("threshold", threshold).step(threshold.step));
        threshold
    }

    fn cables(&mut self) {
        let contents = self.contents;
        for (index, cable) in contents.cables.iter().enumerate() {
            let item = self.at("/contents/cables/#", index);
            let many = cable.count.map(|_| self.count_at(&CONDUCTORS, cable.count, item));
            if let Some(size) = self.sized(cable.size, item.member("/size")) {
                let (conductors, at) = (cable.conductors.get().into(), item.member("/conductors"));
                let each = self.proof.given(&CONDUCTORS, conductors, Measure::Number, at);
                let allowances = match many {
                    Some(many) => self.proof.product(&CONDUCTORS, many, each, Some(item)),
                    None => each,
                };
                self.take(Item::Conductors, &CONDUCTORS, size, allowances, item);
            }
            if let Some(size) = cable.grounding {
                let at = item.member("/grounding");
                let count = match many {
                    Some(many) => many,
                    None => self.count_at(&GROUNDING, None, at),
                };
                self.enter(size, count, false, at);
            }
        }
    }

    fn grounding_conductors(&mut self) {
        let contents = self.contents;
        for (index, grounding) in contents.grounding.iter().enumerate() {
            let item = self.at("/contents/grounding/#", index);
            if grounding.kind == GroundingKind::StaysInside {
                self.present[grounding.size.index()] = true;
                self.leave_out(Item::Grounding, &CONDUCTORS, "stays-inside", item);
                continue;
            }
            let count = self.count_at(&GROUNDING, grounding.count, item);
            self.enter(grounding.size, count, grounding.kind == GroundingKind::Isolated, item);
        }
    }

    fn enter(&mut self, size: ConductorSize, count: Figure, isolated: bool, at: Pointer) {
        if let Some(size) = self.sized(size, at) {
            self.grounding.push(Entering { size, count, isolated, at });
        }
    }

    fn canopy(&mut self) {
        let Some(canopy) = &self.contents.canopy else { return };
        let at = self.at("/contents/canopy", 0);
        let relieved = match canopy.kind {
            CanopyKind::DomedLuminaire => true,
            CanopyKind::FlatLuminaire => false,
            CanopyKind::CeilingFan => self.proof.reading::<FanCanopy>() == FanCanopy::AsALuminaire,
        };
        if !relieved {
            self.proof.does_not_apply(&CANOPY, "no-canopy", Some(at));
        }
        for (index, Wire { size, count }) in canopy.grounding.iter().enumerate() {
            let item = self.at("/contents/canopy/grounding/#", index);
            if relieved {
                self.leave_out(Item::Grounding, &CANOPY, "canopy", item);
            } else {
                let count = self.count_at(&GROUNDING, *count, item);
                self.enter(*size, count, false, item);
            }
        }
        self.fixture_wires(canopy, relieved);
    }

    fn fixture_wires(&mut self, canopy: &Canopy, relieved: bool) {
        let mut small: Vec<(ConductorSize, Figure, Pointer)> = Vec::new();
        for (index, Wire { size, count }) in canopy.fixture_wires.iter().enumerate() {
            let item = self.at("/contents/canopy/fixture_wires/#", index);
            let many = self.count_at(&CANOPY, *count, item);
            if relieved && *size < ConductorSize::AWG_14 {
                small.push((*size, many, item));
            } else if let Some(size) = self.sized(*size, item) {
                self.take(Item::FixtureWires, &CONDUCTORS, size, many, item);
            }
        }
        if small.is_empty() {
            return;
        }
        let counts: Vec<Figure> = small.iter().map(|(_, many, _)| *many).collect();
        let all = self.proof.sum(&CANOPY, &counts);
        let free = self.proof.stated(&self.book.outlet_fill.canopy_wires);
        let (few, _) = self.proof.compare(&CANOPY, all, Relation::AtMost, free);
        if few {
            for (_, _, item) in small {
                self.leave_out(Item::FixtureWires, &CANOPY, "canopy", item);
            }
            return;
        }
        match self.proof.reading::<CanopyWires>() {
            CanopyWires::AllCount => {
                for (size, many, item) in small {
                    if let Some(size) = self.sized(size, item) {
                        self.take(Item::FixtureWires, &CONDUCTORS, size, many, item);
                    }
                }
            }
            CanopyWires::ExcessCounts => {
                let excess = self.proof.difference(&CANOPY, all, free);
                let largest = small.iter().max_by_key(|(size, _, _)| *size);
                if let Some((size, _, item)) = largest.copied()
                    && let Some(size) = self.sized(size, item)
                {
                    self.take(Item::FixtureWires, &CANOPY, size, excess, item);
                }
            }
        }
    }

    fn devices(&mut self) {
        let contents = self.contents;
        for (index, device) in contents.devices.iter().enumerate() {
            let item = self.at("/contents/devices/#", index);
            let Some(size) = self.device_size(device, item) else { continue };
            let each = self.proof.stated(&self.book.outlet_fill.yoke);
            let mut allowances = each;
            if let Some(gangs) = device.gangs {
                let at = item.member("/gangs");
                let gangs = self.proof.given(&DEVICES, gangs.get().into(), Measure::Number, at);
                allowances = self.proof.product(&DEVICES, gangs, allowances, Some(item));
            }
            if device.count.is_some() {
                let many = self.count_at(&DEVICES, device.count, item);
                allowances = self.proof.product(&DEVICES, many, allowances, Some(item));
            }
            let id = device.id.as_ref().map(Name::as_str);
            self.counted.push(Counted {
                what: Item::Devices,
                rule: &DEVICES,
                size,
                allowances,
                id,
                at: item,
            });
        }
    }

    /// The size that a yoke is counted by: of the conductors connected to it, not of all in the box.
    fn device_size(&mut self, device: &Device, item: Pointer) -> Option<ConductorSize> {
        let connected_at = item.member("/largest_conductor");
        let mut connected = device.largest_conductor;
        if let Some(leads) = device.factory_leads {
            let at = item.member("/factory_leads");
            self.leave_out(Item::Conductors, &CONDUCTORS, "factory-leads", at);
            if connected.is_some_and(|size| size != leads)
                && self.proof.reading::<DeviceLeads>() == DeviceLeads::Leads
            {
                connected = Some(leads);
            }
        }
        match connected {
            Some(size) => self.sized(size, connected_at),
            None => {
                self.open(&DEVICES, "finding-device-without-conductor", item, Some(connected_at));
                None
            }
        }
    }

    fn terminal_blocks(&mut self) {
        let contents = self.contents;
        for (index, block) in contents.terminal_blocks.iter().enumerate() {
            let item = self.at("/contents/terminal_blocks/#", index);
            let Some(figure) = self.book.outlet_fill.terminal_block else {
                self.leave_out(Item::TerminalBlocks, &TERMINAL_BLOCKS, "not-in-edition", item);
                continue;
            };
            if block.kind == TerminalBlockKind::RailSplices
                && self.proof.reading::<RailSplices>() == RailSplices::Connector
            {
                self.leave_out(Item::TerminalBlocks, &NOTHING, "wire-connector", item);
                continue;
            }
            let size_at = item.member("/largest_conductor");
            let Some(size) = block.largest_conductor else {
                self.open(&TERMINAL_BLOCKS, "finding-block-without-conductor", item, Some(size_at));
                continue;
            };
            let Some(size) = self.sized(size, size_at) else { continue };
            let each = self.proof.stated(&figure);
            let allowances = match block.count {
                None => each,
                Some(_) => {
                    let many = self.count_at(&TERMINAL_BLOCKS, block.count, item);
                    self.proof.product(&TERMINAL_BLOCKS, many, each, Some(item))
                }
            };
            self.take(Item::TerminalBlocks, &TERMINAL_BLOCKS, size, allowances, item);
        }
    }

    fn small_parts(&mut self) {
        let contents = self.contents;
        for (index, part) in contents.small_parts.iter().enumerate() {
            let item = self.at("/contents/small_parts/#", index);
            let because = match part.kind {
                SmallPartKind::WireConnector => "wire-connector",
                SmallPartKind::RacewayAsGround | SmallPartKind::BondingStrip => "not-a-conductor-inside",
                _ => "small-fitting",
            };
            self.leave_out(Item::SmallParts, &NOTHING, because, item);
        }
    }

    /// Clamps and support fittings are sized by the largest conductor present, so they come last.
    fn finish(mut self) -> Fill {
        let clamps = self.clamps();
        let fittings = self.support_fittings();
        let grounding = self.grounding_lines();
        let mut tally = self.tally();
        let by_largest: Vec<Figure> =
            [&clamps, &fittings].into_iter().flatten().map(|(figure, _)| *figure).collect();
        let mut largest = None;
        if !by_largest.is_empty() {
            largest = self.largest_present();
            if let Some((size, each)) = largest {
                let lines =
                    [(Item::Clamps, &CLAMPS, clamps), (Item::SupportFittings, &SUPPORT_FITTINGS, fittings)];
                for (what, rule, part) in lines {
                    let Some((allowances, at)) = part else { continue };
                    tally.push(self.line(what, rule, size, allowances, each, at));
                }
            }
        }
        tally.extend(grounding);
        tally.sort_by_key(|line| (line.what, line.size));
        self.devices_differ(&tally);
        let volumes: Vec<Figure> = tally.iter().map(|line| line.volume).collect();
        let required = if volumes.is_empty() {
            self.proof.nothing(&SUM, Measure::Volume)
        } else {
            self.proof.sum(&SUM, &volumes)
        };
        let by_largest = largest.map(|_| self.proof.sum(&CLAMPS, &by_largest));
        Fill {
            required,
            complete: self.complete,
            tally,
            not_counted: self.not_counted,
            findings: self.findings,
            largest: largest.map(|(_, each)| each),
            by_largest,
            assemblies: self.assemblies,
            allowances: self.allowances,
        }
    }

    /// The allowances of all internal clamps together, if there are any.
    fn clamps(&mut self) -> Option<(Figure, Vec<Pointer>)> {
        let contents = self.contents;
        let mut internal = Vec::new();
        for (index, clamp) in contents.clamps.iter().enumerate() {
            let item = self.at("/contents/clamps/#", index);
            match clamp.kind {
                ClampKind::Internal => internal.push(item),
                ClampKind::External => self.leave_out(Item::Clamps, &CLAMPS, "outside", item),
                ClampKind::Molded => match self.proof.reading::<MoldedClamps>() {
                    MoldedClamps::Counted => internal.push(item),
                    MoldedClamps::NotCounted => self.leave_out(Item::Clamps, &CLAMPS, "molded", item),
                },
                ClampKind::TerminatingAssembly => {
                    self.leave_out(Item::Clamps, &CLAMP_ASSEMBLY, "own-volume", item);
                    let Some(volume) = clamp.volume else { continue };
                    let (volume, at) = (volume.value(), item.member("/volume"));
                    let mut taken = self.proof.given(&CLAMP_ASSEMBLY, volume, Measure::Volume, at);
                    if clamp.count.is_some() {
                        let many = self.count_at(&CLAMP_ASSEMBLY, clamp.count, item);
                        taken = self.proof.product(&CLAMP_ASSEMBLY, many, taken, Some(item));
                    }
                    self.assemblies.push(taken);
                }
            }
        }
        (!internal.is_empty()).then(|| (self.proof.stated(&self.book.outlet_fill.clamps), internal))
    }

    /// The allowances of support fittings: one for each type, however many there are of it.
    fn support_fittings(&mut self) -> Option<(Figure, Vec<Pointer>)> {
        let contents = self.contents;
        let mut types = Vec::new();
        let mut at = Vec::new();
        for (index, fitting) in contents.support_fittings.iter().enumerate() {
            at.push(self.at("/contents/support_fittings/#", index));
            if !types.contains(&fitting.kind) {
                types.push(fitting.kind);
            }
        }
        let each: Vec<Figure> =
            types.iter().map(|_| self.proof.stated(&self.book.outlet_fill.support_fitting)).collect();
        (!each.is_empty()).then(|| (self.proof.sum(&SUPPORT_FITTINGS, &each), at))
    }

    /// The largest conductor present and its allowance; a finding where there is none that the table has.
    fn largest_present(&mut self) -> Option<(ConductorSize, Figure)> {
        let largest = ConductorSize::all().rev().find(|size| self.present[size.index()]);
        let Some(largest) = largest else {
            let at = self.at("/contents", 0);
            self.open(&CLAMPS, "finding-no-conductors", at, Some(self.at("/contents/conductors", 0)));
            return None;
        };
        let present: Vec<ConductorSize> =
            conductor_volume::sizes().filter(|size| self.present[size.index()]).collect();
        let each: Vec<Figure> =
            present.iter().filter_map(|size| look_up(self.proof, &mut self.allowances, *size)).collect();
        if largest >= ConductorSize::AWG_4 || each.is_empty() {
            let at = self.at("/contents", 0);
            self.open(&CLAMPS, "finding-largest-has-no-allowance", at, None);
            return None;
        }
        self.proof.largest(&CLAMPS, &each).map(|each| (largest, each))
    }

    /// Grounding conductors are counted together, by the largest of them; where the edition says so, a separate isolated
    /// set is counted by itself.
    fn grounding_lines(&mut self) -> Vec<TallyLine> {
        let entering = std::mem::take(&mut self.grounding);
        let (isolated, plain): (Vec<Entering>, Vec<Entering>) =
            entering.into_iter().partition(|one| one.isolated);
        let mut lines = Vec::new();
        match (self.book.outlet_fill.isolated_set, plain.is_empty() || isolated.is_empty()) {
            (Some(own), false) => {
                lines.extend(self.grounded_together(plain));
                let allowances = self.proof.stated(&own);
                lines.extend(self.grounding_line(
                    Item::IsolatedGrounding,
                    &ISOLATED_SET,
                    allowances,
                    &isolated,
                ));
            }
            _ => {
                if let (Some(first), None) = (isolated.first(), self.book.outlet_fill.isolated_set) {
                    self.proof.does_not_apply(&ISOLATED_SET, "not-in-edition", Some(first.at));
                }
                let all: Vec<Entering> = plain.into_iter().chain(isolated).collect();
                lines.extend(self.grounded_together(all));
            }
        }
        lines
    }

    fn grounded_together(&mut self, entering: Vec<Entering>) -> Option<TallyLine> {
        if entering.is_empty() {
            return None;
        }
        let together = self.proof.stated(&self.book.outlet_fill.grounding);
        let allowances = match self.book.outlet_fill.grounding_beyond.clone() {
            None => together,
            Some(beyond) => {
                let counts: Vec<Figure> = entering.iter().map(|one| one.count).collect();
                let all = self.proof.sum(&GROUNDING, &counts);
                let first = self.proof.stated(&beyond.together);
                let (few, _) = self.proof.compare(&GROUNDING, all, Relation::AtMost, first);
                if few {
                    together
                } else {
                    let extra = self.proof.difference(&GROUNDING, all, first);
                    let each = self.proof.stated(&beyond.each);
                    let more = self.proof.product(&GROUNDING, extra, each, None);
                    self.proof.sum(&GROUNDING, &[together, more])
                }
            }
        };
        self.grounding_line(Item::Grounding, &GROUNDING, allowances, &entering)
    }

    fn grounding_line(
        &mut self,
        what: Item,
        rule: &'static Rule,
        allowances: Figure,
        entering: &[Entering],
    ) -> Option<TallyLine> {
        let size = entering.iter().map(|one| one.size).max()?;
        let mut sizes: Vec<ConductorSize> = entering.iter().map(|one| one.size).collect();
        sizes.sort_unstable();
        sizes.dedup();
        let each: Vec<Figure> =
            sizes.iter().filter_map(|size| look_up(self.proof, &mut self.allowances, *size)).collect();
        let each = self.proof.largest(rule, &each)?;
        let at = entering.iter().map(|one| one.at).collect();
        Some(self.line(what, rule, size, allowances, each, at))
    }

    /// One line for each item and size, with all its inputs.
    fn tally(&mut self) -> Vec<TallyLine> {
        let mut counted = std::mem::take(&mut self.counted);
        counted.sort_by_key(|one| (one.what, one.size));
        let mut lines = Vec::with_capacity(counted.len() + 4);
        for group in counted.chunk_by(|one, next| (one.what, one.size) == (next.what, next.size)) {
            let Some(first) = group.first() else { continue };
            let (what, rule, size) = (first.what, first.rule, first.size);
            let Some(each) = look_up(self.proof, &mut self.allowances, size) else { continue };
            let parts: Vec<Figure> = group.iter().map(|one| one.allowances).collect();
            let allowances = self.proof.sum(rule, &parts);
            let at = group.iter().map(|one| one.at).collect();
            let mut line = self.line(what, rule, size, allowances, each, at);
            line.ids = group.iter().filter_map(|one| one.id.map(str::to_owned)).collect();
            lines.push(line);
        }
        lines
    }

    fn line(
        &mut self,
        what: Item,
        rule: &'static Rule,
        size: ConductorSize,
        allowances: Figure,
        each: Figure,
        at: Vec<Pointer>,
    ) -> TallyLine {
        let volume = self.proof.product(rule, allowances, each, None);
        TallyLine { what, size, allowances, each, volume, rule: rule.id, ids: Vec::new(), at }
    }

    /// Says why yokes in one box take different allowances, or another than the largest conductor's.
    fn devices_differ(&mut self, tally: &[TallyLine]) {
        let lines: Vec<&TallyLine> = tally.iter().filter(|line| line.what == Item::Devices).collect();
        let largest = ConductorSize::all().rev().find(|size| self.present[size.index()]);
        let all_by_largest = lines.iter().all(|line| Some(line.size) == largest);
        let (Some(first), false) = (lines.first(), all_by_largest) else { return };
        let told: Vec<String> = lines
            .iter()
            .map(|line| {
                let ids =
                    if line.ids.is_empty() { String::new() } else { format!("{}: ", line.ids.join(", ")) };
                let (allowances, each, unit) =
                    (line.allowances.value, line.each.value, line.each.unit.symbol());
                format!("{ids}{} → {allowances} × {each} {unit}", line.size)
            })
            .collect();
        let mut finding = Finding::new(&DEVICES, Status::Advisory, "finding-devices-differ")
            .with("yokes", told.join("; ").as_str())
            .with("largest", largest.map_or("", ConductorSize::name))
            .step(first.volume.step);
        finding.at = lines.iter().flat_map(|line| line.at.iter().copied()).collect();
        self.findings.push(finding);
    }
}
