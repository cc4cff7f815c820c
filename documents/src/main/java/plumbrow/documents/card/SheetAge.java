package plumbrow.documents.card;

import java.time.LocalDate;

/** When a safety sheet is so old that a new one should be asked for. The distribution sets no such age. */
public final class SheetAge {
    public static final int YEARS = 3;
    static final String SOURCE = "three years: common practice, no source";

    private SheetAge() {}

    /** Whether a sheet of a day is older than three years on another. */
    public static boolean old(LocalDate dated, LocalDate today) {
        return dated.plusYears(YEARS).isBefore(today);
    }

    /** Whether it will be so within three months. */
    public static boolean soonOld(LocalDate dated, LocalDate today) {
        return !old(dated, today) && dated.plusYears(YEARS).isBefore(today.plusMonths(3));
    }
}
