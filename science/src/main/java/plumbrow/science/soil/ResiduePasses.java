package plumbrow.science.soil;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Input.text;
import static plumbrow.science.figure.Input.word;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.MEMORY;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Residue cover after named passes, with the range that each is known to keep.
 *
 *   cover = start·Π kept, at the low end, the middle and the high end of each pass
 *
 * Source: USDA Soil Conservation Service and Equipment Manufacturers Institute 1992 (ranges from memory).
 */
public final class ResiduePasses {
    /** A pass and the share of the cover it keeps: corn-type residue low and high, soybean-type low and high. */
    private enum Pass {
        AFTER_HARVEST(.80, .95, .60, .80),
        OVERWINTER(.80, .95, .70, .80),
        CHISEL_STRAIGHT(.60, .80, .40, .60),
        CHISEL_TWISTED(.50, .70, .30, .40),
        DISK(.40, .70, .25, .40),
        CULTIVATOR_SWEEPS(.80, .90, .60, .75),
        CULTIVATOR_SHOVELS(.70, .80, .50, .60),
        ANHYDROUS(.75, .85, .45, .70),
        PLANTER(.85, .95, .75, .85);

        private final double cornLow;
        private final double cornHigh;
        private final double soybeanLow;
        private final double soybeanHigh;

        Pass(double cornLow, double cornHigh, double soybeanLow, double soybeanHigh) {
            this.cornLow = cornLow;
            this.cornHigh = cornHigh;
            this.soybeanLow = soybeanLow;
            this.soybeanHigh = soybeanHigh;
        }

        private double[] kept(boolean lasting) {
            return lasting ? new double[] {cornLow, cornHigh} : new double[] {soybeanLow, soybeanHigh};
        }

        private String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    private static final String NAMES =
            Arrays.stream(Pass.values()).map(Pass::word).collect(Collectors.joining(", "));

    public static final Figure FIGURE = Figure.declare("residue-by-pass", Subject.SOIL)
            .question("How much residue is left on top after these named passes?")
            .input(number("start_pct", "Cover to begin with", "%", Range.PERCENT, "95"))
            .input(text("passes", "Passes in their order, commas between: " + NAMES, "overwinter,disk,planter"))
            .input(word("residue", "Residue: corn lasts, soybean is fragile", List.of("corn", "soybean"), "corn"))
            .output("low_pct", "If each pass keeps its least", "%")
            .output("cover_pct", "Middle of the ranges", "%")
            .output("high_pct", "If each pass keeps its most", "%")
            .output("conservation", "30 % or more at the low end", "")
            .formula(
                    "cover = start × product of what each pass keeps, by the low end, the middle and the high end of its range")
            .source("[usda-emi-1992], ranges", MEMORY)
            .validity("Passes in the order they are made. A planter may uncover residue, which no range shows.")
            .caution("Measured marks on a line always beat this: see residue-count.")
            .example(
                    "start_pct=95 passes=overwinter,disk,planter residue=corn",
                    "low_pct=25.84 cover_pct=41.15 high_pct=60.02 conservation=no",
                    "products by hand",
                    COMPUTED)
            .example(
                    "start_pct=80 passes=planter residue=soybean",
                    "low_pct=60 cover_pct=64 high_pct=68 conservation=yes",
                    "0.75 to 0.85",
                    MEMORY)
            .model(ResiduePasses::solve);

    private ResiduePasses() {}

    private static Outputs solve(Given given, Working working) {
        double start = given.number("start_pct");
        List<double[]> kept = new ArrayList<>();
        for (String name : given.word("passes").split(",", -1)) {
            kept.add(range(given, name.strip()));
        }
        double low = product(working, "least kept", start, kept, 1, 0);
        double middle = product(working, "middle", start, kept, .5, .5);
        double high = product(working, "most kept", start, kept, 0, 1);
        return new Outputs()
                .put("low_pct", low)
                .put("cover_pct", middle)
                .put("high_pct", high)
                .put("conservation", low >= 30 ? "yes" : "no");
    }

    private static double product(
            Working working, String label, double start, List<double[]> kept, double byLow, double byHigh) {
        double[] numbers = new double[kept.size() + 1];
        numbers[0] = start;
        double cover = start;
        for (int i = 0; i < kept.size(); i++) {
            numbers[i + 1] = byLow * kept.get(i)[0] + byHigh * kept.get(i)[1];
            cover *= numbers[i + 1];
        }
        return working.line(label, cover, "%", "{}" + " × {}".repeat(kept.size()), numbers);
    }

    private static double[] range(Given given, String name) {
        for (Pass pass : Pass.values()) {
            if (pass.word().equals(name)) {
                return pass.kept(given.word("residue").equals("corn"));
            }
        }
        throw given.refuse("passes", "names with commas between, of: " + NAMES);
    }
}
