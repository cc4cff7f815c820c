package plumbrow.advice.weighing;

import java.util.List;
import java.util.stream.Collectors;
import plumbrow.advice.gates.Finding;
import plumbrow.advice.gates.Standing;
import plumbrow.science.figure.Step;

/**
 * A program with its odds. All money is the operator's, per acre of the field.
 *
 * @param standing the worst of its findings
 * @param costUsdPerAcre operator's input cost [$/ac]; on average over the draws where passes wait for scouting
 * @param costs what it is made of, before the operator's share
 * @param meanYieldBuPerAcre mean yield [bu/ac]
 * @param meanMarginUsdPerAcre mean margin over these inputs [$/ac]
 * @param standardErrorUsdPerAcre standard error of that mean from the number of draws [$/ac]
 * @param margin 10, 50 and 90 % points of the margin [$/ac]
 * @param meanGainUsdPerAcre mean margin over the baseline's, on the same draws [$/ac]
 * @param gain 10, 50 and 90 % points of that gain [$/ac]
 * @param chanceBeatsBaseline share of draws in which it earns more than the baseline; a tie counts half
 * @param chanceBest share of draws in which it earns most of all programs; ties share
 * @param shortfallUsdPerAcre mean margin of its worst tenth of draws [$/ac]
 * @param marginPoints margin at 0, 2, 4 … 100 % of the draws [$/ac], for its strip
 * @param working likely-value arithmetic, line by line
 * @param weeds what its weeds do, in one sentence, every input at its mean; empty where the season of weeds is not followed
 * @param scouted its passes that wait for scouting
 */
public record WeighedProgram(
        String name,
        boolean baseline,
        String note,
        Standing standing,
        List<Finding> findings,
        double costUsdPerAcre,
        List<CostLine> costs,
        double meanYieldBuPerAcre,
        double meanMarginUsdPerAcre,
        double standardErrorUsdPerAcre,
        Band margin,
        double meanGainUsdPerAcre,
        Band gain,
        double chanceBeatsBaseline,
        double chanceBest,
        double shortfallUsdPerAcre,
        List<Double> marginPoints,
        List<Step> working,
        String weeds,
        List<ScoutedPass> scouted) {
    public WeighedProgram {
        findings = List.copyOf(findings);
        costs = List.copyOf(costs);
        marginPoints = List.copyOf(marginPoints);
        working = List.copyOf(working);
        scouted = List.copyOf(scouted);
    }

    /** What is decided later, in sentences: what to scout for, how often it comes to the pass, and what another threshold would bring. */
    public List<String> scouting() {
        return scouted.stream()
                .map(pass -> ProgramCosts.capital(pass.says()) + ". " + pass.saysBest())
                .toList();
    }

    /** What its passes wait for, as a clause; empty where none waits. */
    public String waits() {
        return scouted.stream().map(ScoutedPass::says).collect(Collectors.joining("; "));
    }
}
