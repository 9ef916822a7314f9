package workuptally.judgement.containers;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import workuptally.reference.Reference;
import workuptally.reference.RegulatoryLimit;
import workuptally.reference.Source;
import workuptally.tally.containers.ContainerState;

/** Picks the limits that speak about a container: where waste gathers, corrosive water, flammable liquids, and substances by name. */
final class RegulatoryFacts {
    private static final List<String> ALWAYS = List.of("us-saa-volume", "us-saa-days");
    private static final List<String> AQUEOUS =
            List.of("us-corrosive-low", "us-corrosive-high", "us-ignitable-alcohol");
    private static final List<String> ORGANIC = List.of("us-ignitable", "eu-hp3");
    private static final String LEACHATE = "us-tc-";

    private final Reference reference;

    RegulatoryFacts(Reference reference) {
        this.reference = reference;
    }

    List<RegulatoryFact> of(Optional<String> stream, ContainerState state) {
        boolean aqueous = stream.filter(s -> s.startsWith("aqueous")).isPresent();
        Set<String> names = state.grams().keySet();
        return reference.regulatoryLimits().stream()
                .filter(l -> ALWAYS.contains(l.key())
                        || (aqueous ? AQUEOUS : ORGANIC).contains(l.key())
                        || names.stream().anyMatch(n -> l.key().equals(LEACHATE + plain(n))))
                .map(l -> new RegulatoryFact(l.key(), text(l), String.join("; ", l.sources()), citation(l)))
                .toList();
    }

    private String citation(RegulatoryLimit limit) {
        return limit.sources().stream()
                .map(key -> reference.source(key).map(Source::citation).orElse(key))
                .collect(Collectors.joining("; "));
    }

    private static String plain(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    }

    private static String text(RegulatoryLimit limit) {
        String value = limit.value().isPresent()
                ? ": "
                        + (plain(limit.value().getAsDouble()) + " "
                                        + limit.unit().orElse(""))
                                .strip()
                : "";
        return limit.name() + " (" + limit.meaning() + ")" + value;
    }

    /** As the regulation writes it: 60, 12.5. */
    private static String plain(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }
}
