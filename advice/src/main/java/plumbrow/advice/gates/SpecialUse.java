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
        /** One of them covers the place, but the day is not planned or a day of the label was not read. */
        UNDATED,
        /** Those that cover the place don't cover the day. */
        OUT_OF_DATE,
        /** None covers the place. */
        ELSEWHERE
    }

    static SpecialUse of(List<SpecialLabel> labels, Place place, @Nullable LocalDate day) {
        List<SpecialLabel> here =
                labels.stream().filter(label -> covers(label, place)).toList();
        return find(here, label -> day != null && within(label, day), Answer.VALID)
                .or(() -> find(here, label -> day == null || !outside(label, day), Answer.UNDATED))
                .or(() -> find(here, label -> true, Answer.OUT_OF_DATE))
                .orElse(new SpecialUse(Answer.ELSEWHERE, Optional.empty()));
    }

    /** The days on which a label may be used, as a person reads them. */
    static String days(SpecialLabel label) {
        return "from " + (label.from() == null ? "a day not read" : label.from()) + last(label.until());
    }

    private static String last(@Nullable LocalDate until) {
        return until == null
                ? " until a day not read"
                : until.equals(SpecialLabel.NO_LAST_DAY) ? " on, with no last day printed" : " until " + until;
    }

    private static Optional<SpecialUse> find(List<SpecialLabel> labels, Predicate<SpecialLabel> which, Answer answer) {
        return labels.stream().filter(which).findFirst().map(label -> new SpecialUse(answer, Optional.of(label)));
    }

    private static boolean covers(SpecialLabel label, Place place) {
        List<String> counties = label.counties();
        return place.inState(label.state())
                && (counties == null || counties.stream().anyMatch(place::named));
    }

    /** Both days were read, and the day lies between them. */
    private static boolean within(SpecialLabel label, LocalDate day) {
        return label.from() != null && label.until() != null && !outside(label, day);
    }

    /** A day that was read leaves it out. */
    private static boolean outside(SpecialLabel label, LocalDate day) {
        LocalDate from = label.from();
        LocalDate until = label.until();
        return (from != null && day.isBefore(from)) || (until != null && day.isAfter(until));
    }
}
