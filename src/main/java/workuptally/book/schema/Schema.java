package workuptally.book.schema;

import static workuptally.book.schema.SchemaColumn.choice;
import static workuptally.book.schema.SchemaColumn.date;
import static workuptally.book.schema.SchemaColumn.key;
import static workuptally.book.schema.SchemaColumn.number;
import static workuptally.book.schema.SchemaColumn.numberWithUnit;
import static workuptally.book.schema.SchemaColumn.text;
import static workuptally.book.schema.SchemaColumn.words;

import java.util.List;
import java.util.Set;
import workuptally.book.words.BookWords;
import workuptally.book.words.Range;
import workuptally.book.words.Unit;

/** The form of a book: all tables with their columns, units, choices and help texts, in the order of the template. */
public final class Schema {
    static final List<String> AMOUNT_UNITS =
            List.of("mg", "g", "kg", "µL", "mL", "L", "µmol", "mmol", "mol", "equiv", "mol %");

    /** Columns of Isolated of which one at least says that something was isolated. */
    public static final Set<String> WEIGHT_OR_YIELD = Set.of("Gross", "Net", "Second weighing", "Stated yield");

    static final List<String> YES_NO = List.of("yes", "no");

    public static final Table RUNS = new Table(
            "Runs",
            true,
            "One row per planned reaction or separation",
            List.of(
                    key("Run", "Short id, unique in the book"),
                    date("Date", "Day of the run"),
                    text("Chemist", "Who runs it"),
                    text("Reaction", "Title"),
                    choice(
                            "Kind",
                            Need.DETAIL,
                            BookWords.of(workuptally.model.Run.Kind.values()),
                            "Blank = reaction. A resolution without racemisation halves the theory"),
                    text("Series", "Name of a repeated preparation"),
                    choice(
                            "Status",
                            Need.DETAIL,
                            BookWords.of(workuptally.model.Run.Status.values()),
                            "How far the run is; blank = by what is recorded"),
                    number("Conversion", Unit.PERCENT, Need.DETAIL, Range.PERCENT, "Conversion of the substrate"),
                    text("Notes", "")));

    public static final Table PRODUCTS = new Table(
            "Products",
            true,
            "Wanted and tracked substances of each run",
            List.of(
                    key("Run", "Run id as in Runs"),
                    key("Product", "Name of the substance"),
                    choice("Wanted", Need.DETAIL, YES_NO, "no = by-product or recovered substrate; blank = yes"),
                    text("Formula", "Formula of the form isolated, with salt and hydrate"),
                    number(
                            "Molar mass",
                            Unit.GRAM_PER_MOLE,
                            Need.DETAIL,
                            Range.POSITIVE,
                            "Optional; checked against the formula"),
                    number("Coefficient", Unit.ONE, Need.DETAIL, Range.POSITIVE, "Stoichiometric coefficient"),
                    words(
                            "Skeleton",
                            SchemaColumn.Kind.PARTS,
                            Need.DETAIL,
                            "Units of each partner per molecule: benzophenone 1; phenylmagnesium bromide 1. Blank ="
                                    + " substrate 1"),
                    number("Planned yield", Unit.PERCENT, Need.DETAIL, Range.PERCENT, "Expected yield"),
                    choice(
                            "Character",
                            Need.DETAIL,
                            BookWords.of(workuptally.model.Product.Character.values()),
                            "Acid, base or neutral"),
                    number("pKa", Unit.ONE, Need.DETAIL, new Range(-20, 60, "from -20 to 60"), "Of the acid form"),
                    words(
                            "Form of",
                            SchemaColumn.Kind.TEXT,
                            Need.DETAIL,
                            "Another product of the run that is the same substance as salt, base, hydrate or solvate:"
                                    + " both count as the form isolated"),
                    number(
                            "Partition ratio",
                            Unit.ONE,
                            Need.DETAIL,
                            Range.POSITIVE,
                            "c(organic)/c(water), neutral form"),
                    text("Partition solvent", "Solvent of the partition ratio"),
                    number(
                            "Log P",
                            Unit.ONE,
                            Need.DETAIL,
                            new Range(-15, 20, "from -15 to 20"),
                            "Octanol/water, if no partition ratio is known"),
                    number("Boiling point", Unit.CELSIUS, Need.DETAIL, Range.TEMPERATURE, "At normal pressure")));

