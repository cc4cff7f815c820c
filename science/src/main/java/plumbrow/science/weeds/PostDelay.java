package plumbrow.science.weeds;

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
 * Yield lost by waiting with the post-emergence pass.
 *
 *   L(T) = C/(1 + (e/T)^b);  T days after the crop emerged
 *
 * C, e and b are fitted to the published table: corn with many weeds within 2.0 points of it, few .5; soybean many .4, few
 * .2. It is the loss of the whole field's weeds; it is not added to the loss from survivors.
 *
 * Source: Soltani, Shropshire & Sikkema 2022 (Ontario 2017-19; bioone wet.2022.10); the smooth form is derived.
 */
public final class PostDelay {
    private static final List<String> FIELDS = List.of("corn-many", "corn-few", "soybean-many", "soybean-few");

    public static final Figure FIGURE = Figure.declare("post-delay-loss", Subject.WEEDS)
            .question("What does it cost to wait with the post pass?")
            .input(word("field", "Crop and weeds", FIELDS, "soybean-many"))
            .input(number(
                    "days", "Days after the crop emerged until the weeds are gone", "d", Range.closed(0, 60), "14"))
            .output("loss_pct", "Yield lost", "%")
            .output("per_day_pct", "Lost by one day more", "%")
            .formula("loss = C ÷ (1 + (e ÷ days)^b)")
            .source("[soltani-2022]", VERIFIED)
            .validity(
                    "0 to 60 days; C, e, b fitted to the published table: corn 60, 30.5, 2.38 and 30, 59.25, 2.20; soybean 60, 26.25, 2.56 and 60, 58.25, 3.56.")
            .caution(
                    "The loss of the whole field's weeds: don't add it to the loss from the weeds that survive the pass.")
            .example("field=soybean-many days=8", "loss_pct=2.73", "independent arithmetic", COMPUTED)
            .example("field=soybean-many days=10", "loss_pct=4.68", "independent arithmetic", COMPUTED)
            .example("field=soybean-many days=14", "loss_pct=10.00", "independent arithmetic", COMPUTED)
            .example("field=soybean-many days=23", "loss_pct=24.97", "independent arithmetic", COMPUTED)
            .model(PostDelay::solve);

    private PostDelay() {}

    /** L [%] after days of one of the four fields. */
    public static double lossPct(String field, double days) {
        return switch (field) {
            case "corn-many" -> loss(days, 60, 30.5, 2.38);
            case "corn-few" -> loss(days, 30, 59.25, 2.20);
            case "soybean-many" -> loss(days, 60, 26.25, 2.56);
            default -> loss(days, 60, 58.25, 3.56);
        };
    }

    private static double loss(double days, double highest, double half, double slope) {
        return days == 0 ? 0 : highest / (1 + Math.pow(half / days, slope));
    }

    private static Outputs solve(Given given, Working working) {
        String field = given.word("field");
        double days = given.number("days");
        double loss = working.line("yield lost", lossPct(field, days), "%", "curve of " + field + " at {} days", days);
        double next = working.line(
                "a day later", lossPct(field, days + 1), "%", "curve of " + field + " at {} days", days + 1);
        return new Outputs()
                .put("loss_pct", loss)
                .put("per_day_pct", working.line("lost by one day more", next - loss, "%", "{} − {}", next, loss));
    }
}
