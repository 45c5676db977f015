//! Keys: made on the command line, read from their file, changed without a restart.

use crate::access::{TestFile, key};
use crate::process::{Served, run};
use crate::support::{FILL, good};
use elbowroom::service::keys::file::read;
use std::time::{Duration, Instant};
use std::{fs, thread};

fn faults(text: &str) -> Vec<String> {
    let scopes = ["outlet_box_fill".to_owned(), "raceway_fill".to_owned()];
    read(text, &scopes).map_or_else(|faults| faults.iter().map(ToString::to_string).collect(), |_| Vec::new())
}

#[test]
fn every_fault_of_a_file_is_listed_and_no_hash_is_repeated() {
    let hash = "0123456789abcdef".repeat(4);
    let good = format!("[[key]]\nname = \"a\"\nsha256 = \"{hash}\"\nscopes = [\"raceway_fill\"]\n");
    assert_eq!(faults(&good), [""; 0]);
    assert_eq!(faults(&format!("{good}expires = 2027-01-31\nquota_per_minute = 5\n")), [""; 0]);
    let bad = format!(
        "{good}\n{good}\n[[key]]\nname = \"b c\"\nsha256 = \"{hash}00\"\nscopes = [\"outlet_fill\"]\n\
         quota_per_minute = 0\nexpires = \"2027-01-31\"\nquotta = 1\n[[key]]\n[other]\n"
    );
    let faults = self::faults(&bad);
    for part in [
        "unknown member other; did you mean [[key]]?",
        "\"a\": the name is used twice",
        "\"a\": the hash is used twice",
        "name is 1 to 64",
        "sha256 is 64",
        "quota_per_minute is",
        "expires is",
        "unknown member quotta",
        "unknown scope \"outlet_fill\"; did you mean outlet_box_fill?",
        "key 4: scopes is",
    ] {
        assert!(faults.iter().any(|fault| fault.contains(part)), "{part}: {faults:#?}");
    }
    assert!(faults.iter().all(|fault| !fault.contains("0123456789")), "{faults:#?}");
    let broken = self::faults(&good.replace("name = \"a\"", "name = \"a"));
    assert!(broken.len() == 1 && !broken[0].contains("0123456789"), "{broken:?}");
    assert_eq!(self::faults("").len(), 1);
}

fn fill(served: &Served, token: &str) -> u16 {
    let body = good().to_string();
    let answer = served.ask(&format!(
        "POST {FILL} HTTP/1.1\r\nhost: x\r\nconnection: close\r\ncontent-type: application/json\r\n\
         authorization: Bearer {token}\r\ncontent-length: {}\r\n\r\n{body}",
        body.len()
    ));
    answer.split(' ').nth(1).unwrap().parse().unwrap()
}

fn within(longest: Duration, mut holds: impl FnMut() -> bool) -> bool {
    let start = Instant::now();
    while start.elapsed() < longest {
        if holds() {
            return true;
        }
        thread::sleep(Duration::from_millis(20));
    }
    false
}

#[test]
fn a_key_is_made_used_added_and_taken_away_while_the_service_runs() {
    let file = TestFile::new("made.toml", "");
    let new = |name: &str| {
        let output = run(
            &["keys", "new", "--keys", file.path(), "--name", name, "--scope", "*", "--expires", "30d"],
            "",
        );
        assert!(output.status.success(), "{output:?}");
        let token = String::from_utf8(output.stdout).unwrap().trim().to_owned();
        assert!(!fs::read_to_string(&file.0).unwrap().contains(&token));
        token
    };
    let first = new("first");
    assert!(first.starts_with("elbowroom_") && first.len() == 74);
    let served = Served::start(&["--bind", "0.0.0.0:0", "--keys", file.path()]);
    assert_eq!((fill(&served, &first), fill(&served, "elbowroom_other")), (200, 401));

    let second = new("second");
    served.signal("HUP");
    assert!(within(Duration::from_secs(1), || fill(&served, &second) == 200));
    assert_eq!(fill(&served, &first), 200);

    // a file with a fault changes nothing
    let text = fs::read_to_string(&file.0).unwrap();
    fs::write(&file.0, "[[key]]").unwrap();
    served.signal("HUP");
    thread::sleep(Duration::from_millis(200));
    assert_eq!(fill(&served, &second), 200);

    // without a signal the change is seen as well
    let only_second = text.split("\n\n").last().unwrap();
    fs::write(&file.0, only_second).unwrap();
    assert!(within(Duration::from_secs(5), || fill(&served, &first) == 401));
    assert_eq!(fill(&served, &second), 200);
}

#[test]
fn a_key_that_cannot_be_added_leaves_the_file_as_it_was() {
    let (_, lines) = key("there", &["*"], None, None);
    let file = TestFile::new("kept.toml", &lines);
    let new = |arguments: &[&str]| {
        let output = run(&[&["keys", "new", "--keys", file.path()], arguments].concat(), "");
        assert_eq!(fs::read_to_string(&file.0).unwrap(), lines);
        assert!(output.stdout.is_empty());
        (output.status.code(), String::from_utf8(output.stderr).unwrap())
    };
    let (status, error) = new(&["--name", "there", "--scope", "*"]);
    assert!(status == Some(78) && error.contains("is used twice"), "{error}");
    let (status, error) = new(&["--name", "b", "--scope", "outlet_fill"]);
    assert!(status == Some(64) && error.contains("outlet_box_fill"), "{error}");
    for wrong in ["2001-01-01", "0d", "soon", "2027-02-30"] {
        assert_eq!(new(&["--name", "b", "--scope", "*", "--expires", wrong]).0, Some(64), "{wrong}");
    }
    assert_eq!(new(&["--name", "b c", "--scope", "*"]).0, Some(64));
    assert_eq!(new(&["--name", "b"]).0, Some(64));
}
