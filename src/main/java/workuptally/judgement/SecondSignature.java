package workuptally.judgement;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import workuptally.model.Charge;
import workuptally.model.FindingCode;
import workuptally.model.Run;
import workuptally.model.Severity;
import workuptally.reference.substances.MaterialClass;
import workuptally.tally.amounts.RunMaterial;
import workuptally.tally.bench.LeavingGas;

/**
 * Why the layers of a run want a second signature before anybody lets them go: a stop, product above the limit in a kept layer, or a quench
 * of something reactive. Common practice; a site rule comes first.
 */
public final class SecondSignature {
    private SecondSignature() {}

    /** The reasons as short phrases; empty where one signature is enough. */
    public static List<String> reasons(RunReview run) {
        List<String> reasons = new ArrayList<>();
        if (run.has(Severity.STOP)) {
            reasons.add("a stop");
        }
        if (run.findings().stream().anyMatch(f -> f.code() == FindingCode.LAYER_HOLDS_PRODUCT)) {
            reasons.add("product above the limit in a kept layer");
        }
        if (run.tally().evidence().reactions().stream()
                .flatMap(r -> r.leaving().stream())
                .anyMatch(gas -> gas == LeavingGas.HYDROGEN)) {
            reasons.add("a hydride quench");
        }
        first(run, MaterialClass.ORGANOMETALLIC)
                .ifPresent(name -> reasons.add("an organometallic quench (" + name + ")"));
        first(run, MaterialClass.AZIDE, MaterialClass.ORGANIC_AZIDE, MaterialClass.CYANIDE)
                .ifPresent(reasons::add);
        return List.copyOf(reasons);
    }

    /** The first material charged, or added in the workup, that belongs to one of the classes. */
    private static Optional<String> first(RunReview run, String... classes) {
        Run own = run.tally().run();
        List<String> brought = Stream.concat(
                        own.charges().stream().map(Charge::material),
                        own.steps().stream().map(step -> step.added().material()))
                .toList();
        return run.materials().stream()
                .filter(m -> brought.contains(m.written()))
                .filter(m -> List.of(classes).stream().anyMatch(m.material()::is))
                .map(RunMaterial::written)
                .findFirst();
    }
}
