//! The request of a job with what follows from it: the drink that reaches packages, and the composition.

use super::readiness::Gravities;
use crate::basis::{Lists, Request};
use crate::error::Error;
use crate::quantity::unit::LITRE;
use crate::quantity::{Key, Name};

/// The request as the job takes it: packaged volume from batch and losses, composition from gravities. Where those cannot
/// be, the error is that of every part that needs them.
pub(super) fn complete(request: &Request, lists: &Lists<'_>) -> Result<(Request, Result<(), Error>), Error> {
    for (first, second) in [(Key::Packaged, Key::Batch), (Key::Carbonation, Key::Mass)] {
        if let (Some(first), Some(second)) = (request.name_of(first), request.name_of(second)) {
            return Err(Error::Excluded { first, second });
        }
    }
    let mut whole = *request;
    let filled_in = drink_to_package(request).and_then(|found| {
        if let Some(volume) = found {
            whole = whole.with_number(Name { key: Key::Packaged, unit: Some(&LITRE) }, LITRE.from_si(volume));
        }
        let gravities = Gravities::of(request, lists)?;
        gravities.alone(request)?;
        whole = gravities.complete(&whole)?;
        // What parts of the job read without asking has to be sound.
        for key in [Key::RatingGauge, Key::Tablet, Key::Spare, Key::Headspace] {
            request.or(key, key.limits().unwrap_or_default().0)?;
        }
        Ok(())
    });
    match filled_in {
        Err(error @ (Error::Excluded { .. } | Error::WrongList { .. })) => Err(error),
        other => Ok((whole, other.map_err(|error| error.renamed(|key| request.name_of(key))))),
    }
}

/// The request as the job takes it, where it can be.
pub(super) fn completed(request: &Request, lists: &Lists<'_>) -> Result<Request, Error> {
    let (whole, sound) = complete(request, lists)?;
    sound.map(|()| whole)
}

/// The drink that reaches packages, m3, where batch and losses tell it.
fn drink_to_package(request: &Request) -> Result<Option<f64>, Error> {
    const BATCH: &str = "a loss is taken from the batch: give batch_l instead of packaged_l, or leave the loss out";
    match (request.get(Key::Batch), request.get(Key::Loss)) {
        (None, None) => Ok(None),
        (None, Some(_)) => Err(Error::Missing { parameter: Key::Batch, advice: BATCH }),
        (Some(_), _) => {
            let (volume, loss) = (request.need(Key::Batch, BATCH)?, request.or(Key::Loss, 0.0)?);
            if loss < volume {
                return Ok(Some(volume - loss));
            }
            Err(Error::OutOfRange { parameter: Name::first(Key::Loss), value: loss, low: 0.0, high: volume })
        }
    }
}
