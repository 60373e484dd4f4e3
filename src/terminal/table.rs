//! Rows under their headings as plain lines.

/// Rows, the headings first, each column as wide as its widest cell; a column of numbers stands to the right.
pub(super) fn aligned<const N: usize>(rows: &[[String; N]], numbers: [bool; N]) -> Vec<String> {
    let mut widths = [0; N];
    for row in rows {
        for (width, cell) in widths.iter_mut().zip(row) {
            *width = cell.chars().count().max(*width);
        }
    }
    let line = |row: &[String; N]| {
        let cells = row.iter().zip(widths).zip(numbers);
        let padded = cells.map(|((cell, width), number)| {
            if number {
                format!("{cell:>width$}")
            } else {
                format!("{cell:<width$}")
            }
        });
        let padded: Vec<String> = padded.collect();
        padded.join("  ").trim_end().to_owned()
    };
    rows.iter().map(line).collect()
}
