package plumbrow.science;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Input;
import plumbrow.science.figure.Output;

@DisplayName("The names by which scripts and outside checks call a figure don't change")
class ContractTest {

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "break-even-gain | extra_cost_usd_ac price_usd_bu | gain_bu_ac",
                "break-even-price | extra_cost_usd_ac gain_bu_ac | price_usd_bu",
                "break-even-chance | cost_usd_ac loss_bu_ac price_usd_bu control_share? | chance",
                "partial-budget | added_return reduced_cost reduced_return added_cost | net",
                "seed-cost | price_usd_unit seeds_per_unit seeds_ac | cost_usd_ac acres_per_unit",
                "saved-seed-cost | bin_price_usd_bu cleaning_usd_bu treatment_usd_bu cleanout_pct seeds_lb lb_bu germination_pct live_seeds_ac tests_usd? acres? | seeds_ac bushels_ac cost_usd_ac",
                "refuge-loss | refuge_pct unprotected_loss_bu_ac price_usd_bu | loss_bu_ac loss_usd_ac",
                "price-quantile | futures_usd volatility years probability | price_usd mean_usd",
                "price-chance-above | futures_usd volatility years strike_usd | chance",
                "pert | low likely high probability? | mean sd quantile?",
                "triangular | low likely high probability? | mean sd quantile?",
                "perfect-information | chances payoffs | best_expected with_information value",
                "sample-information | chances payoffs likelihoods | best_expected with_information value",
                "tail-shortfall | values share | quantile shortfall",
                "dominance | a b | first second",
                "dose-response | dose slope_b lower_c upper_d ed50_e | response reduction_pct",
                "best-rate-quadratic | a b c price input_price | rate yield margin_over_input",
                "paired-strips | a b confidence? break_even? | difference standard_error t df p low high chance_above_break_even",
                "block-anova | yields confidence? | ss_block ss_treatment ss_error ms_error f p cv_pct lsd standard_error_difference",
                "random-effects | effects variances confidence? | pooled standard_error tau2 q i2_pct low high hk_low hk_high",
                "dose-response-fit | doses responses | slope_b lower_c upper_d ed50_e residual_se",
                "replicates-needed | difference sd alpha? power? | replicates",
                "weed-loss | density_m2 i_pct a_pct | loss_pct",
                "weed-loss-late | density_m2 i_pct a_pct c_per_day days_after_crop | loss_pct",
                "mixed-weed-loss | densities_m2 i_pcts a_pct | loss_pct",
                "weed-threshold | cost_usd_ac price_usd_bu yield_bu_ac i_pct a_pct control_share | density_m2",
                "passes-control | controls_pct | control_pct survivors_pct",
                "critical-period | model t c? d? f? a? b? k? | yield_pct",
                "weed-emergence | gdd form scale? shape? e50? b? k? | emerged_pct",
                "residual-left | rate dt50_d days lost_share? | left left_pct",
                "residual-control | rate dt50_d days ed50 slope lost_share? | control_pct days_above_80",
                "seedbank-next | seeds_m2 germination seedling_survival fecundity dormant_mortality density_a? | seeds_m2 plants_m2",
                "resistance-years | initial_share control_pct years? dormant_share? germination? | first_year_above_20pct shares",
                "economic-injury-level | cost value injury damage control_share | density",
                "rootworm-loss | node_injury loss_per_node_pct | loss_pct",
                "borer-loss | larvae_per_plant loss_per_larva_pct survival_share? | loss_pct",
                "days-to-threshold | count threshold doubling_days | days",
                "degree-days | method tmin_f tmax_f lower_f upper_f? | degree_days",
                "refuge-acres | field_acres refuge_pct | refuge_acres trait_acres",
                "insect-resistance | refuge_share initial_frequency dominance_h survival_rr? survival_ss? generations? | generations_to_half frequencies",
                "epa-toxicity | oral_ld50_mg_kg? dermal_ld50_mg_kg? inhalation_lc50_mg_l? | oral dermal inhalation category signal_word",
                "ghs-acute | route value | category hazard_code",
                "mixture-ate | shares_pct ates unknown_pct? | ate",
                "inhalation-4h | lc50_1h_mg_l form | lc50_4h_mg_l",
                "half-lethal-ratio | ld50_mg_kg reference_ld50_mg_kg | ratio",
                "acid-equivalent | ai_amount salt_mw acid_mw acids_per_salt? | ae_amount factor",
                "ingredient-per-gallon | weight_pct density_lb_gal | lb_gal",
                "spill | volume_gal ai_lb_gal rq_lb container_gal? | ai_lb share_of_rq reaches_rq containers_to_rq",
                "vapour-pressure | value unit | mpa mmhg",
                "cas-check | cas | valid"
            })
    void namesStay(String id, String inputs, String outputs) {
        Figure figure = Figures.find(id).orElseThrow(() -> new AssertionError("no figure " + id));
        Set<String> required =
                figure.inputs().stream().filter(Input::required).map(Input::key).collect(Collectors.toSet());
        assertThat(required).containsExactlyInAnyOrderElementsOf(keys(inputs, false));
        assertThat(figure.inputs().stream().map(Input::key).toList()).containsAll(keys(inputs, true));
        assertThat(figure.outputs().stream()
                        .filter(Output::always)
                        .map(Output::key)
                        .toList())
                .containsAll(keys(outputs, false));
        assertThat(figure.outputs().stream().map(Output::key).toList()).containsAll(keys(outputs, true));
    }

    private static List<String> keys(String line, boolean optional) {
        return Arrays.stream(line.strip().split(" ", -1))
                .filter(key -> key.endsWith("?") == optional)
                .map(key -> key.replace("?", ""))
                .toList();
    }
}
