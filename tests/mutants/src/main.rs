//! Mutation testing of the engine: changes one place of it at a time, and says which changes no test notices.
//!
//! ```text
//! cargo run --manifest-path tests/mutants/Cargo.toml                  every mutant that is chosen
//! cargo run --manifest-path tests/mutants/Cargo.toml -- --tenth HASH  a tenth of them by any text, but for known survivors
//! cargo run --manifest-path tests/mutants/Cargo.toml -- KEY…          some, by their keys
//! cargo run --manifest-path tests/mutants/Cargo.toml -- --record      every one, and writes the list of survivors anew
//! ```
//!
//! All mutants are compiled once, each behind a switch, into a copy of the project below `target/mutants/`. Known survivors stand in
//! `survivors.csv`: `equivalent`, since nothing that can be asked for is answered otherwise, with the reason; or `open`, since no test tells
//! yet. Any other survivor is an error, and so is a line there that is not true any more.

mod constant;
mod copy;
mod places;
mod run;

use places::{Mutant, hash, written};
use run::{Outcome, Tests};
use std::collections::{BTreeMap, BTreeSet};
use std::error::Error;
use std::path::{Path, PathBuf};
use std::process::ExitCode;
use std::sync::Mutex;
use std::time::Instant;
use std::{env, fs};

/// Why there is no result.
type Failure = Box<dyn Error + Send + Sync>;

/// What the project exists for.
const ENGINE: [&str; 6] = ["checks", "derivation", "quantity", "rulebook", "tables", "trade"];

/// One mutant in so many is chosen, by its key: a change elsewhere chooses no others.
const ONE_IN: u64 = 24;

/// The command that is cargo.
fn cargo() -> String {
    env::var("CARGO").unwrap_or_else(|_| "cargo".to_owned())
}

fn main() -> ExitCode {
    match whole() {
        Ok(true) => ExitCode::SUCCESS,
        Ok(false) => ExitCode::FAILURE,
        Err(failure) => {
            eprintln!("{failure}");
            ExitCode::FAILURE
        }
    }
}

/// Which of the chosen mutants run.
enum Wanted {
    All,
    Recorded,
    Tenth(u64),
    Keys(Vec<String>),
}

impl Wanted {
    fn of(arguments: &[String]) -> Result<Self, Failure> {
        match arguments {
            [] => Ok(Self::All),
            [flag] if flag == "--record" => Ok(Self::Recorded),
            [flag, text] if flag == "--tenth" => Ok(Self::Tenth(hash(&[text]) % 10)),
            keys if keys.iter().all(|key| !key.starts_with('-')) => Ok(Self::Keys(keys.to_vec())),
            _ => Err("usage: elbowroom-mutants [--record | --tenth HASH | KEY…]".into()),
        }
    }

    fn takes(&self, mutant: &Mutant) -> bool {
        let is_chosen = mutant.key.is_multiple_of(ONE_IN);
        match self {
            Self::All | Self::Recorded => is_chosen,
            Self::Tenth(tenth) => is_chosen && mutant.key / ONE_IN % 10 == *tenth,
            Self::Keys(keys) => keys.contains(&written(mutant.key)),
        }
    }
}

