package workuptally.judgement;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import workuptally.judgement.rules.HeldLayers;
import workuptally.model.Charge;
import workuptally.model.Severity;

/**
 * Why the layers of a run want a second signature before anybody lets them go: a stop, product above the limit in a kept layer, or a quench
 * of something reactive. Common practice; a site rule comes first.
 */
public final class SecondSignature {
    private static final Pattern ORGANOMETALLIC = Pattern.compile("Mg(Br|Cl|I)|(Br|Cl|I)Mg|Li$|^Li");
    private static final Pattern TOXIC_SALT = Pattern.compile("azide|cyanide");

    private SecondSignature() {}

    /** The reasons as short phrases; empty where one signature is enough. */
    public static List<String> reasons(RunReview run) {
        List<String> reasons = new ArrayList<>();
        if (run.has(Severity.STOP)) {
            reasons.add("a stop");
        }
        if (run.findings().stream().anyMatch(f -> f.code().equals(HeldLayers.HOLDS_PRODUCT))) {
            reasons.add("product above the limit in a kept layer");
        }
        if (run.tally().evidence().reactions().stream().anyMatch(r -> r.gas().equals("H2"))) {
            reasons.add("a hydride quench");
        }
        charged(
                        run,
                        c -> c.formula().contains("C")
                                && ORGANOMETALLIC.matcher(c.formula()).find())
                .ifPresent(c -> reasons.add("an organometallic quench (" + c.material() + ")"));
        charged(
                        run,
                        c -> TOXIC_SALT
                                .matcher(c.material().toLowerCase(Locale.ROOT))
                                .find())
                .ifPresent(c -> reasons.add(c.material()));
        return List.copyOf(reasons);
    }

    private static Optional<Charge> charged(RunReview run, java.util.function.Predicate<Charge> asks) {
        return run.tally().run().charges().stream().filter(asks).findFirst();
    }
}
