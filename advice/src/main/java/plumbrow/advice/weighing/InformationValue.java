package plumbrow.advice.weighing;

/**
 * What knowing one uncertain input exactly, before deciding, is worth at most.
 *
 * @param input id of the {@link UncertainInput}
 * @param usdPerAcre expected value of knowing it [$/ac]
 * @param usdField the same for the field [$]
 * @param halfSampleUsdPerAcre the same by regression on half of the draws [$/ac]: how far the two differ shows how firm it is
 * @param says one sentence
 */
public record InformationValue(
        String input, String label, double usdPerAcre, double usdField, double halfSampleUsdPerAcre, String says) {}
