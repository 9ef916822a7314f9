package workuptally.tally.suspects;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import workuptally.chemistry.Contraction;
import workuptally.measure.MeasuredValue;
import workuptally.model.Book;
import workuptally.model.Field.Entered;
import workuptally.model.Run;
import workuptally.model.Transfer;
import workuptally.reference.bench.Threshold;
import workuptally.tally.RunBalances;
import workuptally.tally.amounts.Substances;
import workuptally.tally.balance.Closure;
import workuptally.tally.balance.MassBalance;
import workuptally.tally.bench.ContactMixture;
import workuptally.tally.layers.LayerIdentity;
import workuptally.tally.layers.LayerTally;

/**
 * Everything in which the entries of a run must agree: units found and charged of each skeleton, total mass, mass against volume and
 * density, volumes into and out of a contact, product into and out of a layer, a layer's mass against what was entered for its transfer, and what {@link EntryChecks} adds.
 */
final class CheckAccount {
    /** More transfers than anybody makes of the layers of one run (common practice). */
    private static final int MOST_TRANSFERS = 60;

    /** A side on which nothing is too far. */
    private static final double ANYTHING = 1e9;

    private final Substances substances;
    private final EntryChecks entries;
    private final Map<String, List<Transfer>> transfers;

    /**
     * The checks of a run.
     *
     * @param transfers transfers of layers of all runs, by run
     */
    CheckAccount(Map<String, List<Transfer>> transfers, Substances substances, EntryChecks entries) {
        this.substances = substances;
        this.entries = entries;
        this.transfers = transfers;
    }

    /** The transfers of layers that a book has, by run; put in order once for all its runs. */
    static Map<String, List<Transfer>> transfers(Book book) {
        return book.transfers().stream()
                .filter(t -> !t.layers().isEmpty())
                .collect(Collectors.groupingBy(Transfer::run));
    }

    /** Transfers of layers of a run; none of a run with more than anybody makes, where trying each against all would take the time of the review. */
    List<Transfer> transfersOf(Run run) {
        List<Transfer> all = transfers.getOrDefault(run.id(), List.of());
        return all.size() > MOST_TRANSFERS ? List.of() : all;
    }

    /**
     * The checks of a run by their names, in a fixed order; those of which a part is missing are not there.
     *
     * @param changes what is read otherwise: the balances have it already, the transfers not
     */
    Map<String, Check> of(RunBalances balances, Changes changes) {
        List<Check> all = new ArrayList<>();
        balances.closures().forEach(c -> all.add(closure(c)));
        balances.massBalance().ifPresent(m -> all.add(totalMass(m)));
        balances.identities().forEach(i -> density(i, balances).ifPresent(all::add));
        double solutes = solutesGrams(balances);
        for (ContactMixture contact : balances.contacts()) {
            volumes(contact).ifPresent(all::add);
            ofPhase(contact.step().given().aqueous(), contact.aqueousGrams(), solutes, balances)
                    .ifPresent(all::add);
            ofPhase(contact.step().given().organic(), contact.organicGrams(), solutes, balances)
                    .ifPresent(all::add);
        }
        all.addAll(new ThroughChecks(balances, substances).list());
        all.addAll(entries.of(balances.run()));
        all.addAll(transferred(transfersOf(balances.run()), changes, balances.layers()));
        return byName(all);
    }

    /** Checks by their names, the first of each, in order; without those that no number came of. */
    static Map<String, Check> byName(List<Check> all) {
        Map<String, Check> checks = new LinkedHashMap<>();
        all.stream().filter(c -> Double.isFinite(c.residual())).forEach(c -> checks.putIfAbsent(c.name(), c));
        return checks;
    }

    private Check closure(Closure closure) {
        double charged = closure.chargedMillimoles().value();
        // a portion that nobody assayed can hold all that is missing, so that a gap says nothing of the entries
        boolean unassayed = closure.candidates().stream().anyMatch(Closure.Candidate::keptWithoutAssay);
        double allowed = unassayed
                ? ANYTHING
                : Math.min(
                        ANYTHING,
                        Math.max(substances.value(Threshold.SUSPECT_TRANSFER_LOSS), closure.placesAtMostPercent()));
        return new Check(
                "closure on " + closure.skeleton(),
                charged * (closure.percent().value() / 100 - 1),
                -allowed / 100 * charged,
                0,
                Math.max(1e-9, closure.percent().standardUncertainty() / 100 * charged),
                charged);
    }

    private Check totalMass(MassBalance balance) {
        MeasuredValue gap = balance.gapGrams();
        return new Check(
                "total mass",
                gap.value(),
                0,
                balance.complete()
                        ? balance.gasGrams()
                                + Math.max(
                                        balance.evaporationAllowanceGrams(),
                                        substances.value(Threshold.SUSPECT_EVAPORATED) * balance.organicSolventGrams())
                        : ANYTHING,
                Math.max(
                        1e-9,
                        Math.hypot(
                                gap.standardUncertainty(),
                                substances.value(Threshold.SUSPECT_MASS_OPEN)
                                        * balance.inGrams().value())));
    }

