package workuptally.tally;

/**
 * Acids and bases in a material, mmol.
 *
 * @param strongAcid protons of mineral acids
 * @param weakAcid protons of acids that hydrogencarbonate takes up
 * @param strongBase hydroxide
 * @param carbonate carbonate
 * @param hydrogencarbonate hydrogencarbonate
 */
record Equivalents(double strongAcid, double weakAcid, double strongBase, double carbonate, double hydrogencarbonate) {
    static final Equivalents NONE = new Equivalents(0, 0, 0, 0, 0);

    Equivalents plus(Equivalents other) {
        return new Equivalents(
                strongAcid + other.strongAcid,
                weakAcid + other.weakAcid,
                strongBase + other.strongBase,
                carbonate + other.carbonate,
                hydrogencarbonate + other.hydrogencarbonate);
    }

    double acid() {
        return strongAcid + weakAcid;
    }

    /** What a base takes up on the way to a neutral solution: two protons for each carbonate. */
    double base() {
        return strongBase + 2 * carbonate + hydrogencarbonate;
    }

    boolean givesCarbonDioxide() {
        return carbonate + hydrogencarbonate > 0;
    }
}
