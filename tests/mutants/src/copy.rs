//! The copy of the project that holds all mutants, each behind a switch, and its tests.

use crate::places::Mutant;
use crate::{Failure, cargo};
use serde_json::Value;
use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::io::{BufRead as _, BufReader, Read as _};
use std::ops::Range;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};

/// The variable that switches a mutant on, by its number.
pub const SWITCH: &str = "ELBOWROOM_MUTANT";

/// What the copy of the library has besides: which mutant runs, asked once; and the published document, which tests read, in place
/// of the service.
const MODULE: &str = "
#[doc(hidden)]
pub mod service {
    pub mod openapi {
        #[must_use]
        pub fn text() -> &'static str {
            include_str!(\"../openapi/openapi.json\")
        }
    }
}

#[doc(hidden)]
pub mod mutants {
    static CHOSEN: std::sync::LazyLock<Option<usize>> =
        std::sync::LazyLock::new(|| std::env::var(\"ELBOWROOM_MUTANT\").ok()?.parse().ok());

    /// Whether the mutant with a number runs.
    #[inline]
    #[must_use]
    pub fn on(number: usize) -> bool {
        *CHOSEN == Some(number)
    }
}
";

/// What is changed in the manifest of the copy: the same dependencies, so that those built for the tests of the project serve again,
/// without the service.
const MANIFEST: [(&str, &str); 4] = [
    ("[features]\n", "[features]\nservice = []\n"),
    ("\nservice = [\n", "\nothers = [\n"),
    ("default = [\"client\", \"service\"]", "default = [\"client\", \"others\"]"),
    ("client = [\"service\", ", "client = [\"others\", "),
];

/// How often what does not compile is left out before this gives up.
const ROUNDS: usize = 8;

/// The test programs of a copy.
pub struct Built {
    /// By the name of the target: the tests within the library, and those of the engine.
    pub programs: BTreeMap<String, PathBuf>,
    /// The mutants, by their numbers, that do not compile.
    pub left_out: BTreeSet<usize>,
}

/// Where one alternative stands in a file of the copy.
struct Written {
    number: usize,
    /// The alternative itself.
    alternative: Range<usize>,
    /// All that stands for the place: every alternative and what was there.
    whole: Range<usize>,
}

/// Copies the project with some mutants, numbered in their order, and builds the tests; what does not compile is left out.
pub fn build(root: &Path, mutants: &[Mutant]) -> Result<Built, Failure> {
    let copy = root.join("target/mutants/copy");
    let mut kept: BTreeSet<PathBuf> = BTreeSet::new();
    let mut sources = Vec::new();
    for file in files(root)? {
        let to = copy.join(&file);
        kept.insert(to.clone());
        if file.starts_with("src/") && file.ends_with(".rs") {
            sources.push(file);
            continue;
        }
        let mut content = fs::read(root.join(&file))?;
        if file == "Cargo.toml" {
            content = manifest(String::from_utf8(content)?)?.into_bytes();
        }
        write_changed(&to, &content)?;
    }
    remove_others(&copy, &kept)?;
    let mut left_out = BTreeSet::new();
    for _ in 0..ROUNDS {
        let mut written: BTreeMap<String, Vec<Written>> = BTreeMap::new();
        for file in &sources {
            let mut text = fs::read_to_string(root.join(file))?;
            let here = mutants
                .iter()
                .enumerate()
                .filter(|(number, mutant)| mutant.file == *file && !left_out.contains(number));
            let mut writer = Writer::new(&text, here.collect());
            writer.write(0..text.len());
            written.insert(file.clone(), writer.written);
            text = writer.out;
            if file == "src/lib.rs" {
                text.push_str(MODULE);
            }
            write_changed(&copy.join(file), text.as_bytes())?;
        }
        let (programs, errors) = compile(root, &copy)?;
        if errors.is_empty() {
            return Ok(Built { programs, left_out });
        }
        let before = left_out.len();
        for error in &errors {
            left_out.extend(blamed(error, &written, mutants));
        }
        if left_out.len() == before {
            let text = errors.iter().filter_map(|error| error["rendered"].as_str());
            return Err(text.collect::<String>().into());
        }
    }
    Err(format!("after {ROUNDS} rounds the copy still does not compile").into())
}

fn manifest(mut text: String) -> Result<String, Failure> {
    for (there, instead) in MANIFEST {
        if !text.contains(there) {
            return Err(format!("the manifest has no {there:?}").into());
        }
        text = text.replacen(there, instead, 1);
    }
    Ok(text)
}

/// The files of the project that are not built, in their order.
fn files(root: &Path) -> Result<Vec<String>, Failure> {
    let mut found = Vec::new();
    let mut folders = vec![root.to_owned()];
    while let Some(folder) = folders.pop() {
        for entry in fs::read_dir(folder)? {
            let path = entry?.path();
            let name = path.strip_prefix(root)?.to_string_lossy().into_owned();
            if path.is_file() {
                found.push(name);
            } else if name != ".git" && name != "tests/mutants" && !path.ends_with("target") {
                folders.push(path);
            }
        }
    }
    found.sort();
    Ok(found)
}

/// Writes a file unless it is so already: what is unchanged is not compiled again.
fn write_changed(to: &Path, content: &[u8]) -> Result<(), Failure> {
    if fs::read(to).is_ok_and(|there| there == content) {
        return Ok(());
    }
    if let Some(folder) = to.parent() {
        fs::create_dir_all(folder)?;
    }
    Ok(fs::write(to, content)?)
}

/// Removes what was copied once and belongs to the project no more.
fn remove_others(folder: &Path, kept: &BTreeSet<PathBuf>) -> Result<(), Failure> {
    for entry in fs::read_dir(folder)? {
        let path = entry?.path();
        if path.is_dir() {
            remove_others(&path, kept)?;
        } else if !kept.contains(&path) {
            fs::remove_file(&path)?;
        }
    }
    Ok(())
}

/// Builds the tests; gives back the programs, or the errors of the compiler.
fn compile(root: &Path, copy: &Path) -> Result<(BTreeMap<String, PathBuf>, Vec<Value>), Failure> {
    let mut running = Command::new(cargo())
        .args(["test", "--no-run", "--quiet", "--locked", "--lib", "--test", "engine"])
        // the engine alone is built to run fast: it is run hundreds of times, and its dependencies stay those of the other tests
        .args(["--config", "profile.dev.package.elbowroom.opt-level=1"])
        .args(["--message-format", "json"])
        .current_dir(copy)
        .env("CARGO_TARGET_DIR", root.join("target"))
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()?;
    let mut said = running.stderr.take().ok_or("no output of cargo")?;
    let listener = std::thread::spawn(move || {
        let mut text = String::new();
        _ = said.read_to_string(&mut text);
        text
    });
    let (mut programs, mut errors) = (BTreeMap::new(), Vec::new());
    for line in BufReader::new(running.stdout.take().ok_or("no output of cargo")?).lines() {
        let Ok(message) = serde_json::from_str::<Value>(&line?) else { continue };
        if let (Some(program), Some(name)) =
            (message["executable"].as_str(), message["target"]["name"].as_str())
        {
            programs.insert(name.to_owned(), program.into());
        }
        let report = &message["message"];
        let has_place = report["spans"].as_array().is_some_and(|spans| !spans.is_empty());
        if report["level"] == "error" && has_place {
            errors.push(report.clone());
        }
    }
    let said = listener.join().unwrap_or_default();
    if !running.wait()?.success() && errors.is_empty() {
        return Err(said.into());
    }
    Ok((programs, errors))
}

/// The mutants that an error is about: the alternative that it stands in, else all of the narrowest place around it, else those
/// in the const function that it names.
fn blamed(error: &Value, written: &BTreeMap<String, Vec<Written>>, mutants: &[Mutant]) -> Vec<usize> {
    let spans = error["spans"].as_array().map(Vec::as_slice).unwrap_or_default();
    for span in spans.iter().filter(|span| span["is_primary"] == true) {
        let Some(here) = span["file_name"].as_str().and_then(|file| written.get(file)) else { continue };
        let at = |name: &str| span[name].as_u64().and_then(|byte| usize::try_from(byte).ok()).unwrap_or(0);
        let (start, end) = (at("byte_start"), at("byte_end"));
        let is_around = |range: &Range<usize>| range.start <= start && end <= range.end;
        let alternatives = here.iter().filter(|one| is_around(&one.alternative));
        if let Some(one) = alternatives.min_by_key(|one| one.alternative.len()) {
            return vec![one.number];
        }
        let wholes = here.iter().filter(|one| is_around(&one.whole)).map(|one| &one.whole);
        if let Some(narrowest) = wholes.min_by_key(|whole| whole.len()) {
            return here.iter().filter(|one| one.whole == *narrowest).map(|one| one.number).collect();
        }
    }
    let message = error["message"].as_str().unwrap_or_default();
    let is_named = |mutant: &Mutant| {
        let name = mutant.function.rsplit("::").next().unwrap_or_default();
        mutant.constness.is_some() && message.contains("non-const") && message.contains(name)
    };
    mutants.iter().enumerate().filter(|(_, mutant)| is_named(mutant)).map(|(number, _)| number).collect()
}

/// A place of a file, with its mutants and their numbers.
type Place<'a> = (Range<usize>, Vec<(usize, &'a Mutant)>);

