package plumbrow.advice.weighing;

import plumbrow.advice.pests.ScoutingSample;

/**
 * What a stated scouting sample is worth before deciding.
 *
 * @param usdPerAcre expected value [$/ac]
 * @param usdField the same for the field [$]
 * @param netUsdField the same less what taking it costs [$]
 * @param says one sentence
 */
public record SampleWorth(
        String insect, ScoutingSample sample, double usdPerAcre, double usdField, double netUsdField, String says) {}
