//! The drink.

use crate::error::Error;
use crate::evidence::caution::{ASSUMED_COMPOSITION, ASSUMED_FINISHED, Caution, Cautions};
use crate::property::solubility::Model;
use crate::property::solubility::composition::Factor;
use crate::quantity::{Concentration, Key, Percent};

/// What the drink is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub enum Kind {
    /// Plain water.
    Water,
    /// Beer.
    Beer,
    /// Cider.
    Cider,
    /// Mead.
    Mead,
    /// Wine.
    Wine,
    /// Soft drink.
    SoftDrink,
}

impl Kind {
    /// Every kind.
    pub const ALL: &'static [Kind] = &[Kind::Water, Kind::Beer, Kind::Cider, Kind::Mead, Kind::Wine, Kind::SoftDrink];
    /// The names, in the order of [`Kind::ALL`].
    pub const NAMES: &'static [&'static str] = &["water", "beer", "cider", "mead", "wine", "soft_drink"];

    /// The name.
    pub fn name(self) -> &'static str {
        Self::NAMES[self as usize]
    }

    /// Usual alcohol (% vol) and extract (g/L); judgement, said in every answer that uses them.
    pub const fn usual(self) -> (f64, f64) {
        match self {
            Kind::Water => (0.0, 0.0),
            Kind::Beer => (5.0, 35.0),
            Kind::Cider => (6.0, 10.0),
            Kind::Mead => (12.0, 20.0),
            Kind::Wine => (12.0, 5.0),
            Kind::SoftDrink => (0.0, 100.0),
        }
    }

    /// The solubility models made for the drink, each with its uncertainty
    /// (k = 2, percent): judgement, from the scatter of measurements and the spread of the models.
    pub const fn models(self) -> &'static [(Model, f64)] {
        use Model::*;
        match self {
            Kind::Water => &[(WaterCore, 2.1), (IapwsWater, 5.0), (CarrollWater, 3.0)],
            Kind::Beer => &[(ChartFit, 5.0), (ChartQuadratic, 5.0), (European, 5.0), (WaterCore, 6.0)],
            Kind::Cider | Kind::Mead => &[(WaterCore, 8.0), (EuWine, 10.0), (ChartFit, 10.0)],
            Kind::Wine => &[(EuWine, 6.0), (WaterCore, 10.0)],
            Kind::SoftDrink => &[(WaterCore, 3.0), (IapwsWater, 6.0), (CarrollWater, 4.0)],
        }
    }

    /// Viscosity over that of water; judgement, between 1.4 and 1.8 for beer.
    pub const fn relative_viscosity(self) -> f64 {
        match self {
            Kind::Water => 1.0,
            Kind::Beer | Kind::Cider | Kind::Mead => 1.6,
            Kind::Wine => 1.7,
            Kind::SoftDrink => 1.3,
        }
    }

    /// The composition factor that the water core takes for it.
    pub const fn factor(self) -> Factor {
        match self {
            Kind::Cider | Kind::Mead => Factor::Midpoint,
            Kind::Water | Kind::Beer | Kind::Wine | Kind::SoftDrink => Factor::Laboratory,
        }
    }

    /// Whether it is usually fermented out when it is packaged, so that nothing fermentable may be assumed left.
    const fn fermented_out(self) -> bool {
        matches!(self, Kind::Water | Kind::Beer)
    }
}

/// Whether living yeast goes into the package.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Yeast {
    /// It does.
    Live,
    /// None does: what is fermentable stays as it is.
    None,
}

impl Yeast {
    /// Every choice.
    pub const ALL: &'static [Yeast] = &[Yeast::Live, Yeast::None];
    /// The names, in the order of [`Yeast::ALL`].
    pub const NAMES: &'static [&'static str] = &["live", "none"];

    /// The name.
    pub fn name(self) -> &'static str {
        Self::NAMES[self as usize]
    }
}

/// A drink: what it is, and what is in it.
#[derive(Clone, Copy, Debug, PartialEq)]
#[must_use]
pub struct Beverage {
    /// What it is.
    pub kind: Kind,
    /// Whether living yeast goes into the package.
    pub yeast: Yeast,
    abv: Option<f64>,
    extract: Option<f64>,
    fermentable: Option<f64>,
}

impl Beverage {
    /// A drink of usual composition.
    pub const fn new(kind: Kind) -> Self {
        Self { kind, yeast: Yeast::Live, abv: None, extract: None, fermentable: None }
    }

    /// The same drink with this alcohol by volume.
    pub fn with_abv(mut self, abv: Percent) -> Self {
        self.abv = Some(abv.si());
        self
    }

    /// The same drink with this much dissolved matter, everything included.
    pub fn with_extract(mut self, extract: Concentration) -> Self {
        self.extract = Some(extract.si());
        self
    }

    /// The same drink with this much that yeast can still turn into CO2.
    pub fn with_fermentable(mut self, fermentable: Concentration) -> Self {
        self.fermentable = Some(fermentable.si());
        self
    }

    /// The same drink, packaged with or without living yeast.
    pub fn with_yeast(mut self, yeast: Yeast) -> Self {
        self.yeast = yeast;
        self
    }

    /// Alcohol, % vol: as given, or usual for the kind.
    pub fn abv(&self) -> f64 {
        self.abv.unwrap_or(self.kind.usual().0)
    }

    /// Dissolved matter, g/L: as given, or usual for the kind; at least what is fermentable, which is part of it.
    pub fn extract(&self) -> f64 {
        self.extract.unwrap_or(self.kind.usual().1).max(self.fermentable.unwrap_or(0.0))
    }

    /// What yeast in the package can still ferment, g/L.
    ///
    /// # Errors
    /// Where it was not given and may not be assumed.
    pub fn fermentable(&self) -> Result<f64, Error> {
        match (self.yeast, self.fermentable) {
            (Yeast::None, _) => Ok(0.0),
            (Yeast::Live, Some(left)) => Ok(left),
            (Yeast::Live, None) if self.kind.fermented_out() => Ok(0.0),
            (Yeast::Live, None) => Err(Error::Missing {
                parameter: Key::Fermentable,
                advice: "with living yeast, what is still fermentable makes pressure (10 g/L makes 2.6 volumes); give fermentable_g_per_l (0 only if it is dry), or in a whole job current_sg and final_sg, or yeast=\"none\" if no living yeast is left",
            }),
        }
    }

    /// What is fermentable in the drink, g/L, whether or not yeast is there to ferment it.
    ///
    /// # Errors
    /// As [`Beverage::fermentable`].
    pub fn fermentable_matter(&self) -> Result<f64, Error> {
        Ok(self.fermentable.unwrap_or(self.fermentable()?))
    }

    /// Notes what was assumed about the composition.
    pub fn note_composition(&self, cautions: &mut Cautions) {
        if (self.abv.is_none() || self.extract.is_none()) && self.kind != Kind::Water {
            cautions.add(Caution::of(&ASSUMED_COMPOSITION, self.abv()));
        }
    }

    /// Notes that the drink is taken to be fermented out.
    pub fn note_finished(&self, cautions: &mut Cautions) {
        if self.yeast == Yeast::Live && self.fermentable.is_none() && self.kind.fermented_out() {
            cautions.add(Caution::of(&ASSUMED_FINISHED, 0.0));
        }
    }
}
