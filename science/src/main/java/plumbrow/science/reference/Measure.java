package plumbrow.science.reference;

import java.util.List;
import plumbrow.science.figure.Numbers;

/**
 * A kind of value: its name, the units it may come in, and what is physically possible.
 *
 * @param key name in the files
 * @param words name for people
 * @param units the first is the one that a spread is shown in
 * @param least smallest number possible, in the first unit
 * @param most largest number possible, in the first unit; 0 for codes, which are no numbers
 */
public record Measure(String key, String words, List<String> units, double least, double most) {
    static Measure of(String key, String words, double least, double most, String... units) {
        return new Measure(key, words, List.of(units), least, most);
    }

    static Measure code(String key, String words, String... schemes) {
        return new Measure(key, words, List.of(schemes), 0, 0);
    }

    boolean holdsCodes() {
        return most == 0;
    }

    String range() {
        return Numbers.plain(least) + " to " + Numbers.plain(most) + " " + units.get(0);
    }
}
