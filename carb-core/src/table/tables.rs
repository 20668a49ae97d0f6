//! The tables: functions whose answer is rows. Some list what the library knows, some work their rows out from a request.

#[cfg(feature = "alloc")]
use super::bottle_tables::FILL_LIST;
use super::bottle_tables::{BOTTLE_DOSES, BOTTLE_PRESSURES, BOTTLE_VERDICTS, CONDITIONING_DAYS, PRESSURE_PARTS};
#[cfg(feature = "alloc")]
use super::crosscheck_tables::{CLAIM_QUANTITIES, CROSSCHECK_HABITS};
use super::gas_tables::{EXPOSURE_LIST, FILLING_LIST, OXYGEN_LIST};
use super::inputs::{
    ABV, BEVERAGE, EXTRACT, GAUGE_ALTITUDE, GAUGE_AMBIENT, HANDBOOK, SEA_LEVEL, SOLUBILITY, carbonation, temperature,
};
use super::keg_tables::{CARBONATION_CHART, KEG_RATING_LIST};
use super::line_tables::{FILLING_LOSSES, LINE_BALANCE, TUBE_LIST};
use super::schedule_tables::{CARBONATING_METHODS, CARBONATION_CURVE, CARBONATION_SCHEDULE, UPTAKE_FIT};
use crate::balance::spread::{self, State};
use crate::basis::function::{Input, one_of, required};
use crate::basis::{BasisName, List, Lists, Request};
use crate::error::Error;
use crate::evidence::Source;
use crate::evidence::caution::CAUTIONS;
use crate::evidence::source::SOURCES;
use crate::property::bottle::{CLASSES, SIZES};
use crate::property::cylinder::CYLINDERS;
use crate::property::family::RANGES;
use crate::property::fermentable::FERMENTABLES;
use crate::property::keg::KEGS;
use crate::property::sweetener::SWEETENERS;
use crate::quantity::unit::{LITRE, UNITS, VOLUMES};
use crate::quantity::{AbsolutePressure, Dimension, GaugePressure, Key, Unit};
use crate::table::CATALOGUE;
use crate::uncertainty::INSTRUMENTS;

/// One value of a row.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Cell {
    /// A number, SI.
    Number(f64),
    /// A number in a unit, in which it is shown as it is.
    In(f64, &'static Unit),
    /// A text.
    Text(&'static str),
    /// Nothing is known.
    Missing,
}

impl From<Option<f64>> for Cell {
    fn from(number: Option<f64>) -> Self {
        number.map_or(Cell::Missing, Cell::Number)
    }
}

/// A column of a table.
#[derive(Clone, Copy, Debug)]
pub struct Column {
    /// The name of a text, or the role of a quantity; empty where the unit alone names it.
    pub role: &'static str,
    /// What a number measures; `None` for a text.
    pub dimension: Option<Dimension>,
    /// What it means.
    pub meaning: &'static str,
}

impl Column {
    /// The name in one of the column's units.
    pub fn name(&self, unit: Option<&'static Unit>) -> crate::quantity::ShortText {
        use core::fmt::Write;
        let mut text = crate::quantity::ShortText::new(self.role);
        // A plain factor needs no unit behind its role.
        if let Some(unit) = unit.filter(|unit| self.role.is_empty() || unit.dimension != Dimension::Multiplier) {
            let joint = if self.role.is_empty() { "" } else { "_" };
            let _ = write!(text, "{joint}{}", unit.name);
        }
        text
    }

    /// The units in which a number is shown.
    pub fn units(&self) -> impl Iterator<Item = &'static Unit> + use<> {
        self.dimension.into_iter().flat_map(Unit::of).filter(|unit| unit.shown)
    }
}

/// Tells the rows for a request.
pub(super) type Rows = fn(&Request, &Lists<'_>, &mut dyn FnMut(&[Cell])) -> Result<(), Error>;

/// A table.
#[derive(Debug)]
pub struct Table {
    /// Its name in every face.
    pub name: &'static str,
    /// What it lists, in a sentence.
    pub summary: &'static str,
    /// The inputs from which the rows are worked out; none for plain data.
    pub inputs: &'static [Input],
    /// The lists from which they are worked out.
    pub lists: &'static [&'static List],
    /// An example that runs: names and values as JSON text.
    pub example: &'static str,
    /// The columns.
    pub columns: &'static [Column],
    /// Tells the rows, each with a cell for every column.
    pub(super) rows: Rows,
}