    public static final Table CHARGES = new Table(
            "Charges",
            true,
            "Materials put into each reaction",
            List.of(
                    key("Run", "Run id as in Runs"),
                    key("Material", "Name; the same name wherever it is meant"),
                    choice(
                            "Role",
                            Need.FIGURE,
                            BookWords.of(workuptally.model.Charge.Role.values()),
                            "What it is for; component = part of a mixture to separate"),
                    text("Formula", "Formula of what is weighed, with salt and hydrate"),
                    number(
                            "Molar mass",
                            Unit.GRAM_PER_MOLE,
                            Need.DETAIL,
                            Range.POSITIVE,
                            "Checked against the formula"),
                    number(
                            "Coefficient",
                            Unit.ONE,
                            Need.DETAIL,
                            Range.POSITIVE,
                            "Stoichiometric coefficient; blank = not stoichiometric"),
                    numberWithUnit("Planned amount", Need.DETAIL, Range.NOT_NEGATIVE, "Amount of the plan"),
                    choice("Planned unit", Need.DETAIL, AMOUNT_UNITS, "Unit of the planned amount"),
                    numberWithUnit("Actual amount", Need.FIGURE, Range.NOT_NEGATIVE, "Amount weighed or measured"),
                    choice("Actual unit", Need.FIGURE, AMOUNT_UNITS, "Unit of the actual amount"),
                    number(
                            "Amount of substance",
                            Unit.MILLIMOLE,
                            Need.DETAIL,
                            Range.NOT_NEGATIVE,
                            "As typed; counts where the amount cannot give it, else compared with it"),
                    number(
                            "Equivalents",
                            Unit.EQUIVALENT,
                            Need.DETAIL,
                            Range.NOT_NEGATIVE,
                            "As typed beside the amount, and compared with it"),
                    number("Assay", Unit.MASS_PERCENT, Need.DETAIL, Range.ASSAY, "Content by mass"),
                    number("Molarity", Unit.MOLE_PER_LITRE, Need.DETAIL, Range.MOLARITY, "By the label"),
                    number("Titre", Unit.MOLE_PER_LITRE, Need.DETAIL, Range.MOLARITY, "Titrated; wins over the label"),
                    date("Titre date", "Day of the titration"),
                    number(
                            "Density",
                            Unit.GRAM_PER_MILLILITRE,
                            Need.DETAIL,
                            Range.DENSITY,
                            "Of the material as charged"),
                    number(
                            "Assay uncertainty",
                            Unit.PERCENT,
                            Need.DETAIL,
                            Range.PERCENT,
                            "Relative standard uncertainty (k = 1)"),
                    number(
                            "Titre uncertainty",
                            Unit.PERCENT,
                            Need.DETAIL,
                            Range.PERCENT,
                            "Relative standard uncertainty (k = 1)"),
                    text("Supplier lot", "Number on the bottle")));

    public static final Table ISOLATED = new Table(
            "Isolated",
            true,
            "Weighed isolated products",
            List.of(
                    key("Run", "Run id as in Runs"),
                    key("Lot", "Label, unique in the run; a lot of several products has a row for each"),
                    words("Product", SchemaColumn.Kind.TEXT, Need.FIGURE, "Name as in Products"),
                    choice(
                            "Stage",
                            Need.DETAIL,
                            BookWords.of(workuptally.model.Lot.Stage.values()),
                            "crude, crop or purified"),
                    words("From", SchemaColumn.Kind.LABELS, Need.DETAIL, "Layers or lots it came from, joined by +"),
                    text("Vessel", "Flask"),
                    number("Gross", Unit.GRAM, Need.FIGURE, Range.NOT_NEGATIVE, "Vessel and contents"),
                    number("Tare", Unit.GRAM, Need.FIGURE, Range.NOT_NEGATIVE, "Vessel alone"),
                    number("Net", Unit.GRAM, Need.FIGURE, Range.NOT_NEGATIVE, "Instead of gross and tare"),
                    number("Assay", Unit.MASS_PERCENT, Need.DETAIL, Range.ASSAY, "Content by mass"),
                    number(
                            "Relative standard uncertainty",
                            Unit.PERCENT,
                            Need.DETAIL,
                            Range.PERCENT,
                            "Of the assay, k = 1"),
                    text("Identity by", "Evidence of identity"),
                    number("Second weighing", Unit.GRAM, Need.DETAIL, Range.NOT_NEGATIVE, "Gross, after more drying"),
                    number(
                            "Stated yield",
                            Unit.PERCENT,
                            Need.DETAIL,
                            new Range(0, 1000, "from 0 to 1000"),
                            "As typed by the chemist; compared with the one computed"),
                    text("Notes", "")));

