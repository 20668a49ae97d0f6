//! The water core: the solubility in water with fugacity and Poynting term, times a factor for the composition.

use super::composition::Factor;
use super::henry::{Law, MOLAR_VOLUME};
use super::{CO2_SHARE, HIGHEST, Here, Solubility};
use crate::evidence::Steps;
use crate::evidence::equation::{Equation, Measure, Standing, limited, symbol};
use crate::evidence::source::{CODATA, KAYE_LABY, TORRENT, WEISS};
use crate::number::exp;
use crate::property::constant::{CO2_MOLAR_MASS, GAS_CONSTANT, STANDARD_ATMOSPHERE};
use crate::property::{co2_gas, water};
use crate::quantity::unit::{CO2_GRAMS_PER_LITRE, FACTOR, KELVIN, PASCAL};

/// Partial molar volume of CO2 as it swells the solution, m3/mol: the middle of the literature.
const VOLUME_SOLUTION: f64 = 33.5e-6;

/// The water core.
#[derive(Clone, Copy, Debug)]
pub struct WaterCore<L> {
    /// The solubility in pure water.
    pub law: L,
    /// Which composition factor the drink takes.
    pub composition: Factor,
    /// Factor on the solubility, 1 by default.
    pub factor: f64,
}

/// The water core at one temperature and composition.
#[derive(Clone, Copy, Debug)]
pub struct WaterCoreHere {
    t: f64,
    rt: f64,
    k0: f64,
    b: f64,
    vapour: f64,
    density: f64,
    /// Composition times the caller's factor.
    relative: f64,
    factor: f64,
    composition: f64,
}

/// Logarithm of fugacity coefficient and Poynting term together, at the total pressure `p` (Pa).
#[inline(always)]
fn ln_activity(p: f64, rt: f64, b: f64) -> f64 {
    co2_gas::ln_fugacity(p / rt, b) - MOLAR_VOLUME * (p - STANDARD_ATMOSPHERE) / rt
}

/// CO2 in pure water, mol/kg, under the partial pressure `co2` and the total pressure `p` (Pa, absolute), where `k0`
/// is [`super::henry::weiss`] or another and `b` the second virial coefficient at the temperature `t` (K).
#[inline(always)]
pub fn molality(k0: f64, co2: f64, p: f64, t: f64, b: f64) -> f64 {
    k0 * (co2 / STANDARD_ATMOSPHERE) * exp(ln_activity(p, GAS_CONSTANT * t, b))
}

#[inline(always)]
fn concentration(m: f64, density: f64, relative: f64) -> f64 {
    relative * (m * CO2_MOLAR_MASS) / (1.0 / density + VOLUME_SOLUTION * m)
}

impl<L: Law> Solubility for WaterCore<L> {
    type Here = WaterCoreHere;
    #[inline(always)]
    fn here(&self, t: f64, abv: f64, extract: f64, steps: &mut impl Steps) -> (WaterCoreHere, i32) {
        let (composition, bits) = self.composition.step(abv, extract, steps);
        let vapour = steps.step(&water::VAPOUR_PRESSURE, &[t], water::vapour_pressure(t));
        let (k0, more) = self.law.k0(t, vapour, steps);
        let here = WaterCoreHere {
            t,
            rt: GAS_CONSTANT * t,
            k0,
            b: steps.step(&co2_gas::SECOND_VIRIAL, &[t], co2_gas::second_virial(t)),
            vapour,
            density: steps.step(&water::DENSITY, &[t], water::density(t)),
            relative: composition * self.factor,
            factor: self.factor,
            composition,
        };
        (here, bits | more | steps.within(&water::LIQUID, t))
    }
}

impl WaterCoreHere {
    /// How the logarithm of the activity changes with the total pressure `p`.
    #[inline(always)]
    fn by_pressure(&self, p: f64) -> f64 {
        (self.b + (co2_gas::THIRD_VIRIAL - self.b * self.b) * (p / self.rt) - MOLAR_VOLUME) / self.rt
    }

    /// One step of Newton's method towards the partial pressure whose activity is `wanted`.
    #[inline(always)]
    fn newton(&self, co2: f64, wanted: f64, other: f64) -> f64 {
        let p = co2 + self.vapour + other;
        let activity = exp(ln_activity(p, self.rt, self.b));
        let next = co2 - (co2 * activity - wanted) / (activity * (1.0 + co2 * self.by_pressure(p)));
        if next < HIGHEST { next } else { HIGHEST }
    }
}