/// Whether every survivor is known to be equivalent, and what is known is true.
fn whole() -> Result<bool, Failure> {
    let arguments: Vec<String> = env::args().skip(1).collect();
    let wanted = Wanted::of(&arguments)?;
    let here = Path::new(env!("CARGO_MANIFEST_DIR"));
    let root = here.ancestors().nth(2).ok_or("no project around this program")?;
    let all = candidates(root)?;
    let list = here.join("survivors.csv");
    let mut known = Known::read(&list, &all)?;
    // whether known survivors survive still is asked when all run: it takes every test there is
    let is_left = |mutant: &Mutant| matches!(wanted, Wanted::Tenth(_)) && known.has(mutant);
    let takes = |mutant: &&Mutant| wanted.takes(mutant) && !is_left(mutant);
    let mutants: Vec<Mutant> = all.iter().filter(takes).cloned().collect();
    println!("{} of {} mutants", mutants.len(), all.len());
    if mutants.is_empty() {
        return Err("no mutant is chosen".into());
    }
    let built = copy::build(root, &mutants)?;
    println!("{} do not compile", built.left_out.len());
    let tests = Tests::new(&built.programs, &root.join("target/mutants/copy"))?;
    let numbers: Vec<usize> = (0..mutants.len()).filter(|number| !built.left_out.contains(number)).collect();
    let outcomes = run_all(&tests, &mutants, &numbers, &root.join("target/mutants/outcomes.csv"))?;

    let mut by: BTreeMap<&str, usize> = BTreeMap::new();
    let mut survivors = Vec::new();
    for (number, outcome) in &outcomes {
        match (outcome, mutants.get(*number)) {
            (Outcome::Noticed(test), Some(mutant)) => {
                *by.entry(test.split("::").next().unwrap_or_default()).or_default() += 1;
                known.was_noticed(mutant, test);
            }
            (Outcome::Survived, Some(mutant)) => survivors.push(mutant),
            (_, None) => {}
        }
    }
    for mutant in built.left_out.iter().filter_map(|number| mutants.get(*number)) {
        known.was_noticed(mutant, "the compiler");
    }
    println!("{} noticed, {} survived", outcomes.len() - survivors.len(), survivors.len());
    for (test, count) in by {
        println!("  {count} by {test}");
    }
    if matches!(wanted, Wanted::Recorded) {
        known.record(&list, &survivors)?;
        return Ok(true);
    }
    Ok(known.report(&survivors))
}

/// Every mutant of the engine.
fn candidates(root: &Path) -> Result<Vec<Mutant>, Failure> {
    let mut files = Vec::new();
    sources(&root.join("src"), &mut files)?;
    files.sort();
    let mut parsed = Vec::new();
    let mut for_tests = BTreeSet::new();
    for path in &files {
        let text = fs::read_to_string(path)?;
        let syntax = syn::parse_file(&text).map_err(|error| format!("{}: {error}", path.display()))?;
        let folder = path.parent().unwrap_or(root);
        for_tests.extend(places::test_modules(&syntax).map(|name| folder.join(name + ".rs")));
        parsed.push((path, text, syntax));
    }
    let stays_const = constant::names(parsed.iter().map(|(_, _, syntax)| syntax));
    let mut found = Vec::new();
    for (path, text, syntax) in &parsed {
        let is_engine = ENGINE.iter().any(|folder| path.starts_with(root.join("src").join(folder)));
        if !is_engine || for_tests.contains(*path) {
            continue;
        }
        let file = path.strip_prefix(root)?.to_string_lossy();
        found.extend(places::find(&file, text, syntax, &stays_const));
    }
    Ok(found)
}

fn sources(folder: &Path, found: &mut Vec<PathBuf>) -> Result<(), Failure> {
    for entry in fs::read_dir(folder)? {
        let path = entry?.path();
        if path.is_dir() {
            sources(&path, found)?;
        } else if path.extension().is_some_and(|extension| extension == "rs") {
            found.push(path);
        }
    }
    Ok(())
}

/// Runs mutants side by side. Each is written down with what noticed it, and after how many seconds.
fn run_all(
    tests: &Tests,
    mutants: &[Mutant],
    numbers: &[usize],
    record: &Path,
) -> Result<Vec<(usize, Outcome)>, Failure> {
    let record = Mutex::new(csv::Writer::from_path(record)?);
    run::side_by_side(numbers, |number| {
        let began = Instant::now();
        let outcome = tests.run(*number)?;
        let seconds = format!("{:.1}", began.elapsed().as_secs_f64());
        let by = match &outcome {
            Outcome::Noticed(test) => test,
            Outcome::Survived => "",
        };
        if let (Some(mutant), Ok(mut record)) = (mutants.get(*number), record.lock()) {
            record.write_record([&*written(mutant.key), &place(mutant), &mutant.change, by, &seconds])?;
            record.flush()?;
        }
        Ok((*number, outcome))
    })
}

