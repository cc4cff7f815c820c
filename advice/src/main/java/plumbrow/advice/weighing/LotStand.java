package plumbrow.advice.weighing;

import java.util.stream.IntStream;
import plumbrow.science.stand.CornResponse;
import plumbrow.science.stand.FieldEmergence;
import plumbrow.science.stand.SoybeanResponse;
import plumbrow.science.stand.WheatResponse;

/**
 * The final stand of a lot and what it keeps of the yield, as the kernel reads it: places of inputs and plain numbers.
 *
 *   plants  seeds·germination·(emergence − crowding), or as counted
 *   kept    corn      response(plants; best, sharpness) − late·date loss − gaps
 *           soybean   response(plants; best)·(1 − late·date loss) − gaps
 *           wheat     response(plants; strict or not) − gaps
 *
 * @param crop whose emergence and response it follows
 * @param seedsThousand seeds dropped [1000/ac]; 0 where the stand was counted
 * @param germination share of the seeds that live
 * @param emergence place of the share of live seeds that come up at the usual rate [%]; −1 where the stand was counted
 * @param counted place of the plants that were counted [1/ac]; −1 where they are reckoned from the seeds
 * @param best place of the best stand [plants/ac]; for wheat of whether the strict table holds
 * @param sharpness place of how sharply corn answers, times the table; −1 for other crops
 * @param late place of how sharply a date costs, times the table; −1 where dates don't count
 * @param dateLossPct what the planting date costs by the table [% of the best yield]
 * @param gaps place of the yield lost to gaps [% of the best yield]; −1 where there are none
 */
record LotStand(
        FieldEmergence crop,
        double seedsThousand,
        double germination,
        int emergence,
        int counted,
        int best,
        int sharpness,
        int late,
        double dateLossPct,
        int gaps) {
    private static final double THOUSAND = 1000;

    IntStream places() {
        return IntStream.of(emergence, counted, best, sharpness, late, gaps).filter(place -> place >= 0);
    }

    /** Plants that live [1000/ac] where this share of the live seeds comes up at the usual rate [%]. */
    double plantsThousand(double emergencePct) {
        return seedsThousand * germination * crop.share(emergencePct / 100, seedsThousand);
    }

    /** Yield kept by so many plants [1000/ac], before date and gaps [%]; {@code sharp} counts for corn only. */
    double answerPct(double plants, double bestStand, double sharp) {
        return switch (crop) {
            case CORN -> CornResponse.keptPct(plants, bestStand / THOUSAND, sharp);
            case SOYBEAN -> SoybeanResponse.keptPct(plants, bestStand / THOUSAND);
            case WHEAT -> WheatResponse.keptPct(plants, bestStand);
        };
    }

    /** The same on a planting date that costs so many times the table [%]. */
    double onItsDatePct(double answerPct, double lateTimes) {
        return Math.max(
                0,
                crop == FieldEmergence.SOYBEAN
                        ? answerPct * (1 - lateTimes * dateLossPct / 100)
                        : answerPct - lateTimes * dateLossPct);
    }

    /** Yield kept in one draw or at the means [%], 0 to 100; {@code at} holds each input's value by its place. */
    double keptPct(double[] at) {
        double plants = counted < 0 ? plantsThousand(at[emergence]) : at[counted] / THOUSAND;
        double kept = answerPct(plants, at[best], sharpness < 0 ? 1 : at[sharpness]);
        if (late >= 0) {
            kept = onItsDatePct(kept, at[late]);
        }
        return gaps < 0 ? kept : Math.max(0, kept - at[gaps]);
    }

    /** Fills in the yield kept in each draw [%]. */
    void kept(double[][] columns, int from, int to, double[] kept) {
        double[] bests = columns[best];
        double[] counts = counted < 0 ? columns[emergence] : columns[counted];
        double[] sharps = sharpness < 0 ? counts : columns[sharpness];
        for (int i = from; i < to; i++) {
            double plants = counted < 0 ? plantsThousand(counts[i]) : counts[i] / THOUSAND;
            kept[i] = answerPct(plants, bests[i], sharps[i]);
        }
        if (late >= 0) {
            double[] times = columns[late];
            for (int i = from; i < to; i++) {
                kept[i] = onItsDatePct(kept[i], times[i]);
            }
        }
        if (gaps >= 0) {
            double[] losses = columns[gaps];
            for (int i = from; i < to; i++) {
                kept[i] = Math.max(0, kept[i] - losses[i]);
            }
        }
    }
}
