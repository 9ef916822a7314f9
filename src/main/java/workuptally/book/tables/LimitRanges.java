package workuptally.book.tables;

import workuptally.book.words.Range;
import workuptally.model.Limit;

/** What a laboratory can mean by each number of Limits, in its unit; wide on purpose, and common practice but where a source is named. */
final class LimitRanges {
    /** No vessel holds more than all of it; a tenth or less is a share written for a percentage. */
    private static final Range FILL = Range.of(10, 100);

    /** A fifth of the product in one layer is a lost yield, not a limit. */
    private static final Range PRODUCT = Range.of(0, 20);

    /** Of a whole. */
    private static final Range SHARE = Range.of(0, 100);

    /** Half of the amount in question: beyond it a width, a tolerance or a share of traces says nothing any more. */
    private static final Range HALF = Range.of(0, 50);

    /** Nothing is known better than to one part in ten thousand at a synthesis bench, and twice the value is no reading. */
    private static final Range RELATIVE_UNCERTAINTY = Range.of(0.01, 100);

    /** From k = 1, the standard uncertainty itself, to Student's t for 95 % with one degree of freedom (JCGM 100:2008, table G.2). */
    private static final Range COVERAGE = Range.of(1, 13);

    /** From what a mass spectrometer finds, 1 ng/mL, to a tenth of a concentrated solution, mg/mL. */
    private static final Range DETECTION = Range.of(0.000001, 100);

    /** Ten years. */
    private static final Range DAYS = Range.of(0, 3650);

    /** A wash with less than it has to neutralise cannot be enough; ten times as much asks for what nobody does. */
    private static final Range RATIO = Range.of(1, 10);

    private LimitRanges() {}

    static Range of(Limit limit) {
        return switch (limit) {
            case ROOM_TEMPERATURE -> Range.ROOM_TEMPERATURE;
            case ROOM_PRESSURE -> Range.ROOM_PRESSURE;
            case COVERAGE_FACTOR -> COVERAGE;
            case FUNNEL_FILL, FUNNEL_FILL_WITH_GAS, FUNNEL_FILL_STOP, CONTAINER_FILL -> FILL;
            case LAYER_LIMIT, RUN_LIMIT -> PRODUCT;
            case EVAPORATION_ALLOWANCE, EVAPORATION_ALLOWANCE_VOLATILE, CALIBRATION_SHARE -> SHARE;
            case CLOSURE_WIDTH,
                    CLOSURE_RESOLUTION,
                    TITRE_BELOW_LABEL,
                    WEIGHING_TOLERANCE,
                    CONTAINER_TRACE,
                    HALOGEN_LIMIT -> HALF;
            case NEUTRALISATION_RATIO -> RATIO;
            case DETECTION_HPLC, DETECTION_GC, DETECTION_NMR, DETECTION_LC_MS, DETECTION_TLC -> DETECTION;
            case CONTAINER_DAYS, WAITING_DAYS -> DAYS;
            default -> limit.isUncertainty() ? uncertainty(limit) : Range.NOT_NEGATIVE;
        };
    }

    private static Range uncertainty(Limit limit) {
        return limit.unit().equals("%") ? RELATIVE_UNCERTAINTY : leastOf(limit);
    }

    /** A reading is not known better than its last figure allows, 0.29 of it as standard uncertainty (JCGM 100:2008, F.2.2.1). */
    private static Range leastOf(Limit limit) {
        return switch (limit) {
            case WEIGHING_5_DECIMALS -> Range.of(0.0000029, 0.01);
            case WEIGHING_4_DECIMALS -> Range.of(0.000029, 0.1);
            case WEIGHING_3_DECIMALS -> Range.of(0.00029, 1);
            case WEIGHING_2_DECIMALS -> Range.of(0.0029, 10);
            case WEIGHING_1_DECIMAL -> Range.of(0.029, 100);
            case WEIGHING_0_DECIMALS -> Range.of(0.29, 1000);
            default -> Range.POSITIVE;
        };
    }
}
