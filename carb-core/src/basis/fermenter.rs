//! How a drink came out of its fermentation, and what lives in it.

use crate::quantity::{GaugePressure, Percent, Temperature};

/// How a drink was chilled before it is packaged.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum ColdCrash {
    /// Not at all, or open or through an airlock: air comes in, and no CO2 beyond that of the gas over the drink.
    #[default]
    Open,
    /// Closed and tight: the drink takes CO2 from the gas over it, and the pressure falls.
    Closed,
    /// With CO2 let in, at the fermenter's pressure, long enough for equilibrium.
    Supplied,
}

impl ColdCrash {
    /// Every way.
    pub const ALL: &'static [ColdCrash] = &[ColdCrash::Open, ColdCrash::Closed, ColdCrash::Supplied];
    /// The names, in the order of [`ColdCrash::ALL`].
    pub const NAMES: &'static [&'static str] = &["open", "closed", "co2_supplied"];
}

/// How a drink came out of its fermentation.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Fermenter {
    /// Highest temperature since active fermentation.
    pub warmest: Temperature,
    /// Pressure that the fermenter held then; 0 where it was open or under an airlock.
    pub gauge: GaugePressure,
    /// How it was chilled.
    pub crash: ColdCrash,
    /// To which temperature.
    pub cold: Temperature,
    /// Gas over the drink in a closed fermenter, percent of the drink.
    pub headspace: Percent,
}

impl Fermenter {
    /// A fermenter under an airlock that was not chilled.
    pub fn open(warmest: Temperature) -> Self {
        Self {
            warmest,
            gauge: GaugePressure::from_si(0.0),
            crash: ColdCrash::Open,
            cold: warmest,
            headspace: Percent::from_si(0.0),
        }
    }

    /// As the kernels take it: pressure, cold temperature, headspace.
    pub(crate) fn si(&self) -> [f64; 3] {
        // What is not chilled is as cold as it was warm.
        let cold = if self.crash == ColdCrash::Open { self.warmest.si() } else { self.cold.si() };
        [self.gauge.si(), cold, self.headspace.si()]
    }
}

/// What may ferment in the bottle.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Microbes {
    /// Brewing or wine yeast that leaves dextrins alone.
    #[default]
    BrewingYeast,
    /// Yeast that splits dextrins (STA1).
    Diastatic,
    /// Brettanomyces and other wild yeast, and bacteria.
    Wild,
}

impl Microbes {
    /// Every kind.
    pub const ALL: &'static [Microbes] = &[Microbes::BrewingYeast, Microbes::Diastatic, Microbes::Wild];
    /// The names, in the order of [`Microbes::ALL`].
    pub const NAMES: &'static [&'static str] = &["brewing_yeast", "diastatic", "wild"];
}
