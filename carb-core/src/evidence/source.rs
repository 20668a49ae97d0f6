//! Sources as data. `references.bib` holds the full entries; a test keeps the two in step.

/// A published source, or a named tradition.
#[derive(Debug)]
pub struct Source {
    /// Its key in `references.bib`.
    pub key: &'static str,
    /// Author, year and place in one line.
    pub citation: &'static str,
}

impl PartialEq for Source {
    fn eq(&self, other: &Source) -> bool {
        core::ptr::eq(self, other)
    }
}

macro_rules! sources {
    ($($id:ident = $key:literal $citation:literal;)*) => {
        $(
            #[doc = $citation]
            pub static $id: Source = Source { key: $key, citation: $citation };
        )*
        /// Every source that an equation or a datum of the library names.
        pub static SOURCES: &[&Source] = &[$(&$id),*];
    };
}

sources! {
    WEISS = "weiss1974" "Weiss 1974, Marine Chemistry 2:203";
    SPAN_WAGNER = "span1996" "Span and Wagner 1996, J. Phys. Chem. Ref. Data 25:1509";
    KAYE_LABY = "kayelaby1995" "Kaye and Laby, Tables of Physical and Chemical Constants, 16th ed. 1995";
    WAGNER_PRUSS = "wagner2002" "Wagner and Pruss 2002, J. Phys. Chem. Ref. Data 31:387";
    KELL = "kell1975" "Kell 1975, J. Chem. Eng. Data 20:97";
    ISO_2533 = "iso2533" "ISO 2533:1975, Standard Atmosphere";
    DELANGE = "delange2011" "deLange 2011, technical note CO2 Volumes in Beer (fit of the ASBC Beer-13 table)";
    MILLER = "miller1994" "Miller 1994, BrewingTechniques 2(1), Table I (the printed chart)";
    EU_WINE = "eec2676" "Commission Regulation (EEC) 2676/90, chapter 37";
    LIGER_BELAIR = "ligerbelair2005" "Liger-Belair 2005, after Agabaliantz 1963, Bull. OIV 36:703 (temperature dependence)";
    HALL = "hall1995" "Hall 1995, Zymurgy, Summer (residual CO2 quadratic)";
    ASBC_GRAVITY = "asbcextract" "ASBC Methods of Analysis, extract tables (cubic fit in circulation)";
    USHER = "usher1910" "Usher 1910, J. Chem. Soc. 97:66 (sucrose solutions)";
    FINDLAY_SHEN = "findlay1912" "Findlay and Shen 1911-1912, J. Chem. Soc. (ethanol and sucrose solutions)";
    ATOMIC_WEIGHTS = "prohaska2022" "Prohaska et al. 2022, Standard atomic weights 2021, Pure Appl. Chem. 94:573";
    NIELSEN = "nielsen2007" "Nielsen et al. 2007, Balling's Formula - scrutiny of a brewing dogma, Brauwelt International";
    HUXLEY = "huxley1872" "Huxley 1872, Yeast, Popular Science Monthly 1 (on Pasteur 1860)";
    USDA = "usda2014" "USDA National Nutrient Database, release SR27, 2014";
    WHITE = "white1962" "White et al. 1962, Composition of American Honeys, USDA Technical Bulletin 1261";
    OXFORD_BEER = "oliver2011" "Oliver (ed.) 2011, The Oxford Companion to Beer, fermentability";
    TORRENT = "torrent2006" "Torrent (EBC analysis committee) 2006, BrewingScience 59 (partial molar volume of CO2 in beer)";
    CODATA = "codata2018" "Tiesinga et al. 2021, CODATA recommended values 2018, Rev. Mod. Phys. 93:025010";
}
