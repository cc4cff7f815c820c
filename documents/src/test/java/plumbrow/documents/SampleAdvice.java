package plumbrow.documents;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.jspecify.annotations.NullMarked;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.assumptions.DoubtKind;
import plumbrow.advice.field.Field;
import plumbrow.advice.gates.Finding;
import plumbrow.advice.gates.Protects;
import plumbrow.advice.gates.Standing;
import plumbrow.advice.pests.ScoutingSample;
import plumbrow.advice.weighing.AboutEqual;
import plumbrow.advice.weighing.Advice;
import plumbrow.advice.weighing.AdviceRange;
import plumbrow.advice.weighing.Band;
import plumbrow.advice.weighing.BestBand;
import plumbrow.advice.weighing.Comparison;
import plumbrow.advice.weighing.CostKind;
import plumbrow.advice.weighing.CostLine;
import plumbrow.advice.weighing.EqualRule;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.advice.weighing.GainDoubt;
import plumbrow.advice.weighing.InformationValue;
import plumbrow.advice.weighing.Leads;
import plumbrow.advice.weighing.SampleWorth;
import plumbrow.advice.weighing.UncertainInput;
import plumbrow.advice.weighing.WeighedProgram;
import plumbrow.science.figure.Step;

/** Advice for {@link SampleSeason}, written by hand with plausible numbers: every standing, and a field without advice. */
@NullMarked
public final class SampleAdvice {
    private static final String BASELINE = "Bought seed, nothing in the furrow";

    private SampleAdvice() {}

    public static Advice advice() {
        return new Advice(
                2026, SampleSeason.AS_OF, "Tilda Marsh", 10_000, 20_260_401L, List.of(home(), north(), creek()));
    }

    /** The same with other fields. */
    public static Advice with(FieldAdvice... fields) {
        return new Advice(2026, SampleSeason.AS_OF, "Tilda Marsh", 10_000, 20_260_401L, List.of(fields));
    }

    /** A field of any name with any programs, of which none is advised. */
    public static FieldAdvice of(String name, List<WeighedProgram> programs) {
        return fieldAdvice(
                SampleSeason.field(name, "Orchard Hill", 80), "Wes Aldane", programs, null, "For " + name, "", "");
    }

    /** Home 80, the full rate about equal to the half. */
    public static FieldAdvice aboutEqual() {
        FieldAdvice home = home();
        String half = "Half rate in the furrow";
        String full = "Full rate in the furrow";
        return new FieldAdvice(
                home.field(),
                home.grower(),
                home.draws(),
                home.seed(),
                home.programs(),
                home.baseline(),
                half,
                new AboutEqual(List.of(half, full), 7, full, full, half, "They are about equal.", "Full is cheaper."),
                home.equal(),
                "They are about equal.",
                home.reason(),
                home.doubt(),
                home.gainDoubt(),
                home.comparisons(),
                home.ranges(),
                home.whatMatters(),
                home.samples(),
                home.inputs(),
                home.evpiUsdPerAcre(),
                home.cautions());
    }

    public static FieldAdvice home() {
        List<WeighedProgram> programs = List.of(
                program("Half rate in the furrow", Standing.CONDITIONAL, 428, 118, 0.71, 146.2),
                program("Full rate in the furrow", Standing.CLEAR, 421, 112, 0.58, 158.9),
                program("Trait corn, refuge tag not read", Standing.UNKNOWN, 418, 96, 0.55, 171.4),
                program(BASELINE, Standing.CLEAR, 414, 131, 0.5, 129.5),
                program("Seed saved from the bin, cleaned and treated", Standing.BARRED, 402, 124, 0.38, 84.1));
        return fieldAdvice(
                SampleSeason.field("Home 80", "Orchard Hill", 78.4),
                "Wes Aldane",
                programs,
                "Half rate in the furrow",
                "Put the half rate in the furrow on Home 80: it pays in 71 of 100 seasons, about $14 an acre.",
                "Two root digs in three years showed a node pruned, and half the rate stops most of it.",
                "Look up the refuge on the bag tag before trait corn can be compared.");
    }

