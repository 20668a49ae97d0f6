//! Cautions: what an answer warns of, with a stable code, a level, the limit crossed and the value given.

use crate::quantity::Dimension;
use crate::quantity::unit::{self, Unit};
use core::fmt;

/// How grave a caution is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
#[non_exhaustive]
pub enum Level {
    /// Somebody may be hurt; printed first, and a command line ends non-zero.
    Danger,
    /// The answer is less certain, or something is to be seen to.
    Caution,
    /// An assumption that was made.
    Note,
}

impl Level {
    /// The level in a word.
    pub const fn word(self) -> &'static str {
        match self {
            Level::Danger => "danger",
            Level::Caution => "caution",
            Level::Note => "note",
        }
    }
}

/// A kind of caution. The code never changes; the text may improve.
#[derive(Debug)]
pub struct CautionKind {
    /// Stable code.
    pub code: &'static str,
    /// How grave it is.
    pub level: Level,
    /// The sentence; `{value}` and `{limit}` stand for the two numbers with their units.
    pub text: &'static str,
    /// In what the two numbers are measured.
    pub dimension: Dimension,
    /// Its bit in the status of an array element, for the cautions that equations raise.
    pub bit: Option<u8>,
}

impl PartialEq for CautionKind {
    fn eq(&self, other: &CautionKind) -> bool {
        core::ptr::eq(self, other)
    }
}

/// Where an equation's source says that it holds; outside there is an answer with a caution.
#[derive(Debug)]
pub struct Range {
    /// The caution raised outside.
    pub caution: &'static CautionKind,
    /// Lowest value inside, SI.
    pub low: f64,
    /// Highest value inside, SI.
    pub high: f64,
}

/// Limits compare with this relative slack, so that 59 °F and 15 °C behave alike.
pub const SLACK: f64 = 1e-9;

/// A limit moved outwards by the slack: `side` is -1 for a lower limit and 1 for an upper one.
#[inline(always)]
pub fn slack(limit: f64, side: f64) -> f64 {
    if limit.is_infinite() { limit } else { limit + side * SLACK * limit.abs() }
}

/// Whether `value` lies below `limit` by more than the slack.
#[inline(always)]
pub fn below(value: f64, limit: f64) -> bool {
    value < slack(limit, -1.0)
}

/// Whether `value` lies above `limit` by more than the slack.
#[inline(always)]
pub fn above(value: f64, limit: f64) -> bool {
    value > slack(limit, 1.0)
}

impl Range {
    /// The status bit if `value` lies outside, else 0.
    #[inline(always)]
    pub fn bit(&self, value: f64) -> i32 {
        let outside = below(value, self.low) | above(value, self.high);
        match self.caution.bit {
            Some(bit) => i32::from(outside) << bit,
            None => 0,
        }
    }

    /// The caution for a value outside.
    pub fn caution_at(&'static self, value: f64) -> Caution {
        let limit = if value < self.low { self.low } else { self.high };
        Caution { kind: self.caution, value, limit }
    }
}

/// One caution of an answer.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Caution {
    /// Which.
    pub kind: &'static CautionKind,
    /// The value given, SI.
    pub value: f64,
    /// The limit it crossed, SI; equal to the value where there is no limit.
    pub limit: f64,
}

impl Caution {
    /// A caution that has one number only.
    pub const fn of(kind: &'static CautionKind, value: f64) -> Self {
        Self { kind, value, limit: value }
    }
}

struct Quantity(f64, Dimension);

