//! Relations of the trade, which know the total pressure over the drink and not what it consists of.

use super::{Here, Solubility};
use crate::evidence::Steps;
use crate::property::water;

/// A relation between the total pressure of CO2 and vapour, and what is dissolved, at one temperature and composition.
pub trait Relation: Copy {
    /// CO2 dissolved (kg/m3) under the total pressure `total` (Pa).
    fn dissolved(&self, total: f64) -> f64;
    /// Derivative of [`Relation::dissolved`].
    fn slope(&self, total: f64) -> f64;
    /// The total pressure (Pa) that holds `dissolved` (kg/m3).
    fn pressure(&self, dissolved: f64) -> f64;
    /// The highest total pressure (Pa) at which the relation has an answer.
    fn most(&self) -> f64 {
        f64::INFINITY
    }
    /// Tells the working what was evaluated, and returns the range cautions of the pressure.
    fn tell(&self, total: f64, steps: &mut impl Steps) -> i32;
}

/// A model that is a [`Relation`] at each temperature and composition.
pub trait ByTotal: Copy + Send + Sync + 'static {
    /// The relation.
    type Relation: Relation;
    /// The relation at the temperature `t` (K) for `abv` (% vol) and `extract` (kg/m3), and the range cautions.
    fn relation(&self, t: f64, abv: f64, extract: f64, steps: &mut impl Steps) -> (Self::Relation, i32);
    /// As [`Solubility::ahead`].
    #[inline(always)]
    fn ahead(&self, _: f64) -> f64 {
        0.0
    }
    /// As [`Solubility::here_with`].
    #[inline(always)]
    fn relation_with(&self, _: f64, t: f64, abv: f64, extract: f64, steps: &mut impl Steps) -> (Self::Relation, i32) {
        self.relation(t, abv, extract, steps)
    }
}

/// A relation with the vapour pressure of the drink, which it takes to be part of the total.
#[derive(Clone, Copy, Debug)]
pub struct UnderTotal<R> {
    vapour: f64,
    relation: R,
}

impl<M: ByTotal> Solubility for M {
    type Here = UnderTotal<M::Relation>;
    #[inline(always)]
    fn here(&self, t: f64, abv: f64, extract: f64, steps: &mut impl Steps) -> (Self::Here, i32) {
        let (relation, bits) = self.relation(t, abv, extract, steps);
        (UnderTotal { vapour: water::vapour_pressure(t), relation }, bits)
    }
    #[inline(always)]
    fn ahead(&self, t: f64) -> f64 {
        ByTotal::ahead(self, t)
    }
    #[inline(always)]
    fn here_with(&self, ahead: f64, t: f64, abv: f64, extract: f64, steps: &mut impl Steps) -> (Self::Here, i32) {
        let (relation, bits) = self.relation_with(ahead, t, abv, extract, steps);
        (UnderTotal { vapour: water::vapour_pressure(t), relation }, bits)
    }
}

impl<R: Relation> Here for UnderTotal<R> {
    #[inline(always)]
    fn vapour(&self) -> f64 {
        self.vapour
    }
    #[inline(always)]
    fn dissolved(&self, co2: f64, _: f64) -> f64 {
        self.relation.dissolved(co2 + self.vapour)
    }
    #[inline(always)]
    fn slope(&self, co2: f64, _: f64) -> f64 {
        self.relation.slope(co2 + self.vapour)
    }
    #[inline(always)]
    fn co2_pressure(&self, dissolved: f64, _: f64) -> f64 {
        self.relation.pressure(dissolved) - self.vapour
    }
    #[inline(always)]
    fn dissolved_under(&self, total: f64) -> f64 {
        self.relation.dissolved(total)
    }
    #[inline(always)]
    fn total_pressure(&self, dissolved: f64) -> f64 {
        self.relation.pressure(dissolved)
    }
    #[inline(always)]
    fn most(&self) -> f64 {
        self.relation.most()
    }
    #[inline(always)]
    fn tell(&self, total: f64, other: f64, steps: &mut impl Steps) -> i32 {
        self.relation.tell(total - other, steps)
    }
}