impl Here for WaterCoreHere {
    #[inline(always)]
    fn vapour(&self) -> f64 {
        self.vapour
    }
    #[inline(always)]
    fn dissolved(&self, co2: f64, other: f64) -> f64 {
        let m = molality(self.k0, co2, co2 + self.vapour + other, self.t, self.b);
        concentration(m, self.density, self.relative)
    }
    #[inline(always)]
    fn slope(&self, co2: f64, other: f64) -> f64 {
        let p = co2 + self.vapour + other;
        let scale = self.k0 / STANDARD_ATMOSPHERE * exp(ln_activity(p, self.rt, self.b));
        let dm = scale * (1.0 + co2 * self.by_pressure(p));
        let swell = 1.0 + self.density * VOLUME_SOLUTION * (scale * co2);
        self.relative * CO2_MOLAR_MASS * self.density * dm / (swell * swell)
    }
    #[inline(always)]
    fn co2_pressure(&self, dissolved: f64, other: f64) -> f64 {
        let m = dissolved / self.density / (self.relative * CO2_MOLAR_MASS - dissolved * VOLUME_SOLUTION);
        let wanted = m * STANDARD_ATMOSPHERE / self.k0;
        let first = if wanted < HIGHEST { wanted } else { HIGHEST };
        // From the ideal gas's answer, at most a quarter off, five steps reach the last digit; written out, because
        // a loop here would keep LLVM from vectorising the loop over the elements.
        let second = self.newton(first, wanted, other);
        let third = self.newton(second, wanted, other);
        let fourth = self.newton(third, wanted, other);
        let fifth = self.newton(fourth, wanted, other);
        let sixth = self.newton(fifth, wanted, other);
        self.newton(sixth, wanted, other)
    }
    #[inline(always)]
    fn dissolved_under(&self, total: f64) -> f64 {
        self.dissolved(total - self.vapour, 0.0)
    }
    #[inline(always)]
    fn total_pressure(&self, dissolved: f64) -> f64 {
        self.co2_pressure(dissolved, 0.0) + self.vapour
    }
    #[inline(always)]
    fn tell(&self, total: f64, other: f64, steps: &mut impl Steps) -> i32 {
        let co2 = steps.step(&CO2_SHARE, &[total, self.vapour, other], total - self.vapour - other);
        let m = molality(self.k0, co2, total, self.t, self.b);
        steps.record(&MOLALITY, &[self.k0, co2, total, self.t, self.b], m);
        steps.record(
            &DISSOLVED,
            &[self.composition, m, self.density, self.factor],
            concentration(m, self.density, self.relative),
        );
        steps.within(&co2_gas::CHECKED, total)
    }
}

/// The catalogue's entry for [`molality`].
pub static MOLALITY: Equation = Equation {
    id: "co2_molality_water",
    title: "CO2 in pure water, with fugacity and Poynting term",
    formula: "m = K0*(p/101325)*exp(B*P/(8.314462618*T) + (0.0000000049 - B^2)/2*(P/(8.314462618*T))^2 - 0.0000323*(P - 101325)/(8.314462618*T))",
    result: symbol("m", Measure::Plain("mol/kg"), "CO2 per mass of water"),
    inputs: &[
        symbol("K0", Measure::Plain("mol/(kg atm)"), "solubility of CO2 in water"),
        limited("p", Measure::In(&PASCAL), "partial pressure of CO2, absolute", 0.0, 16.0e5),
        limited("P", Measure::In(&PASCAL), "total pressure, absolute", 0.0, 16.0e5),
        limited("T", Measure::In(&KELVIN), "temperature", 273.15, 333.15),
        limited("B", Measure::Plain("m3/mol"), "second virial coefficient of CO2", -2.0e-4, 0.0),
    ],
    uncertainty_percent: Some(2.1),
    uncertainty: "that of the solubility to 5 bar, 3 % to 10 bar (judgement)",
    sources: &[&WEISS, &KAYE_LABY, &CODATA],
    standing: Standing::Published,
    kernel: |x| molality(x[0], x[1], x[2], x[3], x[4]),
};

/// The catalogue's entry for the conversion to grams per litre of drink.
pub static DISSOLVED: Equation = Equation {
    id: "co2_dissolved",
    title: "CO2 per litre of drink",
    formula: "c = k*F*m*44.0095/(1000/rho + 0.0335*m)",
    result: symbol("c", Measure::In(&CO2_GRAMS_PER_LITRE), "CO2 in the drink"),
    inputs: &[
        limited("F", Measure::Plain(""), "solubility relative to water", 0.5, 1.0),
        limited("m", Measure::Plain("mol/kg"), "CO2 per mass of water", 0.0, 0.7),
        limited("rho", Measure::Plain("kg/m3"), "density of water", 980.0, 1000.0),
        symbol("k", Measure::In(&FACTOR), "factor on the solubility, 1 by default"),
    ],
    uncertainty_percent: Some(0.2),
    uncertainty: "33.5 mL/mol is the middle of published partial molar volumes, 32-37; in beer 32.1 was measured",
    sources: &[&WEISS, &TORRENT],
    standing: Standing::Judgement,
    kernel: |x| concentration(x[1], x[2], x[0] * x[3]),
};
