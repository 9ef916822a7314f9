package workuptally.property;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import workuptally.measure.MeasuredValue;
import workuptally.model.Book;
import workuptally.reference.Reference;
import workuptally.tally.RunTally;
import workuptally.tally.RunTallying;
import workuptally.tally.amounts.Content;
import workuptally.tally.amounts.LotTally;
import workuptally.tally.amounts.ProductYield;
import workuptally.tally.amounts.Substances;
import workuptally.tally.balance.Closure;
import workuptally.tally.bench.Contact;
import workuptally.tally.bench.Reextraction;
import workuptally.tally.layers.LayerTally;

/** The figures of every run by name, to compare two readings of a book. */
final class RunFigures {
    private final Map<String, Double> figures = new TreeMap<>();

    private RunFigures() {}

    static Map<String, RunTally> tallies(Book book) throws java.io.IOException {
        RunTallying tallying = new RunTallying(book.limits(), new Substances(Reference.load()));
        Map<String, RunTally> tallies = new TreeMap<>();
        book.runs().forEach(run -> tallies.put(run.id(), tallying.tally(run)));
        return tallies;
    }

    /** What does not depend on how much was taken. */
    static Map<String, Double> percentages(Book book) throws java.io.IOException {
        RunFigures all = new RunFigures();
        tallies(book).values().forEach(all::percentages);
        return all.figures;
    }

    /** Percentages, their uncertainties, and masses and amounts. */
    static Map<String, Double> everything(Book book) throws java.io.IOException {
        RunFigures all = new RunFigures();
        for (RunTally tally : tallies(book).values()) {
            all.percentages(tally);
            all.amounts(tally);
        }
        return all.figures;
    }

    /** Everything but uncertainties and what is concluded from them. */
    static Map<String, Double> values(Book book) throws java.io.IOException {
        Map<String, Double> values = everything(book);
        values.keySet()
                .removeIf(name -> name.contains(" u of ") || name.contains(" U of ") || name.contains(" verdict on "));
        return values;
    }

    private void put(RunTally tally, String name, double value) {
        figures.put(tally.run().id() + " " + name, value);
    }

    private void put(RunTally tally, String name, Optional<MeasuredValue> value) {
        value.ifPresent(v -> put(tally, name, v.value()));
    }

    private void percentages(RunTally tally) {
        for (LotTally lot : tally.lots()) {
            put(tally, "over theory of " + lot.lot().label(), lot.overTheoryPercent());
        }
        for (ProductYield yield : tally.yields()) {
            put(tally, yield.stage() + " yield of " + yield.product().name(), Optional.of(yield.percent()));
        }
        for (Closure closure : tally.closures()) {
            put(tally, "closure on " + closure.skeleton(), Optional.of(closure.percent()));
        }
        for (LayerTally layer : tally.layers()) {
            for (Content content : layer.contents()) {
                if (content.percentOf().isPresent()) {
                    put(
                            tally,
                            content.substance() + " in " + layer.label(),
                            content.percentOf().getAsDouble());
                }
            }
        }
        for (Contact contact : tally.contacts()) {
            if (contact.funnelRecorded()) {
                put(tally, "fill at step " + contact.step().number() + "/" + contact.portion(), contact.fillPercent());
            }
        }
        for (Reextraction gain : tally.evidence().reextractions()) {
            put(
                    tally,
                    "gain of " + gain.layer() + " by " + gain.extractant().portions() + " at "
                            + gain.phSetting().pH(),
                    gain.gain().percentOfTheory());
        }
        tally.massBalance()
                .ifPresent(b -> b.gapPercentOfOrganic().ifPresent(g -> put(tally, "gap over organic solvent", g)));
    }

    private void amounts(RunTally tally) {
        tally.amounts().forEach(a -> put(tally, "amount of " + a.charge().material(), a.amountMillimoles()));
        tally.theory().stream()
                .flatMap(t -> t.products().stream())
                .forEach(p -> put(tally, "theory of " + p.product().name(), Optional.of(p.massGrams())));
        for (ProductYield yield : tally.yields()) {
            String name = yield.stage() + " yield of " + yield.product().name();
            put(tally, "u of " + name, yield.percent().standardUncertainty());
            put(tally, "conversion-adjusted " + name, yield.conversionAdjustedPercent());
            put(tally, "aliquot-corrected " + name, yield.aliquotCorrectedPercent());
        }
        for (Closure closure : tally.closures()) {
            put(tally, "U of closure on " + closure.skeleton(), closure.expandedUncertaintyPercent());
            put(tally, "verdict on " + closure.skeleton(), closure.verdict().ordinal());
        }
        for (LayerTally layer : tally.layers()) {
            put(tally, "mass of " + layer.label(), layer.massGrams());
            put(tally, "density of " + layer.label(), layer.densityGramsPerMillilitre());
        }
        tally.massBalance().ifPresent(b -> {
            put(tally, "mass in", b.inGrams().value());
            put(tally, "mass out", b.outGrams().value());
        });
        tally.solvents().forEach(s -> put(tally, "not found of " + s.solvent(), s.notFoundGrams()));
        tally.evidence()
                .routes()
                .forEach(r -> put(tally, r.way().word() + " to " + r.substance() + " in " + r.layer(), r.massGrams()));
    }
}