impl Table {
    /// Tells the rows, each with a cell for every column.
    ///
    /// # Errors
    /// Whatever is wrong with the request.
    pub fn rows(&self, request: &Request, lists: &Lists<'_>, tell: &mut dyn FnMut(&[Cell])) -> Result<(), Error> {
        if let Some(parameter) = request.given().find(|name| !self.inputs.iter().any(|input| input.key == name.key)) {
            return Err(Error::NotTaken { parameter, function: self.name });
        }
        if let Some((list, _)) = lists.given().find(|(list, _)| !self.lists.iter().any(|own| own.name == list.name)) {
            return Err(Error::WrongList { list: list.name, advice: "this table takes no such list: leave it out" });
        }
        (self.rows)(request, lists, tell).map_err(|error| error.renamed(|key| request.name_of(key)))
    }
}

/// Every table.
pub static TABLES: &[&Table] = &[
    &SOLUBILITY_MODELS,
    &CARBONATION_CHART,
    #[cfg(feature = "alloc")]
    &FILL_LIST,
    &BOTTLE_DOSES,
    &BOTTLE_PRESSURES,
    &BOTTLE_VERDICTS,
    &PRESSURE_PARTS,
    &CONDITIONING_DAYS,
    &CARBONATION_CURVE,
    &CARBONATION_SCHEDULE,
    &UPTAKE_FIT,
    &CARBONATING_METHODS,
    &FERMENTABLE_LIST,
    &SWEETENER_LIST,
    &CARBONATION_RANGES,
    &BOTTLE_SIZES,
    &BOTTLE_CLASSES,
    &KEG_SIZES,
    &KEG_RATING_LIST,
    &CYLINDER_SIZES,
    &LINE_BALANCE,
    &TUBE_LIST,
    &FILLING_LOSSES,
    &FILLING_LIST,
    &OXYGEN_LIST,
    &EXPOSURE_LIST,
    &EQUATION_LIST,
    &SOURCE_LIST,
    &CAUTION_LIST,
    #[cfg(feature = "alloc")]
    &CLAIM_QUANTITIES,
    #[cfg(feature = "alloc")]
    &CROSSCHECK_HABITS,
    &UNIT_LIST,
    &INSTRUMENT_LIST,
];

/// The table of a name.
pub fn named(name: &str) -> Option<&'static Table> {
    TABLES.iter().copied().find(|table| table.name == name)
}

pub(super) const fn text(role: &'static str, meaning: &'static str) -> Column {
    Column { role, dimension: None, meaning }
}
pub(super) const fn number(role: &'static str, dimension: Dimension, meaning: &'static str) -> Column {
    Column { role, dimension: Some(dimension), meaning }
}
pub(super) const STANDING: Column = text("standing", "how well it is known");
pub(super) const SOURCE: Column =
    text("source", "where it is from; empty for common practice and for what follows by arithmetic");
pub(super) fn cited(source: Option<&'static Source>) -> Cell {
    Cell::Text(source.map_or("", |source| source.citation))
}
fn yes(flag: bool) -> Cell {
    Cell::Text(if flag { "yes" } else { "no" })
}

