//! Functions of oxygen: purging it from a keg, and what of it a drink takes up.

use super::inputs::{ALTITUDE, AMBIENT, SEA_LEVEL, each, output, temperature, under};
use crate::basis::function::{Input, one_of, optional, required};
use crate::basis::{Answer, BasisName, Function, Request, Values};
use crate::error::Error;
use crate::evidence::NoSteps;
use crate::evidence::caution::{ASSUMED_KEG, Caution};
use crate::kegging::oxygen::{self, Headspace};
use crate::kegging::purge::{self, Vessel};
use crate::kegging::{push, sweep};
use crate::quantity::{
    Carbonation, GaugePressure, Key, Name, Percent, Temperature, TraceConcentration, Volume, VolumeFraction,
};

const SPACE: Input = optional(Key::Keg, "19.6 L, a soda keg of 5 US gallons to the brim, and noted");
const WARMTH: Input = optional(Key::Temperature, "20 °C");
const START: Input = optional(Key::StartOxygen, "20.95 % vol: air");
const SUPPLIED: Input =
    optional(Key::GasOxygen, "30 ppm, the most that CO2 for drinks may have (ISBT); 0 for a pure gas");
const RATED: Input = optional(Key::KegRating, "not known: more than 15 psi gets a caution");

/// The vessel of a request.
fn vessel(request: &Request) -> Result<Vessel, Error> {
    let usual = Vessel::soda_keg();
    let rating = request.get(Key::KegRating).map(|_| request.or(Key::KegRating, 0.0)).transpose()?;
    Ok(Vessel {
        space: Volume::from_si(request.or(Key::Keg, usual.space.si())?),
        temperature: Temperature::from_si(request.or(Key::Temperature, usual.temperature.si())?),
        start: VolumeFraction::from_si(request.or(Key::StartOxygen, usual.start.si())?),
        supplied: VolumeFraction::from_si(request.or(Key::GasOxygen, usual.supplied.si())?),
        rating: rating.map(GaugePressure::from_si),
    })
}

/// Notes the keg that was assumed.
fn note_keg<T>(request: &Request, answer: &mut Answer<T>) {
    if request.number(Key::Keg).is_none() {
        answer.notes.cautions.add(Caution::of(&ASSUMED_KEG, Vessel::soda_keg().space.si()));
    }
}

fn purge_gauge(request: &Request) -> Result<GaugePressure, Error> {
    const ADVICE: &str = "say to which pressure the keg is filled before it is vented, such as purge_gauge_psi";
    request.need(Key::PurgeGauge, ADVICE).map(GaugePressure::from_si)
}

fn cycles(request: &Request) -> Result<f64, Error> {
    request.need(Key::Cycles, "say how often it is filled and vented, as cycles_count")
}

/// Oxygen after purging.
pub static PURGE_OXYGEN: Function = Function {
    name: "purge_oxygen",
    summary: "Oxygen left in a vessel that is filled with CO2 and vented so many times, each filling mixed; and the CO2 that this takes.",
    home: "kegging::purge::purge_oxygen",
    inputs: &[
        required(Key::PurgeGauge),
        required(Key::Cycles),
        ALTITUDE,
        AMBIENT,
        SEA_LEVEL,
        START,
        SUPPLIED,
        SPACE,
        WARMTH,
        RATED,
    ],
    outputs: &[output(Key::Oxygen), under("each", Key::Gas), under("total", Key::Gas)],
    columns: &[
        Key::PurgeGauge,
        Key::Cycles,
        Key::StartOxygen,
        Key::GasOxygen,
        Key::Keg,
        Key::Temperature,
        Key::Ambient,
    ],
    example: r#"{"purge_gauge_psi": 30, "cycles_count": 5, "altitude_m": 0}"#,
    run: |request, steps| {
        let context = request.context(BasisName::Handbook)?;
        let (gauge, cycles, vessel) = (purge_gauge(request)?, cycles(request)?, vessel(request)?);
        let mut answer = purge::purge_oxygen(gauge, cycles, &vessel, &context, &mut &mut *steps)?;
        note_keg(request, &mut answer);
        Ok(answer.map(|p| Values::new([p.oxygen.si(), p.each.si(), p.total.si()])))
    },
    slices: |request, s| {
        let ambient = request.context(BasisName::Handbook)?.ambient(&mut NoSteps)?;
        let x = purge::columns(purge_gauge(request)?, cycles(request)?, &vessel(request)?, ambient);
        purge::visit(each(request, x, s))
    },
};

