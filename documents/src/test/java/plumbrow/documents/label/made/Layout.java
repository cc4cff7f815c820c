package plumbrow.documents.label.made;

import java.util.List;

/** How a label is laid out and worded. */
record Layout(String name, Press press, Heads heads, Rates rates, Rotation rotation, Gear gear, Aid aid) {

    enum Press {
        BOOKLET,
        TYPEWRITER,
        SERIF,
        BOXED,
        SMALL,
        RUNNING_HEADS,
        THREE_COLUMNS,
        FOUR_COLUMNS,
        PANELS,
        WEB_PAGE,
        TEXT
    }

    enum Heads {
        CAPITALS,
        TITLE,
        NUMBERED
    }

    enum Rates {
        SENTENCES,
        BULLETS,
        TABLE_EACH_CROP,
        ONE_TABLE,
        SOIL_MATRIX,
        SOIL_ROWS
    }

    enum Rotation {
        TABLE,
        SENTENCES,
        PAIRS
    }

    enum Gear {
        BULLETS,
        SENTENCE
    }

    enum Aid {
        TABLE,
        LINES
    }

    static final List<Layout> ALL = List.of(
            new Layout(
                    "Booklet, two columns, directions in sentences",
                    Press.BOOKLET,
                    Heads.CAPITALS,
                    Rates.SENTENCES,
                    Rotation.SENTENCES,
                    Gear.BULLETS,
                    Aid.LINES),
            new Layout(
                    "Booklet, two columns, tables in the columns",
                    Press.BOOKLET,
                    Heads.CAPITALS,
                    Rates.TABLE_EACH_CROP,
                    Rotation.TABLE,
                    Gear.SENTENCE,
                    Aid.LINES),
            new Layout(
                    "Serif page, a table for each crop",
                    Press.SERIF,
                    Heads.CAPITALS,
                    Rates.TABLE_EACH_CROP,
                    Rotation.TABLE,
                    Gear.BULLETS,
                    Aid.TABLE),
            new Layout(
                    "Boxed, one table for all crops",
                    Press.BOXED,
                    Heads.TITLE,
                    Rates.ONE_TABLE,
                    Rotation.TABLE,
                    Gear.SENTENCE,
                    Aid.TABLE),
            new Layout(
                    "Small type, rates by soil and organic matter",
                    Press.SMALL,
                    Heads.CAPITALS,
                    Rates.SOIL_MATRIX,
                    Rotation.SENTENCES,
                    Gear.SENTENCE,
                    Aid.TABLE),
            new Layout(
                    "Running heads, lists",
                    Press.RUNNING_HEADS,
                    Heads.TITLE,
                    Rates.BULLETS,
                    Rotation.SENTENCES,
                    Gear.BULLETS,
                    Aid.LINES),
            new Layout(
                    "Numbered sections, rates by soil in rows",
                    Press.SERIF,
                    Heads.NUMBERED,
                    Rates.SOIL_ROWS,
                    Rotation.TABLE,
                    Gear.BULLETS,
                    Aid.TABLE),
            new Layout(
                    "Typewriter with dotted leaders",
                    Press.TYPEWRITER,
                    Heads.CAPITALS,
                    Rates.SENTENCES,
                    Rotation.PAIRS,
                    Gear.SENTENCE,
                    Aid.LINES),
            new Layout(
                    "Web page, one table",
                    Press.WEB_PAGE,
                    Heads.TITLE,
                    Rates.ONE_TABLE,
                    Rotation.TABLE,
                    Gear.BULLETS,
                    Aid.TABLE),
            new Layout(
                    "Web page, lists",
                    Press.WEB_PAGE,
                    Heads.CAPITALS,
                    Rates.BULLETS,
                    Rotation.PAIRS,
                    Gear.SENTENCE,
                    Aid.LINES),
            new Layout(
                    "Plain text",
                    Press.TEXT,
                    Heads.CAPITALS,
                    Rates.TABLE_EACH_CROP,
                    Rotation.PAIRS,
                    Gear.BULLETS,
                    Aid.LINES),
            new Layout(
                    "Plain text, sentences",
                    Press.TEXT,
                    Heads.NUMBERED,
                    Rates.SENTENCES,
                    Rotation.SENTENCES,
                    Gear.SENTENCE,
                    Aid.LINES),
            new Layout(
                    "Three columns of small print, directions in sentences",
                    Press.THREE_COLUMNS,
                    Heads.CAPITALS,
                    Rates.SENTENCES,
                    Rotation.SENTENCES,
                    Gear.BULLETS,
                    Aid.LINES),
            new Layout(
                    "Three columns of small print, tables in the columns",
                    Press.THREE_COLUMNS,
                    Heads.NUMBERED,
                    Rates.TABLE_EACH_CROP,
                    Rotation.TABLE,
                    Gear.SENTENCE,
                    Aid.LINES),
            new Layout(
                    "Four columns of small print, lists",
                    Press.FOUR_COLUMNS,
                    Heads.CAPITALS,
                    Rates.BULLETS,
                    Rotation.PAIRS,
                    Gear.BULLETS,
                    Aid.LINES),
            new Layout(
                    "Panels: small print, Spanish beside, front in large type",
                    Press.PANELS,
                    Heads.CAPITALS,
                    Rates.SENTENCES,
                    Rotation.SENTENCES,
                    Gear.SENTENCE,
                    Aid.LINES));

    /** Whether it is set in the small print of a container's label. */
    boolean isSmallPrint() {
        return press == Press.THREE_COLUMNS || press == Press.FOUR_COLUMNS || press == Press.PANELS;
    }
}
