package workuptally.judgement.rules.balance;

import java.util.ArrayList;
import java.util.Comparator;
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
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Layer;
import workuptally.model.Lot;
import workuptally.model.RowPlace;
import workuptally.model.Severity;
import workuptally.model.VesselTare;
import workuptally.reference.Threshold;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.LotTally;
import workuptally.tally.amounts.Substances;

/**
 * A missing tare, a tare that the register of vessels contradicts, and a gross that is another vessel's tare. A register tare is offered as
 * an estimate and never used.
 */
public final class TareFaults implements RunRule {

    private static final int FINE_DECIMALS = 3;

    private final Substances substances;

    /** With the reference data in force. */
    public TareFaults(Substances substances) {
        this.substances = substances;
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
                missing(findings, tally, book, weighing);
            }
            weighing.tare().entered().ifPresent(tare -> register(findings, book, weighing, tare));
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
                    "lot " + lot.label(), lot.vessel(), lot.grossGrams(), lot.tareGrams(), lot.row(), true));
        }
        for (Layer layer : tally.run().layers()) {
            weighings.add(new Weighing(
                    "layer " + layer.label(),
                    layer.vessel(),
                    layer.grossGrams(),
                    layer.tareGrams(),
                    layer.row(),
                    false));
        }
        return weighings;
    }

    private static void missing(FindingList findings, RunTally tally, Book book, Weighing weighing) {
        List<Entered> known = register(book, weighing.vessel());
        double gross = weighing.gross().entered().orElseThrow().value();
        findings.add(
                FindingCode.TARE_MISSING,
                weighing.isLot() ? Severity.STOP : Severity.CHECK,
                weighing.row().at("Tare"),
                weighing.what() + ": gross " + weighing.gross().entered().get().asTyped() + " g, tare not recorded"
                        + (weighing.isLot()
                                ? "; mass, yield and balance are not computed"
                                : "; its mass is not computed"),
                "the tare of vessel " + weighing.vessel(),
                "net = gross − tare",
                known.isEmpty()
                        ? "Find the tare, or empty, clean, dry and weigh the vessel; no register entry can stand in."
                        : estimate(tally, weighing, gross, known));
    }

    private static String estimate(RunTally tally, Weighing weighing, double gross, List<Entered> known) {
        double tare = known.get(known.size() - 1).value();
        Optional<LotTally> lot = weighing.isLot()
                ? tally.lots().stream()
                        .filter(l -> weighing.what().equals("lot " + l.lot().label()))
                        .findFirst()
                : Optional.empty();
        String pure = lot.flatMap(LotTally::productFraction)
                .map(f -> FindingList.say(
                        ", %.3f g of product%s",
                        f.value() * (gross - tare), percent(tally, lot.get(), f.value() * (gross - tare))))
                .orElse("");
        return "Find the tare, or weigh the vessel clean and dry. Estimate only, never used: the register has "
                + known.stream().map(Entered::asTyped).collect(Collectors.joining(" and "))
                + FindingList.say(" g for %s, which would give net %.3f g%s.", weighing.vessel(), gross - tare, pure);
    }

    private static String percent(RunTally tally, LotTally lot, double pureGrams) {
        return tally.theory()
                .flatMap(t -> t.products().stream()
                        .filter(p -> p.product().name().equalsIgnoreCase(lot.product()))
                        .findFirst())
                .map(p -> FindingList.say(
                        " (%.1f %% of %.3f g)",
                        100 * pureGrams / p.massGrams().value(), p.massGrams().value()))
                .orElse("");
    }

    /** Tares of a vessel, the latest last; undated ones first. */
    private static List<Entered> register(Book book, String vessel) {
        return book.vesselTares().stream()
                .filter(v -> !vessel.isBlank() && v.vessel().equalsIgnoreCase(vessel))
                .filter(v -> v.tareGrams().entered().isPresent())
                .sorted(Comparator.comparing(v -> v.date().orElse(java.time.LocalDate.MIN)))
                .map(VesselTare::tareGrams)
                .map(t -> t.entered().orElseThrow())
                .toList();
    }

    private void register(FindingList findings, Book book, Weighing weighing, Entered tare) {
        List<Entered> known = register(book, weighing.vessel());
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
                    weighing.what() + ": tare " + tare.asTyped() + " g for vessel " + weighing.vessel()
                            + FindingList.say(", %.3f g from the nearest entry of the register", nearest),
                    FindingList.say("within %.3f g of the register", tolerance),
                    FindingList.PRACTICE,
                    "Check that it is the same vessel, with or without stopper and stirring bar, and that it was clean and dry.");
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
                        weighing.what() + ": gross " + gross.get().asTyped() + " g equals the tare of " + other.what(),
                        "the mass of vessel and contents",
                        FindingList.PRACTICE,
                        "Look up which of the two was weighed, and weigh again.");
            }
        }
    }
}
