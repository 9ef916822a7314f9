package workuptally.book;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import workuptally.model.Assay;
import workuptally.model.Charge;
import workuptally.model.Layer;
import workuptally.model.Lot;
import workuptally.model.Product;
import workuptally.model.Run;
import workuptally.model.Step;
import workuptally.model.Transfer;

/** Other words of the bench for the choices of the form, such as rotavap for concentrate or starting material for substrate. */
final class ChoiceSynonyms {
    /** Solvents of which a layer is the organic one. */
    private static final List<String> ORGANIC_SOLVENTS = List.of(
            "EtOAc",
            "EA",
            "EE",
            "AcOEt",
            "ethyl acetate",
            "Essigester",
            "MTBE",
            "TBME",
            "ether",
            "Et2O",
            "diethyl ether",
            "toluene",
            "PhMe",
            "Toluol",
            "DCM",
            "CH2Cl2",
            "dichloromethane",
            "methylene chloride",
            "CHCl3",
            "chloroform",
            "hexane",
            "hexanes",
            "heptane",
            "heptanes",
            "pentane",
            "cyclohexane",
            "petroleum ether",
            "PE",
            "2-MeTHF",
            "MeTHF",
            "iPrOAc",
            "isopropyl acetate",
            "butanol",
            "n-BuOH",
            "xylene",
            "DCE",
            "CPME",
            "benzene",
            "Ether",
            "Hexan",
            "Heptan");

    /** Names that stand for the step in which the agent is used. */
    private static final List<String> DRYING_AGENTS = List.of(
            "MgSO4",
            "Na2SO4",
            "CaSO4",
            "CaCl2",
            "magnesium sulfate",
            "sodium sulfate",
            "Magnesiumsulfat",
            "Natriumsulfat",
            "molecular sieves",
            "mol sieves",
            "Molsieb");

    /** Where a solid is dried, and no solution. */
    private static final List<String> DRYING_PLACES = List.of(
            "in vacuo",
            "under vacuum",
            "in vacuum",
            "in vac",
            "under high vacuum",
            "in oven",
            "in the oven",
            "in vacuum oven",
            "in desiccator",
            "in a desiccator",
            "on pump",
            "on the pump",
            "in air",
            "on filter",
            "i. Vak.",
            "im Vakuum",
            "im Trockenschrank",
            "am HV",
            "solid",
            "product",
            "crystals");

    private final Map<Class<?>, Map<String, Enum<?>>> byWord = new HashMap<>();
    private final UnaryOperator<String> spelling;

    /**
     * All of them.
     *
     * @param spelling brings words to the form in which they are compared
     */
    ChoiceSynonyms(UnaryOperator<String> spelling) {
        this.spelling = spelling;
        operations();
        isolation();
        tests();
        layers();
        charges();
        runs();
        assays();
    }

    private void charges() {
        add(Charge.Role.SUBSTRATE, "starting material", "SM", "educt", "Edukt", "limiting", "limiting reagent", "LR");
        add(
                Charge.Role.SUBSTRATE,
                "start. mat.",
                "starting mat.",
                "Ausgangsstoff",
                "Ausgangsmaterial",
                "Substrat",
                "key");
        add(Charge.Role.SUBSTRATE, "starting compound", "substr.", "subst.", "substrat", "produit de départ");
        add(Charge.Role.REAGENT, "reactant", "coupling agent", "oxidant", "reductant", "reducing agent", "partner");
        add(Charge.Role.REAGENT, "oxidising agent", "oxidizing agent", "nucleophile", "electrophile", "acid", "Säure");
        add(
                Charge.Role.REAGENT,
                "Reagens",
                "Reagenz",
                "réactif",
                "rgt.",
                "reag.",
                "coupling partner",
                "Oxidationsmittel");
        add(
                Charge.Role.REAGENT,
                "Reduktionsmittel",
                "Nucleophil",
                "Elektrophil",
                "alkylating agent",
                "coupling reagent");
        add(Charge.Role.CATALYST, "cat.", "catalyst precursor", "Katalysator", "Kat.", "catalyseur", "precatalyst");
        add(Charge.Role.BASE, "Base", "Hilfsbase", "auxiliary base", "acid scavenger");
        add(Charge.Role.ADDITIVE, "ligand", "other", "internal standard", "drying agent", "IS", "IStd", "Int. Std.");
        add(
                Charge.Role.ADDITIVE,
                "Zusatz",
                "Additiv",
                "additif",
                "promoter",
                "stabiliser",
                "inhibitor",
                "phase transfer");
        add(Charge.Role.SOLVENT, "co solvent", "reaction solvent", "Lösungsmittel", "LM", "Lsm.", "LSM", "solvant");
        add(Charge.Role.SOLVENT, "solv.", "Solvens", "Lösemittel", "medium", "diluent");
        add(Charge.Role.COMPONENT, "mixture component", "Komponente", "comp.", "composant");
    }

