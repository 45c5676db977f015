//! The fields of one line of a CSV (RFC 4180, one line a record).
//!
//! The reader of the crate csv does not fit: it does not report a quote that is never closed, nor what follows a closed one
//! (`"4" square`, an inch mark), but changes the cell without a word.

/// The fields of a line; `None` when a quote is not closed. A quote inside a field that does not begin with one stands for
/// itself: it is a mark of inches.
pub(super) fn fields(line: &str) -> Option<Vec<String>> {
    let mut fields = Vec::new();
    let mut rest = line;
    loop {
        let (field, after) = match rest.trim_start_matches([' ', '\t']).strip_prefix('"') {
            Some(quoted) => unquote(quoted)?,
            None => {
                let end = rest.find(',').unwrap_or(rest.len());
                (rest.get(..end)?.to_owned(), rest.get(end..)?)
            }
        };
        fields.push(field);
        match after.strip_prefix(',') {
            Some(next) => rest = next,
            None => return Some(fields),
        }
    }
}

/// A quoted field after its first quote, and what follows it; `None` when it is not closed, or followed by anything else.
fn unquote(mut rest: &str) -> Option<(String, &str)> {
    let mut field = String::new();
    loop {
        let (part, after) = rest.split_once('"')?;
        field.push_str(part);
        match after.strip_prefix('"') {
            Some(next) => {
                field.push('"');
                rest = next;
            }
            None => {
                let after = after.trim_start_matches([' ', '\t']);
                return (after.is_empty() || after.starts_with(',')).then_some((field, after));
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn fields_are_read_as_the_csv_standard_says_and_inch_marks_stand_for_themselves() {
        for (line, expected) in [
            ("", &[""][..]),
            ("a,b", &["a", "b"]),
            ("a,,b,", &["a", "", "b", ""]),
            ("\"a,b\",\"say \"\"x\"\"\" ,c", &["a,b", "say \"x\"", "c"]),
            ("4\",1/2\"", &["4\"", "1/2\""]),
            ("\"\"", &[""]),
        ] {
            assert_eq!(fields(line).unwrap(), expected, "{line}");
        }
        for bad in ["\"a", "a,\"b,c", "\"a\"b,c"] {
            assert_eq!(fields(bad), None, "{bad}");
        }
        // what another program writes is read back
        let mut writer = csv::Writer::from_writer(Vec::new());
        let record = ["a\"b", "c,d", " e ", "", "½"];
        writer.write_record(record).unwrap();
        let line = String::from_utf8(writer.into_inner().unwrap()).unwrap();
        assert_eq!(fields(line.trim_end()).unwrap(), record);
    }
}
