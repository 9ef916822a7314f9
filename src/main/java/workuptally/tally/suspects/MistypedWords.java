package workuptally.tally.suspects;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.model.Amount;
import workuptally.model.Charge;
import workuptally.model.Dimension;
import workuptally.model.Field.Entered;
import workuptally.model.Layer;
import workuptally.model.Lot;
import workuptally.model.Run;
import workuptally.tally.RunBalances;
import workuptally.tally.layers.LayerIdentity;
import workuptally.tally.layers.LayerTally;

/** What may have been meant by the words of a row instead: another unit, labels the other way round, a layer that is no second one. */
final class MistypedWords {
    private final RunBalances balances;

    MistypedWords(RunBalances balances) {
        this.balances = balances;
    }

    List<Hypothesis> list() {
        List<Hypothesis> all = new ArrayList<>();
        Run run = balances.run();
        run.charges().forEach(c -> unit(c).ifPresent(all::add));
        labels(all);
        for (int i = 0; i < run.charges().size(); i++) {
            for (int j = 0; j < i; j++) {
                twice(run.charges().get(j), run.charges().get(i)).ifPresent(all::add);
            }
        }
        for (int i = 0; i < run.layers().size(); i++) {
            for (int j = 0; j < i; j++) {
                twice(run.layers().get(j), run.layers().get(i)).ifPresent(all::add);
            }
        }
        for (int i = 0; i < run.lots().size(); i++) {
            for (int j = 0; j < run.lots().size(); j++) {
                twice(run.lots().get(j), run.lots().get(i), j < i).ifPresent(all::add);
            }
        }
        balances.layers().stream()
                .filter(l -> l.counts() && !l.terminal() && l.entry().isPresent())
                .forEach(l -> all.add(notThere(l)));
        return all;
    }

    /** A liquid's amount in mL that was typed as g, or the other way round. */
    private static Optional<Hypothesis> unit(Charge charge) {
        Optional<Amount> actual = charge.quantity().actual();
        OptionalDouble density = charge.goods().densityGramsPerMillilitre().entered().stream()
                .mapToDouble(Entered::value)
                .findFirst();
        if (actual.isEmpty() || actual.get().value().entered().isEmpty() || density.isEmpty()) {
            return Optional.empty();
        }
        Dimension typed = actual.get().dimension();
        if (typed != Dimension.MASS && typed != Dimension.VOLUME) {
            return Optional.empty();
        }
        Dimension meant = typed == Dimension.MASS ? Dimension.VOLUME : Dimension.MASS;
        String number = actual.get().value().entered().get().asTyped();
        return Optional.of(new Hypothesis(
                Changes.ofUnit(charge.row(), meant),
                UsualSlip.MILLILITRES_FOR_GRAMS,
                List.of(charge.row().at("Actual unit"), charge.row().at(EntryHeadings.ACTUAL_AMOUNT)),
                charge.row(),
                "unit of " + charge.material(),
                number + " " + actual.get().unitAsTyped(),
                number + " " + otherUnit(actual.get().unitAsTyped(), meant)));
    }

    private static String otherUnit(String typed, Dimension meant) {
        String small = typed.toLowerCase(Locale.ROOT);
        return switch (small) {
            case "mg" -> "µL";
            case "kg" -> "L";
            case "µl" -> "mg";
            case "l" -> "kg";
            default -> meant.unit();
        };
    }

    private void labels(List<Hypothesis> all) {
        for (LayerIdentity one : balances.identities()) {
            for (LayerIdentity other : balances.identities()) {
                if (one.step() == other.step()
                        && one.recorded() == Layer.Phase.ORGANIC
                        && other.recorded() == Layer.Phase.AQUEOUS) {
                    Layer first = balances.run().layer(one.label()).orElseThrow();
                    Layer second = balances.run().layer(other.label()).orElseThrow();
                    all.add(new Hypothesis(
                            Changes.ofLabels(one.label(), other.label()),
                            UsualSlip.LABELS_SWAPPED,
                            List.of(first.row().at("Layer"), second.row().at("Layer")),
                            first.row(),
                            "labels of layers " + one.label() + " and " + other.label(),
                            one.label() + " organic and " + other.label() + " aqueous",
                            one.label() + " aqueous and " + other.label() + " organic"));
                }
            }
        }
    }

