package plumbrow.advice.loadcard;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.shelf.Droplets;

/**
 * What goes into the tank for one trip over a field.
 *
 * @param passes numbers of the passes that go out together
 * @param products their products
 * @param machine the sprayer or planter; null where none is on file
 * @param carrierGpa spray volume [gal/ac]; null where not planned, then there are no loads
 * @param tankGal usable tank, whole gallons [gal]; null where not on file
 * @param loads how it is filled; null where carrier or tank is not known
 * @param lines what goes in, in the order in which it goes in
 * @param steps the mixing order in words
 * @param nozzles the nozzles at hand held to gallons, speed, pressure and every partner's droplets
 * @param limits the strictest of all partners' limits
 * @param conditioner what the water test says; null where nothing was asked
 * @param granules ounces along the row; empty for a spray
 * @param wear what handlers must wear, of all partners together; null where a label was not read
 * @param reentryHours longest restricted-entry interval [h]; null where a label was not read
 * @param cleanOut how the tank is cleaned afterwards
 * @param findings what bars it, what must be looked up, what must be minded; the worst first
 */
public record LoadCard(
        String field,
        String farm,
        String program,
        List<Integer> passes,
        List<String> products,
        @Nullable LocalDate date,
        double acres,
        @Nullable String applicator,
        @Nullable String machine,
        @Nullable Double speedMph,
        @Nullable Double carrierGpa,
        @Nullable Double tankGal,
        @Nullable Loads loads,
        List<Line> lines,
        List<String> steps,
        List<NozzleChoice> nozzles,
        Limits limits,
        @Nullable Catch catching,
        @Nullable String conditioner,
        List<RowRate> granules,
        @Nullable List<String> wear,
        @Nullable Integer reentryHours,
        List<String> cleanOut,
        List<Finding> findings,
        String sentence) {
    public LoadCard {
        passes = List.copyOf(passes);
        products = List.copyOf(products);
        lines = List.copyOf(lines);
        steps = List.copyOf(steps);
        nozzles = List.copyOf(nozzles);
        granules = List.copyOf(granules);
        wear = wear == null ? null : List.copyOf(wear);
        cleanOut = List.copyOf(cleanOut);
        findings = List.copyOf(findings);
    }

    /**
     * Full loads and the last.
     *
     * @param full how many full loads, {@code fullAcres} acres of each, {@code fullGal} its volume
     * @param lastAcres acres of the last, part load, 0 for none; {@code lastGal} its volume, up to the whole gallon
     * @param leftGal spray that this leaves over [gal], {@code leftAcres} the acres it would cover
     * @param mostLeftGal the most that may be left by the sprayer's sheet [gal]; null where it sets none
     * @param evenLoads loads if all are alike, {@code evenAcres} acres of each
     */
    public record Loads(
            int full,
            double fullAcres,
            double fullGal,
            double lastAcres,
            double lastGal,
            double leftGal,
            double leftAcres,
            @Nullable Double mostLeftGal,
            int evenLoads,
            double evenAcres) {
        public int count() {
            return full + (lastAcres > 0 ? 1 : 0);
        }

        /** Spray mixed in all loads [gal]. */
        public double mixedGal() {
            return full * fullGal + lastGal;
        }
    }

    /**
     * One product, conditioner or adjuvant in the tank.
     *
     * @param what it is for: "pass 4", or with which product it goes
     * @param rate as planned, with its unit
     * @param formulation code; null where not read
     * @param step place in the usual order, from 0; −1 where the formulation is not known
     * @param labelOrder the label's own words on when it goes in; null where it has none on file
     * @param full amount for a full load, {@code last} for the last; null where there is no such load or loads are not known
     * @param totalNeed for the whole job, in the unit of its stock, words
     * @param stock what stands against it, in words
     * @param jar for the jar test, in words
     */
    public record Line(
            String product,
            String what,
            String rate,
            @Nullable String formulation,
            int step,
            @Nullable String labelOrder,
            @Nullable Measured full,
            @Nullable Measured last,
            String totalNeed,
            String stock,
            String jar) {}

    /**
     * An amount as it is measured.
     *
     * @param exact what the arithmetic gives, {@code measured} what is measured, both in {@code unit}
     * @param unit unit of the mark
     * @param words in containers and marks: "6 × 2.5 gal + 213 fl oz"
     * @param offPct off the rate [%]
     * @param rateGiven the rate that goes on, in the unit of the rate
     * @param gallons volume that it takes of the tank [gal], 0 for dry
     */
    public record Measured(
            double exact,
            double measured,
            String unit,
            String words,
            double offPct,
            double rateGiven,
            double gallons) {}

    /**
     * A nozzle at the planned speed.
     *
     * @param psi pressure at which it gives the volume [psi]
     * @param droplets class there by the maker's chart; null where the pressure is not on it
     * @param fits whether pressure and class meet every partner
     * @param why what is wrong, or between which speeds it holds
     */
    public record NozzleChoice(
            String nozzle,
            String size,
            double psi,
            @Nullable Droplets droplets,
            boolean fits,
            String why) {}

    /**
     * The strictest of all partners. Null is not read by one of them, or not limited by any.
     *
     * @param says in words, each with the product whose label sets it
     */
    public record Limits(
            @Nullable Droplets finest,
            @Nullable Droplets coarsest,
            @Nullable Double carrierLowGpa,
            @Nullable Double boomHighestIn,
            List<String> says) {
        public Limits {
            says = List.copyOf(says);
        }
    }

    /**
     * How the flow is caught and checked.
     *
     * @param gpm flow of one nozzle [gal/min], {@code ozPerMinute} the same in a jug
     * @param courseFt course over which ounces caught are gallons an acre, {@code seconds} time for it at speed
     */
    public record Catch(double gpm, double ozPerMinute, double courseFt, double seconds) {}

    /** Granules along the row at a row spacing. */
    public record RowRate(String product, double rowSpacingIn, double ozPer1000Feet) {}

    /** Something to mind. */
    public record Finding(Weight weight, String says, String source) {}

    /** How much a finding weighs, worst first. */
    public enum Weight {
        BARRED("barred"),
        LOOK_UP("look up"),
        MIND("mind");

        private final String word;

        Weight(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    public boolean barred() {
        return findings.stream().anyMatch(finding -> finding.weight() == Weight.BARRED);
    }
}
