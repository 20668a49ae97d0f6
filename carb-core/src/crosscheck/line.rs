//! Claims of how long a draught line has to be, by the trade's balance.

use super::claim::Claim;
use super::quantity::Otherwise;
use super::question::{Choice, Faucet, Lift, Question, TubeResistance};
use super::told::Told;
use crate::error::Error;
use crate::kegging::handbook_line::LIFT;
use crate::property::tube::Tube;
use crate::quantity::Key;
use crate::quantity::unit::{BAR_PER_METRE, BORE_INCH, PSI, PSI_PER_FOOT};
use alloc::boxed::Box;
use alloc::vec::Vec;

struct Line {
    tube: Option<Tube>,
    /// Pressure, resistance as it was told, rise, hardware.
    told: [f64; 4],
}

/// What other programs make of the length of a line.
pub(super) fn otherwise(claim: &Claim) -> Result<Box<dyn Otherwise>, Error> {
    let request = Told::of(claim)?.request;
    let tube = request.tube();
    let told = request.number(Key::Resistance).or(tube.map(|tube| tube.resistance())).unwrap_or_default();
    let number = |key| request.number(key).unwrap_or_default();
    Ok(Box::new(Line { tube, told: [number(Key::Gauge), told, number(Key::Rise), number(Key::Hardware)] }))
}

/// Resistances of vinyl by a vendor's sheet ([`crate::evidence::source::VENDOR_TUBING`]), the ones that it says to use: inches,
/// psi/ft.
const VENDOR: [(f64, f64); 5] = [(3.0 / 16.0, 2.7), (0.25, 0.70), (5.0 / 16.0, 0.17), (0.375, 0.11), (0.5, 0.025)];

/// What a vendor's sheet says of a tube, Pa/m.
fn vendor(tube: Tube) -> Option<f64> {
    let bore = BORE_INCH.from_si(tube.bore);
    let line = VENDOR.iter().find(|(inches, _)| (inches - bore).abs() < 1e-6)?;
    tube.name.starts_with("vinyl").then(|| PSI_PER_FOOT.to_si(line.1))
}

impl Otherwise for Line {
    fn questions(&self) -> Vec<Question> {
        let [_, _, rise, _] = self.told;
        let mut all = Vec::new();
        all.extend(self.tube.map(|_| Question::TubeResistance));
        all.extend((rise != 0.0).then_some(Question::Lift));
        all.push(Question::Faucet);
        all
    }

    fn value(&self, choice: &Choice) -> Option<f64> {
        let [gauge, told, rise, hardware] = self.told;
        let resistance = match choice.of() {
            TubeResistance::Told => told,
            TubeResistance::Low => self.tube.map(|tube| tube.unit.to_si(tube.range.0))?,
            TubeResistance::Vendor => vendor(self.tube?)?,
            TubeResistance::R18 => PSI_PER_FOOT.to_si(1.8),
            TubeResistance::R2 => PSI_PER_FOOT.to_si(2.0),
            TubeResistance::R22 => PSI_PER_FOOT.to_si(2.2),
            TubeResistance::R27 => PSI_PER_FOOT.to_si(2.7),
            TubeResistance::R3 => PSI_PER_FOOT.to_si(3.0),
        };
        let lift = match choice.of() {
            Lift::HalfPsi => LIFT,
            Lift::Water => PSI_PER_FOOT.to_si(0.4335),
            Lift::PerMetre => BAR_PER_METRE.to_si(0.1),
            Lift::Ignored => 0.0,
        };
        let kept = match choice.of() {
            Faucet::Told => 0.0,
            Faucet::OnePsi => PSI.to_si(1.0),
        };
        let length = (gauge - lift * rise - hardware - kept) / resistance;
        (length >= 0.0 && length.is_finite()).then_some(length)
    }
}
