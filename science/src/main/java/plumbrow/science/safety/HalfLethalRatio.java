package plumbrow.science.safety;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Input.word;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.PRACTICE;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Numbers;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * How two half-lethal doses compare, for a word across the table, and what that word does not say.
 *
 *   ratio = LD50 of the substance / LD50 of what it is compared with
 *
 * Above 1 it takes more of the substance to kill a rat by a single swallowed dose. Printed values of everyday substances
 * differ by a factor of two to five between tables.
 *
 * Source: arithmetic, common practice.
 */
public final class HalfLethalRatio {
    public static final Figure FIGURE = Figure.declare("half-lethal-ratio", Subject.SAFETY)
            .question("How does a half-lethal dose by mouth compare with that of something known?")
            .alsoAsked("How poisonous is it against caffeine, aspirin or salt?")
            .input(number("ld50_mg_kg", "Half-lethal dose by mouth, rat", "mg/kg", Range.POSITIVE, "3000"))
            .input(number(
                    "reference_ld50_mg_kg", "The same of what it is compared with", "mg/kg", Range.POSITIVE, "200"))
            .input(word("limit_test", "Whether the first dose is a limit (more than)", List.of("yes", "no"), "no")
                    .orElse("no"))
            .output("ratio", "Ratio of the doses", "")
            .output("in_words", "In words", "")
            .formula("ratio = LD50 ÷ LD50 of the reference")
            .source("Arithmetic", PRACTICE)
            .validity(
                    "Both by mouth, both for the rat. A missing value can't be compared. The words round to what such values bear.")
            .caution(
                    "Acute swallowing only: a ratio of half-lethal doses is not a safety rating. It says nothing of skin, eye or"
                            + " lung, of cancer, birth, nerves or long use, of wildlife, or of how much a person meets.")
            .caution("Rat values are not human values, and the product is not its active ingredient: follow the label.")
            .example(
                    "ld50_mg_kg=3000 reference_ld50_mg_kg=200",
                    "ratio=15.0 in_words=about 15 times the dose",
                    "caffeine at 200 mg/kg",
                    PRACTICE)
            .example(
                    "ld50_mg_kg=3000 reference_ld50_mg_kg=192",
                    "ratio=15.6 in_words=about 16 times the dose",
                    "caffeine at 192 mg/kg (NFU quoting a Cornell text), L2",
                    COMPUTED)
            .example(
                    "ld50_mg_kg=5000 reference_ld50_mg_kg=3000 limit_test=yes",
                    "ratio=1.7 in_words=at least 1.7 times the dose",
                    "table salt",
                    COMPUTED)
            .example(
                    "ld50_mg_kg=50 reference_ld50_mg_kg=192",
                    "ratio=.26 in_words=about 4 times more poisonous by mouth",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "ld50_mg_kg=200 reference_ld50_mg_kg=300",
                    "ratio=.667 in_words=about 1.5 times more poisonous by mouth",
                    "300 ÷ 200 by hand",
                    COMPUTED)
            .model(HalfLethalRatio::solve);

    private static final double ONE_DIGIT_FROM = 3;

    private HalfLethalRatio() {}

    private static Outputs solve(Given given, Working working) {
        double dose = given.number("ld50_mg_kg");
        double reference = given.number("reference_ld50_mg_kg");
        double ratio = working.line("ratio", dose / reference, "", "{} mg/kg ÷ {} mg/kg", dose, reference);
        boolean limit = given.word("limit_test").equals("yes");
        String words = ratio >= 1
                ? (limit ? "at least " : "about ") + rounded(ratio, 2) + " times the dose"
                : (limit ? "at most " : "about ") + rounded(reference / dose, digits(reference / dose))
                        + " times more poisonous by mouth";
        return new Outputs().put("ratio", ratio).put("in_words", words);
    }

    /** One digit from 3 times on, as the reference says it; below, one digit could be off by a third: 1.5 is not 2. */
    private static int digits(double times) {
        return times < ONE_DIGIT_FROM ? 2 : 1;
    }

    private static String rounded(double value, int digits) {
        if (!Double.isFinite(value)) {
            return "very many";
        }
        return Numbers.plain(new BigDecimal(value)
                .round(new MathContext(digits, RoundingMode.HALF_EVEN))
                .doubleValue());
    }
}
