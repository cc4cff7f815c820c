package plumbrow.documents.mend;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumbrow.documents.label.LabelKind;
import plumbrow.documents.label.LabelPaper;
import plumbrow.documents.label.LabelReading;
import plumbrow.documents.reading.LabelReader;
import plumbrow.documents.reading.SheetReader;
import plumbrow.documents.sheet.Reading;
import plumbrow.documents.sheet.SafetySheet;
import plumbrow.documents.sheet.ValueKind;
import plumbrow.documents.shelf.FiledPaper;

/** What a person puts right on a paper counts, and what was read stays readable. The product is invented. */
class MendedPapersTest {
    private static final SafetySheet SHEET = SheetReader.read("""
            SAFETY DATA SHEET
            SECTION 1: IDENTIFICATION
            Product name: Quarrywick 4L
            EPA Reg. No.: 99990-41
            SECTION 9: PHYSICAL AND CHEMICAL PROPERTIES
            Flash point: 62 °C
            SECTION 11: TOXICOLOGICAL INFORMATION
            Oral LD50 (rat): 3090 mg/kg
            """.getBytes(StandardCharsets.UTF_8), "sheet.txt");
    private static final Instant NOON = Instant.parse("2026-11-30T12:00:00Z");

    private final List<Mend> made = new ArrayList<>();

    private void say(Mend.Verdict verdict, ValueKind kind, String value) {
        Reading reading = SHEET.of(kind);
        boolean stands = verdict != Mend.Verdict.ADDED && reading instanceof Reading.OnPaper;
        made.add(new Mend(
                "a".repeat(64),
                kind.title(),
                verdict,
                stands ? reading.words() : "",
                reading instanceof Reading.OnPaper paper && stands
                        ? paper.quote().words()
                        : "",
                1,
                value,
                "R. Voss",
                NOON));
    }

    private SafetySheet counting(Integer... byOcr) {
        return MendedSheet.of(SHEET, List.of(byOcr), made);
    }

    @Test
    void aValueTypedOverCountsAndStandsWhereItStood() {
        say(Mend.Verdict.TYPED_OVER, ValueKind.FLASH_POINT, "26 °C");
        Reading.Stated flash = (Reading.Stated) counting().of(ValueKind.FLASH_POINT);
        assertThat(flash.words()).isEqualTo("26 °C");
        assertThat(flash.quote()).isEqualTo(((Reading.Stated) SHEET.of(ValueKind.FLASH_POINT)).quote());
        assertThat(MendedPaper.last(made, ValueKind.FLASH_POINT.title(), "62 °C", flash.quote())
                        .orElseThrow()
                        .said())
                .isEqualTo("typed over by R. Voss on 2026-11-30, page 1; read: 62 °C");
        say(Mend.Verdict.TAKEN_BACK, ValueKind.FLASH_POINT, "");
        assertThat(counting().of(ValueKind.FLASH_POINT).words()).isEqualTo("62 °C");
    }

    @Test
    void whatThePageDoesNotSayIsUnknownAndWhatWasMissedIsAdded() {
        say(Mend.Verdict.STRUCK, ValueKind.FLASH_POINT, "");
        say(Mend.Verdict.ADDED, ValueKind.DENSITY, "1.12 g/cm3");
        say(Mend.Verdict.ADDED, ValueKind.FIRST_AID, "skin: Rinse with water.");
        say(Mend.Verdict.ADDED, ValueKind.FIRST_AID, "eyes: Rinse with water.");
        assertThat(counting().of(ValueKind.FLASH_POINT)).isInstanceOf(Reading.NotStated.class);
        assertThat(counting().of(ValueKind.DENSITY).words()).isEqualTo("1.12 g/mL");
        assertThat(counting().all(ValueKind.FIRST_AID)).hasSize(2);
        assertThat(MendedPaper.beside(made, List.of())).hasSize(3);
    }

    /** What OCR made out is unclear, which no card takes for known, until a person has confirmed it. */
    @Test
    void whatWasReadByOcrCountsOnceConfirmed() {
        assertThat(counting(1).readings()).isNotEmpty().noneMatch(each -> each instanceof Reading.Stated);
        assertThat(counting(1).of(ValueKind.FLASH_POINT).words()).contains("read by OCR as “62 °C”");
        say(Mend.Verdict.CONFIRMED, ValueKind.FLASH_POINT, "");
        say(Mend.Verdict.TYPED_OVER, ValueKind.ACUTE_TOXICITY, "Oral LD50 (rat): 309 mg/kg");
        assertThat(counting(1).of(ValueKind.FLASH_POINT).words()).isEqualTo("62 °C");
        assertThat(counting(1).of(ValueKind.ACUTE_TOXICITY).words()).isEqualTo("swallowed LD50 rat 309 mg/kg");
        assertThat(counting(1).of(ValueKind.PRODUCT_NAME)).isInstanceOf(Reading.Unclear.class);
    }

