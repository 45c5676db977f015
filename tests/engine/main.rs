//! The engine, one module a subject: published counts, conformance cases, properties of every request, mutations, languages.

mod amendments;
mod annex_c_counts;
mod citations;
mod conformance;
#[path = "../corpus/mod.rs"]
mod corpus;
mod digests;
mod drawings;
mod evidence;
mod exercises;
mod fixed_answers;
mod inspections;
mod languages;
mod metric_cells;
mod module_docs;
mod mutations;
mod points_of_law;
mod printed_counts;
mod proofs;
mod properties;
mod pull_box_drawings;
mod pull_box_properties;
mod pull_contradictions;
mod raceway_fill;
mod raceway_properties;
mod registries;
mod soundness;
mod supports;
mod units;
