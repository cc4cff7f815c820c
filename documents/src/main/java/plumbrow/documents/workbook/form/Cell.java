package plumbrow.documents.workbook.form;

import java.math.BigDecimal;
import java.time.LocalDate;

/** One cell as it was found in a file, or as it is to be written into one. */
public sealed interface Cell {
    Cell BLANK = new Blank();

    /** The cell as a person sees it; empty where it is blank. */
    String found();

    /** Nothing in the cell. */
    record Blank() implements Cell {
        @Override
        public String found() {
            return "";
        }
    }

    /** Text of a spreadsheet cell, which is text even where it looks like a number. */
    record Text(String text) implements Cell {
        @Override
        public String found() {
            return text;
        }
    }

    /** Text of a CSV file, which does not say whether it means a number, a date or a word. */
    record Written(String text) implements Cell {
        @Override
        public String found() {
            return text;
        }
    }

    /** A number; {@code percent} where the spreadsheet shows it with a % sign, a hundred times as large. */
    record Numeral(double value, boolean percent) implements Cell {
        public static Numeral of(double value) {
            return new Numeral(value, false);
        }

        @Override
        public String found() {
            BigDecimal shown = new BigDecimal(Double.toString(percent ? value * 100 : value));
            return shown.stripTrailingZeros().toPlainString() + (percent ? "%" : "");
        }
    }

    /** A day. */
    record Day(LocalDate date) implements Cell {
        @Override
        public String found() {
            return date.toString();
        }
    }

    /** A spreadsheet's TRUE or FALSE. */
    record Truth(boolean yes) implements Cell {
        @Override
        public String found() {
            return yes ? "TRUE" : "FALSE";
        }
    }

    /** A cell that holds no value: a formula that failed or was never worked out. */
    record Broken(String found, String expected) implements Cell {}
}
