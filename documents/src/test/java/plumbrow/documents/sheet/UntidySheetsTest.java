package plumbrow.documents.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumbrow.documents.reading.SheetReader;

/**
 * Ways of writing that real sheets have, put down by hand: each a few lines of a sheet, and what a careful person would take
 * from them. Wordings are common practice; unit forms are those in common use.
 */
class UntidySheetsTest {

    private static SafetySheet sheet(String heading, String... lines) {
        String text =
                "SAFETY DATA SHEET\n\nSECTION 1: IDENTIFICATION\nProduct name: Larkfield 4L\nOSHA 29 CFR 1910.1200\n\n"
                        + heading + "\n" + String.join("\n", lines) + "\n";
        return SheetReader.read(text.getBytes(StandardCharsets.UTF_8), "sheet.txt");
    }

    private static SafetySheet properties(String... lines) {
        return sheet("SECTION 9: PHYSICAL AND CHEMICAL PROPERTIES", lines);
    }

    private static SafetySheet toxicology(String... lines) {
        return sheet("SECTION 11: TOXICOLOGICAL INFORMATION", lines);
    }

    private static List<String> all(SafetySheet sheet, ValueKind kind) {
        return sheet.all(kind).stream().map(Reading.Stated::words).toList();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Vapour pressure: 2.1 x 10-6 mmHg @ 25°C | 2.1E-6 mmHg at 25 °C",
                "Vapor pressure (mm Hg): 2.9 x 10-7 mm Hg at 25 C | 2.9E-7 mmHg at 25 °C",
                "Vapor Pressure: 1.5E-07 Torr (20 deg C) | 1.5E-7 torr at 20 °C",
                "Vapour pressure: 0,0026 hPa (20 °C) | 0.0026 hPa at 20 °C",
                "Vapour pressure: 1.38 x 10^-2 mPa | 0.0138 mPa",
                "Vapour pressure: < 4.5e-6 mbar | < 4.5E-6 mbar",
                "Vapour pressure: 1.2 × 10⁻⁹ kPa at 20 °C | 1.2E-9 kPa at 20 °C",
                "Vapor pressure: 3.0E-10 atm | 3.0E-10 atm",
                "Vapor pressure: 2.9 x 10(-7) mmHg | 2.9E-7 mmHg",
                "Vapor pressure: 2.9*10^-7 mm Hg at 77 F | 2.9E-7 mmHg at 25 °C",
                "Vapour pressure at 25 °C : approx. 3.7 mPa | about 3.7 mPa at 25 °C",
                "Flash point: > 93.3 °C (> 200 °F) Method: Pensky-Martens closed cup | > 93.3 °C, closed cup",
                "Flash Point (TCC): 105 F | 105 °F, closed cup",
                "Boiling point/boiling range  100 - 105 °C | 100–105 °C",
                "Specific Gravity (H2O = 1): 1.14 | 1.14",
                "Density: 9.3 lbs/gal @ 68 F | 9.3 lb/gal at 20 °C",
                "Relative density 1,12 g/cm³ (20 °C) | 1.12 g/mL at 20 °C",
                "pH (1% solution): 4.5 - 6.0 | 4.5–6",
                "pH : ca. 7 at 20 °C | about 7 at 20 °C",
                "Water solubility: 33 ppm (22 °C) | 33 ppm at 22 °C",
                "Solubility in water: not more than 5 mg/l | ≤ 5 mg/L",
                "Partition coefficient: n-octanol/water: log Pow: 2,61 (25 °C) | 2.61 at 25 °C",
                "log Kow = -3.2 | -3.2",
            })
    void oneProperty(String line, String expected) {
        SafetySheet sheet = properties(line);
        Reading.Stated stated = sheet.readings().stream()
                .filter(reading ->
                        reading instanceof Reading.Stated && reading.kind().home() == SheetSection.PROPERTIES)
                .map(Reading.Stated.class::cast)
                .findFirst()
                .orElseThrow(() -> new AssertionError("nothing read from: " + line + "; " + sheet.readings()));
        assertThat(stated.words()).isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource({
        "Not determined",
        "N/A",
        "No data available",
        "n.d.",
        "None established",
        "-",
        "not applicable",
        "Not available",
        "ND"
    })
    void nothingIsNotZero(String words) {
        assertThat(properties("Flash point: " + words, "Density: 1.1 g/mL").of(ValueKind.FLASH_POINT))
                .isInstanceOf(Reading.NoData.class);
    }

    @Test
    void theLimitTestKeepsItsSign() {
        assertThat(all(toxicology("LD50 (rat, oral): > 5,000 mg/kg bw"), ValueKind.ACUTE_TOXICITY))
                .containsExactly("swallowed LD50 rat > 5000 mg/kg");
    }

    @Test
    void dosesInGrams() {
        assertThat(all(toxicology("Acute dermal toxicity, LD50 rabbit: >2 g/kg"), ValueKind.ACUTE_TOXICITY))
                .containsExactly("skin LD50 rabbit > 2 g/kg");
    }

    @Test
    void bothSexes() {
        assertThat(all(
                        toxicology("Oral LD50, rat: 1,563 mg/kg (male); 1,189 mg/kg (female)"),
                        ValueKind.ACUTE_TOXICITY))
                .containsExactly("swallowed LD50 rat male 1563 mg/kg", "swallowed LD50 rat female 1189 mg/kg");
    }

    @Test
    void breathingHasItsHours() {
        assertThat(all(
                        toxicology(
                                "Inhalation",
                                "LC50 (4-hr. rat) greater than 5.2 mg/L (dust)",
                                "LC50/4h/rat > 2,500 mg/m3"),
                        ValueKind.ACUTE_TOXICITY))
                .containsExactly("inhaled LC50 rat > 5.2 mg/L, 4 h", "inhaled LC50 rat > 2500 mg/m³, 4 h");
    }

    @Test
    void longFeedingIsNoAcuteDose() {
        assertThat(all(
                        toxicology(
                                "Oral LD50 rat 900 mg/kg",
                                "90-day feeding, rat: NOAEL 25 mg/kg/day",
                                "ADI 0.03 mg/kg bw/day"),
                        ValueKind.ACUTE_TOXICITY))
                .containsExactly("swallowed LD50 rat 900 mg/kg");
    }

    @Test
    void aDotThatMayPartThousands() {
        SafetySheet sheet = toxicology("Oral LD50 rat: 5.000 mg/kg");
        assertThat(sheet.all(ValueKind.ACUTE_TOXICITY)).isEmpty();
        assertThat(sheet.of(ValueKind.ACUTE_TOXICITY)).isInstanceOf(Reading.Unclear.class);
    }

    @Test
    void megapascalsAreASlip() {
        assertThat(properties("Vapour pressure: 0.2 MPa").of(ValueKind.VAPOUR_PRESSURE))
                .isInstanceOf(Reading.Unclear.class);
    }

    @Test
    void aPartitionThatMayNotBeALogarithm() {
        assertThat(properties("Partition coefficient: 407").of(ValueKind.PARTITION))
                .isInstanceOf(Reading.Unclear.class);
    }

    @Test
    void theSameTwiceIsOneAndDifferentIsAContradiction() {
        assertThat(properties("Flash point: 200 °F", "Flash point: 93.3 °C").of(ValueKind.FLASH_POINT))
                .isInstanceOf(Reading.Stated.class);
        assertThat(properties("Flash point: 93 °C", "Flash point: 61 °C").of(ValueKind.FLASH_POINT))
                .isInstanceOf(Reading.Differing.class);
    }

    @Test
    void theNextLinesValueIsNotBorrowed() {
        SafetySheet sheet = properties(
                "Flash point:", "Autoignition temperature: 400 °C", "Vapor density: 3.1", "pH:", "Viscosity: 12 cP");
        assertThat(sheet.of(ValueKind.FLASH_POINT)).isInstanceOf(Reading.NotStated.class);
        assertThat(sheet.of(ValueKind.DENSITY)).isInstanceOf(Reading.NotStated.class);
        assertThat(sheet.of(ValueKind.PH)).isInstanceOf(Reading.NotStated.class);
    }

    @Test
    void severalSolventsOnOneLine() {
        assertThat(properties("Solubility: acetone 29 g/L; water 33 mg/L (20 °C)")
                        .of(ValueKind.SOLUBILITY)
                        .words())
                .isEqualTo("33 mg/L at 20 °C");
    }

    @Test
    void wrappedCells() {
        SafetySheet sheet = properties(
                "Partition coefficient:        log Kow 2.61",
                "n-octanol/water               (25 °C)",
                "Initial boiling point and     > 100 °C",
                "boiling range");
        assertThat(sheet.of(ValueKind.PARTITION).words()).isEqualTo("2.61 at 25 °C");
        assertThat(sheet.of(ValueKind.BOILING_POINT).words()).isEqualTo("> 100 °C");
    }

    @Test
    void namesOfIngredientsOverTwoLines() {
        SafetySheet sheet = sheet(
                "SECTION 3: COMPOSITION/INFORMATION ON INGREDIENTS",
                "Component                     CAS-No.       Weight %",
                "2,4-D, 2-ethylhexyl           1928-43-4     88.8",
                "ester",
                "Solvent naphtha (petroleum),  64742-94-5    >= 5 - < 10",
                "heavy aromatic",
                "Other ingredients             Trade secret  balance");
        assertThat(all(sheet, ValueKind.INGREDIENT))
                .containsExactly(
                        "2,4-D, 2-ethylhexyl ester, CAS 1928-43-4, 88.8 %",
                        "Solvent naphtha (petroleum), heavy aromatic, CAS 64742-94-5, 5–10 %");
    }

    @Test
    void aMistypedCasNumberIsKeptAndSaid() {
        SafetySheet sheet = sheet("SECTION 3: COMPOSITION", "Atrazine (CAS No. 1912-42-9) 42.2 %");
        assertThat(all(sheet, ValueKind.INGREDIENT))
                .containsExactly("Atrazine, CAS 1912-42-9 (check digit does not fit), 42.2 %");
    }

    @Test
    void aRegistrationNumberIsNoCasNumber() {
        SafetySheet sheet =
                sheet("SECTION 15: REGULATORY INFORMATION", "EPA Reg. No.: 99999-12-3", "EPA Est. No. 99999-IA-1");
        assertThat(sheet.of(ValueKind.REGISTRATION_NUMBER).words()).isEqualTo("99999-12-3");
        assertThat(sheet.all(ValueKind.INGREDIENT)).isEmpty();
    }

    @Test
    void twoSignalWordsAreTwoThings() {
        SafetySheet sheet = sheet(
                "SECTION 2: HAZARDS IDENTIFICATION",
                "Signal word: DANGER",
                "SECTION 15: REGULATORY INFORMATION",
                "This chemical is a registered pesticide. Its label says:",
                "Signal word: CAUTION");
        assertThat(sheet.of(ValueKind.SIGNAL_WORD).words()).isEqualTo("Danger");
        assertThat(sheet.of(ValueKind.LABEL_SIGNAL_WORD).words()).isEqualTo("CAUTION");
    }

    @Test
    void notClassified() {
        SafetySheet sheet = sheet(
                "SECTION 2: HAZARDS IDENTIFICATION",
                "Classification: Not classified as hazardous.",
                "Signal word: None",
                "Hazard statements: Not applicable");
        assertThat(sheet.of(ValueKind.SIGNAL_WORD)).isInstanceOf(Reading.NoData.class);
        assertThat(sheet.all(ValueKind.HAZARD_STATEMENT)).isEmpty();
    }

    @Test
    void datesThatMayBeReadTwoWays() {
        byte[] plain = "SECTION 1: IDENTIFICATION\nProduct name: X1\nRevision date: 03/04/2021\n"
                .getBytes(StandardCharsets.UTF_8);
        assertThat(SheetReader.read(plain, "a.txt").of(ValueKind.REVISION_DATE)).isInstanceOf(Reading.Unclear.class);
        assertThat(sheet("SECTION 16: OTHER INFORMATION", "Revision date: 03/04/2021")
                        .of(ValueKind.REVISION_DATE)
                        .words())
                .isEqualTo("2021-03-04");
        assertThat(sheet("SECTION 16: OTHER INFORMATION", "Date of last revision 17-Feb-2019 Version 3")
                        .of(ValueKind.REVISION_DATE)
                        .words())
                .isEqualTo("2019-02-17");
    }

    @Test
    void twoFiguresForOneLimit() {
        SafetySheet sheet = sheet(
                "SECTION 8: EXPOSURE CONTROLS / PERSONAL PROTECTION",
                "Xylene: OSHA PEL 100 ppm (435 mg/m3) TWA; ACGIH TLV 100 ppm TWA, 150 ppm STEL");
        assertThat(sheet.all(ValueKind.EXPOSURE_LIMIT).stream()
                        .map(stated -> (Content.ExposureLimit) stated.content())
                        .map(limit -> limit.authority() + " " + limit.basis() + " "
                                + limit.amount().words()))
                .containsExactly("OSHA PEL TWA 100 ppm", "ACGIH TLV TWA 100 ppm", "ACGIH TLV STEL 150 ppm");
    }

    @Test
    void transportInOneSentence() {
        SafetySheet sheet = sheet(
                "SECTION 14: TRANSPORT INFORMATION",
                "DOT (ground): UN3018, Organophosphorus pesticides, liquid, toxic (chlorpyrifos), 6.1, PG III, RQ",
                "IATA: UN3082, Environmentally hazardous substance, liquid, n.o.s., 9, III");
        assertThat(all(sheet, ValueKind.UN_NUMBER)).containsExactly("DOT: UN3018", "IATA: UN3082");
        assertThat(all(sheet, ValueKind.TRANSPORT_CLASS)).containsExactly("DOT: 6.1", "IATA: 9");
        assertThat(all(sheet, ValueKind.PACKING_GROUP)).containsExactly("DOT: III", "IATA: III");
    }

    @Test
    void fishAndBirdsInSentences() {
        SafetySheet sheet = sheet(
                "SECTION 12: ECOLOGICAL INFORMATION",
                "96-hour LC50, rainbow trout: 0.0071 mg/L",
                "96 h LC50 bluegill sunfish 2.4 µg/L",
                "Dietary LC50 (mallard duck, 5 days): > 5,620 ppm",
                "Contact LD50 honey bee (48 h): 0.11 µg/bee",
                "Half-life in soil: 30 days; Koc: 6,070 mL/g");
        assertThat(all(sheet, ValueKind.ECOTOXICITY))
                .containsExactly(
                        "rainbow trout LC50 0.0071 mg/L, 96 h",
                        "bluegill LC50 2.4 µg/L, 96 h",
                        "mallard duck LC50 > 5620 ppm, 120 h",
                        "honey bee LD50 0.11 µg/bee, 48 h");
    }

    @Test
    void aReferenceIsNoHeading() {
        SafetySheet sheet = sheet(
                "SECTION 6: ACCIDENTAL RELEASE MEASURES",
                "Sweep up. For disposal see",
                "Section 13: Disposal considerations",
                "SECTION 7: HANDLING AND STORAGE",
                "Handling: Wash hands.",
                "SECTION 13: DISPOSAL CONSIDERATIONS",
                "Offer for recycling.");
        assertThat(sheet.of(ValueKind.DISPOSAL).words()).isEqualTo("Offer for recycling.");
    }

    @Test
    void aListOfContentsIsPassedOver() {
        String text = """
                1. Identification
                2. Hazards identification
                3. Composition/information on ingredients
                1. Identification
                Product name: Tansygate
                2. Hazards identification
                Signal word: Warning
                3. Composition/information on ingredients
                Atrazine 1912-24-9 42 %
                """;
        SafetySheet sheet = SheetReader.read(text.getBytes(StandardCharsets.UTF_8), "contents.txt");
        assertThat(sheet.of(ValueKind.PRODUCT_NAME).words()).isEqualTo("Tansygate");
        assertThat(sheet.of(ValueKind.SIGNAL_WORD).words()).isEqualTo("Warning");
        assertThat(sheet.all(ValueKind.INGREDIENT)).hasSize(1);
    }

    @Test
    void oldRomanNumeralsAndOtherOrder() {
        String text = """
                MATERIAL SAFETY DATA SHEET
                Section I - Product Identification
                Trade name: Oldfield 2E
                Section II - Hazardous Ingredients
                Malathion CAS 121-75-5 57.0%
                Section III - Physical Data
                Specific gravity: 1.05
                Section IV - Fire and Explosion Hazard Data
                Flash point: 145 F TCC
                Extinguishing media: Foam.
                """;
        SafetySheet sheet = SheetReader.read(text.getBytes(StandardCharsets.UTF_8), "old.txt");
        assertThat(sheet.sections().stream().map(FoundSection::section))
                .containsExactly(
                        SheetSection.IDENTIFICATION,
                        SheetSection.COMPOSITION,
                        SheetSection.PROPERTIES,
                        SheetSection.FIRE);
        assertThat(sheet.of(ValueKind.FLASH_POINT).words()).isEqualTo("145 °F, closed cup");
        assertThat(sheet.of(ValueKind.DENSITY).words()).isEqualTo("1.05");
        assertThat(all(sheet, ValueKind.INGREDIENT)).containsExactly("Malathion, CAS 121-75-5, 57 %");
    }

    /** Several values in one line, each behind its label; found by fuzzing: the second label was looked for past the line's end. */
    @Test
    void severalLabelsInOneLine() {
        SafetySheet sheet = properties("Appearance: a tan liquid with a mild smell of almonds, Flash point: 62 °C");
        assertThat(all(sheet, ValueKind.FLASH_POINT)).containsExactly("62 °C");
        assertThat(all(properties("Boiling point: 100 °C; Flash point: 62 °C; Density: 1.12 g/cm3"), ValueKind.DENSITY))
                .containsExactly("1.12 g/mL");
    }
}
