//! How much CO2 a keg has to have, so that enough is left in the package.

use crate::basis::answer::Both;
use crate::basis::kernel::{Kernel, Once, Visit};
use crate::basis::{Answer, Context};
use crate::bottling::conditioning::Span;
use crate::error::{Error, code};
use crate::evidence::caution::{Caution, Cautions, GROWLER_WARM};
use crate::evidence::{Notes, Steps};
use crate::property::filling_loss::{self, BEFORE, TAP_TUBE};
use crate::quantity::{Carbonation, Key, Name};

/// The loss of filling.
#[derive(Clone, Copy, Debug)]
pub enum Loss {
    /// Known.
    Told(Carbonation),
    /// That of a way to fill.
    By(filling_loss::Filling),
}

#[derive(Clone, Copy)]
struct Before {
    /// kg/m3, beside what is told, and percent: expected, least, most.
    losses: [[f64; 2]; 3],
}

impl Kernel<2, 3> for Before {
    const COLUMNS: [Key; 2] = [Key::Carbonation, Key::FillLoss];
    #[inline(always)]
    fn eval(&self, [wanted, told]: [f64; 2], steps: &mut impl Steps) -> ([f64; 3], i32) {
        let values = self.losses.map(|[lost, share]| {
            let lost = lost + told;
            steps.step(&BEFORE, &[wanted, lost, share], filling_loss::before(wanted, lost, share))
        });
        let most = Key::Carbonation.limits().unwrap_or_default().1;
        let beyond = values.into_iter().any(|value| value > most);
        (values, if beyond { code::OUT_OF_REACH } else { 0 })
    }
    fn explain(&self, _: i32, [wanted, told]: [f64; 2]) -> Error {
        const ADVICE: &str =
            "no keg holds what would have to be in it before this loss; want less, or fill with less loss";
        let most = Key::Carbonation.limits().unwrap_or_default().1;
        let left = self.losses.map(|[lost, share]| most * (1.0 - share / 100.0) - lost - told);
        let limit = left.into_iter().fold(f64::INFINITY, f64::min).max(0.0);
        Error::OutOfReach { parameter: Name::first(Key::Carbonation), value: wanted, limit, advice: ADVICE }
    }
}

/// Hands the kernel to a visitor.
pub(crate) fn visit<V: Visit<2, 3>>(loss: Loss, visitor: V) -> V::Output {
    let losses = match loss {
        Loss::Told(_) => [[0.0; 2]; 3],
        Loss::By(way) => way.losses(),
    };
    visitor.visit(Before { losses })
}

/// The kernel's columns, SI.
pub(crate) fn columns(wanted: Carbonation, loss: Loss) -> [f64; 2] {
    match loss {
        Loss::Told(lost) => [wanted.si(), lost.si()],
        Loss::By(_) => [wanted.si(), 0.0],
    }
}

/// What is to be said of the way.
fn note(wanted: Carbonation, loss: Loss, cautions: &mut Cautions) {
    if matches!(loss, Loss::By(way) if way.name == TAP_TUBE.name) {
        cautions.add(Caution::of(&GROWLER_WARM, wanted.si()));
    }
}

/// CO2 that the keg has to have for a carbonation in the package, expected, and with the least and the most that filling may
/// lose.
///
/// ```
/// use carb_core::basis::{Ambient, Beverage, Context, Kind};
/// use carb_core::evidence::NoSteps;
/// use carb_core::kegging::filling::{Loss, filling_carbonation};
/// use carb_core::quantity::Carbonation;
/// let here = Context::new(Beverage::new(Kind::Beer), Ambient::STANDARD);
/// let loss = Loss::Told(Carbonation::from_volumes(0.25));
/// let keg = filling_carbonation(Carbonation::from_volumes(2.4), loss, &here, &mut NoSteps)?;
/// assert_eq!(format!("{:.2}", keg.value.expected.volumes()), "2.65");
/// # Ok::<(), carb_core::Error>(())
/// ```
///
/// # Errors
/// Where a value lies outside its limits, or the keg would have to hold more than is answered.
pub fn filling_carbonation(
    wanted: Carbonation,
    loss: Loss,
    context: &Context,
    steps: &mut impl Steps,
) -> Result<Answer<Span<Carbonation>>, Error> {
    let mut notes = Notes::default();
    let x = columns(wanted, loss);
    let found = visit(loss, Once { x, steps: &mut Both(&mut notes, steps) })?;
    note(wanted, loss, &mut notes.cautions);
    if let Loss::By(way) = loss {
        notes.datum(way.source);
    }
    let [expected, least, most] = found.map(Carbonation::from_si);
    Ok(Answer { value: Span { expected, least, most }, context: *context, notes })
}
