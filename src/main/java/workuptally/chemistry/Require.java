package workuptally.chemistry;

/** Range checks of the arguments of this package. */
final class Require {
    private Require() {}

    static double positive(double value, String name) {
        if (!(value > 0 && Double.isFinite(value))) {
            throw new IllegalArgumentException(name + " must be above 0: " + value);
        }
        return value;
    }

    static double notNegative(double value, String name) {
        if (!(value >= 0 && Double.isFinite(value))) {
            throw new IllegalArgumentException(name + " must be 0 or more: " + value);
        }
        return value;
    }

    static double finite(double value, String name) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(name + " must be a number: " + value);
        }
        return value;
    }

    static int atLeastOne(int value, String name) {
        if (value < 1) {
            throw new IllegalArgumentException(name + " must be 1 or more: " + value);
        }
        return value;
    }
}
