package workuptally.judgement.containers;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import workuptally.chemistry.Formula;
import workuptally.reference.Reference;
import workuptally.reference.tables.Source;
import workuptally.reference.waste.RegulatoryLimit;
import workuptally.reference.waste.WasteStream;
import workuptally.tally.amounts.Substances;
import workuptally.tally.containers.ContainerState;

/** Picks the limits that speak about a container: where waste gathers, corrosive water, flammable liquids, and substances by name. */
final class RegulatoryFactChoice {

    private final Reference reference;
    private final Substances substances;

    RegulatoryFactChoice(Substances substances) {
        this.reference = substances.reference();
        this.substances = substances;
    }

    List<RegulatoryFact> of(Optional<WasteStream> stream, ContainerState state) {
        List<RegulatoryFact> facts = new ArrayList<>();
        stream.flatMap(this::codes).ifPresent(facts::add);
        reference.regulatoryLimits().stream()
                .filter(l ->
                        l.isAbout(stream) || state.grams().keySet().stream().anyMatch(name -> isOf(l, name)))
                .map(l -> new RegulatoryFact(
                        l.key(), text(l, state), String.join("; ", l.sources()), citation(l.sources())))
                .forEach(facts::add);
        return List.copyOf(facts);
    }

    /** The codes that the person who determines the waste may need to look up, and what the stream keeps out. */
    private Optional<RegulatoryFact> codes(WasteStream stream) {
        List<String> codes = new ArrayList<>();
        stream.europeanCode()
                .ifPresent(code -> codes.add("European List of Waste " + code
                        + stream.europeanText().map(text -> " (" + text + ")").orElse("")));
        stream.usCodes().ifPresent(code -> codes.add("US " + code));
        stream.keepOut().ifPresent(out -> codes.add("commonly kept out: " + out));
        return codes.isEmpty()
                ? Optional.empty()
                : Optional.of(new RegulatoryFact(
                        stream.key(),
                        "Entries to look up for " + stream.name() + ": " + String.join("; ", codes),
                        String.join("; ", stream.sources()),
                        citation(stream.sources())));
    }

    /** True where contents are one of the substances of a limit, or hold its element by the formula of their solute. */
    private boolean isOf(RegulatoryLimit limit, String name) {
        Set<String> elements = substances.solute(name).stream()
                .flatMap(solute -> elements(solute.formula()).stream())
                .collect(Collectors.toSet());
        return limit.substances().stream()
                .anyMatch(substance -> substance.equalsIgnoreCase(name) || elements.contains(substance));
    }

    private static Set<String> elements(String formula) {
        return Formula.in(formula).map(f -> f.composition().keySet()).orElse(Set.of());
    }

    private String citation(List<String> sources) {
        return sources.stream()
                .map(key -> reference.sources().find(key).map(Source::citation).orElse(key))
                .collect(Collectors.joining("; "));
    }

    /** Contents whose flash point lies below a limit in °C, with it. */
    private String flashing(RegulatoryLimit limit, ContainerState state) {
        if (limit.flashPointCelsius().isEmpty()) {
            return "";
        }
        double celsius = limit.flashPointCelsius().getAsDouble();
        List<String> below = new ArrayList<>();
        state.grams()
                .keySet()
                .forEach(name -> substances
                        .solvent(name)
                        .filter(solvent -> solvent.hazards().flashesBelow(celsius))
                        .flatMap(s -> s.hazards().flashPoint())
                        .ifPresent(point -> below.add(name + " " + point + " °C")));
        return below.isEmpty() ? "" : "; flash points here: " + String.join(", ", below);
    }

    private String text(RegulatoryLimit limit, ContainerState state) {
        String value = limit.value().isPresent()
                ? ": "
                        + withUnit(
                                plain(limit.value().getAsDouble()), limit.unit().orElse(""))
                : "";
        return limit.name() + " (" + limit.meaning() + ")" + value + flashing(limit, state);
    }

    /** A pH stands before its number, a unit behind it. */
    private static String withUnit(String number, String unit) {
        return unit.equals("pH") ? "pH " + number : (number + " " + unit).strip();
    }

    /** As the regulation writes it: 60, 12.5. */
    private static String plain(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }
}
