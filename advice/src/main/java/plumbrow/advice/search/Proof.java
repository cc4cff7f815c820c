package plumbrow.advice.search;

/**
 * What became of every program that could be made: weighed, barred, cut by the bound, or left open. The four sum to
 * {@code programs}.
 *
 * @param programs how many there are
 * @param weighed looked at one by one
 * @param barred barred by a gate, alone or with a part of them that is barred already
 * @param cut not weighed, since the bound shows that they earn less than the best by more than the width
 * @param open not looked at, since the search was stopped
 * @param widthUsdPerAcre every program this near to the best was weighed, unless some are open [$/ac]
 * @param bestOpenUsdPerAcre no open program can have a higher mean margin than this [$/ac]; no number where none is open
 * @param says one sentence
 */
public record Proof(
        long programs,
        long weighed,
        long barred,
        long cut,
        long open,
        double widthUsdPerAcre,
        double bestOpenUsdPerAcre,
        String says) {
    /** Whether every program was weighed, barred or cut. */
    public boolean whole() {
        return open == 0;
    }
}
