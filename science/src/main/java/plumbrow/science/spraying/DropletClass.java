package plumbrow.science.spraying;

import static plumbrow.science.figure.Input.word;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.VERIFIED;

import java.util.List;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Whether a nozzle's droplets are coarse enough for a label.
 *
 *   XF < VF < F < M < C < VC < XC < UC, finest first; "coarse or coarser" is C and what follows
 *
 * A class is given by comparison with reference nozzles on one instrument, not by a table of microns: it is taken from the
 * maker's chart for nozzle and pressure, and never worked out.
 *
 * Source: ASABE S572.3, ISO 25358.
 */
public final class DropletClass {
    private static final List<String> CLASSES = List.of("XF", "VF", "F", "M", "C", "VC", "XC", "UC");

    public static final Figure FIGURE = Figure.declare("droplet-class", Subject.SPRAYING)
            .question("Are the droplets coarse enough for the label?")
            .input(word("found", "Class of the nozzle at this pressure, from the maker's chart", CLASSES, "VC"))
            .input(word("finest", "Finest class the label allows", CLASSES, "C"))
            .input(word("coarsest", "Coarsest class the label allows", CLASSES, "UC")
                    .orElse("UC"))
            .output("allowed", "Within the label's classes", "")
            .output("steps", "Classes coarser than the finest allowed", "")
            .formula("XF, VF, F, M, C, VC, XC, UC from fine to coarse")
            .source("[asabe-s572]", VERIFIED)
            .validity("The class belongs to nozzle and pressure: look it up again when the pressure changes.")
            .caution("One class coarser is about half the driftable fines, and thinner cover: the label decides.")
            .example("found=VC finest=C", "allowed=yes steps=1.0", "coarse or coarser", COMPUTED)
            .example("found=M finest=C", "allowed=no steps=-1.0", "coarse or coarser", COMPUTED)
            .model(DropletClass::solve);

    private DropletClass() {}

    private static Outputs solve(Given given, Working working) {
        int found = CLASSES.indexOf(given.word("found"));
        int finest = CLASSES.indexOf(given.word("finest"));
        int coarsest = CLASSES.indexOf(given.word("coarsest"));
        if (finest > coarsest) {
            throw given.refuse("finest", "a class not coarser than " + given.word("coarsest"));
        }
        double steps = working.line("classes coarser than the finest", found - finest, "", "{} − {}", found, finest);
        return new Outputs()
                .put("allowed", found >= finest && found <= coarsest ? "yes" : "no")
                .put("steps", steps);
    }
}