/// What the models say of one state.
pub static SOLUBILITY_MODELS: Table = Table {
    name: "solubility_models",
    summary: "What every solubility model made for a drink says of one state, given by a pressure or by a carbonation; the model of the basis first.",
    inputs: &[
        one_of("state", Key::Gauge),
        one_of("state", Key::Absolute),
        one_of("state", Key::Carbonation),
        required(Key::Temperature),
        GAUGE_ALTITUDE,
        GAUGE_AMBIENT,
        SEA_LEVEL,
        BEVERAGE,
        ABV,
        EXTRACT,
        HANDBOOK,
        SOLUBILITY,
    ],
    lists: &[],
    example: r#"{"volumes": 2.5, "temperature_f": 38, "altitude_m": 0}"#,
    columns: &[
        text("model", "name of the model"),
        text("title", "the model in words"),
        number("", Dimension::Carbonation, "CO2 in the drink"),
        number("abs", Dimension::Pressure, "total pressure over it, above vacuum"),
        number("gauge", Dimension::Pressure, "the same above the air outside, where that is known"),
        number(
            "uncertainty",
            Dimension::Percent,
            "uncertainty of the model for this drink, k = 2, of the CO2; judgement; missing outside its range",
        ),
        text("within_range", "whether the state lies where the model holds"),
        text("default", "whether the basis takes this model for this drink"),
        text("refused", "name of the error where the model has no answer; empty where it has one"),
    ],
    rows: |request, _, tell| {
        const ADVICE: &str = "give one of the two: a pressure (gauge_ or abs_), or the CO2 in the drink (volumes)";
        let context = request.context(BasisName::Handbook)?;
        let t = temperature(request)?;
        let given = [Key::Gauge, Key::Absolute, Key::Carbonation].map(|key| request.name_of(key));
        let mut named = given.into_iter().flatten();
        let state = match (named.next(), named.next()) {
            (Some(first), Some(second)) => return Err(Error::Excluded { first, second }),
            (None, _) => return Err(Error::Missing { parameter: Key::Gauge, advice: ADVICE }),
            (Some(name), None) if name.key == Key::Carbonation => State::Holding(carbonation(request)?),
            (Some(name), None) if name.key == Key::Absolute => {
                State::Under(AbsolutePressure::from_si(request.need(Key::Absolute, ADVICE)?))
            }
            (Some(_), None) => State::UnderGauge(GaugePressure::from_si(request.need(Key::Gauge, ADVICE)?)),
        };
        let air = spread::ambient(&context);
        spread::spread(state, t, &context, &mut |model, told| {
            let refused = told.as_ref().map_or_else(|error| error.code_name(), |_| "");
            let opinion = told.ok();
            let pressure = opinion.map(|o| o.pressure);
            tell(&[
                Cell::Text(model.name()),
                Cell::Text(model.title()),
                opinion.map(|o| o.carbonation.si()).into(),
                pressure.map(AbsolutePressure::si).into(),
                pressure.zip(air).map(|(p, air)| p.to_gauge(air).si()).into(),
                opinion.filter(|o| o.within_range).map(|o| o.uncertainty_percent).into(),
                opinion.map_or(Cell::Missing, |o| yes(o.within_range)),
                yes(model == context.model()),
                Cell::Text(refused),
            ]);
        })
    },
};

/// The sugars.
pub static FERMENTABLE_LIST: Table = Table {
    name: "fermentables",
    summary: "Sugars, syrups and juices: composition as sold, and the CO2 that follows from it.",
    inputs: &[],
    lists: &[],
    example: "{}",
    columns: &[
        text("name", "its name as a sugar or an addition"),
        text("title", "in words"),
        number("water", Dimension::Percent, "water, of the mass as sold"),
        number("hexose", Dimension::Percent, "fermentable hexoses (glucose, fructose)"),
        number("disaccharide", Dimension::Percent, "fermentable disaccharides (sucrose, maltose)"),
        number("trisaccharide", Dimension::Percent, "fermentable trisaccharides (maltotriose)"),
        number("yield", Dimension::MassRatio, "CO2 from a gram, by the composition"),
        number("low_yield", Dimension::MassRatio, "the least that samples make"),
        number("high_yield", Dimension::MassRatio, "the most that samples make"),
        number("density", Dimension::Density, "density, where a source gives it"),
        STANDING,
        SOURCE,
    ],
    rows: |_, _, tell| {
        for sugar in FERMENTABLES {
            tell(&[
                Cell::Text(sugar.name),
                Cell::Text(sugar.title),
                Cell::Number(100.0 * sugar.water),
                Cell::Number(100.0 * sugar.sugars.hexose),
                Cell::Number(100.0 * sugar.sugars.disaccharide),
                Cell::Number(100.0 * sugar.sugars.trisaccharide),
                Cell::Number(sugar.theoretical_yield()),
                Cell::Number(sugar.yield_range.0),
                Cell::Number(sugar.highest_yield()),
                sugar.density.into(),
                Cell::Text(sugar.standing.words()),
                cited(sugar.source),
            ]);
        }
        Ok(())
    },
};

