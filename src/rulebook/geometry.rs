//! What cannot be built: facts that may each be true and cannot hold together in one box. No code has to say so.

rules! {
    /// Devices stand in the gangs of a box: they cannot need more than it has.
    GANGS: "geometry.gangs", "geometry", Arithmetic, "Arithmetic: no code has to say so";
    /// A box that barriers divide has one space more than it has barriers.
    BARRIERS: "geometry.barriers", "geometry", Arithmetic, "Arithmetic: no code has to say so";
    /// The holes of entries on one wall need room beside one another.
    ENTRIES: "geometry.entries", "geometry", Arithmetic, "Arithmetic: no code has to say so";
    /// What is in a raceway is no wider than the raceway is inside.
    RACEWAYS: "geometry.raceways", "geometry", Arithmetic, "Arithmetic: no code has to say so";
    /// An entry lies within the wall that it is on.
    POSITIONS: "geometry.positions", "geometry", Arithmetic, "Arithmetic: no code has to say so";
}
