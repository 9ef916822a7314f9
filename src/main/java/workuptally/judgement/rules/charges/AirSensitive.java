package workuptally.judgement.rules.charges;

import java.util.Locale;
import java.util.regex.Pattern;

/** Organometallics and active hydrides by their names: reagents that air and water spoil, and whose quench gives gas and heat. */
public final class AirSensitive {
    private static final Pattern NAMES =
            Pattern.compile("lithium(?! (aluminium|chloride|bromide|hydroxide|borohydride))|\\b\\w*buli\\b|grignard"
                    + "|yl\\w*magnesium|zinc (bromide|chloride|iodide) in|ylzinc|organozinc|\\bdibal|diisobutylalumin"
                    + "|lialh4|lithium alumin");

    private AirSensitive() {}

    /** True for a material whose name says so. */
    public static boolean is(String material) {
        return NAMES.matcher(material.toLowerCase(Locale.ROOT)).find();
    }
}
