package plumbrow.documents.card;

/** Small turns of phrase. */
final class Words {
    private Words() {}

    static String capital(String words) {
        return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    /** One word where both ends of what is known say the same, else both. */
    static String either(String one, String other) {
        return one.equals(other) ? one : one + " or " + other;
    }
}
