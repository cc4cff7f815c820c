package plumbrow.app.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.records.ApplicationRecord;
import plumbrow.advice.records.DutyAnswer;
import plumbrow.advice.records.KeptRecord;
import plumbrow.advice.records.RecordCheck;
import plumbrow.advice.records.RecordItem;
import plumbrow.advice.records.RecordedProduct;
import plumbrow.advice.records.Reentry;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.Ask;
import plumbrow.advice.shelf.LabelBook;
import plumbrow.advice.shelf.LabelLimit;
import plumbrow.advice.shelf.Shelf;
import plumbrow.app.SmallSeason;

/** Records held to checks worked apart from this code: D1 to D14 of duties, R1 to R3 of re-entry, K3, K4 of the record. */
class RecordCheckTest {
    private static final ZoneId CHICAGO = ZoneId.of("America/Chicago");

    @Test
    void d1IntervalDisplayAndKeeping() {
        ApplicationRecord record = record("IA", "private", Ask.NO, 24, at("2026-05-14T14:00"), at("2026-05-14T18:40"));
        Reentry reentry = Reentry.of(record);
        assertThat(reentry.allowedFrom()).isEqualTo(LocalDateTime.parse("2026-05-15T18:40"));
        assertThat(reentry.displayBy()).isEqualTo(LocalDateTime.parse("2026-05-15T18:40"));
        assertThat(reentry.displayUntil()).isEqualTo(LocalDateTime.parse("2026-06-14T18:40"));
        assertThat(check(record).keepUntil()).isEqualTo(LocalDate.of(2028, 5, 15));
    }

    @Test
    void d2WithoutInterval() {
        Reentry reentry =
                Reentry.of(record("IA", "private", Ask.NO, 0, at("2026-06-03T07:00"), at("2026-06-03T09:00")));
        assertThat(reentry.displayBy()).isEqualTo(LocalDateTime.parse("2026-06-04T09:00"));
        assertThat(reentry.displayUntil()).isEqualTo(LocalDateTime.parse("2026-07-03T09:00"));
    }

    @Test
    void d3Sign() {
        Reentry reentry =
                Reentry.of(record("IA", "private", Ask.NO, 72, at("2026-07-08T06:00"), at("2026-07-08T10:00")));
        assertThat(reentry.signNotBefore()).isEqualTo(LocalDateTime.parse("2026-07-07T06:00"));
        assertThat(reentry.allowedFrom()).isEqualTo(LocalDateTime.parse("2026-07-11T10:00"));
        assertThat(reentry.signDownBy()).isEqualTo(LocalDateTime.parse("2026-07-14T10:00"));
        assertThat(reentry.duties()).anyMatch(line -> line.startsWith("Signs at every way in"));
    }

    /** R1, R2: elapsed hours, also in the night in which the clock is set forward. */
    @Test
    void intervalRunsOverMidnightAndTheChangeOfTheClock() {
        assertThat(Reentry.of(record("IA", "private", Ask.NO, 12, at("2026-05-03T10:00"), at("2026-05-03T14:30")))
                        .allowedFrom())
                .isEqualTo(LocalDateTime.parse("2026-05-04T02:30"));
        assertThat(Reentry.of(record("IA", "private", Ask.NO, 24, at("2026-03-07T20:00"), at("2026-03-07T23:00")))
                        .allowedFrom())
                .isEqualTo(LocalDateTime.parse("2026-03-09T00:00"));
    }

    @Test
    void intervalNotReadKeepsEverybodyOut() {
        Reentry reentry =
                Reentry.of(record("IA", "private", Ask.NO, null, at("2026-07-08T06:00"), at("2026-07-08T10:00")));
        assertThat(reentry.allowedFrom()).isNull();
        assertThat(reentry.runs(LocalDateTime.parse("2030-01-01T00:00"))).isTrue();
        assertThat(reentry.sentence())
                .startsWith("Nobody goes in")
                .contains("Stonefly 3G")
                .contains("not read");
        ApplicationRecord noEnd = record("IA", "private", Ask.NO, 12, null, null);
        assertThat(Reentry.of(noEnd).allowedFrom())
                .isEqualTo(noEnd.date().plusDays(1).atTime(12, 0));
        assertThat(Reentry.of(noEnd).sentence()).contains("at the latest");
    }