    /** Two rows of one portion: the same weighing, or the same net mass and volume. */
    private static Optional<Hypothesis> twice(Layer first, Layer second) {
        boolean weighing = same(first.weighing().grossGrams(), second.weighing().grossGrams())
                && same(first.weighing().tareGrams(), second.weighing().tareGrams());
        boolean netAndVolume =
                same(first.weighing().netGrams(), second.weighing().netGrams())
                        && same(first.volumeMillilitres(), second.volumeMillilitres());
        return weighing || netAndVolume
                ? Optional.of(new Hypothesis(
                        Changes.without(second.label()),
                        UsualSlip.COUNTED_TWICE,
                        List.of(second.row().at("Layer"), first.row().at("Layer")),
                        second.row(),
                        "layer " + second.label(),
                        second.label(),
                        "the same portion as " + first.label()))
                : Optional.empty();
    }

    /** Two rows of one charge: the same material and amount, to the last digit. */
    private static Optional<Hypothesis> twice(Charge first, Charge second) {
        boolean alike = first.isOf(second.material())
                && first.quantity().actual().isPresent()
                && second.quantity().actual().isPresent()
                && first.quantity().actual().get().dimension()
                        == second.quantity().actual().get().dimension()
                && same(
                        first.quantity().actual().get().value(),
                        second.quantity().actual().get().value());
        return alike
                ? Optional.of(new Hypothesis(
                        Changes.withoutCharge(second.row()),
                        UsualSlip.COUNTED_TWICE,
                        List.of(second.row().at("Material"), first.row().at("Material")),
                        second.row(),
                        second.material() + " a second time",
                        second.material(),
                        "the same charge as line " + first.row().row()))
                : Optional.empty();
    }

    /** A crude counted beside what was purified from it, or two lots of one weighing. */
    private static Optional<Hypothesis> twice(Lot kept, Lot leftOut, boolean isFirst) {
        boolean crude = kept.stage().filter(s -> s == Lot.Stage.PURIFIED).isPresent()
                && leftOut.stage().filter(s -> s == Lot.Stage.CRUDE).isPresent();
        boolean weighing = isFirst
                && (same(kept.weighing().grossGrams(), leftOut.weighing().grossGrams())
                                && same(
                                        kept.weighing().tareGrams(),
                                        leftOut.weighing().tareGrams())
                        || same(kept.weighing().netGrams(), leftOut.weighing().netGrams()));
        return !kept.label().equals(leftOut.label()) && (crude || weighing)
                ? Optional.of(new Hypothesis(
                        Changes.withoutLot(leftOut.label()),
                        UsualSlip.COUNTED_TWICE,
                        List.of(leftOut.row().at("Lot"), kept.row().at("Lot")),
                        leftOut.row(),
                        "lot " + leftOut.label(),
                        leftOut.label(),
                        "the same material as " + kept.label()))
                : Optional.empty();
    }

    private static boolean same(workuptally.model.Field one, workuptally.model.Field other) {
        return one instanceof Entered a
                && other instanceof Entered b
                && a.value() == b.value()
                && a.asTyped().equals(b.asTyped());
    }

    /** A layer that a step consumed and whose row says that it is still there. */
    private static Hypothesis notThere(LayerTally layer) {
        Layer entry = layer.entry().orElseThrow();
        return new Hypothesis(
                Changes.without(layer.label()),
                UsualSlip.COUNTED_TWICE,
                List.of(entry.row().at("Status"), entry.row().at("Layer")),
                entry.row(),
                "status of layer " + layer.label(),
                entry.custody().status().map(Layer.Status::word).orElse(""),
                Layer.Status.CONSUMED.word());
    }
}
