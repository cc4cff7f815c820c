package plumbrow.advice.calendar;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.hours.SeasonHours;
import plumbrow.advice.program.PassKind;
import plumbrow.advice.quantity.Amount;

/**
 * A program day by day, from before planting to harvest, every uncertain input at its mean. Rows of days begin with the first day
 * shown; plants are per m² and day.
 *
 * @param first first day shown, {@code last} last day shown
 * @param passes what is done, in order
 * @param stages growth stages of the crop by degree days; empty where there is no table or climate
 * @param canopy when the crop is up and closed; null where the weeds are not followed
 * @param critical when the crop must be free of weeds; null where they never cost so much, or are not followed
 * @param weeds one for each weed
 * @param residuals what each soil herbicide controls
 * @param windows on which days the gates let each pass be made; empty where not asked
 * @param lossPct yield lost to all weeds [%]; null where not followed
 * @param hours what is known of hours fit for spraying, day by day
 * @param missing what must be entered before the weeds can be followed; empty where they are
 * @param finding what the picture shows, in a sentence or two
 * @param days the days in words
 */
public record SeasonCalendar(
        String field,
        String program,
        LocalDate first,
        LocalDate last,
        List<Mark> passes,
        List<Stage> stages,
        @Nullable Canopy canopy,
        @Nullable Critical critical,
        List<Weed> weeds,
        List<Residual> residuals,
        List<Window> windows,
        @Nullable Double lossPct,
        SeasonHours hours,
        List<String> missing,
        String finding,
        List<String> days) {
    public SeasonCalendar {
        passes = List.copyOf(passes);
        stages = List.copyOf(stages);
        weeds = List.copyOf(weeds);
        residuals = List.copyOf(residuals);
        windows = List.copyOf(windows);
        missing = List.copyOf(missing);
        days = List.copyOf(days);
    }

    /**
     * A pass.
     *
     * @param pass its number in the program as kept, by which changes name it
     * @param date planned day; null where not planned
     * @param made the day on which the mean assumptions make it; null where it does nothing to weeds
     * @param lowest the label's lowest rate, {@code highest} its highest, in the unit of the rate; null where not on file
     * @param waits what it waits for; empty where it is made in any case
     */
    public record Mark(
            int pass,
            PassKind kind,
            @Nullable LocalDate date,
            @Nullable LocalDate made,
            @Nullable String product,
            @Nullable Amount rate,
            @Nullable Amount lowest,
            @Nullable Amount highest,
            String waits) {
        /** "3 · Spray Ironweir 4L, 1.5 qt/ac". */
        public String words() {
            String what = kind.word();
            String name = product;
            Amount much = rate;
            return pass + " · " + Character.toUpperCase(what.charAt(0)) + what.substring(1)
                    + (name == null ? "" : " " + name) + (much == null ? "" : ", " + much.text() + "/ac")
                    + (waits.isEmpty() ? "" : ", " + waits);
        }
    }

    /**
     * A stage of the crop.
     *
     * @param day in the season shown
     * @param early it comes before this day in one season of ten, after {@code late} in another
     */
    public record Stage(String word, LocalDate day, LocalDate early, LocalDate late) {}

    public record Canopy(LocalDate up, LocalDate closed) {}

    /**
     * When the crop must be free of weeds.
     *
     * @param begin first day on which weeds that stood until then have cost more than is accepted
     * @param end first day after which what comes up costs no more than that
     */
    public record Critical(LocalDate begin, LocalDate end, double acceptedLossPct) {
        /** Whether one clean day between the two is enough. */
        public boolean empty() {
            return end.isBefore(begin);
        }
    }

    /**
     * A weed as it comes up.
     *
     * @param sprouted seedlings of each day, whatever became of them
     * @param emerged of them, those that no soil herbicide stopped
     * @param left of them, those that still stand at harvest
     * @param standing plants at the end of each day
     * @param atHarvest plants that stand at the end
     * @param seedlings all of the season
     */
    @SuppressWarnings("ArrayRecordComponent") // One number a day; read only.
    public record Weed(
            String name,
            double[] sprouted,
            double[] emerged,
            double[] left,
            double[] standing,
            double seedlings,
            double atHarvest,
            double seedsM2) {}

    /**
     * A soil herbicide as it wears off.
     *
     * @param pass number of the pass that laid it
     * @param dose share of its rate at work in the germination layer
     * @param controlPct control of each day's susceptible seedlings, by weed in their order [%]
     */
    @SuppressWarnings("ArrayRecordComponent") // One number a day; read only.
    public record Residual(int pass, String name, double[] dose, List<double[]> controlPct) {}

    /** The same with windows. */
    public SeasonCalendar with(List<Window> found) {
        return new SeasonCalendar(
                field, program, first, last, passes, stages, canopy, critical, weeds, residuals, found, lossPct, hours,
                missing, finding, days);
    }

    /** The same with hours fit for spraying. */
    SeasonCalendar with(SeasonHours found) {
        return new SeasonCalendar(
                field, program, first, last, passes, stages, canopy, critical, weeds, residuals, windows, lossPct,
                found, missing, finding, days);
    }

    /** What the gates say of a pass on a day. */
    public Optional<Window> window(int pass, LocalDate day) {
        return windows.stream()
                .filter(window -> window.pass() == pass && window.holds(day))
                .findFirst();
    }

    public boolean followed() {
        return missing.isEmpty();
    }
}
