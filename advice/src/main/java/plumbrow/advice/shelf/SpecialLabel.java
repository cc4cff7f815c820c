package plumbrow.advice.shelf;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Crop;

/**
 * A label for one state beside the main one: special local need (FIFRA 24(c)) or emergency exemption (FIFRA 18).
 *
 * @param state the only state it is for, two-letter code
 * @param counties the only counties it is for; null for the whole state
 * @param from first day it may be used
 * @param until last day it may be used; {@link #NO_LAST_DAY} where the label was read and prints none, null where unknown
 * @param beside whether the main label lists the crop too, so that the use stands on it where this one does not hold
 * @param source the label itself
 */
public record SpecialLabel(
        String product,
        Crop crop,
        String state,
        @Nullable List<String> counties,
        @Nullable LocalDate from,
        @Nullable LocalDate until,
        boolean beside,
        String source) {
    /** Stands for no last day: later than any season. */
    public static final LocalDate NO_LAST_DAY = LocalDate.of(9999, 12, 31);

    public SpecialLabel {
        counties = counties == null ? null : List.copyOf(counties);
    }

    /** One on which alone the use stands. */
    public SpecialLabel(
            String product,
            Crop crop,
            String state,
            @Nullable List<String> counties,
            @Nullable LocalDate from,
            @Nullable LocalDate until,
            String source) {
        this(product, crop, state, counties, from, until, false, source);
    }
}
