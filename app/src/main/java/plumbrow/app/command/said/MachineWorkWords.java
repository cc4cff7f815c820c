package plumbrow.app.command.said;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import plumbrow.app.json.MachineWorkSummary;
import plumbrow.science.figure.Numbers;

/** What machines wrote down, in words. */
public final class MachineWorkWords {
    private MachineWorkWords() {}

    public static String of(List<MachineWorkSummary> works) {
        Paper paper = new Paper();
        for (MachineWorkSummary work : works) {
            Double acres = work.acres();
            paper.heading((work.task().isEmpty() ? "A task without a name" : work.task())
                    + (work.field().isEmpty() ? "" : ", " + work.field()) + ": "
                    + (acres == null ? "acres unknown" : Numbers.fixed(acres, 2) + " ac, " + work.acresFrom()) + ".");
            paper.prose("  ", "From " + time(work.start()) + " to " + time(work.end()) + ", by the machine's clock.");
            if (work.totals().isEmpty()) {
                paper.prose("  unknown: ", "what was put on; the machine wrote no amount and no rate.");
            }
            for (MachineWorkSummary.Total total : work.totals()) {
                paper.prose(
                        "  ",
                        (total.product().isEmpty() ? "No product named" : total.product()) + ": "
                                + RateMapWords.amount(total.amount()) + " " + total.unit() + ", " + total.from() + ".");
            }
            if (work.insidePct() != null) {
                paper.prose("  ", Numbers.fixed(work.insidePct(), 0) + " % of it inside the outline.");
            }
            work.notes().forEach(note -> paper.prose("  mind  ", note));
            if (!work.record().isEmpty()) {
                paper.gap().prose("  As a record: ", boxes(work.record()));
            }
        }
        return paper.text();
    }

    private static String time(@Nullable String written) {
        return written == null ? "unknown" : written.replace('T', ' ');
    }

    private static String boxes(Map<String, String> record) {
        return record.entrySet().stream()
                .map(box -> box.getValue().contains(" ")
                        ? "\"" + box.getKey() + "=" + box.getValue() + "\""
                        : box.getKey() + "=" + box.getValue())
                .collect(Collectors.joining(" "));
    }
}
