//! The parts of the kegging job: each asks one function of the library what the job's request says.

use super::ask::Ask;
use super::bottling::HOT_DAY;
use super::fermented;
use super::kegging::{BURST, CARBONATING, REGULATOR, SERVING, STONE, Whole};
use super::readiness::Gravities;
use crate::basis::{BasisName, Function, Yeast};
use crate::error::Error;
use crate::evidence::NoSteps;
use crate::property::co2_saturation::CRITICAL_TEMPERATURE;
use crate::property::keg::PurgeMethod;
use crate::property::oxygen::IN_AIR;
use crate::property::tube::TRADE_FLOW;
use crate::quantity::Key;
use crate::quantity::unit::LITRE;
use crate::table::functions::{
    BREAK_EVEN, BURST_TIME, CARBONATION_TIME, CYLINDER_LEFT, FILLING_CARBONATION, GAS_BUDGET, HANDBOOK_LINE,
    KEG_PRESSURE, LINE_FLOW, LINE_LENGTH, OXYGEN_PICKUP, PACKAGING_COST, PRIMING_SUGAR, PURGE_CYCLES, PURGE_OXYGEN,
    PUSH_OXYGEN, ROOM_CO2, SPUNDING, STONE_PRESSURE, WARMED_KEG,
};
use crate::table::gases::USUAL_CHARGE;
use crate::table::inputs::USUAL_ROOM;

/// A part of the job.
pub(super) struct Spec {
    /// Its name in answers.
    pub place: &'static str,
    /// The function that it asks.
    pub function: &'static Function,
    /// What it is asked; `None` where nothing calls for it.
    pub ask: for<'a> fn(&Whole<'_>, Ask<'a>) -> Result<Option<Ask<'a>>, Error>,
}

/// Part of the way to the target that counts as carbonated, as for bottles: the last of it takes for ever.
const MOST_OF_THE_WAY: f64 = 0.95;
/// Pressure of a burst where none is told, Pa gauge: about 30 psi, common practice with soda kegs.
const USUAL_BURST: f64 = 2.0e5;
/// A burst is of use where it has at least twice the pressure that holds the target.
const OF_USE: f64 = 2.0;
/// Oxygen that a purge leaves where nothing is told: a thousandth; judgement.
const USUAL_OXYGEN: f64 = 1.0e-3;
/// Pressure of a purge where none is told, Pa gauge; common practice.
const USUAL_PURGE: f64 = 2.0e5;
/// Pressure at which liquid is pushed out where none is told, Pa gauge: about 10 psi; common practice.
const USUAL_PUSH: f64 = 0.7e5;
/// Air that stays under the lid of a keg filled to the brim where nothing is told, m3; judgement.
const USUAL_POCKET: f64 = LITRE.to_si(0.05);
/// Pour where none is told, s for a glass: at home, common practice.
const USUAL_POUR: f64 = 12.0;
/// Gas over a fermenting drink where nothing is told, percent of the drink; common practice.
const USUAL_FERMENTER_HEADSPACE: f64 = 10.0;
/// The tube of a line where none is told.
pub(super) const USUAL_TUBE: &str = "vinyl_3_16_in";
/// The cylinder where none is told.
const USUAL_CYLINDER: &str = "cylinder_5_lb";

/// What the request says of the basis of doses and pressures, which is not that of the sealed keg's mass balance.
const OF_THE_BASIS: [Key; 4] = [Key::Basis, Key::Model, Key::ResidualModel, Key::Yield];

