package workuptally.judgement.containers;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import workuptally.material.Material;
import workuptally.model.Layer;
import workuptally.reference.bench.Threshold;
import workuptally.reference.substances.MaterialClass;
import workuptally.reference.waste.LayerFacts;
import workuptally.reference.waste.StreamRule;
import workuptally.reference.waste.WasteStream;
import workuptally.tally.amounts.Substances;
import workuptally.tally.waste.SolventContent;

/** The waste stream that named contents suggest: the rules of layers, and acid or base by what is named, since contents have no pH. */
final class ContentsStream {
    /** A liquid of which there is more than this decides, mass %. */
    private static final double HALF = 50;

    private final Substances substances;
    private final double halogenLimitPercent;

    /**
     * Over the tables in force.
     *
     * @param substances reference data in force
     * @param halogenLimitPercent halogenated solvent from which on a liquid is a halogenated one, mass %
     */
    ContentsStream(Substances substances, double halogenLimitPercent) {
        this.substances = substances;
        this.halogenLimitPercent = halogenLimitPercent;
    }

    /**
     * The key of the stream.
     *
     * @param grams mass of each component, g
     * @return empty where no liquid makes half of it and nothing in it decides by itself
     */
    Optional<String> stream(Map<String, Double> grams) {
        Map<String, Material> counted = counted(grams);
        SolventContent shares = new SolventContent(substances, grams);
        double organic = shares.organicPercent();
        double water = shares.percent(name -> substances.material(name).is(MaterialClass.WATER));
        Map<String, String> holds = new LinkedHashMap<>();
        counted.forEach((name, material) -> classes(material).forEach(c -> holds.putIfAbsent(c, name)));
        Optional<String> byRule = substances
                .streamRule(facts(shares, organic, holds))
                .filter(rule -> !rule.when().holds().isEmpty() || organic > HALF)
                .map(StreamRule::stream);
        return byRule.or(() -> water > HALF ? acidOrBase(holds.keySet()) : Optional.empty());
    }

    private LayerFacts facts(SolventContent shares, double organic, Map<String, String> holds) {
        double halogenated = shares.halogenatedPercent();
        return new LayerFacts(
                (organic > HALF ? Layer.Phase.ORGANIC : Layer.Phase.AQUEOUS).word(),
                holds,
                halogenated > halogenLimitPercent,
                halogenated,
                organic,
                shares.acidPercent(),
                OptionalDouble.empty(),
                "",
                LayerFacts.MakeUp.KNOWN,
                List.of(),
                Optional.empty(),
                "");
    }

    /** Base alone, or acid alone: what holds both has been neutralised, and its pH alone would tell. */
    private Optional<String> acidOrBase(Set<String> held) {
        boolean acid = held.contains(MaterialClass.ACID);
        boolean base = held.contains(MaterialClass.BASE);
        if (acid == base) {
            return Optional.empty();
        }
        String told = acid ? MaterialClass.ACID : MaterialClass.BASE;
        return substances.reference().streams().all().stream()
                .filter(stream -> stream.impliedClasses().contains(told))
                .map(WasteStream::key)
                .findFirst();
    }

    /** True where one of some classes is named in the contents. */
    boolean holdsAnyOf(List<String> classes, Map<String, Double> grams) {
        return counted(grams).values().stream()
                .anyMatch(material -> classes(material).stream().anyMatch(classes::contains));
    }

    private Set<String> classes(Material material) {
        Set<String> all = new LinkedHashSet<>(material.classes());
        material.parts()
                .forEach(part -> part.heavyMetals().forEach(symbol -> all.addAll(substances.classesOfElement(symbol))));
        return all;
    }

    /** Components of which there is more than a trace. */
    private Map<String, Material> counted(Map<String, Double> grams) {
        double total = grams.values().stream().mapToDouble(g -> g).sum();
        Map<String, Material> counted = new LinkedHashMap<>();
        grams.forEach((name, mass) -> {
            if (100 * mass >= substances.value(Threshold.LEAST_CLASS_SHARE) * total) {
                counted.put(name, substances.material(name));
            }
        });
        return counted;
    }
}
