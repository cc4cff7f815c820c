package plumbrow.science.soil;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Input.word;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.PRACTICE;

import java.util.List;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Numbers;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Acres that a setback takes from a field of plain shape.
 *
 *   side: length·width;  all round a rectangle: (a·b − (a − 2w)(b − 2w));  round a well inside: π·w², each over 43,560
 *
 * For a mapped field the desk cuts the buffer out of the map; this is the arithmetic to check it by.
 *
 * Source: geometry.
 */
public final class SetbackAcres {
    private static final double FT2_PER_ACRE = 43_560;

    public static final Figure FIGURE = Figure.declare("setback-acres", Subject.SOIL)
            .question("How many acres does a setback take?")
            .input(word(
                    "shape",
                    "Along one side, all round a rectangle, or round a well inside the field",
                    List.of("side", "round", "well"),
                    "well"))
            .input(number("setback_ft", "Setback", "ft", Range.POSITIVE, "100"))
            .input(number("length_ft", "Length of the side, or of the field", "ft", Range.POSITIVE, "1320")
                    .optional())
            .input(number("width_ft", "Width of the field", "ft", Range.POSITIVE, "1320")
                    .optional())
            .output("acres", "Taken by the setback", "ac")
            .formula(
                    "side: length × setback; round: a × b − (a − 2 × setback) × (b − 2 × setback); well: π × setback²; ÷ 43,560")
            .source("Geometry", PRACTICE)
            .validity("Side needs the length; round needs length and width, each more than twice the setback.")
            .caution("The label's and the county's setbacks are the law; measure from where they say.")
            .example("shape=side setback_ft=100 length_ft=1320", "acres=3.03", "independent arithmetic", COMPUTED)
            .example("shape=side setback_ft=66 length_ft=2640", "acres=4.00", "independent arithmetic", COMPUTED)
            .example(
                    "shape=round setback_ft=66 length_ft=1320 width_ft=1320",
                    "acres=7.60",
                    "independent arithmetic",
                    COMPUTED)
            .example("shape=well setback_ft=100", "acres=0.721", "independent arithmetic", COMPUTED)
            .model(SetbackAcres::solve);

    private SetbackAcres() {}

    private static Outputs solve(Given given, Working working) {
        double setback = given.number("setback_ft");
        double acres = switch (given.word("shape")) {
            case "side" -> {
                double length = needed(given, "length_ft", 0);
                yield show(working, length * setback, "{} ft × {} ft ÷ 43,560", length, setback);
            }
            case "round" -> {
                double length = needed(given, "length_ft", 2 * setback);
                double width = needed(given, "width_ft", 2 * setback);
                double inside = (length - 2 * setback) * (width - 2 * setback);
                yield show(
                        working,
                        length * width - inside,
                        "({} × {} − ({} − 2 × {}) × ({} − 2 × {})) ÷ 43,560",
                        length,
                        width,
                        length,
                        setback,
                        width,
                        setback);
            }
            default -> show(working, Math.PI * setback * setback, "π × {}² ÷ 43,560", setback);
        };
        return new Outputs().put("acres", acres);
    }

    private static double show(Working working, double squareFeet, String arithmetic, double... numbers) {
        return working.line("taken", squareFeet / FT2_PER_ACRE, "ac", arithmetic, numbers);
    }

    private static double needed(Given given, String key, double least) {
        String expected = "feet, more than " + Numbers.plain(least);
        double value = given.maybe(key).orElseThrow(() -> given.refuse(key, expected));
        if (value <= least) {
            throw given.refuse(key, expected);
        }
        return value;
    }
}