    public static FieldAdvice north() {
        List<WeighedProgram> programs = List.of(
                program(BASELINE, Standing.CLEAR, 233, 70, 0.5, 129.5),
                program(
                        "Residual before planting, then a second pass on vines when they run, with the tank cleaned between",
                        Standing.CONDITIONAL,
                        201,
                        71,
                        0.22,
                        161.2));
        return fieldAdvice(
                SampleSeason.field("North quarter beyond the old creamery road", "Lower Fork", 151.2),
                "June Pell",
                programs,
                BASELINE,
                "Leave North quarter beyond the old creamery road as it is: the second pass pays in 22 of 100 seasons.",
                "Weeds are few, and what the pass saves does not cover it.",
                "A count of vines in June could change it.");
    }

    public static FieldAdvice creek() {
        List<WeighedProgram> programs = List.of(
                program("Full rate in the furrow", Standing.BARRED, -12.4, 88, 0.61, 158.9),
                program(BASELINE, Standing.UNKNOWN, -35.2, 90, 0.5, 129.5));
        return fieldAdvice(
                SampleSeason.field("Creek bottom", "Lower Fork", 33),
                "June Pell",
                programs,
                null,
                "Nothing can be advised for Creek bottom yet: one program is barred and one must be looked up.",
                "The setback to the creek leaves no strip wide enough.",
                "Look up: the state registration of the seed treatment.");
    }

    public static FieldAdvice fieldAdvice(
            Field field,
            String grower,
            List<WeighedProgram> programs,
            @Nullable String advised,
            String sentence,
            String reason,
            String doubt) {
        return new FieldAdvice(
                field,
                grower,
                10_000,
                20_260_401L,
                programs,
                BASELINE,
                advised,
                null,
                EqualRule.DEFAULT,
                sentence,
                reason,
                doubt,
                new GainDoubt(
                        programs.isEmpty() ? BASELINE : programs.get(0).name(),
                        BASELINE,
                        0.5,
                        0.4,
                        "pressure: corn rootworm",
                        0.4,
                        List.of(new GainDoubt.Case("in the third in which it is lowest", 1 / 3.0, 2, 0.55)),
                        "Of the doubt about this gain, about half is about this field and could be found out."),
                advised == null
                        ? List.of()
                        : List.of(new Comparison(
                                advised,
                                programs.get(programs.size() - 1).name(),
                                14.2,
                                new Band(-8.8, 11.9, 41.3),
                                0.71,
                                new Leads(0.68, 0.06, 0.26),
                                "none",
                                advised)),
                List.of(
                        new AdviceRange(
                                "price",
                                "price received at harvest",
                                "$/bu",
                                advised == null ? BASELINE : advised,
                                4.2,
                                2.61,
                                6.4,
                                3.82,
                                null,
                                List.of(
                                        new BestBand(
                                                programs.isEmpty()
                                                        ? BASELINE
                                                        : programs.get(programs.size() - 1)
                                                                .name(),
                                                2.61,
                                                3.82,
                                                0),
                                        new BestBand(advised == null ? BASELINE : advised, 3.82, 6.4, 0.04)),
                                "Below $3.82/bu corn another program earns more."),
                        new AdviceRange(
                                "yield",
                                "attainable yield",
                                "bu/ac",
                                advised == null ? BASELINE : advised,
                                192,
                                120,
                                244,
                                null,
                                null,
                                List.of(new BestBand(advised == null ? BASELINE : advised, 120, 244, 0)),
                                "Yield changes nothing anywhere from 120 to 244 bu/ac.")),
                List.of(
                        knowing("pressure: corn rootworm", "how hard rootworm presses, untreated", 4.1, 3.9),
                        knowing(
                                "control: Furrowguard 15 G on corn rootworm at 4 lb",
                                "how well the half rate holds",
                                1.2,
                                1.5),
                        knowing("price", "price received at harvest", 0.31, 0.24)),
                List.of(new SampleWorth(
                        "corn rootworm",
                        new ScoutingSample(10, 0.6, 90),
                        2.3,
                        180.32,
                        90.32,
                        "Digging 10 roots is worth about $180 on this field and costs $90.")),
                List.of(
                        new UncertainInput(
                                "price",
                                "price received at harvest",
                                "$/bu",
                                DoubtKind.YEAR,
                                new Distribution.Lognormal(4.2, 0.22, 0.6),
                                4.2,
                                new Band(3.3, 4.14, 5.2),
                                "elevator bid of March 13"),
                        new UncertainInput(
                                "pressure: corn rootworm",
                                "how hard rootworm presses, untreated",
                                "nodes",
                                DoubtKind.FIELD,
                                new Distribution.Pert(0.1, 0.6, 2.2),
                                0.78,
                                new Band(0.31, 0.74, 1.33),
                                "root digs of 2024 and 2025")),
                4.9,
                List.of("Common practice, no source: the share of injury that half a rate removes."));
    }

