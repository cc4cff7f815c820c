package plumbrow.advice.weighing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.pests.InsectPressure.Measure;
import plumbrow.advice.program.Program;
import plumbrow.advice.program.ScoutingTrigger;
import plumbrow.advice.weedseason.ProgramSeason;
import plumbrow.science.chance.SortedDraws;
import plumbrow.science.chance.StandardNormal;

/**
 * A program boiled down to places of inputs and plain numbers, as the kernel reads it.
 *
 * @param costUsdPerAcre what its cost lines come to at the operator's shares [$/ac], without passes that wait for scouting
 * @param costs those lines
 * @param lots the seed lots it plants; their shares sum to 1
 * @param insects what presses on the field, with what this program sprays, spreads or coats against it
 * @param weeds what competes, with what this program does against it
 * @param injuries crop injuries of its passes
 * @param delayDays days its passes set the crop back [d], without those that wait for scouting
 * @param triggers its passes that wait for scouting
 * @param season the season of weeds under it, weed by weed as in {@code weeds}; null where weeds go by what passes leave
 * @param laterUsdPerAcre what it costs in later years, draw by draw [$/ac]; empty where only this season counts
 */
@SuppressWarnings("ArrayRecordComponent") // One number a draw; read only.
record ProgramModel(
        Program program,
        double costUsdPerAcre,
        List<CostLine> costs,
        List<Lot> lots,
        List<Insect> insects,
        List<Weed> weeds,
        List<Injury> injuries,
        double delayDays,
        List<Trigger> triggers,
        @Nullable ProgramSeason season,
        double[] laterUsdPerAcre) {
    private static final double[] THIS_SEASON = {};

    /** A program of which only this season counts. */
    ProgramModel(
            Program program,
            double costUsdPerAcre,
            List<CostLine> costs,
            List<Lot> lots,
            List<Insect> insects,
            List<Weed> weeds,
            List<Injury> injuries,
            double delayDays,
            List<Trigger> triggers,
            @Nullable ProgramSeason season) {
        this(program, costUsdPerAcre, costs, lots, insects, weeds, injuries, delayDays, triggers, season, THIS_SEASON);
    }

    ProgramModel withLater(double[] usdPerAcre) {
        return new ProgramModel(
                program,
                costUsdPerAcre,
                costs,
                lots,
                insects,
                weeds,
                injuries,
                delayDays,
                triggers,
                season,
                usdPerAcre);
    }

    /** The same program for every so manieth draw. */
    ProgramModel thinned(int step) {
        return laterUsdPerAcre.length == 0 ? this : withLater(Thinned.row(laterUsdPerAcre, step));
    }

    /** The same program on ground without weeds. */
    ProgramModel withoutWeeds() {
        return new ProgramModel(
                program,
                costUsdPerAcre,
                costs,
                lots,
                insects,
                List.of(),
                injuries,
                delayDays,
                triggers,
                null,
                laterUsdPerAcre);
    }

    /** The same program with one of its passes made from another count on; 0 for always, infinite for never. */
    ProgramModel withThreshold(int trigger, double threshold) {
        List<Trigger> others = new ArrayList<>(triggers);
        others.set(trigger, triggers.get(trigger).from(threshold));
        return new ProgramModel(
                program,
                costUsdPerAcre,
                costs,
                lots,
                insects,
                weeds,
                injuries,
                delayDays,
                others,
                season,
                laterUsdPerAcre);
    }

    /** What it costs on average over draws [$/ac]: passes that wait for scouting by the share of draws in which they are made. */
    double meanCostUsdPerAcre(double[][] columns) {
        double mean = costUsdPerAcre;
        for (Trigger trigger : triggers) {
            mean += trigger.chance(columns) * trigger.costUsdPerAcre();
        }
        return mean;
    }

    /** Its cost lines, those of passes that wait for scouting by the share of draws in which they are made. */
    List<CostLine> costLines(double[][] columns) {
        List<CostLine> lines = new ArrayList<>(costs);
        for (Trigger trigger : triggers.stream().filter(one -> !one.settled()).toList()) {
            double chance = trigger.chance(columns);
            trigger.costs()
                    .forEach(line -> lines.add(new CostLine(
                            line.kind(),
                            line.label(),
                            line.arithmetic() + " × made in " + Odds.words(chance),
                            line.usdPerAcre() * chance)));
        }
        return lines;
    }

    /** What it costs where every pass that waits for scouting is made [$/ac]. */
    double mostCostUsdPerAcre() {
        return costUsdPerAcre
                + triggers.stream()
                        .filter(trigger -> !trigger.settled())
                        .mapToDouble(Trigger::costUsdPerAcre)
                        .sum();
    }

    /** Places of the inputs that stand in its own terms, some of them more than once. */
    IntStream places() {
        return Stream.of(
                        lots.stream().flatMapToInt(Lot::places),
                        insects.stream().flatMapToInt(Insect::places),
                        weeds.stream().flatMapToInt(Weed::places),
                        seasonPlaces(),
                        injuries.stream().mapToInt(Injury::loss),
                        triggers.stream().flatMapToInt(Trigger::places))
                .flatMapToInt(places -> places);
    }

    private IntStream seasonPlaces() {
        ProgramSeason followed = season;
        return followed == null
                ? IntStream.empty()
                : IntStream.range(0, weeds.size()).flatMap(followed::places);
    }

    /**
     * @param share share of the field's acres
     * @param plants how many of its plants live and what that keeps of the yield
     * @param stand place of the share of yield its stand keeps besides [%]
     * @param gain place of its genetic gain [bu/ac]
     * @param yearsBehind years by which its genetics lag, 0 for bought seed
     * @param unprotected share of its plants without the trait
     * @param modes for each insect, in the order of {@code insects}, the trait groups that work on it
     */
    record Lot(
            String seed,
            double share,
            LotStand plants,
            int stand,
            int gain,
            double yearsBehind,
            double unprotected,
            List<List<Mode>> modes) {
        IntStream places() {
            return Stream.of(
                            IntStream.of(stand, gain),
                            plants.places(),
                            modes.stream().flatMap(List::stream).flatMapToInt(Mode::places))
                    .flatMapToInt(places -> places);
        }
    }

    /**
     * One trait group against one insect.
     *
     * @param works place of the chance input, 1 where it works; −1 where nobody doubts it
     * @param control place of the share it prevents while it works
     * @param ifFailed share it prevents if it fails
     */
    record Mode(String group, int works, int control, double ifFailed) {
        IntStream places() {
            return works < 0 ? IntStream.of(control) : IntStream.of(works, control);
        }
    }

    /**
     * @param pressure place of untreated pressure, in that measure
     * @param cap the most the scale shows
     * @param loss place of yield lost per unit [%]
     * @param neighbourShare share of an unprotected plant's loss made up by its neighbours
     */
    record Insect(
            String name, Measure measure, int pressure, double cap, int loss, double neighbourShare, List<Cut> cuts) {
        IntStream places() {
            return IntStream.concat(IntStream.of(pressure, loss), cuts.stream().flatMapToInt(Cut::places));
        }
    }

    /**
     * @param density place of the plants that would stand if nothing were done [1/m²]
     * @param loss place of the loss per plant [% per plant/m²]
     */
    record Weed(String name, int density, int loss, double mostLossPct, List<Cut> cuts) {
        IntStream places() {
            return IntStream.concat(IntStream.of(density, loss), cuts.stream().flatMapToInt(Cut::places));
        }
    }

    /**
     * What one pass removes: Σ weight × control, over the places named. Weights carry rate and share of acres.
     *
     * @param trigger which of the program's triggers it waits for; −1 where it is made in any case
     */
    record Cut(String label, List<Term> terms, int trigger) {
        IntStream places() {
            return terms.stream().mapToInt(Term::control);
        }
    }

    record Term(int control, double weight) {}

    /**
     * @param loss place of the yield lost [%], on {@code share} of the acres
     * @param trigger which of the program's triggers its pass waits for; −1 where it is made in any case
     */
    record Injury(String label, int loss, double share, int trigger) {}

    /**
     * A pass that waits for scouting: made in the draws in which the count reaches the threshold.
     *
     *   count = countPerPressure·min(cap, P)·Π(1 − cut)·e^(−s·Φ⁻¹(g)) + e·Φ⁻¹(u), at least 0
     *
     *   P  untreated pressure;  cut  what passes before it leave;  g, u  even draws;  s  how far what comes of a count differs,
     *   as SD of its logarithm;  e  standard error of the sample's mean
     *
     * @param pass its number
     * @param insect what is counted, by its place among the insects of the program
     * @param from the count from which on it is made [as counted]
     * @param before what passes before it that are made in any case take of the insect
     * @param growth place of g; −1 where the pressure follows from the count
     * @param luck place of u; −1 where no sample is stated and the count is taken as exact
     * @param error e [as counted]
     * @param costs lines of what it costs where it is made
     * @param costUsdPerAcre that at the operator's shares [$/ac]
     * @param delayDays by which it sets the crop back where it is made [d]
     */
    record Trigger(
            int pass,
            String product,
            ScoutingTrigger scouting,
            Insect insect,
            double from,
            List<Cut> before,
            int growth,
            double logSd,
            int luck,
            double error,
            List<CostLine> costs,
            double costUsdPerAcre,
            double delayDays) {
        private static final double RAREST = 1e-12;

        /** Whether it was scouted already and too few were found: it is made in no draw. */
        boolean settled() {
            return Double.isInfinite(from);
        }

        /** The same pass, which is made in no draw any more. */
        Trigger answeredTooFew() {
            return from(Double.POSITIVE_INFINITY);
        }

        /** Whether fewer are counted in a draw than the pass was planned to wait for. */
        boolean tooFew(double[][] columns, int draw) {
            return count(columns, draw) < scouting.threshold();
        }

        Trigger from(double threshold) {
            return new Trigger(
                    pass,
                    product,
                    scouting,
                    insect,
                    threshold,
                    before,
                    growth,
                    logSd,
                    luck,
                    error,
                    costs,
                    costUsdPerAcre,
                    delayDays);
        }

        /** What the scout counts in a draw. */
        double count(double[][] columns, int draw) {
            double count = Math.min(insect.cap(), columns[insect.pressure()][draw]);
            for (Cut cut : before) {
                double through = 1;
                for (Term term : cut.terms()) {
                    through -= term.weight() * columns[term.control()][draw];
                }
                count *= Math.max(0, through);
            }
            count *= scouting.countPerPressure();
            if (growth >= 0) {
                count *= Math.exp(-logSd * score(columns[growth][draw]));
            }
            if (luck >= 0) {
                count += error * score(columns[luck][draw]);
            }
            return Math.max(0, count);
        }

        private static double score(double even) {
            return StandardNormal.quantile(Math.min(1 - RAREST, Math.max(RAREST, even)));
        }

        /** Whether the pass is made, 1 or 0, for some draws. */
        void made(double[][] columns, int first, int end, double[] made) {
            for (int i = first; i < end; i++) {
                made[i] = count(columns, i) >= from ? 1 : 0;
            }
        }

        /** The share of draws in which it is made. */
        double chance(double[][] columns) {
            double[] made = new double[columns[insect.pressure()].length];
            made(columns, 0, made.length, made);
            return SortedDraws.mean(made);
        }

        IntStream places() {
            return IntStream.concat(
                            IntStream.of(insect.pressure(), growth, luck),
                            before.stream().flatMapToInt(Cut::places))
                    .filter(place -> place >= 0);
        }
    }
}
