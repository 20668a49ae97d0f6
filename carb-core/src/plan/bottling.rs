//! Bottling: the whole job, from finished drink to safe bottles.

use super::bottles::{AtHand, BottleRow, FillTotals, kinds, tablets};
use super::completed::complete;
use super::contents::{Found, Primer, contents, keeping, physical, primed_batch};
use super::readiness::{Point, Readiness, point, readiness};
use super::ready::{Ready, ready};
use super::{PASTEURISING, Part, Place, Sure, fermented, named};
use crate::balance::open;
use crate::basis::function::{one_of, optional};
use crate::basis::lists::{ADDITIONS, BOTTLES, HISTORY, READINGS};
use crate::basis::{Answer, BasisName, Context, FillOrder, Input, List, Lists, Request, kernel};
use crate::bottling::before::Before;
use crate::bottling::conditioning;
use crate::bottling::doses::{Weighed, bottle_dose, weighed};
use crate::bottling::fill::{self, Kind};
use crate::bottling::package::{Contents, PackagePressure, note_contents, pressure_of_contents};
use crate::bottling::priming::{self, Batch, PrimedDrink, PrimingDose};
use crate::bottling::syrup::{self, PrimingSyrup};
use crate::bottling::wort::{self, PrimingWort};
use crate::error::Error;
use crate::evidence::caution::{COARSE_TABLET, Caution, SUPERSATURATION};
use crate::evidence::{Level, NoSteps, Notes, Working};
use crate::property::fermentable::{self, FERMENTABLES, Fermentable};
use crate::property::yeast;
use crate::quantity::{Carbonation, Concentration, Key, Mass, Percent, Temperature, Volume};
use crate::table::inputs::{
    AGE, BOTTLE_CLASS, CELLS, COUNT_SYRUP, DRINK, FERMENTED, FILTERED, GRAVITIES, RATING, RESIDUAL, SEA_LEVEL,
    SOLUBILITY, SUGAR, USUAL_ROOM, YIELD_FACTOR, batch, before, carbonation, glass, join, note_headspace, packaged,
    wort, yeast_state,
};
use alloc::vec::Vec;

/// The inputs of the bottling job.
pub static INPUTS: &[Input] = join!(
    [optional(Key::Title, "no title")],
    DRINK,
    [optional(Key::Microbes, "brewing_yeast")],
    GRAVITIES,
    [
        one_of("packaged", Key::Packaged),
        one_of("packaged", Key::Batch),
        optional(Key::Loss, "0; counts with the batch"),
        one_of("carbonation", Key::Carbonation),
        one_of("carbonation", Key::Mass),
    ],
    FERMENTED,
    [
        optional(Key::Filling, "that of the cold crash, or else the warmest"),
        optional(Key::Cellar, "12 °C"),
        optional(Key::Room, "20 °C"),
        optional(Key::HotDay, "35 °C"),
        optional(Key::Pasteurising, "not meant: filled glass is never heated"),
        one_of("ambient", Key::Altitude),
        one_of("ambient", Key::Ambient),
        SEA_LEVEL,
        optional(Key::Headspace, "4 % of the liquid, and noted"),
        BOTTLE_CLASS,
        RATING,
        optional(Key::FillOrder, "least_leftover"),
        optional(Key::Spare, "5 %"),
    ],
    SUGAR,
    [
        optional(Key::SyrupWater, "not counted; the recipe then takes three times the mass of the sugar"),
        optional(Key::Dissolving, "20 °C: it stays dissolved when it has cooled"),
        optional(Key::Scale, "the dose is not rounded"),
        optional(Key::Tablet, "no tablets"),
        optional(Key::WortOriginalGravity, "no wort to prime with"),
        optional(Key::WortOriginalPlato, "no wort to prime with"),
        optional(Key::WortCurrentGravity, "fresh wort"),
        optional(Key::WortCurrentPlato, "fresh wort"),
        optional(Key::LimitAttenuation, "needed with wort to prime with"),
        optional(Key::WortCo2, "none in fresh wort, what the drink keeps in fermenting one"),
        CELLS,
        AGE,
        FILTERED,
        optional(Key::Basis, "handbook, for the dose; package pressures always take the physical one"),
        optional(Key::Model, "that of the basis for the drink"),
        optional(Key::ResidualModel, "that of the basis"),
        optional(Key::Yield, "that of the basis"),
        optional(Key::CountHeadspace, "that of the basis"),
        COUNT_SYRUP,
        SOLUBILITY,
        RESIDUAL,
        YIELD_FACTOR,
        optional(Key::Working, "false"),
    ],
);

