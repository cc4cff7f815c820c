package plumbrow.advice.pestpage;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbrow.advice.field.Field;
import plumbrow.advice.season.Season;
import plumbrow.advice.weedseason.SeasonHeat;
import plumbrow.advice.weedseason.WeedSeasons;
import plumbrow.science.figure.Numbers;
import plumbrow.science.insects.HeatCalendar;
import plumbrow.science.reference.Sources;
import plumbrow.science.weeds.WeedEmergence;
import plumbrow.science.weedseason.Species;

/** When a pest comes: weeds by their thermal time, insects by their degree days, in the days or months of the field. */
final class ComingDays {
    private static final double[] SHARES = {.1, .5, .9};

    /** Days by which a flush may be early or late, as the weed season draws it: common practice, no source. */
    private static final int OWN_DAYS = 10;

    private static final int BORROWED_DAYS = 20;
    private static final String NO_DAYS =
            "type twelve months of the nearest station into the sheet climate, or its days into the sheet of weather days.";

    private ComingDays() {}

    static Coming weed(Season season, Field field, String weed) {
        String figure = WeedEmergence.FIGURE.id();
        Optional<Species> species = WeedSeasons.species(season, weed);
        Optional<SeasonHeat> heat = SeasonHeat.of(season, field);
        if (species.isEmpty()) {
            return Coming.unknown(
                    field.name(),
                    figure,
                    "No curve of emergence is kept for it. Name a weed that comes up like it in the sheet like_weeds,"
                            + " or ask extension for its place in the order of emergence.");
        }
        if (heat.isEmpty()) {
            return Coming.unknown(field.name(), figure, "The field's temperatures are not known: " + NO_DAYS);
        }
        Species known = species.get();
        boolean borrowed = !known.name().equalsIgnoreCase(weed);
        List<Coming.Day> days = new ArrayList<>();
        for (double share : SHARES) {
            days.add(new Coming.Day(
                    Numbers.plain(100 * share) + " % up",
                    heat.get().up(known.emergence(), share).orElse(null)));
        }
        List<String> reserves = new ArrayList<>();
        reserves.add("Half up at " + Numbers.plain(known.emergence().halfDegreeDays()) + " soil degree days (°C, base "
                + Numbers.plain(known.emergence().baseC()) + "), shape "
                + Numbers.plain(known.emergence().shape())
                + (borrowed ? ", borrowed from " + known.name() : "") + ".");
        heat.get()
                .upInSeasons(known.emergence(), .5)
                .map(ComingDays::between)
                .map(words -> "Half up " + words)
                .ifPresent(reserves::add);
        late(heat.get(), LocalDate.of(season.year(), 1, 1)).ifPresent(reserves::add);
        return new Coming(
                field.name(),
                days,
                borrowed ? BORROWED_DAYS : OWN_DAYS,
                heat.get().source() + "; curve as in the weed season",
                figure,
                reserves,
                null);
    }

    static Coming insect(Season season, Field field, String insect) {
        Optional<HeatCalendar> calendar = HeatCalendar.find(insect);
        Optional<SeasonHeat> heat = SeasonHeat.of(season, field);
        if (calendar.isEmpty()) {
            return Coming.unknown(
                    field.name(),
                    null,
                    "No calendar counted from a fixed day is kept for it. Follow traps and the notices of the state's"
                            + " extension, and the figures under scouting.");
        }
        String figure = calendar.get().figure().id();
        if (heat.isEmpty()) {
            return Coming.unknown(field.name(), figure, "The field's temperatures are not known: " + NO_DAYS);
        }
        List<Coming.Day> days = calendar.get().events().stream()
                .map(event -> new Coming.Day(
                        event.says() + " (" + Numbers.plain(event.degreeDaysF()) + ")",
                        heat.get().reached(calendar.get(), event.degreeDaysF()).orElse(null)))
                .toList();
        List<String> reserves = new ArrayList<>();
        LocalDate from = LocalDate.ofYearDay(season.year(), calendar.get().fromDayOfYear());
        reserves.add("Counted in " + calendar.get().rule().words() + ", from "
                + (from.getDayOfYear() == 1 ? "1 January" : "1 March") + ".");
        if (!calendar.get().reserve().isEmpty()) {
            reserves.add(calendar.get().reserve());
        }
        calendar.get().events().stream()
                .findFirst()
                .flatMap(event -> heat.get()
                        .reachedInSeasons(calendar.get(), event.degreeDaysF())
                        .map(ComingDays::between)
                        .map(words -> event.says() + ": " + words))
                .ifPresent(reserves::add);
        late(heat.get(), from).ifPresent(reserves::add);
        return new Coming(
                field.name(),
                days,
                0,
                heat.get().source() + "; "
                        + Sources.full(calendar.get().figure().cited()),
                figure,
                reserves,
                null);
    }

    private static String between(SeasonHeat.Days days) {
        return days.early().equals(days.late())
                ? "on " + days.middle() + " by the days on file."
                : "between " + days.early() + " and " + days.late() + " in eight seasons of ten.";
    }

    private static Optional<String> late(SeasonHeat heat, LocalDate from) {
        return heat.firstDay().isAfter(from)
                ? Optional.of("The days on file begin on " + heat.firstDay()
                        + "; heat before that is missing, so the dates may be late.")
                : Optional.empty();
    }
}
