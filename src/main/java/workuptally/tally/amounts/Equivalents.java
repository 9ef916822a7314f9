package workuptally.tally.amounts;

/**
 * Acids and bases in a material, mmol.
 *
 * @param strongAcid protons of mineral acids
 * @param weakAcid protons of acids that hydrogencarbonate takes up
 * @param strongBase hydroxide
 * @param carbonate carbonate
 * @param hydrogencarbonate hydrogencarbonate
 */
public record Equivalents(
        double strongAcid, double weakAcid, double strongBase, double carbonate, double hydrogencarbonate) {
    public static final Equivalents NONE = new Equivalents(0, 0, 0, 0, 0);

    public Equivalents plus(Equivalents other) {
        return new Equivalents(
                strongAcid + other.strongAcid,
                weakAcid + other.weakAcid,
                strongBase + other.strongBase,
                carbonate + other.carbonate,
                hydrogencarbonate + other.hydrogencarbonate);
    }

    public double acid() {
        return strongAcid + weakAcid;
    }

    /** What a base takes up on the way to a neutral solution: two protons for each carbonate. */
    public double base() {
        return strongBase + 2 * carbonate + hydrogencarbonate;
    }

    public boolean givesCarbonDioxide() {
        return carbonate + hydrogencarbonate > 0;
    }
}
