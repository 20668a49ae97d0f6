//! One type per kind of quantity, each over the `uom` quantity of its dimension.
//!
//! `uom` is entered and left by its SI units only: its customary factors are rounded, ours are exact.
//!
//! What must not be confused does not compile. An absolute pressure is no gauge pressure:
//! ```
//! use carb_core::quantity::{AbsolutePressure, AmbientPressure, GaugePressure};
//! let gauge = GaugePressure::from_psi(12.0);
//! let absolute: AbsolutePressure = gauge.to_absolute(AmbientPressure::STANDARD);
//! assert!((absolute.psi() - 26.6959).abs() < 1e-4);
//! ```
//! ```compile_fail,E0308
//! use carb_core::quantity::{AbsolutePressure, GaugePressure};
//! let absolute: AbsolutePressure = GaugePressure::from_psi(12.0);
//! ```
//! Gauge means nothing without the air pressure outside:
//! ```compile_fail,E0061
//! use carb_core::quantity::GaugePressure;
//! let absolute = GaugePressure::from_psi(12.0).to_absolute();
//! ```
//! An absolute pressure is not the ambient one:
//! ```compile_fail,E0308
//! use carb_core::quantity::{AbsolutePressure, GaugePressure};
//! let absolute = GaugePressure::from_psi(12.0).to_absolute(AbsolutePressure::from_bar(1.0));
//! ```
//! Gauge and absolute do not add:
//! ```compile_fail,E0277
//! use carb_core::quantity::{AbsolutePressure, GaugePressure};
//! let sum = AbsolutePressure::from_bar(1.0) + GaugePressure::from_bar(1.0);
//! ```
//! Two gauge pressures do not add, but a difference may be added to one:
//! ```
//! use carb_core::quantity::{GaugePressure, PressureDifference};
//! let more = GaugePressure::from_bar(1.0) + PressureDifference::from_bar(0.2);
//! assert!((more.bar() - 1.2).abs() < 1e-15);
//! ```
//! ```compile_fail,E0308
//! use carb_core::quantity::GaugePressure;
//! let sum = GaugePressure::from_bar(1.0) + GaugePressure::from_bar(0.2);
//! ```
//! A difference of pressures is no pressure:
//! ```compile_fail,E0308
//! use carb_core::quantity::{GaugePressure, PressureDifference};
//! let gauge: GaugePressure = PressureDifference::from_bar(1.0);
//! ```
//! A temperature is no difference of temperatures:
//! ```compile_fail,E0308
//! use carb_core::quantity::{Temperature, TemperatureDifference};
//! let t: Temperature = TemperatureDifference::from_delta_c(5.0);
//! ```
//! CO2 in a drink is no extract, though both are grams per litre:
//! ```compile_fail,E0308
//! use carb_core::quantity::{Carbonation, Concentration};
//! let c: Carbonation = Concentration::from_g_per_l(5.0);
//! ```
//! A volume of beer is not a carbonation in volumes:
//! ```compile_fail,E0308
//! use carb_core::quantity::{Carbonation, Volume};
//! let c: Carbonation = Volume::from_l(2.4);
//! ```
//! Specific gravity is not degrees Plato:
//! ```compile_fail,E0308
//! use carb_core::quantity::{Plato, SpecificGravity};
//! let p: Plato = SpecificGravity::from_sg(1.048);
//! ```
//! A bare number is no quantity:
//! ```compile_fail,E0308
//! use carb_core::quantity::Temperature;
//! let t: Temperature = 20.0;
//! ```

use super::unit;
use core::ops::{Add, Sub};
use uom::si::f64 as q;

