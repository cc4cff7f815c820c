package plumbrow.documents.workbook.file;

/** How much of a file is read before it is refused, far above any season and far below what would hurt. */
final class Limits {
    /** Largest file on disk [bytes]. */
    static final long FILE_BYTES = 32L << 20;

    /** Most that one part of a spreadsheet file may unpack to [bytes]. */
    static final long PART_BYTES = 64L << 20;

    /** Least packed bytes for one unpacked: XML of a real sheet packs 10 to 50 times. */
    static final double PACKED_SHARE = 0.004;

    /** Most parts in a spreadsheet file. */
    static final int PARTS = 2_000;

    /** Most cells that hold something, over all sheets. */
    static final int CELLS = 1_000_000;

    /** Most characters of a cell, as spreadsheets allow. */
    static final int CELL_CHARACTERS = 32_767;

    /** Columns that are looked at. */
    static final int COLUMNS = 200;

    private Limits() {}
}
