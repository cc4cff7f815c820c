package plumbrow.app.json;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import plumbrow.app.machine.MachineRecord;
import plumbrow.documents.machine.log.MachineWork;

/**
 * One task that a machine wrote down, as command and desk answer it.
 *
 * @param start in the machine's clock, as 2026-05-20T08:10; null where it does not say
 * @param insidePct share of the ground inside the field's outline [%]; null where no field is named or it is not known
 * @param record boxes of an application record; empty where no field is named
 */
public record MachineWorkSummary(
        String task,
        String field,
        String worker,
        @Nullable String start,
        @Nullable String end,
        @Nullable Double acres,
        String acresFrom,
        List<Total> totals,
        @Nullable Double insidePct,
        Map<String, String> record,
        List<String> notes) {
    public MachineWorkSummary {
        totals = List.copyOf(totals);
        record = new LinkedHashMap<>(record);
        notes = List.copyOf(notes);
    }

    /** What was put on in all. */
    public record Total(String product, double amount, String unit, String from) {}

    public static MachineWorkSummary of(MachineWork work, @Nullable MachineRecord record) {
        return new MachineWorkSummary(
                work.task(),
                work.field(),
                work.worker(),
                time(work.start()),
                time(work.end()),
                work.acres(),
                work.acresFrom(),
                work.totals().stream()
                        .map(total -> new Total(
                                total.product(),
                                total.amount(),
                                total.metering().farmUnit().symbol(),
                                total.from()))
                        .toList(),
                record == null ? null : record.insidePct(),
                record == null ? Map.of() : record.boxes(),
                record == null ? work.notes() : record.notes());
    }

    private static @Nullable String time(MachineWork.@Nullable Moment moment) {
        return moment == null ? null : moment.both().toString();
    }
}
