//! The one vocabulary: every parameter and result of every function, once.
//!
//! A name is *role + unit* (`warmest_c`, `gauge_psi`); the role is left out where only one such quantity exists
//! (`volumes`, `sg`). A field that is no quantity is a choice from a list, a yes/no, or a text.

use super::unit::Dimension;

/// What a field holds.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub enum Kind {
    /// A number in any unit of the dimension; `min` and `max` (SI units) are where physics or the library ends:
    /// beyond them there is an error, never a number.
    Number {
        /// What is measured.
        dimension: Dimension,
        /// Smallest value that is answered, SI.
        min: f64,
        /// Largest value that is answered, SI.
        max: f64,
    },
    /// One name of a list, given by [`crate::basis::request::choices`].
    Choice,
    /// Yes or no.
    Flag,
    /// Free text of at most [`super::name::TEXT_BYTES`] bytes.
    Text,
}

/// One entry of the vocabulary.
#[derive(Debug)]
pub struct Field {
    /// The role; empty where the unit alone names the quantity.
    pub role: &'static str,
    /// What the field holds.
    pub kind: Kind,
    /// Its meaning, in words a brewer would use.
    pub meaning: &'static str,
}

macro_rules! fields {
    ($($(#[$doc:meta])* $key:ident = $role:literal $kind:expr, $meaning:literal;)*) => {
        /// A field of the vocabulary, as an index into [`FIELDS`].
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
        #[non_exhaustive]
        #[repr(u8)]
        pub enum Key {
            $(#[doc = $meaning] $key,)*
        }
        /// The vocabulary, in the order in which requests and answers are printed.
        pub static FIELDS: &[Field] = &[$(Field { role: $role, kind: $kind, meaning: $meaning },)*];
        impl Key {
            /// Every key, in the order of [`FIELDS`].
            pub const ALL: &'static [Key] = &[$(Key::$key,)*];
        }
    };
}

/// How many fields there are.
pub const COUNT: usize = Key::ALL.len();

impl Key {
    /// The entry of the vocabulary.
    pub fn field(self) -> &'static Field {
        &FIELDS[self as usize]
    }

    /// The limits in SI units, for a number.
    pub fn limits(self) -> Option<(f64, f64)> {
        match self.field().kind {
            Kind::Number { min, max, .. } => Some((min, max)),
            _ => None,
        }
    }

    /// What a number measures.
    pub fn dimension(self) -> Option<Dimension> {
        match self.field().kind {
            Kind::Number { dimension, .. } => Some(dimension),
            _ => None,
        }
    }
}

const fn number(dimension: Dimension, min: f64, max: f64) -> Kind {
    Kind::Number { dimension, min, max }
}

/// Temperatures at which drinks are stored and served: a little below freezing, where alcohol and extract keep a
/// drink liquid, up to pasteurisation.
const fn drink_temperature() -> Kind {
    number(Dimension::Temperature, 268.15, 333.15)
}

/// Highest pressure that is answered, Pa: beyond 30 bar no vessel of this trade holds, nor do the gas equations.
pub const HIGHEST_PRESSURE: f64 = 3.0e6;

const fn pressure() -> Kind {
    number(Dimension::Pressure, 0.0, HIGHEST_PRESSURE)
}

fields! {
    Title = "title" Kind::Text, "a name for the batch, printed on the plan";
    Beverage = "beverage" Kind::Choice, "what the drink is";
    Abv = "abv" number(Dimension::Percent, 0.0, 25.0), "alcohol by volume";
    Extract = "extract" number(Dimension::Concentration, 0.0, 400.0),
        "everything dissolved except CO2 and alcohol: it lowers the solubility of CO2";
    Fermentable = "fermentable" number(Dimension::Concentration, 0.0, 400.0),
        "what yeast in the package can still turn into CO2: it makes pressure";
    Yeast = "yeast" Kind::Choice, "whether living yeast goes into the package";
    Packaged = "packaged" number(Dimension::Volume, 1.0e-6, 1.0e3),
        "drink that reaches packages (not the batch size: trub and losses stay behind)";
    Carbonation = "" number(Dimension::Carbonation, 0.0, 30.0),
        "CO2 per litre of drink";
    Warmest = "warmest" number(Dimension::Temperature, 273.15, 318.15),
        "highest temperature of the drink since active fermentation";
    Filling = "filling" drink_temperature(), "temperature of the drink when its package is closed";
    Temperature = "temperature" drink_temperature(), "temperature of the drink";
    Serving = "serving" drink_temperature(), "temperature of the keg when it is served";
    Cellar = "cellar" drink_temperature(), "temperature of a cool store";
    Room = "room" drink_temperature(), "temperature of the room: that in which bottles condition, or into which CO2 escapes";
    HotDay = "hot_day" drink_temperature(), "temperature that bottles and kegs reach on a hot day";
    Pasteurising = "pasteurising" drink_temperature(), "temperature at which filled bottles would be pasteurised";
    Residual = "residual" number(Dimension::Carbonation, 0.0, 30.0),
        "CO2 in the drink before it is packaged, measured: it overrides what the warmest temperature says";
    FermenterGauge = "fermenter_gauge" number(Dimension::Pressure, 0.0, 5.0e5),
        "pressure above the air outside that the fermenter held at the warmest temperature";
    ColdCrash = "cold_crash" Kind::Choice,
        "how the drink was chilled before packaging: open (or through an airlock), closed (tight, with its own gas over it), co2_supplied (CO2 let in, at the fermenter's pressure)";
    Crash = "crash" drink_temperature(), "temperature to which the drink was chilled before packaging";
    FermenterHeadspace = "fermenter_headspace" number(Dimension::Percent, 0.0, 1000.0),
        "gas over the drink in a closed fermenter, in percent of the drink's volume";
    Altitude = "altitude" number(Dimension::Length, -500.0, 9000.0),
        "height above sea level, from which the air pressure outside follows by ISO 2533";
    Ambient = "ambient" number(Dimension::Pressure, 30.0e3, 110.0e3),
        "measured pressure of the air outside, at the station (not reduced to sea level)";
    SeaLevel = "sea_level" number(Dimension::Pressure, 87.0e3, 109.0e3),
        "air pressure reduced to sea level, as weather reports give it; needs the altitude too";
    Gauge = "gauge" number(Dimension::Pressure, -110.0e3, HIGHEST_PRESSURE),
        "pressure above the air outside, total of the gas over the drink";
    Absolute = "abs" pressure(), "pressure above vacuum, total of the gas over the drink";
    Headspace = "headspace" number(Dimension::Percent, 0.0, 100.0),
        "gas space over the drink, in percent of the drink's volume";
    Sugar = "sugar" Kind::Choice, "the priming sugar";
    SugarWater = "sugar_water" number(Dimension::Percent, 0.0, 100.0), "water in a sugar of one's own, percent of its mass";
    SugarGravity = "sugar" number(Dimension::SpecificGravity, 1.0, 1.45),
        "specific gravity 20/20 °C of a syrup of one's own, from which its water follows";
    SugarFermentable = "sugar_fermentable" number(Dimension::Percent, 0.0, 100.0),
        "what yeast ferments of the dry matter of a sugar of one's own, percent";
    SugarKind = "sugar_kind" Kind::Choice, "what the fermentable part of a sugar of one's own is";
    SyrupWater = "syrup_water" number(Dimension::Volume, 0.0, 1.0), "water in which the priming sugar is dissolved";
    Syrup = "syrup" number(Dimension::Volume, 0.0, 1.0e3), "volume of the syrup when it has cooled";
    SyrupStrength = "syrup" number(Dimension::Percent, 0.0, 100.0), "dissolved dry matter in the syrup, percent of its mass";
    Dissolving = "dissolving" number(Dimension::Temperature, 273.15, 373.15), "temperature at which the sugar has to stay dissolved";
    Addition = "addition" Kind::Choice, "what is added: a sugar, or something for sweetness";
    Mass = "mass" number(Dimension::Mass, 0.0, 1.0e6), "mass of sugar, or of what is added, as sold";
    Dose = "dose" number(Dimension::Concentration, 0.0, 400.0), "sugar or other addition, as sold, per litre of drink";
    Scale = "scale" number(Dimension::Mass, 1.0e-6, 1.0), "the smallest step that the scale shows";
    Tablet = "tablet" number(Dimension::Mass, 1.0e-5, 0.1), "mass of one carbonation tablet";
    Wort = "wort" number(Dimension::Volume, 0.0, 1.0e3), "wort or fermenting beer that primes the drink";
    WortShare = "wort" number(Dimension::Percent, 0.0, 1.0e4), "wort that primes the drink, in percent of the drink's volume";
    WortCo2 = "wort" number(Dimension::Carbonation, 0.0, 30.0),
        "CO2 that the priming wort holds: none in fresh wort, about saturation in fermenting beer";
    WortOriginalGravity = "wort_original" number(Dimension::SpecificGravity, 1.001, 1.165),
        "specific gravity 20/20 °C of the priming wort before fermentation";
    WortOriginalPlato = "wort_original" number(Dimension::Plato, 0.2, 37.0), "extract of the priming wort before fermentation";
    WortCurrentGravity = "wort_current" number(Dimension::SpecificGravity, 0.980, 1.165),
        "specific gravity 20/20 °C of the priming wort when it is added";
    WortCurrentPlato = "wort_current" number(Dimension::Plato, -5.2, 37.0), "apparent extract of the priming wort when it is added";
    LimitAttenuation = "limit_attenuation" number(Dimension::Percent, 1.0, 100.0),
        "real degree of fermentation at which the yeast ends: the limit attenuation";
    ExpectedAttenuation = "expected_attenuation" number(Dimension::Percent, 1.0, 125.0),
        "apparent attenuation at which fermentation is expected to end";
    Batch = "batch" number(Dimension::Volume, 1.0e-6, 1.0e3), "drink in the fermenter, of which some stays behind";
    Loss = "loss" number(Dimension::Volume, 0.0, 1.0e3), "drink that stays behind with the trub, in the bottling vessel and in hoses";
    Bottle = "bottle" number(Dimension::Volume, 1.0e-5, 0.1), "drink that goes into one bottle";
    Capacity = "capacity" number(Dimension::Volume, 1.0e-5, 0.12), "what one bottle holds, filled to the brim";
    Count = "" number(Dimension::Count, 0.0, 1.0e5), "how many there are";
    BottleClass = "bottle_class" Kind::Choice, "class of the bottle: see the table bottle_classes";
    RatingGauge = "rating_gauge" number(Dimension::Pressure, 0.0, 3.0e6), "pressure above the air outside for which the maker rates the bottle";
    FillOrder = "fill_order" Kind::Choice,
        "what comes first in choosing bottles: least_leftover, fewest_bottles, fewest_sizes (the other two settle ties), or as_listed (the bottles in the order of their list)";
    Spare = "spare" number(Dimension::Percent, 0.0, 100.0), "bottles to wash beyond those to fill, in percent of them";
    Time = "time" number(Dimension::Time, 0.0, 1.6e8), "time: since the bottles were closed or the gas was connected, on the date of a reading, or of a spell or step at one temperature";
    Cells = "yeast" number(Dimension::CellCount, 0.0, 1.0e15), "living yeast in the drink";
    Age = "age" number(Dimension::Time, 0.0, 1.6e8), "time that the drink has stood since its fermentation ended";
    Filtered = "filtered" Kind::Flag, "whether the drink was filtered or fined bright";
    Microbes = "microbes" Kind::Choice,
        "what may ferment in the bottle: brewing_yeast; diastatic yeast, which splits dextrins; or wild yeast and bacteria";
    Progress = "progress" number(Dimension::Percent, 0.0, 100.0), "share of the carbonation that is made";
    Gravity = "" number(Dimension::SpecificGravity, 0.980, 1.165), "specific gravity 20/20 °C";
    Plato = "" number(Dimension::Plato, -5.2, 37.0), "extract, grams in 100 g of solution";
    OriginalGravity = "original" number(Dimension::SpecificGravity, 1.001, 1.165),
        "specific gravity 20/20 °C of the wort or must before fermentation";
    OriginalPlato = "original" number(Dimension::Plato, 0.2, 37.0), "extract of the wort or must before fermentation";
    CurrentGravity = "current" number(Dimension::SpecificGravity, 0.980, 1.165), "specific gravity 20/20 °C as it is now";
    CurrentPlato = "current" number(Dimension::Plato, -5.2, 37.0), "apparent extract as it is now";
    FinalGravity = "final" number(Dimension::SpecificGravity, 0.980, 1.165),
        "specific gravity 20/20 °C at which fermentation will end, best by a forced-fermentation test";
    FinalPlato = "final" number(Dimension::Plato, -5.2, 37.0),
        "apparent extract at which fermentation will end, best by a forced-fermentation test";
    ExtractScale = "extract_scale" Kind::Choice, "which relation turns specific gravity into extract";
    RealExtractModel = "real_extract_model" Kind::Choice,
        "which relation gives real extract and real attenuation: balling (one less their ratio), or quotient (which counts the mass lost as CO2); alcohol is Balling's by either";
    RealExtract = "real_extract" number(Dimension::Plato, -5.2, 37.0), "extract with the alcohol taken away";
    Attenuation = "attenuation" number(Dimension::Percent, 0.0, 150.0), "share of the extract that was fermented";
    Abw = "abw" number(Dimension::Percent, 0.0, 25.0), "alcohol by mass";
    RelativeViscosity = "viscosity" number(Dimension::Multiplier, 0.5, 10.0), "viscosity of the drink over that of water";
    Density = "density" number(Dimension::Density, 0.0, 2000.0), "density";
    Viscosity = "viscosity" number(Dimension::Viscosity, 0.0, 1.0), "dynamic viscosity";
    Diffusivity = "diffusivity" number(Dimension::Diffusivity, 0.0, 1.0e-6), "diffusivity of dissolved CO2";
    Cylinder = "cylinder" number(Dimension::Temperature, 216.592, 304.1282),
        "temperature of a cylinder of CO2: from the triple to the critical point, between which it holds liquid";
    Co2Share = "co2" number(Dimension::Percent, 1.0, 100.0),
        "CO2 in the gas that is put over the drink, percent by volume; the rest is nitrogen";
    HeadspaceAir = "air_abs" number(Dimension::Pressure, 0.0, HIGHEST_PRESSURE),
        "partial pressure of air, or of nitrogen, that stays in the headspace: that of the air outside where it was not purged at all";
    Depth = "depth" number(Dimension::Length, 0.0, 30.0), "height of drink above the place that is meant";
    Keg = "keg" number(Dimension::Volume, 1.0e-4, 1.0e3), "what the keg or tank holds, filled to the brim";
    KegDiameter = "keg_diameter" number(Dimension::Length, 0.02, 20.0), "inner diameter of the keg or tank";
    KegRating = "keg_rating_gauge" number(Dimension::Pressure, 0.0, 3.0e6),
        "pressure above the air outside for which the keg is rated: the least of its marking and its relief valve";
    Method = "method" Kind::Choice,
        "how the drink meets its gas: still, dip_tube (gas in through the liquid tube), on_side, stone, or rocked";
    Kla = "kla" number(Dimension::Rate, 1.0e-9, 0.1),
        "share of the gap to equilibrium that closes in a time: first-order rate of uptake";
    Start = "start" number(Dimension::Carbonation, 0.0, 30.0), "CO2 in the drink at the start";
    BurstGauge = "burst_gauge" number(Dimension::Pressure, 0.0, HIGHEST_PRESSURE),
        "high pressure, above the air outside, with which carbonation is started";
    Supply = "supply" number(Dimension::MassFlow, 1.0e-9, 1.0), "the most CO2 that the regulator lets through";
    Oxygen = "oxygen" number(Dimension::VolumeFraction, 0.0, 0.25), "oxygen in the gas over the drink";
    StartOxygen = "start_oxygen" number(Dimension::VolumeFraction, 0.0, 0.25), "oxygen in the vessel before it is purged";
    GasOxygen = "gas_oxygen" number(Dimension::VolumeFraction, 0.0, 0.05), "oxygen in the CO2 as supplied";
    PurgeGauge = "purge_gauge" number(Dimension::Pressure, 100.0, HIGHEST_PRESSURE),
        "pressure above the air outside to which a vessel is filled before it is vented";
    Cycles = "cycles" number(Dimension::Count, 0.0, 1000.0), "how often a vessel is filled with CO2 and vented";
    Sweeps = "sweeps" number(Dimension::Count, 0.0, 1000.0), "vessel volumes of CO2 that flow through an open vessel";
    Pocket = "pocket" number(Dimension::Volume, 0.0, 1.0), "air that stays under the lid when a vessel is filled with liquid";
    PickedUp = "picked_up" number(Dimension::TraceConcentration, 0.0, 1.0), "oxygen that a drink takes up";
    DissolvedOxygen = "dissolved_oxygen" number(Dimension::TraceConcentration, 0.0, 0.1), "oxygen dissolved in the drink";
    TotalOxygen = "total_oxygen" number(Dimension::TraceConcentration, 0.0, 1.0),
        "oxygen in drink and headspace together, per litre of drink: total package oxygen";
    Gas = "gas" number(Dimension::Mass, 0.0, 1.0e6), "mass of CO2";
    GasLoss = "gas_loss" number(Dimension::Percent, 0.0, 500.0), "CO2 lost through leaks and disconnecting, percent of what is used";
    CylinderSize = "cylinder_size" Kind::Choice, "size of the cylinder or cartridge: see the table cylinder_sizes";
    Charge = "charge" number(Dimension::Mass, 1.0e-4, 1.0e3), "CO2 in a full cylinder";
    FillingRatio = "filling_ratio" number(Dimension::MassRatio, 0.5, 0.9),
        "CO2 in a full cylinder over the water that it would hold";
    Gross = "gross" number(Dimension::Mass, 1.0e-3, 1.0e4), "what the cylinder weighs now";
    Tare = "tare" number(Dimension::Mass, 1.0e-3, 1.0e4), "what the empty cylinder weighs: it is stamped on it";
    LeftShare = "left" number(Dimension::Percent, 0.0, 100.0), "share of a full charge";
    Kegs = "kegs" number(Dimension::Count, 0.0, 1.0e6), "how many kegs a cylinder does";
    Tube = "tube" Kind::Choice, "tubing of the draught line: see the table tubes";
    Bore = "bore" number(Dimension::Bore, 1.0e-3, 0.05), "inner diameter of the line";
    Line = "line" number(Dimension::Length, 0.0, 500.0), "length of the draught line";
    Rise = "rise" number(Dimension::Length, -30.0, 50.0),
        "height of the faucet over the drink in the keg (its middle, where it is half empty); below 0 where the faucet is lower";
    Fittings = "fittings" number(Dimension::Multiplier, 0.0, 1000.0),
        "losses of fittings and faucet, in velocity heads of the line";
    Flow = "flow" number(Dimension::Flow, 1.0e-8, 0.1), "drink that flows";
    PourSize = "glass" number(Dimension::Volume, 1.0e-5, 0.1), "drink that is poured into one glass";
    Pour = "pour" number(Dimension::ShortTime, 0.1, 36_000.0), "time in which the glass is full";
    Resistance = "resistance" number(Dimension::PressureGradient, 0.0, 1.0e7), "pressure lost per length of line";
    Speed = "speed" number(Dimension::Velocity, 0.0, 100.0), "speed of the drink in the line";
    Reynolds = "reynolds" number(Dimension::Multiplier, 0.0, 1.0e8), "Reynolds number of the flow";
    Drop = "drop" number(Dimension::Pressure, -1.0e6, HIGHEST_PRESSURE), "difference of pressure";
    Wetting = "wetting" number(Dimension::Pressure, 0.0, 1.0e6),
        "pressure at which gas first bubbles from the wet stone";
    Margin = "margin" number(Dimension::Pressure, 0.0, 1.0e6), "pressure to spare, so that gas flows";
    FillMethod = "fill_method" Kind::Choice, "how the drink goes from the keg into bottles or growlers: see the table filling_losses";
    FillLoss = "fill_loss" number(Dimension::Carbonation, 0.0, 30.0), "CO2 lost while filling";
    OtherVolume = "other" number(Dimension::Volume, 1.0e-6, 1.0e3), "volume of the other drink that is blended in";
    OtherCarbonation = "other" number(Dimension::Carbonation, 0.0, 30.0), "CO2 in the other drink";
    Released = "released" number(Dimension::Mass, 0.0, 1.0e5), "CO2 that escapes into the room";
    RoomVolume = "room" number(Dimension::RoomVolume, 0.1, 1.0e6), "volume of the room";
    AirChanges = "air_changes" number(Dimension::Rate, 0.01 / 3600.0, 0.1),
        "how often the air of the room is exchanged: about 0.5 an hour in a closed room, less in a cold room or a cellar";
    Leak = "leak" number(Dimension::MassFlow, 0.0, 1.0), "CO2 that leaks steadily";
    RoomAir = "room_air" number(Dimension::VolumeFraction, 0.0, 1.0), "CO2 in the air of the room";
    KegPrice = "outfit" number(Dimension::Money, 0.0, 1.0e9), "price of everything that kegging needs and bottling does not";
    BottlingPrice = "bottling_outfit" number(Dimension::Money, 0.0, 1.0e9),
        "price of everything that bottling needs and kegging does not, without the bottles";
    BottlePrice = "bottle" number(Dimension::Money, 0.0, 1.0e9), "price of one empty bottle";
    CapPrice = "cap" number(Dimension::Money, 0.0, 1.0e9), "price of one cap";
    SugarPrice = "sugar" number(Dimension::MoneyPerMass, 0.0, 1.0e9), "price of the priming sugar";
    GasPrice = "gas" number(Dimension::MoneyPerMass, 0.0, 1.0e9), "price of CO2";
    DrinkPrice = "drink" number(Dimension::MoneyPerVolume, 0.0, 1.0e12), "what the drink itself costs";
    Batches = "batches" number(Dimension::Count, 1.0, 1.0e5), "how many batches are looked at";
    Uses = "uses" number(Dimension::Count, 1.0, 1.0e5), "how often a bottle is used before it is lost or broken";
    BottleLoss = "bottle_loss" number(Dimension::Percent, 0.0, 100.0), "drink lost in bottling, percent";
    KegLoss = "keg_loss" number(Dimension::Percent, 0.0, 100.0), "drink lost in kegging and in the line, percent";
    Cost = "cost" number(Dimension::MoneyPerVolume, 0.0, 1.0e15), "what a litre that is drunk costs";
    Spent = "spent" number(Dimension::Money, 0.0, 1.0e15), "what is spent in all";
    Hardware = "hardware" number(Dimension::Pressure, 0.0, 1.0e6),
        "pressure that faucet, shank, couplings and other lengths of line take, by the trade's balance";
    LineContent = "line" number(Dimension::Volume, 0.0, 10.0), "drink that stands in the line";
    GravityDrop = "drop" number(Dimension::SpecificGravity, 0.0, 0.2),
        "by how much the specific gravity lies above the end of fermentation";
    Chart = "chart" Kind::Choice, "in which units a chart is laid out: metric (°C and bar) or us (°F and psi)";
    Purge = "purge" Kind::Choice,
        "how air is kept out of a keg: none, headspace (gas over the drink vented), empty (vented before it is filled), or push (sanitiser pushed out by CO2, then the headspace vented if cycles are given)";
    PurgeTemperature = "purge" drink_temperature(), "temperature of a keg that is purged while it is empty";
    PushGauge = "push_gauge" number(Dimension::Pressure, 0.0, HIGHEST_PRESSURE),
        "pressure above the air outside at which CO2 pushes liquid out of a full keg";
    Basis = "basis" Kind::Choice, "the set of assumptions to start from";
    Model = "model" Kind::Choice, "the solubility model (default: that of the basis for this drink)";
    ResidualModel = "residual_model" Kind::Choice, "the model of residual CO2 (default: that of the basis)";
    Yield = "yield" number(Dimension::Percent, 50.0, 105.0), "CO2 really made, in percent of the sugar's theoretical yield";
    CountHeadspace = "count_headspace" Kind::Flag, "whether the gas over the drink takes its share of the CO2";
    CountSyrup = "count_syrup" Kind::Flag, "whether the volume of the syrup, if one is made, counts";
    SolubilityFactor = "solubility" number(Dimension::Multiplier, 0.5, 2.0), "factor on every solubility";
    ResidualFactor = "residual" number(Dimension::Multiplier, 0.0, 3.0), "factor on the residual CO2";
    YieldFactor = "yield" number(Dimension::Multiplier, 0.5, 2.0), "factor on the yield of sugar";
    Working = "working" Kind::Flag, "whether the answer carries its working";
}
