//! Names: how the vocabulary is spelt, parsed and printed.

use super::field::Key;
use super::unit::Unit;
use core::fmt;

/// How many bytes a [`ShortText`] keeps.
pub const TEXT_BYTES: usize = 64;

/// A short text without allocation, for names that a caller gave; longer ones are cut.
#[derive(Clone, Copy, PartialEq, Eq)]
pub struct ShortText {
    bytes: [u8; TEXT_BYTES],
    length: u8,
}

impl ShortText {
    /// Keeps `text`, cut at a character boundary where it is too long.
    pub fn new(text: &str) -> Self {
        let mut end = text.len().min(TEXT_BYTES);
        while !text.is_char_boundary(end) {
            end -= 1;
        }
        let mut bytes = [0; TEXT_BYTES];
        bytes[..end].copy_from_slice(&text.as_bytes()[..end]);
        Self { bytes, length: end as u8 }
    }

    /// The text.
    pub fn as_str(&self) -> &str {
        core::str::from_utf8(&self.bytes[..self.length as usize]).unwrap_or("")
    }
}

impl fmt::Write for ShortText {
    fn write_str(&mut self, more: &str) -> fmt::Result {
        let mut end = more.len().min(TEXT_BYTES - self.length as usize);
        while !more.is_char_boundary(end) {
            end -= 1;
        }
        let at = self.length as usize;
        self.bytes[at..at + end].copy_from_slice(&more.as_bytes()[..end]);
        self.length += end as u8;
        Ok(())
    }
}

impl fmt::Debug for ShortText {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        fmt::Debug::fmt(self.as_str(), f)
    }
}

impl fmt::Display for ShortText {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(self.as_str())
    }
}

/// A field in one of its units: a name of the vocabulary.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Name {
    /// Which field.
    pub key: Key,
    /// Which unit; `None` for a choice, a flag or a text.
    pub unit: Option<&'static Unit>,
}

impl Name {
    /// The field under its first (metric) unit.
    pub fn first(key: Key) -> Self {
        Self { key, unit: key.dimension().map(Unit::first) }
    }

    /// Every name of a field, the metric one first.
    pub fn of(key: Key) -> impl Iterator<Item = Name> {
        let dimension = key.dimension();
        let plain = dimension.is_none().then_some(Name { key, unit: None });
        let units = dimension.into_iter().flat_map(Unit::of).map(move |u| Name { key, unit: Some(u) });
        plain.into_iter().chain(units)
    }

    /// The name that `text` spells.
    pub fn parse(text: &str) -> Option<Self> {
        Key::ALL.iter().flat_map(|&key| Name::of(key)).find(|name| name.spells(text))
    }

    /// Whether `text` spells this name.
    pub fn spells(self, text: &str) -> bool {
        let role = self.key.field().role;
        match self.unit {
            None => text == role,
            Some(unit) if role.is_empty() => text == unit.name,
            Some(unit) => {
                text.strip_prefix(role).and_then(|rest| rest.strip_prefix('_')).is_some_and(|rest| rest == unit.name)
            }
        }
    }

    /// The name among `keys` that `text` most nearly spells, if any is near enough to be a slip.
    pub fn nearest(text: &str, keys: impl Iterator<Item = Key>) -> Option<Self> {
        // Gallons and fluid ounces are of two kinds, and what holds drink is told in volume.
        let spelt_out = [("_gal", "_us_gal"), ("_oz", "_us_fl_oz")].into_iter().find_map(|(short, long)| {
            use fmt::Write;
            let mut full = ShortText::new("");
            let _ = write!(full, "{}{long}", text.strip_suffix(short)?);
            Self::parse(full.as_str())
        });
        let mut best: Option<(usize, Name)> = None;
        for name in keys.flat_map(Name::of) {
            if spelt_out == Some(name) {
                return spelt_out;
            }
            let spelling = name.spelling();
            let distance = edit_distance(text, spelling.as_str());
            if distance <= 2.max(spelling.as_str().len() / 3) && best.is_none_or(|(d, _)| distance < d) {
                best = Some((distance, name));
            }
        }
        best.map(|(_, name)| name)
    }

    /// The spelling as a text.
    pub fn spelling(self) -> ShortText {
        use fmt::Write;
        let mut text = ShortText::new("");
        let _ = write!(text, "{self}");
        text
    }
}

impl fmt::Display for Name {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let role = self.key.field().role;
        match self.unit {
            None => f.write_str(role),
            Some(unit) if role.is_empty() => f.write_str(unit.name),
            Some(unit) => write!(f, "{role}_{}", unit.name),
        }
    }
}

/// How many single-letter slips (a letter added, dropped, changed, or two neighbours swapped) lie between two
/// texts; texts too long to be names count as far apart.
pub fn edit_distance(a: &str, b: &str) -> usize {
    let (a, b) = (a.as_bytes(), b.as_bytes());
    if a.len() > TEXT_BYTES || b.len() > TEXT_BYTES {
        return usize::MAX;
    }
    let mut rows = [[0usize; TEXT_BYTES + 1]; 3];
    for (j, cell) in rows[1].iter_mut().enumerate() {
        *cell = j;
    }
    for i in 1..=a.len() {
        rows[2][0] = i;
        for j in 1..=b.len() {
            let change = usize::from(!a[i - 1].eq_ignore_ascii_case(&b[j - 1]));
            let mut least = (rows[1][j] + 1).min(rows[2][j - 1] + 1).min(rows[1][j - 1] + change);
            if i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1] {
                least = least.min(rows[0][j - 2] + 1);
            }
            rows[2][j] = least;
        }
        rows.rotate_left(1);
    }
    rows[1][b.len()]
}
