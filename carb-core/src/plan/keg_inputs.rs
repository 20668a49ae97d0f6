//! What the kegging job takes.

use crate::basis::function::{one_of, optional};
use crate::basis::lists::READINGS;
use crate::basis::{Input, List};
use crate::quantity::Key;
use crate::table::costs::PRICES;
use crate::table::inputs::{DRINK, FERMENTED, GRAVITIES, OUTSIDE, RESIDUAL, SOLUBILITY, SUGAR, YIELD_FACTOR, join};

/// The inputs of the kegging job.
pub static INPUTS: &[Input] = join!(
    [optional(Key::Title, "no title")],
    DRINK,
    GRAVITIES,
    [
        one_of("packaged", Key::Packaged),
        one_of("packaged", Key::Batch),
        optional(Key::Loss, "0; counts with the batch"),
        one_of("carbonation", Key::Carbonation),
    ],
    FERMENTED,
    [
        optional(Key::Start, "residual CO2, by the warmest temperature"),
        optional(Key::Serving, "4 °C"),
        optional(Key::HotDay, "35 °C"),
        optional(Key::Room, "20 °C: where the cylinder stands"),
    ],
    OUTSIDE,
    [
        optional(Key::Keg, "19.6 L, a soda keg of 5 US gallons to the brim"),
        optional(Key::KegDiameter, "0.215 m, that of the usual 19 L keg"),
        optional(Key::KegRating, "no rating is known, and a caution says so"),
        optional(Key::Co2Share, "100 %: CO2 and nothing else"),
        optional(Key::HeadspaceAir, "0: purged, or driven out"),
        optional(Key::Purge, "headspace"),
        optional(Key::PurgeGauge, "2 bar"),
        optional(Key::Cycles, "as many as the oxygen asks for"),
        optional(Key::Oxygen, "1000 ppm"),
        optional(Key::StartOxygen, "20.95 % vol: air"),
        optional(Key::GasOxygen, "30 ppm, the most that CO2 for drinks may have (ISBT); 0 for a pure gas"),
        optional(Key::Pocket, "0.05 L; counts with purge \"push\""),
        optional(Key::PushGauge, "0.7 bar; counts with purge \"push\""),
        optional(Key::DissolvedOxygen, "0: none before"),
        optional(Key::Method, "still"),
        optional(Key::Kla, "that of the method"),
        optional(Key::Supply, "no limit"),
        optional(Key::BurstGauge, "2 bar, where a burst is of use and the keg stands it"),
        optional(Key::Depth, "needed with a stone: the drink over it"),
        optional(Key::Wetting, "needed with a stone"),
        optional(Key::Margin, "0"),
        optional(Key::CylinderSize, "cylinder_5_lb, unless charge is given"),
        optional(Key::Charge, "that of the cylinder_size"),
        optional(Key::GasLoss, "0 %"),
        optional(Key::Tube, "vinyl_3_16_in, unless a bore is given"),
        optional(Key::Bore, "that of the tube"),
        optional(Key::Line, "not told: the length for the pour is worked out"),
        optional(Key::Rise, "0: the faucet at the height of the drink"),
        optional(Key::Fittings, "3, of a home line: judgement"),
        optional(Key::Hardware, "0"),
        optional(Key::Flow, "not told"),
        optional(Key::Pour, "12 s, unless a flow is given"),
        optional(Key::PourSize, "a US pint, 473.176 mL"),
        optional(Key::RelativeViscosity, "usual for the drink"),
        optional(Key::FillMethod, "nothing is filled from the keg"),
        optional(Key::FillLoss, "that of the fill_method"),
        optional(Key::Released, "all that the cylinder holds"),
        optional(Key::RoomVolume, "not told: nothing is said of the room"),
        optional(Key::AirChanges, "0.5 1/h, a closed room, and noted"),
    ],
    SUGAR,
    PRICES,
    [
        optional(Key::Batches, "10"),
        optional(Key::Basis, "handbook; a sealed keg always takes the physical one"),
        optional(Key::Model, "that of the basis for the drink"),
        optional(Key::ResidualModel, "that of the basis"),
        optional(Key::Yield, "that of the basis"),
        SOLUBILITY,
        RESIDUAL,
        YIELD_FACTOR,
        optional(Key::Working, "false"),
    ],
);

/// The lists that the job takes.
pub static TAKES: &[&List] = &[&READINGS];
