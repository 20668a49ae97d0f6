//! Functions of the CO2 supply: what a keg takes, what is left in a cylinder, and what escapes into the room.

use super::inputs::{
    ALTITUDE, AMBIENT, SEA_LEVEL, USUAL_ROOM, carbonation, each, output, packaged, temperature, under,
};
use crate::basis::function::{Input, one_of, optional, required};
use crate::basis::{Answer, BasisName, Function, Request, Values};
use crate::error::Error;
use crate::evidence::NoSteps;
use crate::evidence::caution::{ASSUMED_AIR_CHANGES, Caution};
use crate::kegging::cylinder_left::{self, USUAL_KEG};
use crate::kegging::gas_budget::{self, KegUse, Purging};
use crate::kegging::room::{self, Room, USUAL_AIR_CHANGES};
use crate::property::keg::PurgeMethod;
use crate::quantity::unit::POUND;
use crate::quantity::{
    Carbonation, GaugePressure, Key, Mass, MassFlow, Percent, Rate, RoomVolume, Temperature, Time, Volume,
};

/// CO2 in a full cylinder where nothing is said of it, kg: the usual one of 5 lb.
pub(crate) const USUAL_CHARGE: f64 = POUND.to_si(5.0);

/// CO2 in a full cylinder, by its size or as given; `usual` where neither is.
fn charge(request: &Request, usual: Option<f64>) -> Result<Mass, Error> {
    const ADVICE: &str =
        "say which cylinder it is: cylinder_size, such as \"cylinder_5_lb\", or charge_kg of CO2 in a full one";
    match (request.name_of(Key::CylinderSize), request.name_of(Key::Charge)) {
        (Some(first), Some(second)) => return Err(Error::Excluded { first, second }),
        (None, None) if usual.is_none() => {
            return Err(Error::Missing { parameter: Key::CylinderSize, advice: ADVICE });
        }
        _ => {}
    }
    let usual = request.cylinder_size().map(|size| size.charge).or(usual);
    request.or(Key::Charge, usual.unwrap_or_default()).map(Mass::from_si)
}

/// How the keg of a request is purged.
fn purging(request: &Request) -> Result<Purging, Error> {
    const METHOD: &str =
        "say what is purged: \"headspace\", \"empty\" or \"push\"; or leave out what purging would need";
    const PUSH: &str = "only purge=\"push\" pushes liquid out; say so, or leave push_gauge out";
    const EMPTY: &str =
        "only an empty keg has a temperature of its own: say purge=\"empty\" or \"push\", or leave purge_c out";
    const CYCLES: &str = "say how often it is filled and vented, as cycles_count";
    const GAUGE: &str = "say to which pressure it is filled before it is vented, such as purge_gauge_psi";
    let (method, none) = (request.purge(), Purging::none());
    let given = |key: Key| request.get(key).is_some();
    let needs = [Key::PurgeGauge, Key::Cycles, Key::PushGauge, Key::PurgeTemperature];
    if method == PurgeMethod::Nothing {
        return match needs.into_iter().find(|&key| given(key)) {
            Some(_) => Err(Error::Missing { parameter: Key::Purge, advice: METHOD }),
            None => Ok(none),
        };
    }
    if method != PurgeMethod::Push && given(Key::PushGauge) {
        return Err(Error::Missing { parameter: Key::Purge, advice: PUSH });
    }
    if method == PurgeMethod::Headspace && given(Key::PurgeTemperature) {
        return Err(Error::Missing { parameter: Key::Purge, advice: EMPTY });
    }
    // A push alone needs no vents.
    let vented = method != PurgeMethod::Push || given(Key::Cycles) || given(Key::PurgeGauge);
    let push = given(Key::PushGauge).then(|| request.or(Key::PushGauge, 0.0)).transpose()?;
    Ok(Purging {
        method,
        gauge: if vented { GaugePressure::from_si(request.need(Key::PurgeGauge, GAUGE)?) } else { none.gauge },
        cycles: if vented { request.need(Key::Cycles, CYCLES)? } else { none.cycles },
        push: push.map(GaugePressure::from_si),
        temperature: Temperature::from_si(request.or(Key::PurgeTemperature, none.temperature.si())?),
    })
}

