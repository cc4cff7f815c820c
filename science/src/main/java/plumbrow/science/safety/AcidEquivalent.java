package plumbrow.science.safety;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.PRACTICE;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Input;
import plumbrow.science.figure.Numbers;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Salts and esters in terms of their acid, and back.
 *
 *   factor = n·MW acid / MW salt;  acid equivalent = factor·amount;  salt = acid / factor
 *
 *   MW  molecular weight [g/mol];  n  acids in one molecule of the salt
 *
 * With the full mass of the acid, as labels do; some extension sheets take the acid less one hydrogen, 0.3 to 0.7 % lower.
 * The two are never mixed, and the strength printed on the label goes first.
 *
 * Source: arithmetic; molecular weights from IUPAC masses (from memory).
 */
public final class AcidEquivalent {
    private static final Input SALT =
            number("salt_mw", "Molecular weight of the salt or ester", "g/mol", Range.POSITIVE, "228.19");
    private static final Input ACID =
            number("acid_mw", "Molecular weight of the acid", "g/mol", Range.POSITIVE, "169.07");
    private static final Input COUNT = number(
                    "acids_per_salt", "Acids in one molecule of the salt", "", Range.closed(1, 6), "1")
            .orElse("1");
    private static final String LABEL_FIRST = "Where the label prints acid equivalent, that figure goes first.";

    public static final Figure FIGURE = Figure.declare("acid-equivalent", Subject.SAFETY)
            .question("How much acid is in this salt or ester?")
            .input(number("ai_amount", "Amount of salt or ester, any unit or percent", "", Range.NOT_NEGATIVE, "41.0"))
            .input(SALT)
            .input(ACID)
            .input(COUNT)
            .output("ae_amount", "Acid equivalent, in the same unit", "")
            .output("factor", "Acid per salt", "")
            .formula("factor = acids per salt × acid weight ÷ salt weight; acid = amount × factor")
            .source("Arithmetic of molecular weights, full mass of the acid as on labels", PRACTICE)
            .validity("The salt weighs more than the acid in it, else refused.")
            .caution(LABEL_FIRST)
            .example(
                    "ai_amount=41.0 salt_mw=228.19 acid_mw=169.07",
                    "ae_amount=30.4 factor=.7409",
                    "isopropylamine glyphosate",
                    COMPUTED)
            .example(
                    "ai_amount=48.7 salt_mw=207.16 acid_mw=169.07",
                    "ae_amount=39.7 factor=.8161",
                    "potassium glyphosate",
                    COMPUTED)
            .example(
                    "ai_amount=88.8 salt_mw=333.26 acid_mw=221.04",
                    "ae_amount=58.9 factor=.6633",
                    "2,4-D 2-ethylhexyl ester",
                    COMPUTED)
            .example(
                    "ai_amount=56.8 salt_mw=326.18 acid_mw=221.04",
                    "ae_amount=38.5 factor=.6777",
                    "dicamba diglycolamine",
                    COMPUTED)
            .model(AcidEquivalent::solve);

    public static final Figure SALT_AMOUNT = Figure.declare("salt-amount", Subject.SAFETY)
            .question("How much salt or ester is it when the label gives the acid?")
            .input(number("ae_amount", "Amount as acid or ion, any unit", "", Range.NOT_NEGATIVE, "3.8"))
            .input(SALT)
            .input(ACID)
            .input(COUNT)
            .output("ai_amount", "Amount of salt or ester, in the same unit", "")
            .formula("salt = acid × salt weight ÷ (acids per salt × acid weight)")
            .source("Arithmetic of molecular weights", PRACTICE)
            .validity(
                    "The salt weighs more than the acid in it, else refused. Lists of the law may name the salt where a label names the acid.")
            .caution("Where it is not sure which of the two a list names, take the larger mass.")
            .example(
                    "ae_amount=3.8 salt_mw=333.26 acid_mw=221.04",
                    "ai_amount=5.73",
                    "2,4-D 2-ethylhexyl ester per gallon",
                    COMPUTED)
            .example(
                    "ae_amount=3 salt_mw=257.16 acid_mw=186.26",
                    "ai_amount=4.142",
                    "paraquat cation per gallon as dichloride",
                    COMPUTED)
            .model(AcidEquivalent::solveSalt);

    private AcidEquivalent() {}

    /** Acid per salt by weight. */
    public static double factor(double saltMw, double acidMw, double acidsPerSalt) {
        return acidsPerSalt * acidMw / saltMw;
    }

    private static double showFactor(Given given, Working working) {
        double salt = given.number("salt_mw");
        double acid = given.number("acid_mw");
        double count = given.number("acids_per_salt");
        if (count != Math.rint(count)) {
            throw given.refuse("acids_per_salt", "a whole number, 1 to 6");
        }
        if (count * acid > salt) {
            throw given.refuse(
                    "salt_mw", "at least the weight of the acid in it (" + Numbers.plain(count * acid) + ")");
        }
        return working.line("acid per salt", factor(salt, acid, count), "", "{} × {} ÷ {}", count, acid, salt);
    }

    private static Outputs solve(Given given, Working working) {
        double factor = showFactor(given, working);
        double amount = given.number("ai_amount");
        double acid = working.line("acid equivalent", amount * factor, "", "{} × {}", amount, factor);
        return new Outputs().put("ae_amount", acid).put("factor", factor);
    }

    private static Outputs solveSalt(Given given, Working working) {
        double factor = showFactor(given, working);
        double acid = given.number("ae_amount");
        return new Outputs()
                .put("ai_amount", working.line("salt or ester", acid / factor, "", "{} ÷ {}", acid, factor));
    }
}