    /** D4 to D8: the latest moment is the midnight after the last day. */
    @ParameterizedTest
    @CsvSource({
        "MO, commercial, NO, 2026-07-02, 2026-07-07",
        "MO, commercial, NO, 2026-05-22, 2026-05-27",
        "MN, commercial, NO, 2026-06-28, 2026-07-03",
        "NE, private, YES, 2026-05-20, 2026-06-03",
        "IN, private, YES, 2026-04-15, 2026-05-15"
    })
    void writtenBy(String state, String role, Ask restricted, LocalDate day, LocalDate last) {
        ApplicationRecord record = record(state, role, restricted, 12, null, null, day);
        assertThat(of(check(record), state).due()).isEqualTo(last.plusDays(1).atStartOfDay());
    }

    /** D9, D11. */
    @ParameterizedTest
    @CsvSource({
        "IL, commercial, YES, 2028-05-09",
        "OH, commercial, NO, 2029-05-09",
        "MN, commercial, NO, 2031-05-09",
        "MI, commercial, NO, 2027-05-09",
        "KY, private, NO, 2029-05-09"
    })
    void keptUntil(String state, String role, Ask restricted, LocalDate until) {
        RecordCheck check = check(record(state, role, restricted, 12, null, null, LocalDate.of(2026, 5, 9)));
        assertThat(of(check, state).keepUntil()).isEqualTo(until);
    }

    /** D11, second half: restricted in Michigan is kept three years. */
    @Test
    void longestKeepingHolds() {
        RecordCheck check = check(record("MI", "commercial", Ask.YES, 12, null, null, LocalDate.of(2026, 5, 9)));
        assertThat(check.keepUntil()).isEqualTo(LocalDate.of(2029, 5, 9));
    }

    /** D13: none found is not none; and nothing that can't be told counts as not binding. */
    @Test
    void d13NoneFoundIsSaidAsSuch() {
        RecordCheck check = check(record("IA", "private", Ask.YES, 12, null, null, LocalDate.of(2026, 7, 1)));
        assertThat(of(check, "IA").applies()).isEqualTo(DutyAnswer.Applies.NONE_FOUND);
        assertThat(of(check, "IA").words()).isEqualTo("none found in the sources used");
        assertThat(of(check, "US").applies()).isEqualTo(DutyAnswer.Applies.CANNOT_TELL);
        assertThat(check.federalSilent()).isTrue();
    }

    /** D14, K4: Illinois asks for no time of day, the federal list does. */
    @Test
    void d14StateMetFederalListNot() {
        ApplicationRecord record = record("IL", "commercial", Ask.YES, 12, null, null, LocalDate.of(2026, 7, 1));
        RecordCheck check = check(record);
        assertThat(of(check, "IL").words()).isEqualTo("complete");
        assertThat(of(check, "US").missing()).contains("time of day");
        assertThat(check.missing()).contains("time of day");
        assertThat(check.incomplete()).isTrue();
    }

    /** R1, K3: 7 CFR 110 bound a private applicator until 10 July 2025 and no longer. */
    @Test
    void theRescindedRuleBindsNoMore() {
        RecordCheck before = check(record("IA", "private", Ask.YES, 12, null, null, LocalDate.of(2025, 7, 10)));
        RecordCheck after = check(record("IA", "private", Ask.YES, 12, null, null, LocalDate.of(2025, 8, 1)));
        assertThat(before.duties()).anyMatch(duty -> duty.rule().startsWith("7 CFR 110"));
        assertThat(after.duties()).noneMatch(duty -> duty.rule().startsWith("7 CFR 110"));
    }

    @Test
    void listNotSeenWholeIsNeverComplete() {
        ApplicationRecord record =
                record("MO", "commercial", Ask.NO, 12, at("2026-07-08T06:00"), at("2026-07-08T10:00"));
        Map<RecordItem, String> all = new EnumMap<>(RecordItem.class);
        for (RecordItem item : RecordItem.values()) {
            all.put(item, record.items().getOrDefault(item, "1"));
        }
        ApplicationRecord full = new ApplicationRecord(
                record.field(), record.date(), record.start(), record.end(), 40, 50, record.products(), all);
        assertThat(of(check(full), "MO").words()).startsWith("list not fully known");
        assertThat(check(full).sentence()).doesNotContain("all that the rules ask");
    }

