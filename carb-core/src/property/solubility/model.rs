//! The solubility models by name.

/// Which model; what a caller names.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub enum Model {
    /// The fit of the printed beer chart.
    ChartFit,
    /// Water, with a factor for the composition of the drink.
    WaterCore,
    /// The European Union's relation for wine.
    EuWine,
    /// The trade's quadratic in °F and psi.
    ChartQuadratic,
    /// The European breweries' exponential form.
    European,
    /// Water by the IAPWS guideline, with the same factor.
    IapwsWater,
    /// Water by Carroll et al., with the same factor.
    CarrollWater,
}

impl Model {
    /// Every model.
    pub const ALL: &'static [Model] = &[
        Model::ChartFit,
        Model::WaterCore,
        Model::EuWine,
        Model::ChartQuadratic,
        Model::European,
        Model::IapwsWater,
        Model::CarrollWater,
    ];
    /// The names, in the order of [`Model::ALL`].
    pub const NAMES: &'static [&'static str] =
        &["chart_fit", "water_core", "eu_wine", "chart_quadratic", "european", "iapws_water", "carroll_water"];

    /// What the model is, in words.
    pub const fn title(self) -> &'static str {
        match self {
            Model::ChartFit => "by the printed beer chart",
            Model::WaterCore => "of water, corrected for the drink",
            Model::EuWine => "by the European relation for wine",
            Model::ChartQuadratic => "by the trade's quadratic",
            Model::European => "by the European breweries' form",
            Model::IapwsWater => "of water by IAPWS, corrected for the drink",
            Model::CarrollWater => "of water by Carroll et al., corrected for the drink",
        }
    }

    /// The model's name.
    pub fn name(self) -> &'static str {
        Self::NAMES[self as usize]
    }
}