    private void runs() {
        add(Run.Status.ISOLATED, "done", "finished", "complete", "completed", "fertig", "abgeschlossen", "isoliert");
        add(Run.Status.ISOLATED, "erledigt", "beendet", "terminé", "fini", "product isolated", "closed", "weighed");
        add(Run.Status.IN_WORKUP, "ongoing", "in progress", "running", "WIP", "working up", "work up", "workup");
        add(
                Run.Status.IN_WORKUP,
                "läuft",
                "laufend",
                "in Arbeit",
                "in Aufarbeitung",
                "Aufarbeitung",
                "en cours",
                "open");
        add(
                Run.Status.FAILED,
                "given up",
                "abandoned",
                "aufgegeben",
                "gescheitert",
                "fehlgeschlagen",
                "misslungen",
                "missglückt",
                "abandonné",
                "no product");
        add(Run.Status.IN_WORKUP, "started", "begonnen", "being worked up", "in work up", "active");
        add(
                Run.Status.PLANNED,
                "plan",
                "to do",
                "not started",
                "geplant",
                "next week",
                "prévu",
                "planifié",
                "planned run");
        add(
                Run.Status.PLANNED,
                "todo",
                "not yet started",
                "nächste Woche",
                "upcoming",
                "scheduled",
                "noch nicht begonnen");
        add(Run.Kind.REACTION, "Reaktion", "synthesis", "Synthese", "réaction", "rxn", "react.", "synthèse");
        add(Run.Kind.SEPARATION, "sep.", "Trennung", "séparation", "extraction", "purification");
        add(Run.Kind.RESOLUTION, "Racematspaltung", "résolution", "res.", "kinetic resolution", "classical resolution");
        add(
                Product.Character.ACID,
                "acidic",
                "weak acid",
                "strong acid",
                "A",
                "sauer",
                "Säure",
                "acide",
                "carboxylic acid");
        add(
                Product.Character.BASE,
                "basic",
                "weak base",
                "strong base",
                "B",
                "basisch",
                "amine",
                "basique",
                "alkaline");
        add(Product.Character.NEUTRAL, "neutre", "neither", "non ionisable", "neutral compound");
        add(
                Transfer.Status.DONE,
                "poured",
                "transferred",
                "completed",
                "fait",
                "yes",
                "erledigt",
                "complete",
                "finished");
        add(Transfer.Status.DONE, "umgefüllt", "poured in", "executed", "ja", "getan", "in container", "moved");
        add(
                Transfer.Status.PROPOSED,
                "geplant",
                "planned",
                "plan",
                "proposal",
                "vorgeschlagen",
                "to do",
                "prévu",
                "intended");
        add(Transfer.Status.PROPOSED, "todo", "pending", "open", "suggested", "proposé", "offen");
    }