    @Test
    void roleAndRestrictionNotWrittenDownLeaveItOpen() {
        RecordCheck check = check(record("OH", "", Ask.UNKNOWN, 12, null, null, LocalDate.of(2026, 7, 1)));
        assertThat(check.duties().stream().filter(duty -> duty.state().equals("OH")))
                .hasSize(2)
                .allMatch(duty -> duty.applies() == DutyAnswer.Applies.CANNOT_TELL);
        assertThat(of(check, "OH").why()).contains("private, commercial or noncommercial");
    }

    @Test
    void stateThatNobodyLookedForIsAskedFor() {
        RecordCheck check = check(record("TX", "commercial", Ask.NO, 12, null, null, LocalDate.of(2026, 7, 1)));
        assertThat(of(check, "TX").applies()).isEqualTo(DutyAnswer.Applies.CANNOT_TELL);
        assertThat(of(check, "TX").why()).contains("agency");
    }

    @Test
    void recordWrittenTooLateSaysSo() {
        ApplicationRecord record =
                record("OH", "commercial", Ask.NO, 12, at("2026-07-08T06:00"), at("2026-07-08T10:00"));
        assertThat(RecordCheck.of(SmallSeason.of(2026), kept(record, "2026-07-09T04:59:00Z"))
                        .late())
                .isFalse();
        RecordCheck late = RecordCheck.of(SmallSeason.of(2026), kept(record, "2026-07-09T05:01:00Z"));
        assertThat(late.late()).isTrue();
        assertThat(late.sentence()).contains("too late");
    }

    /** 7 USC 136j(a)(2)(G): what the label asks to be kept binds whatever role or state, and is never told to be complete. */
    @Test
    void labelThatAsksForARecordBinds() {
        Season season = SmallSeason.of(2026);
        Shelf shelf = season.shelf();
        LabelLimit duty = new LabelLimit(
                "Stonefly 3G", null, LabelLimit.Kind.DUTY, "Keep a record of wind and nozzle for 2 years", "p. 3");
        LabelBook read = new LabelBook(
                List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(duty));
        Season labelled = season.withShelf(shelf.withLabels(read));
        ApplicationRecord record = record("IA", "private", Ask.NO, 12, null, null);
        DutyAnswer label = of(RecordCheck.of(labelled, kept(record, "2026-05-09T12:00:00Z")), "label");
        assertThat(label.applies()).isEqualTo(DutyAnswer.Applies.YES);
        assertThat(label.words()).startsWith("list not fully known");
        assertThat(label.note()).contains("wind and nozzle");
    }

    private static DutyAnswer of(RecordCheck check, String state) {
        return check.duties().stream()
                .filter(duty -> duty.state().equals(state))
                .findFirst()
                .orElseThrow();
    }

    private static RecordCheck check(ApplicationRecord record) {
        return RecordCheck.of(SmallSeason.of(2026), kept(record, "2026-05-01T12:00:00Z"));
    }

    private static KeptRecord kept(ApplicationRecord record, String at) {
        return new KeptRecord(1, record, List.of(1), "S. Lind", Instant.parse(at), null, null, null, null);
    }

    private static ZonedDateTime at(String local) {
        return LocalDateTime.parse(local).atZone(CHICAGO);
    }

    private static ApplicationRecord record(
            String state,
            String role,
            Ask restricted,
            @Nullable Integer hours,
            @Nullable ZonedDateTime start,
            @Nullable ZonedDateTime end) {
        return record(
                state,
                role,
                restricted,
                hours,
                start,
                end,
                start == null ? LocalDate.of(2026, 5, 9) : start.toLocalDate());
    }

    private static ApplicationRecord record(
            String state,
            String role,
            Ask restricted,
            @Nullable Integer hours,
            @Nullable ZonedDateTime start,
            @Nullable ZonedDateTime end,
            LocalDate day) {
        Map<RecordItem, String> items = new EnumMap<>(RecordItem.class);
        items.put(RecordItem.STATE, state);
        items.put(RecordItem.CROP, "corn");
        if (!role.isEmpty()) {
            items.put(RecordItem.ROLE, role);
        }
        return new ApplicationRecord(
                "North 80",
                day,
                start,
                end,
                40,
                50,
                List.of(new RecordedProduct(
                        "Stonefly 3G",
                        "00000-1",
                        new Amount(3, FarmUnit.LB),
                        new Amount(120, FarmUnit.LB),
                        restricted,
                        hours,
                        null,
                        null,
                        null)),
                items);
    }
}