/// The sweeteners.
pub static SWEETENER_LIST: Table = Table {
    name: "sweeteners",
    summary: "What is added for sweetness: none makes CO2 to count on, some can make much.",
    inputs: &[],
    lists: &[],
    example: "{}",
    columns: &[
        text("name", "its name as an addition"),
        text("title", "in words"),
        number("high_yield", Dimension::MassRatio, "the most CO2 from a gram: what safety takes"),
        text("caution", "code of the caution that its use raises"),
        STANDING,
        SOURCE,
    ],
    rows: |_, _, tell| {
        for sweetener in SWEETENERS {
            tell(&[
                Cell::Text(sweetener.name),
                Cell::Text(sweetener.title),
                Cell::Number(sweetener.highest_yield),
                Cell::Text(sweetener.caution.code),
                Cell::Text(sweetener.standing.words()),
                cited(sweetener.source),
            ]);
        }
        Ok(())
    },
};

/// The families of drinks.
pub static CARBONATION_RANGES: Table = Table {
    name: "carbonation_ranges",
    summary: "How much carbonation families of drinks usually have, with the standing of each figure.",
    inputs: &[],
    lists: &[],
    example: "{}",
    columns: &[
        text("family", "the family"),
        text("beverage", "the kind of drink"),
        number("low", Dimension::Carbonation, "the least"),
        number("high", Dimension::Carbonation, "the most"),
        STANDING,
        SOURCE,
    ],
    rows: |_, _, tell| {
        for range in RANGES {
            tell(&[
                Cell::Text(range.family),
                Cell::Text(range.beverage),
                Cell::In(range.volumes.0, &VOLUMES),
                Cell::In(range.volumes.1, &VOLUMES),
                Cell::Text(range.standing.words()),
                cited(range.source),
            ]);
        }
        Ok(())
    },
};

/// The sizes of bottles.
pub static BOTTLE_SIZES: Table = Table {
    name: "bottle_sizes",
    summary: "Sizes of bottles that are sold.",
    inputs: &[],
    lists: &[],
    example: "{}",
    columns: &[
        number("content", Dimension::Volume, "nominal content"),
        text("title", "what it is called"),
        STANDING,
        SOURCE,
    ],
    rows: |_, _, tell| {
        for size in SIZES {
            tell(&[
                Cell::In(size.millilitres / 1000.0, &LITRE),
                Cell::Text(size.title),
                Cell::Text(size.standing.words()),
                cited(size.source),
            ]);
        }
        Ok(())
    },
};

/// The classes of bottles.
pub static BOTTLE_CLASSES: Table = Table {
    name: "bottle_classes",
    summary: "Classes of bottles, and the carbonation that they are usually filled with: no rating, the maker's goes before it.",
    inputs: &[],
    lists: &[],
    example: "{}",
    columns: &[
        text("name", "name of the class"),
        text("title", "in words"),
        number("low", Dimension::Carbonation, "what is put into the lighter ones of the class"),
        number(
            "high",
            Dimension::Carbonation,
            "the most that is usually put into it; 0 where it is not for conditioning",
        ),
        text("for_conditioning", "whether drink may be conditioned in it"),
        STANDING,
        text("published", "what is published of it"),
        SOURCE,
    ],
    rows: |_, _, tell| {
        for class in CLASSES {
            let usual = |volumes| Cell::In(volumes, &VOLUMES);
            tell(&[
                Cell::Text(class.name),
                Cell::Text(class.title),
                usual(class.usual.0),
                usual(class.usual.1),
                yes(class.for_conditioning()),
                Cell::Text(class.standing.words()),
                Cell::Text(class.published),
                cited(class.source),
            ]);
        }
        Ok(())
    },
};

/// The sizes of kegs.
pub static KEG_SIZES: Table = Table {
    name: "keg_sizes",
    summary: "Sizes of kegs that are sold. Read the pressure rating on the keg itself.",
    inputs: &[],
    lists: &[],
    example: "{}",
    columns: &[
        text("name", "name of the size"),
        text("title", "in words"),
        number("content", Dimension::Volume, "nominal content"),
        STANDING,
    ],
    rows: |_, _, tell| {
        for keg in KEGS {
            tell(&[
                Cell::Text(keg.name),
                Cell::Text(keg.title),
                Cell::Number(keg.content),
                Cell::Text(keg.standing.words()),
            ]);
        }
        Ok(())
    },
};

