package plumbrow.documents.label.proposal;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.documents.label.LabelContent;
import plumbrow.documents.label.LabelReading;
import plumbrow.documents.sheet.Amount;

/** Values of clear readings in the units of the shelf; null where the reading isn't clear. */
final class Values {
    private static final double HOURS_PER_DAY = 24;

    private Values() {}

    /** Days, rounded up; months count as 31 days and years as 366, so that the wait is never too short. */
    static @Nullable Integer days(LabelReading reading) {
        if (!(reading instanceof LabelReading.Stated stated && stated.content() instanceof LabelContent.Interval one)) {
            return null;
        }
        double time = one.time().high();
        return switch (one.time().unit()) {
            case "d" -> (int) Math.ceil(time);
            case "h" -> (int) Math.ceil(time / HOURS_PER_DAY);
            case "weeks" -> (int) Math.ceil(time * 7);
            case "months" -> (int) Math.ceil(time * 31);
            case "years" -> (int) Math.ceil(time * 366);
            default -> null;
        };
    }

    static @Nullable Integer hours(LabelReading reading) {
        if (!(reading instanceof LabelReading.Stated stated && stated.content() instanceof LabelContent.Interval one)) {
            return null;
        }
        return switch (one.time().unit()) {
            case "h" -> (int) Math.ceil(one.time().high());
            case "d" -> (int) Math.ceil(one.time().high() * HOURS_PER_DAY);
            default -> null;
        };
    }

    /** An amount per acre in the words of the shelf. */
    static plumbrow.advice.quantity.@Nullable Amount perAcre(double value, String unit) {
        Optional<FarmUnit> farm = FarmUnit.parse(unit.replace("/ac", ""));
        return farm.isEmpty() ? null : new plumbrow.advice.quantity.Amount(value, farm.get());
    }

    static @Nullable Amount measured(LabelReading reading) {
        return reading instanceof LabelReading.Stated stated && stated.content() instanceof LabelContent.Measured one
                ? one.amount()
                : null;
    }

    /** A height in inches. */
    static @Nullable Double height(LabelReading reading) {
        return reading instanceof LabelReading.Stated stated && stated.content() instanceof LabelContent.Height one
                ? Double.valueOf(one.amount().high())
                : null;
    }

    /** Degrees Fahrenheit, downwards, so that a limit is never too warm. */
    static @Nullable Double fahrenheit(@Nullable Amount air) {
        if (air == null) {
            return null;
        }
        return air.unit().equals("°C")
                ? Double.valueOf(Math.floor(air.high() * 9 / 5 + 32))
                : Double.valueOf(air.high());
    }

    /** Where a reading stands, as the source of a row. */
    static String source(String product, LabelReading... readings) {
        for (LabelReading reading : readings) {
            if (reading instanceof LabelReading.OnPaper paper) {
                return product + " label, page " + paper.quote().page();
            }
        }
        return product + " label";
    }
}
