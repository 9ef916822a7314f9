package workuptally.reference.substances;

/**
 * Classes of materials that the program itself asks for, by their keys in the table of reactivity groups. A laboratory may add others: what
 * a class does where it meets another one is read from the tables alone.
 */
public final class MaterialClass {
    public static final String ACID = "acid";
    public static final String ACID_WEAK = "acid-weak";
    public static final String ALCOHOL = "alcohol";
    public static final String AMINE = "amine";
    public static final String AMINE_SALT = "amine-salt";
    public static final String AMMONIA = "ammonia";
    public static final String AMMONIUM_SALT = "ammonium-salt";
    public static final String AZIDE = "azide";
    public static final String BASE = "base";
    public static final String BASE_WEAK = "base-weak";
    public static final String BORANE = "borane";
    public static final String BORONIC_ACID = "boronic-acid";
    public static final String CARBONATE = "carbonate";
    public static final String CYANIDE = "cyanide";
    public static final String ETHER = "ether";
    public static final String GRIGNARD = "grignard";
    public static final String HALOGENATED = "halogenated";
    public static final String HEAVY_METAL = "heavy-metal";
    public static final String HYDRIDE_STRONG = "hydride-strong";
    public static final String ORGANIC = "organic";
    public static final String ORGANIC_AZIDE = "organic-azide";
    public static final String ORGANOMETALLIC = "organometallic";
    public static final String OXIDISER = "oxidiser";
    public static final String PEROXIDE_FORMER = "peroxide-former";
    public static final String REDUCING_AGENT = "reducing-agent";
    public static final String SEVERE_PEROXIDE_FORMER = "severe-peroxide-former";
    public static final String STRONG_AMIDE_BASE = "strong-amide-base";
    public static final String THIOSULFATE = "thiosulfate";
    public static final String WATER = "water";

    private MaterialClass() {}
}
