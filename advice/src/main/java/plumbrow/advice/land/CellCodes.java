package plumbrow.advice.land;

/** What each cell of a grid belongs to, by the codes of {@link CellGrid}. */
public final class CellCodes {
    private final CellGrid grid;
    private final byte[] codes;

    CellCodes(CellGrid grid, byte[] codes) {
        this.grid = grid;
        this.codes = codes;
    }

    public CellGrid grid() {
        return grid;
    }

    /** The code of a cell, by its place in the order of the grid. */
    public int at(int cell) {
        return codes[cell] & 0xFF;
    }

    public int at(int row, int column) {
        return at(row * grid.columns() + column);
    }

    /** Ground under the cells of a code [m²]. */
    public double squareMetres(int code) {
        double sum = 0;
        for (int row = 0; row < grid.rows(); row++) {
            int count = 0;
            for (int column = 0; column < grid.columns(); column++) {
                count += at(row, column) == code ? 1 : 0;
            }
            sum += count * grid.cellSquareMetres(row);
        }
        return sum;
    }
}
