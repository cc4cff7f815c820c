package plumbrow.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.StringJoiner;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumbrow.science.figure.Answer;
import plumbrow.science.figure.Figure;

/**
 * The same question in other units. Each row names the inputs that carry one unit, and the outputs that carry it too; a
 * number after a colon is the power. Every output that is not named must not change at all.
 *
 * So dollars may be any money, bushels any measure of grain, days any time, and a dose any weight.
 */
@DisplayName("The same question in other units has the same answer")
class UnitsTest {
    /** A half, pounds in a kilogram, and kilograms in a pound. */
    private static final double[] UNITS = {0.5, 2.2046226218, 0.45359237};

    private static final double SAME = 1e-6;

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '|', textBlock = """
            break-even-gain | extra_cost_usd_ac price_usd_bu |
            break-even-gain | extra_cost_usd_ac | gain_bu_ac
            break-even-price | extra_cost_usd_ac | price_usd_bu
            break-even-price | gain_bu_ac | price_usd_bu:-1
            break-even-chance | cost_usd_ac price_usd_bu |
            break-even-chance | price_usd_bu:-1 loss_bu_ac |
            partial-budget | added_return reduced_cost reduced_return added_cost | net
            seed-cost | price_usd_unit | cost_usd_ac
            seed-cost | seeds_per_unit seeds_ac |
            saved-seed-cost | bin_price_usd_bu cleaning_usd_bu treatment_usd_bu tests_usd | cost_usd_ac
            refuge-loss | price_usd_bu | loss_usd_ac
            price-quantile | futures_usd | price_usd mean_usd sd_usd
            price-quantile | volatility:-1 years:2 |
            price-chance-above | futures_usd strike_usd |
            pert | low likely high | mean sd quantile low_end high_end
            triangular | low likely high | mean sd quantile low_end high_end
            perfect-information | payoffs | best_expected with_information value
            partial-information | payoffs | best_expected value_first value_second value_both
            information-normal | gain_mean gain_sd | value_usd_ac
            tail-shortfall | values | quantile shortfall
            dominance | a b |
            dose-response | dose ed50_e |
            dose-response | lower_c upper_d | response
            chance-better | mean_a mean_b variance_a:2 variance_b:2 covariance:2 |
            paired-strips | a b break_even | difference standard_error low high
            block-anova | yields | ss_block:2 ss_treatment:2 ss_error:2 ms_error:2 lsd standard_error_difference standard_error_mean means
            split-plot | yields | ss_block:2 ss_whole:2 ss_error_a:2 ss_inside:2 ss_interaction:2 ss_error_b:2 sed_whole sed_inside sed_inside_in_whole sed_whole_at_inside
            random-effects | effects variances:2 | pooled standard_error tau2:2 fixed low high hk_low hk_high hk_modified_low hk_modified_high next_low next_high
            dose-response-fit | doses | ed50_e ed50_e_se ed10 ed90
            dose-response-fit | responses | lower_c upper_d residual_se lower_c_se upper_d_se
            kill-fit | doses | dose standard_error low high slope:-1
            effective-dose | ed50_e | dose
            quadratic-fit | yields | a b c rss:2
            quadratic-fit | rates | b:-1 c:-2
            replicates-needed | difference sd |
            trial-power | difference sd |
            plots-needed | difference sd | pair_sd
            many-treatments | ms_error:2 | honest_difference control_difference
            lost-plot | block_total treatment_total grand_total | value bias:2
            weed-loss | density_m2 i_pct:-1 |
            weed-loss-late | density_m2 i_pct:-1 |
            mixed-weed-loss | densities_m2 i_pcts:-1 |
            weed-threshold | cost_usd_ac price_usd_bu |
            weed-threshold | i_pct | density_m2:-1 exact_m2:-1 linear_m2:-1
            weed-density-for-loss | i_pct | density_m2:-1
            critical-period | t d c:-1 |
            residual-left | rate | left
            residual-left | days dt50_d |
            residual-control | rate ed50 | left
            residual-control | days dt50_d | days_above_80
            residual-soil-dose | rate ed50 | dose ed50_here
            residual-soil-dose | depth_cm reference_cm |
            residual-soil-dose | rain_mm rain_needed_mm |
            residual-days-lost | dt50_d | days_lost
            herbicide-dose | rate ed50 | ed50_here
            half-dose | rate | ed50
            seedbank-next | seeds_m2 density_a:-1 | seeds_m2 plants_m2
            economic-injury-level | cost value |
            economic-injury-level | injury | density:-1
            days-to-threshold | count threshold |
            days-to-threshold | doubling_days | days
            doubling-time | first second threshold |
            doubling-time | days_between | doubling_days days
            action-threshold | injury_level | threshold quarter_rule
            action-threshold | lead_days doubling_days |
            injury-level-from-sample | cost_usd_ac crop_usd_ac |
            injury-level-from-sample | pests | density
            rate-choice | price_usd_bu full_cost_usd_ac half_cost_usd_ac | full_net_usd_ac half_net_usd_ac difference_usd_ac
            rate-choice | loss_bu_ac price_usd_bu:-1 | break_even_loss_bu_ac
            days-to-safe-residue | residue safe |
            days-to-safe-residue | dt50_d | days
            dissipation | days dt50_d |
            half-life-at | dt50_d | half_life_d
            vapour-pressure-at | vapour_pressure | vapour_pressure
            vaporisation-heat | cool_pressure warm_pressure | vapour_pressure
            attenuation | depth_m recharge_m_d |
            attenuation | half_life_d recharge_m_d:-1 | travel_days
            risk-quotient | exposure toxicity |
            koc-to-kd | koc_ml_g | kd_ml_g
            soil-residue | rate_lb_ac depth_cm | kg_ha
            drift-into-water | rate_lb_ac | concentration_ug_l edge_ug_l
            standing-water | rate_lb_ac depth_in |
            aquatic-benchmark | endpoints_ug_l concentration_ug_l | benchmark_ug_l
            treated-seed-feed | mg_seed ld50_mg_kg | residue_ppm dose_mg_kg
            half-lethal-ratio | ld50_mg_kg reference_ld50_mg_kg |
            mixture-ate | ates | ate
            dry-dose | amount | ingredient
            spray-volume | gpm mph |
            nozzle-flow | gpa mph:-1 |
            nozzle-pressure | gpm rated_gpm | water_gpm
            loads | gpa tank_gal | total_gal last_load_gal
            loads | acres gpa:-1 | acres_per_load last_load_acres even_load_acres
            measured-amount | amount mark | measured
            measured-amount | rate most_rate | rate_given
            wind-at-height | speed | speed
            volume-check | used_gal gpa | actual_gpa
            volume-check | used_gal acres |
            sweep-overlap | sweep_in spacing_in | overlap_in
            tillage-floor | depths_in | mean_in sd_in deepest_in shallowest_in range_in
            soil-water-balance | rain_mm use_mm root_m start_mm | missing_mm drained_mm holds_mm days_mm
            refuge-acres | field_acres | refuge_acres trait_acres refuge_acres_if_share_of_trait
            """)
    void sameAnswer(String id, String inputs, @Nullable String outputs) {
        Figure figure = Figures.find(id).orElseThrow();
        Map<String, String> typed = figure.examples().get(0).inputs();
        Map<String, Integer> carries = powers(inputs);
        Map<String, Integer> follows = powers(outputs == null ? "" : outputs);
        assertThat(figure.inputs().stream().map(input -> input.key())).containsAll(carries.keySet());
        Answer before = figure.answer(typed);
        for (double unit : UNITS) {
            Map<String, String> other = new HashMap<>(typed);
            carries.forEach((key, power) ->
                    other.computeIfPresent(key, (k, text) -> times(text, Math.pow(unit, power))));
            Answer after = figure.answer(other);
            assertThat(after.outputs().keySet()).isEqualTo(before.outputs().keySet());
            for (String key : before.outputs().keySet()) {
                List<Double> was = numbers(before.outputs().get(key));
                List<Double> is = numbers(after.outputs().get(key));
                double factor = Math.pow(unit, follows.getOrDefault(key, 0));
                for (int i = 0; i < was.size(); i++) {
                    double expected = factor * was.get(i);
                    double slack = SAME * Math.max(Math.abs(expected), 1e-6);
                    assertThat(is.get(i)).as("%s of %s, unit %s", key, id, unit).isCloseTo(expected, within(slack));
                }
            }
        }
    }

    private static Map<String, Integer> powers(String text) {
        Map<String, Integer> powers = new HashMap<>();
        for (String word : text.strip().split("\\s+", -1)) {
            if (!word.isEmpty()) {
                int colon = word.indexOf(':');
                powers.put(
                        colon < 0 ? word : word.substring(0, colon),
                        colon < 0 ? 1 : Integer.parseInt(word.substring(colon + 1)));
            }
        }
        return powers;
    }

    /** A number, a list or a table as typed, each cell times a factor. */
    private static String times(String text, double factor) {
        StringJoiner rows = new StringJoiner(";");
        for (String row : text.split(";", -1)) {
            StringJoiner cells = new StringJoiner(",");
            for (String cell : row.split(",", -1)) {
                cells.add(Double.toString(factor * Double.parseDouble(cell.strip())));
            }
            rows.add(cells.toString());
        }
        return rows.toString();
    }

    private static List<Double> numbers(@Nullable Object value) {
        List<Double> numbers = new ArrayList<>();
        if (value instanceof Double number) {
            numbers.add(number);
        } else if (value instanceof List<?> list) {
            for (Object cell : list) {
                if (cell instanceof Double number) {
                    numbers.add(number);
                }
            }
        }
        return numbers;
    }
}
