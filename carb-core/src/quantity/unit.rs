//! The one table of units.
//!
//! Every unit is linear in the SI unit of its dimension: `si = value * scale + offset`. A scale is written as
//! one division of two integers that a double holds exactly, so it is the double nearest to the exact factor.

/// What kind of thing a unit measures.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub enum Dimension {
    /// Thermodynamic temperature; SI unit kelvin.
    Temperature,
    /// A difference of two temperatures; SI unit kelvin.
    TemperatureDifference,
    /// Pressure; SI unit pascal. Whether it is gauge, absolute or ambient is said by the role or the type.
    Pressure,
    /// CO2 per litre of drink; kg/m3, which is the same number in g/L.
    Carbonation,
    /// Dissolved matter per litre of drink; kg/m3, which is the same number in g/L.
    Concentration,
    /// Volume; SI unit cubic metre.
    Volume,
    /// Mass; SI unit kilogram.
    Mass,
    /// Length; SI unit metre.
    Length,
    /// Time; SI unit second.
    Time,
    /// A share in percent (kept in percent, as the formulas of the trade have it).
    Percent,
    /// Specific gravity 20/20 °C, dimensionless.
    SpecificGravity,
    /// Extract in grams per 100 g of solution, °P.
    Plato,
    /// A plain factor, dimensionless.
    Multiplier,
    /// Mass of one thing made of another, kg/kg.
    MassRatio,
    /// Density; SI unit kg/m3, which is the same number in g/L.
    Density,
    /// Dynamic viscosity; SI unit pascal second.
    Viscosity,
    /// Diffusivity; SI unit m2/s.
    Diffusivity,
    /// A number of things.
    Count,
    /// Cells of yeast in a volume; SI unit one per cubic metre.
    CellCount,
    /// One gas in another, by volume; a plain share.
    VolumeFraction,
    /// A trace of something per litre of drink; kg/m3.
    TraceConcentration,
    /// Volume of liquid per time; SI unit m3/s.
    Flow,
    /// Mass of gas per time; SI unit kg/s.
    MassFlow,
    /// How often, or how fast a gap closes; SI unit 1/s.
    Rate,
    /// Pressure lost per length of line; SI unit Pa/m.
    PressureGradient,
    /// Speed; SI unit m/s.
    Velocity,
    /// Width of a tube or of a pore; SI unit metre.
    Bore,
    /// Volume of a room; SI unit cubic metre.
    RoomVolume,
    /// A time as short as that of a pour; SI unit second.
    ShortTime,
    /// Money, in any one currency.
    Money,
    /// Money per mass; one per kilogram.
    MoneyPerMass,
    /// Money per volume; one per cubic metre.
    MoneyPerVolume,
}

/// One unit: its name in every face, its exact relation to SI, and where that relation is defined.
#[derive(Debug)]
pub struct Unit {
    /// The suffix of a parameter name, such as `psi` in `gauge_psi`.
    pub name: &'static str,
    /// How the unit is printed behind a number.
    pub symbol: &'static str,
    /// What it measures.
    pub dimension: Dimension,
    /// `si = value * scale + offset`.
    pub scale: f64,
    /// `si = value * scale + offset`.
    pub offset: f64,
    /// Whether answers carry the quantity in this unit without being asked.
    pub shown: bool,
    /// The exact definition in words.
    pub definition: &'static str,
    /// Where the definition is laid down.
    pub source: &'static str,
    /// Its place in [`UNITS`].
    pub place: u8,
}

impl Unit {
    /// The value in SI units.
    #[inline(always)]
    pub const fn to_si(&self, value: f64) -> f64 {
        value * self.scale + self.offset
    }

    /// An SI value in this unit.
    #[inline(always)]
    pub const fn from_si(&self, si: f64) -> f64 {
        (si - self.offset) / self.scale
    }

    /// A value of this unit in another of the same dimension; in the same unit, the value itself.
    pub fn convert(&'static self, value: f64, to: &'static Unit) -> f64 {
        if self == to { value } else { to.from_si(self.to_si(value)) }
    }