/// The keg of a request.
fn keg(request: &Request) -> Result<KegUse, Error> {
    const SERVED: &str = "say at which pressure the keg is served, as the regulator shows it, such as gauge_psi";
    let keg = request.get(Key::Keg).map(|_| request.or(Key::Keg, 0.0)).transpose()?;
    Ok(KegUse {
        drink: packaged(request)?,
        keg: keg.map(Volume::from_si),
        carbonation: carbonation(request)?,
        start: Carbonation::from_si(request.or(Key::Start, 0.0)?),
        temperature: temperature(request)?,
        gauge: GaugePressure::from_si(request.need(Key::Gauge, SERVED)?),
        purging: purging(request)?,
        loss: Percent::from_si(request.or(Key::GasLoss, 0.0)?),
        charge: charge(request, Some(USUAL_CHARGE))?,
        rating: request
            .get(Key::KegRating)
            .map(|_| request.or(Key::KegRating, 0.0))
            .transpose()?
            .map(GaugePressure::from_si),
    })
}

/// CO2 for a keg.
pub static GAS_BUDGET: Function = Function {
    name: "gas_budget",
    summary: "CO2 that a keg takes, use by use: dissolved, in the headspace, for purging, to push the drink out, lost; in all and at the bare minimum; and how many kegs a cylinder does at either.",
    home: "kegging::gas_budget::gas_budget",
    inputs: &[
        required(Key::Packaged),
        required(Key::Carbonation),
        optional(Key::Start, "0: flat; beer that fermented at 20 °C holds about 0.85 volumes"),
        required(Key::Temperature),
        required(Key::Gauge),
        ALTITUDE,
        AMBIENT,
        SEA_LEVEL,
        optional(Key::Keg, "the drink and 3.5 % of it, as in a full soda keg"),
        optional(Key::Purge, "none"),
        optional(Key::PurgeGauge, "needed with purge \"headspace\" and \"empty\", and with cycles"),
        optional(Key::Cycles, "needed with purge \"headspace\" and \"empty\", and with purge_gauge"),
        optional(Key::PushGauge, "that of serving; only with purge \"push\""),
        optional(Key::PurgeTemperature, "that of a room, 20 °C; only with purge \"empty\" and \"push\""),
        optional(Key::GasLoss, "0 %"),
        optional(Key::KegRating, "not known: purging at more than 15 psi gets a caution"),
        optional(Key::CylinderSize, "cylinder_5_lb, unless charge is given"),
        optional(Key::Charge, "that of the cylinder_size"),
    ],
    outputs: &[
        under("dissolve", Key::Gas),
        under("headspace", Key::Gas),
        under("purge", Key::Gas),
        under("serve", Key::Gas),
        under("loss", Key::Gas),
        under("total", Key::Gas),
        under("least", Key::Gas),
        output(Key::Kegs),
        under("most", Key::Kegs),
    ],
    columns: &[
        Key::Packaged,
        Key::Carbonation,
        Key::Start,
        Key::Temperature,
        Key::Gauge,
        Key::Ambient,
        Key::Keg,
        Key::PurgeGauge,
        Key::Cycles,
        Key::PushGauge,
        Key::PurgeTemperature,
        Key::GasLoss,
        Key::Charge,
    ],
    example: r#"{"packaged_us_gal": 5, "volumes": 2.5, "start_volumes": 0.84, "temperature_f": 38, "gauge_psi": 11, "altitude_m": 0}"#,
    run: |request, steps| {
        let context = request.context(BasisName::Handbook)?;
        let answer = gas_budget::gas_budget(&keg(request)?, &context, &mut &mut *steps)?;
        Ok(answer.map(|b| {
            let [dissolve, headspace, purge, serve, loss] =
                [b.dissolve, b.headspace, b.purge, b.serve, b.loss].map(Mass::si);
            let (total, least) = (b.total.si(), b.least.si());
            Values::new([dissolve, headspace, purge, serve, loss, total, least, b.kegs, b.most_kegs])
        }))
    },
    slices: |request, s| {
        let ambient = request.context(BasisName::Handbook)?.ambient(&mut NoSteps)?;
        let (budget, x) = gas_budget::columns(&keg(request)?, ambient);
        gas_budget::visit(budget, each(request, x, s))
    },
};

/// How far the cylinder of a request is filled when it is full.
fn filling(request: &Request) -> Result<f64, Error> {
    const ADVICE: &str = "say how far the cylinder is filled when full: cylinder_size, or filling_ratio_g_per_g (0.68 for US cylinders, 0.75 for European ones; cartridges have none that is known)";
    match (request.name_of(Key::CylinderSize), request.name_of(Key::FillingRatio)) {
        (Some(first), Some(second)) => Err(Error::Excluded { first, second }),
        (None, _) => request.need(Key::FillingRatio, ADVICE),
        _ => {
            let ratio = request.cylinder_size().and_then(|size| size.filling_ratio);
            ratio.ok_or(Error::Missing { parameter: Key::FillingRatio, advice: ADVICE })
        }
    }
}