/// The survivors that are known, and what is wrong about their list.
struct Known {
    /// By their keys: of what kind each is, and the reason.
    kinds: BTreeMap<String, [String; 2]>,
    faults: Vec<String>,
}

impl Known {
    fn read(path: &Path, all: &[Mutant]) -> Result<Self, Failure> {
        let mutants: BTreeMap<String, &Mutant> =
            all.iter().map(|mutant| (written(mutant.key), mutant)).collect();
        let mut known = Self { kinds: BTreeMap::new(), faults: Vec::new() };
        for row in csv::Reader::from_path(path)?.into_records() {
            let row = row?;
            let field = |place: usize| row.get(place).unwrap_or_default();
            let (key, kind, reason) = (field(0), field(3), field(4));
            match mutants.get(key) {
                Some(mutant) if field(1) != place(mutant) || field(2) != mutant.change => {
                    known.faults.push(format!("{key} is «{}», «{}»", place(mutant), mutant.change));
                }
                Some(mutant) if !mutant.key.is_multiple_of(ONE_IN) => {
                    known.faults.push(format!("{key} is not among the chosen"));
                }
                Some(_) => {}
                None => known.faults.push(format!("there is no mutant {key} any more ({})", field(1))),
            }
            if !["equivalent", "open"].contains(&kind) || reason.is_empty() {
                known.faults.push(format!("{key} is neither equivalent nor open with a reason"));
            }
            if known.kinds.insert(key.to_owned(), [kind, reason].map(str::to_owned)).is_some() {
                known.faults.push(format!("{key} stands twice"));
            }
        }
        Ok(known)
    }

    fn has(&self, mutant: &Mutant) -> bool {
        self.kinds.contains_key(&written(mutant.key))
    }

    fn was_noticed(&mut self, mutant: &Mutant, by: &str) {
        if self.has(mutant) {
            self.faults.push(format!("{} is noticed, by {by}", written(mutant.key)));
        }
    }

    /// Writes the list anew, in the order of the sources; what is known of a survivor is kept.
    fn record(&self, path: &Path, survivors: &[&Mutant]) -> Result<(), Failure> {
        let mut list = csv::Writer::from_path(path)?;
        list.write_record(["key", "place", "change", "kind", "reason"])?;
        for mutant in survivors {
            let key = written(mutant.key);
            let [kind, reason] = match self.kinds.get(&key) {
                Some([kind, reason]) => [&**kind, reason],
                None => ["open", "no test tells them apart yet"],
            };
            list.write_record([&*key, &place(mutant), &mutant.change, kind, reason])?;
        }
        Ok(list.flush()?)
    }

    /// Says which survivors are not known, and what is wrong about the list; whether there are none and nothing.
    fn report(&self, survivors: &[&Mutant]) -> bool {
        let kind = |mutant: &&&Mutant| self.kinds.get(&written(mutant.key)).map(|[kind, _]| &**kind);
        for known in ["equivalent", "open"] {
            println!("  {} {known}", survivors.iter().filter(|mutant| kind(mutant) == Some(known)).count());
        }
        let mut is_well = self.faults.is_empty();
        for mutant in survivors.iter().filter(|mutant| kind(mutant).is_none()) {
            println!(
                "survived {} {}:{} in {}\n    {}",
                written(mutant.key),
                mutant.file,
                mutant.line,
                mutant.function,
                mutant.change
            );
            is_well = false;
        }
        for fault in &self.faults {
            println!("tests/mutants/survivors.csv: {fault}");
        }
        is_well
    }
}

/// Where a mutant is, without its line.
fn place(mutant: &Mutant) -> String {
    format!("{} in {}", mutant.file, mutant.function)
}
