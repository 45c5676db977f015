//! What the parts of a review say of raceways and conductors: what is brought to a box is among what the box has.

use super::reading::{conductor_size, size_of_conductor, size_of_raceway, trade_size};
use super::{BODY, DEPTHS, FILL, PULL, RACEWAY, Review, SUPPORTS, Says, Statement, pointer_to};
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

    /// Where the fill lists contents: for the whole box, or space by space.
    fn contents(&self) -> Vec<String> {
        let spaces = self.list(FILL, "/spaces").len();
        match self.get(FILL, "/contents") {
            Some(_) => vec!["/contents".to_owned()],
            None => (0..spaces).map(|space| format!("/spaces/{space}/contents")).collect(),
        }
    }
}