    /// The unit of a name, such as `psi`.
    pub fn named(name: &str) -> Option<&'static Unit> {
        UNITS.iter().copied().find(|unit| unit.name == name)
    }

    /// All units of a dimension, the metric name first.
    pub fn of(dimension: Dimension) -> impl Iterator<Item = &'static Unit> {
        UNITS.iter().copied().filter(move |u| u.dimension == dimension)
    }

    /// The first (metric) unit of a dimension: the only one the C structs carry.
    pub fn first(dimension: Dimension) -> &'static Unit {
        let mut at = 0;
        while at + 1 < UNITS.len() && UNITS[at].dimension != dimension {
            at += 1;
        }
        UNITS[at]
    }
}

impl PartialEq for Unit {
    fn eq(&self, other: &Unit) -> bool {
        core::ptr::eq(self, other)
    }
}

const SI: &str = "BIPM, The International System of Units (SI Brochure), 9th ed., 2019";
const HB44: &str = "NIST Handbook 44, Appendix C (from the 1959 yard and pound agreement)";
const SP811: &str = "NIST Special Publication 811, 2008 edition, Appendix B";

macro_rules! units {
    ($($id:ident = $name:literal $symbol:literal $dimension:ident, $scale:expr, $offset:expr, $shown:literal,
       $definition:literal, $source:expr;)*) => {
        #[allow(non_camel_case_types, clippy::upper_case_acronyms)]
        enum Place { $($id),* }
        $(
            #[doc = concat!("`", $name, "`: ", $definition, ".")]
            pub static $id: Unit = Unit {
                name: $name, symbol: $symbol, dimension: Dimension::$dimension,
                scale: $scale, offset: $offset, shown: $shown, definition: $definition, source: $source, place: Place::$id as u8,
            };
        )*
        /// Every unit the library knows, grouped by dimension, the metric name first.
        pub static UNITS: &[&Unit] = &[$(&$id),*];
    };
}

