//! On what programs differ: questions, the habits with which they are answered, and how common each habit is.
//!
//! The first habit of every question is this library's own. The shares are **judgement**: nobody has counted. They order the
//! explanations of a number and weigh them against chance; no answer of the library stands on them.

/// A way to answer a question.
#[derive(Clone, Copy, Debug)]
pub struct Habit {
    /// Its name in every face.
    pub name: &'static str,
    /// How common it is among programs, from 0 to 1: judgement.
    pub prior: f64,
    /// What a program with this habit does, to be read after "a program that".
    pub says: &'static str,
}

/// A matter on which programs differ.
#[derive(Clone, Copy, Debug)]
pub struct Matter {
    /// Its name in every face.
    pub name: &'static str,
    /// What it asks.
    pub asks: &'static str,
    /// The habits, this library's first.
    pub habits: &'static [Habit],
}

/// The habits of one question, as a type.
pub trait Habits: Copy + 'static {
    /// The question.
    const QUESTION: Question;
    /// Its habits, in their order.
    const ALL: &'static [Self];
}

macro_rules! questions {
    ($($(#[$doc:meta])* $question:ident $name:literal $asks:literal { $($habit:ident $said:literal $prior:literal $says:literal;)* })*) => {
        /// A question, as an index into [`QUESTIONS`].
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
        #[repr(u8)]
        pub enum Question {
            $(#[doc = $asks] $question,)*
        }
        /// Every question.
        pub static QUESTIONS: &[Matter] = &[
            $(Matter { name: $name, asks: $asks, habits: &[$(Habit { name: $said, prior: $prior, says: $says }),*] },)*
        ];
        impl Question {
            /// Every question, in the order of [`QUESTIONS`].
            pub const ALL: &'static [Question] = &[$(Question::$question,)*];
        }
        $(
            #[doc = $asks]
            #[derive(Clone, Copy, Debug, PartialEq, Eq)]
            pub enum $question {
                $(#[doc = $says] $habit,)*
            }
            impl Habits for $question {
                const QUESTION: Question = Question::$question;
                const ALL: &'static [Self] = &[$($question::$habit,)*];
            }
        )*
    };
}

/// How many questions there are.
pub const COUNT: usize = Question::ALL.len();

impl Question {
    /// The entry of the table.
    pub fn matter(self) -> &'static Matter {
        &QUESTIONS[self as usize]
    }
}

/// A habit for each question that a claim depends on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Choice {
    habits: [u8; COUNT],
}

/// Stands for a question that does not matter.
const OPEN: u8 = u8::MAX;

impl Choice {
    /// Nothing chosen: everything as this library does it.
    pub const OURS: Self = Self { habits: [OPEN; COUNT] };

    /// The same with the habit at a place of its list.
    #[must_use]
    pub fn with(mut self, question: Question, at: usize) -> Self {
        self.habits[question as usize] = at as u8;
        self
    }

    /// Puts in the habit at a place of its list.
    pub(super) fn set(&mut self, question: Question, at: usize) {
        self.habits[question as usize] = at as u8;
    }

    /// The place of the habit of a question, if it was chosen.
    pub fn at(&self, question: Question) -> Option<usize> {
        let at = self.habits[question as usize];
        (at != OPEN).then_some(at as usize)
    }

    /// The habit of a question; this library's where none was chosen.
    #[inline]
    pub fn of<H: Habits>(&self) -> H {
        H::ALL[self.at(H::QUESTION).unwrap_or_default()]
    }

    /// The questions whose habit is not this library's, and the habits.
    pub fn departures(&self) -> impl Iterator<Item = (Question, &'static Habit)> + '_ {
        Question::ALL.iter().filter_map(|&question| {
            let at = self.at(question).filter(|&at| at > 0)?;
            Some((question, &question.matter().habits[at]))
        })
    }

    /// Both choices together; the other's where both chose.
    #[must_use]
    pub(super) fn joined(mut self, other: &Choice) -> Self {
        for (mine, &theirs) in self.habits.iter_mut().zip(&other.habits) {
            if theirs != OPEN {
                *mine = theirs;
            }
        }
        self
    }

    /// The habits of these questions alone.
    #[must_use]
    pub(super) fn only(&self, questions: &[Question]) -> Self {
        let mut all = Self::OURS;
        for &question in questions {
            all.habits[question as usize] = self.habits[question as usize];
        }
        all
    }

    /// The habits as they are kept, to be compared and ordered.
    pub(super) fn key(&self) -> [u8; COUNT] {
        self.habits
    }
}

questions! {
    GasVolume "gas_volume" "what a volume of CO2 weighs" {
        Real "real" 0.30 "takes a volume for 1.9768 g/L, the real gas at 0 °C and 1 atm";
        Ideal "ideal" 0.30 "takes a volume for 1.9635 g/L, the ideal gas at 0 °C and 1 atm";
        RoundedMolar "rounded_molar" 0.10 "takes a volume for 44.01/22.4 = 1.9647 g/L";
        Rounded "rounded" 0.09 "takes a volume for 1.96 g/L";
        RealRounded "real_rounded" 0.05 "takes a volume for 1.977 g/L";
        Two "two" 0.05 "takes a volume for 2 g/L";
        OneBar "one_bar" 0.02 "takes a volume for 1.9508 g/L, the real gas at 0 °C and 1 bar";
        IdealOneBar "ideal_one_bar" 0.02 "takes a volume for 1.9378 g/L, the ideal gas at 0 °C and 1 bar";
        At60F "at_60_f" 0.02 "takes a volume for 1.8682 g/L, gas at 60 °F";
        At20C "at_20_c" 0.03 "takes a volume for 1.839 g/L, gas at 20 °C";
        At25C "at_25_c" 0.01 "takes a volume for 1.808 g/L, gas at 25 °C";
        AtDrink "at_drink" 0.01 "takes a volume for ideal gas at the temperature of the drink";
    }
    BeerSolubility "beer_solubility" "how much CO2 beer, cider or mead holds" {
        ChartFit "chart_fit" 0.26 "takes the fit of the printed beer chart";
        Quadratic "quadratic" 0.41 "takes the trade's quadratic in °F and psi";
        European "european" 0.11 "takes the European breweries' exponential form";
        BreweryPolynomial "brewery_polynomial" 0.05 "takes a polynomial that a brewery fitted to the beer chart in 2009";
        WaterCore "water_core" 0.06 "takes beer for pure water";
        Composition "composition" 0.02 "takes water, corrected for alcohol and extract";
        Carroll "carroll" 0.02 "takes beer for water by Carroll et al.";
        Iapws "iapws" 0.02 "takes beer for water by the IAPWS guideline";
        Sander "sander" 0.05 "takes Henry's law with two constants (3.4e-4 mol/(m3 Pa), 2400 K), the gas for ideal";
    }
    WaterSolubility "water_solubility" "how much CO2 water or a soft drink holds" {
        WaterCore "water_core" 0.35 "takes water, corrected for sugar";
        PureWater "pure_water" 0.15 "takes pure water";
        Sander "sander" 0.15 "takes Henry's law with two constants (3.4e-4 mol/(m3 Pa), 2400 K), the gas for ideal";
        ChartFit "chart_fit" 0.12 "takes the fit of the beer chart for water";
        Quadratic "quadratic" 0.13 "takes the beer quadratic in °F and psi for water";
        Carroll "carroll" 0.05 "takes water by Carroll et al.";
        Iapws "iapws" 0.05 "takes water by the IAPWS guideline";
    }
    WineSolubility "wine_solubility" "how much CO2 wine holds" {
        EuWine "eu_wine" 0.50 "takes the European relation for wine";
        ChartFit "chart_fit" 0.17 "takes the fit of the beer chart for wine";
        Quadratic "quadratic" 0.12 "takes the beer quadratic for wine";
        WaterCore "water_core" 0.13 "takes wine for pure water";
        European "european" 0.08 "takes the European breweries' form for wine";
    }
    Residual "residual" "how much CO2 is in the drink before it is primed" {
        Table "table" 0.49 "takes the trade's quadratic for what is left after fermentation";
        WaterHandbook "water_handbook" 0.06 "takes a handbook's table of CO2 in water, a line for 5 °C, for what is left after fermentation";
        WaterByDegree "water_by_degree" 0.04 "takes a handbook's table of CO2 in water, a line for each °C, for what is left after fermentation";
        BeerChart "beer_chart" 0.09 "takes the beer chart at 1 atm for what is left after fermentation";
        European "european" 0.05 "takes the European breweries' form at 1 atm for what is left after fermentation";
        Water "water" 0.05 "takes pure water under 1 atm for what is left after fermentation";
        Nothing "none" 0.10 "leaves out what CO2 is in the drink after fermentation";
        Fixed085 "fixed_0_85" 0.06 "takes 0.85 volumes to be left, whatever the temperature";
        Fixed09 "fixed_0_9" 0.04 "takes 0.9 volumes to be left, whatever the temperature";
        Fixed1 "fixed_1" 0.02 "takes 1 volume to be left, whatever the temperature";
    }
    SugarYield "sugar_yield" "how much CO2 sugar makes" {
        Theory "theory" 0.60 "takes all that stoichiometry gives";
        NinetyFive "ninety_five" 0.12 "takes 95 % of what stoichiometry gives";
        Balling "balling" 0.07 "takes Balling's 0.4629 g of CO2 for each gram of dry fermentable sugar";
        Textbook "textbook" 0.06 "takes 0.46 g of CO2 for each gram of dry fermentable sugar";
        Half "half" 0.08 "takes half of the sugar's mass for CO2";
        FourGrams "four_grams" 0.07 "takes 4 g of any sugar for a litre and volume";
    }
    SugarTaken "sugar_taken" "which sugar's yield is taken" {
        Told "told" 0.76 "takes the sugar that was told";
        Anhydrous "anhydrous" 0.11 "reckons with anhydrous dextrose";
        Monohydrate "monohydrate" 0.05 "reckons with dextrose monohydrate";
        Sucrose "sucrose" 0.08 "reckons with sucrose";
    }
    DoseHeadspace "dose_headspace" "what is added to a dose for the headspace" {
        LeftOut "left_out" 0.85 "adds nothing for the headspace";
        Adds3 "adds_3" 0.05 "adds 3 % for the headspace";
        Adds4 "adds_4" 0.04 "adds 4 % for the headspace";
        Adds5 "adds_5" 0.06 "adds 5 % for the headspace";
    }
    Syrup "syrup" "whether the volume of the syrup counts" {
        LeftOut "left_out" 0.85 "leaves out the volume of the syrup";
        Counted "counted" 0.15 "counts the volume of the syrup";
    }
    Gallon "gallon" "which gallon and which fluid ounce is meant" {
        Told "told" 0.96 "takes the gallon that was told";
        Other "other" 0.04 "takes US gallons or fluid ounces for imperial ones, or the reverse";
    }
    TemperatureScale "temperature_scale" "whether degrees are Celsius or Fahrenheit" {
        Told "told" 0.98 "takes the degrees that were told";
        Other "other" 0.02 "takes degrees Celsius for Fahrenheit, or the reverse";
    }
    CarbonationUnit "carbonation_unit" "whether CO2 is told in volumes or in grams per litre" {
        Told "told" 0.97 "means the unit that was told";
        Other "other" 0.03 "takes volumes for grams per litre, or the reverse";
    }
    Altitude "altitude" "whether the air pressure at the place counts" {
        Used "used" 0.58 "reckons with the air pressure at the place";
        Forgotten "forgotten" 0.38 "forgets the altitude";
        Rule "rule" 0.04 "adds 1 psi for each 2000 ft of altitude";
    }
    Atmosphere "atmosphere" "what the air pressure at sea level is" {
        Standard "standard" 0.55 "takes 1.01325 bar (14.696 psi) for the air outside";
        Psi147 "psi_14_7" 0.32 "takes 14.7 psi for the air outside";
        Bar1013 "bar_1_013" 0.07 "takes 1.013 bar for the air outside";
        OneBar "one_bar" 0.06 "takes 1 bar for the air outside";
    }
    Reference "gauge" "whether pressures are gauge or absolute" {
        Told "told" 0.96 "means gauge pressure";
        Absolute "absolute" 0.04 "mistakes absolute pressure for gauge pressure";
    }
    PressureLabel "pressure_label" "in which unit a pressure is" {
        Told "told" 0.964 "means the unit that was told";
        Psi "psi" 0.01 "means psi, whatever its label says";
        Bar "bar" 0.01 "means bar, whatever its label says";
        Kpa "kpa" 0.01 "means kPa, whatever its label says";
        Atmosphere "atm" 0.003 "means atmospheres of 1.01325 bar, whatever its label says";
        KilogramForce "kgf_per_cm2" 0.003 "means kilograms-force on a square centimetre, 0.980665 bar, whatever its label says";
    }
    GivenPressure "given_pressure" "in which unit a pressure was given" {
        Told "told" 0.985 "takes the pressure in the unit in which it was given";
        Psi "psi" 0.005 "takes the pressure that was given for psi";
        Bar "bar" 0.005 "takes the pressure that was given for bar";
        Kpa "kpa" 0.005 "takes the pressure that was given for kPa";
    }
    MassLabel "mass_label" "what an ounce or a gram is" {
        Told "told" 0.92 "means the unit that was told";
        Ounce28 "ounce_28" 0.03 "takes 28 g for an ounce";
        Ounce30 "ounce_30" 0.015 "takes 30 g for an ounce";
        OunceFluid "ounce_fluid" 0.02 "takes 29.57 g for an ounce, the number of the fluid ounce";
        Other "other" 0.015 "labels grams as ounces, or ounces as grams";
    }
    Blend "blend" "what nitrogen in the gas does" {
        Absolute "absolute" 0.18 "takes the share of CO2 of the absolute pressure, less the vapour";
        Dry "dry" 0.52 "takes the share of CO2 of the absolute pressure";
        ByGauge "by_gauge" 0.13 "takes the share of CO2 of the gauge pressure";
        Ignored "ignored" 0.17 "takes the blend for CO2";
    }
    ExtractLeft "extract_left" "whether fermentable extract that is left counts" {
        Counted "counted" 0.60 "counts the fermentable extract that is left";
        Ignored "ignored" 0.40 "leaves out the fermentable extract that is left";
    }
    FermenterPressure "fermenter_pressure" "whether the pressure of the fermenter counts" {
        Counted "counted" 0.65 "counts the pressure that the fermenter held";
        Ignored "ignored" 0.35 "leaves out the pressure that the fermenter held";
    }
    PackageHeadspace "package_headspace" "whether the headspace of a package shares the CO2" {
        Counted "counted" 0.40 "lets the headspace have its share of the CO2, by mass balance";
        LeftOut "left_out" 0.60 "takes the equilibrium pressure of the carbonation that was told";
    }
    TrappedAir "trapped_air" "whether air is closed in with the drink" {
        LeftOut "left_out" 0.80 "takes the headspace for CO2 alone";
        Counted "counted" 0.20 "adds the air that is closed in, at the pressure outside";
    }
    CountRounding "count_rounding" "how bottles are rounded" {
        Down "down" 0.42 "counts full bottles";
        Up "up" 0.36 "rounds bottles up";
        Nearest "nearest" 0.16 "rounds bottles to the nearest";
        Exact "exact" 0.06 "gives the number of bottles as it comes";
    }
    CyclesRounding "cycles_rounding" "how purge cycles are rounded" {
        Exact "exact" 0.45 "gives purge cycles as they come, or rounded up where they are whole";
        Up "up" 0.40 "rounds purge cycles up";
        Nearest "nearest" 0.15 "rounds purge cycles to the nearest, which may fall short";
    }
    AirOxygen "air_oxygen" "how much oxygen is in air" {
        Standard "standard" 0.25 "takes 20.95 % of oxygen in air";
        Fine "fine" 0.10 "takes 20.946 % of oxygen in air";
        Rounded "rounded" 0.65 "takes 21 % of oxygen in air";
    }
    GasOxygen "gas_oxygen" "how much oxygen is in the CO2" {
        Usual "usual" 0.45 "takes 30 ppm of oxygen in the CO2";
        Pure "pure" 0.55 "takes the CO2 for pure";
    }
    TubeResistance "tube_resistance" "what a tube resists" {
        Told "told" 0.45 "takes the handbook's resistance of the tube";
        Low "low" 0.07 "takes the least resistance that trade texts give for the tube";
        Vendor "vendor" 0.07 "takes a vendor's resistance of the tube";
        R18 "r_1_8" 0.05 "takes 1.8 psi/ft for the tube";
        R2 "r_2" 0.11 "takes 2 psi/ft for the tube";
        R22 "r_2_2" 0.11 "takes 2.2 psi/ft for the tube";
        R27 "r_2_7" 0.07 "takes 2.7 psi/ft for the tube";
        R3 "r_3" 0.07 "takes 3 psi/ft for the tube";
    }
    Lift "lift" "what a rise takes" {
        HalfPsi "half_psi" 0.67 "takes 0.5 psi for each foot of rise";
        Water "water" 0.16 "takes 0.4335 psi for each foot of rise, that of water";
        PerMetre "per_metre" 0.06 "takes 0.1 bar for each metre of rise";
        Ignored "ignored" 0.11 "leaves out the rise";
    }
    Faucet "faucet" "what is left at the faucet" {
        Told "told" 0.75 "lets the line take all the pressure";
        OnePsi "one_psi" 0.25 "keeps 1 psi back at the faucet";
    }
    AlcoholFormula "alcohol_formula" "how alcohol follows from gravity" {
        Balling "balling" 0.28 "takes Balling's relations, and 0.794 kg/L for ethanol";
        Balling791 "balling_791" 0.07 "takes Balling's relations, and 0.791 kg/L for ethanol";
        Quick "quick" 0.35 "takes 131.25 times the fall of the gravity";
        Quick131 "quick_131" 0.05 "takes 131 times the fall of the gravity";
        Hall "hall" 0.16 "takes 76.08 times the fall of the gravity over 1.775 less the original gravity, as mass, times the gravity over 0.794";
        ByRatio "by_ratio" 0.04 "takes 1.05 times the fall of the gravity over the gravity, as mass, over 0.79";
        ByMass "by_mass" 0.05 "prints alcohol by mass";
    }
    ExtractScale "extract_scale" "how extract follows from gravity" {
        Asbc "asbc" 0.55 "takes the ASBC's polynomial for extract";
        Lincoln "lincoln" 0.22 "takes Lincoln's quadratic for extract";
        Quick "quick" 0.23 "takes 259 less 259 over the gravity for extract";
    }
    StartCo2 "start_co2" "whether CO2 that is already in the drink counts" {
        Counted "counted" 0.65 "counts the CO2 that is already in the drink";
        Ignored "ignored" 0.35 "starts from flat drink";
    }
    KegHeadspace "keg_headspace" "whether gas in the keg's headspace counts" {
        Counted "counted" 0.55 "counts the gas in the headspace";
        LeftOut "left_out" 0.45 "leaves out the gas in the headspace";
    }
    GasLaw "gas_law" "whether CO2 is a real gas" {
        Real "real" 0.40 "takes the density of real CO2";
        Ideal "ideal" 0.60 "takes CO2 for an ideal gas";
    }
}
