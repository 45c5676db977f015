//! What the parts of a review say of raceways and conductors: what is brought to a box is among what the box has.

use super::reading::{conductor_size, size_of_conductor, size_of_raceway, trade_size};
use super::{BODY, DEPTHS, FILL, PULL, RACEWAY, Review, SUPPORTS, Says, Statement, pointer_to};
use crate::checks::FaultCode;
use crate::service::fault_list::FaultView;
use crate::trade::ConductorSize;
use serde_json::Value;

impl Review<'_> {
    /// Raceways: one that is filled, or that holds the box, is one of those that enter it.
    pub(super) fn raceways(&self, pairs: &mut Vec<[Statement; 2]>) {
        let entering = |check, list: &str| {
            let sizes: Option<Vec<String>> = self
                .list(check, list)
                .iter()
                .map(|entry| size_of_raceway(entry.pointer("/raceway/trade_size")?))
                .collect();
            let sizes = sizes.filter(|sizes| !sizes.is_empty())?;
            Some(Statement { at: pointer_to(check, list), says: Says::OneOf(sizes) })
        };
        let mut single: Vec<Statement> =
            self.statement(RACEWAY, "/raceway/trade_size", trade_size).into_iter().collect();
        for (index, means) in self.list(SUPPORTS, "/means").iter().enumerate() {
            let conduits = means.get("conduits").and_then(Value::as_array).map_or(0, Vec::len);
            single.extend((0..conduits).filter_map(|conduit| {
                let pointer = format!("/means/{index}/conduits/{conduit}/trade_size");
                self.statement(SUPPORTS, &pointer, trade_size)
            }));
        }
        let entering = [entering(PULL, "/entries"), entering(BODY, "/hubs")];
        for all in entering.into_iter().flatten() {
            pairs.extend(single.iter().map(|one| [one.clone(), all.clone()]));
        }
    }

    /// The conductors that supply devices: those of a device with the same name, otherwise those of any.
    pub(super) fn supply_conductors(&self, pairs: &mut Vec<[Statement; 2]>) {
        let contents = self.contents();
        let devices = || {
            contents.iter().flat_map(|at| {
                let listed = format!("{at}/devices");
                let found = self.list(FILL, &listed).iter().enumerate();
                found.map(move |(index, device)| (format!("{listed}/{index}"), device))
            })
        };
        for (index, equipment) in self.list(DEPTHS, "/equipment").iter().enumerate() {
            let pointer = format!("/equipment/{index}/largest_supply_conductor");
            let Some(supply) = self.statement(DEPTHS, &pointer, conductor_size) else { continue };
            let id = equipment.get("id").filter(|id| !id.is_null());
            let named: Vec<_> =
                devices().filter(|(_, device)| id.is_some() && device.get("id") == id).collect();
            let meant = if named.is_empty() { devices().collect() } else { named };
            let sizes: Option<Vec<String>> =
                meant.iter().map(|(_, device)| size_of_conductor(device.get("largest_conductor")?)).collect();
            let (Some(sizes), Some((first, _))) = (sizes, meant.first()) else { continue };
            let at = match meant.as_slice() {
                [_] => format!("{first}/largest_conductor"),
                _ => first.rsplit_once('/').map_or_else(String::new, |(list, _)| list.to_owned()),
            };
            pairs.push([supply, Statement { at: pointer_to(FILL, &at), says: Says::OneOf(sizes) }]);
        }
    }

    /// Conductors that a raceway brings, or that are pulled through, are among those of the box.
    pub(super) fn conductors(&self, pairs: &mut Vec<[Statement; 2]>) {
        let mut sizes = Vec::new();
        for at in self.contents() {
            for (list, members) in
                [("conductors", &["size"][..]), ("grounding", &["size"]), ("cables", &["size", "grounding"])]
            {
                for thing in self.list(FILL, &format!("{at}/{list}")) {
                    let named = members.iter().filter_map(|member| size_of_conductor(thing.get(*member)?));
                    sizes.extend(named);
                }
            }
        }
        let Some(largest) = sizes.iter().filter_map(|size| ConductorSize::read(size)).max() else { return };
        let at = self.contents().into_iter().next().unwrap_or_default();
        let inside = Statement { at: pointer_to(FILL, &at), says: Says::OneOf(sizes) };
        let mut brought = Vec::new();
        for list in ["conductors", "bare_conductors"] {
            for index in 0..self.list(RACEWAY, &format!("/{list}")).len() {
                brought.extend(self.statement(RACEWAY, &format!("/{list}/{index}/size"), conductor_size));
            }
        }
        // a fill that lists none of the large conductors leaves them to the check that sizes by them
        if Some(largest) >= ConductorSize::read("4") {
            for index in 0..self.list(PULL, "/pulls").len() {
                let pointer = format!("/pulls/{index}/largest_conductor");
                brought.extend(self.statement(PULL, &pointer, conductor_size));
            }
        }
        pairs.extend(brought.into_iter().map(|one| [one, inside.clone()]));
    }

    /// How many devices and equipment there are, one for each yoke: a depth is asked for no more than the fill counts.
    pub(super) fn yokes(&self) -> Vec<Statement> {
        let counted = |device: &Value| device.get("count").and_then(Value::as_f64).unwrap_or(1.0);
        let contents = self.contents();
        let devices = contents.iter().map(|at| (at, self.list(FILL, &format!("{at}/devices"))));
        let yokes: f64 = devices.clone().flat_map(|(_, devices)| devices).map(counted).sum();
        let first = devices.filter(|(_, devices)| !devices.is_empty()).map(|(at, _)| at).next();
        let equipment = self.list(DEPTHS, "/equipment").len();
        let (Some(at), true) = (first, equipment > 0) else { return Vec::new() };
        vec![
            Statement { at: pointer_to(FILL, &format!("{at}/devices")), says: Says::Between(0.0, yokes) },
            Statement { at: pointer_to(DEPTHS, "/equipment"), says: Says::number(equipment as f64) },
        ]
    }

    /// A depth check that names no equipment judges a box without any, and the fill names devices in this one.
    pub(super) fn devices_without_depth(&self) -> Option<FaultView> {
        self.get(DEPTHS, "/enclosure")?;
        let is_silent = self.get(DEPTHS, "/equipment").is_none();
        let contents = self.contents();
        let device = contents.iter().map(|at| format!("{at}/devices"));
        let named = device.clone().find(|at| !self.list(FILL, at).is_empty()).filter(|_| is_silent)?;
        let (at, other) = (pointer_to(DEPTHS, "/equipment"), pointer_to(FILL, &named));
        let named = [("other", other.clone())];
        let view = FaultView::in_body(at, FaultCode::Contradiction, "fault-devices-without-depth", named);
        Some(FaultView { contradicts: Some(other), ..view })
    }

    /// A raceway brings no more conductors of a size than the box has.
    pub(super) fn numbers_of_conductors(&self, pairs: &mut Vec<[Statement; 2]>) {
        let contents = self.contents();
        let Some(at) = contents.first() else { return };
        let stays = |thing: &Value| ["role", "kind"].iter().any(|of| thing[*of] == "stays_inside");
        let count = |thing: &Value| thing.get("count").and_then(Value::as_f64).unwrap_or(1.0);
        let number = |lists: &[(&str, String)], size: &str| -> f64 {
            let things = lists.iter().flat_map(|(check, list)| self.list(check, list));
            let of = |thing: &Value| {
                let is = |member: &str| {
                    thing.get(member).and_then(size_of_conductor).is_some_and(|own| own == size)
                };
                let insulated = thing.get("conductors").and_then(Value::as_f64).unwrap_or(1.0);
                let own = if is("size") && !stays(thing) { insulated } else { 0.0 };
                // the grounding conductor of a cable may go unsaid
                let unsaid = thing.get("conductors").is_some() && thing.get("grounding").is_none();
                let grounding = if is("grounding") || unsaid && is("size") { 1.0 } else { 0.0 };
                count(thing) * (own + grounding)
            };
            things.map(of).sum()
        };
        let inside: Vec<(&str, String)> = contents
            .iter()
            .flat_map(|at| ["conductors", "grounding", "cables"].map(|list| (FILL, format!("{at}/{list}"))))
            .collect();
        let brought = ["/conductors", "/bare_conductors"].map(|list| (RACEWAY, list.to_owned()));
        for (check, list) in &brought {
            for (index, thing) in self.list(check, list).iter().enumerate() {
                let Some(size) = thing.get("size").and_then(size_of_conductor) else { continue };
                let (ours, theirs) = (number(&brought, &size), number(&inside, &size));
                if theirs > 0.0 {
                    pairs.push([
                        Statement {
                            at: pointer_to(check, &format!("{list}/{index}")),
                            says: Says::number(ours),
                        },
                        Statement { at: pointer_to(FILL, at), says: Says::Between(0.0, theirs) },
                    ]);
                }
            }
        }
    }

    /// Where the fill lists contents: for the whole box, or space by space.
    fn contents(&self) -> Vec<String> {
        let spaces = self.list(FILL, "/spaces").len();
        match self.get(FILL, "/contents") {
            Some(_) => vec!["/contents".to_owned()],
            None => (0..spaces).map(|space| format!("/spaces/{space}/contents")).collect(),
        }
    }
}
