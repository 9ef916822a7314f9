package workuptally.report.view.lines;

import java.util.List;
import java.util.Set;
import workuptally.judgement.hazards.HazardNote;

/**
 * Groups of hazard statements, by the numbers of their codes. Source: GHS, United Nations, Annex 3, where 2xx are physical, 3xx health and
 * 4xx environmental hazards, and the supplementary statements of Regulation (EC) No 1272/2008, Annex II; the grouping within them is
 * common practice.
 */
public enum HazardClass {
    /** Flammable gases, liquids and solids, and what heats or ignites itself. */
    FLAMMABLE("fire", "flammable", List.of(new Codes(220, 232), new Codes(242, 252))),
    /** Explosives and oxidisers. */
    OXIDISING(
            "oxidising,\nexplosive",
            "oxidising, explosive",
            List.of(new Codes(200, 211), new Codes(240, 241), new Codes(270, 272))),
    /** What reacts with water. */
    WATER_REACTIVE("with\nwater", "reacts with water", List.of(new Codes(260, 261)), Set.of("EUH014", "EUH029")),
    /** Corrosive to skin, eyes or metals. */
    CORROSIVE(
            "corrosive",
            "corrosive",
            List.of(new Codes(290, 290), new Codes(314, 314), new Codes(318, 318)),
            Set.of("EUH071")),
    /** Toxic, fatal. */
    TOXIC("toxic", "toxic", List.of(new Codes(300, 301), new Codes(310, 311), new Codes(330, 331))),
    /** Harmful, irritant, narcotic. */
    HARMFUL(
            "harmful,\nirritant",
            "harmful, irritant",
            List.of(
                    new Codes(302, 305),
                    new Codes(312, 313),
                    new Codes(315, 316),
                    new Codes(319, 320),
                    new Codes(332, 333),
                    new Codes(335, 336))),
    /** Allergies of skin and airways. */
    SENSITISING("allergy", "sensitising", List.of(new Codes(317, 317), new Codes(334, 334))),
    /** Cancer, genes, reproduction, organs. */
    LONG_TERM("long\nterm", "long-term health", List.of(new Codes(340, 373))),
    /** Water and ozone layer. */
    ENVIRONMENT("water\nlife", "environment", List.of(new Codes(400, 420)));

    private static final int DIGITS = 3;

    private final String heading;
    private final String word;
    private final List<Codes> codes;
    private final Set<String> supplementary;

    HazardClass(String heading, String word, List<Codes> codes) {
        this(heading, word, codes, Set.of());
    }

    HazardClass(String heading, String word, List<Codes> codes, Set<String> supplementary) {
        this.heading = heading;
        this.word = word;
        this.codes = codes;
        this.supplementary = supplementary;
    }

    /** Heading of a narrow column, with a line end where it breaks: names of materials beside it are long. */
    public String heading() {
        return heading;
    }

    /** The group in words. */
    public String word() {
        return word;
    }

    /** True where a material has a statement of the group. */
    public boolean of(HazardNote note) {
        return note.statements().stream().anyMatch(this::has);
    }

    private boolean has(String statement) {
        if (supplementary.stream().anyMatch(statement::startsWith)) {
            return true;
        }
        if (!statement.startsWith("H") || statement.length() <= DIGITS) {
            return false;
        }
        String digits = statement.substring(1, 1 + DIGITS);
        return digits.chars().allMatch(Character::isDigit)
                && codes.stream().anyMatch(c -> c.hold(Integer.parseInt(digits)));
    }

    private record Codes(int from, int to) {
        boolean hold(int code) {
            return code >= from && code <= to;
        }
    }
}
