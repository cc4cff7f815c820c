package plumbrow.advice.program;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.quantity.Amount;

/**
 * One trip over the field.
 *
 * @param number order within the program, from 1
 * @param date planned day, where planned
 * @param product product of the shelf; null for tillage, scouting and harvest
 * @param rate per acre; null where there is no product. Seed may be given as live seeds (saved seed is drilled
 *     thicker for what does not germinate), seeds, units or weight
 * @param sharePct share of the field's acres that the pass covers [%]
 * @param chargeUsdPerAcre machine, labour or custom charge [$/ac covered]
 * @param injuryPct yield lost to crop injury by this pass [%]
 * @param delayDays days by which this pass sets the crop back [d]
 * @param trigger what scouting must find for it to be made; null where it is made in any case
 */
public record Pass(
        int number,
        PassKind kind,
        @Nullable LocalDate date,
        @Nullable String product,
        @Nullable Amount rate,
        double sharePct,
        double chargeUsdPerAcre,
        Distribution injuryPct,
        double delayDays,
        @Nullable ScoutingTrigger trigger) {
    /** A pass that is made in any case. */
    public Pass(
            int number,
            PassKind kind,
            @Nullable LocalDate date,
            @Nullable String product,
            @Nullable Amount rate,
            double sharePct,
            double chargeUsdPerAcre,
            Distribution injuryPct,
            double delayDays) {
        this(number, kind, date, product, rate, sharePct, chargeUsdPerAcre, injuryPct, delayDays, null);
    }

    /** The same trip at another place in the program. */
    public Pass numbered(int other) {
        return new Pass(other, kind, date, product, rate, sharePct, chargeUsdPerAcre, injuryPct, delayDays, trigger);
    }

    /** The same trip on another day, at another rate. */
    public Pass on(@Nullable LocalDate day, @Nullable Amount otherRate) {
        return new Pass(
                number, kind, day, product, otherRate, sharePct, chargeUsdPerAcre, injuryPct, delayDays, trigger);
    }

    /** The same trip, made only where scouting finds enough. */
    public Pass waitingFor(@Nullable ScoutingTrigger count) {
        return new Pass(number, kind, date, product, rate, sharePct, chargeUsdPerAcre, injuryPct, delayDays, count);
    }
}