impl Whole<'_> {
    /// Whether anything is said of one of these.
    fn told(&self, keys: &[Key]) -> bool {
        keys.iter().any(|&key| self.request.get(key).is_some())
    }

    fn purge(&self) -> PurgeMethod {
        if self.told(&[Key::Purge]) { self.request.purge() } else { PurgeMethod::Headspace }
    }

    /// Oxygen in the keg's gas when it is filled and purged, at most.
    fn oxygen(&self) -> Result<f64, Error> {
        let left = match self.purge() {
            PurgeMethod::Nothing => return self.request.or(Key::StartOxygen, IN_AIR),
            PurgeMethod::Push => self.value("push", "", Key::Oxygen)?,
            _ => None,
        };
        match self.value("purged", "", Key::Oxygen)?.or(left) {
            Some(oxygen) => Ok(oxygen),
            None => self.request.or(Key::Oxygen, USUAL_OXYGEN),
        }
    }

    /// Whether fermentation may still go on, by living yeast and a gravity that has not come to its end.
    fn ferments(&self) -> Result<bool, Error> {
        let gravities = Gravities::of(self.request, self.lists)?;
        let finished = gravities.current.is_some() && !gravities.still_above_end(self.request.scale());
        Ok(self.request.drink()?.yeast == Yeast::Live && gravities.end.is_some() && !finished)
    }

    /// Where the keg stands, how it is carbonated, and what the drink holds before.
    fn carbonated<'a>(&self, ask: Ask<'a>) -> Result<Ask<'a>, Error> {
        let drink = self.kegs?.drink.si();
        Ok(ask.set(Key::Start, self.start?).set(Key::Packaged, drink).give(Key::Temperature, Key::Serving, SERVING))
    }

    /// The gas space that is vented: of the empty keg, or over the drink.
    fn purged<'a>(&self, ask: Ask<'a>) -> Result<Ask<'a>, Error> {
        let kegs = self.kegs?;
        Ok(match self.purge() {
            PurgeMethod::Empty => ask.set(Key::Keg, kegs.capacity.si()).give(Key::Temperature, Key::Room, USUAL_ROOM),
            _ => ask.set(Key::Keg, kegs.gas().si()).give(Key::Temperature, Key::Serving, SERVING),
        })
    }

    /// A pressure that is usual (Pa, gauge), or what the keg is rated for, if that is less.
    fn usual_pressure(&self, usual: f64) -> f64 {
        self.request.number(Key::KegRating).unwrap_or(usual).min(usual)
    }

    /// Whether the gas is a blend.
    fn blended(&self) -> bool {
        self.request.number(Key::Co2Share).is_some_and(|share| share < 100.0)
    }

    /// Partial pressure (Pa) of what is neither CO2 nor vapour in the keg when it is sealed.
    fn other_gas(&self) -> Result<f64, Error> {
        // A keg that nobody purges keeps the air that was in it.
        let air = if self.purge() == PurgeMethod::Nothing && !self.told(&[Key::HeadspaceAir]) {
            self.request.context(BasisName::Handbook)?.ambient(&mut NoSteps)?
        } else {
            0.0
        };
        Ok((self.regulator? - self.pure?).max(air))
    }

    /// Whether an empty keg or a headspace is vented.
    fn vents(&self) -> bool {
        match self.purge() {
            PurgeMethod::Nothing => false,
            PurgeMethod::Push => self.told(&[Key::Cycles, Key::PurgeGauge]),
            PurgeMethod::Headspace | PurgeMethod::Empty => true,
        }
    }

    /// How often the keg is vented.
    fn cycles(&self) -> Result<f64, Error> {
        match self.value("purge", "whole", Key::Cycles)? {
            Some(cycles) => Ok(cycles),
            None => self.request.or(Key::Cycles, 0.0),
        }
    }

    /// The draught line under the regulator's pressure.
    fn line<'a>(&self, ask: Ask<'a>) -> Result<Ask<'a>, Error> {
        let ask = ask.set(Key::Gauge, self.regulator?).give(Key::Temperature, Key::Serving, SERVING);
        if self.told(&[Key::Tube, Key::Bore]) { Ok(ask) } else { ask.choose(Key::Tube, USUAL_TUBE) }
    }

    /// The cylinder.
    fn cylinder<'a>(&self, ask: Ask<'a>) -> Result<Ask<'a>, Error> {
        if self.told(&[Key::CylinderSize, Key::Charge]) {
            Ok(ask)
        } else {
            ask.choose(Key::CylinderSize, USUAL_CYLINDER)
        }
    }
}

