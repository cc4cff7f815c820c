package plumbrow.documents.sheet.made;

import plumbrow.documents.sheet.made.Digits.Power;

/** A house style: words, numbers, units, and how things are laid out. */
record House(
        String name,
        Wording wording,
        Numbering numbering,
        Digits digits,
        Power power,
        String pressure,
        boolean fahrenheit,
        String density,
        Dates dates,
        Ingredients ingredients,
        Hazards hazards,
        Toxicity toxicity,
        Ecology ecology,
        Limits limits,
        Transport transport,
        Second second,
        Press press) {

    /** How sections are numbered. */
    enum Numbering {
        SECTION_COLON,
        SECTION_DASH,
        DOT,
        DOT_CAPITALS,
        PAREN,
        ROMAN,
        NONE,
        LINE_ABOVE,
        ZERO;

        String heading(int number, String title) {
            return switch (this) {
                case SECTION_COLON -> "SECTION " + number + ": " + title;
                case SECTION_DASH -> "Section " + number + " - " + title.toUpperCase(java.util.Locale.ROOT);
                case DOT -> number + ". " + title;
                case DOT_CAPITALS -> number + ". " + title.toUpperCase(java.util.Locale.ROOT);
                case PAREN -> number + ") " + title;
                case ROMAN -> roman(number) + ". " + title.toUpperCase(java.util.Locale.ROOT);
                case NONE -> title.toUpperCase(java.util.Locale.ROOT);
                case LINE_ABOVE -> "SECTION " + number + "\n" + title;
                case ZERO -> String.format(java.util.Locale.ROOT, "Section %02d. %s", number, title);
            };
        }

        private static String roman(int number) {
            String tens = number >= 10 ? "X" : "";
            return tens
                    + switch (number % 10) {
                        case 1 -> "I";
                        case 2 -> "II";
                        case 3 -> "III";
                        case 4 -> "IV";
                        case 5 -> "V";
                        case 6 -> "VI";
                        case 7 -> "VII";
                        case 8 -> "VIII";
                        case 9 -> "IX";
                        default -> "";
                    };
        }
    }

    enum Dates {
        AMERICAN,
        NAMED,
        MONTH_FIRST,
        ISO,
        GERMAN,
        BRITISH
    }

    enum Ingredients {
        TABLE,
        WIDE_TABLE,
        LABELLED,
        LINES
    }

    enum Hazards {
        CODE_FIRST,
        CODE_LAST,
        NO_CODE,
        TABLE,
        NONE
    }

    enum Toxicity {
        PAIRS,
        BY_COMPONENT,
        ROUTE_TABLE,
        LINES,
        UNDER_HEADINGS,
        SEXES
    }

    enum Ecology {
        PAIRS,
        TABLE,
        LINES,
        SENTENCES
    }

    enum Limits {
        BY_AUTHORITY,
        PAIRS,
        ROWS,
        NONE
    }

    enum Transport {
        PAIRS,
        BY_MODE,
        ONE_LINE,
        PLAIN
    }

    /** A second language. */
    enum Second {
        NONE,
        SPANISH_AFTER,
        FRENCH_SLASH,
        SPANISH_BESIDE
    }

    /** How it is printed. */
    enum Press {
        COLON,
        COLON_SERIF,
        PAIR_TABLE,
        BOXED,
        STACKED,
        SMALL_TABLES,
        RUNNING_HEADS,
        TWO_COLUMNS,
        TYPEWRITER,
        BESIDE,
        WEB_PAGE,
        PLAIN_TEXT
    }

    boolean american() {
        return wording != Wording.EU;
    }
}
