package plumbrow.advice.records;

import java.time.Duration;
import java.time.LocalDateTime;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * When a treated field may be entered again, and what workers are told of it. The longest interval of all products counts, elapsed from the
 * end of the application, also over a change of the clock.
 *
 * <p>Source: labels for the hours; 40 CFR 170.407 and 170.409, 170.309(h), 170.311(b) for sign and display, in part from memory.
 *
 * @param hours longest restricted-entry interval [h]; null where one of them was not read
 * @param unread products of which it was not read
 * @param allowedFrom when entry is allowed, by the clock of the field; null where it can't be told
 * @param atLatest whether the end was not written down, so that it is counted from the end of the day
 * @param displayBy by when the display must show it, {@code displayUntil} until when it must; null where the end is not known
 * @param signNotBefore before when no sign may stand, {@code signDownBy} by when it must be gone or covered; null where not known
 */
public record Reentry(
        @Nullable Integer hours,
        List<String> unread,
        @Nullable LocalDateTime allowedFrom,
        boolean atLatest,
        @Nullable LocalDateTime displayBy,
        @Nullable LocalDateTime displayUntil,
        @Nullable LocalDateTime signNotBefore,
        @Nullable LocalDateTime signDownBy) {
    private static final int SHOWN_WITHIN_HOURS = 24;
    private static final int SHOWN_DAYS = 30;
    private static final int SIGN_BEFORE_HOURS = 24;
    private static final int SIGN_DOWN_DAYS = 3;
    private static final int SIGNS_ABOVE_HOURS = 48;

    public Reentry {
        unread = List.copyOf(unread);
    }

    public static Reentry of(ApplicationRecord record) {
        List<String> unread = record.products().stream()
                .filter(one -> one.reentryHours() == null)
                .map(RecordedProduct::product)
                .toList();
        int longest = record.products().stream()
                .map(RecordedProduct::reentryHours)
                .mapToInt(one -> one == null ? 0 : one)
                .max()
                .orElse(0);
        Integer hours = unread.isEmpty() ? Integer.valueOf(longest) : null;
        ZonedDateTime end = record.end();
        if (end == null) {
            return new Reentry(
                    hours,
                    unread,
                    hours == null
                            ? null
                            : record.date().plusDays(1).atStartOfDay().plusHours(hours),
                    true,
                    null,
                    null,
                    null,
                    null);
        }
        ZonedDateTime over = hours == null ? null : end.plusHours(hours);
        ZonedDateTime start = record.start();
        return new Reentry(
                hours,
                unread,
                over == null ? null : over.toLocalDateTime(),
                false,
                end.plusHours(SHOWN_WITHIN_HOURS).toLocalDateTime(),
                over == null ? null : over.plusDays(SHOWN_DAYS).toLocalDateTime(),
                start == null ? null : start.minusHours(SIGN_BEFORE_HOURS).toLocalDateTime(),
                over == null ? null : over.plusDays(SIGN_DOWN_DAYS).toLocalDateTime());
    }

    /** When entry is allowed, in a sentence. */
    public String sentence() {
        if (allowedFrom == null) {
            return "Nobody goes in: the restricted-entry interval of " + String.join(" and ", unread)
                    + " was not read. Read the label.";
        }
        return Integer.valueOf(0).equals(hours)
                ? "No restricted-entry interval: entry is allowed when the spray has dried."
                : "Nobody goes in before " + RecordCheck.moment(allowedFrom) + (atLatest ? " at the latest" : "") + ": "
                        + hours + " h after the " + (atLatest ? "end of the day; the end was not written down" : "end")
                        + ".";
    }

    /** How long it is still, at a moment: "5 h 20 min"; empty where it is over or can't be told. */
    public String left(LocalDateTime now) {
        LocalDateTime over = allowedFrom;
        if (over == null || !now.isBefore(over)) {
            return "";
        }
        Duration left = Duration.between(now, over);
        long minutes = (left.toSeconds() + 59) / 60;
        return minutes / 60 + " h " + minutes % 60 + " min";
    }

    /** Whether the interval runs, or is not known, at a moment. */
    public boolean runs(LocalDateTime now) {
        LocalDateTime over = allowedFrom;
        return over == null || now.isBefore(over);
    }

    /** The words of the sign at the field, a line each. */
    public static List<String> sign() {
        return List.of("DANGER · PELIGRO", "PESTICIDES · PESTICIDAS", "KEEP OUT · NO ENTRE");
    }

    /** What the central display says, a line each. */
    public List<String> display(ApplicationRecord record) {
        List<String> lines = new ArrayList<>();
        lines.add(record.field()
                + record.item(RecordItem.PART).map(part -> ", " + part).orElse("")
                + record.item(RecordItem.PLACE).map(place -> " (" + place + ")").orElse(""));
        lines.add(record.products().stream()
                .map(one -> one.product() + ", EPA Reg. No. "
                        + (one.registration() == null ? "not written down" : one.registration()))
                .collect(Collectors.joining("; ")));
        lines.add("On " + record.item(RecordItem.CROP).orElse("crop not written down") + ", started "
                + moment(record.start()) + ", ended " + moment(record.end()));
        lines.add("Restricted-entry interval "
                + (hours == null ? "not read: keep out" : hours + " h")
                + (allowedFrom == null ? "" : "; entry allowed from " + RecordCheck.moment(allowedFrom)));
        return lines;
    }

    private static String moment(@Nullable ZonedDateTime moment) {
        return moment == null ? "not written down" : RecordCheck.moment(moment.toLocalDateTime());
    }

    /** Duties to workers, where any work there, a sentence each. */
    public List<String> duties() {
        List<String> duties = new ArrayList<>();
        if (displayBy != null) {
            duties.add("Display with the safety data sheets by " + RecordCheck.moment(displayBy)
                    + ", earlier where workers go in before"
                    + (displayUntil == null ? "." : ", until " + RecordCheck.moment(displayUntil) + "."));
        } else {
            duties.add("Display with the safety data sheets within 24 h of the end, which was not written down.");
        }
        Integer interval = hours;
        duties.add(
                interval == null
                        ? "Whether signs are asked for depends on an interval that was not read."
                        : interval > SIGNS_ABOVE_HOURS
                                ? "Signs at every way in, since the interval is over 48 h"
                                        + (signNotBefore == null
                                                ? ""
                                                : ", not before " + RecordCheck.moment(signNotBefore))
                                        + (signDownBy == null
                                                ? ""
                                                : "; down or covered by " + RecordCheck.moment(signDownBy))
                                        + "."
                                : "Tell workers, or put signs up: the interval is 48 h or less. Both, where the label says both.");
        return duties;
    }
}
