package workuptally.tally.amounts;

/**
 * Acids and bases in a material, mmol.
 *
 * @param strongAcid protons of mineral acids
 * @param weakAcid protons of acids that hydrogencarbonate takes up
 * @param strongBase hydroxide
 * @param carbonate carbonate
 * @param hydrogencarbonate hydrogencarbonate
 * @param weakBase protons that weak bases take from weak acids too, phosphate and ammonia
 * @param mildBase protons that weak bases take from mineral acids only, acetate
 */
public record Equivalents(
        double strongAcid,
        double weakAcid,
        double strongBase,
        double carbonate,
        double hydrogencarbonate,
        double weakBase,
        double mildBase) {
    public static final Equivalents NONE = new Equivalents(0, 0, 0, 0, 0, 0, 0);

    /** True where there is neither acid nor base. */
    public boolean isNone() {
        return strongAcid == 0
                && weakAcid == 0
                && strongBase == 0
                && carbonate == 0
                && hydrogencarbonate == 0
                && weakBase == 0
                && mildBase == 0;
    }

    public static Equivalents ofStrongAcid(double protons) {
        return new Equivalents(protons, 0, 0, 0, 0, 0, 0);
    }

    public static Equivalents ofWeakAcid(double protons) {
        return new Equivalents(0, protons, 0, 0, 0, 0, 0);
    }

    public Equivalents plus(Equivalents other) {
        return new Equivalents(
                strongAcid + other.strongAcid,
                weakAcid + other.weakAcid,
                strongBase + other.strongBase,
                carbonate + other.carbonate,
                hydrogencarbonate + other.hydrogencarbonate,
                weakBase + other.weakBase,
                mildBase + other.mildBase);
    }

    public Equivalents times(double factor) {
        return new Equivalents(
                strongAcid * factor,
                weakAcid * factor,
                strongBase * factor,
                carbonate * factor,
                hydrogencarbonate * factor,
                weakBase * factor,
                mildBase * factor);
    }

    public double acid() {
        return strongAcid + weakAcid;
    }

    /** What a base takes up on the way to a neutral solution: two protons for each carbonate. */
    public double base() {
        return strongBase + 2 * carbonate + hydrogencarbonate + weakBase + mildBase;
    }

    /** True where no weak acid is taken up. */
    public boolean isMild() {
        return mildBase > 0 && mildBase == base();
    }

    public boolean givesCarbonDioxide() {
        return carbonate + hydrogencarbonate > 0;
    }

    /** True where only mineral acids and hydroxides are counted, as a balance of charges needs. */
    public boolean isOfStrongAcidsAndBases() {
        return carbonate + hydrogencarbonate + weakBase + mildBase == 0;
    }
}
