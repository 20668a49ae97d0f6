//! In which units a chart is laid out.

/// The units of a chart's grid.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Layout {
    /// Degrees Celsius and bar.
    #[default]
    Metric,
    /// Degrees Fahrenheit and psi.
    Us,
}

impl Layout {
    /// Every layout.
    pub const ALL: &'static [Layout] = &[Layout::Metric, Layout::Us];
    /// The names, in the order of [`Layout::ALL`].
    pub const NAMES: &'static [&'static str] = &["metric", "us"];
}
