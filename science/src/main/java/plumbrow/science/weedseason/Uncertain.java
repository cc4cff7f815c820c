package plumbrow.science.weedseason;

/**
 * A number of the season that is known, or that is drawn: then it stands in a column, one value a draw.
 *
 * @param fixed the number, where it is known
 * @param column place of its column; below 0 where it is known
 */
public record Uncertain(double fixed, int column) {
    public Uncertain {
        if (column < 0 && !Double.isFinite(fixed)) {
            throw new IllegalArgumentException("a known number is " + fixed + "; expected a finite one");
        }
    }

    /** A number without doubt. */
    public static Uncertain known(double value) {
        return new Uncertain(value, -1);
    }

    /** A number that is drawn. */
    public static Uncertain drawn(int column) {
        if (column < 0) {
            throw new IllegalArgumentException("column " + column + "; expected 0 or more");
        }
        return new Uncertain(Double.NaN, column);
    }

    /** Its value in a draw. */
    public double in(double[][] columns, int draw) {
        return column < 0 ? fixed : columns[column][draw];
    }

    /** Its value in a draw as whole days, 0 at least. */
    int wholeDays(double[][] columns, int draw) {
        return (int) Math.max(0, Math.round(in(columns, draw)));
    }
}
