package plumbrow.science.safety;

import static plumbrow.science.figure.Input.text;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.MEMORY;
import static plumbrow.science.figure.Status.VERIFIED;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Whether a CAS number can be right.
 *
 *   check digit = (1 × last digit before it + 2 × the one before that + …) mod 10
 *
 * Shape: two to seven digits, two digits, the check digit; older lists leave the hyphens out. A valid number may still be
 * that of another substance. EPA registration numbers can have the same shape: the words beside a number decide.
 *
 * Source: rule of the Chemical Abstracts registry, as in R package httk.
 */
public final class CasCheck {
    private static final Pattern SHAPE = Pattern.compile("(\\d{2,7})(-?)(\\d{2})\\2(\\d)");

    public static final Figure FIGURE = Figure.declare("cas-check", Subject.SAFETY)
            .question("Can this CAS number be right?")
            .input(text("cas", "CAS number, with or without hyphens", "1912-24-9"))
            .output("valid", "Whether the check digit fits", "")
            .output("check_digit", "The check digit that would fit", "")
            .output("weighted_sum", "Weighted sum of the other digits", "")
            .output("cas_number", "The number with its hyphens", "")
            .formula("check digit = Σ position from the right × digit, mod 10")
            .source("[cas-registry], as in [httk]", VERIFIED)
            .validity("Two to seven digits, two digits and the check digit; anything else is refused.")
            .caution("A number that fits may still be that of another substance: read the name beside it.")
            .example(
                    "cas=1912-24-9", "valid=yes check_digit=9 weighted_sum=69 cas_number=1912-24-9", "atrazine", MEMORY)
            .example("cas=94-75-7", "valid=yes weighted_sum=67", "2,4-D acid", MEMORY)
            .example("cas=1928-43-4", "valid=yes weighted_sum=94", "2,4-D 2-ethylhexyl ester", MEMORY)
            .example("cas=1071-83-6", "valid=yes weighted_sum=56", "glyphosate acid", MEMORY)
            .example("cas=70901-12-1", "valid=yes weighted_sum=101", "glyphosate potassium", MEMORY)
            .example("cas=1918-00-9", "valid=yes weighted_sum=79", "dicamba acid", MEMORY)
            .example("cas=1910-42-5", "valid=yes weighted_sum=65", "paraquat dichloride", MEMORY)
            .example("cas=2921-88-2", "valid=yes weighted_sum=92", "chlorpyrifos", MEMORY)
            .example("cas=7732-18-5", "valid=yes weighted_sum=105", "water, [cas-codes]", VERIFIED)
            .example("cas=1912249", "valid=yes cas_number=1912-24-9", "without hyphens, as in older lists", MEMORY)
            .example(
                    "cas=1912-42-9",
                    "valid=no check_digit=1 weighted_sum=71",
                    "atrazine mistyped, the sum by hand",
                    COMPUTED)
            .model(CasCheck::solve);

    private CasCheck() {}

    /** The check digit of the digits before it. */
    public static int checkDigit(String digits) {
        return weightedSum(digits) % 10;
    }

    /** Whether a number has the shape of a CAS number, hyphens included, and its check digit fits. */
    public static boolean fits(String cas) {
        Matcher shape = SHAPE.matcher(cas);
        return shape.matches()
                && shape.group(2).equals("-")
                && shape.group(4).equals(Integer.toString(checkDigit(shape.group(1) + shape.group(3))));
    }

    private static int weightedSum(String digits) {
        int sum = 0;
        for (int i = 0; i < digits.length(); i++) {
            sum += (digits.length() - i) * Character.digit(digits.charAt(i), 10);
        }
        return sum;
    }

    private static Outputs solve(Given given, Working working) {
        Matcher shape = SHAPE.matcher(given.word("cas").replace('‐', '-').replace('–', '-'));
        if (!shape.matches()) {
            throw given.refuse(
                    "cas", "two to seven digits, a hyphen, two digits, a hyphen and one digit, such as 1912-24-9");
        }
        String digits = shape.group(1) + shape.group(3);
        StringBuilder terms = new StringBuilder();
        for (int i = 0; i < digits.length(); i++) {
            terms.append(i == 0 ? "" : " + ")
                    .append(digits.length() - i)
                    .append(" × ")
                    .append(digits.charAt(i));
        }
        working.step("weighted sum", terms.toString(), weightedSum(digits), "");
        int check = checkDigit(digits);
        working.line("check digit", check, "", "last digit of {}", weightedSum(digits));
        return new Outputs()
                .put("valid", shape.group(4).equals(Integer.toString(check)) ? "yes" : "no")
                .put("check_digit", check)
                .put("weighted_sum", weightedSum(digits))
                .put("cas_number", shape.group(1) + "-" + shape.group(3) + "-" + shape.group(4));
    }
}
