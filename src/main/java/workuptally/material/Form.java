package workuptally.material;

/**
 * The form in which a material stands.
 *
 * @param kind what kind of form
 * @param of molecules of water, formula of the acid, the support or the oil
 */
public record Form(Kind kind, String of) {
    /** Kinds of form. */
    public enum Kind {
        /** With water of crystallisation. */
        HYDRATE,
        /** A base as the salt of an acid. */
        SALT,
        /** With another molecule in the crystal or complex. */
        ADDUCT,
        /** On a support. */
        SUPPORTED,
        /** Dispersed in an oil. */
        DISPERSION
    }
}
