package workuptally.judgement.rules.charges;

import java.util.List;
import java.util.Map;
import workuptally.chemistry.Formula;
import workuptally.chemistry.IllegalFormulaException;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Book;
import workuptally.model.Charge;
import workuptally.model.Figure;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Phrase;
import workuptally.model.Product;
import workuptally.model.RowPlace;
import workuptally.model.Severity;
import workuptally.tally.RunTally;

/**
 * A formula that cannot be read, and one with more hydrogen than its other atoms can bind: {@code C13H120}, where a zero was typed for
 * oxygen. A molar mass beside it is used in its place, but then nothing checks that it is of the same form.
 */
public final class FormulaDoubtful implements RunRule {
    /** Bonds of an atom to hydrogen at most, by far: 3 for nitrogen, ammonium and water of crystallisation included for the rest. */
    private static final int MOST_BONDS_OF_OTHERS = 3;

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.FORMULA_DOUBTFUL);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        for (Charge charge : tally.run().charges()) {
            judge(findings, charge.material(), charge.formula(), charge.row());
        }
        for (Product product : tally.run().products()) {
            judge(findings, product.name(), product.formula(), product.row());
        }
        return findings.list();
    }

    private void judge(FindingList findings, String name, String formula, RowPlace row) {
        if (formula.isBlank()) {
            return;
        }
        try {
            Formula read = Formula.parse(formula);
            double most = mostHydrogen(read.composition());
            if (read.count("H") > most) {
                add(
                        findings,
                        row,
                        Phrase.of(
                                "formula '{}' of {} has {} hydrogen atoms, {} at most can be bound",
                                formula,
                                name,
                                Figure.decimals(read.count("H"), 0, ""),
                                Figure.decimals(most, 0, "")),
                        Phrase.of("O for oxygen, where 0 was typed"));
            }
        } catch (IllegalFormulaException unreadable) {
            add(
                    findings,
                    row,
                    Phrase.of("read '{}' as the formula of {}, whose atoms cannot be counted", formula, name),
                    Phrase.of(
                            "a formula such as C13H12O, with O for oxygen and Cl for chlorine; a salt or hydrate behind a dot: C9H13N·HCl"));
        }
    }

    private static void add(FindingList findings, RowPlace row, Phrase seen, Phrase expected) {
        findings.add(
                FindingCode.FORMULA_DOUBTFUL,
                Severity.CHECK,
                row.at("Formula"),
                seen,
                expected,
                FindingList.PRACTICE,
                Phrase.of(
                        "Correct the formula, or clear it and enter the molar mass of the form weighed; then run again."));
    }

    /** 2 C + 2, and what the other atoms can hold; unlimited without carbon. */
    private static double mostHydrogen(Map<String, Double> atoms) {
        double carbon = atoms.getOrDefault("C", 0.0);
        double others = atoms.entrySet().stream()
                .filter(atom -> !atom.getKey().equals("C") && !atom.getKey().equals("H"))
                .mapToDouble(Map.Entry::getValue)
                .sum();
        return carbon > 0 ? 2 * carbon + 2 + MOST_BONDS_OF_OTHERS * others : Double.POSITIVE_INFINITY;
    }
}
