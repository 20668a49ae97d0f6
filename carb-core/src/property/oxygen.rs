//! Oxygen: how much of it water holds, how it spreads between a drink and the gas over it, and what the trade aims at.

use super::constant::GAS_CONSTANT;
use crate::evidence::Source;
use crate::evidence::caution::{OXYGEN_TEMPERATURE, Range};
use crate::evidence::equation::{Equation, Measure, Standing, limited, symbol};
use crate::evidence::source::{BENSON_KRAUSE, CBC_OXYGEN, CODATA, ISBT};
use crate::number::exp;
use crate::quantity::unit::{BAR, KELVIN, MICROGRAM_PER_LITRE, MILLIGRAM_PER_LITRE, PARTS_PER_MILLION, VOLUME_PERCENT};

/// Molar mass of oxygen, kg/mol.
pub const OXYGEN_MOLAR_MASS: f64 = 0.031_998;
/// Oxygen in dry air, a share by volume.
pub const IN_AIR: f64 = VOLUME_PERCENT.to_si(20.95);
/// The most oxygen in CO2 that is sold for drinks.
pub const IN_GAS: f64 = PARTS_PER_MILLION.to_si(30.0);

/// Temperatures for which the solubility was measured.
pub static TEMPERATURE: Range = Range { caution: &OXYGEN_TEMPERATURE, low: 273.15, high: 313.15 };

/// Oxygen in fresh water under moist air at one atmosphere, kg/m3, at the temperature `t` (K).
#[inline(always)]
pub fn saturation(t: f64) -> f64 {
    let u = 1.0 / t;
    // The terms reach 860, of which 2.6 are left.
    1e-3 * exp(-139.34411 + u * (1.575701e5 + u * (-6.642308e7 + u * (1.2438e10 + u * -8.621949e11))))
}

/// Oxygen in water, kg/m3 per pascal of oxygen, where moist air holds `saturation` and the vapour pressure is `vapour` (Pa).
#[inline(always)]
pub fn solubility(saturation: f64, vapour: f64) -> f64 {
    saturation / (0.20946 * (101_325.0 - vapour))
}

/// Oxygen in a volume of gas over that in the same volume of water, at the temperature `t` (K), where the water holds
/// `solubility` (kg/m3 per pascal).
#[inline(always)]
pub fn partition(t: f64, solubility: f64) -> f64 {
    OXYGEN_MOLAR_MASS / (GAS_CONSTANT * t * solubility)
}

/// The catalogue's entry for [`saturation`].
pub static SATURATION: Equation = Equation {
    id: "oxygen_saturation",
    title: "oxygen in fresh water under moist air at one atmosphere",
    formula: "C = exp(-139.34411 + 157570.1/T - 66423080/T^2 + 12438000000/T^3 - 862194900000/T^4)",
    result: symbol("C", Measure::In(&MILLIGRAM_PER_LITRE), "oxygen dissolved"),
    inputs: &[limited("T", Measure::In(&KELVIN), "temperature", 273.15, 313.15)],
    uncertainty_percent: Some(0.2),
    uncertainty: "stated for water; a beer holds a few percent less",
    sources: &[&BENSON_KRAUSE],
    standing: Standing::Published,
    kernel: |x| saturation(x[0]),
};

/// The catalogue's entry for [`solubility`].
pub static SOLUBILITY: Equation = Equation {
    id: "oxygen_solubility",
    title: "solubility of oxygen in water",
    formula: "k = C/(0.20946*(1.01325 - w))/100000000",
    result: symbol("k", Measure::Plain("kg/(m3 Pa)"), "oxygen dissolved per pressure of oxygen"),
    inputs: &[
        limited("C", Measure::In(&MILLIGRAM_PER_LITRE), "oxygen under moist air at one atmosphere", 5.0, 15.0),
        limited("w", Measure::In(&BAR), "vapour pressure of water", 0.005, 0.08),
    ],
    uncertainty_percent: Some(0.2),
    uncertainty: "that of the saturation; by Henry's law",
    sources: &[&BENSON_KRAUSE],
    standing: Standing::Published,
    kernel: |x| solubility(x[0], x[1]),
};

/// The catalogue's entry for [`partition`].
pub static PARTITION: Equation = Equation {
    id: "oxygen_partition",
    title: "oxygen in the gas over that in as much drink",
    formula: "K = 0.031998/(8.314462618*T*k)",
    result: symbol("K", Measure::Plain(""), "concentration in the gas over that in the drink"),
    inputs: &[
        limited("T", Measure::In(&KELVIN), "temperature", 273.15, 313.15),
        limited("k", Measure::Plain("kg/(m3 Pa)"), "solubility of oxygen", 3e-7, 8e-7),
    ],
    uncertainty_percent: Some(5.0),
    uncertainty: "judgement: that of water is taken for the drink, which holds a few percent less",
    sources: &[&BENSON_KRAUSE, &CODATA],
    standing: Standing::Judgement,
    kernel: |x| partition(x[0], x[1]),
};

