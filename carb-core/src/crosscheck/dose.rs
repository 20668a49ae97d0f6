//! Claims of priming sugar.

use super::claim::Claim;
use super::memo::Memo;
use super::pressure::Left;
use super::quantity::Otherwise;
use super::question::{Choice, DoseHeadspace, ExtractLeft, Question, SugarTaken, SugarYield, Syrup};
use super::told::Told;
use crate::error::Error;
use crate::property::fermentable::{FERMENTABLES, Fermentable, SUCROSE, extract_yield};
use crate::property::syrup::volume_per_mass;
use crate::quantity::Key;
use crate::quantity::unit::GRAMS_PER_LITRE;
use alloc::boxed::Box;
use alloc::vec;
use alloc::vec::Vec;

/// What sugar and extract make by a program's habits.
#[derive(Clone, Copy)]
struct Made {
    /// What a volume weighs, g/L.
    volume: f64,
    /// CO2 from a gram of sugar, and of extract.
    by_sugar: f64,
    by_extract: f64,
    /// Room that a kilogram of sugar takes in solution, m3.
    room: f64,
}

struct Dose {
    told: Told,
    left: Option<Left>,
    sugar: Fermentable,
    /// Fermentable extract in the drink, g/L.
    extract: f64,
    /// Drink, m3, as it was told.
    packaged: f64,
    /// Water of the syrup, m3.
    syrup: Option<f64>,
    made: Memo<Option<Made>>,
    scale: Memo<Option<f64>>,
}

/// What other programs make of a dose.
pub(super) fn otherwise(claim: &Claim) -> Result<Box<dyn Otherwise>, Error> {
    const TARGET: &str = "give the wanted carbonation, as volumes or co2_g_per_l";
    let told = Told::of(claim)?;
    let request = &told.request;
    request.number(Key::Carbonation).ok_or(Error::Missing { parameter: Key::Carbonation, advice: TARGET })?;
    let measured = request.number(Key::Residual).is_some();
    let left = if measured { None } else { Some(Left::of(told.clone())?) };
    Ok(Box::new(Dose {
        left,
        sugar: request.priming_sugar()?,
        extract: request.number(Key::Fermentable).unwrap_or_default(),
        packaged: request.number(Key::Packaged).unwrap_or_default(),
        syrup: request.number(Key::SyrupWater),
        made: Memo::of(vec![Question::GasVolume, Question::SugarYield, Question::SugarTaken]),
        scale: Memo::of(vec![Question::DoseHeadspace, Question::Gallon, Question::MassLabel]),
        told,
    }))
}

fn named(name: &str) -> Option<&'static Fermentable> {
    FERMENTABLES.iter().find(|sugar| sugar.name == name)
}

impl Dose {
    /// The sugar whose yield a program takes.
    fn taken(&self, choice: &Choice) -> Option<&Fermentable> {
        match choice.of() {
            SugarTaken::Told => Some(&self.sugar),
            SugarTaken::Anhydrous => named("dextrose_anhydrous"),
            SugarTaken::Monohydrate => named("dextrose_monohydrate"),
            SugarTaken::Sucrose => Some(&SUCROSE),
        }
    }

    fn find_made(&self, choice: &Choice) -> Option<Made> {
        let (sugar, volume) = (self.taken(choice)?, self.told.grams(choice));
        let fermentable = sugar.sugars.parts().iter().sum();
        Some(Made {
            volume,
            by_sugar: made(sugar.theoretical_yield(), fermentable, volume, choice),
            by_extract: made(extract_yield(), 1.0, volume, choice),
            room: volume_per_mass(sugar.water),
        })
    }

    /// What a dose (kg/m3) is multiplied by.
    fn find_scale(&self, choice: &Choice) -> Option<f64> {
        let headspace = match choice.of() {
            DoseHeadspace::LeftOut => 1.0,
            DoseHeadspace::Adds3 => 1.03,
            DoseHeadspace::Adds4 => 1.04,
            DoseHeadspace::Adds5 => 1.05,
        };
        if *self.told.unit == GRAMS_PER_LITRE {
            return Some(headspace);
        }
        let batch = self.packaged * self.told.gallon(Key::Packaged, choice)?;
        Some(headspace * batch * self.told.mass_label(choice)?)
    }
}

/// CO2 that a gram makes by a program's habits: of something with a theoretical yield and a fermentable part, where a volume
/// weighs `grams`.
fn made(theory: f64, fermentable: f64, grams: f64, choice: &Choice) -> f64 {
    match choice.of() {
        SugarYield::Theory => theory,
        SugarYield::NinetyFive => 0.95 * theory,
        SugarYield::Balling => 0.4629 * fermentable,
        SugarYield::Textbook => 0.46 * fermentable,
        SugarYield::Half => 0.5,
        SugarYield::FourGrams => grams / 4.0,
    }
}

impl Otherwise for Dose {
    fn questions(&self) -> Vec<Question> {
        let told = &self.told;
        let mut all = vec![
            Question::GasVolume,
            Question::CarbonationUnit,
            Question::SugarYield,
            Question::SugarTaken,
            Question::DoseHeadspace,
        ];
        all.extend(self.left.iter().flat_map(Left::questions));
        all.extend((self.extract > 0.0).then_some(Question::ExtractLeft));
        all.extend(self.syrup.map(|_| Question::Syrup));
        if *told.unit != GRAMS_PER_LITRE {
            all.extend(told.gallons(&[Key::Packaged]));
            all.extend(told.masses());
        }
        all
    }

    fn factors(&self) -> Vec<Question> {
        // Where extract counts, or the sugar's own room, a dose is no product any more.
        if self.extract > 0.0 || self.syrup.is_some() {
            return Vec::new();
        }
        let product = [
            Question::SugarYield,
            Question::SugarTaken,
            Question::DoseHeadspace,
            Question::Gallon,
            Question::MassLabel,
        ];
        self.questions().into_iter().filter(|question| product.contains(question)).collect()
    }

    fn group(&self) -> Option<Question> {
        Some(Question::GasVolume)
    }

    fn value(&self, choice: &Choice) -> Option<f64> {
        let made = self.made.get(choice, || self.find_made(choice))?;
        let scale = self.scale.get(choice, || self.find_scale(choice))?;
        let before = match &self.left {
            Some(left) => left.amount(choice)?,
            None => self.told.amount(Key::Residual, choice)?,
        };
        let extract = match choice.of() {
            ExtractLeft::Counted => self.extract,
            ExtractLeft::Ignored => 0.0,
        };
        let (target, held) = (
            self.told.amount(Key::Carbonation, choice)?.grams(made.volume),
            before.grams(made.volume) + extract * made.by_extract,
        );
        // The water of a syrup, and the sugar in it, are drink that holds nothing yet.
        let (diluted, room) = match choice.of() {
            Syrup::LeftOut => (1.0, 0.0),
            Syrup::Counted => {
                let packaged = self.packaged * self.told.gallon(Key::Packaged, choice)?;
                (1.0 + self.syrup? / packaged, made.room)
            }
        };
        let wanted = target * diluted - held;
        // Grams per litre are kilograms per cubic metre.
        let value = wanted / (made.by_sugar - target * room) * scale;
        (wanted > 0.0 && value > 0.0).then_some(value)
    }
}