    private void assays() {
        add(Assay.Method.HPLC, "UPLC", "UHPLC", "LC", "HPLC-UV", "HPLC/UV", "HPLC-DAD", "RP-HPLC", "LC-UV");
        add(
                Assay.Method.LC_MS,
                "LCMS",
                "LC/MS",
                "LC MS",
                "UPLC-MS",
                "UPLC/MS",
                "HPLC-MS",
                "HPLC/MS",
                "LC-MS/MS",
                "UHPLC-MS");
        add(Assay.Method.TLC, "DC", "Dünnschichtchromatographie", "thin layer chromatography", "CCM");
        add(Assay.Method.GC, "GC-FID", "GC/FID", "GCMS", "GC/MS", "gas chromatography", "GLC");
        add(Assay.Method.NMR, "1H NMR", "H NMR", "1H-NMR", "13C NMR", "19F NMR", "31P NMR", "proton NMR", "RMN");
        add(Assay.Method.QNMR, "quantitative NMR", "q-NMR", "qHNMR", "NMR with internal standard", "NMR assay");
        add(
                Assay.Method.TITRATION,
                "titr.",
                "acid-base titration",
                "acid base",
                "Titration",
                "titrimetry",
                "iodometry");
        add(Assay.Method.TITRATION, "iodometric", "potentiometric", "argentometry", "titrage");
        add(
                Assay.Method.KF,
                "Karl Fischer",
                "Karl Fischer titration",
                "K.F.",
                "Karl Fischer coulometry",
                "water by KF");
        add(
                Assay.Method.DRY_RESIDUE,
                "evap. residue",
                "residue",
                "evaporation residue",
                "Trockenrückstand",
                "Rückstand");
        add(
                Assay.Method.DRY_RESIDUE,
                "gravimetric",
                "gravimetry",
                "evaporated aliquot",
                "dry weight",
                "solids",
                "résidu sec");
        add(Assay.Method.LOD, "loss on drying", "Trocknungsverlust", "TGA", "perte à la dessiccation");
        add(
                Assay.Method.OTHER,
                "UV",
                "IR",
                "UV/Vis",
                "UV-Vis",
                "MS",
                "ELSD",
                "polarimetry",
                "refractometry",
                "density");
        add(
                Assay.Unit.AREA_PERCENT,
                "a%",
                "area%",
                "% area",
                "a/a %",
                "% a/a",
                "area-%",
                "Flächen-%",
                "Fl.-%",
                "FID area %");
        add(Assay.Unit.AREA_PERCENT, "HPLC area %", "GC area %", "peak area %");
        add(
                Assay.Unit.MOLE_RATIO_TO_PRODUCT,
                "mol ratio",
                "mole ratio",
                "molar ratio",
                "eq. to product",
                "mol/mol product");
    }

    private void tests() {
        add(Step.QuenchTest.NEGATIVE, "neg.", "negativ", "négatif", "no colour", "no color");
        add(
                Step.QuenchTest.POSITIVE,
                "pos.",
                "+",
                "positiv",
                "positif",
                "blue",
                "dark",
                "still positive",
                "colour",
                "fail");
        add(
                Step.QuenchTest.NOT_DONE,
                "no test",
                "not tested",
                "none done",
                "nicht gemacht",
                "untested",
                "nicht geprüft");
        add(Step.QuenchTest.NOT_DONE, "not checked", "omitted", "pas fait", "nicht getestet", "skipped");
        add(Step.Lower.ORGANIC, "org.", "organic layer", "organic phase", "organisch", "org. Phase", "organique", "OP");
        add(
                Step.Lower.AQUEOUS,
                "aq.",
                "water",
                "aqueous layer",
                "aq. phase",
                "wässrig",
                "wässrige Phase",
                "aqueuse",
                "WP");
        add(Step.Lower.AQUEOUS, "aq. layer", "wässr.", "Wasser", "wässr. Phase", "eau");
        add(
                Step.CheckedBy.WATER_DROP,
                "drop of water",
                "drop",
                "drop test",
                "Wassertropfen",
                "water test",
                "water drop test");
        add(Step.CheckedBy.WATER_DROP, "added water", "add water", "Tropfenprobe", "goutte d'eau");
        add(
                Step.CheckedBy.DENSITY,
                "dens.",
                "densities",
                "Dichte",
                "densité",
                "density meter",
                "weighed 1 mL",
                "specific gravity");
        add(Step.CheckedBy.VOLUMES, "volume", "by volume", "vol.", "vols", "Volumen", "Volumina", "volume change");
        add(
                Step.CheckedBy.NOT_CHECKED,
                "no",
                "none",
                "unchecked",
                "not done",
                "nicht geprüft",
                "nein",
                "non vérifié",
                "not tested");
        add(Step.Emulsion.NONE, "no", "keine", "nein", "clean cut", "clean", "sharp", "no emulsion", "aucune", "non");
        add(
                Step.Emulsion.SLIGHT,
                "some",
                "little",
                "a bit",
                "minor",
                "a little",
                "leicht",
                "wenig",
                "thin",
                "small",
                "weak");
        add(Step.Emulsion.SLIGHT, "légère", "etwas", "gering", "slight emulsion", "light");
        add(
                Step.Emulsion.PERSISTENT,
                "bad",
                "severe",
                "stable",
                "strong",
                "heavy",
                "stark",
                "stabil",
                "persistente",
                "terrible");
        add(Step.Emulsion.PERSISTENT, "hartnäckig", "lasting", "did not break", "thick");
    }

