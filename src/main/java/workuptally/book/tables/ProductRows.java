package workuptally.book.tables;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import workuptally.book.words.FormulaWords;
import workuptally.book.words.NamedNumber;
import workuptally.book.words.Unit;
import workuptally.model.Charge;
import workuptally.model.FindingCode;
import workuptally.model.LeftOutRow;
import workuptally.model.Product;
import workuptally.model.Product.SkeletonPart;
import workuptally.model.Severity;

/** Reads the Products table; the Charges table is read before it, since skeletons name its materials. */
public final class ProductRows {
    private ProductRows() {}

    public static void read(TableRows rows, RunIndex runs) {
        List<Runnable> whenAllAreRead = new ArrayList<>();
        RowsOfRuns.read(rows, runs, LeftOutRow.Of.PRODUCT, "Product", (row, run) -> {
            Optional<String> product = row.key("Product");
            product.ifPresent(name -> {
                read(row, name, run);
                whenAllAreRead.add(() -> checkForm(row, name, run));
            });
            return product.isPresent();
        });
        whenAllAreRead.forEach(Runnable::run);
    }

    /** A form may name a product of a later row. */
    private static void checkForm(TableRow row, String name, RunAssembly run) {
        String other = row.text("Form of");
        if (!other.isEmpty()
                && run.product(other)
                        .filter(p -> !p.name().equalsIgnoreCase(name))
                        .isEmpty()) {
            row.report(
                    FindingCode.FORM_OF_UNKNOWN,
                    Severity.CHECK,
                    "Form of",
                    "read '" + other + "'",
                    "another product of the run that is the same substance as salt, base, hydrate or solvate",
                    "Correct the name or add the other form as a product; until then each counts by itself.");
        }
    }

    private static void read(TableRow row, String name, RunAssembly run) {
        if (run.products.stream().anyMatch(p -> p.name().equalsIgnoreCase(name))) {
            row.report(
                    FindingCode.PRODUCT_DUPLICATE,
                    Severity.STOP,
                    "Product",
                    "read '" + name + "' a second time in run " + run.id(),
                    "each product of a run once",
                    "Rename or remove the second and run again; only the first was read.");
            return;
        }
        run.products.add(new Product(
                name,
                row.yesOrNo("Wanted").orElse(true),
                FormulaWords.read(row.text("Formula")),
                row.number("Molar mass"),
                row.count("Coefficient"),
                skeleton(row, run),
                row.number("Planned yield"),
                new Product.Partitioning(
                        row.choice("Character", Product.Character.values()),
                        row.number("pKa"),
                        row.number("Partition ratio"),
                        row.text("Partition solvent"),
                        row.number("Log P")),
                row.number("Boiling point"),
                row.text("Form of"),
                row.place()));
    }

    private static List<SkeletonPart> skeleton(TableRow row, RunAssembly run) {
        List<SkeletonPart> skeleton = new ArrayList<>();
        List<String> unknown = new ArrayList<>();
        for (NamedNumber part : row.parts("Skeleton", Unit.ONE, "benzophenone 1; aniline 2", Optional.of(1.0))) {
            Optional<Charge> charge = run.charge(part.name());
            if (charge.isEmpty()) {
                unknown.add(part.name());
            }
            skeleton.add(new SkeletonPart(charge.map(Charge::material).orElse(part.name()), part.value()));
        }
        if (!unknown.isEmpty()) {
            row.report(
                    FindingCode.SKELETON_PARTNER_UNKNOWN,
                    Severity.CHECK,
                    "Skeleton",
                    "read '" + String.join("', '", unknown) + "'",
                    unknown.size() == 1 ? "a material of the run's charges" : "materials of the run's charges",
                    "Correct the name or add the charge, then run again.");
        }
        return row.shared(skeleton);
    }
}
