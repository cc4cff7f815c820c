package plumbrow.documents.card;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plumbrow.documents.sheet.Content;
import plumbrow.documents.sheet.Reading;
import plumbrow.documents.sheet.SafetySheet;
import plumbrow.documents.sheet.ValueKind;

/**
 * Eyes and skin by the codes that the sheet prints, held against its signal word.
 *
 * Codes and categories: UN GHS, chapters 3.2 and 3.3 (value from memory). What corrodes skin is taken to damage eyes (3.3.2).
 */
final class IrritationPart {
    private static final Map<String, Grade> SKIN = Map.of(
            "H314", new Grade("category 1, burns skin", true),
            "H315", new Grade("category 2, irritates skin", false),
            "H316", new Grade("category 3, irritates skin mildly", false));
    private static final Map<String, Grade> EYES = Map.of(
            "H318", new Grade("category 1, damages eyes for good", true),
            "H319", new Grade("category 2A, irritates eyes", false),
            "H320", new Grade("category 2B, irritates eyes mildly", false),
            "H314", new Grade("category 1, since it burns skin", true));

    private IrritationPart() {}

    /**
     * What a code says.
     *
     * @param danger whether it calls for Danger
     */
    private record Grade(String words, boolean danger) {}

    static void write(SafetySheet sheet, List<CardLine> lines) {
        lines.add(line(sheet, "Eyes, irritation (GHS)", List.of("H318", "H319", "H320", "H314"), EYES));
        lines.add(line(sheet, "Skin, irritation (GHS)", List.of("H314", "H315", "H316"), SKIN));
    }

    private static CardLine line(SafetySheet sheet, String about, List<String> codes, Map<String, Grade> grades) {
        List<Reading.Stated> statements = sheet.all(ValueKind.HAZARD_STATEMENT);
        for (String code : codes) {
            Optional<Reading.Stated> printed = statements.stream()
                    .filter(stated ->
                            ((Content.Statement) stated.content()).code().equals(code))
                    .findFirst();
            Grade grade = grades.get(code);
            if (printed.isPresent() && grade != null) {
                return line(sheet, about, printed.get(), code, grade);
            }
        }
        return CardLine.unknown(
                about,
                statements.isEmpty()
                        ? "the sheet, section 2, where no hazard code was found"
                        : "section 11 of the sheet and the label; section 2 prints no code for it");
    }

    private static CardLine line(SafetySheet sheet, String about, Reading.Stated printed, String code, Grade grade) {
        List<Origin> origins = new ArrayList<>(List.of(Said.origin(printed.quote())));
        String says = grade.words() + ", " + code + ", " + (grade.danger() ? "Danger" : "Warning");
        if (grade.danger()
                && sheet.of(ValueKind.SIGNAL_WORD) instanceof Reading.Stated word
                && !word.words().equalsIgnoreCase("danger")) {
            origins.add(Said.origin(word.quote()));
            return new CardLine(
                    about, says + ", but the sheet’s signal word is " + word.words(), Known.DIFFERS, origins);
        }
        return new CardLine(about, says, Known.READ, origins);
    }
}