macro_rules! quantity {
    ($(#[$doc:meta])* $name:ident over $uom:ident in $si:ty { $($(#[$udoc:meta])* $from:ident $get:ident = $unit:ident;)* }) => {
        $(#[$doc])*
        #[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
        pub struct $name(q::$uom);

        impl $name {
            /// From the value in SI units (see [`unit::Dimension`] for which that is).
            #[inline]
            pub fn from_si(si: f64) -> Self {
                Self(q::$uom::new::<$si>(si))
            }
            /// The value in SI units.
            #[inline]
            pub fn si(self) -> f64 {
                self.0.get::<$si>()
            }
            $(
                #[doc = concat!("From a value in the unit [`", stringify!($unit), "`](unit::", stringify!($unit), ").")]
                #[inline]
                pub fn $from(value: f64) -> Self {
                    Self::from_si(unit::$unit.to_si(value))
                }
                #[doc = concat!("The value in the unit [`", stringify!($unit), "`](unit::", stringify!($unit), ").")]
                #[inline]
                pub fn $get(self) -> f64 {
                    unit::$unit.from_si(self.si())
                }
            )*
        }
        impl From<q::$uom> for $name {
            fn from(quantity: q::$uom) -> Self {
                Self(quantity)
            }
        }
        impl From<$name> for q::$uom {
            fn from(quantity: $name) -> Self {
                quantity.0
            }
        }
    };
}

quantity! {
    /// A temperature.
    Temperature over ThermodynamicTemperature in uom::si::thermodynamic_temperature::kelvin {
        from_c c = CELSIUS; from_f f = FAHRENHEIT; from_k k = KELVIN;
    }
}
quantity! {
    /// How much warmer one thing is than another.
    TemperatureDifference over TemperatureInterval in uom::si::temperature_interval::kelvin {
        from_delta_c delta_c = CELSIUS_DIFFERENCE; from_delta_f delta_f = FAHRENHEIT_DIFFERENCE;
    }
}
quantity! {
    /// Pressure above vacuum: total pressure of the gas over a drink.
    AbsolutePressure over Pressure in uom::si::pressure::pascal {
        from_kpa kpa = KILOPASCAL; from_bar bar = BAR; from_psi psi = PSI; from_pa pa = PASCAL;
    }
}
quantity! {
    /// Pressure above the air outside, as a regulator or a bottle gauge shows it.
    GaugePressure over Pressure in uom::si::pressure::pascal {
        from_kpa kpa = KILOPASCAL; from_bar bar = BAR; from_psi psi = PSI; from_pa pa = PASCAL;
    }
}
quantity! {
    /// Station pressure of the air outside the vessel (absolute; not reduced to sea level).
    AmbientPressure over Pressure in uom::si::pressure::pascal {
        from_kpa kpa = KILOPASCAL; from_bar bar = BAR; from_psi psi = PSI; from_pa pa = PASCAL;
    }
}
quantity! {
    /// A difference of two pressures of the same kind.
    PressureDifference over Pressure in uom::si::pressure::pascal {
        from_kpa kpa = KILOPASCAL; from_bar bar = BAR; from_psi psi = PSI; from_pa pa = PASCAL;
    }
}
quantity! {
    /// CO2 per litre of drink.
    Carbonation over MassDensity in uom::si::mass_density::kilogram_per_cubic_meter {
        from_co2_g_per_l co2_g_per_l = CO2_GRAMS_PER_LITRE; from_volumes volumes = VOLUMES;
    }
}
quantity! {
    /// Dissolved matter per litre of drink.
    Concentration over MassDensity in uom::si::mass_density::kilogram_per_cubic_meter {
        from_g_per_l g_per_l = GRAMS_PER_LITRE;
    }
}
quantity! {
    /// A volume of liquid or of a vessel.
    Volume over Volume in uom::si::volume::cubic_meter {
        from_l l = LITRE; from_ml ml = MILLILITRE; from_us_gal us_gal = US_GALLON;
        from_imp_gal imp_gal = IMPERIAL_GALLON; from_us_fl_oz us_fl_oz = US_FLUID_OUNCE;
    }
}
quantity! {
    /// A mass.
    Mass over Mass in uom::si::mass::kilogram {
        from_g g = GRAM; from_kg kg = KILOGRAM; from_oz oz = OUNCE; from_lb lb = POUND;
    }
}
quantity! {
    /// A length or a height.
    Length over Length in uom::si::length::meter {
        from_m m = METRE; from_ft ft = FOOT;
    }
}
quantity! {
    /// A span of time.
    Time over Time in uom::si::time::second {
        from_h h = HOUR; from_d d = DAY; from_min min = MINUTE; from_s s = SECOND;
    }
}
quantity! {
    /// A share in percent.
    Percent over Ratio in uom::si::ratio::ratio {
        from_percent percent = PERCENT;
    }
}
quantity! {
    /// Specific gravity 20/20 °C.
    SpecificGravity over Ratio in uom::si::ratio::ratio {
        from_sg sg = SPECIFIC_GRAVITY;
    }
}
quantity! {
    /// Extract in degrees Plato.
    Plato over Ratio in uom::si::ratio::ratio {
        from_plato plato = DEGREE_PLATO;
    }
}
quantity! {
    /// A plain factor, 1 where nothing is changed.
    Multiplier over Ratio in uom::si::ratio::ratio {
        from_multiplier multiplier = FACTOR;
    }
}

quantity! {
    /// Mass per volume.
    Density over MassDensity in uom::si::mass_density::kilogram_per_cubic_meter {
        from_kg_per_m3 kg_per_m3 = KILOGRAM_PER_CUBIC_METRE; from_lb_per_ft3 lb_per_ft3 = POUND_PER_CUBIC_FOOT;
    }
}
quantity! {
    /// Dynamic viscosity.
    Viscosity over DynamicViscosity in uom::si::dynamic_viscosity::pascal_second {
        from_mpa_s mpa_s = MILLIPASCAL_SECOND; from_pa_s pa_s = PASCAL_SECOND; from_cp cp = CENTIPOISE;
    }
}
quantity! {
    /// Diffusivity of a dissolved gas.
    Diffusivity over DiffusionCoefficient in uom::si::diffusion_coefficient::square_meter_per_second {
        from_m2_per_s m2_per_s = SQUARE_METRE_PER_SECOND;
    }
}

quantity! {
    /// One gas in another, by volume.
    VolumeFraction over Ratio in uom::si::ratio::ratio {
        from_ppm ppm = PARTS_PER_MILLION; from_vol_percent vol_percent = VOLUME_PERCENT;
    }
}
quantity! {
    /// A trace of something per litre of drink.
    TraceConcentration over MassDensity in uom::si::mass_density::kilogram_per_cubic_meter {
        from_ug_per_l ug_per_l = MICROGRAM_PER_LITRE; from_ppb ppb = PARTS_PER_BILLION; from_mg_per_l mg_per_l = MILLIGRAM_PER_LITRE;
    }
}
quantity! {
    /// Volume of drink per time.
    Flow over VolumeRate in uom::si::volume_rate::cubic_meter_per_second {
        from_l_per_min l_per_min = LITRE_PER_MINUTE; from_us_fl_oz_per_s us_fl_oz_per_s = US_FLUID_OUNCE_PER_SECOND;
        from_us_gal_per_min us_gal_per_min = US_GALLON_PER_MINUTE;
    }
}
quantity! {
    /// Mass of gas per time.
    MassFlow over MassRate in uom::si::mass_rate::kilogram_per_second {
        from_g_per_h g_per_h = GRAM_PER_HOUR; from_oz_per_h oz_per_h = OUNCE_PER_HOUR;
    }
}
quantity! {
    /// How often something happens, or how fast a gap closes.
    Rate over Frequency in uom::si::frequency::hertz {
        from_per_h per_h = PER_HOUR; from_per_d per_d = PER_DAY;
    }
}
quantity! {
    /// Speed.
    Velocity over Velocity in uom::si::velocity::meter_per_second {
        from_m_per_s m_per_s = METRE_PER_SECOND; from_ft_per_s ft_per_s = FOOT_PER_SECOND;
    }
}
quantity! {
    /// Width of a tube or of a pore.
    Bore over Length in uom::si::length::meter {
        from_mm mm = BORE_MILLIMETRE; from_in inches = BORE_INCH;
    }
}
quantity! {
    /// Volume of a room.
    RoomVolume over Volume in uom::si::volume::cubic_meter {
        from_m3 m3 = CUBIC_METRE; from_ft3 ft3 = CUBIC_FOOT;
    }
}
quantity! {
    /// A time as short as that of a pour.
    ShortTime over Time in uom::si::time::second {
        from_seconds seconds = SECONDS;
    }
}

impl GaugePressure {
    /// The same pressure above vacuum, given the air pressure outside.
    #[must_use]
    pub fn to_absolute(self, ambient: AmbientPressure) -> AbsolutePressure {
        AbsolutePressure(self.0 + ambient.0)
    }
}

impl AbsolutePressure {
    /// The same pressure above the air outside, given the pressure of that air.
    ///
    /// ```
    /// use carb_core::quantity::{AbsolutePressure, AmbientPressure};
    /// let high_up = AmbientPressure::from_kpa(83.4);
    /// let gauge = AbsolutePressure::from_kpa(178.6).to_gauge(high_up);
    /// assert!((gauge.kpa() - 95.2).abs() < 1e-12);
    /// assert_eq!(gauge.to_absolute(high_up).kpa(), 178.6);
    /// ```
    #[must_use]
    pub fn to_gauge(self, ambient: AmbientPressure) -> GaugePressure {
        GaugePressure(self.0 - ambient.0)
    }
}

macro_rules! differences {
    ($($point:ident $difference:ident;)*) => {$(
        impl Sub for $point {
            type Output = $difference;
            fn sub(self, other: Self) -> $difference {
                $difference::from_si(self.si() - other.si())
            }
        }
        impl Add<$difference> for $point {
            type Output = Self;
            fn add(self, more: $difference) -> Self {
                Self::from_si(self.si() + more.si())
            }
        }
    )*};
}

differences! {
    Temperature TemperatureDifference;
    AbsolutePressure PressureDifference;
    GaugePressure PressureDifference;
    AmbientPressure PressureDifference;
}

/// The standard atmosphere, Pa.
pub const STANDARD_PRESSURE: f64 = 101_325.0;

impl AmbientPressure {
    /// The standard atmosphere, 101.325 kPa. Named, so that nobody gets it without asking.
    pub const STANDARD: Self = Self(q::Pressure {
        dimension: core::marker::PhantomData,
        units: core::marker::PhantomData,
        value: STANDARD_PRESSURE,
    });
}
