//! The syrup: how much water the priming sugar takes, and how much room.

use super::addition::note_sugar;
use crate::basis::answer::Both;
use crate::basis::kernel::{Kernel, Once, Visit};
use crate::basis::{Answer, Context};
use crate::error::{Error, code};
use crate::evidence::caution::{Caution, SYRUP_HOT, below};
use crate::evidence::{NoSteps, Notes, Steps};
use crate::property::fermentable::Fermentable;
use crate::property::syrup::{self, Saturation};
use crate::quantity::{Key, Mass, Name, Percent, Temperature, Volume};

#[derive(Clone, Copy)]
struct Syrup {
    saturation: Saturation,
    /// Water in a gram of sugar.
    water: f64,
    /// Whether nothing was said of the water: then the usual is taken.
    usual: bool,
}

impl Syrup {
    fn of(sugar: &Fermentable, water: Option<Volume>) -> Self {
        Self { saturation: Saturation::of(sugar), water: sugar.water, usual: water.is_none() }
    }

    /// Water that is usually taken for a mass of sugar; a liquid needs none.
    #[inline(always)]
    fn usual_water(&self, mass: f64) -> f64 {
        if matches!(self.saturation, Saturation::Liquid) { 0.0 } else { mass * USUAL_WATER / 1000.0 }
    }

    #[inline(always)]
    fn least(&self, mass: f64, t: f64, steps: &mut impl Steps) -> f64 {
        let percent = self.saturation.percent(t);
        if let Some(equation) = self.saturation.equation() {
            steps.record(equation, &[t], percent);
        }
        let least = syrup::least_water(mass, self.water, percent);
        steps.step(&syrup::LEAST_WATER, &[mass, self.water, percent], least)
    }
}

impl Kernel<3, 3> for Syrup {
    const SCALAR: bool = true;
    const COLUMNS: [Key; 3] = [Key::Mass, Key::SyrupWater, Key::Dissolving];
    #[inline(always)]
    fn eval(&self, [mass, water, t]: [f64; 3], steps: &mut impl Steps) -> ([f64; 3], i32) {
        let water = if self.usual { self.usual_water(mass) } else { water };
        let least = self.least(mass, t, steps);
        let volume = water + mass * syrup::volume_per_mass(self.water);
        steps.record(&syrup::SYRUP_VOLUME, &[water, mass, self.water], volume);
        let made = syrup::strength(mass, self.water, water);
        // No sugar in no water is no syrup, of no strength.
        let strength = if mass > 0.0 { made } else { 0.0 };
        if mass > 0.0 {
            steps.record(&syrup::SYRUP_STRENGTH, &[mass, self.water, water], strength);
        }
        ([volume, least, strength], if below(water, least) { code::WATER_SHORT } else { 0 })
    }
    fn explain(&self, _: i32, [mass, water, t]: [f64; 3]) -> Error {
        let water = if self.usual { self.usual_water(mass) } else { water };
        let low = self.least(mass, t, &mut NoSteps);
        Error::WaterShort { parameter: Name::first(Key::SyrupWater), value: water, low }
    }
}

/// Hands the kernel to a visitor.
pub(crate) fn visit<V: Visit<3, 3>>(sugar: &Fermentable, water: Option<Volume>, visitor: V) -> V::Output {
    visitor.visit(Syrup::of(sugar, water))
}

/// Water for a gram of sugar where none is given, L/kg: common practice, from 2 to 4.
const USUAL_WATER: f64 = 3.0;

/// Temperature of a syrup that has cooled, K; also where the sugar has to stay dissolved, if nothing else is said.
pub const COOLED: f64 = 293.15;

/// The water that is usually taken for a mass of sugar; a liquid needs none.
pub fn usual_water(mass: Mass, sugar: &Fermentable) -> Volume {
    Volume::from_si(Syrup::of(sugar, None).usual_water(mass.si()))
}

/// A syrup of priming sugar.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PrimingSyrup {
    /// The syrup, cooled.
    pub volume: Volume,
    /// The least water that dissolves the sugar.
    pub least_water: Volume,
    /// Dry matter in it, of its mass.
    pub strength: Percent,
}

/// The syrup that a mass of sugar makes in some water (by default 3 mL for a gram), which has to dissolve it at a
/// temperature.
///
/// # Errors
/// Where a value lies outside its limits, or the water does not dissolve the sugar.
pub fn priming_syrup(
    mass: Mass,
    water: Option<Volume>,
    dissolving: Temperature,
    sugar: &Fermentable,
    context: &Context,
    steps: &mut impl Steps,
) -> Result<Answer<PrimingSyrup>, Error> {
    let mut notes = Notes::default();
    let x = [mass.si(), water.map_or(0.0, Volume::si), dissolving.si()];
    let [volume, least, strength] = visit(sugar, water, Once { x, steps: &mut Both(&mut notes, steps) })?;
    note_sugar(sugar, &mut notes);
    // What is dissolved hot may come out again in the cold.
    let syrup = Syrup::of(sugar, water);
    let taken = water.unwrap_or_else(|| usual_water(mass, sugar));
    if below(taken.si(), syrup.least(mass.si(), COOLED, &mut NoSteps)) {
        notes.cautions.add(Caution::of(&SYRUP_HOT, dissolving.si()));
    }
    let value = PrimingSyrup {
        volume: Volume::from_si(volume),
        least_water: Volume::from_si(least),
        strength: Percent::from_si(strength),
    };
    Ok(Answer { value, context: *context, notes })
}
