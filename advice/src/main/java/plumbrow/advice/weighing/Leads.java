package plumbrow.advice.weighing;

/**
 * Two programs on the same simulated seasons: how often one earns more, how often the two are level, how often the other earns
 * more. Level is a season in which they differ by less than is worth telling ({@link EqualRule}). The three sum to 1.
 *
 * <p>A tie that counts half hides what a decision made later is like: it costs a few dollars of scouting in most seasons, which
 * are level, and earns much in some.
 *
 * @param ahead share of seasons in which it earns more [0 to 1]
 * @param level share in which the two are level [0 to 1]
 * @param behind share in which it earns less [0 to 1]
 */
public record Leads(double ahead, double level, double behind) {
    /** From this share of level seasons on the three are told apart; a tie that counts half says enough of fewer. */
    private static final double TOLD_APART = 0.1;

    /**
     * One program against another, draw by draw.
     *
     * @param width differences smaller than this are level; where it is 0, none but equal ones [$]
     */
    public static Leads of(double[] one, double[] other, double width) {
        int ahead = 0;
        int behind = 0;
        for (int k = 0; k < one.length; k++) {
            double more = one[k] - other[k];
            ahead += more > 0 && more >= width ? 1 : 0;
            behind += more < 0 && -more >= width ? 1 : 0;
        }
        double all = one.length;
        return new Leads(ahead / all, (one.length - ahead - behind) / all, behind / all);
    }

    /** The same from the other program's side. */
    public Leads reversed() {
        return new Leads(behind, level, ahead);
    }

    /** Share of the seasons that tell the two apart in which it is ahead; a half where none does. */
    public double ofTellingSeasons() {
        return ahead + behind == 0 ? 0.5 : ahead / (ahead + behind);
    }

    /** Whether so many seasons are level that the three counts must be told apart. */
    public boolean manyLevel() {
        return level >= TOLD_APART;
    }

    /** "30, level in 65, behind in 5 of 100", to stand after "ahead in"; rounded so that they add up to 100. */
    public String words() {
        boolean counts = told(ahead) && told(behind) && told(level);
        String levels = counts ? Long.toString(100 - of100(ahead) - of100(behind)) : count(level);
        return count(ahead) + ", level in " + levels + ", behind in " + count(behind) + " of 100";
    }

    private static String count(double share) {
        return share > 0 && share < 0.005
                ? "fewer than 1"
                : share < 1 && share > 0.995 ? "more than 99" : Long.toString(of100(share));
    }

    private static boolean told(double share) {
        return share == 0 || (share >= 0.005 && share <= 0.995) || share == 1;
    }

    private static long of100(double share) {
        return Math.round(share * 100);
    }
}
