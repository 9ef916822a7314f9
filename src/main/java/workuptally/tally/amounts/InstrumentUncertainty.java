package workuptally.tally.amounts;

import workuptally.measure.StandardUncertainty;
import workuptally.model.Amount;
import workuptally.model.Assay;
import workuptally.model.Dimension;
import workuptally.model.Field;
import workuptally.model.Field.Entered;
import workuptally.model.Field.Qualifier;
import workuptally.model.Limit;
import workuptally.model.Limits;
import workuptally.model.Lot;

/** Standard uncertainty of an entered number, from the limits in force and the decimals it was read with. */
public final class InstrumentUncertainty {

    private static final double TOP_PAN_GRAMS = 1000;
    private static final int TOP_PAN_DECIMALS = 2;
    private static final int ANALYTICAL_DECIMALS = 4;

    private final Limits limits;

    public InstrumentUncertainty(Limits limits) {
        this.limits = limits;
    }

    /**
     * One net mass.
     *
     * @param decimals the most decimals seen in its readings in g
     * @return u in g
     */
    public double massGrams(int decimals) {
        return limits.value(
                switch (Math.min(decimals, 5)) {
                    case 5 -> Limit.WEIGHING_5_DECIMALS;
                    case 4 -> Limit.WEIGHING_4_DECIMALS;
                    case 3 -> Limit.WEIGHING_3_DECIMALS;
                    case 2 -> Limit.WEIGHING_2_DECIMALS;
                    case 1 -> Limit.WEIGHING_1_DECIMAL;
                    default -> Limit.WEIGHING_0_DECIMALS;
                });
    }

    /**
     * Decimals of a mass. Those of a number cell without a number format are not known, since 4.00 is stored as 4: below a kilogram it is
     * taken to be of a balance that shows two at least (common practice), and of none that shows more than four: a difference worked out by
     * the spreadsheet has digits that no balance showed.
     */
    private static int decimals(Entered mass) {
        if (mass.digitsKnown()) {
            return mass.decimals();
        }
        int least = Math.abs(mass.value()) < TOP_PAN_GRAMS ? TOP_PAN_DECIMALS : 0;
        return Math.min(ANALYTICAL_DECIMALS, Math.max(least, mass.decimals()));
    }

    /** A single mass, wider where it was entered as {@code ca.}; u in g. */
    public double massGrams(Entered mass) {
        return widened(mass, massGrams(decimals(mass)));
    }

    /** A net mass by difference, by the most decimals seen in the pair; wider where one of them was entered as {@code ca.}; u in g. */
    double netMassGrams(Entered gross, Entered tare) {
        double weighing = massGrams(Math.max(decimals(gross), decimals(tare)));
        double wider = Math.max(widened(gross, weighing), widened(tare, weighing));
        return gross.halfWidth() > 0 && tare.halfWidth() > 0
                ? Math.hypot(widened(gross, weighing), widened(tare, weighing))
                : wider;
    }

    /**
     * Of the difference between a net mass that was typed and the two readings it was taken from: the balance is that of the readings, and
     * the typed number adds no more than its rounding, however few decimals it has. Of a number cell without a format the rounding is not
     * known; it is then taken as for a weighing of its own. u in g.
     */
    public double ofNetBesideWeighingGrams(Entered gross, Entered tare, Entered net) {
        return Math.hypot(netMassGrams(gross, tare), Math.min(massGrams(net), lastDigit(net)));
    }

    /** Volume of a layer by cylinder: the larger of a fixed and a relative part; u in mL. */
    public double layerVolumeMillilitres(Entered volume) {
        double relative = limits.value(Limit.LAYER_VOLUME_RELATIVE) / 100 * volume.value();
        return widened(volume, Math.max(limits.value(Limit.LAYER_VOLUME), relative));
    }

    /**
     * Volume by syringe, pipette or burette: a relative part and half the last digit as a rectangular distribution, which is no wider than
     * that of a number entered as {@code ca.}: a spreadsheet shows 2.00 as 2; u in mL.
     */
    public double deliveredVolumeMillilitres(Entered volume) {
        double relative = limits.value(Limit.CHARGE_VOLUME_RELATIVE) / 100 * volume.value();
        double lastDigit = volume.digitsKnown() ? StandardUncertainty.ofStep(Math.pow(10, -volume.decimals())) : 0;
        double reading =
                Math.min(lastDigit, limits.value(Limit.ABOUT_VOLUME_RELATIVE) / 100 * Math.abs(volume.value()));
        return widened(volume, Math.hypot(relative, reading));
    }

    /** A number that says no more than its digits: half the last one as a rectangular distribution; u in its own unit. */
    double lastDigit(Entered value) {
        return widened(value, StandardUncertainty.ofStep(Math.pow(10, -value.decimals())));
    }

    /** A charge as weighed, delivered or given in mmol or equivalents; u in the unit of its dimension. */
    double amount(Amount amount, Entered value) {
        if (amount.dimension() == Dimension.MASS) {
            return massGrams(value);
        }
        if (amount.dimension() == Dimension.EQUIVALENTS) {
            return lastDigit(value);
        }
        return deliveredVolumeMillilitres(value);
    }

