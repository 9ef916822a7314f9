package workuptally.judgement.hazards;

import java.util.Map;
import java.util.Set;

/** Which statement of a mixture says another one too, and the words of those that only the mixture bears. */
final class MixtureWords {
    /**
     * Statements that need not stand beside a graver one of the same kind. Source: Regulation (EC) 1272/2008, Article 27, statements that
     * plainly repeat another need not be shown.
     */
    static final Map<String, Set<String>> SAID_BY = Map.ofEntries(
            Map.entry("H224", Set.of("H225", "H226")),
            Map.entry("H225", Set.of("H226")),
            Map.entry("H300", Set.of("H301", "H302")),
            Map.entry("H301", Set.of("H302")),
            Map.entry("H310", Set.of("H311", "H312")),
            Map.entry("H311", Set.of("H312")),
            Map.entry("H330", Set.of("H331", "H332")),
            Map.entry("H331", Set.of("H332")),
            Map.entry("H314", Set.of("H315", "H318", "H319", "EUH066")),
            Map.entry("H318", Set.of("H319")),
            Map.entry("H370", Set.of("H371")),
            Map.entry("H372", Set.of("H373")),
            Map.entry("H410", Set.of("H400", "H411", "H412")),
            Map.entry("H411", Set.of("H412")));

    /**
     * Wording of what a mixture may bear though none of its parts does: by its flash point, and what a graver statement leaves when it is
     * diluted. Source: Regulation (EC) 1272/2008, Annex III, as in the table of statements.
     */
    static final Map<String, String> OF_MIXTURE = Map.ofEntries(
            Map.entry("H225", "Highly flammable liquid and vapour."),
            Map.entry("H226", "Flammable liquid and vapour."),
            Map.entry("H301", "Toxic if swallowed."),
            Map.entry("H302", "Harmful if swallowed."),
            Map.entry("H311", "Toxic in contact with skin."),
            Map.entry("H312", "Harmful in contact with skin."),
            Map.entry("H331", "Toxic if inhaled."),
            Map.entry("H332", "Harmful if inhaled."),
            Map.entry("H315", "Causes skin irritation."),
            Map.entry("H318", "Causes serious eye damage."),
            Map.entry("H319", "Causes serious eye irritation."),
            Map.entry("H371", "May cause damage to organs."),
            Map.entry("H373", "May cause damage to organs through prolonged or repeated exposure."),
            Map.entry("H411", "Toxic to aquatic life with long lasting effects."),
            Map.entry("H412", "Harmful to aquatic life with long lasting effects."));

    private MixtureWords() {}
}
