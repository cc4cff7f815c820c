package plumbrow.advice.program;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.quantity.Amount;

/**
 * A line of the log: what was really put on a field. It counts against season limits together with what is planned. A line of rate 0
 * puts nothing on: it says that a pass which waited for scouting was not made, since too few were counted that day.
 *
 * @param rate per treated acre; 0 where scouting found too few
 * @param sharePct share of the field's acres [%]
 * @param applicator who applied it, where written down
 * @param source where this stands: log, receipt, memory
 * @param meant which planned pass it was, where a person said so; null where nobody was asked
 */
public record Done(
        String field,
        LocalDate date,
        String product,
        Amount rate,
        double sharePct,
        @Nullable String applicator,
        String source,
        @Nullable MeantPass meant) {
    /** With nobody asked which pass it was. */
    public Done(
            String field,
            LocalDate date,
            String product,
            Amount rate,
            double sharePct,
            @Nullable String applicator,
            String source) {
        this(field, date, product, rate, sharePct, applicator, source, null);
    }

    /** Whether anything was put on; else scouting found too few for it. */
    public boolean made() {
        return rate.value() > 0;
    }

    /** What it says, without its field and day: "Ridge 12, 6 fl oz/ac", "Ridge 12 not made: scouting found too few". */
    public String words() {
        return made() ? product + ", " + rate.text() + "/ac" : product + " not made: scouting found too few";
    }

    /** The same line with what a person said of which pass it was. */
    public Done meaning(@Nullable MeantPass said) {
        return new Done(field, date, product, rate, sharePct, applicator, source, said);
    }
}
