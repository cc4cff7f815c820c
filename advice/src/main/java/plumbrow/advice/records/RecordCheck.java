package plumbrow.advice.records;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.records.DutyAnswer.Applies;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.Ask;
import plumbrow.advice.shelf.LabelLimit;
import plumbrow.science.reference.RecordDuties;
import plumbrow.science.reference.RecordDuty;

/**
 * An application record held to the record duties in force on its day, federal and of its state. Several duties bind together: what any of
 * them asks for, the earliest time of writing, the longest keeping. What is missing to tell whether one binds is said; it never counts as
 * not binding.
 *
 * <p>Source: {@code record-duties.csv} with its sources and status; 7 CFR 110 is rescinded since 11 July 2025. Not legal advice: the label
 * and the state's agency decide.
 *
 * @param record number of the record
 * @param duties those that bind it or may, and states without a known duty
 * @param missing what any duty that binds it asks for and it lacks, in words
 * @param perhaps what duties that may bind it ask for besides, in words
 * @param due the earliest time by which it must be written; null where none is stated
 * @param late whether it was written later than that
 * @param keepUntil the longest keeping; null where none is stated
 * @param sentence the answer
 */
public record RecordCheck(
        int record,
        List<DutyAnswer> duties,
        List<String> missing,
        List<String> perhaps,
        @Nullable LocalDateTime due,
        boolean late,
        @Nullable LocalDate keepUntil,
        String sentence) {
    private static final String SUPERVISED = "supervised";
    private static final String FEDERAL = "US";

    /** Words by which a label asks for a record: common practice, no source. */
    private static final Pattern KEEP =
            Pattern.compile("\\b(records?|recorded|recordkeeping|log|document|retain)\\b", Pattern.CASE_INSENSITIVE);

    /** Hours by which clocks of the United States are behind universal time: the least, in summer in the east, and the most. */
    private static final int EASTERNMOST_H = 4;

    private static final int WESTERNMOST_H = 10;

    public RecordCheck {
        duties = List.copyOf(duties);
        missing = List.copyOf(missing);
        perhaps = List.copyOf(perhaps);
    }

    /** Holds a record to the duties of its day. */
    public static RecordCheck of(Season season, KeptRecord kept) {
        ApplicationRecord record = kept.record();
        String state = record.item(RecordItem.STATE)
                .or(() -> season.field(record.field()).map(field -> field.state()))
                .orElse("");
        List<DutyAnswer> duties = new ArrayList<>();
        for (RecordDuty duty : RecordDuties.inForce(state, record.date())) {
            answer(season, kept, duty).ifPresent(duties::add);
        }
        record.products().forEach(one -> ofLabel(season, record, one.product(), duties));
        if (state.isEmpty() || !RecordDuties.looked(state)) {
            duties.add(new DutyAnswer(
                    state.isEmpty() ? "?" : state,
                    "the state",
                    state.isEmpty()
                            ? "The state is not written down"
                            : "Nobody has looked for the record rules of " + state + " for this program",
                    "",
                    Applies.CANNOT_TELL,
                    "ask the state's agency",
                    List.of(),
                    false,
                    "",
                    null,
                    null,
                    null,
                    ""));
        }
        Set<String> missing = new LinkedHashSet<>();
        duties.stream().filter(duty -> duty.applies() == Applies.YES).forEach(duty -> missing.addAll(duty.missing()));
        Set<String> perhaps = new LinkedHashSet<>();
        duties.stream()
                .filter(duty -> duty.applies() == Applies.CANNOT_TELL)
                .forEach(duty -> perhaps.addAll(duty.missing()));
        perhaps.removeAll(missing);
        List<DutyAnswer> binding = duties.stream()
                .filter(duty -> duty.applies() != Applies.NONE_FOUND)
                .toList();
        LocalDateTime due = binding.stream()
                .map(DutyAnswer::due)
                .filter(Objects::nonNull)
                .min(Comparator.naturalOrder())
                .orElse(null);
        LocalDate keep = binding.stream()
                .map(DutyAnswer::keepUntil)
                .filter(Objects::nonNull)
                .max(Comparator.naturalOrder())
                .orElse(null);
        boolean late =
                duties.stream().anyMatch(duty -> duty.applies() == Applies.YES && Boolean.FALSE.equals(duty.written()));
        return new RecordCheck(
                kept.number(),
                duties,
                List.copyOf(missing),
                List.copyOf(perhaps),
                due,
                late,
                keep,
                sentence(duties, missing, perhaps, late, due));
    }

    private static String sentence(
            List<DutyAnswer> duties,
            Set<String> missing,
            Set<String> perhaps,
            boolean late,
            @Nullable LocalDateTime due) {
        boolean open = duties.stream().anyMatch(duty -> duty.applies() == Applies.CANNOT_TELL);
        boolean unseen = duties.stream().anyMatch(duty -> duty.applies() == Applies.YES && !duty.wholeList());
        boolean binds = duties.stream().anyMatch(duty -> duty.applies() == Applies.YES);
        String first = !missing.isEmpty()
                ? "Missing by the rules of that day: " + String.join(", ", missing) + "."
                : unseen
                        ? "Nothing is missing of what was seen of the rules; not all of a list was seen."
                        : binds
                                ? "It has all that the rules ask for that are known to bind it."
                                : open
                                        ? "Whether a rule binds it can't be told yet."
                                        : "No duty to keep it is known to bind it; keep it all the same.";
        return first
                + (late ? " It was written down too late" + (due == null ? "." : ", after " + moment(due) + ".") : "")
                + (perhaps.isEmpty()
                        ? ""
                        : " Rules of which it can't be told whether they bind ask for "
                                + (missing.isEmpty() ? "" : "also ") + String.join(", ", perhaps) + ".");
    }

    /** "2026-05-15 18:40". */
    static String moment(LocalDateTime when) {
        return when.toLocalDate() + " " + when.toLocalTime().withSecond(0).withNano(0);
    }

    /**
     * A label's own duty to keep a record, as far as it was read: it binds whatever role or state (7 USC 136j(a)(2)(G)), and its list is in
     * its words, so that no record is told to be complete by it.
     */
    private static void ofLabel(Season season, ApplicationRecord record, String product, List<DutyAnswer> duties) {
        season.shelf().labels().limits().stream()
                .filter(limit -> limit.product().equals(product) && limit.kind() == LabelLimit.Kind.DUTY)
                .filter(limit -> limit.crop() == null
                        || season.field(record.field())
                                .filter(field -> field.crop() == limit.crop())
                                .isPresent())
                .filter(limit -> KEEP.matcher(limit.value()).find())
                .forEach(limit -> duties.add(new DutyAnswer(
                        "label",
                        "whoever uses " + product,
                        limit.source(),
                        "as read on the label",
                        Applies.YES,
                        "",
                        List.of(),
                        false,
                        "as the label says",
                        null,
                        null,
                        null,
                        limit.value())));
    }

    private static Optional<DutyAnswer> answer(Season season, KeptRecord kept, RecordDuty duty) {
        ApplicationRecord record = kept.record();
        List<String> open = new ArrayList<>();
        Optional<ApplicatorRole> role = record.role();
        if (!duty.role().equals("any")) {
            if (role.isEmpty()) {
                open.add("as what it was applied: private, commercial or noncommercial");
            } else if (!role.get().word().equals(duty.role())) {
                return Optional.empty();
            }
        }
        switch (duty.scope()) {
            case RESTRICTED -> {
                Ask restricted = restricted(record);
                if (restricted == Ask.NO) {
                    return Optional.empty();
                }
                if (restricted == Ask.UNKNOWN) {
                    open.add("whether a product is a restricted-use product");
                }
            }
            case ATRAZINE -> {
                boolean known = record.products().stream()
                        .noneMatch(one -> season.shelf().actives(one.product()).isEmpty());
                boolean holds = record.products().stream()
                        .flatMap(one -> season.shelf().actives(one.product()).stream())
                        .anyMatch(
                                one -> one.ingredient().toLowerCase(Locale.ROOT).contains("atrazine"));
                if (!holds && known) {
                    return Optional.empty();
                }
                if (!holds) {
                    open.add("whether it holds atrazine");
                }
            }
            case WPS -> {
                if (record.products().stream()
                        .allMatch(one -> Integer.valueOf(0).equals(one.reentryHours()) && one.registration() == null)) {
                    return Optional.empty();
                }
                open.add("whether anybody but the owner's close family works there");
            }
            case NONE -> {
                return role.filter(of -> of.word().equals(duty.role())).isEmpty()
                        ? Optional.empty()
                        : Optional.of(made(kept, duty, Applies.NONE_FOUND, "", List.of()));
            }
            case ALL -> {}
        }
        List<String> missing = duty.items().stream()
                .filter(item -> !item.equals(SUPERVISED) && !has(record, item))
                .map(item -> RecordDuties.WORDS.getOrDefault(item, item))
                .toList();
        return Optional.of(made(
                kept,
                duty,
                open.isEmpty() ? Applies.YES : Applies.CANNOT_TELL,
                open.isEmpty() ? "" : "not written down: " + String.join("; ", open),
                missing));
    }

    private static DutyAnswer made(
            KeptRecord kept, RecordDuty duty, Applies applies, String why, List<String> missing) {
        ApplicationRecord record = kept.record();
        LocalDateTime due = applies == Applies.NONE_FOUND ? null : due(record, duty);
        return new DutyAnswer(
                duty.state(),
                (duty.role().equals("any") ? "all applicators" : duty.role() + " applicators") + ", "
                        + duty.scope().words(),
                duty.origin().source(),
                duty.backing().words(),
                applies,
                why,
                missing,
                duty.wholeList(),
                duty.writeBy().words(),
                due,
                due == null ? null : written(kept, due),
                keepUntil(record, duty),
                duty.conditions());
    }

    /**
     * Whether a record was written by a moment of the field's clock. Where the record names no clock it is said only where it is so by
     * every clock of the United States.
     */
    private static @Nullable Boolean written(KeptRecord kept, LocalDateTime due) {
        ZonedDateTime end = kept.record().end();
        ZonedDateTime clock = end == null ? kept.record().start() : end;
        if (clock != null) {
            return !kept.writtenAt().atZone(clock.getZone()).toLocalDateTime().isAfter(due);
        }
        LocalDateTime universal = kept.writtenAt().atOffset(ZoneOffset.UTC).toLocalDateTime();
        boolean surely = !universal.minusHours(EASTERNMOST_H).isAfter(due);
        boolean perhaps = !universal.minusHours(WESTERNMOST_H).isAfter(due);
        return surely == perhaps ? Boolean.valueOf(surely) : null;
    }

    /**
     * By when it must be written. The day of the application is day 0; "same day" is midnight after the day on which it ended.
     *
     * @return null where no time is stated or it counts from an end that was not written down
     */
    static @Nullable LocalDateTime due(ApplicationRecord record, RecordDuty duty) {
        ZonedDateTime end = record.end();
        LocalDate day = end == null ? record.date() : end.toLocalDate();
        return switch (duty.writeBy().kind()) {
            case SAME_DAY -> day.plusDays(1).atStartOfDay();
            case DAYS -> record.date().plusDays(duty.writeBy().number() + 1).atStartOfDay();
            case BUSINESS_DAYS ->
                business(record.date(), duty.writeBy().number()).plusDays(1).atStartOfDay();
            case HOURS ->
                end == null ? null : end.plusHours(duty.writeBy().number()).toLocalDateTime();
            case AT_COMPLETION, NONE_STATED, NOT_SEEN, NOT_APPLICABLE -> null;
        };
    }

    /** Monday to Friday; holidays are not left out, so it is never too late. */
    private static LocalDate business(LocalDate from, int days) {
        LocalDate day = from;
        for (int counted = 0; counted < days; ) {
            day = day.plusDays(1);
            if (day.getDayOfWeek() != DayOfWeek.SATURDAY && day.getDayOfWeek() != DayOfWeek.SUNDAY) {
                counted++;
            }
        }
        return day;
    }

    /** 29 February goes to 1 March, the longer; under the worker protection rule the years run from the end of the interval. */
    static @Nullable LocalDate keepUntil(ApplicationRecord record, RecordDuty duty) {
        Integer years = duty.keepYears();
        if (years == null) {
            return null;
        }
        LocalDate from = record.date();
        if (duty.scope() == RecordDuty.Scope.WPS) {
            LocalDateTime over = Reentry.of(record).allowedFrom();
            from = over == null ? from : over.toLocalDate();
        }
        LocalDate until = from.plusYears(years);
        return until.getDayOfMonth() == from.getDayOfMonth() ? until : until.plusDays(1);
    }

    private static Ask restricted(ApplicationRecord record) {
        Set<Ask> said = record.products().stream()
                .map(RecordedProduct::restricted)
                .collect(Collectors.toCollection(TreeSet::new));
        return said.contains(Ask.YES) ? Ask.YES : said.contains(Ask.UNKNOWN) ? Ask.UNKNOWN : Ask.NO;
    }

    private static boolean has(ApplicationRecord record, String item) {
        return switch (item) {
            case "date", "product", "acres", "rate", "total", "rate_or_total" -> true;
            case "start" -> record.start() != null;
            case "end" -> record.end() != null;
            case "time" -> record.start() != null || record.end() != null;
            case "registration" ->
                record.products().stream()
                        .allMatch(one ->
                                one.registration() != null || Integer.valueOf(0).equals(one.reentryHours()));
            case "reentry" -> record.products().stream().allMatch(one -> one.reentryHours() != null);
            case "place" -> some(record, RecordItem.PLACE) || some(record, RecordItem.OUTLINE);
            case "licence" -> some(record, RecordItem.LICENCE);
            case "spray_volume" -> some(record, RecordItem.SPRAY_GAL) || some(record, RecordItem.CARRIER_GPA);
            case "pests_or_crop" -> some(record, RecordItem.PESTS) || some(record, RecordItem.CROP);
            case "wind" -> some(record, RecordItem.WIND_START) || some(record, RecordItem.WIND_END);
            case "wind_from" -> some(record, RecordItem.WIND_FROM_START) || some(record, RecordItem.WIND_FROM_END);
            case "temperature" ->
                some(record, RecordItem.TEMPERATURE_START) || some(record, RecordItem.TEMPERATURE_END);
            case "weather" ->
                (some(record, RecordItem.WIND_START) || some(record, RecordItem.WIND_END))
                        && (some(record, RecordItem.TEMPERATURE_START) || some(record, RecordItem.TEMPERATURE_END));
            default -> RecordItem.of(item).filter(one -> some(record, one)).isPresent();
        };
    }

    private static boolean some(ApplicationRecord record, RecordItem item) {
        return record.items().containsKey(item);
    }

    /** Whether federal law alone says nothing of this record: then the state's rules are all there is. */
    public boolean federalSilent() {
        return duties.stream().noneMatch(duty -> duty.state().equals(FEDERAL) && duty.applies() == Applies.YES);
    }

    /** Whether it lacks what a rule asks for that binds it, or may. */
    public boolean incomplete() {
        return !missing.isEmpty() || !perhaps.isEmpty();
    }
}
