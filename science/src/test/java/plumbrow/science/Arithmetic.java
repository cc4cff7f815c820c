package plumbrow.science;

import java.util.OptionalDouble;
import plumbrow.science.chance.StandardNormal;
import plumbrow.science.trials.FisherF;
import plumbrow.science.trials.StudentT;

/**
 * Redoes a line of working as a person with a pocket calculator would: numbers, + − × ÷, powers, roots, brackets and the
 * few functions that stand in the workings. Units are skipped.
 */
final class Arithmetic {
    private static final String SKIPPED_UNITS =
            "\\$/ac/yr|\\$/ac per node|\\$/ac|\\$/bu|\\$/bag|\\$/unit|\\$|bu/ac/yr|bu/ac|lb/ac|lb/bu|seeds/ac|seeds/lb|seeds/unit"
                    + "|seeds/bag|live seeds/ac|% per plant/m²|% per node|% per larva|plants/m²|larvae/plant|masses/plant|ac/bag|ac|yr|nodes"
                    + "|per day|per mass|larvae|masses|eggs|aphid days|cards|units|ft|in|°F| d\\b";

    private final String text;
    private final double percent;
    private int at;

    private Arithmetic(String text, double percent) {
        this.text = text;
        this.percent = percent;
    }

    /**
     * The result, or empty where the line holds words.
     *
     * @param percentIsHundredth whether % divides by 100 or is a unit like another
     */
    static OptionalDouble redo(String line, boolean percentIsHundredth) {
        String bare = line.replaceAll("(?<=[\\d)} ])(" + SKIPPED_UNITS + ")(?![a-z])", "")
                .replaceAll("(?<=\\d),(?=\\d{3})", "")
                .replace('−', '-')
                .replace('[', '(')
                .replace(']', ')')
                .replaceAll("\\s+", "");
        Arithmetic reader = new Arithmetic(bare, percentIsHundredth ? 100 : 1);
        try {
            double value = reader.sum();
            return reader.at == bare.length() ? OptionalDouble.of(value) : OptionalDouble.empty();
        } catch (NumberFormatException e) {
            return OptionalDouble.empty();
        }
    }

    private double sum() {
        double value = product();
        while (true) {
            if (take("+")) {
                value += product();
            } else if (take("-")) {
                value -= product();
            } else {
                return value;
            }
        }
    }

    private double product() {
        double value = power();
        while (true) {
            if (take("×")) {
                value *= power();
            } else if (take("÷") || take("/")) {
                value /= power();
            } else {
                return value;
            }
        }
    }

    private double power() {
        if (take("-")) {
            return -power();
        }
        double value = atom();
        while (true) {
            if (take("²")) {
                value *= value;
            } else if (take("^")) {
                value = Math.pow(value, atom());
            } else if (take("%")) {
                value /= percent;
            } else {
                return value;
            }
        }
    }

    private double atom() {
        if (take("(")) {
            double value = sum();
            if (!take(")")) {
                throw new NumberFormatException("no closing bracket");
            }
            return value;
        }
        if (take("√")) {
            return Math.sqrt(power());
        }
        if (take("exp")) {
            return Math.exp(atom());
        }
        if (take("ln")) {
            return Math.log(atom());
        }
        if (take("sin")) {
            return Math.sin(atom());
        }
        if (take("π")) {
            return Math.PI;
        }
        if (take("T⁻¹")) {
            double[] of = arguments(2);
            return StudentT.quantile(of[0], of[1]);
        }
        if (take("T")) {
            double[] of = arguments(2);
            return StudentT.below(of[0], of[1]);
        }
        if (take("F")) {
            double[] of = arguments(3);
            return 1 - FisherF.above(of[0], of[1], of[2]);
        }
        if (take("Φ⁻¹")) {
            return StandardNormal.quantile(atom());
        }
        if (take("φ")) {
            return StandardNormal.density(atom());
        }
        if (take("Φ")) {
            return StandardNormal.below(atom());
        }
        int from = at;
        while (at < text.length() && "0123456789.".indexOf(text.charAt(at)) >= 0) {
            at++;
        }
        return Double.parseDouble(text.substring(from, at));
    }

    /** Arguments in brackets, semicolons between. */
    private double[] arguments(int count) {
        double[] of = new double[count];
        for (int i = 0; i < count; i++) {
            if (!take(i == 0 ? "(" : ";")) {
                throw new NumberFormatException("no argument " + (i + 1));
            }
            of[i] = sum();
        }
        if (!take(")")) {
            throw new NumberFormatException("no closing bracket");
        }
        return of;
    }

    private boolean take(String sign) {
        if (text.startsWith(sign, at)) {
            at += sign.length();
            return true;
        }
        return false;
    }
}
