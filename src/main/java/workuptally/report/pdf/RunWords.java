package workuptally.report.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.StringJoiner;
import workuptally.judgement.RunReview;
import workuptally.model.Product;
import workuptally.model.Run;
import workuptally.report.pdf.layout.Look;
import workuptally.report.view.wording.ReadableNumbers;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.LotTally;
import workuptally.tally.amounts.ProductYield;
import workuptally.tally.amounts.Theory;
import workuptally.tally.amounts.YieldBasis;
import workuptally.tally.balance.Closure;

/** Results of one run as short texts, the same on page one and in the run's own block. */
final class RunWords {
    private static final String NOTHING = "–";

    private final Look look;
    private final RunTally tally;
    private final double coverageFactor;

    RunWords(Look look, RunReview run, double coverageFactor) {
        this.look = look;
        this.tally = run.tally();
        this.coverageFactor = coverageFactor;
    }

    static String status(Run run) {
        return switch (run.status()) {
            case PLANNED -> "planned";
            case IN_WORKUP -> "in workup";
            case ISOLATED -> "isolated";
            case FAILED -> "failed";
        };
    }

    /** The balance that is furthest from closing: what is over first, then open, then what cannot decide. */
    Optional<Closure> worstClosure() {
        return Closure.worst(tally.closures());
    }

    /** A line per product and stage of yield; at least one line. */
    List<ProductLine> productLines() {
        List<ProductLine> lines = new ArrayList<>();
        for (Product product : tally.run().products()) {
            List<ProductYield> yields = tally.yields().stream()
                    .filter(y -> y.product().name().equals(product.name()) && y.basis() != YieldBasis.NONE)
                    .toList();
            if (yields.isEmpty() && (product.wanted() || theory(product).isPresent())) {
                lines.add(line(product, Optional.empty()));
            }
            yields.forEach(y -> lines.add(line(product, Optional.of(y))));
        }
        if (lines.isEmpty()) {
            lines.add(new ProductLine(
                    tally.run().head().reaction(),
                    NOTHING,
                    NOTHING,
                    new ReadableNumbers.Pair(NOTHING, ""),
                    Optional.empty(),
                    OptionalDouble.empty()));
        }
        return lines;
    }

    private ProductLine line(Product product, Optional<ProductYield> found) {
        Optional<Theory.ProductTheory> theory = theory(product);
        boolean purified =
                found.map(y -> y.stage() == ProductYield.Stage.PURIFIED).orElse(false);
        boolean beside = found.map(y -> !y.endsWorkup()).orElse(false);
        String name = product.name() + (product.wanted() ? "" : " (tracked)") + (purified ? ", purified" : "");
        if (found.map(y -> y.percentOf() == ProductYield.PercentOf.CHARGED).orElse(false)) {
            name += ", % of charged";
        }
        return new ProductLine(
                name,
                theory.map(t -> look.figures()
                                .pair(t.massGrams(), coverageFactor)
                                .value())
                        .orElse(NOTHING),
                beside ? "" : crudeOverTheory(product),
                found.map(this::yield).orElse(new ReadableNumbers.Pair(NOTHING, "")),
                found,
                beside
                        ? OptionalDouble.empty()
                        : product.plannedYieldPercent()
                                .entered()
                                .map(e -> OptionalDouble.of(e.value()))
                                .orElse(OptionalDouble.empty()));
    }

    ReadableNumbers.Pair yield(ProductYield found) {
        ReadableNumbers.Pair pair = look.figures().pair(found.percent(), coverageFactor);
        return found.basis().isUpperBound() ? new ReadableNumbers.Pair("≤ " + pair.value(), "") : pair;
    }

    private Optional<Theory.ProductTheory> theory(Product product) {
        return tally.theory().stream()
                .flatMap(t -> t.products().stream())
                .filter(t -> t.product().name().equals(product.name()))
                .findFirst();
    }

    private String crudeOverTheory(Product product) {
        StringJoiner text = new StringJoiner("\n");
        text.setEmptyValue(NOTHING);
        for (LotTally lot : tally.lots()) {
            if (lot.isCrude() && lot.isOf(product.name())) {
                lot.overTheoryPercent()
                        .ifPresent(p ->
                                text.add(look.figures().pair(p, coverageFactor).value()));
            }
        }
        return text.toString();
    }

    /**
     * A product on one line.
     *
     * @param name product, with what sets the line apart
     * @param theory theory, g
     * @param crudeOverTheory crude over theory, %; a line per lot
     * @param yield yield and U, %
     * @param found the yield itself, if there is one
     * @param plannedPercent planned yield, %
     */
    record ProductLine(
            String name,
            String theory,
            String crudeOverTheory,
            ReadableNumbers.Pair yield,
            Optional<ProductYield> found,
            OptionalDouble plannedPercent) {}
}
