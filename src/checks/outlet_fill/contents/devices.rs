//! Devices on yokes, and terminal blocks: each counted by the conductors that end on it.

use super::{Counted, Counting, Unsaid};
use crate::checks::outlet_fill::outcome::{Item, TallyLine};
use crate::checks::outlet_fill::request::{Device, TerminalBlockKind};
use crate::checks::{AllowanceGroup, Finding, FindingArg, Status};
use crate::derivation::Pointer;
use crate::quantity::Measure;
use crate::rulebook::outlet_fill::{CONDUCTORS, DEVICES, NOTHING, TERMINAL_BLOCKS, YokeBy};
use crate::rulebook::reading::{DeviceLeads, RailSplices};
use crate::rulebook::{Choice, Strategy};
use crate::trade::{ConductorSize, SizeSet};

/// What the size of a device or terminal block that is not said is taken as.
const NOTHING_OR_SIX: &[&str; 2] = &["not_counted", "6 AWG"];

impl Choice for YokeBy {
    /// The size that a yoke is counted by, of those present in the box and of what is connected to it, if that is known.
    type Apply = fn(SizeSet, Option<ConductorSize>) -> Option<ConductorSize>;
    const LAWFUL: Strategy<Self> = Strategy::<Self>::new("largest-connected", |_, connected| connected);
}

impl Counting<'_, '_> {
    pub(super) fn devices(&mut self) {
        let contents = self.contents;
        for (index, device) in contents.devices.iter().enumerate() {
            let item = self.at(&"/contents/devices/#", index);
            let each = self.proof.stated(&self.book.outlet_fill.yoke);
            let Some(size) = self.device_size(device, item) else { continue };
            let mut allowances = each;
            if let Some(gangs) = device.gangs {
                let at = item.member(&"/gangs");
                let gangs = self.proof.given(&DEVICES, gangs.get().into(), Measure::Number, at);
                allowances = self.proof.product(&DEVICES, gangs, allowances, Some(item));
            }
            if device.count.is_some() {
                let many = self.count_at(&DEVICES, device.count, item);
                allowances = self.proof.product(&DEVICES, many, allowances, Some(item));
            }
            self.counted.push(Counted {
                what: Item::Devices,
                rule: &DEVICES,
                size,
                allowances,
                id: device.id.as_ref(),
                at: item,
            });
        }
    }

    /// The size that a yoke is counted by: of the conductors connected to it, not of all in the box.
    pub(super) fn device_size(&mut self, device: &Device, item: Pointer) -> Option<ConductorSize> {
        let connected_at = item.member(&"/largest_conductor");
        let mut connected = device.largest_conductor;
        if let Some(leads) = device.factory_leads {
            let at = item.member(&"/factory_leads");
            self.leave_out(Item::Conductors, &CONDUCTORS, "factory-leads", at);
            if connected.is_some_and(|size| size != leads)
                && self.proof.reading::<DeviceLeads>() == DeviceLeads::Leads
            {
                connected = Some(leads);
            }
        }
        match (self.book.outlet_fill.yoke_by.apply)(self.present, connected) {
            Some(size) => self.sized(size, connected_at),
            None => {
                let message = "finding-device-without-conductor";
                let at = connected_at;
                self.any_size(Unsaid { rule: &DEVICES, at, values: NOTHING_OR_SIX, message })
            }
        }
    }

    /// A size that is not said is the largest that has an allowance, at the most; at the least it is not counted.
    /// What ends on it is no larger than what is in the box: where that is nothing, nothing bounds it.
    fn any_size(&mut self, unsaid: Unsaid) -> Option<ConductorSize> {
        let at = unsaid.at;
        if self.present.largest().is_none() {
            self.open(unsaid.rule, unsaid.message, at, Some(at));
            return None;
        }
        if self.leave_unsaid(unsaid) { self.sized(ConductorSize::AWG_6, at) } else { None }
    }

    pub(super) fn terminal_blocks(&mut self) {
        let contents = self.contents;
        for (index, block) in contents.terminal_blocks.iter().enumerate() {
            let item = self.at(&"/contents/terminal_blocks/#", index);
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
            let size_at = item.member(&"/largest_conductor");
            let size = match block.largest_conductor {
                Some(size) => self.sized(size, size_at),
                None => {
                    let message = "finding-block-without-conductor";
                    let at = size_at;
                    self.any_size(Unsaid { rule: &TERMINAL_BLOCKS, at, values: NOTHING_OR_SIX, message })
                }
            };
            let Some(size) = size else { continue };
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

    /// Says why yokes in one box take different allowances, or another than the largest conductor's.
    pub(super) fn devices_differ(&mut self, tally: &[TallyLine]) {
        let lines = || tally.iter().filter(|line| line.what == Item::Devices);
        let largest = self.present.largest();
        let all_by_largest = lines().all(|line| Some(line.size) == largest);
        let (Some(first), false) = (lines().next(), all_by_largest) else { return };
        let takings = lines().map(|line| AllowanceGroup {
            names: line.ids.clone(),
            size: line.size.name(),
            allowances: line.allowances,
            each: line.each,
        });
        let mut finding = Finding::new(&DEVICES, Status::Advisory, "finding-devices-differ")
            .with("yokes", FindingArg::AllowanceGroups(takings.collect()))
            .with("largest", FindingArg::Name(largest.map_or("", ConductorSize::name)))
            .step(first.volume.step);
        finding.at = lines().flat_map(|line| line.at.iter().copied()).collect();
        self.findings.push(finding);
    }
}
