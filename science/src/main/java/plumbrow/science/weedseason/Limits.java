package plumbrow.science.weedseason;

/** Refuses numbers outside their range, in words. */
final class Limits {
    private Limits() {}

    static void positive(String what, double value) {
        if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(what + " is " + value + "; expected more than 0");
        }
    }

    static void notNegative(String what, double value) {
        if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(what + " is " + value + "; expected 0 or more");
        }
    }

    static void share(String what, double value) {
        if (!(value >= 0 && value <= 1)) {
            throw new IllegalArgumentException(what + " is " + value + "; expected a share from 0 to 1");
        }
    }
}
