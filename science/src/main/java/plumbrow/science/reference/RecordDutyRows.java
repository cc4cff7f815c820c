package plumbrow.science.reference;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Reads rows of record duties. */
final class RecordDutyRows {
    private static final Set<String> ROLES = Set.of("private", "commercial", "noncommercial", "any");

    private RecordDutyRows() {}

    static Optional<Entry> read(Row row) {
        Optional<String> state =
                row.as("state", text -> Optional.of(text).filter(two -> two.matches("[A-Z]{2}")), "two letters, or US");
        Optional<String> role = row.as("role", text -> Optional.of(text).filter(ROLES::contains), "one of " + ROLES);
        Optional<RecordDuty.Scope> scope =
                row.as("scope", RecordDuty.Scope::find, "all, restricted, wps, atrazine or none");
        LocalDate from = day(row, "from");
        LocalDate until = day(row, "until");
        List<String> items = row.text("items").isEmpty()
                ? List.of()
                : Arrays.asList(row.text("items").split(" "));
        for (String item : items) {
            if (!RecordDuties.WORDS.containsKey(item)) {
                row.object("items", "words among " + String.join(" ", RecordDuties.WORDS.keySet()));
            }
        }
        Optional<Boolean> whole = row.as(
                "list",
                text -> text.equals("whole") || text.equals("part")
                        ? Optional.of(text.equals("whole"))
                        : Optional.empty(),
                "whole or part");
        Optional<RecordDuty.WriteBy> writeBy = row.as("write_by", RecordDuty.WriteBy::read, RecordDuty.WriteBy.WORDS);
        OptionalDouble years = row.number("keep_years", 1, 30, "years from 1 to 30");
        Optional<Backing> backing = row.backing();
        if (scope.isPresent() && (scope.get() == RecordDuty.Scope.NONE) != items.isEmpty()) {
            row.object("items", "what the record must hold; nothing where no duty was found");
        }
        if (!row.sound()
                || state.isEmpty()
                || role.isEmpty()
                || scope.isEmpty()
                || whole.isEmpty()
                || writeBy.isEmpty()) {
            return Optional.empty();
        }
        return backing.map(status -> new RecordDuty(
                state.get(),
                role.get(),
                scope.get(),
                from,
                until,
                items,
                whole.get(),
                writeBy.get(),
                years.isPresent() ? Integer.valueOf((int) years.getAsDouble()) : null,
                row.text("conditions"),
                row.origin(),
                status,
                row.number()));
    }

    private static @Nullable LocalDate day(Row row, String column) {
        if (row.text(column).isEmpty()) {
            return null;
        }
        try {
            return LocalDate.parse(row.text(column));
        } catch (DateTimeException wrong) {
            row.object(column, "a day such as 2025-07-10, or nothing");
            return null;
        }
    }
}
