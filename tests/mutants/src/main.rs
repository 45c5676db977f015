//! Mutation testing of the engine: changes one place of it at a time, and says which changes no test notices.
//!
//! ```text
//! cargo run --manifest-path tests/mutants/Cargo.toml                  every mutant that is chosen
//! cargo run --manifest-path tests/mutants/Cargo.toml -- --tenth HASH  a tenth of them, by any text
//! cargo run --manifest-path tests/mutants/Cargo.toml -- KEY…          some, by their keys
//! ```
//!
//! All mutants are compiled once, each behind a switch, into a copy of the project below `target/mutants/`. Those that nothing can notice,
//! since they change nothing that can be asked for, stand in `equivalent.csv` with the reason; any other survivor is an error, and so is a line
//! there that is not true any more.

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
use std::sync::atomic::{AtomicUsize, Ordering};
use std::time::Instant;
use std::{env, fs, thread};

/// Why there is no result.
type Failure = Box<dyn Error + Send + Sync>;

/// What the project exists for.
const ENGINE: [&str; 6] = ["checks", "derivation", "quantity", "rulebook", "tables", "trade"];

/// One mutant in so many is chosen, by its key: a change elsewhere chooses no others.
const ONE_IN: u64 = 16;

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
    Tenth(u64),
    Keys(Vec<String>),
}

impl Wanted {
    fn of(arguments: &[String]) -> Result<Self, Failure> {
        match arguments {
            [] => Ok(Self::All),
            [flag, text] if flag == "--tenth" => Ok(Self::Tenth(hash(&[text]) % 10)),
            keys if keys.iter().all(|key| !key.starts_with('-')) => Ok(Self::Keys(keys.to_vec())),
            _ => Err("usage: elbowroom-mutants [--tenth HASH | KEY…]".into()),
        }
    }

    fn takes(&self, mutant: &Mutant) -> bool {
        let is_chosen = mutant.key.is_multiple_of(ONE_IN);
        match self {
            Self::All => is_chosen,
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
    let mutants: Vec<Mutant> = all.iter().filter(|mutant| wanted.takes(mutant)).cloned().collect();
    println!("{} of {} mutants", mutants.len(), all.len());
    let mut equivalent = Equivalent::read(&here.join("equivalent.csv"), &all)?;
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
                equivalent.was_noticed(mutant, test);
            }
            (Outcome::Survived, Some(mutant)) => survivors.push(mutant),
            (_, None) => {}
        }
    }
    for mutant in built.left_out.iter().filter_map(|number| mutants.get(*number)) {
        equivalent.was_noticed(mutant, "the compiler");
    }
    println!("{} noticed, {} survived", outcomes.len() - survivors.len(), survivors.len());
    for (test, count) in by {
        println!("  {count} by {test}");
    }
    equivalent.report(&survivors)
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

/// Runs mutants side by side, as many at a time as there are processors. Each is written down with what noticed it, and after how
/// many seconds.
fn run_all(
    tests: &Tests,
    mutants: &[Mutant],
    numbers: &[usize],
    record: &Path,
) -> Result<BTreeMap<usize, Outcome>, Failure> {
    let (next, outcomes) = (AtomicUsize::new(0), Mutex::new(BTreeMap::new()));
    let record = Mutex::new(csv::Writer::from_path(record)?);
    let work = || -> Result<(), Failure> {
        while let Some(number) = numbers.get(next.fetch_add(1, Ordering::Relaxed)) {
            let began = Instant::now();
            let outcome = tests.run(*number)?;
            let seconds = format!("{:.1}", began.elapsed().as_secs_f64());
            if let (Some(mutant), Ok(mut record)) = (mutants.get(*number), record.lock()) {
                let by = match &outcome {
                    Outcome::Noticed(test) => test,
                    Outcome::Survived => "",
                };
                record.write_record([&*written(mutant.key), &place(mutant), &mutant.change, by, &seconds])?;
                record.flush()?;
            }
            outcomes.lock().map_err(|_| "a run broke off")?.insert(*number, outcome);
        }
        Ok(())
    };
    let lanes = thread::available_parallelism().map_or(2, usize::from);
    thread::scope(|scope| {
        let running: Vec<_> = (0..lanes).map(|_| scope.spawn(work)).collect();
        running.into_iter().try_for_each(|lane| lane.join().map_err(|_| "a run broke off")?)
    })?;
    Ok(outcomes.into_inner()?)
}

/// The mutants that nothing can notice, and what is wrong about their list.
struct Equivalent {
    keys: BTreeSet<String>,
    faults: Vec<String>,
}

impl Equivalent {
    fn read(path: &Path, all: &[Mutant]) -> Result<Self, Failure> {
        let known: BTreeMap<String, &Mutant> =
            all.iter().map(|mutant| (written(mutant.key), mutant)).collect();
        let mut equivalent = Self { keys: BTreeSet::new(), faults: Vec::new() };
        for row in csv::Reader::from_path(path)?.into_records() {
            let row = row?;
            let field = |place: usize| row.get(place).unwrap_or_default();
            let key = field(0);
            match known.get(key) {
                Some(mutant) if mutant.key.is_multiple_of(ONE_IN) => {
                    if field(1) != place(mutant) || field(2) != mutant.change || field(3).is_empty() {
                        equivalent.faults.push(format!("{key} is «{}», «{}»", place(mutant), mutant.change));
                    }
                }
                Some(_) => equivalent.faults.push(format!("{key} is not among the chosen")),
                None => equivalent.faults.push(format!("there is no mutant {key} any more ({})", field(1))),
            }
            if !equivalent.keys.insert(key.to_owned()) {
                equivalent.faults.push(format!("{key} stands twice"));
            }
        }
        Ok(equivalent)
    }

    fn was_noticed(&mut self, mutant: &Mutant, by: &str) {
        let key = written(mutant.key);
        if self.keys.contains(&key) {
            self.faults.push(format!("{key} is noticed, by {by}"));
        }
    }

    /// Says which survivors are not known, and what is wrong about the list; whether there are none and nothing.
    fn report(&self, survivors: &[&Mutant]) -> Result<bool, Failure> {
        let unknown: Vec<_> =
            survivors.iter().filter(|mutant| !self.keys.contains(&written(mutant.key))).collect();
        println!("{} of the survivors are known to be equivalent", survivors.len() - unknown.len());
        for mutant in &unknown {
            println!(
                "survived {} {}:{} in {}",
                written(mutant.key),
                mutant.file,
                mutant.line,
                mutant.function
            );
            println!("    {}", mutant.change);
        }
        for fault in &self.faults {
            println!("tests/mutants/equivalent.csv: {fault}");
        }
        Ok(unknown.is_empty() && self.faults.is_empty())
    }
}

/// Where a mutant is, without its line.
fn place(mutant: &Mutant) -> String {
    format!("{} in {}", mutant.file, mutant.function)
}
