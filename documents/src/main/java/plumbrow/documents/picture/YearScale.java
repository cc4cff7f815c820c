package plumbrow.documents.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import plumbrow.science.figure.Numbers;

/**
 * An upright scale of a look ahead: straight for money and shares, by powers of ten for seed.
 *
 * @param low value at the foot; of a scale by powers the least that is told apart
 * @param high value at the head, more than low
 */
record YearScale(double low, double high, Kind kind) {
    /** How values lie on the scale and are written. */
    enum Kind {
        MONEY,
        PERCENT,
        POWERS
    }

    static YearScale money(double lowest, double highest) {
        MoneyScale round = MoneyScale.holding(Math.min(0, lowest), highest, 0, 1, 3);
        return new YearScale(lowest >= 0 ? 0 : round.low(), round.high(), Kind.MONEY);
    }

    static YearScale percent() {
        return new YearScale(0, 100, Kind.PERCENT);
    }

    static YearScale powers(double lowest, double highest) {
        double high = Math.pow(10, Math.ceil(Math.log10(Math.max(10, highest))));
        double low = Math.pow(10, Math.floor(Math.log10(Math.max(high * 1e-6, Math.max(1e-3, lowest)))));
        return new YearScale(Math.min(low, high / 10), high, Kind.POWERS);
    }

    double y(double value, double head, double foot) {
        double share = kind == Kind.POWERS
                ? Math.log10(Math.max(low, value) / low) / Math.log10(high / low)
                : (value - low) / (high - low);
        return foot - Math.min(1, Math.max(0, share)) * (foot - head);
    }

    List<Double> ticks() {
        List<Double> ticks = new ArrayList<>();
        if (kind == Kind.MONEY) {
            ticks.addAll(MoneyScale.holding(low, high, 0, 1, 3).ticks().stream()
                    .filter(tick -> tick >= low - 1e-9 && tick <= high + 1e-9)
                    .toList());
        } else if (kind == Kind.PERCENT) {
            ticks.addAll(List.of(0.0, 50.0, 100.0));
        } else {
            int powers = (int) Math.round(Math.log10(high / low));
            int every = Math.max(1, (powers + 2) / 3);
            for (int i = 0; i <= powers; i += every) {
                ticks.add(low * Math.pow(10, i));
            }
        }
        return ticks;
    }

    String text(double value) {
        return switch (kind) {
            case MONEY -> Numbers.dollars(value, 0);
            case PERCENT -> Numbers.fixed(value, 0) + " %";
            case POWERS -> Numbers.plain(Double.parseDouble(String.format(Locale.ROOT, "%.3g", value)));
        };
    }
}