units! {
    CELSIUS = "c" "°C" Temperature, 1.0, 273.15, true, "T/K = t/°C + 273.15", SI;
    FAHRENHEIT = "f" "°F" Temperature, 5.0 / 9.0, 45_967.0 / 180.0, true, "T/K = (t/°F + 459.67) 5/9", SP811;
    KELVIN = "k" "K" Temperature, 1.0, 0.0, false, "the SI unit", SI;
    CELSIUS_DIFFERENCE = "delta_c" "°C" TemperatureDifference, 1.0, 0.0, true, "1 K", SI;
    FAHRENHEIT_DIFFERENCE = "delta_f" "°F" TemperatureDifference, 5.0 / 9.0, 0.0, true, "5/9 K", SP811;
    KILOPASCAL = "kpa" "kPa" Pressure, 1000.0, 0.0, true, "1000 Pa", SI;
    BAR = "bar" "bar" Pressure, 100_000.0, 0.0, true, "100 000 Pa", SI;
    PSI = "psi" "psi" Pressure, 44_482_216_152_605.0 / 6_451_600_000.0, 0.0, true,
        "0.45359237 kg × 9.80665 m/s2 on 0.0254 m squared, 6894.757293... Pa", HB44;
    PASCAL = "pa" "Pa" Pressure, 1.0, 0.0, false, "the SI unit", SI;
    CO2_GRAMS_PER_LITRE = "co2_g_per_l" "g/L" Carbonation, 1.0, 0.0, true, "grams of CO2 in a litre of drink", SI;
    VOLUMES = "volumes" "vol" Carbonation, 440_095.0 / 222_630.0, 0.0, true,
        "44.0095 g/mol on 22.263 L/mol, 1.9768 g/L: CO2 as a real gas at 0 °C and 101.325 kPa in a litre of drink",
        "molar volume: Span and Wagner 1996; the volume as the trade's unit: common practice, no source";
    GRAMS_PER_LITRE = "g_per_l" "g/L" Concentration, 1.0, 0.0, true, "grams in a litre of drink", SI;
    LITRE = "l" "L" Volume, 1.0 / 1000.0, 0.0, true, "a cubic decimetre", SI;
    MILLILITRE = "ml" "mL" Volume, 1.0 / 1_000_000.0, 0.0, false, "a cubic centimetre", SI;
    US_GALLON = "us_gal" "US gal" Volume, 3_785_411_784.0 / 1_000_000_000_000.0, 0.0, true, "231 cubic inches", HB44;
    IMPERIAL_GALLON = "imp_gal" "imp gal" Volume, 454_609.0 / 100_000_000.0, 0.0, false, "4.54609 L",
        "UK Units of Measurement Regulations 1995 (SI 1995/1804)";
    US_FLUID_OUNCE = "us_fl_oz" "US fl oz" Volume, 295_735_295_625.0 / 10_000_000_000_000_000.0, 0.0, false,
        "1/128 US gallon", HB44;
    GRAM = "g" "g" Mass, 1.0 / 1000.0, 0.0, true, "1/1000 kg", SI;
    KILOGRAM = "kg" "kg" Mass, 1.0, 0.0, false, "the SI unit", SI;
    OUNCE = "oz" "oz" Mass, 28_349_523_125.0 / 1_000_000_000_000.0, 0.0, true, "1/16 avoirdupois pound", HB44;
    POUND = "lb" "lb" Mass, 45_359_237.0 / 100_000_000.0, 0.0, false, "0.45359237 kg", HB44;
    METRE = "m" "m" Length, 1.0, 0.0, true, "the SI unit", SI;
    FOOT = "ft" "ft" Length, 3048.0 / 10_000.0, 0.0, true, "0.3048 m", HB44;
    HOUR = "h" "h" Time, 3600.0, 0.0, true, "3600 s", SI;
    DAY = "d" "d" Time, 86_400.0, 0.0, true, "86 400 s", SI;
    MINUTE = "min" "min" Time, 60.0, 0.0, false, "60 s", SI;
    SECOND = "s" "s" Time, 1.0, 0.0, false, "the SI unit", SI;
    PERCENT = "percent" "%" Percent, 1.0, 0.0, true, "one in a hundred", SI;
    SPECIFIC_GRAVITY = "sg" "SG" SpecificGravity, 1.0, 0.0, true,
        "density at 20 °C over that of water at 20 °C", "common practice, no source";
    DEGREE_PLATO = "plato" "°P" Plato, 1.0, 0.0, true,
        "grams of extract in 100 g of solution, as if all of it were sucrose", "common practice, no source";
    FACTOR = "multiplier" "" Multiplier, 1.0, 0.0, true, "a plain factor", SI;
    GRAM_PER_GRAM = "g_per_g" "g/g" MassRatio, 1.0, 0.0, true, "a plain ratio of masses", SI;
    KILOGRAM_PER_CUBIC_METRE = "kg_per_m3" "kg/m3" Density, 1.0, 0.0, true, "the SI unit", SI;
    POUND_PER_CUBIC_FOOT = "lb_per_ft3" "lb/ft3" Density, 453_592_370_000.0 / 28_316_846_592.0, 0.0, true,
        "0.45359237 kg in 0.3048 m cubed", HB44;
    MILLIPASCAL_SECOND = "mpa_s" "mPa s" Viscosity, 1.0 / 1000.0, 0.0, true, "1/1000 Pa s", SI;
    PASCAL_SECOND = "pa_s" "Pa s" Viscosity, 1.0, 0.0, false, "the SI unit", SI;
    CENTIPOISE = "cp" "cP" Viscosity, 1.0 / 1000.0, 0.0, false, "1/1000 Pa s", SP811;
    THINGS = "count" "" Count, 1.0, 0.0, true, "a number of things", SI;
    MILLION_PER_ML = "million_per_ml" "million/mL" CellCount, 1_000_000_000_000.0, 0.0, true,
        "a million cells in a millilitre", SI;
    SQUARE_METRE_PER_SECOND = "m2_per_s" "m2/s" Diffusivity, 1.0, 0.0, true, "the SI unit", SI;
    PARTS_PER_MILLION = "ppm" "ppm" VolumeFraction, 1.0 / 1_000_000.0, 0.0, true, "one volume in a million", SI;
    VOLUME_PERCENT = "vol_percent" "% vol" VolumeFraction, 1.0 / 100.0, 0.0, true, "one volume in a hundred", SI;
    MICROGRAM_PER_LITRE = "ug_per_l" "µg/L" TraceConcentration, 1.0 / 1_000_000.0, 0.0, true,
        "a millionth of a gram in a litre", SI;
    PARTS_PER_BILLION = "ppb" "ppb" TraceConcentration, 1.0 / 1_000_000.0, 0.0, true,
        "a microgram in a litre, as the trade counts oxygen", "common practice, no source";
    MILLIGRAM_PER_LITRE = "mg_per_l" "mg/L" TraceConcentration, 1.0 / 1000.0, 0.0, false,
        "a thousandth of a gram in a litre", SI;
    LITRE_PER_MINUTE = "l_per_min" "L/min" Flow, 1.0 / 60_000.0, 0.0, true, "a litre in 60 s", SI;
    US_FLUID_OUNCE_PER_SECOND = "us_fl_oz_per_s" "US fl oz/s" Flow, 295_735_295_625.0 / 10_000_000_000_000_000.0, 0.0, true,
        "1/128 US gallon in a second", HB44;
    US_GALLON_PER_MINUTE = "us_gal_per_min" "US gal/min" Flow, 3_785_411_784.0 / 60_000_000_000_000.0, 0.0, false,
        "231 cubic inches in 60 s", HB44;
    GRAM_PER_HOUR = "g_per_h" "g/h" MassFlow, 1.0 / 3_600_000.0, 0.0, true, "1/1000 kg in 3600 s", SI;
    OUNCE_PER_HOUR = "oz_per_h" "oz/h" MassFlow, 28_349_523_125.0 / 3_600_000_000_000_000.0, 0.0, true,
        "1/16 avoirdupois pound in 3600 s", HB44;
    PER_HOUR = "per_h" "1/h" Rate, 1.0 / 3600.0, 0.0, true, "once in 3600 s", SI;
    PER_DAY = "per_d" "1/d" Rate, 1.0 / 86_400.0, 0.0, false, "once in 86 400 s", SI;
    BAR_PER_METRE = "bar_per_m" "bar/m" PressureGradient, 100_000.0, 0.0, true, "100 000 Pa in a metre", SI;
    PSI_PER_FOOT = "psi_per_ft" "psi/ft" PressureGradient, 44_482_216_152_605.0 / 1_966_447_680.0, 0.0, true,
        "a pound-force on a square inch, in 0.3048 m", HB44;
    METRE_PER_SECOND = "m_per_s" "m/s" Velocity, 1.0, 0.0, true, "the SI unit", SI;
    FOOT_PER_SECOND = "ft_per_s" "ft/s" Velocity, 3048.0 / 10_000.0, 0.0, true, "0.3048 m in a second", HB44;
    BORE_MILLIMETRE = "mm" "mm" Bore, 1.0 / 1000.0, 0.0, true, "1/1000 m", SI;
    BORE_INCH = "in" "in" Bore, 254.0 / 10_000.0, 0.0, true, "0.0254 m", HB44;
    CUBIC_METRE = "m3" "m3" RoomVolume, 1.0, 0.0, true, "the SI unit", SI;
    CUBIC_FOOT = "ft3" "ft3" RoomVolume, 28_316_846_592.0 / 1_000_000_000_000.0, 0.0, true, "0.3048 m cubed", HB44;
    SECONDS = "seconds" "s" ShortTime, 1.0, 0.0, true, "the SI unit", SI;
    MONEY = "money" "" Money, 1.0, 0.0, true, "any one currency, the same throughout", "common practice, no source";
    MONEY_PER_KILOGRAM = "money_per_kg" "per kg" MoneyPerMass, 1.0, 0.0, true, "for a kilogram", SI;
    MONEY_PER_POUND = "money_per_lb" "per lb" MoneyPerMass, 100_000_000.0 / 45_359_237.0, 0.0, true,
        "for 0.45359237 kg", HB44;
    MONEY_PER_LITRE = "money_per_l" "per L" MoneyPerVolume, 1000.0, 0.0, true, "for a litre", SI;
    MONEY_PER_US_GALLON = "money_per_us_gal" "per US gal" MoneyPerVolume, 1_000_000_000_000.0 / 3_785_411_784.0, 0.0, true,
        "for 231 cubic inches", HB44;
}