    private void layers() {
        add(Layer.Phase.ORGANIC, "org.", "organic layer", "organic phase", "fraction", "eluate", "OP", "organisch");
        add(Layer.Phase.ORGANIC, "org. Phase", "organische Phase", "organique", "organics", "org. layer");
        for (String solvent : ORGANIC_SOLVENTS) {
            add(Layer.Phase.ORGANIC, solvent);
        }
        add(
                Layer.Phase.AQUEOUS,
                "aq.",
                "aqueous layer",
                "aqueous phase",
                "water",
                "WP",
                "wässr.",
                "wässrig",
                "wässrige Phase");
        add(
                Layer.Phase.AQUEOUS,
                "aq. layer",
                "aq. phase",
                "Wasserphase",
                "aqueuse",
                "phase aqueuse",
                "brine",
                "Wasser",
                "AP");
        add(Layer.Phase.AQUEOUS, "aqueous wash", "acid wash", "base wash", "wash water", "Waschwasser");
        add(
                Layer.Phase.SOLID,
                "cake",
                "filter cake",
                "drying cake",
                "precipitate",
                "ppt.",
                "Feststoff",
                "Niederschlag",
                "crystals");
        add(
                Layer.Phase.SOLID,
                "Filterkuchen",
                "solids",
                "Kuchen",
                "solide",
                "salt",
                "drying agent",
                "powder",
                "Kristalle");
        add(
                Layer.Phase.RAG,
                "rag layer",
                "emulsion",
                "interphase",
                "interface",
                "Zwischenphase",
                "Mulm",
                "cuff",
                "Zwischenschicht");
        add(
                Layer.Phase.DISTILLATE,
                "condensate",
                "Destillat",
                "rotovap trap",
                "rotavap trap",
                "distillat",
                "Kondensat",
                "dist.");
        add(
                Layer.Phase.DISTILLATE,
                "strippings",
                "rotovap distillate",
                "trap",
                "recovered solvent",
                "cold trap",
                "stripped solvent");
        add(Layer.Phase.MOTHER_LIQUOR, "liquor", "ML", "mother liquors", "Mutterlauge", "eau mère", "eaux mères");
        add(Layer.Phase.MOTHER_LIQUOR, "ML's", "MLs", "liquors", "mother liq.");
        add(
                Layer.Position.UPPER,
                "top",
                "upper layer",
                "top layer",
                "oben",
                "obere",
                "haut",
                "above",
                "over",
                "upper phase",
                "up");
        add(Layer.Position.UPPER, "obere Phase", "supérieure");
        add(
                Layer.Position.LOWER,
                "bottom",
                "lower layer",
                "bottom layer",
                "unten",
                "untere",
                "bas",
                "below",
                "under",
                "down");
        add(Layer.Position.LOWER, "untere Phase", "inférieure");
        add(Layer.Position.MIDDLE, "mid", "between", "Mitte", "mittlere", "milieu", "centre", "interphase");
        add(
                Layer.Status.KEPT,
                "keep",
                "stored",
                "retained",
                "on hold",
                "hold",
                "fridge",
                "freezer",
                "frozen",
                "aufbewahrt");
        add(
                Layer.Status.KEPT,
                "in fridge",
                "in freezer",
                "saved",
                "aufgehoben",
                "gelagert",
                "held",
                "in hood",
                "Kühlschrank");
        add(Layer.Status.KEPT, "gardé", "conservé", "keeping", "archived", "in storage");
        add(Layer.Status.USED_UP, "none left", "aufgebraucht", "verbraucht", "épuisé");
        add(
                Layer.Status.CONSUMED,
                "combined",
                "carried on",
                "pooled",
                "processed",
                "into next step",
                "taken on",
                "vereinigt");
        add(
                Layer.Status.CONSUMED,
                "used in next step",
                "weiterverarbeitet",
                "extracted",
                "concentrated",
                "evaporated",
                "dried");
        add(
                Layer.Status.CONSUMED,
                "carried forward",
                "eingeengt",
                "worked up",
                "telescoped",
                "into step",
                "to step",
                "used in step",
                "in Schritt",
                "went into step");
        add(Layer.Status.LOST, "spilled", "spilt", "verloren", "verschüttet", "perdu");
        add(Layer.Status.TO_REUSE, "reuse", "to recycle", "recycle", "for reuse", "wiederverwenden", "à réutiliser");
        add(Layer.Status.RELEASED, "freigegeben", "libéré", "signed off", "release signed");
        add(
                Lot.Stage.CRUDE,
                "crude product",
                "raw",
                "wet",
                "wet cake",
                "Rohprodukt",
                "roh",
                "brut",
                "crude oil",
                "crude solid");
        add(Lot.Stage.CRUDE, "Roh", "produit brut", "crd.", "unpurified");
        add(
                Lot.Stage.CROP,
                "first crop",
                "second crop",
                "third crop",
                "1st crop",
                "2nd crop",
                "3rd crop",
                "Kristallisat");
        add(
                Lot.Stage.CROP,
                "crop 1",
                "crop 2",
                "crop 3",
                "Fraktion Kristalle",
                "1. Kristallisat",
                "2. Kristallisat",
                "crystals");
        add(
                Lot.Stage.PURIFIED,
                "pure",
                "recrystallised",
                "distilled",
                "chromatographed",
                "sublimed",
                "final",
                "rein",
                "pur");
        add(
                Lot.Stage.PURIFIED,
                "recrystallized",
                "triturated",
                "column",
                "recryst.",
                "after column",
                "columned",
                "Reinprodukt");
        add(
                Lot.Stage.PURIFIED,
                "after chromatography",
                "after recrystallisation",
                "purif.",
                "umkristallisiert",
                "destilliert");
        add(Lot.Stage.PURIFIED, "gereinigt", "purifié", "pure product", "after distillation", "prep HPLC");
    }

