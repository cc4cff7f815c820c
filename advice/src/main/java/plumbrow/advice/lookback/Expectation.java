package plumbrow.advice.lookback;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plumbrow.advice.assumptions.DrawSource;
import plumbrow.advice.gates.Standing;
import plumbrow.advice.program.Program;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.Band;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.advice.weighing.ProgramDraws;
import plumbrow.advice.weighing.UncertainInput;
import plumbrow.advice.weighing.WeighedProgram;
import plumbrow.science.chance.SortedDraws;

/**
 * What the weighing expected of one program when a program was chosen for the field.
 *
 * @param baseline whether it was the baseline
 * @param barred whether it was barred
 * @param meanMarginUsdPerAcre mean margin [$/ac]
 * @param margin its 10, 50 and 90 % points [$/ac]
 * @param chosenAhead chance that the chosen program earns more than this one; a tie counts half, one half for itself
 * @param meanYieldBuPerAcre mean yield [bu/ac]
 * @param yield its 10, 50 and 90 % points [bu/ac]
 * @param meanPriceUsdPerBushel mean price [$/bu]
 * @param price its 10, 50 and 90 % points [$/bu]
 * @param costUsdPerAcre the operator's cost [$/ac]
 */
public record Expectation(
        String program,
        boolean baseline,
        boolean barred,
        double meanMarginUsdPerAcre,
        Band margin,
        double chosenAhead,
        double meanYieldBuPerAcre,
        Band yield,
        double meanPriceUsdPerBushel,
        Band price,
        double costUsdPerAcre) {

    /**
     * What is expected of every program of a field, on the draws of its advice.
     *
     * @param season the season that was weighed
     * @param chosen the program chosen
     */
    public static List<Expectation> of(Season season, FieldAdvice advice, String chosen) {
        DrawSource source = new DrawSource(advice.draws(), advice.seed());
        ProgramDraws draws = new ProgramDraws(season, advice.field(), source);
        Map<String, ProgramDraws.Weighed> weighed = new LinkedHashMap<>();
        for (Program program : season.programs(advice.field().name())) {
            weighed.put(program.name(), draws.weigh(program));
        }
        ProgramDraws.Weighed own = weighed.get(chosen);
        UncertainInput price = advice.inputs().stream()
                .filter(input -> input.id().equals("price"))
                .findFirst()
                .orElse(null);
        List<Expectation> all = new ArrayList<>();
        if (own == null || price == null) {
            return all;
        }
        weighed.forEach((name, one) -> {
            WeighedProgram told = advice.program(name).orElse(null);
            all.add(new Expectation(
                    name,
                    name.equals(advice.baseline()),
                    told != null && told.standing() == Standing.BARRED,
                    one.meanMarginUsdPerAcre(),
                    band(one.margins()),
                    ahead(own.margins(), one.margins()),
                    one.meanYieldBuPerAcre(),
                    band(one.yields()),
                    price.mean(),
                    price.band(),
                    one.costUsdPerAcre()));
        });
        return List.copyOf(all);
    }

    private static Band band(double[] draws) {
        double[] sorted = draws.clone();
        Arrays.sort(sorted);
        return new Band(
                SortedDraws.quantile(sorted, 0.1),
                SortedDraws.quantile(sorted, 0.5),
                SortedDraws.quantile(sorted, 0.9));
    }

    private static double ahead(double[] own, double[] other) {
        double wins = 0;
        for (int i = 0; i < own.length; i++) {
            wins += own[i] > other[i] ? 1 : own[i] == other[i] ? 0.5 : 0;
        }
        return wins / own.length;
    }
}