/// What says something of wort to prime with.
const WORT: [Key; 6] = [
    Key::WortOriginalGravity,
    Key::WortOriginalPlato,
    Key::WortCurrentGravity,
    Key::WortCurrentPlato,
    Key::LimitAttenuation,
    Key::WortCo2,
];

/// The lists that the job takes.
pub static TAKES: &[&List] = &[&BOTTLES, &ADDITIONS, &READINGS, &HISTORY];

const CELLAR: f64 = 285.15;
/// A hot day, K, where none is given.
pub(super) const HOT_DAY: f64 = 308.15;
const SPARE: f64 = 5.0;
/// What the mass balance expects of the dose.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Expectation {
    /// CO2 dissolved at room temperature.
    pub expected: Carbonation,
    /// The same with the least yield.
    pub low: Carbonation,
    /// The same with the worst case's CO2.
    pub high: Carbonation,
    /// The dose by which the balance reaches the target.
    pub dose: Option<PrimingDose>,
}

/// The bottle at one temperature.
#[derive(Clone, Debug)]
pub struct Storage {
    /// Where: `cellar`, `room`, `hot_day`, or `pasteurising`.
    pub place: &'static str,
    /// Which field says how warm it is there.
    pub key: Key,
    /// How warm it is.
    pub temperature: Temperature,
    /// The pressure.
    pub pressure: Part<PackagePressure>,
}