fn allowed(request: &Request) -> Result<VolumeFraction, Error> {
    const ADVICE: &str = "say how much oxygen may be left in the gas, such as oxygen_ppm";
    request.need(Key::Oxygen, ADVICE).map(VolumeFraction::from_si)
}

/// How often to purge.
pub static PURGE_CYCLES: Function = Function {
    name: "purge_cycles",
    summary: "How often a vessel is filled with CO2 and vented until no more than some oxygen is left, as a real and as a whole number; and the CO2 that the whole number takes.",
    home: "kegging::purge::purge_cycles",
    inputs: &[
        required(Key::PurgeGauge),
        required(Key::Oxygen),
        ALTITUDE,
        AMBIENT,
        SEA_LEVEL,
        START,
        SUPPLIED,
        SPACE,
        WARMTH,
        RATED,
    ],
    outputs: &[output(Key::Cycles), under("whole", Key::Cycles), under("each", Key::Gas), under("total", Key::Gas)],
    columns: &[
        Key::PurgeGauge,
        Key::Oxygen,
        Key::StartOxygen,
        Key::GasOxygen,
        Key::Keg,
        Key::Temperature,
        Key::Ambient,
    ],
    example: r#"{"purge_gauge_psi": 30, "oxygen_ppm": 1000, "altitude_m": 0}"#,
    run: |request, steps| {
        let context = request.context(BasisName::Handbook)?;
        let (gauge, limit, vessel) = (purge_gauge(request)?, allowed(request)?, vessel(request)?);
        let mut answer = purge::purge_cycles(gauge, limit, &vessel, &context, &mut &mut *steps)?;
        note_keg(request, &mut answer);
        Ok(answer.map(|p| Values::new([p.cycles, p.whole, p.each.si(), p.total.si()])))
    },
    slices: |request, s| {
        let ambient = request.context(BasisName::Handbook)?.ambient(&mut NoSteps)?;
        let x = purge::columns(purge_gauge(request)?, allowed(request)?.si(), &vessel(request)?, ambient);
        purge::visit_cycles(each(request, x, s))
    },
};

fn sweeps(request: &Request) -> Result<f64, Error> {
    request.need(Key::Sweeps, "say how many vessel volumes of CO2 run through, as sweeps_count")
}

/// Oxygen after a flow.
pub static SWEEP_OXYGEN: Function = Function {
    name: "sweep_oxygen",
    summary: "Oxygen left in an open vessel after so many vessel volumes of CO2 ran through it: mixed (the most), and without mixing (the least); and the CO2 that this takes.",
    home: "kegging::sweep::sweep_oxygen",
    inputs: &[required(Key::Sweeps), ALTITUDE, AMBIENT, SEA_LEVEL, START, SUPPLIED, SPACE, WARMTH],
    outputs: &[under("mixed", Key::Oxygen), under("plug_flow", Key::Oxygen), output(Key::Gas)],
    columns: &[Key::Sweeps, Key::StartOxygen, Key::GasOxygen, Key::Keg, Key::Temperature, Key::Ambient],
    example: r#"{"sweeps_count": 5, "altitude_m": 0}"#,
    run: |request, steps| {
        let context = request.context(BasisName::Handbook)?;
        let mut answer = sweep::sweep_oxygen(sweeps(request)?, &vessel(request)?, &context, &mut &mut *steps)?;
        note_keg(request, &mut answer);
        Ok(answer.map(|p| Values::new([p.mixed.si(), p.plug_flow.si(), p.gas.si()])))
    },
    slices: |request, s| {
        let ambient = request.context(BasisName::Handbook)?.ambient(&mut NoSteps)?;
        sweep::visit(each(request, sweep::columns(sweeps(request)?, &vessel(request)?, ambient), s))
    },
};

