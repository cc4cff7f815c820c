package plumbrow.science;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumbrow.science.figure.Answer;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.FigureInputException;

/**
 * Which way an answer goes when one input goes up and all others stay. Each row: figure, input, from, to, answer, direction;
 * up and down are strict, "not down" and "not up" allow it to stay.
 */
@DisplayName("More of this is never less of that")
class DirectionsTest {
    private static final int ROUNDS = 100;
    private static final double ROUNDING = 1e-9;

    @ParameterizedTest(name = "{0}: {4} with {1}")
    @CsvSource(delimiter = '|', textBlock = """
            action-threshold | lead_days | 0 | 14 | threshold | down
            action-threshold | doubling_days | 1 | 30 | threshold | up
            action-threshold | injury_level | 1 | 900 | threshold | up
            injury-level-from-sample | cost_usd_ac | 1 | 90 | density | up
            injury-level-from-sample | crop_usd_ac | 50 | 1500 | density | down
            injury-level-from-sample | harm_pct | 1 | 100 | density | down
            soybean-defoliation | defoliation_pct | 0 | 100 | of_threshold | up
            stink-bug-soybean | bugs | 0 | 200 | per_sweep | up
            stink-bug-soybean | sweeps | 1 | 200 | per_sweep | down
            armyworm-wheat | larvae_ft2 | 0 | 20 | of_threshold | up
            wheat-aphid-threshold | aphids_stem | 0 | 90 | of_threshold | up
            bean-leaf-beetle-cotyledon | cost_usd_ac | 1 | 40 | beetles_plant | up
            western-bean-cutworm-flight | degree_days | 2577 | 2836 | flown_pct | up
            corn-stage-heat | gdd | 1200 | 1439 | to_next_gdd | down
            effective-refuge | survival_share | 0 | 1 | refuge_share | up
            effective-refuge | refuge_share | .01 | .99 | refuge_share | up
            resistance-guess | refuge_share | .01 | .9 | generations | up
            resistance-guess | initial_frequency | .0001 | .4 | generations | down
            fly-free-shift | latitude | 30 | 50 | days_sooner | up
            weed-density | count | 0 | 300 | density_m2 | up
            weed-density-for-loss | loss_pct | 1 | 55 | density_m2 | up
            weed-emergence-species | gdd | 0 | 900 | emerged_pct | up
            waterhemp-emergence | gdd | 0 | 1200 | emerged_pct | up
            residual-soil-dose | organic_pct | 0 | 15 | control_pct | down
            residual-soil-dose | rain_mm | 0 | 60 | control_pct | not down
            residual-soil-dose | depth_cm | 1 | 30 | control_pct | not up
            residual-days-lost | lost_share | 0 | .99 | days_lost | up
            lambsquarters-seeds | plants_m2 | 0 | 500 | weight_g | down
            seeds-per-plant | crop_m2 | 0 | 400 | seeds_plant | down
            seeds-per-plant | plants_m2 | 0 | 400 | seeds_plant | down
            seedbank-decline | dormant_mortality | .01 | .9 | years | down
            seedbank-decline | left_share | .01 | .9 | years | down
            half-life-at | temperature_c | 1 | 45 | half_life_d | down
            half-life-at | moisture_share | .05 | 2 | half_life_d | not up
            arrhenius-speed | temperature_c | -10 | 50 | factor | up
            koc-to-kd | organic_matter_pct | .1 | 20 | kd_ml_g | up
            soil-residue | depth_cm | 1 | 50 | mg_kg | down
            drift-deposit-repeated | distance_m | 1 | 100 | deposit_pct | down
            drift-deposit-repeated | width_m | .1 | 90 | mean_pct | down
            drift-deposit-air | distance_m | 1 | 16 | deposit_pct | down
            drift-deposit-air | distance_m | 17 | 100 | deposit_pct | down
            runoff-share | slope_pct | 0 | 40 | share_pct | not down
            runoff-screen-share | solubility_mg_l | .01 | 900 | share_pct | not down
            treated-seed-feed | weight_g | 5 | 5000 | dose_mg_kg | down
            treated-seed-feed | mg_seed | .01 | 3 | seeds_to_ld50 | down
            aquatic-benchmark | concentration_ug_l | 0 | 900 | share | up
            air-emission-share | vapour_pressure_pa | .00014 | 9 | share | not down
            corn-stand-iowa | plants_ac | 25000 | 35000 | yield_pct | up
            planting-delay | days | 0 | 40 | loss_bu_ac | up
            suitable-days | acres | 10 | 5000 | ac_h | up
            leftover-acres | gpa | 5 | 30 | acres | down
            residue-by-pass | start_pct | 0 | 100 | cover_pct | up
            soil-water-balance | start_mm | 0 | 100 | missing_mm | not down
            air-vapour-day | humidity_least_pct | 0 | 82 | vapour_kpa | up
            store-containment | largest_gal | 10 | 9000 | gal | up
            plots-needed | sd | 5 | 60 | exact | up
            plots-needed | difference | .2 | 1.2 | exact | down
            effective-dose | effect_pct | 1 | 99 | dose | up
            information-normal | gain_sd | 1 | 90 | value_usd_ac | up
            information-normal | gain_mean | 0 | 50 | value_usd_ac | not up
            share-error | draws | 10 | 100000 | standard_error | down
            yield-metric | yield_bu_ac | 0 | 300 | kg_ha | up
            """)
    void oneWay(String id, String input, double from, double to, String output, String direction) {
        Figure figure = Figures.find(id).orElseThrow();
        boolean whole = input.equals("sweeps") || input.equals("draws");
        SplittableRandom random = new SplittableRandom((id + input).hashCode());
        for (int round = 0; round < ROUNDS; round++) {
            double low = random.nextDouble(from, to);
            double high = random.nextDouble(low, to);
            if (whole) {
                low = Math.floor(low);
                high = Math.ceil(high) + 1;
            }
            double before = ask(figure, input, low, output);
            double after = ask(figure, input, high, output);
            double slack = ROUNDING * Math.max(Math.abs(before), 1e-12);
            String what = "%s of %s at %s and %s".formatted(output, id, low, high);
            switch (direction) {
                case "up" -> assertThat(after).as(what).isGreaterThan(before);
                case "down" -> assertThat(after).as(what).isLessThan(before);
                case "not down" -> assertThat(after).as(what).isGreaterThanOrEqualTo(before - slack);
                case "not up" -> assertThat(after).as(what).isLessThanOrEqualTo(before + slack);
                default -> throw new IllegalArgumentException(direction);
            }
        }
    }

    private static double ask(Figure figure, String input, double value, String output) {
        Map<String, String> typed = new HashMap<>(figure.examples().get(0).inputs());
        typed.put(input, Double.toString(value));
        try {
            Answer answer = figure.answer(typed);
            return answer.number(output);
        } catch (FigureInputException e) {
            throw new AssertionError(figure.id() + " with " + typed + ": " + e.getMessage(), e);
        }
    }
}
