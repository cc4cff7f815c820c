package plumbrow.advice.assumptions;

import org.jspecify.annotations.Nullable;

/**
 * How what a pest costs and what a product does differ from field to field and year to year, for an input of which the season says
 * one number. Lowest, most likely and highest, where somebody entered them, are taken as they are.
 *
 * <p>All are spreads between site-years: the number entered is the middle of them, and which of them this field and season are is
 * what is drawn. Doubt about the middle itself is in it only where {@link #ofRatings} says so.
 *
 * Source: each figure beside its constant; forms by common practice.
 */
public final class SiteSpread {
    /** What every source says where one number was spread. */
    public static final String ONE_NUMBER = "one number entered, spread between fields and years added";

    /** SD of ln I between site-years: thresholds of 0.32 to 4.17 plants over 7 places × 2 years (Fischer et al. 2004, derived). */
    private static final double LOSS_PER_WEED = .8;

    /** That and the doubt of a stand-in: I log-uniform from a quarter to four times (common practice), SD ln 16/√12 = 0.80. */
    private static final double BORROWED_LOSS = Math.hypot(LOSS_PER_WEED, .8);

    /** SD of loss per node over its mean: 14 % of yield (from Mitchell et al. 2002) at 1.68 nodes untreated, against 15 a node. */
    private static final double LOSS_PER_NODE = .14 / 1.68 / .15;

    /** SD of ln of other losses per insect: common practice, no source. */
    private static final double LOSS_PER_INSECT = .5;

    /** SD of log-odds of one herbicide on one weed in the soil, 157 single ratings in 69 groups; rain is in it. */
    private static final double SOIL = .95;

    /** The same where rain is drawn by itself: common practice. */
    private static final double SOIL_RAIN_APART = .6;

    /** On leaves, susceptible plants of the right size: common practice; none published. */
    private static final double LEAF = .6;

    /** Soil insecticides on rootworm: log-odds of 0.17 to above 2.2 in trials. */
    private static final double SOIL_INSECTICIDE = 1.0;

    /** Traits without resistance: log-odds of 2.3 to 3.3 in trials. */
    private static final double TRAIT = .5;

    /** Of a share of resistant plants that was counted: common practice, no source. */
    private static final double RESISTANT = .6;

    private SiteSpread() {}

    /**
     * An input as it is drawn.
     *
     * @param says how one number was spread; empty where the distribution is the entered one
     */
    public record Drawn(Distribution distribution, String says) {
        /** Whether one number was spread. */
        public boolean spread() {
            return !says.isEmpty();
        }

        /** A source with how it was spread. */
        public String source(String entered) {
            return spread() ? entered + "; " + ONE_NUMBER + ": " + says : entered;
        }

        /** A name of draws: of the field alone where the spread is one between fields. */
        public String stream(String shared, String field) {
            return spread() ? shared + " on " + field : shared;
        }
    }

    /** Loss per weed plant, I [% per plant/m²]. */
    public static Drawn lossPerWeed(Distribution entered, boolean borrowed) {
        double spread = borrowed ? BORROWED_LOSS : LOSS_PER_WEED;
        return factor(
                entered,
                spread,
                borrowed
                        ? "SD of its logarithm 1.1, for the weed is borrowed (between site-years 0.8, derived from Fischer et al."
                                + " 2004)"
                        : "SD of its logarithm 0.8 between site-years (derived from Fischer et al. 2004, Weed Sci. 52:1034)");
    }

    /** Loss per node of root injury, which may come out below nothing: what a trial measures does. */
    public static Drawn lossPerNode(Distribution entered) {
        return entered instanceof Distribution.Fixed fixed && fixed.value() > 0
                ? new Drawn(
                        new Distribution.Normal(fixed.value(), LOSS_PER_NODE),
                        "SD 56 % of it (14 % of yield at 1.68 nodes, inferred from Mitchell et al. 2002)")
                : new Drawn(entered, "");
    }

    /** Loss per insect by another measure. */
    public static Drawn lossPerInsect(Distribution entered) {
        return factor(entered, LOSS_PER_INSECT, "SD of its logarithm 0.5 (common practice, no source)");
    }

    /** Control by a herbicide in the soil; {@code rainApart} where rain is drawn by itself, so that it is not counted twice. */
    public static Drawn soil(Distribution entered, boolean rainApart) {
        return rainApart
                ? share(
                        entered,
                        SOIL_RAIN_APART,
                        "SD of its log-odds 0.6 between trials, rain drawn by itself (common practice)")
                : share(entered, SOIL, "SD of its log-odds 0.95 between trials (157 published ratings), rain in it");
    }

    /** Control by a herbicide on leaves, or by an insecticide on what sits above ground. */
    public static Drawn leaf(Distribution entered) {
        return share(entered, LEAF, "SD of its log-odds 0.6 between trials (common practice)");
    }

    /** Control of rootworm by a soil insecticide. */
    public static Drawn soilInsecticide(Distribution entered) {
        return share(
                entered,
                SOIL_INSECTICIDE,
                "SD of its log-odds 1.0 between trials (54 % to above 90 %, Illinois 2007 and 2009)");
    }

    /** Control by a trait where it works; whether it does is asked by itself. */
    public static Drawn trait(Distribution entered) {
        return share(entered, TRAIT, "SD of its log-odds 0.5 between trials (91 to 96 %, Illinois 2007)");
    }

    /**
     * Share of plants that resist a site of action.
     *
     * @param entered share [0 to 1]; null where nobody counted: then half of them to all, all the likeliest (common practice)
     */
    public static Drawn resistant(@Nullable Double entered) {
        return entered == null
                ? new Drawn(
                        new Distribution.Triangular(.5, 1, 1),
                        "half to all of them, for nobody has counted (common practice)")
                : share(
                        new Distribution.Fixed(entered),
                        RESISTANT,
                        "SD of its log-odds 0.6, as few plants are counted (common practice, no source)");
    }

    /**
     * Control as published in some ratings, by their mean.
     *
     * @param mean share, held below 0.99
     * @param ratings how many; the doubt about their mean is the spread over the root of their number
     * @param wider where it was seen in another crop or on another weed: as much doubt again
     */
    public static Distribution ofRatings(double mean, int ratings, boolean soil, boolean wider) {
        double between = soil ? SOIL_RAIN_APART : LEAF;
        double squared = between * between * (1 + 1.0 / ratings + (wider ? 1 : 0));
        return mean <= 0
                ? new Distribution.Fixed(0)
                : new Distribution.LogOdds(Math.min(.99, mean), Math.sqrt(squared));
    }

    private static Drawn factor(Distribution entered, double spread, String says) {
        return entered instanceof Distribution.Fixed fixed && fixed.value() > 0
                ? new Drawn(new Distribution.Factor(fixed.value(), spread), says)
                : new Drawn(entered, "");
    }

    /** None and all are not spread: they say that it does not work at all, or can't fail. */
    private static Drawn share(Distribution entered, double spread, String says) {
        return entered instanceof Distribution.Fixed fixed && fixed.value() > 0 && fixed.value() < 1
                ? new Drawn(new Distribution.LogOdds(fixed.value(), spread), says)
                : new Drawn(entered, "");
    }
}
