package plumbrow.science.soil;

import static plumbrow.science.figure.Input.list;
import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.MEMORY;
import static plumbrow.science.figure.Status.VERIFIED;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Residue cover after a series of passes and a winter, and cover counted along a line.
 *
 *   cover = start·Π kept, at most 100 %;  counted = 100·marks over residue/marks
 *
 * A share may be above 1: a planter can uncover residue. Measured cover always beats the product: Iowa passes buried more
 * than 80 %, and one raised cover by nearly 60 %.
 *
 * Source: USDA-SCS/EMI 1992 ranges (value from memory); line: University of Missouri G1570.
 */
public final class ResidueCover {
    private static final double CONSERVATION_PCT = 30;

    public static final Figure FIGURE = Figure.declare("residue-cover", Subject.SOIL)
            .question("How much residue is left on top after these passes?")
            .input(number("start_pct", "Cover to begin with", "%", Range.PERCENT, "95"))
            .input(list(
                    "kept",
                    "Share that each pass, and the winter, keeps",
                    "",
                    Range.closed(0, 3),
                    "0.85,0.75,0.85,0.90"))
            .output("cover_pct", "Cover left", "%")
            .output("conservation", "30 % or more", "")
            .formula("cover = start × share kept × share kept × …, at most 100 %")
            .source("[usda-emi-1992]", MEMORY)
            .validity("Shares 0 to 3, above 1 where a pass uncovers residue.")
            .caution("An estimate: a line of 100 marks after planting beats it, and is what counts for a plan.")
            .example(
                    "start_pct=95 kept=.85,.75,.85,.90",
                    "cover_pct=46.3 conservation=yes",
                    "independent arithmetic",
                    COMPUTED)
            .model(ResidueCover::solve);

    public static final Figure COUNTED = Figure.declare("residue-count", Subject.SOIL)
            .question("How much residue cover does a line of marks show?")
            .input(number("marks", "Marks on the line", "", Range.closed(1, 10_000), "100"))
            .input(number("over_residue", "Marks over residue", "", Range.closed(0, 10_000), "44"))
            .output("cover_pct", "Cover", "%")
            .formula("cover = 100 × marks over residue ÷ marks")
            .source("[missouri-g1570]", VERIFIED)
            .validity("Line at 45° to the rows, one edge of each mark, away from end rows; three places or more.")
            .example("marks=100 over_residue=44", "cover_pct=44.0", "[missouri-g1570]", VERIFIED)
            .model(ResidueCover::solveCounted);

    private ResidueCover() {}

    /** Cover left [%] of a start [%] after passes that each keep a share. */
    public static double coverPct(double startPct, double... kept) {
        double cover = startPct;
        for (double share : kept) {
            cover = Math.min(100, cover * share);
        }
        return cover;
    }

    private static Outputs solve(Given given, Working working) {
        double cover = given.number("start_pct");
        double[] kept = given.list("kept");
        for (int i = 0; i < kept.length; i++) {
            boolean full = cover * kept[i] > 100;
            cover = working.line(
                    "cover after pass " + (i + 1),
                    coverPct(cover, kept[i]),
                    "%",
                    full ? "{} × {}, at most 100" : "{} × {}",
                    cover,
                    kept[i]);
        }
        return new Outputs().put("cover_pct", cover).put("conservation", cover >= CONSERVATION_PCT ? "yes" : "no");
    }

    private static Outputs solveCounted(Given given, Working working) {
        double marks = given.number("marks");
        double over = given.number("over_residue");
        if (over > marks) {
            throw given.refuse("over_residue", "no more than the marks on the line");
        }
        return new Outputs()
                .put("cover_pct", working.line("cover", 100 * over / marks, "%", "100 × {} ÷ {}", over, marks));
    }
}
