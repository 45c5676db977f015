//! A table of texts whose columns line up.

use std::fmt;

/// A table under construction.
pub(super) struct Grid {
    rows: Vec<Vec<String>>,
}

impl Grid {
    /// A table with its headings.
    pub(super) fn new(headings: Vec<String>) -> Self {
        Self { rows: vec![headings] }
    }

    /// Adds a row.
    pub(super) fn add(&mut self, row: Vec<String>) {
        self.rows.push(row);
    }
}

impl fmt::Display for Grid {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let columns = self.rows.first().map_or(0, Vec::len);
        let width = |column: usize| {
            self.rows.iter().filter_map(|row| row.get(column)).map(|field| field.chars().count()).max()
        };
        let widths: Vec<usize> = (0..columns).map(|column| width(column).unwrap_or(0)).collect();
        for (index, row) in self.rows.iter().enumerate() {
            if index > 0 {
                writeln!(f)?;
            }
            let mut line = String::new();
            for (field, width) in row.iter().zip(&widths) {
                line.push_str(&format!("{field:width$}  "));
            }
            f.write_str(line.trim_end())?;
        }
        Ok(())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn columns_line_up_by_characters() {
        let mut grid = Grid::new(vec!["What".into(), "Volume".into()]);
        grid.add(vec!["Devices".into(), "9 in³".into()]);
        grid.add(vec!["Clamps".into(), String::new()]);
        assert_eq!(grid.to_string(), "What     Volume\nDevices  9 in³\nClamps");
    }
}