fn pushed(request: &Request) -> Result<(Volume, GaugePressure), Error> {
    const POCKET: &str = "say how much air stays under the lid when the keg is filled to the brim, such as pocket_ml";
    const GAUGE: &str = "say at which pressure CO2 pushes the liquid out, such as push_gauge_psi";
    let pocket = request.need(Key::Pocket, POCKET)?;
    Ok((Volume::from_si(pocket), GaugePressure::from_si(request.need(Key::PushGauge, GAUGE)?)))
}

/// Oxygen after a push of liquid.
pub static PUSH_OXYGEN: Function = Function {
    name: "push_oxygen",
    summary: "Oxygen in a keg that was filled to the brim with sanitiser, but for some air under the lid, and pushed empty by CO2; and the CO2 that this takes.",
    home: "kegging::push::push_oxygen",
    inputs: &[
        required(Key::Pocket),
        required(Key::PushGauge),
        ALTITUDE,
        AMBIENT,
        SEA_LEVEL,
        START,
        SUPPLIED,
        SPACE,
        WARMTH,
        RATED,
    ],
    outputs: &[output(Key::Oxygen), output(Key::Gas)],
    columns: &[Key::Pocket, Key::PushGauge, Key::StartOxygen, Key::GasOxygen, Key::Keg, Key::Temperature, Key::Ambient],
    example: r#"{"pocket_ml": 50, "push_gauge_psi": 10, "altitude_m": 0}"#,
    run: |request, steps| {
        let context = request.context(BasisName::Handbook)?;
        let (pocket, gauge) = pushed(request)?;
        let mut answer = push::push_oxygen(pocket, gauge, &vessel(request)?, &context, &mut &mut *steps)?;
        note_keg(request, &mut answer);
        Ok(answer.map(|p| Values::new([p.oxygen.si(), p.gas.si()])))
    },
    slices: |request, s| {
        let ambient = request.context(BasisName::Handbook)?.ambient(&mut NoSteps)?;
        let (pocket, gauge) = pushed(request)?;
        push::visit(each(request, push::columns(pocket, gauge, &vessel(request)?, ambient), s))
    },
};

/// Gas over the drink, percent of it: as given, or from the keg and the drink in it.
fn space(request: &Request) -> Result<Percent, Error> {
    const SPACE: &str =
        "say how much gas is over the drink: headspace_percent of the drink, or keg_l with packaged_l, the drink in it";
    const DRINK: &str = "say how much drink is in the keg, such as packaged_l: what is left of the keg is gas";
    match (request.name_of(Key::Headspace), request.name_of(Key::Keg)) {
        (Some(first), Some(second)) => Err(Error::Excluded { first, second }),
        (None, Some(_)) => {
            let (keg, drink) = (request.need(Key::Keg, SPACE)?, request.need(Key::Packaged, DRINK)?);
            let space = 100.0 * (keg / drink - 1.0);
            if !(0.0..=100.0).contains(&space) {
                let parameter = Name::first(Key::Packaged);
                return Err(Error::OutOfRange { parameter, value: drink, low: 0.5 * keg, high: keg });
            }
            Ok(Percent::from_si(space))
        }
        (_, None) => {
            let space = request.need(Key::Headspace, SPACE)?;
            match request.name_of(Key::Packaged) {
                Some(second) => Err(Error::Excluded { first: Name::first(Key::Headspace), second }),
                None => Ok(Percent::from_si(space)),
            }
        }
    }
}

/// What a request says of the gas over a drink.
fn headspace(request: &Request) -> Result<Headspace, Error> {
    const OXYGEN: &str =
        "say how much oxygen is in the gas over the drink, such as oxygen_ppm of purge_oxygen; air has 20.95 % vol";
    const TARGET: &str =
        "the CO2 at the start counts only with that to which the drink is carbonated: give volumes too";
    let oxygen = VolumeFraction::from_si(request.need(Key::Oxygen, OXYGEN)?);
    if request.get(Key::Carbonation).is_none() && request.get(Key::Start).is_some() {
        return Err(Error::Missing { parameter: Key::Carbonation, advice: TARGET });
    }
    let [start, reached] = [Key::Start, Key::Carbonation].map(|key| request.or(key, 0.0).map(Carbonation::from_si));
    let vented = Headspace::vented(oxygen, space(request)?, temperature(request)?);
    Ok(Headspace {
        gauge: GaugePressure::from_si(request.or(Key::Gauge, 0.0)?),
        dissolved: TraceConcentration::from_si(request.or(Key::DissolvedOxygen, 0.0)?),
        carbonated: (start?, reached?),
        supplied: VolumeFraction::from_si(request.or(Key::GasOxygen, vented.supplied.si())?),
        ..vented
    })
}