fn cylinder(request: &Request) -> Result<Temperature, Error> {
    request.need(Key::Cylinder, "say how warm the cylinder is, such as cylinder_c").map(Temperature::from_si)
}

/// What a cylinder's gauge tells.
pub static CYLINDER_LEFT: Function = Function {
    name: "cylinder_left",
    summary: "What the gauge of a cylinder shows as long as it holds liquid, the share of a full charge that is left when it begins to fall, and the temperature at which a full cylinder is full of liquid.",
    home: "kegging::cylinder_left::cylinder_left",
    inputs: &[
        required(Key::Cylinder),
        one_of("filling", Key::CylinderSize),
        one_of("filling", Key::FillingRatio),
        ALTITUDE,
        AMBIENT,
        SEA_LEVEL,
    ],
    outputs: &[
        output(Key::Gauge),
        output(Key::Absolute),
        under("falling", Key::LeftShare),
        under("liquid_full", Key::Cylinder),
    ],
    columns: &[Key::Cylinder, Key::FillingRatio, Key::Ambient],
    example: r#"{"cylinder_c": 20, "cylinder_size": "cylinder_5_lb", "altitude_m": 0}"#,
    run: |request, steps| {
        let context = request.context(BasisName::Handbook)?;
        let (t, filling) = (cylinder(request)?, filling(request)?);
        let answer = cylinder_left::cylinder_left(t, filling, &context, &mut &mut *steps)?;
        Ok(answer.map(|c| Values::new([c.gauge.si(), c.absolute.si(), c.falling.si(), c.liquid_full.si()])))
    },
    slices: |request, s| {
        let ambient = request.context(BasisName::Handbook)?.ambient(&mut NoSteps)?;
        cylinder_left::visit(each(request, [cylinder(request)?.si(), filling(request)?, ambient], s))
    },
};

fn weighed(request: &Request) -> Result<[Mass; 4], Error> {
    const GROSS: &str = "say what the cylinder weighs now, without regulator and hose, such as gross_kg";
    const TARE: &str = "say what the empty cylinder weighs, stamped on it as TW or tare, such as tare_kg";
    Ok([
        Mass::from_si(request.need(Key::Gross, GROSS)?),
        Mass::from_si(request.need(Key::Tare, TARE)?),
        charge(request, None)?,
        Mass::from_si(request.or(Key::Gas, USUAL_KEG)?),
    ])
}

/// What is left in a cylinder.
pub static CYLINDER_CONTENTS: Function = Function {
    name: "cylinder_contents",
    summary: "CO2 left in a cylinder by its weight now and empty, the share of a full charge, and how many kegs that does.",
    home: "kegging::cylinder_left::cylinder_contents",
    inputs: &[
        required(Key::Gross),
        required(Key::Tare),
        one_of("full", Key::CylinderSize),
        one_of("full", Key::Charge),
        optional(
            Key::Gas,
            "150 g for each keg: 19 L carbonated, served, its headspace purged, a little lost; gas_budget tells it of yours",
        ),
    ],
    outputs: &[under("left", Key::Gas), output(Key::LeftShare), output(Key::Kegs)],
    columns: &[Key::Gross, Key::Tare, Key::Charge, Key::Gas],
    example: r#"{"gross_lb": 10.2, "tare_lb": 7.7, "cylinder_size": "cylinder_5_lb"}"#,
    run: |request, steps| {
        let context = request.context(BasisName::Handbook)?;
        let [gross, tare, charge, gas] = weighed(request)?;
        let answer = cylinder_left::cylinder_contents(gross, tare, charge, gas, &context, &mut &mut *steps)?;
        Ok(answer.map(|c| Values::new([c.left.si(), c.share.si(), c.kegs])))
    },
    slices: |request, s| cylinder_left::visit_contents(each(request, weighed(request)?.map(Mass::si), s)),
};

const WARMTH: Input = optional(Key::Room, "20 °C");
const CHANGES: Input = optional(Key::AirChanges, "0.5 1/h, a closed room, and noted; a cold room or a cellar has less");

fn room(request: &Request) -> Result<Room, Error> {
    const VOLUME: &str = "say how large the room is, as room_m3 or room_ft3: length by width by height";
    Ok(Room {
        volume: RoomVolume::from_si(request.need(Key::RoomVolume, VOLUME)?),
        temperature: Temperature::from_si(request.or(Key::Room, USUAL_ROOM)?),
        air_changes: Rate::from_si(request.or(Key::AirChanges, USUAL_AIR_CHANGES)?),
    })
}

