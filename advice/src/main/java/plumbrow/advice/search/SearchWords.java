package plumbrow.advice.search;

import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Field;
import plumbrow.advice.weighing.EqualRule;
import plumbrow.advice.weighing.Leads;
import plumbrow.advice.weighing.Quantities;
import plumbrow.science.figure.Numbers;

/** The search's answer and its proof in words. */
final class SearchWords {
    private SearchWords() {}

    static String answer(
            Field field,
            @Nullable Found best,
            @Nullable Found lookUp,
            @Nullable String ownName,
            @Nullable Double ownMean,
            Leads leads) {
        if (best == null) {
            return lookUp == null
                    ? "No lawful program for " + field.name() + " can be made from the shelf."
                    : "No program for " + field.name() + " can be advised until this is looked up: "
                            + first(lookUp) + " Then " + lookUp.name() + " would bring "
                            + Quantities.dollarsPerAcre(lookUp.meanMarginUsdPerAcre()) + ".";
        }
        String sentence = best.name() + " returns most, " + Quantities.dollarsPerAcre(best.meanMarginUsdPerAcre());
        if (ownName == null || ownMean == null) {
            return sentence + ".";
        }
        double more = best.meanMarginUsdPerAcre() - ownMean;
        if (more > 0.05 && !EqualRule.DEFAULT.ahead(more, leads)) {
            return sentence + "; your own " + ownName + " is about equal, " + Quantities.dollarsPerAcre(more)
                    + " less on average"
                    + (leads.manyLevel() ? ", and behind in " + leads.words() + " simulated seasons." : ".");
        }
        return more > 0.05
                ? sentence + ": " + Quantities.dollarsPerAcre(more) + " more than the best of your programs, " + ownName
                        + "."
                : more > -0.05
                        ? sentence + ", no more than your own " + ownName + "."
                        : sentence + "; your own " + ownName + " brings " + Quantities.dollarsPerAcre(-more)
                                + " more, with fewer sites of action or at a rate that the search does not try.";
    }

    private static String first(Found lookUp) {
        return lookUp.lookUps().stream()
                .map(finding -> finding.clears())
                .filter(clears -> !clears.isEmpty())
                .findFirst()
                .orElse("what the checks name as unknown.");
    }

    static String proof(Proof proof) {
        String counted = "Of " + Numbers.fixed((double) proof.programs(), 0) + " programs that can be made, "
                + Numbers.fixed((double) proof.weighed(), 0) + " were weighed, "
                + Numbers.fixed((double) proof.barred(), 0)
                + " are barred, and " + Numbers.fixed((double) proof.cut(), 0)
                + " earn less than the best by more than "
                + Quantities.dollarsPerAcre(proof.widthUsdPerAcre())
                + " even if every later dose on the shelf were free and worked at once.";
        return proof.whole()
                ? "Nothing better was left out. " + counted
                : counted + " The search was stopped with " + Numbers.fixed((double) proof.open(), 0)
                        + " left open; none of those can bring more than "
                        + Quantities.dollarsPerAcre(proof.bestOpenUsdPerAcre()) + ".";
    }
}
