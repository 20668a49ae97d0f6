//! The air outside, by altitude, as a function of its own.

use crate::basis::Request;
use crate::basis::ambient;
use crate::basis::kernel::{Kernel, Visit};
use crate::error::Error;
use crate::evidence::Steps;
use crate::property::atmosphere;
use crate::property::constant::STANDARD_ATMOSPHERE;
use crate::quantity::{Key, Name};

#[derive(Clone, Copy)]
struct Station;

impl Kernel<2, 1> for Station {
    const COLUMNS: [Key; 2] = [Key::SeaLevel, Key::Altitude];
    #[inline(always)]
    fn eval(&self, [sea_level, z]: [f64; 2], steps: &mut impl Steps) -> ([f64; 1], i32) {
        let pressure = atmosphere::station_pressure(sea_level, z);
        ([steps.step(&atmosphere::STATION_PRESSURE, &[sea_level, z], pressure)], 0)
    }
    fn explain(&self, _: i32, _: [f64; 2]) -> Error {
        Error::NotConverged { parameter: Name::first(Key::Altitude) }
    }
}

/// Hands the kernel to a visitor.
pub(crate) fn visit<V: Visit<2, 1>>(visitor: V) -> V::Output {
    visitor.visit(Station)
}

/// The kernel's columns, SI.
pub(crate) fn columns(request: &Request) -> Result<[f64; 2], Error> {
    Ok([request.or(Key::SeaLevel, STANDARD_ATMOSPHERE)?, request.need(Key::Altitude, ambient::ADVICE)?])
}
