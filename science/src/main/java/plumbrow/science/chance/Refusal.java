package plumbrow.science.chance;

/** The refusal of numbers that make no distribution. */
final class Refusal {
    private Refusal() {}

    static void unless(boolean holds, String sentence) {
        if (!holds) {
            throw new IllegalArgumentException(sentence);
        }
    }
}
