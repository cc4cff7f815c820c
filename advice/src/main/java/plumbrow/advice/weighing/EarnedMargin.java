package plumbrow.advice.weighing;

import java.util.List;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.assumptions.Chances;
import plumbrow.advice.field.Field;
import plumbrow.advice.season.Season;
import plumbrow.science.figure.Step;

/**
 * What a program of a field earned with the yield and the price that came, by the arithmetic of the weighing: handling and drying
 * at the mean of the assumptions, passes as planned or, where the log has them, as made.
 *
 * @param marginUsdPerAcre the operator's margin [$/ac]
 * @param costUsdPerAcre what it counts as cost [$/ac]
 * @param netUsdPerBushel what one bushel more leaves him [$/bu]
 * @param working line by line, with the program's cost as planned
 */
public record EarnedMargin(double marginUsdPerAcre, double costUsdPerAcre, double netUsdPerBushel, List<Step> working) {
    public EarnedMargin {
        working = List.copyOf(working);
    }

    /** A field of a season whose harvests are counted: read once, asked for each program. */
    public static final class OfField {
        private final Season season;
        private final FieldModel model;
        private final double[] means;

        private OfField(Season season, FieldModel model) {
            this.season = season;
            this.model = model;
            this.means = model.variables().stream()
                    .mapToDouble(variable -> Chances.of(variable.distribution()).mean())
                    .toArray();
        }

        /**
         * Works it out.
         *
         * @param yieldBuPerAcre at standard moisture [bu/ac]
         * @param priceUsdPerBushel as received [$/bu]
         * @param costUsdPerAcre what it really cost the operator [$/ac]; null takes the program's cost as planned and logged
         * @throws SeasonGapException where the season has no such program
         */
        public EarnedMargin of(
                String program, double yieldBuPerAcre, double priceUsdPerBushel, @Nullable Double costUsdPerAcre) {
            ProgramModel of = model.programs().stream()
                    .filter(one -> one.program().name().equals(program))
                    .findFirst()
                    .orElseThrow(() ->
                            new SeasonGapException("Field '" + model.field().name() + "' of " + season.year()
                                    + " has no program '" + program + "' any more."));
            double[] at = means.clone();
            at[model.price()] = priceUsdPerBushel;
            List<Step> steps = LikelyWorking.harvested(model, of, at, yieldBuPerAcre);
            double planned = value(steps, "cost of the program");
            double paid = costUsdPerAcre == null ? planned : costUsdPerAcre;
            List<Step> one = LikelyWorking.harvested(model, of, at, 1);
            return new EarnedMargin(last(steps) + planned - paid, paid, last(one) + planned, steps);
        }

        private static double last(List<Step> steps) {
            return steps.get(steps.size() - 1).value();
        }

        private static double value(List<Step> steps, String label) {
            return steps.stream()
                    .filter(step -> step.label().equals(label))
                    .mapToDouble(Step::value)
                    .findFirst()
                    .orElseThrow();
        }
    }

    /**
     * Reads a field to count its harvests.
     *
     * @param season the season of the harvest year
     * @throws SeasonGapException where the season lacks what weighing needs
     */
    public static OfField on(Season season, Field field) {
        OwnSeason own = OwnSeasons.of(season).of(field);
        return new OfField(season, FieldModels.of(own.season(), field, WeighingOptions.DEFAULT.changed()));
    }
}