impl fmt::Display for Quantity {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let Quantity(si, dimension) = *self;
        let in_unit = |u: &Unit| u.from_si(si);
        match dimension {
            Dimension::Temperature => {
                write!(f, "{:.1} °C ({:.0} °F)", in_unit(&unit::CELSIUS), in_unit(&unit::FAHRENHEIT))
            }
            Dimension::Pressure => write!(f, "{:.2} bar ({:.1} psi)", in_unit(&unit::BAR), in_unit(&unit::PSI)),
            Dimension::Carbonation => {
                write!(f, "{:.2} volumes ({:.1} g/L)", in_unit(&unit::VOLUMES), si)
            }
            Dimension::Multiplier | Dimension::MassRatio => write!(f, "{si:.2}"),
            Dimension::VolumeFraction => {
                write!(
                    f,
                    "{:.0} ppm ({:.2} % by volume)",
                    in_unit(&unit::PARTS_PER_MILLION),
                    in_unit(&unit::VOLUME_PERCENT)
                )
            }
            Dimension::Rate => write!(f, "{:.2} an hour", in_unit(&unit::PER_HOUR)),
            Dimension::SpecificGravity => write!(f, "{si:.3}"),
            Dimension::Time => write!(f, "{:.0} days", in_unit(&unit::DAY)),
            other => {
                let first = Unit::first(other);
                write!(f, "{:.1} {}", first.from_si(si), first.symbol)
            }
        }
    }
}

impl fmt::Display for Caution {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let mut rest = self.kind.text;
        while let Some(start) = rest.find('{') {
            f.write_str(&rest[..start])?;
            rest = &rest[start..];
            if let Some(after) = rest.strip_prefix("{value}") {
                Quantity(self.value, self.kind.dimension).fmt(f)?;
                rest = after;
            } else if let Some(after) = rest.strip_prefix("{limit}") {
                Quantity(self.limit, self.kind.dimension).fmt(f)?;
                rest = after;
            } else {
                f.write_str("{")?;
                rest = &rest[1..];
            }
        }
        f.write_str(rest)
    }
}

/// The cautions of an answer, each kind at most once.
#[derive(Clone, Copy, Debug)]
pub struct Cautions {
    list: [Option<Caution>; MOST],
    count: usize,
}

impl Default for Cautions {
    fn default() -> Self {
        Self { list: [None; MOST], count: 0 }
    }
}

impl Cautions {
    /// Adds a caution, unless one of its kind is there already; keeps the gravest first.
    pub fn add(&mut self, caution: Caution) {
        if self.count == MOST || self.iter().any(|c| c.kind == caution.kind) {
            return;
        }
        let mut at = self.count;
        while at > 0 && self.list[at - 1].is_some_and(|c| c.kind.level > caution.kind.level) {
            self.list[at] = self.list[at - 1];
            at -= 1;
        }
        self.list[at] = Some(caution);
        self.count += 1;
    }

    /// Adds those of another answer.
    pub fn join(&mut self, other: &Cautions) {
        for caution in other.iter() {
            self.add(*caution);
        }
    }

    /// The cautions, the gravest first.
    pub fn iter(&self) -> impl Iterator<Item = &Caution> {
        self.list[..self.count].iter().flatten()
    }

    /// Whether any is of this level.
    pub fn any(&self, level: Level) -> bool {
        self.iter().any(|c| c.kind.level == level)
    }

    /// The bits of the range cautions among them, as an array's status has them.
    pub fn bits(&self) -> i32 {
        self.iter().filter_map(|caution| caution.kind.bit).fold(0, |bits, bit| bits | (1 << bit))
    }

    /// How many there are.
    pub fn count(&self) -> usize {
        self.count
    }

    /// Whether there is one with this code.
    pub fn has(&self, code: &str) -> bool {
        self.iter().any(|c| c.kind.code == code)
    }
}

macro_rules! cautions {
    ($($id:ident = $code:literal $level:ident $bit:expr, $dimension:ident, $text:literal;)*) => {
        $(
            #[doc = concat!("`", $code, "`: ", $text)]
            pub static $id: CautionKind = CautionKind {
                code: $code, level: Level::$level, text: $text, dimension: Dimension::$dimension, bit: $bit,
            };
        )*
        /// As many as there are kinds.
        const MOST: usize = [$($code),*].len();
        /// Every kind of caution.
        pub static CAUTIONS: &[&CautionKind] = &[$(&$id),*];
    };
}

