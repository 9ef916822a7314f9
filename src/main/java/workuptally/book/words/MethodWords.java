package workuptally.book.words;

import java.util.Set;
import java.util.regex.Pattern;
import workuptally.model.Assay.Method;

/**
 * What stands beside a method of analysis and takes its calibration back, so that it gives no content: {@code HPLC uncalibrated},
 * {@code GC (area %)}, {@code HPLC, old calibration} (common practice, in English, German and French).
 */
public final class MethodWords {
    /** Methods whose results are worth what their calibration is. */
    private static final Set<Method> CALIBRATED = Set.of(Method.HPLC, Method.GC, Method.NMR, Method.QNMR);

    private static final Pattern TAKES_BACK = Pattern.compile(
            "(?<!\\p{L})(?:uncalibrat|(?:no|without|w/o|ohne|sans) std(?!\\p{L})|(?:one|single)[ -]?point|ein ?punkt|un point"
                    + "|vs\\.? (?:the )?(?:SM|starting material|educt|edukt|other|crude)(?!\\p{L})|traces? (?:only|visible|seen)|spuren|assumed|angenommen|RF ?= ?1(?!\\d)"
                    + "|(?:not|no|without|w/o|un|non|nicht|ohne|keine?|sans|pas)[ -]*(?:d[’'e] ?)?(?:yet )?(?:re)?(?:calib|kalib|étalon|etalon|standard|response|linear|valid)"
                    + "|un(?:kalib|valid|correct)|non[ -]?étalon"
                    + "|(?:old|expired|last|previous|wrong|failed|alte[nrs]?|abgelaufene?[nrs]?|ancienne?|vieille) (?:calib|kalib|étalon|curve|standard|response)"
                    + "|(?:calib|kalib|étalon)\\p{L}* (?:is |was |war |ist |still )?(?:pending|open|tbd|to follow|to be done|ausstehend|offen|old|expired|failed|missing|invalid|alt|abgelaufen|fehlt|ungültig|périmé)"
                    + "|to be calib|area|flächen?|flaechen?|aire|LCAP|GCAP|normali[sz]|a ?%|a/a|rel\\.? ?%|rel(?:\\.|ative?)?(?!\\p{L})"
                    + "|estimat|guess|rough|approx|geschätzt|schätz|grob|ungefähr|estim[ée]"
                    + "|semi|qualitativ|screening|by eye|visual|invalid|ungültig)"
                    + "|% ?(?:a|area)(?!\\p{L})",
            Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);

    /** A share of what a detector saw, but for a standard weighed in. */
    private static final Pattern SHARE =
            Pattern.compile("purity|reinheit|pureté|(?<![\\d.,]) ?%$", Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);

    private MethodWords() {}

    /** True where nothing beside the word of a method takes back what it gives. */
    public static boolean leave(Method method, String typed) {
        String plain = TypedText.plain(typed);
        boolean share = method != Method.QNMR && SHARE.matcher(plain).find();
        return !CALIBRATED.contains(method)
                || !share && !TAKES_BACK.matcher(plain).find();
    }
}
