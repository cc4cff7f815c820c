package plumbrow.advice.gates;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.shelf.SpecialLabel;

/** What special labels of a use say of one place and day. */
record SpecialUse(Answer answer, Optional<SpecialLabel> label) {

    enum Answer {
        /** One of them covers place and day. */
        VALID,
        /** One of them covers the place, but the day is not planned or the label's first day was not read. */
        UNDATED,
        /** Those that cover the place don't cover the day. */
        OUT_OF_DATE,
        /** None covers the place. */
        ELSEWHERE
    }

    static SpecialUse of(List<SpecialLabel> labels, Place place, @Nullable LocalDate day) {
        List<SpecialLabel> here =
                labels.stream().filter(label -> covers(label, place)).toList();
        return find(here, label -> label.from() != null && day != null && within(label, day), Answer.VALID)
                .or(() -> find(here, label -> label.from() == null || day == null, Answer.UNDATED))
                .or(() -> find(here, label -> true, Answer.OUT_OF_DATE))
                .orElse(new SpecialUse(Answer.ELSEWHERE, Optional.empty()));
    }

    /** The days on which a label may be used, as a person reads them. */
    static String days(SpecialLabel label) {
        return "from " + (label.from() == null ? "a day not read" : label.from())
                + (label.until() == null ? "" : " until " + label.until());
    }

    private static Optional<SpecialUse> find(List<SpecialLabel> labels, Predicate<SpecialLabel> which, Answer answer) {
        return labels.stream().filter(which).findFirst().map(label -> new SpecialUse(answer, Optional.of(label)));
    }

    private static boolean covers(SpecialLabel label, Place place) {
        List<String> counties = label.counties();
        return place.inState(label.state())
                && (counties == null || counties.stream().anyMatch(place::named));
    }

    private static boolean within(SpecialLabel label, LocalDate day) {
        return !day.isBefore(label.from()) && (label.until() == null || !day.isAfter(label.until()));
    }
}