    private Optional<Check> density(LayerIdentity identity, RunBalances balances) {
        LayerTally layer = balances.layers().stream()
                .filter(l -> l.label().equals(identity.label()))
                .findFirst()
                .orElseThrow();
        if (identity.densityGramsPerMillilitre().isEmpty()) {
            return Optional.empty();
        }
        double millilitres = layer.volumeMillilitres().orElseThrow().value();
        double grams = layer.massGrams().orElseThrow().value();
        double tolerance = substances.value(Threshold.SMALL_VOLUME_TOLERANCE);
        LayerIdentity.Expected expected = identity.expectedAsRecorded();
        double low = expected.lowGramsPerMillilitre() * (1 - tolerance);
        double high = expected.highGramsPerMillilitre() * (1 + tolerance);
        double middle = (low + high) / 2;
        return Optional.of(new Check(
                "density of layer " + identity.label(),
                grams - middle * millilitres,
                (low - middle) * millilitres,
                (high - middle) * millilitres,
                // of the residual, not of the quotient: a volume that is far too small says no less for that
                Math.hypot(
                        layer.massGrams().orElseThrow().standardUncertainty(),
                        middle * layer.volumeMillilitres().orElseThrow().standardUncertainty()),
                middle * millilitres));
    }

    /** Charges that are no solvent, without the solvent of those in solution, g: nobody says in which phase they are. */
    private double solutesGrams(RunBalances balances) {
        double all = balances.massBalance().stream()
                .flatMap(m -> m.lines().stream())
                .filter(l -> l.side() == MassBalance.Side.IN
                        && l.category() == MassBalance.Category.CHARGE
                        && !substances.isOrganicSolvent(l.label()))
                .mapToDouble(l -> l.grams().value())
                .sum();
        double solvent =
                balances.massBalance().map(MassBalance::solutionSolventGrams).orElse(0.0);
        return Math.max(0, all - solvent);
    }

    /** The one layer of a phase against what the contact must have put there. */
    private Optional<Check> ofPhase(List<String> labels, double grams, double solutes, RunBalances balances) {
        if (labels.size() != 1 || grams <= 0) {
            return Optional.empty();
        }
        double open = substances.value(Threshold.SUSPECT_PHASE_OPEN);
        return balances.layers().stream()
                .filter(l -> l.label().equals(labels.get(0)) && l.entry().isPresent())
                .findFirst()
                .flatMap(LayerTally::massGrams)
                .map(mass -> new Check(
                        "mass of layer " + labels.get(0) + " against what went in",
                        mass.value() - grams,
                        -open * grams,
                        open * grams + solutes,
                        1 + open / 2 * grams,
                        grams));
    }

    private Optional<Check> volumes(ContactMixture contact) {
        if (contact.outMillilitres().isEmpty() || contact.inMillilitres() <= 0) {
            return Optional.empty();
        }
        double in = contact.inMillilitres();
        return Optional.of(new Check(
                "volumes of step " + contact.step().number(),
                contact.outMillilitres().getAsDouble() - in,
                -Contraction.MOST_SHRINKAGE_PERCENT / 100 * in,
                Contraction.MOST_GROWTH_PERCENT / 100 * in,
                1 + substances.value(Threshold.SUSPECT_VOLUME_OPEN) * in));
    }

    /**
     * What is transferred of some layers, all transfers of them together, against their mass: no more than there is, and less only where a
     * part was meant to stay.
     */
    private List<Check> transferred(List<Transfer> all, Changes changes, List<LayerTally> layers) {
        List<Check> checks = new ArrayList<>();
        Set<List<String>> seen = new LinkedHashSet<>();
        for (Transfer transfer : all) {
            List<LayerTally> named = layers.stream()
                    .filter(l -> transfer.layers().contains(l.label()))
                    .toList();
            if (!seen.add(transfer.layers())
                    || named.size() != transfer.layers().size()
                    || named.stream().anyMatch(l -> l.massGrams().isEmpty())) {
                continue;
            }
            List<Transfer> together = all.stream()
                    .filter(t -> transfer.layers().containsAll(t.layers()))
                    .toList();
            List<Entered> amounts = together.stream()
                    .flatMap(t -> changes.at(t.row(), EntryHeadings.AMOUNT, t.massGrams()).entered().stream())
                    .filter(m -> m.value() > 0)
                    .toList();
            if (amounts.size() == together.size()) {
                MeasuredValue mass = named.stream()
                        .flatMap(l -> l.massGrams().stream())
                        .reduce(MeasuredValue::plus)
                        .orElseThrow();
                checks.add(transferred(together, amounts, mass));
            }
        }
        return checks;
    }

    private Check transferred(List<Transfer> transfers, List<Entered> amounts, MeasuredValue mass) {
        double poured = amounts.stream().mapToDouble(Entered::value).sum();
        double allowed = Math.max(
                substances.value(Threshold.PROPOSAL_AMOUNT_LEAST),
                substances.value(Threshold.PROPOSAL_AMOUNT_RELATIVE) * mass.value());
        // all of it, or a slip of all of it; anything else may be a part that was meant to be one
        boolean isWhole = Math.abs(mass.value() - poured) <= allowed
                || amounts.size() == 1 && new TypedNumber(amounts.get(0)).isSlipOf(mass.value());
        return new Check(
                "mass of layer " + String.join("+", transfers.get(0).layers()) + " against transfer "
                        + transfers.stream().map(Transfer::id).collect(Collectors.joining("+")),
                mass.value() - poured,
                -allowed,
                isWhole ? allowed : ANYTHING,
                Math.max(allowed, mass.standardUncertainty()),
                mass.value());
    }
}
