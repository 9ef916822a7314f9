package workuptally.judgement.rules.balance;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
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
import workuptally.tally.amounts.InstrumentUncertainty;
import workuptally.tally.amounts.Substances;

/** A net mass typed beside gross and tare that is not their difference. The difference counts; which of the three is wrong nobody can tell. */
public final class NetAgainstWeighing implements RunRule {
    private final Substances substances;

    /** With the reference data in force. */
    public NetAgainstWeighing(Substances substances) {
        this.substances = substances;
    }

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.NET_AGAINST_WEIGHING);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        InstrumentUncertainty uncertainty = new InstrumentUncertainty(book.limits());
        Set<String> lots = new HashSet<>();
        for (Lot lot : tally.run().lots()) {
            if (lots.add(lot.label())) {
                compare(
                        findings,
                        uncertainty,
                        "lot " + lot.label(),
                        List.of(
                                lot.weighing().grossGrams(),
                                lot.weighing().tareGrams(),
                                lot.weighing().netGrams()),
                        lot.row());
            }
        }
        for (Layer layer : tally.run().layers()) {
            compare(
                    findings,
                    uncertainty,
                    "layer " + layer.label(),
                    List.of(
                            layer.weighing().grossGrams(),
                            layer.weighing().tareGrams(),
                            layer.weighing().netGrams()),
                    layer.row());
        }
        return findings.list();
    }

    private void compare(
            FindingList findings, InstrumentUncertainty uncertainty, String what, List<Field> weighing, RowPlace row) {
        if (weighing.get(0) instanceof Entered gross
                && weighing.get(1) instanceof Entered tare
                && weighing.get(2) instanceof Entered net) {
            double difference = gross.value() - tare.value();
            double u = uncertainty.ofNetBesideWeighingGrams(gross, tare, net);
            double within = substances.value(Threshold.NET_SAME);
            if (Math.abs(net.value() - difference) > within * u) {
                findings.add(
                        FindingCode.NET_AGAINST_WEIGHING,
                        Severity.STOP,
                        row.at("Net"),
                        Phrase.of(
                                "{}: net {} is typed, gross less tare is {}",
                                what,
                                Figure.digits(net.value(), 4, "g"),
                                Figure.digits(difference, 4, "g")),
                        Phrase.of(
                                "the same within {}, {}u", Figure.digits(within * u, 1, "g"), Figure.brief(within, "")),
                        FindingList.PRACTICE,
                        Phrase.of(
                                "Find out which of the three was read wrongly and correct it; gross less tare counts meanwhile."));
            }
        }
    }
}