/// Oxygen in a headspace, per volume of drink.
pub static IN_HEADSPACE: Equation = Equation {
    id: "headspace_oxygen",
    title: "oxygen in the headspace, per litre of drink",
    formula: "q = x*P*100000*0.031998/(8.314462618*T)*h/100",
    result: symbol("q", Measure::In(&MICROGRAM_PER_LITRE), "oxygen in the headspace, per litre of drink"),
    inputs: &[
        limited("x", Measure::In(&PARTS_PER_MILLION), "oxygen in the gas", 0.0, 2.5e5),
        limited("P", Measure::In(&BAR), "pressure of the gas, absolute", 0.3, 10.0),
        limited("T", Measure::In(&KELVIN), "temperature", 268.15, 333.15),
        limited("h", Measure::In(&crate::quantity::unit::PERCENT), "gas over the drink, percent of it", 0.0, 100.0),
    ],
    uncertainty_percent: Some(1.5),
    uncertainty: "ideal gas; the vapour in it counts as gas",
    sources: &[&CODATA],
    standing: Standing::Judgement,
    kernel: |x| in_headspace(x[0], x[1], x[2], x[3]),
};

/// Oxygen in a headspace, kg per m3 of drink: the share `x` at the pressure `p` (Pa) and temperature `t` (K) in
/// `headspace` percent of the drink.
#[inline(always)]
pub fn in_headspace(x: f64, p: f64, t: f64, headspace: f64) -> f64 {
    x * p * OXYGEN_MOLAR_MASS / (GAS_CONSTANT * t) * headspace / 100.0
}

/// Oxygen that the CO2 brings along which a drink takes up.
pub static BROUGHT: Equation = Equation {
    id: "oxygen_brought_by_gas",
    title: "oxygen that carbonating gas brings along",
    formula: "q = c*31.998/44.0095*x/(1 - x/1000000)",
    result: symbol("q", Measure::In(&MICROGRAM_PER_LITRE), "oxygen brought along, per litre of drink"),
    inputs: &[
        limited("c", Measure::In(&crate::quantity::unit::CO2_GRAMS_PER_LITRE), "CO2 taken up", 0.0, 16.0),
        limited("x", Measure::In(&PARTS_PER_MILLION), "oxygen in the CO2 as supplied", 0.0, 5.0e4),
    ],
    uncertainty_percent: None,
    uncertainty: "arithmetic, all of it taken up; a bound where gas flows through and leaves",
    sources: &[],
    standing: Standing::Definition,
    kernel: |x| brought(x[0], x[1]),
};

/// Oxygen, kg/m3 of drink, that comes with `c` (kg/m3) of CO2 in which it is the share `x`.
#[inline(always)]
pub fn brought(c: f64, x: f64) -> f64 {
    c * OXYGEN_MOLAR_MASS / super::constant::CO2_MOLAR_MASS * x / (1.0 - x)
}

/// A figure of the trade for oxygen.
#[derive(Debug)]
pub struct OxygenLimit {
    /// Its name.
    pub name: &'static str,
    /// In words.
    pub title: &'static str,
    /// In the drink or the whole package, kg/m3.
    pub drink: Option<f64>,
    /// In the gas, a share by volume.
    pub gas: Option<f64>,
    /// Where it is from.
    pub source: Option<&'static Source>,
    /// How well it is known.
    pub standing: Standing,
}

const fn drink(name: &'static str, title: &'static str, micrograms: f64) -> OxygenLimit {
    let drink = Some(MICROGRAM_PER_LITRE.to_si(micrograms));
    OxygenLimit { name, title, drink, gas: None, source: None, standing: Standing::CommonPractice }
}

/// Total package oxygen beyond which an answer warns, kg/m3.
pub const LIMIT: f64 = MICROGRAM_PER_LITRE.to_si(200.0);

/// What the trade aims at: labels, no physics.
pub static OXYGEN_LIMITS: &[OxygenLimit] = &[
    drink("bright_tank", "dissolved in the bright tank of a brewery", 20.0),
    drink("good", "total package oxygen: good", 50.0),
    drink("packaging", "picked up while packaging, the upper limit of a brewery", 50.0),
    drink("acceptable", "total package oxygen: acceptable", 100.0),
    OxygenLimit {
        name: "limit",
        title: "total package oxygen: the limit of commercial packages",
        drink: Some(LIMIT),
        gas: None,
        source: Some(&CBC_OXYGEN),
        standing: Standing::CommonPractice,
    },
    OxygenLimit {
        name: "beverage_co2",
        title: "oxygen in CO2 that is sold for drinks, at most",
        drink: None,
        gas: Some(PARTS_PER_MILLION.to_si(30.0)),
        source: Some(&ISBT),
        standing: Standing::Published,
    },
    OxygenLimit {
        name: "air",
        title: "oxygen in dry air",
        drink: None,
        gas: Some(VOLUME_PERCENT.to_si(20.95)),
        source: None,
        standing: Standing::CommonPractice,
    },
];
