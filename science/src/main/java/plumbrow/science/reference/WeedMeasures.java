package plumbrow.science.reference;

import java.util.Map;

/** What is kept of weeds. Bounds are our own: what can be at all, generously. */
final class WeedMeasures {
    private static final String PLANT = "plants/m2";
    private static final String DEGREE_DAYS = "degree-days C";
    static final Map<String, Measure> ALL = Measures.byKey(
            Measure.of("loss_per_plant", "yield lost per plant at low density", .01, 300, "% per plant/m2"),
            Measure.of("loss_ceiling", "most yield that can be lost", 0, 100, "%"),
            Measure.of("loss_seen", "yield lost in trials", 0, 100, "%"),
            Measure.of("late_decay", "fading of the loss with each day after the crop", 0, 1, "per d"),
            Measure.of("density_for_10pct_loss", "density that costs a tenth of the yield", 0, 1000, PLANT),
            Measure.of("threshold_density", "density from which it costs yield", 0, 5000, PLANT),
            Measure.of("emergence_median", "half emerged", 0, 3000, DEGREE_DAYS),
            Measure.of("emergence_scale", "scale of the emergence curve", 0, 5000, DEGREE_DAYS),
            Measure.of("emergence_shape", "shape of the emergence curve", .1, 20, "none"),
            Measure.of("emergence_seen", "emerged", 0, 100, "%"),
            Measure.of("first_emergence", "first emergence", 0, 2000, DEGREE_DAYS),
            Measure.of("first_soil_temperature", "soil temperature at first emergence", 0, 40, "C"),
            Measure.of("germination", "seeds of the bank that emerge", 0, 100, "% of seeds a year"),
            Measure.of("bank_viable", "seeds of the bank still alive", 0, 100, "% of original"),
            Measure.of("bank_death", "seeds of the bank that die", 0, 100, "% of seeds a year"),
            Measure.of("fecundity", "seeds that a plant sheds", 0, 5_000_000, "seeds/plant"),
            Measure.of("seedling_survival", "seedlings that live to set seed", 0, 100, "%"),
            Measure.of("control_seen", "control seen in trials", 0, 100, "%"),
            Measure.of("decay_over_slope", "half-life over slope of the control curve", 0, 200, "d"),
            Measure.of("delay_ceiling", "loss by a post pass that never comes", 0, 100, "%"),
            Measure.of("delay_middle", "delay that costs half of that", 0, 365, "d"),
            Measure.of("delay_shape", "shape of the delay curve", .1, 20, "none"),
            Measure.of("ed50_ratio", "dose for a taller weed over that for a shorter one", .1, 20, "none"));

    private WeedMeasures() {}
}