    /** The values of which a word is a slip of the pen. */
    <E extends Enum<E>> java.util.Set<E> slips(Class<E> choice, String spelled) {
        java.util.Set<E> found = java.util.EnumSet.noneOf(choice);
        byWord.getOrDefault(choice, Map.of()).forEach((word, value) -> {
            if (WordGuess.isSlipOf(spelled, word)) {
                found.add(choice.cast(value));
            }
        });
        return found;
    }

    /** The value that another word means. */
    <E extends Enum<E>> Optional<E> find(Class<E> choice, String text) {
        return Optional.ofNullable(byWord.getOrDefault(choice, Map.of()).get(spelling.apply(text)))
                .map(choice::cast);
    }

    private void operations() {
        add(
                Step.Operation.QUENCH,
                "quenching",
                "quenched",
                "quenchen",
                "gequencht",
                "quencher",
                "hydrolyse",
                "hydrolysis");
        add(Step.Operation.QUENCH, "Abbruch", "stop reaction", "hydrolysed", "pour onto ice", "poured onto ice");
        add(
                Step.Operation.DILUTE,
                "dilution",
                "diluted",
                "dissolve",
                "redissolve",
                "take up",
                "taken up",
                "dil.",
                "add",
                "added");
        add(
                Step.Operation.DILUTE,
                "dissolved",
                "redissolved",
                "verdünnen",
                "verdünnt",
                "aufgenommen",
                "lösen",
                "gelöst",
                "diluer");
        add(Step.Operation.DILUTE, "took up", "aufnehmen", "add water", "add solvent", "partitioned");
        add(
                Step.Operation.EXTRACT,
                "extraction",
                "extracted",
                "extr.",
                "ext.",
                "extrahiert",
                "extrahieren",
                "extraire");
        add(
                Step.Operation.EXTRACT,
                "liq-liq extraction",
                "LLE",
                "Extraktion",
                "ausgeschüttelt",
                "ausschütteln",
                "extracting");
        add(
                Step.Operation.WASH,
                "washing",
                "washed",
                "washes",
                "waschen",
                "gewaschen",
                "laver",
                "lavage",
                "brine wash");
        add(Step.Operation.WASH, "acid wash", "base wash", "Wäsche", "wsh", "washings");
        add(
                Step.Operation.BACK_EXTRACT,
                "back extraction",
                "re extract",
                "re extraction",
                "BE",
                "re extracted",
                "reextracted");
        add(
                Step.Operation.BACK_EXTRACT,
                "back extracted",
                "backextr.",
                "rückextrahiert",
                "Rückextraktion",
                "back extr.");
        add(Step.Operation.BACK_EXTRACT, "reextr.", "re-extr.", "rückextrahieren", "back wash", "nachextrahiert");
        add(Step.Operation.ACIDIFY, "acidified", "acidification", "ansäuern", "angesäuert", "acidifier", "acidif.");
        add(
                Step.Operation.BASIFY,
                "basified",
                "make basic",
                "made basic",
                "alkalisiert",
                "alkalisieren",
                "basisch gestellt");
        add(
                Step.Operation.BASIFY,
                "basification",
                "basischstellen",
                "alkalise",
                "made alkaline",
                "free base",
                "alcaliniser");
        add(
                Step.Operation.COMBINE,
                "combined",
                "pool",
                "pooled",
                "comb.",
                "vereinigt",
                "vereinigen",
                "merge",
                "merged");
        add(Step.Operation.COMBINE, "combine organics", "combined organics", "combining", "zusammengeführt", "réunir");
        add(
                Step.Operation.DRY,
                "drying",
                "dried",
                "trocknen",
                "getrocknet",
                "sécher",
                "séchage",
                "séché",
                "dried organics",
                "dehydrate");
        for (String agent : DRYING_AGENTS) {
            add(Step.Operation.DRY, agent);
        }
        add(
                Step.Operation.FILTER,
                "filtration",
                "filtered",
                "decant",
                "vacuum filter",
                "suction filter",
                "abgenutscht");
        add(
                Step.Operation.FILTER,
                "filtriert",
                "filtrieren",
                "abfiltriert",
                "filt.",
                "Filtration",
                "filtrer",
                "decanted",
                "abnutschen");
        add(
                Step.Operation.FILTER,
                "filter off",
                "filtered off",
                "dekantieren",
                "absaugen",
                "abgesaugt",
                "Buchner",
                "filtr.");
        add(
                Step.Operation.RINSE,
                "rinsed",
                "rinsing",
                "spülen",
                "gespült",
                "nachgespült",
                "rincer",
                "rinse flask",
                "nachwaschen");
        add(
                Step.Operation.CONCENTRATE,
                "evaporate",
                "evaporation",
                "evaporated",
                "rotavap",
                "rotovap",
                "evap.",
                "rotavaped");
        add(
                Step.Operation.CONCENTRATE,
                "rotary evaporation",
                "concentrated",
                "concentrate in vacuo",
                "stripped",
                "azeotrope");
        add(
                Step.Operation.CONCENTRATE,
                "conc.",
                "eingeengt",
                "einengen",
                "i. Vak. eingeengt",
                "RV",
                "rotovaped",
                "rotovapped");
        add(
                Step.Operation.CONCENTRATE,
                "rotavapped",
                "azeotroped",
                "eindampfen",
                "eingedampft",
                "abrotiert",
                "im Vakuum eingeengt");
        add(
                Step.Operation.CONCENTRATE,
                "concentration",
                "evaporated to dryness",
                "solvent removed",
                "remove solvent",
                "évaporer");
        add(Step.Operation.CONCENTRATE, "rotary evap.", "strip to dryness", "abdestilliert", "einrotiert");
    }