    public static WeighedProgram program(
            String name, Standing standing, double mean, double spread, double chance, double cost) {
        List<Double> points = points(mean, spread);
        return new WeighedProgram(
                name,
                name.equals(BASELINE),
                "",
                standing,
                findings(standing),
                cost,
                List.of(
                        new CostLine(
                                CostKind.SEED,
                                "Seed: Hollowbrook 108 RW",
                                "300 $/unit ÷ 80,000 seeds × 34,000 seeds/ac",
                                127.5),
                        new CostLine(CostKind.TRIP, "Planting", "one trip", cost - 127.5)),
                187.4,
                mean,
                spread / 100,
                new Band(points.get(5), points.get(25), points.get(45)),
                mean - 414,
                new Band(mean - 450, mean - 413, mean - 380),
                chance,
                0.2,
                mean - 1.75 * spread,
                points,
                List.of(
                        new Step(
                                "yield",
                                "192 bu/ac × (1 − 0.15 × ½) × √1 · 1, Σ ≤ 3 °C ± 2 ÷ ¼ ≥ µ → ∞",
                                187.4,
                                "bu/ac"),
                        new Step("grain", "187.4 bu/ac × 4.2 $/bu", 787.08, "$/ac"),
                        new Step("margin over these inputs", "787.08 − " + cost, mean, "$/ac")),
                "",
                List.of());
    }

    private static InformationValue knowing(String input, String label, double worth, double half) {
        return new InformationValue(
                input, label, worth, worth * 78.4, half, "Knowing " + label + " is worth at most $" + worth + "/ac.");
    }

    private static List<Finding> findings(Standing standing) {
        Finding clear = new Finding(
                "labelled-rate",
                Protects.LAW,
                Standing.CLEAR,
                "Furrowguard 15 G",
                "The rate is within the label.",
                4.0,
                8.0,
                "lb/ac",
                "label page 7, corn table",
                "");
        return switch (standing) {
            case CLEAR -> List.of(clear);
            case NOTHING_ASKED -> List.of();
            case CONDITIONAL ->
                List.of(
                        new Finding(
                                "setback",
                                Protects.WATER,
                                Standing.CONDITIONAL,
                                "Furrowguard 15 G",
                                "The creek is 40 ft from the last row; the label asks for 66 ft.",
                                40.0,
                                66.0,
                                "ft",
                                "label page 3, water",
                                "Leave the outer eight rows untreated."),
                        clear);
            case UNKNOWN ->
                List.of(
                        new Finding(
                                "refuge",
                                Protects.USEFULNESS,
                                Standing.UNKNOWN,
                                "Hollowbrook 108 RW",
                                "Nobody has read the refuge on the bag tag.",
                                null,
                                null,
                                "",
                                "bag tag",
                                "Look up: the refuge share on the bag tag or in the grower agreement."),
                        clear);
            case BARRED ->
                List.of(new Finding(
                        "seed-rights",
                        Protects.LAW,
                        Standing.BARRED,
                        "Bin run 2025",
                        "The purchase agreement forbids planting it again.",
                        null,
                        null,
                        "",
                        "grower agreement 2024, section 2",
                        "Plant bought seed instead."));
        };
    }

    private static List<Double> points(double mean, double spread) {
        NormalDistribution distribution = NormalDistribution.of(mean, spread);
        List<Double> points = new ArrayList<>();
        for (int percent = 0; percent <= 100; percent += 2) {
            points.add(distribution.inverseCumulativeProbability(Math.max(0.0005, Math.min(0.9995, percent / 100.0))));
        }
        return points;
    }
}