// The bits of array statuses are part of every face: they are appended to, never moved or used again.
cautions! {
    CHART_TEMPERATURE = "chart_temperature" Caution Some(0), Temperature,
        "the printed chart covers chilled beer; at {value} its fit is extrapolated beyond {limit}";
    CHART_PRESSURE = "chart_pressure" Caution Some(1), Pressure,
        "the printed tables end; at {value} absolute their fit is extrapolated beyond {limit}";
    CORE_WARM = "core_warm" Caution Some(2), Temperature,
        "solubility in water was measured for this equation up to {limit}; {value} is extrapolated";
    BELOW_FREEZING = "below_freezing" Caution Some(3), Temperature,
        "{value} lies below {limit}: the equations for water are extrapolated, and a weak drink freezes";
    RESIDUAL_HELD = "residual_held" Caution Some(4), Temperature,
        "the residual CO2 table ends at {limit}; for {value} its value there is kept";
    EU_TEMPERATURE = "wine_temperature" Caution Some(5), Temperature,
        "the wine relation is given for 20 °C and carried to 0-25 °C; {value} lies beyond {limit}";
    EXTRACT_HIGH = "extract_high" Caution Some(6), Concentration,
        "the effect of dissolved matter on solubility is known to {limit}; {value} is extrapolated";
    ALCOHOL_HIGH = "alcohol_high" Caution Some(7), Percent,
        "the effect of alcohol on solubility is known to {limit}; {value} is extrapolated";
    GAS_PRESSURE = "gas_pressure" Caution Some(8), Pressure,
        "{value} absolute lies beyond {limit}, to which the equations were checked";
    GRAVITY_RANGE = "gravity_range" Caution Some(9), SpecificGravity,
        "the gravity tables end at {limit}; {value} is extrapolated";
    EUROPEAN_TEMPERATURE = "european_temperature" Caution Some(10), Temperature,
        "the European form was checked to {limit} against printed tables; {value} is extrapolated";
    HENRY_TEMPERATURE = "henry_temperature" Caution Some(11), Temperature,
        "this correlation for water is given from or to {limit}; {value} lies outside";
    VISCOSITY_TEMPERATURE = "viscosity_temperature" Caution Some(12), Temperature,
        "viscosity and diffusivity are given from or to {limit}; {value} lies outside";
    SATURATION_NEAR_CRITICAL = "near_critical" Caution Some(13), Temperature,
        "near the critical point of CO2, {value} beyond {limit}, a small error of temperature is a large one of density";
    ORIGINAL_RANGE = "original_range" Caution Some(14), Plato,
        "attenuation is known for original extracts between 5 and 25 °P; {value} lies beyond {limit}";
    LIQUID_ALCOHOL = "liquid_alcohol" Caution Some(15), Percent,
        "the density of the drink is known to {limit} alcohol by volume; {value} is extrapolated";
    LIQUID_WARM = "liquid_warm" Caution Some(16), Temperature,
        "the density of the drink is known to {limit}; {value} is extrapolated";
    FOREIGN_MODEL = "foreign_model" Caution None, Percent,
        "this solubility model was not made for this drink ({value} alcohol by volume): see the table solubility_models";
    SYRUP_BY_DENSITY = "syrup_by_density" Note None, SpecificGravity,
        "the water of the syrup follows from its gravity of {value} as if all its dry matter were sucrose";
    DEXTRIN_LEFT = "dextrin_left" Caution None, Concentration,
        "brewing yeast makes no CO2 of dextrins ({value} added), but diastatic yeast (STA1), Brettanomyces and added glucoamylase do";
    LACTOSE_LEFT = "lactose_left" Caution None, Concentration,
        "brewing yeast makes no CO2 of lactose ({value} added), but Brettanomyces, Kluyveromyces and added lactase do";
    SWEETENER_LEFT = "sweetener_left" Caution None, Concentration,
        "no yeast makes CO2 of this sweetener ({value} added); bacteria can ferment sorbitol and other sugar alcohols. Read the label: fillers such as dextrose or maltodextrin are another matter";
    SWEETENER_PACKET = "sweetener_packet" Caution None, Concentration,
        "table-top packets are mostly filler, which may be dextrose, lactose or maltodextrin ({value} added): they may make nothing or as much CO2 as sugar, and safety takes the most";
    PRACTICE_CHART = "chart_common_practice" Caution None, Percent,
        "the beer chart is used for this drink by common practice only; basis=\"physical\" knows its composition";
    ASSUMED_COMPOSITION = "assumed_composition" Note None, Percent,
        "alcohol or extract was not given: what is usual for this drink is taken (the answer tells both; {value} alcohol by volume)";
    ASSUMED_FINISHED = "assumed_finished" Note None, Concentration,
        "nothing fermentable is taken to be left in the drink ({value}): confirm a stable gravity over several days";
    ASSUMED_HEADSPACE = "assumed_headspace" Note None, Percent,
        "headspace was not given: {value} of the drink's volume is assumed";
    FERMENTABLE_LEFT = "fermentable_left" Caution None, Carbonation,
        "fermentable extract is left: it can still add {value} to the package";
    FERMENTABLE_DANGER = "fermentable_danger" Danger None, Carbonation,
        "fermentable extract is left that can still add {value}: glass can burst. Let it ferment out before packaging";
    CARBONATION_HIGH = "carbonation_high" Caution None, Carbonation,
        "the worst case, {value}, is more than light one-way beer bottles usually hold ({limit}): use heavier glass, and the maker's rating";
    CARBONATION_DANGER = "carbonation_danger" Danger None, Carbonation,
        "the worst case, {value}, is more than heavier reusable beer bottles usually hold ({limit}): glass can burst. Only bottles whose maker rates them for it";
    HEATED_GLASS = "heated_glass" Danger None, Temperature,
        "never heat filled glass: no margin is known above {limit}, and this is {value}";
    SUPERSATURATION = "supersaturation" Note None, Carbonation,
        "a freshly fermented drink can hold more CO2 than equilibrium, by an amount nobody has published";
    PRESSURE_HIGH = "pressure_high" Caution None, Pressure,
        "the worst case, {value} gauge, is more than light one-way beer bottles see in usual use, at 40 °C ({limit}; no rating): carbonate less, leave more headspace, or keep them cooler; the maker's rating decides";
    PRESSURE_DANGER = "pressure_danger" Danger None, Pressure,
        "the worst case, {value} gauge, is more than heavier reusable beer bottles see in usual use, at 40 °C ({limit}; no rating): glass can burst. Carbonate less, leave more headspace, or keep them cooler";
    CLASS_HIGH = "class_carbonation_high" Caution None, Carbonation,
        "the worst case, {value}, is more than the lighter bottles of this class usually hold ({limit}): know the bottle, and its maker's rating";
    CLASS_DANGER = "class_carbonation_danger" Danger None, Carbonation,
        "the worst case, {value}, is more than bottles of this class usually hold ({limit}): glass can burst. Carbonate less, or take bottles whose maker rates them for it";
    CLASS_PRESSURE = "class_pressure_danger" Danger None, Pressure,
        "the worst case, {value} gauge, is more than bottles of this class see in usual use, at 40 °C ({limit}; no rating): glass can burst. Carbonate less, leave more headspace, or keep them cooler";
    RATING_DANGER = "rating_danger" Danger None, Pressure,
        "the worst case, {value} gauge, is more than the rating of the bottle ({limit}): glass can burst. Carbonate less, leave more headspace, keep them cooler, or take other bottles";
    NOT_FOR_CONDITIONING = "not_for_conditioning" Danger None, Pressure,
        "bottles of this class are not made to hold the pressure of conditioning ({value} gauge at worst): they burst. Growlers, screw-cap jugs and still-wine bottles take drink that is served at once";
    UNFINISHED_DANGER = "unfinished_danger" Danger None, Carbonation,
        "what ferments on by itself makes {value} of CO2 without any priming, more than the package usually holds ({limit}): glass bursts. Let it ferment out";
    STILL_FALLING = "still_falling" Danger None, SpecificGravity,
        "the gravity fell by {value} over the last readings, more than {limit}: it is not finished. Wait until it stands still for three days and more";
    FEW_READINGS = "few_readings" Caution None, Time,
        "one reading, or several over {value}, prove nothing: a gravity is stable when it has stood still over {limit} and more";
    BELOW_EXPECTED = "below_expected" Caution None, SpecificGravity,
        "the gravity of {value} is lower than the {limit} at which it should have ended: dextrins are being split, by yeast or by an infection. Wait weeks, and look again";
    ABOVE_EXPECTED = "above_expected" Caution None, SpecificGravity,
        "the gravity stands at {value}, above the {limit} at which it should end: a stuck fermentation goes on in the package. A forced-fermentation test tells";
    WILD_DANGER = "wild_danger" Danger None, Carbonation,
        "a stable gravity proves nothing with these microbes: they can ferment all the extract that is left, and make up to {value} of it. Give it months, and bottles made for sparkling wine; or keg it";
    STRONG_DRINK = "strong_drink" Caution None, Percent,
        "at {value} alcohol (above {limit}) ale and lager yeast conditions slowly or not at all: add fresh yeast that stands it, and give it twice the time";
    OLD_DRINK = "old_drink" Caution None, Time,
        "after {value} in bulk (more than {limit}) little yeast is alive: add fresh yeast";
    FILTERED_DRINK = "filtered_drink" Caution None, CellCount,
        "a filtered or fined drink has hardly any yeast left: without about {value} it stays flat. Add fresh yeast";
    COLD_CONDITIONING = "cold_conditioning" Caution None, Temperature,
        "at {value} (below {limit}) yeast conditions very slowly or goes to sleep, and wakes in a warm room later with all the sugar left: keep the bottles warmer first";
    HOT_CONDITIONING = "hot_conditioning" Caution None, Temperature,
        "at {value} (above {limit}) drinks stale fast and pressures are high: condition them cooler";
    FEW_CELLS = "few_cells" Caution None, CellCount,
        "{value} is fewer than the {limit} that condition reliably: add fresh yeast, or give it twice the time";
    MANY_CELLS = "many_cells" Note None, CellCount,
        "{value} is more than {limit}: it makes a thick sediment";
    FERMENTER_VACUUM = "fermenter_vacuum" Caution None, Pressure,
        "chilled while closed, the fermenter falls to {value} absolute, below the {limit} outside: vessels that are not made for it buckle, and airlocks suck back";
    ASSUMED_SATURATED = "assumed_saturated" Note None, Carbonation,
        "the CO2 in the fermenting wort was not given: what the drink keeps is assumed ({value})";
    SYRUP_HOT = "syrup_hot" Note None, Temperature,
        "sugar crystallises out of this syrup below {value}: add it before it is cold";
    UNSTEADY = "unsteady_gravity" Caution None, SpecificGravity,
        "the gravity moved by {value} in the last days of the readings; it stands still when it moves by no more than {limit} in three days, and twice that in a week. Read it again";
    COARSE_SCALE = "coarse_scale" Caution None, Mass,
        "the steps of the scale, {value}, are coarse for {limit} of sugar: half a step changes the bottle by more than a twentieth";
    SUGAR_VARIES = "sugar_varies" Note None, Multiplier,
        "samples of this sugar differ: a gram makes {value} to {limit} g of CO2";
    LOW_ATTENUATION = "low_attenuation" Danger None, Percent,
        "only {value} of the extract has fermented (under {limit}), and the gravity at the end is not told: a stuck fermentation goes on in the package. Tell the final gravity of a forced fermentation, or the attenuation expected";
    END_NOT_TOLD = "end_not_told" Caution None, SpecificGravity,
        "a stuck fermentation stands still too: nothing tells whether {value} is the end. Tell the final gravity of a forced fermentation, or the attenuation expected of the yeast";
    COARSE_TABLET = "coarse_tablet" Caution None, Mass,
        "a tablet of {value} is too much for a bottle that takes {limit} of sugar: the nearest whole number is none, and it stays flat. Take smaller tablets, or weigh the sugar";
    TRANSITION_FLOW = "transition_flow" Caution Some(26), Multiplier,
        "at a Reynolds number of {value} the flow may be smooth (as below {limit}) or turbulent (as above 4000), and change between: what the line takes may be from half to 1.6 times this. Try it, or choose another bore";
    FAST_POUR = "fast_pour" Caution Some(27), Flow,
        "{value} is faster than the {limit} that the trade pours at most: it foams. Take a longer or narrower line; the pressure belongs to the carbonation";
    GROWLER_WARM = "growler_warm" Caution None, Carbonation,
        "a growler filled with a drink of {value} is no pressure vessel: warm, or filled to the brim, it can burst. Leave headspace, keep it cold, and drink it soon";
    BLEND_LOSES = "blend_loses" Caution None, Carbonation,
        "the mix has {value}, more than the {limit} that it keeps under this pressure: it foams, and loses the rest with time";
    VESSEL_RATING_DANGER = "vessel_rating_danger" Danger None, Pressure,
        "{value} gauge is more than the vessel is rated for ({limit}): it can burst, or its relief valve opens. Carbonate less, keep it cooler, vent it before it warms, or take a stronger vessel; its marking, its relief valve and local code decide";
    VESSEL_UNRATED = "vessel_unrated" Caution None, Pressure,
        "the rating of the vessel was not told, and it may come to {value} gauge: read its marking, and never go above that or its relief valve. Growlers, glass and buckets are no pressure vessels";
    WETTING_IN_WATER = "wetting_in_water" Note None, Pressure,
        "the wetting pressure is taken as that of the stone in the drink ({value}): tested in water it reads about 1.6 times as high, by the higher surface tension";
    OXYGEN_TEMPERATURE = "oxygen_temperature" Caution Some(23), Temperature,
        "the solubility of oxygen was measured from 0 to 40 °C; {value} lies beyond {limit}";
    OXYGEN_HIGH = "oxygen_high" Caution None, TraceConcentration,
        "{value} of oxygen in drink and headspace together is more than {limit}: the drink goes stale in weeks. Purge more often, or fill under CO2";
    ASSUMED_KEG = "assumed_keg" Note None, Volume,
        "the gas space was not given: {value} is assumed, a soda keg of 5 US gallons to the brim";
    PURGE_PRESSURE = "purge_pressure" Caution None, Pressure,
        "{value} gauge is more than every vessel stands: tanks and fermenters may end at {limit}, plastic kegs near twice that. Read the marking and the relief valve, and never put gas on glass or on what has no marking";
    PURGE_RATING = "purge_above_rating" Danger None, Pressure,
        "{value} gauge is more than the keg is rated for ({limit}): it can burst. Purge at less, more often";
    GAUGE_SHOWS_TEMPERATURE = "gauge_shows_temperature" Note None, Pressure,
        "while any liquid is left the gauge shows {value} at this temperature, full or nearly empty: only weighing tells what is left";
    CYLINDER_LIQUID_FULL = "cylinder_liquid_full" Caution None, Temperature,
        "filled so far, a cylinder is full of liquid from {limit} on (it is at {value}), and its pressure rises fast beyond that: keep it upright, chained and away from heat, never above 52 °C (125 °F), and leave its relief device alone";
    CYLINDER_OVERFILLED = "cylinder_overfilled" Danger None, MassRatio,
        "a filling of {value} is more than any cylinder of CO2 may have ({limit}): warm, it is full of liquid and opens its relief device or bursts. Keep it cold and outdoors, and have its filler empty it";
    CYLINDER_OVERWEIGHT = "cylinder_overweight" Danger None, Mass,
        "{value} of CO2 is more than the cylinder holds when full ({limit}): weigh it without regulator and hose, and check the tare. If it is true it is overfilled, and can burst when it warms: have its filler empty it";
    LOW_HALF = "low_half" Note None, VolumeFraction,
        "CO2 is half as heavy again as air and lies low: the cautions go by {value}, all of it in the lower half of the room";
    ASSUMED_AIR_CHANGES = "assumed_air_changes" Note None, Rate,
        "how often the air is exchanged was not given: {value} is assumed, a closed room; a cold room or a cellar has less";
    ROOM_LONG_TERM = "room_above_long_term" Caution None, VolumeFraction,
        "where so much escapes, {value} of CO2 stands low in the room, more than {limit}, the limit over 8 hours (OSHA, NIOSH, EH40, 2006/15/EC): air the room before anybody stays in it, and fit a CO2 alarm. Local code decides";
    ROOM_SHORT_UK = "room_above_uk_short_term" Danger None, VolumeFraction,
        "where so much escapes, {value} of CO2 stands low in the room, more than {limit}, the British limit over 15 minutes (EH40): do not go in before it is aired and an alarm shows it. Fit a CO2 alarm; local code decides";
    ROOM_SHORT_US = "room_above_us_short_term" Danger None, VolumeFraction,
        "where so much escapes, {value} of CO2 stands low in the room, more than {limit}, the American short-term limit (NIOSH, ACGIH): do not go in before it is aired and an alarm shows it. Fit a CO2 alarm; local code decides";
    ROOM_IDLH = "room_immediately_dangerous" Danger None, VolumeFraction,
        "where so much escapes, {value} of CO2 stands low in the room, more than {limit}, immediately dangerous to life (NIOSH): never go in, not to help anybody either. Air it from outside and call for help. Fit a CO2 alarm; local code decides";
    UPTAKE_TEMPERATURE = "uptake_temperature" Caution Some(20), Temperature,
        "how fast a drink takes up CO2 is known for chilled kegs, and carried to {value} by the viscosity of water: beyond {limit} it is extrapolated. Take readings";
    DEEP_DRINK = "deep_drink" Caution Some(21), Length,
        "the drink stands {value} deep: how fast CO2 passes a still surface is known for kegs, to {limit}. Take readings, and fit the rate to them";
    HIGH_GAUGE = "high_gauge" Caution Some(22), Pressure,
        "{value} over the drink is more than every vessel stands: beyond {limit} only kegs whose maker rates them for it, with a relief valve below that. Plastic kegs and fermenters end near 2.4 bar (35 psi); read the marking, and vent before opening";
    WORKING_PRESSURE = "working_pressure_danger" Danger None, Pressure,
        "{value} gauge, at which the keg is carbonated or served, is more than it is rated for ({limit}): it can burst, or its relief valve opens. Take less pressure, serve it colder, or take a stronger keg";
    BEYOND_EVERY_KEG = "beyond_every_keg" Danger None, Pressure,
        "{value} gauge is more than any keg that is usually sold stands ({limit}): it bursts, or its relief valve opens. Let it ferment out, carbonate less, or keep it cooler; the marking decides";
    UNPURGED = "unpurged" Caution None, Pressure,
        "the gas over the drink is not purged: its air keeps {value} of the pressure, and under the regulator's pressure the drink ends far below the target. Fill it with CO2 and vent it a few times";
    BLEND_COUNTED = "blend_counted" Note None, Percent,
        "the gas is counted as if it were CO2 alone; of this blend {value} is, and a cylinder of a blend holds no liquid and far less: its gauge falls from the start";
    CYLINDER_HOT = "cylinder_hot" Danger None, Temperature,
        "at {value}, above {limit}, a cylinder holds no liquid any more, its gauge tells nothing, and a full one is at 90 bar (1300 psi) and more: keep it cooler, never above 52 °C (125 °F), out of the sun and upright";
}