/// Oxygen that a drink takes up.
pub static OXYGEN_PICKUP: Function = Function {
    name: "oxygen_pickup",
    summary: "Oxygen of a package per litre of drink: in the headspace, brought along by the CO2 that carbonates it, and in all with what was dissolved; and what of it is dissolved at equilibrium.",
    home: "kegging::oxygen::oxygen_pickup",
    inputs: &[
        required(Key::Oxygen),
        one_of("gas_space", Key::Headspace),
        one_of("gas_space", Key::Keg),
        optional(Key::Packaged, "needed with keg: the drink in it"),
        required(Key::Temperature),
        ALTITUDE,
        AMBIENT,
        SEA_LEVEL,
        optional(Key::Gauge, "0: just vented"),
        optional(Key::DissolvedOxygen, "0: none before"),
        optional(Key::Carbonation, "the drink takes up no CO2"),
        optional(Key::Start, "0: flat"),
        SUPPLIED,
    ],
    outputs: &[
        under("headspace", Key::PickedUp),
        under("gas", Key::PickedUp),
        output(Key::TotalOxygen),
        under("equilibrium", Key::DissolvedOxygen),
    ],
    columns: &[
        Key::Oxygen,
        Key::Headspace,
        Key::Temperature,
        Key::Gauge,
        Key::Ambient,
        Key::DissolvedOxygen,
        Key::Carbonation,
        Key::Start,
        Key::GasOxygen,
    ],
    example: r#"{"oxygen_ppm": 1000, "headspace_percent": 3.5, "temperature_c": 4, "altitude_m": 0, "volumes": 2.5, "start_volumes": 0.84}"#,
    run: |request, steps| {
        let context = request.context(BasisName::Handbook)?;
        let answer = oxygen::oxygen_pickup(&headspace(request)?, &context, &mut &mut *steps)?;
        Ok(answer.map(|o| Values::new([o.headspace.si(), o.brought.si(), o.total.si(), o.dissolved.si()])))
    },
    slices: |request, s| {
        let ambient = request.context(BasisName::Handbook)?.ambient(&mut NoSteps)?;
        oxygen::visit(each(request, oxygen::columns(&headspace(request)?, ambient), s))
    },
};

fn shaken(request: &Request) -> Result<(TraceConcentration, Percent, Temperature), Error> {
    const HELD: &str = "say how much oxygen is dissolved in the shaken package, such as dissolved_oxygen_ppb";
    const SPACE: &str = "say how much gas is over the drink, as headspace_percent of the drink";
    let held = TraceConcentration::from_si(request.need(Key::DissolvedOxygen, HELD)?);
    Ok((held, Percent::from_si(request.need(Key::Headspace, SPACE)?), temperature(request)?))
}

/// Total package oxygen.
pub static TOTAL_PACKAGE_OXYGEN: Function = Function {
    name: "total_package_oxygen",
    summary: "Total package oxygen from the oxygen dissolved in a package that was shaken to equilibrium, and the part of it that is in the headspace; per litre of drink.",
    home: "kegging::oxygen::total_package_oxygen",
    inputs: &[required(Key::DissolvedOxygen), required(Key::Headspace), required(Key::Temperature)],
    outputs: &[output(Key::TotalOxygen), under("headspace", Key::PickedUp)],
    columns: &[Key::DissolvedOxygen, Key::Headspace, Key::Temperature],
    example: r#"{"dissolved_oxygen_ppb": 40, "headspace_percent": 5, "temperature_c": 20}"#,
    run: |request, steps| {
        let context = request.context(BasisName::Handbook)?;
        let (held, space, t) = shaken(request)?;
        let answer = oxygen::total_package_oxygen(held, space, t, &context, &mut &mut *steps)?;
        Ok(answer.map(|o| Values::new(o.map(TraceConcentration::si))))
    },
    slices: |request, s| {
        let (held, space, t) = shaken(request)?;
        oxygen::visit_total(each(request, [held.si(), space.si(), t.si()], s))
    },
};
