package plumbrow.documents.workbook.form;

import org.jspecify.annotations.Nullable;

/**
 * The one description of a column: template, notes, reader, writer and manual are all made from it.
 *
 * @param key its name in the header row
 * @param kind what it holds, within which range
 * @param meaning what it says, in a few plain words
 * @param example a cell as it could be filled in
 * @param unit unit of its numbers; empty where there is none
 * @param required whether every row needs it
 * @param fallback the value of a blank cell; null where blank means unknown or none
 * @param blank what a blank cell means, in words; empty where that goes without saying
 * @param reference the column of another sheet where this value must stand; null where there is none
 * @param former a name that older workbooks have for it; empty where it always had this one
 * @param title what a person calls it beside a value; empty where the key says it
 * @param stricter of two values that a label may mean, which one forbids more; null where that can't be told by more or less
 */
public record Column<T>(
        String key,
        Kind<T> kind,
        String meaning,
        String example,
        String unit,
        boolean required,
        @Nullable T fallback,
        String blank,
        @Nullable Reference reference,
        String former,
        String title,
        @Nullable Stricter stricter) {

    /** Which of two values keeps people, crops and water safer. */
    public enum Stricter {
        /** The larger, the later or coarser, all entries of both: waits, distances, volumes, what is worn. */
        MORE,
        /** The smaller, the earlier or finer, only what both have: rates, counts, heights, wind, ways of application. */
        LESS
    }

    /** A column of another sheet. */
    public record Reference(Sheet<?> sheet, Column<?> column) {}

    public static <T> Column<T> of(String key, Kind<T> kind, String meaning, String example) {
        return new Column<>(key, kind, meaning, example, "", false, null, "", null, "", "", null);
    }

    public Column<T> in(String unit) {
        return new Column<>(
                key, kind, meaning, example, unit, required, fallback, blank, reference, former, title, stricter);
    }

    public Column<T> need() {
        return new Column<>(
                key, kind, meaning, example, unit, true, fallback, blank, reference, former, title, stricter);
    }

    public Column<T> otherwise(T value) {
        String shown = kind.show(value).found();
        return new Column<>(
                key,
                kind,
                meaning,
                example,
                unit,
                false,
                value,
                shown.isEmpty() ? blank : "blank means " + shown,
                reference,
                former,
                title,
                stricter);
    }

    public Column<T> blankMeans(String words) {
        return new Column<>(
                key,
                kind,
                meaning,
                example,
                unit,
                required,
                fallback,
                "blank means " + words,
                reference,
                former,
                title,
                stricter);
    }

    public Column<T> from(Sheet<?> sheet, Column<?> column) {
        return new Column<>(
                key,
                kind,
                meaning,
                example,
                unit,
                required,
                fallback,
                blank,
                new Reference(sheet, column),
                former,
                title,
                stricter);
    }

    /** Older workbooks call it otherwise; they are read all the same. */
    public Column<T> formerly(String name) {
        return new Column<>(
                key, kind, meaning, example, unit, required, fallback, blank, reference, name, title, stricter);
    }

    /** What a person calls it, where the key doesn't say it. */
    public Column<T> called(String words) {
        return new Column<>(
                key, kind, meaning, example, unit, required, fallback, blank, reference, former, words, stricter);
    }

    /** Which of two values that a label may mean counts until somebody has settled it. */
    public Column<T> stricter(Stricter which) {
        return new Column<>(
                key, kind, meaning, example, unit, required, fallback, blank, reference, former, title, which);
    }

    /** Whether a header cell names this column, by today's name or the former one. */
    boolean isCalled(String header) {
        return key.equals(header) || (!former.isEmpty() && former.equals(header));
    }
}
