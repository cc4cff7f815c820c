package plumbrow.app.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.ZonedDateTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumbrow.advice.program.Done;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.records.ApplicationRecord;
import plumbrow.advice.records.KeptRecord;
import plumbrow.advice.records.RecordItem;
import plumbrow.advice.records.RecordQuestion;
import plumbrow.advice.records.RecordedProduct;
import plumbrow.advice.season.Season;
import plumbrow.app.RecordsOfTest;
import plumbrow.app.SmallSeason;

/** What may come in as a record, what is refused with a sentence, and what is asked back. */
class RecordEntryTest {
    private static final Season SEASON = RecordsOfTest.stocked(SmallSeason.of(2027), 400);

    @Test
    void totalComesFromRateAndAcresInTheUnitOfThePrice() {
        RecordedProduct one = product(read(Map.of()));
        assertThat(one.total()).isEqualTo(new Amount(120, FarmUnit.LB));
        assertThat(one.registration()).isEqualTo("00000-1");
        assertThat(product(read(Map.of("registration_1", ""))).registration()).isNull();
    }

    @Test
    void rateComesFromTotalAndAcresWhereOnlyThatIsKnown() {
        RecordedProduct one = product(read(Map.of("rate_1", "", "total_1", "120", "total_unit_1", "lb")));
        assertThat(one.rate()).isEqualTo(new Amount(3, FarmUnit.LB));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "field       | Nowhere              | a field of the season",
                "date        | 2027-02-30           | a day that is in the calendar",
                "date        | 2027-06-02           | a day that is past",
                "date        | 05/02/2027           | year-month-day",
                "start       | 8.10                 | a time of day in 24 hours",
                "start       | 25:00                | a time of day in 24 hours",
                "end         | 08:10                | a time after the start",
                "zone        | Mars/Base            | such as America/Chicago",
                "acres       | 0                    | a number above 0",
                "acres       | -4                   | a number above 0",
                "acres       | 40,5                 | with a point",
                "acres       | 1e9                  | a number above 0 and up to 100000",
                "acres       | 90                   | no more than the 80 ac",
                "product_1   | Stonefly             | a product of the shelf",
                "product_1   | Hollowbrook 108      | a product of the shelf",
                "rate_1      | 0                    | a number above 0",
                "rate_1      | NaN                  | a number above 0",
                "rate_unit_1 | fl oz/ac             | is priced per lb",
                "rate_unit_1 | furlongs             | a rate's unit",
                "total_1     | -1                   | a number above 0",
                "total_unit_1| gal                  | is priced per lb",
                "restricted_1| perhaps              | yes, no or unknown",
                "wind_start_mph | 400               | a number from 0 to 100",
                "humidity_end_pct | -1              | a number from 0 to 100",
                "wind_from_start | over there       | one of N, NNE",
                "role        | farmer               | private, commercial, noncommercial",
                "state       | Iowa                 | two letters",
                "applicator  | =cmd()               | does not begin with =",
                "outline     | 41.6, -93.6          | three corners or more",
                "program     | No such program      | a program of North 80",
                "wind_strat_mph | 7                 | nothing called",
            })
    void badInputIsRefusedWithWhatWasFoundAndWhatIsExpected(String key, String text, String expected) {
        Map<String, String> otherwise = new HashMap<>(Map.of(key, text));
        if (key.startsWith("total_u")) {
            otherwise.put("total_1", "120");
        }
        RecordEntry entry = read(otherwise);
        assertThat(entry.record()).isNull();
        assertThat(entry.fault(key)).contains(expected).contains(text);
    }

    @Test
    void nothingAtAllIsRefused() {
        RecordEntry entry = RecordEntry.read(SEASON, Map.of(), List.of(), RecordsOfTest.NOW);
        assertThat(entry.faults().keySet()).contains("field", "date", "acres", "product_1");
    }

    @Test
    void sameProductTwiceIsRefused() {
        RecordEntry entry = read(Map.of("product_2", RecordsOfTest.PRODUCT, "rate_2", "1", "rate_unit_2", "lb/ac"));
        assertThat(entry.fault("product_2")).contains("each product once");
        assertThat(read(Map.of("product_13", RecordsOfTest.PRODUCT)).fault("product_12"))
                .contains("1 to 12");
    }

    @Test
    void hourThatTheClockSkipsIsRefusedAndAnEndOfTwoIsTheLater() {
        RecordEntry skipped = read(Map.of("date", "2027-03-14", "start", "02:30", "end", "05:00"));
        assertThat(skipped.fault("start")).contains("set forward");
        RecordEntry twice = RecordEntry.read(
                RecordsOfTest.stocked(SmallSeason.of(2027), 400),
                RecordsOfTest.typed(Map.of("date", "2026-11-01", "start", "00:30", "end", "01:30")),
                List.of(),
                RecordsOfTest.NOW);
        assertThat(Objects.requireNonNull(twice.record()).end())
                .isEqualTo(ZonedDateTime.parse("2026-11-01T01:30-06:00[America/Chicago]"));
    }

    @Test
    void jobPastMidnightHasADayOfItsEnd() {
        RecordEntry entry = read(Map.of("start", "22:00", "end", "01:30", "end_date", "2027-05-03"));
        assertThat(Objects.requireNonNull(Objects.requireNonNull(entry.record()).end())
                        .toLocalDate())
                .hasToString("2027-05-03");
    }

    @ParameterizedTest
    @CsvSource({
        "rate_1, 9, label-rate",
        "rate_1, 9, product-season-maximum",
        "total_1, 200, total",
        "total_1, 500, stock",
        "acres, 85, acres",
        "end_date, 2027-05-04, long",
        "carrier_gpa, 10, spray"
    })
    void whatIsDoubtfulIsAskedBackAndKeptWhenItIsSo(String key, String text, String question) {
        Map<String, String> otherwise =
                new HashMap<>(Map.of(key, text, "spray_gal", key.equals("carrier_gpa") ? "900" : ""));
        RecordEntry entry = read(otherwise);
        assertThat(entry.ready()).isFalse();
        assertThat(entry.record()).isNotNull();
        assertThat(entry.questions().stream().map(RecordQuestion::key)).contains(question);
        otherwise.put("sure", "all");
        assertThat(read(otherwise).ready()).isTrue();
        otherwise.put("sure", entry.questions().get(0).key());
        assertThat(read(otherwise).questions()).doesNotContain(entry.questions().get(0));
    }

    @Test
    void earlierRecordsCountTowardsTheSeasonAndTheOneCorrectedDoesNot() {
        ApplicationRecord first =
                Objects.requireNonNull(read(Map.of("rate_1", "4")).record());
        Season after = SEASON.withPrograms(SEASON.programs(), SEASON.work().withLog(List.copyOf(first.lines())));
        Map<String, String> second = RecordsOfTest.typed(Map.of("date", "2027-05-20", "rate_1", "4"));
        RecordEntry more = RecordEntry.read(after, second, List.of(), RecordsOfTest.NOW);
        assertThat(more.questions().stream().map(RecordQuestion::key))
                .contains("product-season-maximum", "applications");
        List<Done> wrong = first.lines();
        RecordEntry corrected = RecordEntry.read(after, second, wrong, RecordsOfTest.NOW);
        assertThat(corrected.questions()).isEmpty();
        RecordEntry twice =
                RecordEntry.read(after, RecordsOfTest.typed(Map.of("rate_1", "4")), List.of(), RecordsOfTest.NOW);
        assertThat(twice.questions().stream().map(RecordQuestion::key)).contains("twice");
    }

    @Test
    void correctionMayUseWhatTheWrongRecordTook() {
        Season empty = RecordsOfTest.stocked(SmallSeason.of(2027), 0);
        List<Done> wrong = Objects.requireNonNull(read(Map.of()).record()).lines();
        RecordEntry same = RecordEntry.read(empty, RecordsOfTest.typed(Map.of()), wrong, RecordsOfTest.NOW);
        assertThat(same.questions()).isEmpty();
        RecordEntry more =
                RecordEntry.read(empty, RecordsOfTest.typed(Map.of("acres", "41")), wrong, RecordsOfTest.NOW);
        assertThat(more.questions().stream().map(RecordQuestion::key)).containsExactly("stock");
    }

    /** What is written out of a record is read in again as the same record, whatever it says: 200 records drawn by chance. */
    @Test
    void recordComesBackFromItsOwnBoxes() {
        Random random = new Random(20270502);
        for (int i = 0; i < 200; i++) {
            Map<String, String> typed = drawn(random);
            RecordEntry entry = RecordEntry.read(SEASON, typed, List.of(), RecordsOfTest.NOW);
            assertThat(entry.faults()).isEmpty();
            ApplicationRecord record = Objects.requireNonNull(entry.record());
            RecordedProduct one = record.products().get(0);
            assertThat(one.total().inBase()).isCloseTo(one.rate().inBase() * record.acres(), within(one.total()));
            KeptRecord kept = new KeptRecord(1, record, List.of(1), "X", Instant.EPOCH, null, null, null, null);
            RecordEntry again = RecordEntry.read(SEASON, RecordStart.of(kept), List.of(), RecordsOfTest.NOW);
            assertThat(again.faults()).isEmpty();
            assertThat(again.record()).isEqualTo(record);
        }
    }

    private static Offset<Double> within(Amount total) {
        return Offset.offset(1e-9 * (1 + total.inBase()));
    }

    private static Map<String, String> drawn(Random random) {
        Map<String, String> typed = RecordsOfTest.typed(Map.of());
        typed.put("acres", RecordItem.digits(Math.round((1 + random.nextDouble() * 79) * 100) / 100.0));
        typed.put("rate_1", RecordItem.digits(0.1 + random.nextInt(100) / 10.0));
        typed.put("rate_unit_1", random.nextBoolean() ? "oz/ac" : "lb/ac");
        for (RecordItem item : RecordItem.values()) {
            if (random.nextBoolean() && item.form().kind() == RecordItem.Kind.NUMBER) {
                typed.put(
                        item.key(),
                        RecordItem.digits(Math.floor(item.form().least()
                                + 1
                                + random.nextDouble()
                                        * Math.min(
                                                90,
                                                item.form().most() - item.form().least() - 1))));
            } else if (random.nextBoolean() && item.form().kind() == RecordItem.Kind.WORD) {
                List<String> words = item.form().words();
                typed.put(item.key(), words.get(random.nextInt(words.size())));
            } else if (random.nextBoolean() && item.form().kind() == RecordItem.Kind.PROSE) {
                typed.put(item.key(), "Grüße\tund ; Zeilen\nmore " + random.nextInt());
            }
        }
        return typed;
    }

    private static RecordEntry read(Map<String, String> otherwise) {
        return RecordEntry.read(SEASON, RecordsOfTest.typed(otherwise), List.of(), RecordsOfTest.NOW);
    }

    private static RecordedProduct product(RecordEntry entry) {
        assertThat(entry.faults()).isEmpty();
        return Objects.requireNonNull(entry.record()).products().get(0);
    }
}
