package plumbrow.advice.shelf;

/**
 * The questions to ask before saved seed is planted, in the order of asking. Not legal advice.
 *
 * @param contractForbids whether a purchase agreement or bag tag forbids replanting
 * @param patentInForce whether a patent on the variety, a trait or a method is in force
 * @param varietyProtected whether a plant variety protection certificate is in force
 * @param ownHarvest whether it was harvested on this grower's own farm from seed obtained with authority
 * @param hybrid whether it is the grain of a hybrid, which does not breed true
 */
public record SeedRights(Ask contractForbids, Ask patentInForce, Ask varietyProtected, Ask ownHarvest, Ask hybrid) {
    /** Nobody has asked anything yet. */
    public static final SeedRights UNASKED =
            new SeedRights(Ask.UNKNOWN, Ask.UNKNOWN, Ask.UNKNOWN, Ask.UNKNOWN, Ask.UNKNOWN);
}
