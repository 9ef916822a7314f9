package workuptally.reference.words;

/** How far a typed word is from one that is known. */
public final class WordGuess {
    /** Shorter words differ by one letter from too many others. */
    private static final int SHORTEST = 4;

    private WordGuess() {}

    /** True for a word with one letter wrong, missing, too many or two neighbours swapped; never for a short one or another first letter. */
    public static boolean isSlipOf(String typed, String known) {
        if (typed.length() < SHORTEST
                || known.length() < SHORTEST
                || typed.charAt(0) != known.charAt(0)
                || typed.equals(known)) {
            return false;
        }
        int same = 0;
        while (same < Math.min(typed.length(), known.length()) && typed.charAt(same) == known.charAt(same)) {
            same++;
        }
        String a = typed.substring(same);
        String b = known.substring(same);
        boolean swapped = a.length() == b.length()
                && a.length() >= 2
                && a.charAt(0) == b.charAt(1)
                && a.charAt(1) == b.charAt(0)
                && a.substring(2).equals(b.substring(2));
        return swapped
                || a.length() == b.length() && !a.isEmpty() && a.substring(1).equals(b.substring(1))
                || a.length() + 1 == b.length() && a.equals(b.substring(1))
                || b.length() + 1 == a.length() && b.equals(a.substring(1));
    }
}
