package plumbrow.documents.card;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import plumbrow.documents.reading.SheetReader;
import plumbrow.documents.sheet.SafetySheet;

/** A safety sheet of an invented product as plain text, section by section, to be changed line by line. */
final class TypedSheet {
    private final Map<Integer, String> sections = new LinkedHashMap<>();

    static TypedSheet furrowgate() {
        TypedSheet sheet = new TypedSheet();
        sheet.set(1, """
                        Identification
                        Product name: Furrowgate 4 EC
                        EPA Reg. No.: 90017-12
                        Emergency telephone: 1-800-555-0142
                        """);
        sheet.set(2, """
                        Hazard(s) identification
                        Signal word: Warning
                        H302 Harmful if swallowed.
                        H410 Very toxic to aquatic life with long lasting effects.
                        """);
        sheet.set(3, """
                        Composition/information on ingredients
                        Ingredient    CAS No.    % by weight
                        Chlorpyrifos    2921-88-2    42.6
                        Other ingredients        57.4
                        """);
        sheet.set(4, """
                        First-aid measures
                        Ingestion: Call a poison control center at once. Do not make the person vomit.
                        Skin contact: Take off clothing and rinse skin with plenty of water for 15 minutes.
                        """);
        sheet.set(5, "Fire-fighting measures\nExtinguishing media: Foam, dry chemical, carbon dioxide.\n");
        sheet.set(6, "Accidental release measures\nClean-up: Dike the spill and soak it up with clay.\n");
        sheet.set(7, "Handling and storage\nStorage: Keep locked up, cool and dry, away from feed.\n");
        sheet.set(8, """
                        Exposure controls/personal protection
                        Eye protection: Goggles.
                        Hand protection: Barrier laminate or butyl rubber gloves.
                        """);
        sheet.set(9, """
                        Physical and chemical properties
                        Vapor pressure: 1.9 x 10-5 mm Hg at 25 °C
                        Specific gravity: 1.1264
                        Flash point: 62 °C
                        """);
        sheet.set(10, "Stability and reactivity\nIncompatible materials: Strong bases.\n");
        sheet.set(11, """
                        Toxicological information
                        Oral LD50 (rat): 500 mg/kg
                        Dermal LD50 (rabbit): > 5000 mg/kg
                        Inhalation LC50 (rat), 4 h: 3.1 mg/L
                        """);
        sheet.set(12, "Ecological information\nRainbow trout LC50 (96 h): 0.025 mg/L\nHoney bee LD50: 0.07 µg/bee\n");
        sheet.set(13, "Disposal considerations\nDisposal: Use it up by the label.\n");
        sheet.set(14, "Transport information\nUN number: UN3082\nClass: 9\nPacking group: III\n");
        sheet.set(15, "Regulatory information\nReportable quantity (chlorpyrifos): 1 lb\nLabel signal word: WARNING\n");
        sheet.set(16, "Other information\nRevision date: March 4, 2025\n");
        return sheet;
    }

    /** A section's heading and text; an empty text leaves the section out. */
    TypedSheet set(int section, String text) {
        sections.put(section, text);
        return this;
    }

    /** Changes words of a section, which must stand there. */
    TypedSheet change(int section, String from, String to) {
        String text = sections.getOrDefault(section, "");
        if (!text.contains(from)) {
            throw new AssertionError(from + " does not stand in section " + section);
        }
        return set(section, text.replace(from, to));
    }

    SafetySheet read() {
        StringBuilder text = new StringBuilder("SAFETY DATA SHEET\n\n");
        sections.forEach((number, words) -> {
            if (!words.isEmpty()) {
                text.append("SECTION ")
                        .append(number)
                        .append(": ")
                        .append(words)
                        .append('\n');
            }
        });
        return SheetReader.read(text.toString().getBytes(StandardCharsets.UTF_8), "furrowgate.txt");
    }
}