/// The bottling of a batch.
#[derive(Clone, Debug)]
#[must_use]
pub struct Bottling {
    /// What was asked, with what follows from the gravities and the losses.
    pub request: Request,
    /// How sure the main answers are, where that was asked for of this job.
    pub sure: Option<Sure>,
    /// Whether the drink is finished; `None` where nothing is said of its gravity.
    pub readiness: Option<Part<Readiness>>,
    /// What 0.001 of specific gravity that is not finished would add.
    pub point: Part<Point>,
    /// CO2 left after fermentation.
    pub residual: Part<Carbonation>,
    /// CO2 of what else was added; `None` where nothing was.
    pub added: Option<Part<Carbonation>>,
    /// The sugar chosen.
    pub sugar: Fermentable,
    /// Its dose: what is needed, or what was weighed.
    pub priming: Part<PrimingDose>,
    /// What the dose makes of the drink, by its basis.
    pub primed: Part<PrimedDrink>,
    /// The dose as the scale weighs it; `None` where nothing is said of a scale.
    pub weighed: Option<Part<Weighed>>,
    /// The dose of every usual sugar.
    pub sugars: Vec<(&'static Fermentable, Result<PrimingDose, Error>)>,
    /// The syrup, and the water for it.
    pub syrup: Part<(PrimingSyrup, Volume)>,
    /// The wort that would prime instead; `None` where none is described.
    pub wort: Option<Part<PrimingWort>>,
    /// What the balance expects of the dose.
    pub expectation: Part<Expectation>,
    /// The bottle in the cellar, in the room, on a hot day.
    pub storage: Vec<Storage>,
    /// All bottles together; `None` where none are listed.
    pub fill: Option<Part<FillTotals>>,
    /// Kind by kind.
    pub bottles: Vec<BottleRow>,
    /// When they are ready.
    pub ready: Part<Ready>,
    /// Dry yeast to add, where fresh yeast is called for.
    pub yeast: Option<Part<Mass>>,
}

/// Bottles a batch.
///
/// # Errors
/// Only where the request contradicts itself; everything else is an error of the part it concerns.
pub(super) fn bottling(request: &Request, lists: &Lists<'_>) -> Result<Bottling, Error> {
    let (whole, sound) = complete(request, lists)?;
    let request = &whole;
    let named_sugar = request.priming_sugar();
    let sugar = named_sugar.unwrap_or(fermentable::SUCROSE);
    let residual = Part::of(request, |steps| {
        let context = request.context(BasisName::Handbook)?;
        match before(request)? {
            Before::Measured(value) => Ok(Answer { value, context, notes: Notes::default() }),
            Before::Fermented(fermenter) => open::residual_co2(&fermenter, &context, steps),
        }
    });
    let added = (!lists.of(&ADDITIONS).is_empty()).then(|| {
        Part::of(request, |steps| {
            let (context, mut notes) = (request.context(BasisName::Handbook)?, Notes::default());
            let found = super::contents::added(request, lists, packaged(request)?.si(), &context, &mut notes, steps)?;
            Ok(Answer { value: Carbonation::from_si(found.expected), context, notes })
        })
    });
    let weighed_mass = request.number(Key::Mass);
    let priming = Part::of(request, |steps| {
        sound?;
        let context = request.context(BasisName::Handbook)?;
        let batch = primed_batch(request, lists)?;
        let mut answer = if weighed_mass.is_some() {
            let mass = Mass::from_si(request.or(Key::Mass, 0.0)?);
            let made = priming::primed_carbonation(mass, &batch, &named_sugar?, &context, steps)?;
            let dose = Concentration::from_si(mass.si() / batch.packaged.si());
            made.map(|_| PrimingDose { mass, dose })
        } else {
            priming::priming_sugar(carbonation(request)?, &batch, &named_sugar?, &context, steps)?
        };
        if context.basis.count_headspace {
            note_headspace(request, &mut answer);
        }
        Ok(answer)
    });
    let dose = match &priming.answer {
        Ok(answer) => Ok(answer.value),
        // What the drink makes without any sugar is what must be known now.
        Err(Error::TargetBelowHeld { .. }) if weighed_mass.is_none() => {
            Ok(PrimingDose { mass: Mass::from_si(0.0), dose: Concentration::from_si(0.0) })
        }
        Err(error) => Err(*error),
    };
    let primed = Part::of(request, |steps| {
        let (context, mass) = (request.context(BasisName::Handbook)?, dose?.mass);
        let batch = primed_batch(request, lists)?;
        let besides =
            super::contents::added(request, lists, batch.packaged.si(), &context, &mut Notes::default(), &mut NoSteps)?;
        let answer = priming::primed_carbonation(mass, &batch, &named_sugar?, &context, steps)?;
        let more = |abv: Percent| Percent::from_si(abv.si() + besides.abv);
        Ok(answer.map(|drink| PrimedDrink { abv: more(drink.abv), added_abv: more(drink.added_abv), ..drink }))
    });
    let sugars = FERMENTABLES
        .iter()
        .take(if weighed_mass.is_some() { 0 } else { fermentable::USUAL })
        .map(|sugar| {
            let dose = Part::of(request, |steps| {
                sound?;
                let context = request.context(BasisName::Handbook)?;
                priming::priming_sugar(carbonation(request)?, &primed_batch(request, lists)?, sugar, &context, steps)
            });
            (sugar, dose.answer.map(|answer| answer.value))
        })
        .collect();
    let weighed = request.get(Key::Scale).filter(|_| priming.answer.is_ok()).map(|_| {
        Part::of(request, |_| {
            let (context, step) = (request.context(BasisName::Handbook)?, Mass::from_si(request.or(Key::Scale, 0.0)?));
            weighed(dose?.mass, step, &primed_batch(request, lists)?, &named_sugar?, &context)
        })
    });
    let syrup = Part::of(request, |steps| {
        let (context, mass) = (request.context(BasisName::Handbook)?, dose?.mass);
        let water = request.get(Key::SyrupWater).map(|_| request.or(Key::SyrupWater, 0.0)).transpose()?;
        let water = water.map(Volume::from_si);
        let dissolving = Temperature::from_si(request.or(Key::Dissolving, syrup::COOLED)?);
        let taken = water.unwrap_or_else(|| syrup::usual_water(mass, &sugar));
        Ok(syrup::priming_syrup(mass, water, dissolving, &sugar, &context, steps)?.map(|syrup| (syrup, taken)))
    });
    let by_wort = WORT.iter().any(|key| request.get(*key).is_some()).then(|| {
        Part::of(request, |steps| {
            sound?;
            let context = request.context(BasisName::Handbook)?;
            let (batch, wort) = (primed_batch(request, lists)?, wort(request)?);
            wort::priming_wort(carbonation(request)?, &batch, &wort, request.scale(), &context, steps)
        })
    });

    let mut told = Notes::default();
    let mut contents_working = Working::default();
    // What the scale cannot tell from the dose may be in the bottle as well.
    let heaviest = weighed.as_ref().and_then(Part::value).map(|weighed| weighed.most);
    let found = dose.and_then(|dose| {
        let batch = batch(request)?;
        contents(
            request,
            &batch,
            lists,
            Primer { sugar: &sugar, dose: &dose, heaviest },
            &mut told,
            &mut contents_working,
        )
    });
    let kinds = kinds(request, lists);
    // The stores are judged by what the request says of its bottles, unless it lists them: then each kind is.
    let own = kinds.is_empty().then(|| glass(request)).transpose();
    let expectation = Part::of(request, |steps| {
        steps.steps.clone_from(&contents_working.steps);
        expectation(request, &sugar, &found?, &primed_batch(request, lists)?, steps)
    });
    let places = places(request, lists);
    let stored = |place: &Place| {
        Part::of(request, |steps| {
            let (found, own) = (found?, own?);
            steps.steps.clone_from(&contents_working.steps);
            kernel::check(place.key, place.temperature.si())?;
            let keeping = keeping(request, place.temperature)?;
            let mut answer = pressure_of_contents(found.package, &keeping, own.as_ref(), &physical(request)?, steps)
                .map_err(|error| error.renamed(|k| (k == Key::Temperature).then(|| named(request, place.key))))?;
            answer.notes.join(&told);
            match &own {
                Some(glass) => {
                    glass.note_contents(found.package.worst, found.still_to_come, &mut answer.notes.cautions);
                }
                None => note_contents(None, found.package.worst, found.still_to_come, &mut answer.notes.cautions),
            }
            note_headspace(request, &mut answer);
            Ok(answer)
        })
    };
    let storage: Vec<Storage> = places
        .iter()
        .map(|place| Storage {
            place: place.name,
            key: place.key,
            temperature: place.temperature,
            pressure: stored(place),
        })
        .collect();
    let room = Temperature::from_si(request.number(Key::Room).unwrap_or(USUAL_ROOM));
    let point = Part::of(request, |steps| point(request, lists, &found?, room, steps));

    // The syrup, as a recipe or as told, takes its room in bottles; tablets go in dry.
    let made = syrup.value().filter(|_| priming.answer.is_ok() && request.get(Key::Tablet).is_none());
    let drink =
        packaged(request).map(|drink| Volume::from_si(drink.si() + made.map_or(0.0, |(syrup, _)| syrup.volume.si())));
    let filling = (!kinds.is_empty()).then(|| {
        // Of bottles of one content the stronger are filled first.
        let mut order: Vec<usize> = (0..kinds.len()).collect();
        if request.fill_order() != FillOrder::AsListed {
            order.sort_by(|a, b| kinds[*b].glass.pressure_limit().0.total_cmp(&kinds[*a].glass.pressure_limit().0));
        }
        let at_hand: Vec<Kind> = order.iter().map(|&at| kinds[at].usable()).collect();
        let mut filling = drink.and_then(|drink| fill::fill(drink.si(), &at_hand, request.fill_order()))?;
        let sorted = filling.filled.clone();
        for (place, filled) in order.into_iter().zip(sorted) {
            filling.filled[place] = filled;
        }
        Ok(filling)
    });
    let percent = request.number(Key::Spare).unwrap_or(SPARE);
    // Nobody can wash more than there are.
    let washed = |kind: &AtHand, filled: u32| (filled + fill::spares(filled, percent)).min(kind.at_hand.count);
    let fill = filling.as_ref().map(|filling| {
        Part::of(request, |_| {
            let filling = filling.clone()?;
            let filled = filling.filled.iter().sum();
            let washed = filling.filled.iter().zip(&kinds).map(|(&filled, kind)| washed(kind, filled)).sum();
            let leftover = Volume::from_si(filling.leftover);
            let value = FillTotals { drink: drink?, filled, washed, leftover };
            // Nothing here asks for the air outside.
            let context =
                Context { beverage: request.drink()?, ambient: None, basis: request.assumptions(BasisName::Handbook)? };
            Ok(Answer { value, context, notes: Notes::default() })
        })
    });
    let filled: Option<Vec<u32>> = filling.and_then(|filling| match filling {
        Ok(filling) => Some(filling.filled),
        Err(Error::BottlesShort { .. }) => Some(kinds.iter().map(|kind| kind.usable().count).collect()),
        Err(_) => None,
    });
    let bottles = kinds
        .iter()
        .enumerate()
        .map(|(at, kind)| {
            // What is judged is the dose or the tablets, whichever makes more.
            let dose = dose.and_then(|dose| {
                let tablet = request.get(Key::Tablet).map(|_| request.or(Key::Tablet, 0.0)).transpose()?;
                let (batch, context) = (primed_batch(request, lists)?, request.context(BasisName::Handbook)?);
                bottle_dose(kind.content(), &dose, tablet.map(Mass::from_si), &batch, &sugar, &context)
            });
            let found = found.and_then(|found| {
                let dose = tablets(request, kind, dose.as_ref().ok());
                let by_tablets = dose.map(|dose| {
                    // Tablets go in dry.
                    let dry = Batch { syrup_water: None, ..batch(request)? };
                    contents(
                        request,
                        &dry,
                        lists,
                        Primer { sugar: &sugar, dose: &dose, heaviest: None },
                        &mut Notes::default(),
                        &mut NoSteps,
                    )
                });
                match by_tablets.transpose()? {
                    Some(more) if more.package.worst > found.package.worst => Ok(more),
                    _ => Ok(found),
                }
            });
            let (pressures, mut judged) = kind.judge(request, found, &places);
            if let (Ok(dose), Ok(answer), Some(tablet)) = (&dose, &mut judged, request.number(Key::Tablet))
                && dose.tablets.is_some_and(|(count, _)| count == 0)
                && dose.mass.si() > 0.0
            {
                let caution = Caution { kind: &COARSE_TABLET, value: tablet, limit: dose.mass.si() };
                answer.notes.cautions.add(caution);
            }
            BottleRow {
                content: kind.content(),
                gas: Volume::from_si(kind.at_hand.content * kind.headspace / 100.0),
                headspace: Percent::from_si(kind.headspace),
                class: kind.glass.class.map_or("", |class| class.name),
                count: kind.at_hand.count,
                unit: kind.unit,
                filled: filled.as_ref().and_then(|filled| filled.get(at).copied()),
                washed: filled.as_ref().and_then(|filled| filled.get(at)).map(|&filled| washed(kind, filled)),
                dose: dose.ok(),
                pressures,
                glass: Part { answer: judged, working: Working::default() },
            }
        })
        .collect::<Vec<BottleRow>>();
    // The least that any bottle usually holds in which there will be drink.
    let any = bottles.iter().any(BottleRow::is_filled);
    let in_use = kinds.iter().zip(&bottles).filter(|(_, row)| row.is_filled() || !any).map(|(kind, _)| kind.glass);
    let least = in_use.chain(own.iter().copied().flatten()).map(|glass| glass.usual_carbonation());
    let least = least.fold(f64::INFINITY, f64::min);
    let readiness = Part::some(request, |steps| readiness(request, lists, found.as_ref().ok(), least, steps));
    let state = yeast_state(request);
    let ready = Part::of(request, |_| {
        let held = residual.value().copied();
        ready(request, lists, &state?, held, primed.value().map(|drink| drink.carbonation))
    });
    let yeast = match (&state, request.context(BasisName::Handbook)) {
        (Ok(state), Ok(context)) if state.wants_yeast(context.beverage.abv()) => {
            Some(Part::of(request, |steps| conditioning::reyeasting(packaged(request)?, yeast::USUAL, &context, steps)))
        }
        _ => None,
    };
    Ok(Bottling {
        request: whole,
        sure: None,
        readiness,
        point,
        residual,
        added,
        sugar,
        priming,
        primed,
        weighed,
        sugars,
        syrup,
        wort: by_wort,
        expectation,
        storage,
        fill,
        bottles,
        ready,
        yeast,
    })
}

/// Where the bottles are kept: as the request says, and as warm as its history was.
fn places(request: &Request, lists: &Lists<'_>) -> Vec<Place> {
    let of = |name, key, usual| {
        let temperature = Temperature::from_si(request.number(key).unwrap_or(usual));
        Place { name, key, temperature }
    };
    let mut all = Vec::from([
        of("cellar", Key::Cellar, CELLAR),
        of("room", Key::Room, USUAL_ROOM),
        of("hot_day", Key::HotDay, HOT_DAY),
    ]);
    let spells = lists.of(&HISTORY).iter().filter_map(|row| row.number(Key::Temperature));
    let warmest = spells.fold(f64::MIN, f64::max);
    if all.iter().all(|place| place.temperature.si() < warmest) {
        let temperature = Temperature::from_si(warmest);
        all.push(Place { name: "history", key: Key::Temperature, temperature });
    }
    if let Some(hot) = request.number(Key::Pasteurising) {
        all.push(of(PASTEURISING, Key::Pasteurising, hot));
    }
    all
}

fn expectation(
    request: &Request,
    sugar: &Fermentable,
    found: &Found,
    batch: &Batch,
    steps: &mut Working,
) -> Result<Answer<Expectation>, Error> {
    let context = physical(request)?;
    let room = Temperature::from_si(request.or(Key::Room, USUAL_ROOM)?);
    let keeping = keeping(request, room)?;
    let dissolved = |content: f64, steps: &mut dyn crate::evidence::Steps| {
        let both = Contents { expected: content, worst: content };
        pressure_of_contents(both, &keeping, None, &context, &mut &mut *steps)
            .map_err(|error| error.renamed(|key| (key == Key::Temperature).then(|| named(request, Key::Room))))
    };
    let mut answer = dissolved(found.package.expected, steps)?;
    let low = dissolved(found.least, &mut NoSteps)?;
    let high = dissolved(found.package.worst, &mut NoSteps)?;
    let dose = carbonation(request)
        .and_then(|target| priming::priming_sugar(target, batch, sugar, &context, &mut NoSteps))
        .ok();
    if fermented(context.beverage.kind) {
        answer.notes.cautions.add(Caution::of(&SUPERSATURATION, answer.value.dissolved.si()));
    }
    context.note_model(&mut answer.notes.cautions);
    note_headspace(request, &mut answer);
    Ok(answer.map(|package| Expectation {
        expected: package.dissolved,
        low: low.value.dissolved,
        high: high.value.dissolved,
        dose: dose.map(|d| d.value),
    }))
}

impl Bottling {
    /// Whether the sugar was weighed already, so that the job tells what follows.
    pub fn was_weighed(&self) -> bool {
        self.request.get(Key::Mass).is_some()
    }

