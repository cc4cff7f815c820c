package plumbrow.science.weeds;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Input.word;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.PRACTICE;
import static plumbrow.science.figure.Status.VERIFIED;

import java.util.List;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * What share of a named weed is up, from soil degree days.
 *
 *   Weibull by the median E50 of the species: λ = E50/(ln 2)^(1/κ), E = 100·(1 − exp(−(x/λ)^κ)); x at p: λ·(−ln(1 − p))^(1/κ)
 *   waterhemp after its first seedling: means of 128 seedbanks, in proportion between the printed points
 *
 *   x  soil degree days, base 4.4 °C (waterhemp 10 °C) [°C·d];  κ  shape, 2 by default: not in the source
 *
 * Source: Forcella et al. 1997 (medians, five North Central states); Schutte & Davis 2014, Weed Technol. 28:408, Table 1.
 */
public final class EmergenceSpecies {
    private static final List<String> SPECIES = List.of(
            "pennsylvania-smartweed",
            "kochia",
            "wild-buckwheat",
            "russian-thistle",
            "common-lambsquarters",
            "velvetleaf",
            "giant-foxtail",
            "tansymustard",
            "green-foxtail",
            "prickly-sida",
            "wild-proso-millet",
            "pigweeds",
            "tall-morningglory");
    private static final double[] MEDIAN = {80, 155, 172, 195, 200, 250, 265, 270, 340, 510, 535, 639, 725};
    private static final double[] WATERHEMP_GDD = {0, 100, 300, 600, 900, 1200};
    private static final double[] WATERHEMP_PCT = {0, 10.9, 18.5, 73.7, 96.6, 98.8};

    public static final Figure NAMED = Figure.declare("weed-emergence-species", Subject.WEEDS)
            .question("What share of this weed is up?")
            .input(word("species", "Weed", SPECIES, "common-lambsquarters"))
            .input(number(
                    "gdd", "Soil degree days from 1 January, base 4.4 °C", "DD °C", Range.closed(0, 10_000), "400"))
            .input(number("shape", "Shape of the curve, 1.5 to 3 plausible", "", Range.closed(.5, 10), "2")
                    .orElse("2"))
            .output("emerged_pct", "Up", "%")
            .output("e10", "Degree days at which a tenth is up", "DD °C")
            .output("e50", "Degree days at which half is up", "DD °C")
            .output("e90", "Degree days at which nine tenths are up", "DD °C")
            .formula("scale = E50 ÷ (ln 2)^(1 ÷ shape); up = 1 − exp(−(gdd ÷ scale)^shape)")
            .source("Medians: [forcella-1997]; the shape is not in it", PRACTICE)
            .validity(
                    "Five North Central states, 1993 to 1994. The medians are verified; the shape is common practice.")
            .caution("Dry soil holds emergence back. Late flushes come after rain: look again.")
            .example(
                    "species=common-lambsquarters gdd=400",
                    "emerged_pct=93.75 e10=78 e50=200 e90=365",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "species=tall-morningglory gdd=400",
                    "emerged_pct=19.0221 e10=283 e50=725 e90=1321",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "species=pennsylvania-smartweed gdd=80",
                    "emerged_pct=50.0 e10=31 e50=80 e90=146",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "species=pigweeds gdd=639", "emerged_pct=50.0 e10=249 e90=1165", "independent arithmetic", COMPUTED)
            .model(EmergenceSpecies::solveNamed);

    public static final Figure WATERHEMP = Figure.declare("waterhemp-emergence", Subject.WEEDS)
            .question("What share of the waterhemp is up, from its first seedling on?")
            .input(number(
                    "gdd",
                    "Soil degree days since the first seedling, base 10 °C",
                    "DD °C",
                    Range.closed(0, 1200),
                    "450"))
            .output("emerged_pct", "Up", "%")
            .formula("in proportion between 10.9 % at 100, 18.5 at 300, 73.7 at 600, 96.6 at 900 and 98.8 at 1200")
            .source("[schutte-davis-2014]", VERIFIED)
            .validity(
                    "Illinois. From the first seedling (363 ± 217 degree days from 1 March) to 1200 degree days after it.")
            .caution("Seedbanks differ widely: at 300 degree days half of them had less than 9.5 % up.")
            .example("gdd=600", "emerged_pct=73.7", "Table 1", VERIFIED)
            .example("gdd=100", "emerged_pct=10.9", "Table 1", VERIFIED)
            .example("gdd=450", "emerged_pct=46.1", "halfway of 18.5 and 73.7", COMPUTED)
            .model(EmergenceSpecies::solveWaterhemp);

    private EmergenceSpecies() {}

    private static Outputs solveNamed(Given given, Working working) {
        double median = MEDIAN[SPECIES.indexOf(given.word("species"))];
        double shape = given.number("shape");
        double gdd = given.number("gdd");
        double scale = working.line(
                "scale", median / Math.pow(Math.log(2), 1 / shape), "DD °C", "{} ÷ (ln(2))^(1 ÷ {})", median, shape);
        double up = working.line(
                "up",
                100 * (1 - Math.exp(-Math.pow(gdd / scale, shape))),
                "%",
                "100 × (1 − exp(−(({} ÷ {})^{})))",
                gdd,
                scale,
                shape);
        return new Outputs()
                .put("emerged_pct", up)
                .put("e10", at(working, "a tenth is up", .1, scale, shape))
                .put("e50", median)
                .put("e90", at(working, "nine tenths are up", .9, scale, shape));
    }

    private static double at(Working working, String label, double share, double scale, double shape) {
        return working.line(
                label,
                scale * Math.pow(-Math.log(1 - share), 1 / shape),
                "DD °C",
                "{} × (−ln({}))^(1 ÷ {})",
                scale,
                1 - share,
                shape);
    }

    private static Outputs solveWaterhemp(Given given, Working working) {
        double gdd = given.number("gdd");
        int from = 0;
        while (from < WATERHEMP_GDD.length - 2 && gdd > WATERHEMP_GDD[from + 1]) {
            from++;
        }
        double rise = WATERHEMP_PCT[from + 1] - WATERHEMP_PCT[from];
        double width = WATERHEMP_GDD[from + 1] - WATERHEMP_GDD[from];
        return new Outputs()
                .put(
                        "emerged_pct",
                        working.line(
                                "up",
                                WATERHEMP_PCT[from] + rise * (gdd - WATERHEMP_GDD[from]) / width,
                                "%",
                                "{} + {} × ({} − {}) ÷ {}",
                                WATERHEMP_PCT[from],
                                rise,
                                gdd,
                                WATERHEMP_GDD[from],
                                width));
    }
}