    @Test
    void nameNumberDateAndProductFileThePaper() {
        FiledPaper scan = new FiledPaper(3, FiledPaper.Kind.SAFETY_SHEET, "scan.pdf", "", "", null, 1, false);
        say(Mend.Verdict.CONFIRMED, ValueKind.PRODUCT_NAME, "");
        say(Mend.Verdict.TYPED_OVER, ValueKind.REGISTRATION_NUMBER, "99990-47");
        say(Mend.Verdict.ADDED, ValueKind.REVISION_DATE, "March 4, 2025");
        FiledPaper filed = MendedPaper.filed(scan, made);
        assertThat(filed.product()).isEqualTo("Quarrywick 4L");
        assertThat(filed.registration()).isEqualTo("99990-47");
        assertThat(filed.dated()).isEqualTo(LocalDate.of(2025, 3, 4));
        made.add(new Mend(
                "a".repeat(64),
                Mend.BELONGS_TO,
                Mend.Verdict.ADDED,
                "",
                "99990-52",
                1,
                "Ironweir 4L",
                "R. Voss",
                NOON));
        assertThat(MendedPaper.filed(scan, made).product()).isEqualTo("Ironweir 4L");
        assertThat(MendedPaper.filed(scan, made).registration()).isEqualTo("99990-52");
    }

    /** A value typed over stays though another reader no longer reads what it stood for. */
    @Test
    void aWordOutlivesTheReadingItWasAbout() {
        made.add(new Mend(
                "a".repeat(64),
                ValueKind.DENSITY.title(),
                Mend.Verdict.TYPED_OVER,
                "112 g/mL",
                "112 g/mL",
                1,
                "1.12 g/mL",
                "R. Voss",
                NOON));
        assertThat(counting().of(ValueKind.DENSITY).words()).isEqualTo("1.12 g/mL");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "PRODUCT_NAME | Quarrywick 4L | Quarrywick 4L",
                "REGISTRATION | 99990-41 | 99990-41",
                "REGISTRATION | ninety | ",
                "SIGNAL_WORD | warning | WARNING",
                "SIGNAL_WORD | mild | ",
                "LABEL_DATE | March 4, 2025 | 2025-03-04",
                "REENTRY | 24 hours | 24 h",
                "REENTRY | a while | ",
                "FIRST_AID | skin: Rinse with water. | skin: Rinse with water.",
                "GROUP | group 5 herbicide | group 5 herbicide",
                "PLANT_BACK | Alfalfa: 155 days | Alfalfa: 155 d",
                "SETBACK | Do not apply within 66 feet of streams. | stream",
            })
    void aLabelsValueIsReadAsTyped(LabelKind kind, String typed, @Nullable String says) {
        if (says == null) {
            assertThat(LabelText.read(kind, typed)).isEmpty();
        } else {
            assertThat(LabelText.read(kind, typed))
                    .singleElement()
                    .satisfies(content -> assertThat(content.words()).contains(says));
        }
    }

    @Test
    void aLabelTypedOverProposesAndCardsAccordingly() {
        LabelPaper label = LabelReader.read("""
                ACTIVE INGREDIENT:
                Atrazine ............................. 42.6%
                AGRICULTURAL USE REQUIREMENTS
                The restricted-entry interval (REI) is 12 hours.
                """.getBytes(StandardCharsets.UTF_8), "label.txt");
        LabelReading.Stated entry = label.all(LabelKind.REENTRY).get(0);
        made.add(new Mend(
                "a".repeat(64),
                LabelKind.REENTRY.title(),
                Mend.Verdict.TYPED_OVER,
                entry.words(),
                entry.quote().words(),
                1,
                "24 hours",
                "R. Voss",
                NOON));
        assertThat(MendedLabel.of(label, List.of(1), made).of(LabelKind.REENTRY).words())
                .isEqualTo("24 h");
        assertThat(MendedLabel.of(label, List.of(1), made).of(LabelKind.ACTIVE))
                .isInstanceOf(LabelReading.Unclear.class);
        assertThat(MendedLabel.proposing(label, made).of(LabelKind.ACTIVE)).isInstanceOf(LabelReading.Stated.class);
    }

    /** A book of before calls it a re-entry interval. */
    @Test
    void formerTitle() {
        Mend old = new Mend(
                "aa", "Re-entry interval", Mend.Verdict.CONFIRMED, "12 h", "", 1, "", "R. Alder", Instant.EPOCH);
        assertThat(old.about()).isEqualTo(LabelKind.REENTRY.title());
    }
}