    private void isolation() {
        add(
                Step.Operation.DISTIL,
                "distillation",
                "distilled",
                "vacuum distillation",
                "Kugelrohr",
                "vac dist.",
                "short path");
        add(
                Step.Operation.DISTIL,
                "dist.",
                "destilliert",
                "destillieren",
                "Destillation",
                "fractional distillation",
                "distiller");
        add(Step.Operation.DISTIL, "short path distillation", "bulb to bulb", "vakuumdestilliert", "vac. distilled");
        add(
                Step.Operation.CRYSTALLISE,
                "crystallisation",
                "crystallization",
                "recrystallise",
                "recryst.",
                "crystallised");
        add(
                Step.Operation.CRYSTALLISE,
                "recrystallisation",
                "recrystallization",
                "triturate",
                "trituration",
                "recrystallised");
        add(
                Step.Operation.CRYSTALLISE,
                "recrystallized",
                "crystallized",
                "cryst.",
                "xtal",
                "xtallise",
                "umkristallisiert");
        add(
                Step.Operation.CRYSTALLISE,
                "umkristallisieren",
                "kristallisiert",
                "Kristallisation",
                "rextal",
                "re xtal",
                "recrist.");
        add(Step.Operation.CRYSTALLISE, "triturated", "recrystallize", "kristallisieren", "recristalliser", "xtals");
        add(
                Step.Operation.SAMPLE,
                "aliquot",
                "sampling",
                "sampled",
                "took sample",
                "take sample",
                "Probe",
                "Probenahme",
                "IPC");
        add(Step.Operation.SAMPLE, "Aliquot", "Probe gezogen", "prélèvement", "took aliquot", "Muster");
        add(
                Step.Operation.CHROMATOGRAPH,
                "chromatography",
                "column",
                "column chromatography",
                "flash",
                "Säule",
                "Chromatographie");
        add(
                Step.Operation.CHROMATOGRAPH,
                "flash column",
                "flash chromatography",
                "prep HPLC",
                "prep TLC",
                "silica column",
                "FC");
        add(
                Step.Operation.CHROMATOGRAPH,
                "columned",
                "chromatographed",
                "Säulenchromatographie",
                "silica plug",
                "MPLC");
        add(Step.Operation.CHROMATOGRAPH, "chromatographiert", "chrom.", "colonne", "preparative HPLC");
        add(
                Step.Operation.DRY_SOLID,
                "dry in vacuo",
                "vacuum dry",
                "vacuum drying",
                "oven dry",
                "dry product",
                "dried in vacuo");
        for (String verb : List.of("dry", "dried", "drying", "trocknen", "getrocknet")) {
            for (String where : DRYING_PLACES) {
                add(Step.Operation.DRY_SOLID, verb + " " + where, where + " " + verb);
            }
        }
        add(
                Step.Operation.DRY_SOLID,
                "vacuum oven",
                "oven",
                "dried under vacuum",
                "dry under vacuum",
                "Trockenschrank",
                "high vac");
        add(
                Step.Operation.DRY_SOLID,
                "im Vakuum getrocknet",
                "dried in oven",
                "high vacuum",
                "hi vac",
                "HV",
                "Ölpumpe",
                "desiccator");
        add(
                Step.Operation.DRY_SOLID,
                "i. Vak. getrocknet",
                "dried on pump",
                "pump dry",
                "air dry",
                "air dried",
                "étuve",
                "Exsikkator");
    }

    private void add(Enum<?> value, String... words) {
        Map<String, Enum<?>> ofChoice = byWord.computeIfAbsent(value.getDeclaringClass(), c -> new HashMap<>());
        for (String word : List.of(words)) {
            ofChoice.put(spelling.apply(word), value);
        }
    }
}
