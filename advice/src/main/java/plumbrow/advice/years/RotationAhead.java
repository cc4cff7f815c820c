package plumbrow.advice.years;

import java.util.List;
import plumbrow.advice.gates.Finding;
import plumbrow.advice.gates.Standing;
import plumbrow.advice.weighing.Band;
import plumbrow.science.figure.Step;

/**
 * One rotation through the years. All money is the operator's, per acre.
 *
 * @param standing the worst of what the gates say of its programs, each with the next to follow
 * @param findings what bars it, or is unknown, or binds it: of plant-back and carry-over between its years; of the rest what bars
 * @param presentValueUsdPerAcre mean margin of all years in money of this season [$/ac]
 * @param presentValue 10, 50 and 90 % points of it
 * @param perYearUsdPerAcre the level margin a year of the same present value [$/ac]
 * @param chanceMost share of draws in which it earns most of all rotations
 * @param fails when control of some weed or trait first fails
 * @param working present value, line by line
 */
public record RotationAhead(
        String name,
        Standing standing,
        List<Finding> findings,
        double presentValueUsdPerAcre,
        Band presentValue,
        double perYearUsdPerAcre,
        double chanceMost,
        List<YearMargin> years,
        List<WeedAhead> weeds,
        List<InsectAhead> insects,
        Failure fails,
        List<Step> working) {
    public RotationAhead {
        findings = List.copyOf(findings);
        years = List.copyOf(years);
        weeds = List.copyOf(weeds);
        insects = List.copyOf(insects);
        working = List.copyOf(working);
    }

    /** The margin of a year. */
    public record YearMargin(int year, String crop, String program, double meanMarginUsdPerAcre, Band margin) {}

    /**
     * A weed.
     *
     * @param followed whether its seed is followed from year to year; else it comes each year as thick as this season
     * @param seedsM2 seed in the soil each spring
     * @param resistant share of the spring's seed that resists, by site of action
     * @param source where the life of its seed is from, or why it is not followed
     */
    public record WeedAhead(
            String weed, boolean followed, List<Band> seedsM2, List<Share> resistant, Failure fails, String source) {
        public WeedAhead {
            seedsM2 = List.copyOf(seedsM2);
            resistant = List.copyOf(resistant);
        }
    }

    /**
     * An insect that traits of some rotation are aimed at.
     *
     * @param used whether a program of this rotation carries a trait against it
     */
    public record InsectAhead(String insect, boolean used, List<Share> resistant, Failure fails) {
        public InsectAhead {
            resistant = List.copyOf(resistant);
        }
    }

    /**
     * How common resistance is, year by year.
     *
     * @param group site of action of a herbicide, or trait group
     * @param share of seed with a resistant copy; of an insect, frequency of the resistant copy
     */
    public record Share(String group, List<Band> share) {
        private static final double SEEN = .01;

        public Share {
            share = List.copyOf(share);
        }

        /** Whether it is more than one in a hundred in some year, in one of ten draws or more. */
        public boolean shows() {
            return share.stream().anyMatch(band -> band.high() > SEEN);
        }
    }
}
