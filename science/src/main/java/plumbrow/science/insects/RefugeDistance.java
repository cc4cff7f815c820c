package plumbrow.science.insects;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Input.word;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.VERIFIED;

import java.util.List;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Whether a refuge lies near enough to its trait corn, edge to edge.
 *
 *   corn borer  within ½ mile (2640 ft), ¼ mile (1320 ft) where the refuge may be sprayed (older text)
 *   rootworm    in the field or directly beside it: a road or ditch may lie between, another field not
 *
 * Source: corn.agronomy.wisc.edu W114; Kentucky ef128 and ef147; Iowa 2003 (road or ditch).
 */
public final class RefugeDistance {
    private static final double HALF_MILE_FT = 2640;
    private static final double QUARTER_MILE_FT = 1320;

    public static final Figure FIGURE = Figure.declare("refuge-distance", Subject.INSECTS)
            .question("Does the refuge lie near enough?")
            .input(number("distance_ft", "Nearest edge to nearest edge", "ft", Range.closed(0, 100_000), "2600"))
            .input(word("pest", "Pest the trait is for", List.of("borer", "rootworm", "both"), "borer"))
            .input(word("sprayed", "Whether the refuge may be sprayed against borers", List.of("yes", "no"), "no")
                    .orElse("no"))
            .input(word(
                            "between",
                            "What lies between",
                            List.of("nothing", "road-or-ditch", "another-field"),
                            "another-field")
                    .orElse("another-field"))
            .output("near_enough", "Near enough", "")
            .output("spare_ft", "Feet to spare to the farthest allowed; negative is too far", "ft")
            .formula("borer: at most 2,640 ft, 1,320 where sprayed; rootworm: nothing, or a road or ditch, between")
            .source("[wisconsin-w114]; [kentucky-ef128]; [kentucky-ef147]; [iowa-refuge-2003]", VERIFIED)
            .validity("Structured refuges of the Corn Belt. For rootworm the feet count only against a borer's limit.")
            .caution("The grower guide of the trait decides: read the bag tag.")
            .example("distance_ft=2600 pest=borer", "near_enough=yes spare_ft=40", "independent arithmetic", COMPUTED)
            .example("distance_ft=2700 pest=borer", "near_enough=no spare_ft=-60", "independent arithmetic", COMPUTED)
            .example(
                    "distance_ft=2000 pest=borer sprayed=yes",
                    "near_enough=no spare_ft=-680",
                    "a quarter mile",
                    COMPUTED)
            .example(
                    "distance_ft=40 pest=rootworm between=road-or-ditch",
                    "near_enough=yes",
                    "[iowa-refuge-2003]",
                    VERIFIED)
            .example(
                    "distance_ft=700 pest=both between=another-field", "near_enough=no", "[iowa-refuge-2003]", VERIFIED)
            .model(RefugeDistance::solve);

    private RefugeDistance() {}

    private static Outputs solve(Given given, Working working) {
        double distance = given.number("distance_ft");
        double farthest = given.word("sprayed").equals("yes") ? QUARTER_MILE_FT : HALF_MILE_FT;
        double spare = working.line("feet to spare", farthest - distance, "", "{} − {}", farthest, distance);
        boolean borer = given.word("pest").equals("rootworm") || spare >= 0;
        boolean rootworm =
                given.word("pest").equals("borer") || !given.word("between").equals("another-field");
        return new Outputs()
                .put("near_enough", borer && rootworm ? "yes" : "no")
                .put("spare_ft", spare);
    }
}