    /** Relative standard uncertainty of an assay's result, as a fraction: as typed, else by its method; wider for {@code ca.}. */
    public double assayFraction(Assay assay, Entered result) {
        return widenedFraction(result, assayFraction(assay));
    }

    /** Relative standard uncertainty of a lot's assay in the Isolated table, as a fraction: as typed, else that of any other method. */
    public double assayFraction(Lot lot, Entered assay) {
        return widenedFraction(assay, statedFraction(lot.relativeStandardUncertaintyPercent(), Limit.ASSAY_OTHER));
    }

    /** Share of the relative variance that results of one calibration have in common, 0 to 1. */
    double calibrationShare() {
        return Math.max(0, Math.min(1, limits.value(Limit.CALIBRATION_SHARE) / 100));
    }

    /** Degrees of freedom of a stated uncertainty: n − 1 of its repeats; infinity where it is taken as well known. */
    static double degreesOfFreedom(Assay assay) {
        boolean stated = assay.relativeStandardUncertaintyPercent().entered().isPresent();
        return assay.replicates()
                .entered()
                .map(Entered::value)
                .filter(n -> stated && n >= 2)
                .map(n -> n - 1)
                .orElse(Double.POSITIVE_INFINITY);
    }

    /** A relative standard uncertainty widened by what the number itself spans. */
    static double widenedBySpan(Entered number, double fraction) {
        return number.halfWidth() > 0 && number.value() > 0
                ? Math.hypot(fraction, StandardUncertainty.rectangular(number.halfWidth()) / number.value())
                : fraction;
    }

    private double widenedFraction(Entered number, double fraction) {
        if (number.halfWidth() > 0 && number.value() > 0) {
            return widenedBySpan(number, fraction);
        }
        return number.qualifier() == Qualifier.ABOUT
                ? Math.max(fraction, limits.value(Limit.ABOUT_VOLUME_RELATIVE) / 100)
                : fraction;
    }

    /** Relative standard uncertainty of an assay, as a fraction: as typed, else by its method. */
    public double assayFraction(Assay assay) {
        return statedFraction(
                assay.relativeStandardUncertaintyPercent(),
                assay.method().map(InstrumentUncertainty::limitOf).orElse(Limit.ASSAY_OTHER));
    }

    /**
     * A relative standard uncertainty as a fraction: as stated, the upper end of a range; blank, the usual one. One that cannot be read
     * ({@code ?}, {@code > 3}) may have been meant larger than usual and counts as that of a number entered as {@code ca.} at least.
     *
     * @param statedPercent what was stated, %
     * @param usual the limit for a blank cell, %
     */
    double statedFraction(Field statedPercent, Limit usual) {
        double percent = statedPercent.entered().isPresent()
                ? upperEnd(statedPercent.entered().get())
                : statedPercent.isUnreadable()
                        ? Math.max(limits.value(usual), limits.value(Limit.ABOUT_VOLUME_RELATIVE))
                        : limits.value(usual);
        return percent / 100;
    }

    /**
     * Standard uncertainty of a volume: as stated beside it and by what the volume itself spans; where none is stated, the usual one; where
     * it cannot be read, that of a volume entered as {@code ca.} at least; mL.
     *
     * @param stated standard uncertainty as stated, mL
     * @param usualMillilitres for a blank cell
     */
    public double statedVolumeMillilitres(Field stated, Entered volume, double usualMillilitres) {
        if (stated.entered().isPresent()) {
            return Math.hypot(upperEnd(stated.entered().get()), StandardUncertainty.rectangular(volume.halfWidth()));
        }
        double rough = limits.value(Limit.ABOUT_VOLUME_RELATIVE) / 100 * Math.abs(volume.value());
        return stated.isUnreadable() ? Math.max(usualMillilitres, rough) : usualMillilitres;
    }

    private static double upperEnd(Entered uncertainty) {
        return uncertainty.value() + uncertainty.halfWidth();
    }

    private static Limit limitOf(Assay.Method method) {
        return switch (method) {
            case HPLC -> Limit.ASSAY_HPLC;
            case GC -> Limit.ASSAY_GC;
            case QNMR -> Limit.ASSAY_QNMR;
            case NMR -> Limit.ASSAY_NMR;
            case LC_MS -> Limit.ASSAY_LC_MS;
            case TITRATION -> Limit.ASSAY_TITRATION;
            default -> Limit.ASSAY_OTHER;
        };
    }

    private double widened(Entered number, double standardUncertainty) {
        if (number.halfWidth() > 0) {
            return Math.hypot(standardUncertainty, StandardUncertainty.rectangular(number.halfWidth()));
        }
        double relative = switch (number.qualifier()) {
            case ABOUT -> limits.value(Limit.ABOUT_VOLUME_RELATIVE) / 100;
            case DROPS -> limits.value(Limit.DROPS_RELATIVE) / 100;
            default -> 0;
        };
        return Math.max(standardUncertainty, relative * Math.abs(number.value()));
    }
}
