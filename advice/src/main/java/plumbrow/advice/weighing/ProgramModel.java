package plumbrow.advice.weighing;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.pests.InsectPressure.Measure;
import plumbrow.advice.program.Program;
import plumbrow.advice.weedseason.ProgramSeason;

/**
 * A program boiled down to places of inputs and plain numbers, as the kernel reads it.
 *
 * @param costUsdPerAcre what its cost lines come to at the operator's shares [$/ac]
 * @param lots the seed lots it plants; their shares sum to 1
 * @param insects what presses on the field, with what this program sprays, spreads or coats against it
 * @param weeds what competes, with what this program does against it
 * @param injuries crop injuries of its passes
 * @param delayDays days its passes set the crop back [d]
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
            @Nullable ProgramSeason season) {
        this(program, costUsdPerAcre, costs, lots, insects, weeds, injuries, delayDays, season, THIS_SEASON);
    }

    ProgramModel withLater(double[] usdPerAcre) {
        return new ProgramModel(
                program, costUsdPerAcre, costs, lots, insects, weeds, injuries, delayDays, season, usdPerAcre);
    }

    /** The same program for every so manieth draw. */
    ProgramModel thinned(int step) {
        return laterUsdPerAcre.length == 0 ? this : withLater(Thinned.row(laterUsdPerAcre, step));
    }

    /** The same program on ground without weeds. */
    ProgramModel withoutWeeds() {
        return new ProgramModel(
                program, costUsdPerAcre, costs, lots, insects, List.of(), injuries, delayDays, null, laterUsdPerAcre);
    }

    /** Places of the inputs that stand in its own terms, some of them more than once. */
    IntStream places() {
        return Stream.of(
                        lots.stream().flatMapToInt(Lot::places),
                        insects.stream().flatMapToInt(Insect::places),
                        weeds.stream().flatMapToInt(Weed::places),
                        seasonPlaces(),
                        injuries.stream().mapToInt(Injury::loss))
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

    /** What one pass removes: Σ weight × control, over the places named. Weights carry rate and share of acres. */
    record Cut(String label, List<Term> terms) {
        IntStream places() {
            return terms.stream().mapToInt(Term::control);
        }
    }

    record Term(int control, double weight) {}

    /** @param loss place of the yield lost [%], on {@code share} of the acres */
    record Injury(String label, int loss, double share) {}
}
