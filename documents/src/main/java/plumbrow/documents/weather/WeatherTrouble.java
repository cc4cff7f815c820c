package plumbrow.documents.weather;

/** A weather file that can't be taken in; the message is a sentence for the person at the desk. */
public final class WeatherTrouble extends RuntimeException {
    private static final long serialVersionUID = 1;

    public WeatherTrouble(String sentence) {
        super(sentence, null, false, false);
    }

    static WeatherTrouble line(int line, String found, String expected) {
        return new WeatherTrouble("Line " + line + " has '" + shown(found) + "'; expected " + expected + ".");
    }

    static String shown(String found) {
        return found.length() > 60 ? found.substring(0, 57) + "…" : found;
    }
}
