package plumbrow.documents.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumbrow.documents.reading.SheetReader;

/** What a value says besides its figure: its sign, its hours, whose it is; and layouts in which these were once lost. */
class SheetSenseTest {

    private static SafetySheet sheet(String heading, String... lines) {
        String text = "SAFETY DATA SHEET\n\nSECTION 1: IDENTIFICATION\nProduct name: Larkfield 4L\n\n" + heading + "\n"
                + String.join("\n", lines) + "\n";
        return SheetReader.read(text.getBytes(StandardCharsets.UTF_8), "sheet.txt");
    }

    private static SafetySheet composed(String heading, String... lines) {
        String text = "SAFETY DATA SHEET\n\nSECTION 1: IDENTIFICATION\nProduct name: Larkfield 4L\n\n"
                + "SECTION 3: COMPOSITION/INFORMATION ON INGREDIENTS\n"
                + "Component                CAS-No.       Weight %\n"
                + "Xylene                   1330-20-7     10 - 30\n"
                + "Ethylbenzene             100-41-4      1 - 5\n\n" + heading + "\n" + String.join("\n", lines) + "\n";
        return SheetReader.read(text.getBytes(StandardCharsets.UTF_8), "sheet.txt");
    }

    private static List<String> all(SafetySheet sheet, ValueKind kind) {
        return sheet.all(kind).stream().map(Reading.Stated::words).toList();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "FLASH_POINT | Flash point: None detected at or below 200 °F | > 200 °F",
                "FLASH_POINT | Flash point: F: 86 C: 30 | 86 °F",
                "FLASH_POINT | Flash point: ‹ 61 °C | < 61 °C",
                "FLASH_POINT | Flash point: Greater than 200 °F (TCC) | > 200 °F, closed cup",
                "FLASH_POINT | Flash point: >93 °C | > 93 °C",
                "VAPOUR_PRESSURE | Vapor pressure (mm Hg): 2.9E-7 @ 20 °C | 2.9E-7 mmHg at 20 °C",
                "DENSITY | Density: 30#/FT3 | 30 lb/ft³",
                "STORAGE_TEMPERATURE | Storage temperature: Do not store above 40 °C | ≤ 40 °C",
            })
    void theSignStays(ValueKind kind, String line, String expected) {
        SheetSection home = kind.home();
        String heading = home == SheetSection.PROPERTIES
                ? "SECTION 9: PHYSICAL AND CHEMICAL PROPERTIES"
                : "SECTION 7: HANDLING AND STORAGE";
        assertThat(all(sheet(heading, line), kind)).containsExactly(expected);
    }

    @Test
    void aSignAtTheEndOfALine() {
        assertThat(all(
                        sheet(
                                "SECTION 11: TOXICOLOGICAL INFORMATION",
                                "Oral: LD50 (rat) is greater",
                                "than 5,000 mg/kg",
                                "Dermal: LD50> 2,000 mg/kg (rabbit)"),
                        ValueKind.ACUTE_TOXICITY))
                .containsExactly("swallowed LD50 rat > 5000 mg/kg", "skin LD50 rabbit > 2000 mg/kg");
    }

    @Test
    void eachAmountHasItsOwnHours() {
        assertThat(all(
                        composed(
                                "SECTION 11: TOXICOLOGICAL INFORMATION",
                                "Component        LD50 Oral           LD50 Dermal           LC50 Inhalation",
                                "Xylene           3,500 mg/kg (Rat)   4,350 mg/kg (Rabbit)  29.1 mg/L (Rat) 4 h",
                                "Ethylbenzene     3,600 mg/kg (Rat)   15 g/kg (Rabbit)      17.2 mg/L (Rat) 1 h"),
                        ValueKind.ACUTE_TOXICITY))
                .contains(
                        "inhaled LC50 rat 29.1 mg/L, 4 h [Xylene]",
                        "inhaled LC50 rat 17.2 mg/L, 1 h [Ethylbenzene]",
                        "swallowed LD50 rat 3500 mg/kg [Xylene]");
    }

    @Test
    void anIngredientsFigureIsNotTheProducts() {
        SafetySheet sheet = composed(
                "SECTION 11: TOXICOLOGICAL INFORMATION",
                "Xylene",
                "LD50 oral, rat: 3,500 mg/kg",
                "Ethylbenzene",
                "LD50 oral, rat: 3,600 mg/kg");
        assertThat(sheet.all(ValueKind.ACUTE_TOXICITY).stream()
                        .map(stated -> (Content.Acute) stated.content())
                        .map(Content.Acute::substance))
                .containsExactly("Xylene", "Ethylbenzene");
    }

    @Test
    void whatIsEstimatedForTheProductIsNotTheLastIngredients() {
        SafetySheet sheet = composed(
                "SECTION 11: TOXICOLOGICAL INFORMATION",
                "Ethylbenzene",
                "LD50 oral, rabbit: 3,600 mg/kg",
                "Mutagenicity: no known effects",
                "Teratogenicity: no known effects",
                "Numerical measures of toxicity",
                "Acute toxicity estimates",
                "Oral        5,018 mg/kg");
        assertThat(sheet.all(ValueKind.ACUTE_TOXICITY).stream()
                        .map(stated -> (Content.Acute) stated.content())
                        .map(acute -> acute.substance() + acute.species()))
                .containsExactly("Ethylbenzenerabbit", "");
    }

    @Test
    void aDoseThatKillsAllIsNoLd50() {
        assertThat(all(
                        sheet("SECTION 11: TOXICOLOGICAL INFORMATION", "Oral, rat: LD100 900 mg/kg"),
                        ValueKind.ACUTE_TOXICITY))
                .isEmpty();
    }

    @Test
    void aDoubtfulNumberForTransport() {
        SafetySheet sheet = sheet("SECTION 14: TRANSPORT INFORMATION", "DOT: UN1993? Flammable liquid, n.o.s., 3, III");
        assertThat(all(sheet, ValueKind.UN_NUMBER)).isEmpty();
    }

    @Test
    void vacatedLimitsAndDangerLevelsAreNoLimits() {
        SafetySheet sheet = composed(
                "SECTION 8: EXPOSURE CONTROLS / PERSONAL PROTECTION",
                "Component        ACGIH TLV       OSHA PEL                   NIOSH IDLH",
                "Xylene           TWA: 100 ppm    TWA: 100 ppm               IDLH: 900 ppm",
                "                                 (vacated) STEL: 150 ppm");
        assertThat(all(sheet, ValueKind.EXPOSURE_LIMIT))
                .containsExactlyInAnyOrder("Xylene ACGIH TLV TWA 100 ppm", "Xylene OSHA PEL TWA 100 ppm");
    }

    @Test
    void firstAidIsWhole() {
        SafetySheet sheet = sheet(
                "SECTION 4: FIRST AID MEASURES",
                "Swallowed:   Call a poison center at once. NOTE: Do not make a person vomit",
                "             unless told to by a doctor. Never give anything by mouth to a",
                "             person who has fainted.",
                "Eyes:        Hold eye open and rinse slowly with water for 15 to 20 minutes.",
                "             Remove contact lenses after the first 5 minutes, then go on",
                "             rinsing.",
                "Most important symptoms: Redness and watering of the eyes.");
        assertThat(sheet.all(ValueKind.FIRST_AID).stream()
                        .map(stated -> (Content.FirstAid) stated.content())
                        .map(aid -> aid.route() + ": " + aid.text()))
                .containsExactlyInAnyOrder(
                        "SWALLOWED: Call a poison center at once. NOTE: Do not make a person vomit unless told to by a doctor."
                                + " Never give anything by mouth to a person who has fainted.",
                        "EYES: Hold eye open and rinse slowly with water for 15 to 20 minutes. Remove contact lenses after the"
                                + " first 5 minutes, then go on rinsing.");
    }

    @Test
    void aSentenceThatBreaksOffIsNotShownAsWhole() {
        SafetySheet sheet = sheet(
                "SECTION 4: FIRST AID MEASURES",
                "Inhaled:   Bring the person to fresh air. Keep the person warm and at");
        assertThat(sheet.all(ValueKind.FIRST_AID)).isEmpty();
        assertThat(sheet.of(ValueKind.FIRST_AID)).isInstanceOf(Reading.Unclear.class);
    }

    @Test
    void hoursBetweenMeasureAndAmount() {
        assertThat(all(
                        sheet(
                                "SECTION 11: TOXICOLOGICAL INFORMATION",
                                "Inhalation: LC50 1 h (nose only) > 2.04 mg/L Rat Inhalation LC50 4 h (nose only) > 0.51 mg/L Rat"),
                        ValueKind.ACUTE_TOXICITY))
                .containsExactly("inhaled LC50 > 2.04 mg/L, 1 h", "inhaled LC50 rat > 0.51 mg/L, 4 h");
    }

    @Test
    void aPrintDateIsNoIssueDate() {
        assertThat(all(
                        sheet("SECTION 16: OTHER INFORMATION", "Print date: 2021-05-06", "Revision date: 2019-02-17"),
                        ValueKind.REVISION_DATE))
                .containsExactly("2019-02-17");
    }

    @Test
    void otherLandsLimitsAreNotStated() {
        SafetySheet sheet = composed(
                "SECTION 8: EXPOSURE CONTROLS / PERSONAL PROTECTION",
                "Component        ACGIH TLV       OSHA PEL        Ontario TWAEV",
                "Xylene           TWA: 100 ppm    TWA: 100 ppm    TWA: 90 ppm");
        assertThat(all(sheet, ValueKind.EXPOSURE_LIMIT))
                .containsExactlyInAnyOrder("Xylene ACGIH TLV TWA 100 ppm", "Xylene OSHA PEL TWA 100 ppm");
    }

    @Test
    void twoLinesOfHeads() {
        SafetySheet sheet = composed(
                "SECTION 8: EXPOSURE CONTROLS / PERSONAL PROTECTION",
                "                     OSHA PEL                  ACGIH TLV",
                "Component            TWA          STEL         TWA          STEL",
                "Xylene               100 ppm      150 ppm      20 ppm       -",
                "Ethylbenzene         100 ppm      -            20 ppm       -");
        assertThat(all(sheet, ValueKind.EXPOSURE_LIMIT))
                .containsExactlyInAnyOrder(
                        "Xylene OSHA PEL TWA 100 ppm",
                        "Xylene OSHA PEL STEL 150 ppm",
                        "Xylene ACGIH TLV TWA 20 ppm",
                        "Ethylbenzene OSHA PEL TWA 100 ppm",
                        "Ethylbenzene ACGIH TLV TWA 20 ppm");
    }

    @Test
    void aTableForEachAuthority() {
        SafetySheet sheet = composed(
                "SECTION 8: EXPOSURE CONTROLS / PERSONAL PROTECTION",
                "US. OSHA Table Z-1 Limits for Air Contaminants",
                "Components                 Type        Value",
                "Xylene (CAS 1330-20-7)     PEL         435 mg/m3",
                "                                       100 ppm",
                "US. ACGIH Threshold Limit Values",
                "Components                 Type        Value",
                "Xylene (CAS 1330-20-7)     STEL        150 ppm",
                "                           TWA         100 ppm");
        assertThat(all(sheet, ValueKind.EXPOSURE_LIMIT))
                .contains("Xylene ACGIH TLV STEL 150 ppm", "Xylene ACGIH TLV TWA 100 ppm")
                .hasSize(4);
    }

    @Test
    void aTransportTableWithALineForEachMode() {
        SafetySheet sheet = sheet(
                "SECTION 14: TRANSPORT INFORMATION",
                "Mode      UN number    Proper shipping name       Class    Packing group",
                "DOT       UN1993       Flammable liquid, n.o.s.   3        III",
                "IATA      UN1993       Flammable liquid, n.o.s.   3        III");
        assertThat(all(sheet, ValueKind.UN_NUMBER)).containsExactly("DOT: UN1993", "IATA: UN1993");
        assertThat(all(sheet, ValueKind.TRANSPORT_CLASS)).containsExactly("DOT: 3", "IATA: 3");
        assertThat(all(sheet, ValueKind.PACKING_GROUP)).containsExactly("DOT: III", "IATA: III");
    }

    @Test
    void theMakersBlock() {
        String text = """
                SAFETY DATA SHEET

                SECTION 1: IDENTIFICATION
                Product name: Larkfield 4L
                Manufacturer:     Larkfield Works LLC
                                  12 Mill Lane
                                  Plainville, KS 67663
                Emergency phone:  1-800-555-0142 (24 hours)
                """;
        SafetySheet sheet = SheetReader.read(text.getBytes(StandardCharsets.UTF_8), "sheet.txt");
        assertThat(all(sheet, ValueKind.MAKER)).containsExactly("Larkfield Works LLC");
        assertThat(all(sheet, ValueKind.ADDRESS)).containsExactly("12 Mill Lane, Plainville, KS 67663");
    }

    @Test
    void bothExplosiveLimits() {
        SafetySheet sheet =
                sheet("SECTION 9: PHYSICAL AND CHEMICAL PROPERTIES", "Explosive limits: Lower: 1.1 % Upper: 7.0 %");
        assertThat(all(sheet, ValueKind.LOWER_EXPLOSIVE_LIMIT)).containsExactly("1.1 %");
        assertThat(all(sheet, ValueKind.UPPER_EXPLOSIVE_LIMIT)).containsExactly("7 %");
    }
}
