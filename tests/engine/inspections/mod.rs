//! What must hold for every inspection: requests of any shape, and figures that decide something.

mod figures;
mod properties;
mod shapes;
