package workuptally.judgement.rules.charges;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Book;
import workuptally.model.Charge;
import workuptally.model.Field.Entered;
import workuptally.model.Finding;
import workuptally.model.Severity;
import workuptally.reference.Reference;
import workuptally.tally.RunTally;

/** Goods that are never pure, charged at 100 % or without an assay. The usual contents are those of supplier labels, from memory. */
public final class AssayOfChargeForgotten implements RunRule {
    static final String CODE = "charge-assay-forgotten";

    private static final double PURE_PERCENT = 99.95;

    private static final List<Goods> LOW_ASSAY = List.of(
            new Goods("potassium hydroxide|\\bkoh\\b", "about 85 %"),
            new Goods("(conc\\w*\\.? ?(hydrochloric acid|hcl))|hydrochloric acid,? conc\\w*", "about 37 %"),
            new Goods("nitric acid|\\bhno3\\b", "68 to 70 %"),
            new Goods("formaldehyde|formalin", "about 37 % in water"),
            new Goods("hydrogen peroxide|\\bh2o2\\b", "about 30 % in water"),
            new Goods("chloroperoxybenzoic|chloroperbenzoic|mcpba|m-cpba", "77 % at most"),
            new Goods("hydrazine (mono)?hydrate", "50 to 64 % hydrazine"),
            new Goods("sodium hydride|\\bnah\\b", "60 % in oil"),
            new Goods(
                    "(aqueous|aq\\.?|conc\\w*\\.?) ammonia|ammonia,? (aqueous|aq|conc)|ammonium hydroxide",
                    "25 to 30 %"),
            new Goods("pd/c|pd on c|palladium on (activated )?c", "5 to 10 % palladium"));

    private record Goods(Pattern pattern, String usual) {
        Goods(String pattern, String usual) {
            this(Pattern.compile(pattern), usual);
        }

        boolean is(String material) {
            return pattern.matcher(material.toLowerCase(Locale.ROOT)).find();
        }
    }

    private final Reference reference;

    public AssayOfChargeForgotten(Reference reference) {
        this.reference = reference;
    }

    @Override
    public List<String> codes() {
        return List.of(CODE);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        for (Charge charge : tally.run().charges()) {
            Optional<Goods> goods =
                    LOW_ASSAY.stream().filter(g -> g.is(charge.material())).findFirst();
            boolean strengthInName = reference
                    .wash(charge.material())
                    .filter(w -> w.massPercent().orElse(0) > 0)
                    .isPresent();
            boolean solution = strengthInName
                    || charge.molarityMolesPerLitre().entered().isPresent()
                    || charge.titreMolesPerLitre().entered().isPresent();
            Optional<Entered> assay = charge.assayPercent().entered();
            boolean takenAsPure = assay.map(a -> a.value() >= PURE_PERCENT)
                    .orElse(charge.assayPercent().isBlank());
            if (goods.isPresent() && !solution && takenAsPure) {
                findings.add(
                        CODE,
                        Severity.CHECK,
                        charge.row().at("Assay"),
                        assay.map(a -> "read assay " + a.asTyped() + " % for ").orElse("no assay for ")
                                + charge.material() + "; it is counted as pure",
                        "usually " + goods.get().usual(),
                        "supplier labels, from memory",
                        "Enter the assay from the label of the bottle.");
            }
        }
        return findings.list();
    }
}
