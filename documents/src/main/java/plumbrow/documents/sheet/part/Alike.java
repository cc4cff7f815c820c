package plumbrow.documents.sheet.part;

import java.util.Locale;
import java.util.Objects;
import plumbrow.documents.sheet.Amount;
import plumbrow.documents.sheet.Content;

/** Whether two statements say the same, though one leaves something out, or spells or rounds it otherwise. */
final class Alike {
    private static final double ROUNDED = .006;
    private static final double COARSE = .05;

    private Alike() {}

    static boolean alike(Content one, Content other) {
        if (one.equals(other)) {
            return true;
        }
        if (one instanceof Content.Text first && other instanceof Content.Text second) {
            return plain(first.words()).equals(plain(second.words()));
        }
        if (one instanceof Content.Measured first && other instanceof Content.Measured second) {
            return same(first.amount(), second.amount());
        }
        if (one instanceof Content.Phone first && other instanceof Content.Phone second) {
            return digits(first.number()).equals(digits(second.number()));
        }
        if (one instanceof Content.Statement first && other instanceof Content.Statement second) {
            return !first.code().isEmpty() && first.code().equals(second.code());
        }
        if (one instanceof Content.Ingredient first && other instanceof Content.Ingredient second) {
            return !first.cas().isEmpty()
                    && first.cas().equals(second.cas())
                    && (plain(first.name()).equals(plain(second.name()))
                            || first.percent() == null
                            || second.percent() == null
                            || same(first.percent(), second.percent()));
        }
        if (one instanceof Content.Reportable first && other instanceof Content.Reportable second) {
            return same(first.amount(), second.amount())
                    && (plain(first.substance()).equals(plain(second.substance()))
                            || first.substance().isEmpty()
                            || second.substance().isEmpty());
        }
        return false;
    }

    /** The same size in the same or another unit, within rounding, and not under other conditions. */
    static boolean same(Amount one, Amount other) {
        return one.qualifier() == other.qualifier()
                && near(Conversions.base(one.low(), one.unit()), Conversions.base(other.low(), other.unit()))
                && near(Conversions.base(one.high(), one.unit()), Conversions.base(other.high(), other.unit()))
                && Conversions.quantity(one.unit()).equals(Conversions.quantity(other.unit()))
                && compatible(one.conditions().celsius(), other.conditions().celsius())
                && compatible(one.conditions().hours(), other.conditions().hours());
    }

    /** The same size, as where one unit is rounded more than the other: "< 0.0013 kPa (< 0.01 mm Hg)". */
    static boolean rounded(Amount one, Amount other) {
        double first = Conversions.base(one.low(), one.unit());
        double second = Conversions.base(other.low(), other.unit());
        return one.qualifier() == other.qualifier()
                && Conversions.quantity(one.unit()).equals(Conversions.quantity(other.unit()))
                && Math.abs(first - second) <= COARSE * Math.max(Math.abs(first), Math.abs(second));
    }

    private static boolean compatible(
            @org.jspecify.annotations.Nullable Double one, @org.jspecify.annotations.Nullable Double other) {
        return one == null || other == null || Objects.equals(one, other);
    }

    private static boolean near(double one, double other) {
        return Math.abs(one - other) <= ROUNDED * Math.max(Math.abs(one), Math.abs(other));
    }

    private static String plain(String text) {
        return text.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\d]+", "");
    }

    private static String digits(String number) {
        String digits = number.replaceAll("\\D", "");
        return digits.length() == 11 && digits.startsWith("1") ? digits.substring(1) : digits;
    }
}
