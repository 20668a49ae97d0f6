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
    BREWERY_FIT = "breweryfit2009" "Polynomial in circulation, said to be a brewery's fit of 2009 to the ASBC's table";
    SANDER = "sander2023" "Sander 2023, Compilation of Henry's law constants, Atmos. Chem. Phys. 23:10901";
    ASBC_GRAVITY = "asbcextract" "ASBC Methods of Analysis, extract tables (cubic fit in circulation)";
    USHER = "usher1910" "Usher 1910, J. Chem. Soc. 97:66 (sucrose solutions)";
    FINDLAY_SHEN = "findlay1912" "Findlay and Shen 1911-1912, J. Chem. Soc. (ethanol and sucrose solutions)";
    ATOMIC_WEIGHTS = "prohaska2022" "Prohaska et al. 2022, Standard atomic weights 2021, Pure Appl. Chem. 94:573";
    NIELSEN = "nielsen2007" "Nielsen et al. 2007, Balling's Formula - scrutiny of a brewing dogma, Brauwelt International";
    HUXLEY = "huxley1872" "Huxley 1872, Yeast, Popular Science Monthly 1 (on Pasteur 1860)";
    USDA = "usda2014" "USDA National Nutrient Database, release SR27, 2014";
    USDA_28 = "usda2015" "USDA National Nutrient Database, release SR28, 2015 (from a secondary text)";
    WHITE = "white1962" "White et al. 1962, Composition of American Honeys, USDA Technical Bulletin 1261";
    OXFORD_BEER = "oliver2011" "Oliver (ed.) 2011, The Oxford Companion to Beer, fermentability and bottle sizes";
    TORRENT = "torrent2006" "Torrent (EBC analysis committee) 2006, BrewingScience 59 (partial molar volume of CO2 in beer)";
    MEBAK = "mebak" "MEBAK, Brautechnische Analysenmethoden (CO2 by pressure and temperature); digits from public text";
    IAPWS_G7 = "iapwsg704" "IAPWS G7-04 2004, Guideline on the Henry's Constant ... for Gases in H2O and D2O";
    CARROLL = "carroll1991" "Carroll, Slupsky and Mather 1991, J. Phys. Chem. Ref. Data 20:1201";
    LINCOLN = "lincoln" "Lincoln equation for extract, in circulation; author not found";
    BALLING = "balling1865" "Balling 1845-1865, Gaehrungschemie, as reprinted (constants in circulation)";
    CUTAIA = "cutaia2009" "Cutaia, Reid and Speers 2009, J. Inst. Brew. 115:318";
    ASBC_RDF = "asbcrdf" "ASBC Methods of Analysis, Beer-6, real degree of fermentation (from memory)";
    PATEK = "patek2009" "Patek et al. 2009, J. Phys. Chem. Ref. Data 38:21";
    LU = "lu2013" "Lu et al. 2013, Geochim. Cosmochim. Acta 115:183";
    LIGER_BELAIR_LAGER = "ligerbelair2021" "Liger-Belair and Cilindre 2021, ACS Omega 6:9672";
    FLOOD = "flood2000" "Flood and Puagsa 2000, J. Chem. Eng. Data 45:902 (high-fructose syrup)";
    MOHOS = "mohos2010" "Mohos 2010, Confectionery and Chocolate Engineering, appendix 2";
    DRAPER = "draper1996" "Draper 1996, BrewingTechniques 4(4)";
    HIBBERD = "hibberd" "Hibberd, A Primer on Priming";
    SONG = "song2020" "Song et al. 2020, UF/IFAS FSHN20-34";
    MEBAK_RANGE = "mebakrange" "MEBAK normal range of CO2 in beer, quoted in public text";
    PHYSICS_WORLD = "physicsworld1989" "Physics World 2(9):21, 1989";
    OIV = "oivcode" "OIV International Code of Oenological Practices, I.4.4";
    CFR_CIDER = "cfr27" "27 CFR 24.10 (hard cider, still wine), from a secondary text";
    BS_6119 = "bs6119" "BS 6119-1:1981, as quoted by British Glass";
    BRITISH_GLASS = "britishglasstec7" "British Glass TEC 7";
    CAMPDEN = "campden" "Campden BRI, bottle specifications (16 bar sparkling wine, PET burst near 12 bar)";
    GROWLERS = "growlers" "Brewers Association, Facts About Growlers";
    CFR_CYLINDER = "cfr49fill" "49 CFR 173.304a, Table 1 (filling densities)";
    ROSSO = "rosso1993" "Rosso, Lobry and Flandrois 1993, J. Theor. Biol. 162:447 (cardinal temperatures)";
    SALVADO = "salvado2011" "Salvado et al. 2011, Appl. Environ. Microbiol. 77:2292";
    STULIKOVA = "stulikova2020" "Stulikova et al. 2020, Bottle Conditioning, Beverages 6(3):56";
    CHAMPAGNE_YEAST = "comitechampagne" "Comite Champagne, Le Vigneron Champenois (prise de mousse, viable cells)";
    YEAST_PRACTICE = "yeastpractice" "Re-yeasting at bottling, practice note of a yeast laboratory, 5 g/hL for 1 million cells per mL (trade text)";
    LOWE = "lowe" "Lowe, Experimental Cookery (solubility of sugars)";
    JACKSON = "jackson1922" "Jackson and Silsbee 1922, Bureau of Standards Scientific Paper 437 (from memory)";
    CODATA = "codata2018" "Tiesinga et al. 2021, CODATA recommended values 2018, Rev. Mod. Phys. 93:025010";
    CHURCHILL = "churchill1977" "Churchill 1977, Chemical Engineering 84(24):91 (friction factor for all regimes)";
    DRAUGHT_MANUAL = "draughtmanual" "Brewers Association, Draught Beer Quality Manual, table of tubing (read in secondary texts, or from memory where it says so)";
    DESIGNING = "designing" "Brewers Association, Designing for Resistance (web page with two lines of 20 ft)";
    DISPENSE_HANDBOOK = "dispense2010" "Dispense technician's handbook, 2010 (trade text)";
    VENDOR_TUBING = "vendortubing" "Vendor of draught equipment, sheet of line resistances (trade text, undated)";
    GERMAN_RULE = "germanrule" "German dispense trade, rule for 7 and 10 mm lines at 3 L/min (several trade texts)";
    COUNTER_PRESSURE = "counterpressure" "Brew Your Own, counter-pressure filling (loss of an automatic filler, and of one by hand)";
    FILLER_MAKER = "fillermaker" "Maker of filling equipment, loss in a line from keg to bottle (trade text, undated)";
    STONE_PRACTICE = "stonepractice" "Master Brewers community discussion of carbonation stones (trade text)";
    BENSON_KRAUSE = "benson1984" "Benson and Krause 1984, Limnol. Oceanogr. 29:620 (oxygen in water)";
    CROWL = "crowl" "Crowl and Louvar, Chemical Process Safety (pressure and sweep-through purging; from memory)";
    ISBT = "isbt2006" "ISBT 2006, quality guideline for CO2 in beverages (oxygen at most 30 ppm by volume)";
    ADR_P200 = "adrp200" "ADR and UN Model Regulations, packing instruction P200, UN 1013 (from memory)";
    NIOSH_IDLH = "niosh1994" "NIOSH 1994, IDLH documentation, carbon dioxide 124-38-9";
    EH40 = "eh40" "HSE, EH40/2005 Workplace exposure limits";
    EU_EXPOSURE = "eu2006exposure" "Commission Directive 2006/15/EC, indicative occupational exposure limits";
    FIRE_CODE = "ifc2018" "International Fire Code 2018, section 5307";
    UK_CELLAR = "ukcellar" "UK notice on CO2 in cellars (stages of the alarm; trade text)";
    CBC_OXYGEN = "welch2015" "Welch 2015, Craft Brewers Conference, as quoted (total package oxygen)";
    LLOYD_MORAN = "lloyd1974" "Lloyd and Moran 1974, J. Heat Transfer 96:443 (free convection over horizontal surfaces, from memory)";
    COLE_CARACO = "cole1998" "Cole and Caraco 1998, Limnol. Oceanogr. 43:647 (gas exchange of lakes without wind)";
    ABRAMOWITZ = "abramowitz1964" "Abramowitz and Stegun 1964, Handbook of Mathematical Functions, 26.7.5 (Student's t)";
}
