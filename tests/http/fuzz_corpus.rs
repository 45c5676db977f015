//! What the fuzzer kept is read without a fault; each input is run again cut short, as bytes that stop coming are.

#[path = "../../fuzz/src/readers.rs"]
mod readers;

#[test]
fn what_fuzzing_kept_breaks_nothing() {
    let kept = std::fs::read_dir("fuzz/corpus").unwrap().map(|entry| entry.unwrap().path());
    let inputs: Vec<Vec<u8>> = kept.map(|path| std::fs::read(path).unwrap()).collect();
    assert!(inputs.len() > 100, "only {} inputs were kept", inputs.len());
    for input in inputs {
        readers::read(&input);
        readers::read(&input[..input.len() / 2]);
    }
}
