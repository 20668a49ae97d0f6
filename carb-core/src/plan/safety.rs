//! What is said with every plan, whatever its numbers: its limits, and who has the last word.

/// With bottles.
pub const BOTTLES: &[&str] = &[
    "Bottles can burst. Confirm a stable gravity on 2 or 3 readings some days apart; weigh the sugar and stir it in evenly.",
    "Use only bottles made for carbonated drinks, unchipped and unscratched; the maker's rating decides, not these figures.",
    "Keep filled bottles in a closed box, out of the sun; chill suspect ones before touching them, with eyes and hands protected.",
    "Never heat filled glass.",
];

/// With kegs and gas.
pub const KEGS: &[&str] = &[
    "Never exceed the pressure marked on the keg, and use a regulator and a relief valve; vent before opening a lid.",
    "CO2 from a cylinder, or from fermentation, can kill in a closed room: ventilate, and use a CO2 alarm in cellars and cold rooms.",
    "Secure cylinders upright. Local code and licensed practice come before anything printed here.",
];
