package workuptally.tally.amounts;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import workuptally.model.Assay;
import workuptally.model.Assay.Unit;
import workuptally.model.Field;
import workuptally.model.Field.Entered;
import workuptally.model.Field.Qualifier;
import workuptally.model.Limit;
import workuptally.model.Limits;
import workuptally.reference.bench.Threshold;

/** What a row of Assays says by itself: its result, whether its method counts, and the limit that a non-detect stands for. */
public final class AssayResults {
    private static final Pattern NUMBER = Pattern.compile("\\d+(?:[.,]\\d+)?");

    /** Two numbers that differ by less are one, relative. */
    private static final double SAME = 1e-9;

    private final Limits limits;
    private final Substances substances;

    /** Under the limits and with the reference data in force. */
    public AssayResults(Limits limits, Substances substances) {
        this.limits = limits;
        this.substances = substances;
    }

    /** Whether an assay by that method counts as evidence, as the laboratory has it. */
    public boolean counts(Assay assay) {
        return assay.method()
                .flatMap(AssayResults::mustCount)
                .filter(l -> !limits.isYes(l))
                .isEmpty();
    }

    /** What the book has to say yes to before a weak method counts. */
    static Optional<Limit> mustCount(Assay.Method method) {
        return switch (method) {
            case TLC -> Optional.of(Limit.TLC_COUNTS);
            case LC_MS -> Optional.of(Limit.LC_MS_COUNTS);
            default -> Optional.empty();
        };
    }

    /** The result as typed, or by its weighing. */
    static Optional<Entered> of(Assay assay) {
        return residueStrength(assay).or(() -> assay.result().entered());
    }

    /** Dry residue by its weighing where no result was entered: mg of residue per mL of aliquot, whatever unit stands beside. */
    static Optional<Entered> residueStrength(Assay assay) {
        Optional<Entered> residue = assay.residueMilligrams().entered();
        Optional<Entered> aliquot = assay.aliquotMillilitres().entered().filter(a -> a.value() > 0);
        boolean byResidue =
                assay.method().filter(m -> m == Assay.Method.DRY_RESIDUE).isPresent();
        if (!assay.result().isBlank() || !byResidue || residue.isEmpty() || aliquot.isEmpty()) {
            return Optional.empty();
        }
        boolean about =
                residue.get().qualifier() == Qualifier.ABOUT || aliquot.get().qualifier() == Qualifier.ABOUT;
        double strength = residue.get().value() / aliquot.get().value();
        double span = residue.get().halfWidth() / aliquot.get().value()
                + strength * aliquot.get().halfWidth() / aliquot.get().value();
        return Optional.of(new Entered(
                new Field.Figure(
                        strength,
                        about ? Qualifier.ABOUT : residue.get().qualifier(),
                        residue.get().decimals(),
                        residue.get().asTyped() + " mg / " + aliquot.get().asTyped() + " mL",
                        true,
                        span),
                residue.get().row(),
                residue.get().heading()));
    }

    /**
     * The limit that a result stands for, above 0: typed as {@code <x}, or that of its method where nothing was detected or the figure lies
     * below it; of a spot beside spots of known strength a multiple of the figure, since the eye tells no less apart; empty for a result.
     */
    OptionalDouble nonDetectLimit(Assay assay, Entered result) {
        if (result.qualifier() == Qualifier.BELOW) {
            return result.value() > 0 ? OptionalDouble.of(result.value()) : OptionalDouble.empty();
        }
        boolean bySpot = assay.method().filter(m -> m == Assay.Method.TLC).isPresent();
        if (bySpot && result.qualifier() != Qualifier.NOT_DETECTED && result.value() > 0) {
            return OptionalDouble.of(substances.value(Threshold.SPOT_FACTOR) * result.value());
        }
        OptionalDouble ofMethod =
                assay.unit().filter(u -> u == Unit.MILLIGRAMS_PER_MILLILITRE).isEmpty()
                        ? OptionalDouble.empty()
                        : detectionLimit(assay);
        boolean below = result.qualifier() == Qualifier.NOT_DETECTED
                || (ofMethod.isPresent() && result.value() > 0 && result.value() < ofMethod.getAsDouble());
        return below ? ofMethod : OptionalDouble.empty();
    }

    private OptionalDouble detectionLimit(Assay assay) {
        return switch (assay.method().orElse(Assay.Method.OTHER)) {
            case HPLC -> limits.optional(Limit.DETECTION_HPLC);
            case GC -> limits.optional(Limit.DETECTION_GC);
            case LC_MS -> limits.optional(Limit.DETECTION_LC_MS);
            case TLC -> limits.optional(Limit.DETECTION_TLC);
            case NMR, QNMR -> limits.optional(Limit.DETECTION_NMR);
            default -> OptionalDouble.empty();
        };
    }

    /** The number as typed, or in the unit of the account where it was typed in another one. */
    private static String inUnit(Entered result) {
        Matcher typed = NUMBER.matcher(result.asTyped());
        boolean one = result.halfWidth() == 0 && result.qualifier() != Qualifier.NOT_DETECTED && typed.find();
        if (!one || result.value() == 0) {
            return result.asTyped();
        }
        double number = Double.parseDouble(typed.group().replace(',', '.'));
        return Math.abs(number - result.value()) <= SAME * result.value()
                ? result.asTyped()
                : result.asTyped().substring(0, typed.start())
                        + BigDecimal.valueOf(result.value())
                                .setScale(result.decimals(), RoundingMode.HALF_UP)
                                .toPlainString();
    }

    /** The assay in words: method, result, unit. */
    static String evidence(Assay assay, Entered result, OptionalDouble limit) {
        String method = assay.method().map(Assay.Method::word).orElse("assay");
        String unit = assay.unit().map(Unit::word).orElse("");
        String shown = inUnit(result);
        if (residueStrength(assay).isPresent()) {
            return method + " " + result.asTyped();
        }
        boolean belowLimit = limit.isPresent() && result.qualifier() != Qualifier.BELOW;
        String number = belowLimit
                        && assay.method().filter(m -> m == Assay.Method.TLC).isPresent()
                        && result.qualifier() != Qualifier.NOT_DETECTED
                ? String.format(Locale.ROOT, "spot of about %s (at most %s)", shown, limit.orElse(0))
                : belowLimit ? String.format(Locale.ROOT, "not detected (limit %s)", limit.orElse(0)) : shown;
        return method + " " + number + (number.endsWith(unit) ? "" : " " + unit);
    }
}
