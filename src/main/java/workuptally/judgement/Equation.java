package workuptally.judgement;

/** The equations behind the figures, as a reader would write them. */
enum Equation {
    AMOUNT("amount", "n = m·w/M; V·ρ·w/M; V·c with the titre before the label", "definition"),
    THEORY("theory", "m = min(nᵢ/νᵢ)·ν·M of the form isolated", "definition"),
    YIELD("yield", "Y = m·w / m(theory)", "definition"),
    CRUDE_OVER_THEORY("crude over theory", "Q = m(crude) / m(theory); not a yield", "definition"),
    CONVERSION("conversion-adjusted yield", "Y / (1 − n(recovered)/n₀)", "definition"),
    CLOSURE("closure", "B = Σ a·n / n₀ over terminal layers, aliquots and lots", "constraint test of a balance"),
    MASS("total mass", "gap = Σ m(in) − Σ m(out)", "conservation of mass"),
    UNCERTAINTY("uncertainty", "u(y)² = Σ (∂y/∂x)²·u(x)², U = k·u", "JCGM 100:2008, 5.1.2 and 6.2"),
    NON_DETECT("not detected at limit L", "L/2 with u = L/(2√3) in a balance, L as a bound", "common practice"),
    BOUND("upper bound", "m + k·u, one-sided 95 %; k = 1.645, or Student’s t for few repeats", "JCGM 100:2008, G.3"),
    EXPERIENCE(
            "bound from earlier batches",
            "x̄ + k·s of at least 5, 95 % of batches with 95 % confidence",
            "ISO 16269-6:2014"),
    FILL("funnel fill", "F = Σ V before mixing / (loads · V nominal)", "common practice");

    private final String title;
    private final String text;
    private final String source;

    Equation(String title, String text, String source) {
        this.title = title;
        this.text = text;
        this.source = source;
    }

    String title() {
        return title;
    }

    String text() {
        return text;
    }

    String source() {
        return source;
    }
}
