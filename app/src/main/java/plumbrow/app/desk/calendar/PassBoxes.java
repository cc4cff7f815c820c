package plumbrow.app.desk.calendar;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import org.springframework.util.MultiValueMap;
import plumbrow.advice.calendar.PassChange;
import plumbrow.advice.calendar.ProgramChangeException;
import plumbrow.app.book.MeanwhileException;

/**
 * Days and rates of passes as somebody typed them: three values for each pass, in the same order. A blank leaves what is kept.
 *
 * @param faults what can't be read or done, a sentence each
 */
public record PassBoxes(List<PassChange> changes, List<Typed> typed, List<Fault> faults) {
    public PassBoxes {
        changes = List.copyOf(changes);
        typed = List.copyOf(typed);
        faults = List.copyOf(faults);
    }

    public record Typed(String pass, String date, String rate) {}

    /**
     * What can't be done with what was typed.
     *
     * @param pass number of the pass it is about, 0 for the whole program
     */
    public record Fault(int pass, String sentence) {}

    static PassBoxes read(MultiValueMap<String, String> asked) {
        List<String> passes = asked.getOrDefault("pass", List.of());
        List<String> dates = asked.getOrDefault("date", List.of());
        List<String> rates = asked.getOrDefault("rate", List.of());
        List<PassChange> changes = new ArrayList<>();
        List<Typed> typed = new ArrayList<>();
        List<Fault> faults = new ArrayList<>();
        if (passes.isEmpty() && dates.size() + rates.size() > 0) {
            faults.add(new Fault(0, "Say which pass the day or the rate is for, as in pass=3."));
        }
        for (int i = 0; i < passes.size(); i++) {
            Typed box = new Typed(passes.get(i), at(dates, i), at(rates, i));
            typed.add(box);
            try {
                changes.add(change(box));
            } catch (ProgramChangeException fault) {
                faults.add(new Fault(fault.pass(), String.valueOf(fault.getMessage())));
            }
        }
        return new PassBoxes(changes, typed, faults);
    }

    PassBoxes with(ProgramChangeException fault) {
        List<Fault> all = new ArrayList<>(faults);
        all.add(new Fault(fault.pass(), String.valueOf(fault.getMessage())));
        return new PassBoxes(changes, typed, all);
    }

    PassBoxes with(MeanwhileException changed) {
        return with(new ProgramChangeException(0, String.valueOf(changed.getMessage())));
    }

    private static String at(List<String> values, int place) {
        return place < values.size() ? values.get(place).strip() : "";
    }

    private static PassChange change(Typed box) {
        int pass;
        try {
            pass = Integer.parseInt(box.pass().strip());
        } catch (NumberFormatException fault) {
            throw new ProgramChangeException(
                    0, "'" + shortened(box.pass()) + "' is no number of a pass; expected one such as 3.");
        }
        return new PassChange(pass, date(pass, box.date()), rate(pass, box.rate()));
    }

    private static @org.jspecify.annotations.Nullable LocalDate date(int pass, String text) {
        if (text.isEmpty()) {
            return null;
        }
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException fault) {
            throw new ProgramChangeException(
                    pass,
                    "'" + shortened(text) + "' is no day for pass " + pass + "; expected one such as 2027-05-24.");
        }
    }

    private static @org.jspecify.annotations.Nullable Double rate(int pass, String text) {
        if (text.isEmpty()) {
            return null;
        }
        try {
            return Double.valueOf(text.replace(",", ""));
        } catch (NumberFormatException fault) {
            throw new ProgramChangeException(
                    pass, "'" + shortened(text) + "' is no rate for pass " + pass + "; expected a number such as 1.5.");
        }
    }

    private static String shortened(String text) {
        return text.length() > 40 ? text.substring(0, 37) + "…" : text;
    }
}
