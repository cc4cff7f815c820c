package plumbrow.app.rows;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import plumbrow.advice.field.Crop;
import plumbrow.advice.nextseason.BeginAsked;
import plumbrow.advice.nextseason.NextCropRule;

/** Reads how a season is to begin from words, the same on the desk, by command and by program. */
public final class BeginWords {
    private BeginWords() {}

    /**
     * How it is to begin.
     *
     * @param crops words for crops by field; a blank leaves the field to the rule
     * @throws IllegalArgumentException with a sentence: where, what was found, what is expected
     */
    public static BeginAsked asked(String year, String asOf, LocalDate today, Map<String, String> crops) {
        Map<String, Crop> said = new LinkedHashMap<>();
        crops.forEach((field, word) -> {
            if (!word.isBlank()) {
                said.put(
                        field,
                        NextCropRule.called(word)
                                .findFirst()
                                .orElseThrow(() -> new IllegalArgumentException("Crop of " + field + ": found “" + word
                                        + "”, expected corn, soybean or wheat.")));
            }
        });
        return new BeginAsked(year(year), asOf.isBlank() ? today : day(asOf), said, Map.of());
    }

    private static int year(String text) {
        try {
            return Integer.parseInt(text.strip());
        } catch (NumberFormatException noYear) {
            throw new IllegalArgumentException(
                    "Year: found “" + text + "”, expected a harvest year such as 2027.", noYear);
        }
    }

    private static LocalDate day(String text) {
        try {
            return LocalDate.parse(text.strip());
        } catch (DateTimeException noDay) {
            throw new IllegalArgumentException(
                    "Day of the assumptions: found “" + text + "”, expected a day such as 2027-01-15.", noDay);
        }
    }
}
