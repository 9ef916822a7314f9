package workuptally.judgement;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import workuptally.reference.Reference;
import workuptally.reference.bench.BenchRule;
import workuptally.reference.solutions.Wash;
import workuptally.reference.substances.DryingAgent;
import workuptally.reference.substances.Liquid;
import workuptally.reference.substances.MaterialRow;
import workuptally.reference.substances.Solvent;
import workuptally.reference.tables.Basis;
import workuptally.reference.tables.Cited;
import workuptally.reference.tables.Source;
import workuptally.reference.waste.StreamRule;
import workuptally.reference.waste.WasteStream;

/** A reference row as a line of the basis. */
final class ReferenceRow {
    private ReferenceRow() {}

    static BasisRow of(Cited row, Reference reference) {
        return ofSubstance(row, reference)
                .or(() -> ofRule(row, reference))
                .orElseGet(() -> line(row.table() + " " + row.key(), "row used", "", row.sources(), row, reference));
    }

    private static Optional<BasisRow> ofSubstance(Cited row, Reference reference) {
        if (row instanceof Solvent solvent) {
            return Optional.of(line(
                    "density of " + solvent.name(),
                    number(OptionalDouble.of(solvent.density().gramsPerMillilitre())),
                    "g/mL at 20 °C",
                    solvent.density().sources(),
                    row,
                    reference));
        }
        if (row instanceof Liquid liquid) {
            return Optional.of(line(
                    "density of " + liquid.name(),
                    number(OptionalDouble.of(liquid.densityGramsPerMillilitre())),
                    String.format(Locale.ROOT, "g/mL at %.0f °C", liquid.celsius()),
                    liquid.sources(),
                    row,
                    reference));
        }
        if (row instanceof Wash wash) {
            return Optional.of(line(
                    "density of " + wash.name(),
                    number(wash.concentration().densityGramsPerMillilitre()),
                    "g/mL at 20 °C",
                    wash.sources(),
                    row,
                    reference));
        }
        if (row instanceof MaterialRow material) {
            return Optional.of(line(
                    "classes of " + material.names().name(),
                    String.join(", ", material.behaviour().classes()),
                    "",
                    material.sources(),
                    row,
                    reference));
        }
        if (row instanceof DryingAgent agent) {
            return Optional.of(line(
                    "water that " + agent.name() + " binds, up to "
                            + agent.uptake().hydrate() + "; not with " + agent.avoidWith(),
                    plain(agent.uptake().theoreticalGramsPerGram()),
                    "g/g",
                    agent.sources(),
                    row,
                    reference));
        }
        return Optional.empty();
    }

    private static Optional<BasisRow> ofRule(Cited row, Reference reference) {
        if (row instanceof BenchRule rule) {
            return Optional.of(line(
                    "bench rule: " + rule.name() + ", " + rule.meaning(),
                    plain(rule.value()),
                    rule.unit(),
                    rule.sources(),
                    row,
                    reference));
        }
        if (row instanceof StreamRule rule) {
            return Optional.of(
                    line("rule for streams: " + rule.key(), rule.stream(), "", rule.sources(), row, reference));
        }
        if (row instanceof WasteStream stream) {
            return Optional.of(
                    line("waste stream " + stream.name(), stream.rule(), "", stream.sources(), row, reference));
        }
        return Optional.empty();
    }

    private static BasisRow line(
            String name, String value, String unit, List<String> sources, Cited row, Reference reference) {
        String cited = sources.stream()
                .map(key -> reference.sources().find(key).map(Source::citation).orElse(key))
                .collect(Collectors.joining("; "));
        boolean local = row.basis() == Basis.LOCAL;
        return new BasisRow(
                BasisRow.Kind.REFERENCE,
                local ? "local override, " + name : name,
                value,
                unit,
                cited + " (" + row.basis().word() + ")");
    }

    private static String plain(double value) {
        return new BigDecimal(value)
                .round(new MathContext(4))
                .stripTrailingZeros()
                .toPlainString();
    }

    private static String number(OptionalDouble value) {
        return value.isPresent() ? String.format(Locale.ROOT, "%.4f", value.getAsDouble()) : "";
    }
}
