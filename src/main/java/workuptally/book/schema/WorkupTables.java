package workuptally.book.schema;

import static workuptally.book.schema.SchemaColumn.choice;
import static workuptally.book.schema.SchemaColumn.date;
import static workuptally.book.schema.SchemaColumn.key;
import static workuptally.book.schema.SchemaColumn.number;
import static workuptally.book.schema.SchemaColumn.numberWithUnit;
import static workuptally.book.schema.SchemaColumn.text;
import static workuptally.book.schema.SchemaColumn.words;

import java.util.List;
import workuptally.book.words.BookWords;
import workuptally.book.words.Range;
import workuptally.book.words.Unit;

/** The tables of a workup: its steps, the layers that they give, and the analyses of these. */
public final class WorkupTables {
    public static final Table WORKUP = new Table(
            "Workup",
            false,
            "Workup operations in order; they tie the layers together",
            List.of(
                    key("Run", "Run id as in Runs"),
                    text("Step", "Number or name of the step"),
                    choice(
                            "Operation",
                            Need.DETAIL,
                            BookWords.of(workuptally.model.Step.Operation.values()),
                            "What is done; sample takes an aliquot"),
                    words(
                            "From",
                            SchemaColumn.Kind.LABELS,
                            Need.DETAIL,
                            "Layers used up, joined by +; RM = reaction mixture"),
                    text("Material", "What is added"),
                    number(
                            "Portions",
                            Unit.ONE,
                            Need.DETAIL,
                            new Range(1, 1000, "of 1 or more"),
                            "Number of portions; blank = 1"),
                    number("Volume", Unit.MILLILITRE, Need.DETAIL, Range.NOT_NEGATIVE, "Of each portion"),
                    number("Mass", Unit.GRAM, Need.DETAIL, Range.NOT_NEGATIVE, "Of each portion"),
                    number("Molarity", Unit.MOLE_PER_LITRE, Need.DETAIL, Range.MOLARITY, "Strength of the material"),
                    number("Density", Unit.GRAM_PER_MILLILITRE, Need.DETAIL, Range.DENSITY, "Density of the material"),
                    number("Funnel", Unit.MILLILITRE, Need.DETAIL, Range.FUNNEL, "Nominal size of the funnel"),
                    number(
                            "Loads",
                            Unit.ONE,
                            Need.DETAIL,
                            new Range(1, 1000, "of 1 or more"),
                            "Funnel loads; blank = 1"),
                    number("Temperature", Unit.CELSIUS, Need.DETAIL, Range.TEMPERATURE, ""),
                    number("pH after", Unit.ONE, Need.DETAIL, Range.PH, "Of the aqueous layer at the end"),
                    choice(
                            "Quench test",
                            Need.DETAIL,
                            BookWords.of(workuptally.model.Step.QuenchTest.values()),
                            "Test for left-over oxidant or hydride"),
                    choice(
                            "Lower layer",
                            Need.DETAIL,
                            BookWords.of(workuptally.model.Step.Lower.values()),
                            "Which layer was below"),
                    choice(
                            "Checked by",
                            Need.DETAIL,
                            BookWords.of(workuptally.model.Step.CheckedBy.values()),
                            "How the order of the layers was checked"),
                    choice("Emulsion", Need.DETAIL, BookWords.of(workuptally.model.Step.Emulsion.values()), ""),
                    words(
                            "Gives organic",
                            SchemaColumn.Kind.LABELS,
                            Need.DETAIL,
                            "Labels of organic layers, joined by +"),
                    words(
                            "Gives aqueous",
                            SchemaColumn.Kind.LABELS,
                            Need.DETAIL,
                            "Labels of aqueous layers, joined by +"),
                    words(
                            "Gives other",
                            SchemaColumn.Kind.LABELS,
                            Need.DETAIL,
                            "Cakes, distillates, rag, samples, lots"),
                    text("Notes", "")));