    public static final Table TRANSFERS = new Table(
            "Transfers",
            false,
            "Proposed or done transfers into waste containers",
            List.of(
                    text("Transfer", "Short id"),
                    text("Run", "Run id as in Runs; blank for a free material"),
                    words("Layer", SchemaColumn.Kind.LABELS, Need.DETAIL, "Layers of the run, joined by +"),
                    text("Material", "Free material, if no layer"),
                    key("Container", "Container id as in Containers"),
                    number("Amount", Unit.GRAM, Need.DETAIL, Range.NOT_NEGATIVE, "Mass"),
                    choice(
                            "Status",
                            Need.DETAIL,
                            BookWords.of(workuptally.model.Transfer.Status.values()),
                            "Blank = proposed"),
                    text("By", "Who"),
                    date("Date", "When")));

    public static final Table CONTAINERS = new Table(
            "Containers",
            false,
            "Waste containers",
            List.of(
                    key("Container", "Short id, unique in the book"),
                    text("Waste stream", "Stream as the laboratory names it"),
                    number("Capacity", Unit.LITRE, Need.DETAIL, Range.POSITIVE, ""),
                    number("Tare", Unit.GRAM, Need.DETAIL, Range.NOT_NEGATIVE, "Empty container"),
                    date("Weighed on", "Day of the last weighing"),
                    number("Gross then", Unit.GRAM, Need.DETAIL, Range.NOT_NEGATIVE, "Gross at that weighing"),
                    words(
                            "Contents then",
                            SchemaColumn.Kind.PARTS,
                            Need.DETAIL,
                            "At that weighing: acetone 1950 g; water 250 g. Later transfers add to it"),
                    date("Opened", "Day of the first addition"),
                    text("Location", ""),
                    text("Contact", "Whom to ask")));

    public static final Table VESSELS = new Table(
            "Vessels",
            false,
            "Register of clean dry tares",
            List.of(
                    key("Vessel", "Vessel id as in Layers and Isolated"),
                    date("Date", "Day of the weighing"),
                    number("Clean dry tare", Unit.GRAM, Need.DETAIL, Range.POSITIVE, "")));

    public static final Table HISTORY = new Table(
            "History",
            false,
            "Earlier results of series",
            List.of(
                    key("Series", "Series name as in Runs"),
                    date("Date", ""),
                    number("Yield", Unit.PERCENT, Need.DETAIL, new Range(0, 200, "from 0 to 200"), ""),
                    text("Layer", "A layer of that batch that was assayed, by its label; one row for each"),
                    number(
                            "Content",
                            Unit.PERCENT,
                            Need.DETAIL,
                            new Range(0, 110, "from 0 to 110"),
                            "What that layer held, % of theory of the one wanted product; <0.1 is a limit")));

    public static final Table CORRECTIONS = new Table(
            "Corrections",
            false,
            "Corrections of the record; both values stay visible",
            List.of(
                    text("When", "Date and time"),
                    text("Who", ""),
                    text("Record", "What was corrected"),
                    text("Old", "Value before"),
                    text("New", "Value after"),
                    text("Reason", "")));

    public static final Table LIMITS = new Table(
            "Limits",
            false,
            "Thresholds and settings; a blank value keeps the default",
            List.of(
                    key("Name", "Fixed name; see the list in the template"),
                    words("Value", SchemaColumn.Kind.SETTING, Need.DETAIL, "Blank = default"),
                    text("Unit", "Unit of the value"),
                    text("Meaning", "In your own words, if you like")));

    /** All tables in the order of the template. */
    public static final List<Table> TABLES = List.of(
            RUNS,
            PRODUCTS,
            CHARGES,
            WorkupTables.WORKUP,
            WorkupTables.LAYERS,
            WorkupTables.ASSAYS,
            WorkupTables.NMR_ASSAYS,
            ISOLATED,
            TRANSFERS,
            CONTAINERS,
            VESSELS,
            HISTORY,
            CORRECTIONS,
            LIMITS);

    private Schema() {}
}
