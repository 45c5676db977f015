//! Lists the executed examples of the OpenAPI document, so that adding one is adding files.

use std::fmt::Write as _;
use std::path::{Path, PathBuf};
use std::{env, fs, io};

fn main() -> io::Result<()> {
    let root = PathBuf::from(env::var("CARGO_MANIFEST_DIR").map_err(io::Error::other)?);
    let folder = root.join("openapi/examples");
    println!("cargo::rerun-if-changed={}", folder.display());
    let mut list = String::from("&[\n");
    for operation in sorted(&folder)? {
        for file in sorted(&operation)? {
            let name = |path: &Path| path.file_name().unwrap_or_default().to_string_lossy().into_owned();
            writeln!(list, "    ({:?}, {:?}, include_str!({file:?})),", name(&operation), name(&file))
                .map_err(io::Error::other)?;
        }
    }
    list.push_str("]\n");
    let out = PathBuf::from(env::var("OUT_DIR").map_err(io::Error::other)?);
    fs::write(out.join("examples.rs"), list)
}

fn sorted(folder: &Path) -> io::Result<Vec<PathBuf>> {
    let mut entries: Vec<PathBuf> =
        fs::read_dir(folder)?.map(|entry| entry.map(|entry| entry.path())).collect::<io::Result<_>>()?;
    entries.sort();
    Ok(entries)
}
