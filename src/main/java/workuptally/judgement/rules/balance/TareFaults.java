package workuptally.judgement.rules.balance;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Book;
import workuptally.model.Field;
import workuptally.model.Field.Entered;
import workuptally.model.Figure;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Layer;
import workuptally.model.Lot;
import workuptally.model.Phrase;
import workuptally.model.RowPlace;
import workuptally.model.Severity;
import workuptally.reference.bench.Threshold;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.LotTally;
import workuptally.tally.amounts.Substances;
import workuptally.tally.suspects.TareRegister;

/**
 * A missing tare, a tare that the register of vessels contradicts, and a gross that is another vessel's tare. A register tare is offered as
 * an estimate and never used.
 */
public final class TareFaults implements RunRule {

    private static final int FINE_DECIMALS = 3;

    private final Substances substances;
    private final TareRegister vessels;

    /** With the reference data in force and the register of vessels of the book. */
    public TareFaults(Substances substances, TareRegister vessels) {
        this.substances = substances;
        this.vessels = vessels;
    }

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.TARE_MISSING, FindingCode.TARE_REGISTER_DIFFERS, FindingCode.GROSS_EQUALS_TARE);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        for (Weighing weighing : weighings(tally)) {
            if (weighing.gross().entered().isPresent() && weighing.tare().isBlank()) {
                missing(findings, tally, weighing);
            }
            weighing.tare().entered().ifPresent(tare -> register(findings, weighing, tare));
            grossIsTare(findings, tally, weighing);
        }
        return findings.list();
    }

    private record Weighing(String what, String vessel, Field gross, Field tare, RowPlace row, boolean isLot) {}

    private static List<Weighing> weighings(RunTally tally) {
        List<Weighing> weighings = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (Lot lot : tally.run().lots()) {
            if (!seen.add(lot.label())) {
                continue; // another product of the same weighing
            }
            weighings.add(new Weighing(
                    "lot " + lot.label(),
                    lot.vessel(),
                    lot.weighing().grossGrams(),
                    lot.weighing().tareGrams(),
                    lot.row(),
                    true));
        }
        for (Layer layer : tally.run().layers()) {
            weighings.add(new Weighing(
                    "layer " + layer.label(),
                    layer.vessel(),
                    layer.weighing().grossGrams(),
                    layer.weighing().tareGrams(),
                    layer.row(),
                    false));
        }
        return weighings;
    }

    private void missing(FindingList findings, RunTally tally, Weighing weighing) {
        List<Entered> known = vessels.of(weighing.vessel());
        double gross = weighing.gross().entered().orElseThrow().value();
        findings.add(
                FindingCode.TARE_MISSING,
                weighing.isLot() ? Severity.STOP : Severity.CHECK,
                weighing.row().at("Tare"),
                Phrase.of(
                        "{}: gross {} g, tare not recorded{}",
                        weighing.what(),
                        weighing.gross().entered().get().asTyped(),
                        weighing.isLot()
                                ? Phrase.of("; mass, yield and balance are not computed")
                                : Phrase.of("; its mass is not computed")),
                Phrase.of("the tare of vessel {}", weighing.vessel()),
                "net = gross − tare",
                known.isEmpty()
                        ? Phrase.of(
                                "Find the tare, or empty, clean, dry and weigh the vessel; no register entry can stand in.")
                        : estimate(tally, weighing, gross, known));
    }

    private static Phrase estimate(RunTally tally, Weighing weighing, double gross, List<Entered> known) {
        double tare = known.get(known.size() - 1).value();
        Optional<LotTally> lot = weighing.isLot()
                ? tally.lots().stream()
                        .filter(l -> l.lot().row() == weighing.row())
                        .findFirst()
                : Optional.empty();
        Phrase pure = lot.flatMap(LotTally::productFraction)
                .map(f -> Phrase.of(
                        ", {} of product{}",
                        Figure.decimals(f.value() * (gross - tare), 3, "g"),
                        percent(tally, lot.get(), f.value() * (gross - tare))))
                .orElse(Phrase.NONE);
        return Phrase.of(
                "Find the tare, or weigh the vessel clean and dry. Estimate only, never used: the register has {} g for"
                        + " {}, which would give net {}{}.",
                known.stream().map(Entered::asTyped).collect(Collectors.joining(" and ")),
                weighing.vessel(),
                Figure.decimals(gross - tare, 3, "g"),
                pure);
    }

    private static Phrase percent(RunTally tally, LotTally lot, double pureGrams) {
        return tally.theory()
                .flatMap(t ->
                        t.products().stream().filter(p -> p.isOf(lot.product())).findFirst())
                .map(p -> Phrase.of(
                        " ({} of {})",
                        Figure.decimals(100 * pureGrams / p.massGrams().value(), 1, "%"),
                        Figure.decimals(p.massGrams().value(), 3, "g")))
                .orElse(Phrase.NONE);
    }

    private void register(FindingList findings, Weighing weighing, Entered tare) {
        List<Entered> known = vessels.of(weighing.vessel());
        double nearest = known.stream()
                .mapToDouble(k -> Math.abs(k.value() - tare.value()))
                .min()
                .orElse(0);
        double tolerance = tare.decimals() >= FINE_DECIMALS
                ? substances.value(Threshold.TARE_FINE)
                : substances.value(Threshold.TARE_COARSE);
        if (nearest > tolerance) {
            findings.add(
                    FindingCode.TARE_REGISTER_DIFFERS,
                    Severity.CHECK,
                    tare.place(),
                    Phrase.of(
                            "{}: tare {} g for vessel {}, {} from the nearest entry of the register",
                            weighing.what(),
                            tare.asTyped(),
                            weighing.vessel(),
                            Figure.decimals(nearest, 3, "g")),
                    Phrase.of("within {} of the register", Figure.decimals(tolerance, 3, "g")),
                    FindingList.PRACTICE,
                    Phrase.of(
                            "Check that it is the same vessel, with or without stopper and stirring bar, and that it was clean and"
                                    + " dry."));
        }
    }

    private static void grossIsTare(FindingList findings, RunTally tally, Weighing weighing) {
        Optional<Entered> gross = weighing.gross().entered();
        if (gross.isEmpty()) {
            return;
        }
        for (Weighing other : weighings(tally)) {
            boolean same = other.tare()
                    .entered()
                    .filter(t -> t.value() == gross.get().value()
                            && t.decimals() == gross.get().decimals())
                    .isPresent();
            if (same) {
                findings.add(
                        FindingCode.GROSS_EQUALS_TARE,
                        Severity.CHECK,
                        gross.get().place(),
                        Phrase.of(
                                "{}: gross {} g equals the tare of {}",
                                weighing.what(),
                                gross.get().asTyped(),
                                other.what()),
                        Phrase.of("the mass of vessel and contents"),
                        FindingList.PRACTICE,
                        Phrase.of("Look up which of the two was weighed, and weigh again."));
            }
        }
    }
}
