//! Runs the tests against one mutant, until one fails.

use crate::Failure;
use crate::copy::SWITCH;
use std::collections::BTreeMap;
use std::io::{BufRead as _, BufReader};
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};
use std::sync::atomic::{AtomicUsize, Ordering};
use std::sync::mpsc::{self, RecvTimeoutError};
use std::thread;
use std::time::{Duration, Instant};

/// Some tests of one program. Those that most often notice come first.
struct Stage {
    name: &'static str,
    program: &'static str,
    arguments: &'static [&'static str],
}

/// The tests that are used. Not among them: what reads the sources of the project, which are others here; drawings and words; and
/// what asks of the cases, and not of the code, whether they are enough.
const STAGES: [Stage; 4] = [
    Stage {
        name: "cases",
        program: "engine",
        arguments: &["conformance::every_case_of_", "fixed_answers::", "printed_counts::"],
    },
    Stage { name: "library", program: "elbowroom", arguments: &[] },
    Stage {
        name: "engine",
        program: "engine",
        arguments: &[
            "--skip=conformance::",
            "--skip=drawings::",
            "--skip=fixed_answers::",
            "--skip=languages::",
            "--skip=module_docs::",
            "--skip=mutations::",
            "--skip=printed_counts::",
            "--skip=proofs::",
            "--skip=the_engine_names_nothing_that_is_not_pure",
        ],
    },
    Stage { name: "proofs", program: "engine", arguments: &["proofs::"] },
];

/// Fewer requests than the suite generates, always the same ones, and no search for the smallest that fails.
const VARIABLES: [(&str, &str); 6] = [
    ("ELBOWROOM_EXERCISES", "100"),
    ("PROPTEST_CASES", "128"),
    ("PROPTEST_DISABLE_FAILURE_PERSISTENCE", "true"),
    ("PROPTEST_MAX_SHRINK_ITERS", "0"),
    ("PROPTEST_RNG_SEED", "1"),
    ("RUST_BACKTRACE", "0"),
];

/// The most memory of a test program, in KiB: what grows without end is noticed.
const MEMORY: u32 = 4_000_000;

/// What the tests say of a mutant.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Outcome {
    /// All pass.
    Survived,
    /// A test fails, the program breaks off or does not end: what noticed it.
    Noticed(String),
}

/// Does the same with each of several things, as many at a time as there are processors; gives back what comes of them, in their
/// order.
pub fn side_by_side<T: Sync, R: Send>(
    things: &[T],
    act: impl Fn(&T) -> Result<R, Failure> + Sync,
) -> Result<Vec<R>, Failure> {
    let next = AtomicUsize::new(0);
    let lane = || -> Result<Vec<(usize, R)>, Failure> {
        let mut done = Vec::new();
        loop {
            let place = next.fetch_add(1, Ordering::Relaxed);
            let Some(thing) = things.get(place) else { return Ok(done) };
            done.push((place, act(thing)?));
        }
    };
    let lanes = thread::available_parallelism().map_or(2, usize::from);
    let mut done = thread::scope(|scope| {
        let running: Vec<_> = (0..lanes).map(|_| scope.spawn(lane)).collect();
        let mut done = Vec::new();
        for lane in running {
            done.extend(lane.join().map_err(|_| "a run broke off")??);
        }
        Ok::<_, Failure>(done)
    })?;
    done.sort_by_key(|(place, _)| *place);
    Ok(done.into_iter().map(|(_, result)| result).collect())
}

/// The tests, and how long each stage takes on the code as it is.
pub struct Tests<'a> {
    programs: &'a BTreeMap<String, PathBuf>,
    folder: PathBuf,
    limits: Vec<Duration>,
}

impl<'a> Tests<'a> {
    /// Runs everything with no mutant switched on: all must pass.
    pub fn new(programs: &'a BTreeMap<String, PathBuf>, folder: &Path) -> Result<Self, Failure> {
        let mut tests = Self { programs, folder: folder.to_owned(), limits: Vec::new() };
        for (name, elapsed) in side_by_side(&STAGES, |stage| {
            let began = Instant::now();
            match tests.stage(stage, None, Duration::from_secs(600))? {
                Outcome::Noticed(by) => Err(format!("without any mutant this fails: {by}").into()),
                Outcome::Survived => Ok((stage.name, began.elapsed())),
            }
        })? {
            println!("{name}: {:.1} s with no mutant", elapsed.as_secs_f64());
            tests.limits.push(elapsed * 4 + Duration::from_secs(10));
        }
        Ok(tests)
    }

    /// Runs the tests against the mutant with a number.
    pub fn run(&self, number: usize) -> Result<Outcome, Failure> {
        for (stage, limit) in STAGES.iter().zip(&self.limits) {
            let outcome = self.stage(stage, Some(number), *limit)?;
            if outcome != Outcome::Survived {
                return Ok(outcome);
            }
        }
        Ok(Outcome::Survived)
    }

    fn stage(&self, stage: &Stage, mutant: Option<usize>, limit: Duration) -> Result<Outcome, Failure> {
        let program = self.programs.get(stage.program).ok_or("a test program is missing")?;
        let mut command = Command::new("sh");
        command.args(["-c", &format!("ulimit -v {MEMORY} && exec \"$0\" \"$@\"")]);
        command.arg(program).args(stage.arguments).arg("--test-threads=1");
        command.current_dir(&self.folder).envs(VARIABLES).env_remove(SWITCH);
        if let Some(number) = mutant {
            command.env(SWITCH, number.to_string());
        }
        let mut running =
            command.stdin(Stdio::null()).stdout(Stdio::piped()).stderr(Stdio::null()).spawn()?;
        let output = running.stdout.take().ok_or("no output of a test program")?;
        let (failed, first_failed) = mpsc::channel();
        thread::spawn(move || {
            for line in BufReader::new(output).lines().map_while(Result::ok) {
                let test = line.strip_prefix("test ").and_then(|line| line.strip_suffix(" ... FAILED"));
                if test.is_some_and(|test| failed.send(test.to_owned()).is_err()) {
                    break;
                }
            }
        });
        let noticed = match first_failed.recv_timeout(limit) {
            Ok(test) => Some(test),
            Err(RecvTimeoutError::Timeout) => Some(format!("the time limit of {}", stage.name)),
            Err(RecvTimeoutError::Disconnected) => None,
        };
        if let Some(by) = noticed {
            running.kill()?;
            running.wait()?;
            return Ok(Outcome::Noticed(by));
        }
        Ok(match running.wait()? {
            status if status.success() => Outcome::Survived,
            status => Outcome::Noticed(format!("{} breaking off ({status})", stage.name)),
        })
    }
}