/// The sizes of cylinders.
pub static CYLINDER_SIZES: Table = Table {
    name: "cylinder_sizes",
    summary: "Cylinders and cartridges of CO2: what they hold when full.",
    inputs: &[],
    lists: &[],
    example: "{}",
    columns: &[
        text("name", "name of the size"),
        text("title", "in words"),
        number("charge", Dimension::Mass, "CO2 in a full one"),
        number("filling", Dimension::Density, "CO2 per volume of water that it would hold: how far it may be filled"),
        number("water_capacity", Dimension::Volume, "the water that it would hold"),
        STANDING,
        SOURCE,
    ],
    rows: |_, _, tell| {
        for cylinder in CYLINDERS {
            tell(&[
                Cell::Text(cylinder.name),
                Cell::Text(cylinder.title),
                Cell::Number(cylinder.charge),
                cylinder.filling_ratio.map(|ratio| ratio / LITRE.scale).into(),
                cylinder.water_capacity().into(),
                Cell::Text(cylinder.standing.words()),
                cited(cylinder.source),
            ]);
        }
        Ok(())
    },
};

/// The catalogue of equations.
pub static EQUATION_LIST: Table = Table {
    name: "equations",
    summary: "Every equation of the library: formula, uncertainty, standing.",
    inputs: &[],
    lists: &[],
    example: "{}",
    columns: &[
        text("id", "stable name"),
        text("title", "what it gives"),
        text("formula", "the formula, one line of text"),
        number("uncertainty", Dimension::Percent, "uncertainty, k = 2; missing where the equation is exact or a bound"),
        text("reason", "where that is from"),
        STANDING,
    ],
    rows: |_, _, tell| {
        for equation in CATALOGUE {
            tell(&[
                Cell::Text(equation.id),
                Cell::Text(equation.title),
                Cell::Text(equation.formula),
                equation.uncertainty_percent.into(),
                Cell::Text(equation.uncertainty),
                Cell::Text(equation.standing.words()),
            ]);
        }
        Ok(())
    },
};

/// The sources.
pub static SOURCE_LIST: Table = Table {
    name: "sources",
    summary: "Every source that the library names.",
    inputs: &[],
    lists: &[],
    example: "{}",
    columns: &[text("key", "key in the bibliography"), text("citation", "author, year and place")],
    rows: |_, _, tell| {
        for source in SOURCES {
            tell(&[Cell::Text(source.key), Cell::Text(source.citation)]);
        }
        Ok(())
    },
};

/// The cautions.
pub static CAUTION_LIST: Table = Table {
    name: "cautions",
    summary: "Every caution that an answer may carry.",
    inputs: &[],
    lists: &[],
    example: "{}",
    columns: &[
        text("code", "stable code"),
        text("level", "danger, caution or note"),
        text("text", "the sentence, with places for the value and the limit"),
    ],
    rows: |_, _, tell| {
        for kind in CAUTIONS {
            tell(&[Cell::Text(kind.code), Cell::Text(kind.level.word()), Cell::Text(kind.text)]);
        }
        Ok(())
    },
};

/// The usual instruments.
pub static INSTRUMENT_LIST: Table = Table {
    name: "instruments",
    summary: "How sure usual instruments are in careful hands: offered by name for an uncertainty, never taken unasked; judgement.",
    inputs: &[],
    lists: &[],
    example: "{}",
    columns: &[
        text("name", "its name in an uncertainty"),
        text("title", "in words"),
        text("kind", "normal (k = 2) or range (even)"),
        number("half_width", Dimension::Multiplier, "how far the truth may lie either way, in the unit"),
        text("unit", "the unit"),
    ],
    rows: |_, _, tell| {
        for instrument in INSTRUMENTS {
            tell(&[
                Cell::Text(instrument.name),
                Cell::Text(instrument.title),
                Cell::Text(instrument.doubt.kind()),
                Cell::Number(instrument.doubt.half_width()),
                Cell::Text(instrument.unit.symbol),
            ]);
        }
        Ok(())
    },
};

/// The units.
pub static UNIT_LIST: Table = Table {
    name: "units",
    summary: "Every unit of the library, with its definition.",
    inputs: &[],
    lists: &[],
    example: "{}",
    columns: &[
        text("name", "the last part of a parameter's name"),
        text("symbol", "as printed"),
        text("definition", "the exact definition"),
        text("source", "where it is laid down"),
    ],
    rows: |_, _, tell| {
        for unit in UNITS {
            let cells = [unit.name, unit.symbol, unit.definition, unit.source];
            tell(&cells.map(Cell::Text));
        }
        Ok(())
    },
};