/// The parts, in the order of the day.
pub(super) static PARTS: &[Spec] = &[
    Spec {
        place: REGULATOR,
        function: &KEG_PRESSURE,
        ask: |whole, ask| {
            Ok(Some(ask.usual(Key::Carbonation, whole.target?).give(Key::Temperature, Key::Serving, SERVING)))
        },
    },
    Spec {
        place: "push",
        function: &PUSH_OXYGEN,
        ask: |whole, ask| {
            let push = whole.usual_pressure(USUAL_PUSH);
            let ask = ask.set(Key::Keg, whole.kegs?.capacity.si()).give(Key::Temperature, Key::Room, USUAL_ROOM);
            let ask = ask.usual(Key::Pocket, USUAL_POCKET).usual(Key::PushGauge, push);
            Ok((whole.purge() == PurgeMethod::Push).then_some(ask))
        },
    },
    Spec {
        place: "purge",
        function: &PURGE_CYCLES,
        ask: |whole, ask| {
            let ask = whole
                .purged(ask)?
                .usual(Key::PurgeGauge, whole.usual_pressure(USUAL_PURGE))
                .usual(Key::Oxygen, USUAL_OXYGEN);
            Ok((whole.vents() && !whole.told(&[Key::Cycles])).then_some(ask))
        },
    },
    Spec {
        place: "purged",
        function: &PURGE_OXYGEN,
        ask: |whole, ask| {
            let ask = whole
                .purged(ask)?
                .usual(Key::PurgeGauge, whole.usual_pressure(USUAL_PURGE))
                .set(Key::Cycles, whole.cycles()?);
            let ask = match (whole.purge(), whole.value("push", "", Key::Oxygen)?) {
                (PurgeMethod::Push, Some(left)) => ask.set(Key::StartOxygen, left),
                _ => ask,
            };
            Ok(whole.vents().then_some(ask))
        },
    },
    Spec {
        place: "oxygen",
        function: &OXYGEN_PICKUP,
        ask: |whole, ask| {
            let ask = whole.carbonated(ask)?.usual(Key::Carbonation, whole.target?);
            // What is let down takes nothing up.
            let ask = ask.set(Key::Start, whole.start?.min(whole.target?));
            let ask = ask.set(Key::Oxygen, whole.oxygen()?).set(Key::Headspace, whole.kegs?.headspace());
            Ok(Some(ask.without(&[Key::Keg, Key::Packaged])))
        },
    },
    Spec {
        place: CARBONATING,
        function: &CARBONATION_TIME,
        ask: |whole, ask| {
            let (start, target) = (whole.start?, whole.target?);
            let ask = whole.carbonated(ask)?.set(Key::Carbonation, start + MOST_OF_THE_WAY * (target - start));
            // A blend holds the target as pure CO2 does, which is what the drink is asked.
            Ok(Some(ask.set(Key::Gauge, whole.pure?)))
        },
    },
    Spec {
        place: BURST,
        function: &BURST_TIME,
        ask: |whole, ask| {
            let (start, target) = (whole.start?, whole.target?);
            let ask = whole.carbonated(ask)?.usual(Key::Carbonation, target);
            if whole.told(&[Key::BurstGauge]) {
                return Ok(Some(ask));
            }
            // Where nothing is said of a burst there is one only if it is of use and the keg stands it.
            let rating = whole.request.number(Key::KegRating).unwrap_or(f64::INFINITY);
            let slow = whole.request.method().is_none_or(|method| method.of_still) && !whole.told(&[Key::Kla]);
            let of_use = start < target && OF_USE * whole.pure? < USUAL_BURST && rating >= USUAL_BURST;
            // A blend holds a third as much CO2 as its pressure says, or less: no burst of it is worked out.
            Ok((slow && of_use && !whole.blended()).then(|| ask.set(Key::BurstGauge, USUAL_BURST)))
        },
    },
    Spec {
        place: STONE,
        function: &STONE_PRESSURE,
        ask: |whole, ask| {
            let ask = ask.usual(Key::Carbonation, whole.target?).give(Key::Temperature, Key::Serving, SERVING);
            let stone = whole.request.method().is_some_and(|method| method.name == STONE);
            Ok((stone || whole.told(&[Key::Wetting, Key::Depth])).then_some(ask))
        },
    },
    Spec {
        place: "spunding",
        function: &SPUNDING,
        ask: |whole, ask| {
            if !whole.told(&[Key::FinalGravity, Key::FinalPlato]) || !whole.ferments()? {
                return Ok(None);
            }
            let ask = ask.usual(Key::Carbonation, whole.target?).give(Key::Temperature, Key::Warmest, USUAL_ROOM);
            // The rating is that of the keg; what the fermenter stands nobody has told.
            Ok(Some(ask.usual(Key::FermenterHeadspace, USUAL_FERMENTER_HEADSPACE).without(&[Key::KegRating])))
        },
    },
    Spec {
        place: "keg_priming",
        function: &PRIMING_SUGAR,
        ask: |whole, ask| {
            let drink = whole.request.drink()?;
            let enough = whole.start.is_ok_and(|start| whole.target.is_ok_and(|target| start >= target));
            if drink.yeast != Yeast::Live || !fermented(drink.kind) || enough {
                return Ok(None);
            }
            let kegs = whole.kegs?;
            let ask =
                ask.without(&OF_THE_BASIS).without(&[Key::SyrupWater, Key::CountHeadspace, Key::FermenterHeadspace]);
            let ask = ask.choose(Key::Basis, BasisName::Physical.name())?.usual(Key::Carbonation, whole.target?);
            let ask = if whole.told(&[Key::Start]) { ask.give(Key::Residual, Key::Start, 0.0) } else { ask };
            Ok(Some(ask.set(Key::Packaged, kegs.drink.si()).set(Key::Headspace, kegs.headspace())))
        },
    },
    Spec {
        place: "gas",
        function: &GAS_BUDGET,
        ask: |whole, ask| {
            let kegs = whole.kegs?;
            let ask = whole.carbonated(ask)?.usual(Key::Carbonation, whole.target?).set(Key::Gauge, whole.regulator?);
            let ask = ask.set(Key::Start, whole.start?.min(whole.target?));
            let ask = whole.cylinder(ask.set(Key::Keg, kegs.capacity.si()))?;
            let ask = if whole.told(&[Key::Purge]) { ask } else { ask.choose(Key::Purge, "headspace")? };
            let ask = if whole.vents() {
                ask.usual(Key::PurgeGauge, whole.usual_pressure(USUAL_PURGE)).set(Key::Cycles, whole.cycles()?)
            } else {
                ask.without(&[Key::PurgeGauge, Key::Cycles])
            };
            Ok(Some(match whole.purge() {
                PurgeMethod::Push => ask.usual(Key::PushGauge, whole.usual_pressure(USUAL_PUSH)),
                _ => ask.without(&[Key::PushGauge]),
            }))
        },
    },
    Spec {
        place: "cylinder",
        function: &CYLINDER_LEFT,
        ask: |whole, ask| {
            // Only of the sizes sold is it known how far they are filled, and of cartridges not even then.
            let sold = whole.request.cylinder_size().is_none_or(|size| size.filling_ratio.is_some());
            let ask = whole.cylinder(ask)?.give(Key::Cylinder, Key::Room, USUAL_ROOM);
            let liquid = whole.request.number(Key::Room).is_none_or(|room| room < CRITICAL_TEMPERATURE);
            Ok((sold && liquid && !whole.blended() && !whole.told(&[Key::Charge])).then_some(ask))
        },
    },
    Spec {
        place: "line",
        function: &LINE_LENGTH,
        ask: |whole, ask| {
            let ask = whole.line(ask)?;
            let asked = if whole.told(&[Key::Flow]) { ask } else { ask.usual(Key::Pour, USUAL_POUR) };
            Ok((!whole.told(&[Key::Line])).then_some(asked))
        },
    },
    Spec {
        place: "pour",
        function: &LINE_FLOW,
        ask: |whole, ask| {
            let ask = whole.line(ask)?;
            Ok(whole.told(&[Key::Line]).then_some(ask))
        },
    },
    Spec {
        place: "handbook_line",
        function: &HANDBOOK_LINE,
        ask: |whole, ask| {
            let ask = whole.line(ask)?.without(&[Key::Temperature]);
            Ok((!whole.told(&[Key::Bore])).then_some(ask))
        },
    },
    Spec {
        place: "trade_line",
        function: &LINE_LENGTH,
        ask: |whole, ask| {
            // What physics says where the handbook speaks: at the flow that its figure belongs to.
            let flow = whole.request.tube().map_or(TRADE_FLOW, |tube| tube.flow);
            let ask = whole.line(ask)?.without(&[Key::Pour]).set(Key::Flow, flow);
            Ok((!whole.told(&[Key::Bore])).then_some(ask))
        },
    },
    Spec {
        place: "warmed",
        function: &WARMED_KEG,
        ask: |whole, ask| {
            // A drink that holds more than the target holds it until it is vented.
            let held = whole.start.map_or(whole.target?, |start| start.max(whole.target.unwrap_or(start)));
            let ask = ask.without(&OF_THE_BASIS).set(Key::Carbonation, held);
            let ask = ask.give(Key::Filling, Key::Serving, SERVING).give(Key::Temperature, Key::HotDay, HOT_DAY);
            let other = whole.other_gas()?;
            let ask = if other > 0.0 { ask.set(Key::HeadspaceAir, other) } else { ask };
            Ok(Some(ask.set(Key::Headspace, whole.kegs?.headspace())))
        },
    },
    Spec {
        place: "filling",
        function: &FILLING_CARBONATION,
        ask: |whole, ask| {
            let ask = ask.usual(Key::Carbonation, whole.target?);
            Ok(whole.told(&[Key::FillMethod, Key::FillLoss]).then_some(ask))
        },
    },
    Spec {
        place: "filling_regulator",
        function: &KEG_PRESSURE,
        ask: |whole, ask| {
            let needed = whole.value("filling", "expected", Key::Carbonation)?;
            let ask = ask.give(Key::Temperature, Key::Serving, SERVING);
            Ok(needed.map(|needed| ask.set(Key::Carbonation, needed)))
        },
    },
    Spec {
        place: "room",
        function: &ROOM_CO2,
        ask: |whole, ask| {
            let sold = whole.request.cylinder_size().map_or(USUAL_CHARGE, |size| size.charge);
            let charge = whole.request.or(Key::Charge, sold)?;
            Ok(whole.told(&[Key::RoomVolume]).then(|| ask.usual(Key::Released, charge)))
        },
    },
    Spec {
        place: "cost",
        function: &PACKAGING_COST,
        ask: |whole, ask| if whole.told(&MONEY) { whole.priced(ask).map(Some) } else { Ok(None) },
    },
    Spec {
        place: "break_even",
        function: &BREAK_EVEN,
        ask: |whole, ask| if whole.told(&MONEY) { whole.priced(ask).map(Some) } else { Ok(None) },
    },
];

/// What is a price.
const MONEY: [Key; 7] = [
    Key::BottlingPrice,
    Key::BottlePrice,
    Key::CapPrice,
    Key::SugarPrice,
    Key::KegPrice,
    Key::GasPrice,
    Key::DrinkPrice,
];

impl Whole<'_> {
    /// The sugar of the bottles and the gas of the kegs.
    fn priced<'a>(&self, ask: Ask<'a>) -> Result<Ask<'a>, Error> {
        let kegs = self.kegs?;
        let count = f64::from(kegs.count);
        let ask = ask.set(Key::Packaged, count * kegs.drink.si());
        // Where no bottles are planned, the keg's own priming tells about how much they would take.
        let sugar = self.sugar.or(self.value("keg_priming", "", Key::Mass)?.map(|sugar| count * sugar));
        let ask = if let Some(sugar) = sugar { ask.set(Key::Mass, sugar) } else { ask };
        let gas = self.value("gas", "total", Key::Gas)?;
        Ok(if let Some(gas) = gas { ask.set(Key::Gas, count * gas) } else { ask })
    }
}