/// Writes a file with the alternatives of some mutants.
struct Writer<'a> {
    text: &'a str,
    out: String,
    /// What is written otherwise, the outer before the inner; a word `const` that is left out has no alternatives.
    places: Vec<Place<'a>>,
    next: usize,
    written: Vec<Written>,
}

impl<'a> Writer<'a> {
    fn new(text: &'a str, mutants: Vec<(usize, &'a Mutant)>) -> Self {
        let mut places: BTreeMap<(usize, isize), Vec<(usize, &Mutant)>> = BTreeMap::new();
        let order = |range: &Range<usize>| (range.start, -(range.end as isize));
        for (number, mutant) in mutants {
            places.entry(order(&mutant.place)).or_default().push((number, mutant));
            if let Some(word) = &mutant.constness {
                places.entry(order(word)).or_default();
            }
        }
        let places = places.into_iter().map(|((start, end), here)| (start..end.unsigned_abs(), here));
        Self { text, out: String::new(), places: places.collect(), next: 0, written: Vec::new() }
    }

    /// Writes a range of the text, with every place in it.
    fn write(&mut self, range: Range<usize>) {
        let mut from = range.start;
        while let Some((place, here)) = self.places.get(self.next).cloned() {
            if place.start >= range.end {
                break;
            }
            self.next += 1;
            self.copy(from..place.start);
            from = place.end;
            if !here.is_empty() {
                self.place(place, &here);
            }
        }
        self.copy(from..range.end);
    }

    /// Writes one place: every alternative behind its switch, then what was there, whose own places are written in turn.
    fn place(&mut self, place: Range<usize>, here: &[(usize, &Mutant)]) {
        let start = self.out.len();
        self.out.push('(');
        let first = self.written.len();
        for (number, mutant) in here {
            self.out.push_str(&format!("if crate::mutants::on({number}) {{ "));
            let begin = self.out.len();
            self.out.push_str(&mutant.instead);
            let alternative = begin..self.out.len();
            self.written.push(Written { number: *number, alternative, whole: 0..0 });
            self.out.push_str(" } else ");
        }
        self.out.push_str("{ ");
        let own = first..self.written.len();
        self.write(place);
        self.out.push_str(" })");
        let end = self.out.len();
        if let Some(own) = self.written.get_mut(own) {
            own.iter_mut().for_each(|one| one.whole = start..end);
        }
    }

    fn copy(&mut self, range: Range<usize>) {
        self.out.push_str(self.text.get(range).unwrap_or_default());
    }
}