    public static final Table LAYERS = new Table(
            "Layers",
            false,
            "Portions that were kept or measured, cakes and distillates too",
            List.of(
                    key("Run", "Run id as in Runs"),
                    key("Layer", "Label, unique in the run"),
                    choice("Phase", Need.DETAIL, BookWords.of(workuptally.model.Layer.Phase.values()), "What it is"),
                    choice(
                            "Position",
                            Need.DETAIL,
                            BookWords.of(workuptally.model.Layer.Position.values()),
                            "Where it was in the funnel"),
                    text("Vessel", "Vessel it is kept in"),
                    number("Volume", Unit.MILLILITRE, Need.DETAIL, Range.NOT_NEGATIVE, "Read volume"),
                    number("Gross", Unit.GRAM, Need.DETAIL, Range.NOT_NEGATIVE, "Vessel and contents"),
                    number("Tare", Unit.GRAM, Need.DETAIL, Range.NOT_NEGATIVE, "Vessel alone"),
                    number("Net", Unit.GRAM, Need.DETAIL, Range.NOT_NEGATIVE, "Instead of gross and tare"),
                    number("Temperature", Unit.CELSIUS, Need.DETAIL, Range.TEMPERATURE, "Of the volume reading"),
                    number("pH", Unit.ONE, Need.DETAIL, Range.PH, ""),
                    words(
                            "Composition",
                            SchemaColumn.Kind.PARTS,
                            Need.DETAIL,
                            "By mass, if known: ethyl acetate 81 %; ethanol 19 %"),
                    text("Balance", "Balance used"),
                    number(
                            "Volume uncertainty",
                            Unit.MILLILITRE,
                            Need.DETAIL,
                            Range.NOT_NEGATIVE,
                            "Standard uncertainty of the volume (k = 1)"),
                    date("Made on", "Day it was made"),
                    date("Review by", "Day to look at it again"),
                    choice(
                            "Status",
                            Need.DETAIL,
                            BookWords.of(workuptally.model.Layer.Status.values()),
                            "What has become of it"),
                    text("Released by", "Who released it"),
                    text("Notes", "")));

    public static final Table ASSAYS = new Table(
            "Assays",
            false,
            "Analyses of layers and lots",
            List.of(
                    key("Run", "Run id as in Runs"),
                    key("Sample", "Label of the layer or lot"),
                    text("Substance", "What was determined"),
                    text("Formula", "If not listed elsewhere"),
                    choice("Method", Need.DETAIL, BookWords.of(workuptally.model.Assay.Method.values()), ""),
                    numberWithUnit("Result", Need.DETAIL, Range.NOT_NEGATIVE, "Number; <0.10 or n.d. for a non-detect"),
                    choice(
                            "Unit",
                            Need.DETAIL,
                            BookWords.of(workuptally.model.Assay.Unit.values()),
                            "Unit of the result"),
                    number(
                            "Relative standard uncertainty",
                            Unit.PERCENT,
                            Need.DETAIL,
                            Range.PERCENT,
                            "k = 1; blank = by the method"),
                    text(
                            "Calibration",
                            "Name shared by rows that rest on one calibration; blank = HPLC and GC of the run share"
                                    + " one"),
                    number(
                            "Replicates",
                            Unit.ONE,
                            Need.DETAIL,
                            new Range(1, 1000, "of 1 or more"),
                            "Repeats behind the stated uncertainty; blank = well known"),
                    number("Aliquot", Unit.MILLILITRE, Need.DETAIL, Range.NOT_NEGATIVE, "Aliquot taken"),
                    number("Residue", Unit.MILLIGRAM, Need.DETAIL, Range.NOT_NEGATIVE, "Dry residue of the aliquot"),
                    text("Notes", "")));

    public static final Table NMR_ASSAYS = new Table(
            "NMR assays",
            false,
            "Internal-standard NMR assays by their raw numbers",
            List.of(
                    key("Run", "Run id as in Runs"),
                    key("Sample", "Label of the layer or lot"),
                    key("Substance", "What was determined"),
                    text("Standard", "Internal standard"),
                    number("Standard molar mass", Unit.GRAM_PER_MOLE, Need.DETAIL, Range.POSITIVE, ""),
                    number("Standard purity", Unit.PERCENT, Need.DETAIL, Range.ASSAY, "By mass"),
                    number("Standard mass", Unit.MILLIGRAM, Need.DETAIL, Range.POSITIVE, ""),
                    number("Sample mass", Unit.MILLIGRAM, Need.DETAIL, Range.POSITIVE, ""),
                    number("Standard integral", Unit.ONE, Need.DETAIL, Range.POSITIVE, ""),
                    number("Standard nuclei", Unit.ONE, Need.DETAIL, Range.POSITIVE, "Nuclei of that signal"),
                    number("Substance integral", Unit.ONE, Need.DETAIL, Range.NOT_NEGATIVE, ""),
                    number("Substance nuclei", Unit.ONE, Need.DETAIL, Range.POSITIVE, "Nuclei of that signal"),
                    number(
                            "Relative standard uncertainty",
                            Unit.PERCENT,
                            Need.DETAIL,
                            Range.PERCENT,
                            "k = 1; blank = by the method")));

    private WorkupTables() {}
}
