package workuptally.judgement.rules;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import workuptally.book.BookReader;
import workuptally.book.files.UnreadableBookException;
import workuptally.judgement.Review;
import workuptally.judgement.ReviewBuilder;
import workuptally.model.Finding;
import workuptally.reference.Reference;

/** A small invented run of acetanilide that raises nothing, and the same with cells changed, so that one thing at a time goes wrong. */
final class ExampleBook {
    private static final Reference REFERENCE = Reference.load();

    private final Map<String, String> tables = new LinkedHashMap<>();

    private ExampleBook() {
        tables.put("runs", """
                Run,Date,Chemist,Reaction,Kind,Series,Status
                X1,2026-03-02,C1,acetylation of aniline,reaction,S-1,isolated
                """);
        tables.put("products", """
                Run,Product,Wanted,Formula,Molar mass (g/mol),Coefficient,Skeleton,Character,pKa,Partition ratio,Boiling point (°C)
                X1,acetanilide,yes,C8H9NO,135.17,1,aniline 1,neutral,,,304
                """);
        tables.put("charges", """
                Run,Material,Role,Formula,Molar mass (g/mol),Coefficient,Planned amount,Planned unit,Actual amount,Actual unit,Assay (% w/w),Molarity (mol/L),Titre (mol/L),Density (g/mL),Supplier lot
                X1,aniline,substrate,C6H7N,93.13,1,4.66,g,4.661,g,99.5,,,,
                X1,acetic anhydride,reagent,C4H6O3,102.09,1,6.0,g,6.012,g,99,,,,
                X1,ethyl acetate,solvent,C4H8O2,,,60,mL,60,mL,,,,0.902,
                """);
        tables.put("workup", """
                Run,Step,Operation,From,Material,Portions,Volume (mL),Mass (g),Molarity (mol/L),Density (g/mL),Funnel (mL),Loads,pH after,Quench test,Lower layer,Checked by,Emulsion,Gives organic,Gives aqueous,Gives other
                X1,1,wash,RM,water,1,30,,,0.998,250,1,,,aqueous,density,none,O1,A1,
                X1,2,wash,O1,brine,1,20,,,1.198,250,1,,,aqueous,density,none,O2,A2,
                X1,3,dry,O2,sodium sulfate,1,,6.0,,,,,,,,,,O3,,
                X1,4,filter,O3,,,,,,,,,,,,,,O4,,K1
                X1,5,rinse,O4,ethyl acetate,1,5,,,0.902,,,,,,,,O4,,
                X1,6,concentrate,O4,,,,,,,,,,,,,,,,D1+CR1
                """);
        tables.put("layers", """
                Run,Layer,Phase,Position,Vessel,Volume (mL),Gross (g),Tare (g),Net (g),Composition,Status
                X1,A1,aqueous,lower,E-01,34,97.63,63.11,,,kept
                X1,A2,aqueous,lower,E-02,21,85.02,60.26,,,kept
                X1,K1,solid,,,,,,6.92,,kept
                X1,D1,distillate,,,,,,48.15,ethyl acetate 98 %,to reuse
                """);
        tables.put("assays", """
                Run,Sample,Substance,Formula,Method,Result,Unit,Relative standard uncertainty (%),Notes
                X1,A1,acetanilide,,HPLC,1.51,mg/mL,2.0,
                X1,A2,acetanilide,,HPLC,<0.10,mg/mL,,
                """);
        tables.put("isolated", """
                Run,Lot,Product,Stage,From,Vessel,Gross (g),Tare (g),Net (g),Assay (% w/w),Relative standard uncertainty (%),Identity by,Second weighing (g),Notes
                X1,CR1,acetanilide,crude,O4,F-01,96.9022,90.3358,,99.1,1.5,melting point,,
                """);
    }

    /** The run in which nothing is wrong. */
    static ExampleBook clean() {
        return new ExampleBook();
    }

    /** The same with one piece of a table's text replaced; the piece must be there. */
    ExampleBook with(String table, String old, String replacement) {
        String text = tables.get(table);
        if (!text.contains(old)) {
            throw new IllegalArgumentException("no '" + old + "' in " + table);
        }
        tables.put(table, text.replace(old, replacement));
        return this;
    }

    /** The same with a row added at the end of a table. */
    ExampleBook plus(String table, String row) {
        tables.put(table, tables.get(table) + row + "\n");
        return this;
    }

    /** The same with a whole table. */
    ExampleBook table(String table, String text) {
        tables.put(table, text);
        return this;
    }

    /** The review of the book, written into a folder first. */
    Review review(Path folder) throws IOException, UnreadableBookException {
        Path book = Files.createTempDirectory(folder, "book");
        for (Map.Entry<String, String> table : tables.entrySet()) {
            Files.writeString(book.resolve(table.getKey() + ".csv"), table.getValue());
        }
        return new ReviewBuilder(REFERENCE, "test").review(new BookReader().read(book));
    }

    /** All findings of the book with a code; what stands behind a space is not looked at. */
    List<Finding> findings(Path folder, String code) throws IOException, UnreadableBookException {
        return review(folder).findings().stream()
                .filter(f -> f.code().word().equals(code))
                .toList();
    }
}