    /// The bottles that matter: those that are filled; where none is, every one that was thought of.
    fn judged(&self) -> impl Iterator<Item = &BottleRow> {
        let any = self.bottles.iter().any(BottleRow::is_filled);
        self.bottles.iter().filter(move |row| row.is_filled() || !any)
    }

    /// The error that says that no bottle would hold: of the bottles that are listed and filled, or where none are of any.
    pub(crate) fn beyond_every_bottle(&self) -> Option<&Error> {
        let stored = self.storage.iter().filter_map(|place| place.pressure.answer.as_ref().err());
        let filled = self.judged().flat_map(|row| &row.pressures);
        let listed = filled.filter_map(|(_, pressure)| pressure.as_ref().err());
        let any = if self.bottles.is_empty() { Some(stored) } else { None };
        let mut all = listed.chain(any.into_iter().flatten()).chain(self.priming.answer.as_ref().err());
        all.find(|error| match error {
            Error::PressureTooHigh { .. } | Error::VesselFull { .. } => true,
            // So much sugar, or heat, that the library has no answer for it.
            Error::OutOfRange { parameter, value, high, .. } => {
                matches!(parameter.key, Key::Dose | Key::Mass | Key::Pasteurising) && value > high
            }
            _ => false,
        })
    }

    /// Whether there is an answer.
    pub fn answered(&self) -> bool {
        self.priming.answer.is_ok() || self.storage.iter().any(|s| s.pressure.answer.is_ok())
    }

    /// Whether any part carries a `danger` caution, or a bottle has no pressure because it would burst or be full.
    pub fn danger(&self) -> bool {
        self.beyond_every_bottle().is_some() || self.notes().iter().any(|notes| notes.cautions.any(Level::Danger))
    }

    /// What the parts noted, in their order.
    pub(crate) fn notes(&self) -> Vec<&Notes> {
        fn of<T>(part: &Part<T>) -> Option<&Notes> {
            part.answer.as_ref().ok().map(|answer| &answer.notes)
        }
        fn maybe<T>(part: &Option<Part<T>>) -> Option<&Notes> {
            part.as_ref().and_then(of)
        }
        let parts = [
            maybe(&self.readiness),
            of(&self.residual),
            maybe(&self.added),
            of(&self.priming),
            of(&self.primed),
            maybe(&self.weighed),
            of(&self.expectation),
        ];
        let later = [of(&self.syrup), maybe(&self.wort), of(&self.ready), maybe(&self.yeast), of(&self.point)];
        let stored = self.storage.iter().map(|s| of(&s.pressure));
        let filled = self.judged().map(|row| of(&row.glass));
        parts.into_iter().chain(stored).chain(filled).chain(later).flatten().collect()
    }
}