/// Notes the air changes that were assumed.
fn note_changes<T>(request: &Request, answer: &mut Answer<T>) {
    if request.number(Key::AirChanges).is_none() {
        answer.notes.cautions.add(Caution::of(&ASSUMED_AIR_CHANGES, USUAL_AIR_CHANGES));
    }
}

fn released(request: &Request) -> Result<Mass, Error> {
    const ADVICE: &str = "say how much CO2 escapes, such as released_kg: at worst all that the cylinder holds, or that a fermentation makes";
    request.need(Key::Released, ADVICE).map(Mass::from_si)
}

/// CO2 in a room.
pub static ROOM_CO2: Function = Function {
    name: "room_co2",
    summary: "CO2 in the air of a room into which a cylinder, or what a fermentation makes, escapes: mixed, at most, and all of it in the lower half; after some time of airing; and how long airing takes to 5000 ppm.",
    home: "kegging::room::room_co2",
    inputs: &[
        required(Key::Released),
        required(Key::RoomVolume),
        WARMTH,
        ALTITUDE,
        AMBIENT,
        SEA_LEVEL,
        CHANGES,
        optional(Key::Time, "0: at once"),
    ],
    outputs: &[
        under("mixed", Key::RoomAir),
        under("bound", Key::RoomAir),
        under("low_half", Key::RoomAir),
        under("later", Key::RoomAir),
        under("later_low_half", Key::RoomAir),
        under("aired", Key::Time),
        under("low_half_aired", Key::Time),
    ],
    columns: &[Key::Released, Key::RoomVolume, Key::Room, Key::Ambient, Key::AirChanges, Key::Time],
    example: r#"{"released_lb": 5, "room_m3": 30, "altitude_m": 0, "air_changes_per_h": 0.5, "time_h": 2}"#,
    run: |request, steps| {
        let context = request.context(BasisName::Handbook)?;
        let time = Time::from_si(request.or(Key::Time, 0.0)?);
        let mut answer = room::room_co2(released(request)?, &room(request)?, time, &context, &mut &mut *steps)?;
        note_changes(request, &mut answer);
        Ok(answer.map(|r| {
            let [mixed, bound, low] = [r.mixed, r.bound, r.low_half].map(|x| x.si());
            let (later, low_later) = (r.later.si(), r.later_low_half.si());
            Values::new([mixed, bound, low, later, low_later, r.aired.si(), r.low_half_aired.si()])
        }))
    },
    slices: |request, s| {
        let ambient = request.context(BasisName::Handbook)?.ambient(&mut NoSteps)?;
        let (mass, room, time) = (released(request)?.si(), room(request)?, request.or(Key::Time, 0.0)?);
        let Room { volume, temperature, air_changes } = room;
        let x = [mass, volume.si(), temperature.si(), ambient, air_changes.si(), time];
        room::visit(each(request, x, s))
    },
};

fn leak(request: &Request) -> Result<MassFlow, Error> {
    const ADVICE: &str =
        "say how much CO2 leaks, such as leak_g_per_h: what the cylinder loses in a day, by weight, over 24";
    request.need(Key::Leak, ADVICE).map(MassFlow::from_si)
}

/// CO2 in a room with a leak.
pub static ROOM_LEAK: Function = Function {
    name: "room_leak",
    summary: "CO2 in the air of a room into which some leaks steadily, in the end: mixed, and all of it in the lower half.",
    home: "kegging::room::room_leak",
    inputs: &[required(Key::Leak), required(Key::RoomVolume), WARMTH, ALTITUDE, AMBIENT, SEA_LEVEL, CHANGES],
    outputs: &[under("mixed", Key::RoomAir), under("low_half", Key::RoomAir)],
    columns: &[Key::Leak, Key::RoomVolume, Key::Room, Key::Ambient, Key::AirChanges],
    example: r#"{"leak_g_per_h": 94.5, "room_m3": 30, "altitude_m": 0, "air_changes_per_h": 0.5}"#,
    run: |request, steps| {
        let context = request.context(BasisName::Handbook)?;
        let mut answer = room::room_leak(leak(request)?, &room(request)?, &context, &mut &mut *steps)?;
        note_changes(request, &mut answer);
        Ok(answer.map(|shares| Values::new(shares.map(|x| x.si()))))
    },
    slices: |request, s| {
        let ambient = request.context(BasisName::Handbook)?.ambient(&mut NoSteps)?;
        let (leak, Room { volume, temperature, air_changes }) = (leak(request)?.si(), room(request)?);
        room::visit_leak(each(request, [leak, volume.si(), temperature.si(), ambient, air_changes.si()], s))
    },
};
