package plumbrow.advice.weighing;

import java.util.Arrays;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.program.Program;
import plumbrow.advice.weedseason.ProgramSeason;
import plumbrow.science.chance.SortedDraws;

/**
 * One program of a field on the draws of the assumptions: what the weighing would say of its yield and margin, to the bit, without
 * what only several programs together can say. All money is the operator's, per acre.
 */
public final class ProgramTrial {
    private final Program program;
    private final double costUsdPerAcre;
    private final double[] yields;
    private final double[] margins;
    private final @Nullable ProgramSeason season;
    private final double[] means;

    ProgramTrial(
            Program program,
            double costUsdPerAcre,
            double[] yields,
            double[] margins,
            @Nullable ProgramSeason season,
            double[] means) {
        this.program = program;
        this.costUsdPerAcre = costUsdPerAcre;
        this.yields = yields;
        this.margins = margins;
        this.season = season;
        this.means = means;
    }

    /**
     * What a person is told of one program.
     *
     * @param costUsdPerAcre operator's input cost [$/ac]
     * @param yield 10, 50 and 90 % points of the yield [bu/ac]
     * @param standardErrorUsdPerAcre of the mean margin, from the number of draws
     * @param margin 10, 50 and 90 % points of the margin [$/ac]
     */
    public record Numbers(
            double costUsdPerAcre,
            double meanYieldBuPerAcre,
            Band yield,
            double meanMarginUsdPerAcre,
            double standardErrorUsdPerAcre,
            Band margin) {}

    /**
     * One program against another on the same draws.
     *
     * @param other name of the other
     * @param meanGainUsdPerAcre mean margin over the other's
     * @param gain 10, 50 and 90 % points of that [$/ac]
     * @param meanGainBuPerAcre mean yield over the other's
     * @param chanceBetter share of draws in which it earns more; a tie counts half
     */
    public record Against(
            String other, double meanGainUsdPerAcre, Band gain, double meanGainBuPerAcre, double chanceBetter) {}

    public Program program() {
        return program;
    }

    public Numbers numbers() {
        double[] sorted = sorted(margins);
        double mean = SortedDraws.mean(margins);
        return new Numbers(
                costUsdPerAcre,
                SortedDraws.mean(yields),
                FieldWeighing.band(sorted(yields)),
                mean,
                FieldWeighing.standardError(margins, mean),
                FieldWeighing.band(sorted));
    }

    public Against against(ProgramTrial other) {
        double[] gain = FieldWeighing.difference(margins, other.margins);
        double better = FieldWeighing.chanceAbove(gain);
        Arrays.sort(gain);
        return new Against(
                other.program.name(),
                SortedDraws.mean(margins) - SortedDraws.mean(other.margins),
                FieldWeighing.band(gain),
                SortedDraws.mean(yields) - SortedDraws.mean(other.yields),
                better);
    }

    /** The season of weeds under it; empty where the field's weeds are not followed day by day. */
    public Optional<ProgramSeason> season() {
        return Optional.ofNullable(season);
    }

    /** What its weeds do, in one sentence, every input at its mean; empty where they are not followed. */
    public String weeds() {
        return season().map(followed -> SeasonWords.sentence(program.name(), followed.storyAt(means)))
                .orElse("");
    }

    /** Means of the draws of the field's inputs, by their places. */
    public double[] means() {
        return means.clone();
    }

    private static double[] sorted(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return sorted;
    }
}
