package plumbrow.documents.binder;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbrow.advice.assumptions.DrawSource;
import plumbrow.advice.calendar.SeasonTrials;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.Adviser;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.advice.weighing.NextInputs;
import plumbrow.advice.weighing.OwnSeasons;
import plumbrow.advice.weighing.WeighingOptions;
import plumbrow.advice.years.BesideOneSeason;
import plumbrow.documents.picture.ProgramPalette;

/** Makes the annex: odds, findings, ranges and workings of each field, and the sources of the shelf. */
final class Annexes {
    /** Draws by which it is told what to tell next: enough to put it in order. */
    private static final int NEXT_DRAWS = 4_000;

    private Annexes() {}

    static List<Sheet> of(Season season, Binder.Annex annex) {
        ProgramPalette palette = ProgramPalette.of(season);
        WeighingOptions options = WeighingOptions.DEFAULT
                .withDraws(annex.advice().draws())
                .withSeed(annex.advice().seed());
        SeasonTrials seasons = new SeasonTrials(season, options, annex.weather());
        OwnSeasons own = OwnSeasons.of(season);
        WeighingOptions few =
                options.withDraws(Math.min(NEXT_DRAWS, annex.advice().draws()));
        DrawSource drawn = new DrawSource(few.draws(), few.seed());
        List<Sheet> sheets = new ArrayList<>();
        for (FieldAdvice field : annex.advice().fields()) {
            sheets.add(new AnnexSheet.OfField(new FieldPages(
                    field,
                    palette,
                    SeasonPages.of(seasons, field),
                    later(season, field),
                    next(season, own, field, few, drawn))));
        }
        sheets.add(new AnnexSheet.OfShelf(season));
        return sheets;
    }

    /** As {@link #later}: empty where the field has left the season. */
    private static Optional<NextInputs> next(
            Season season, OwnSeasons own, FieldAdvice advice, WeighingOptions options, DrawSource drawn) {
        return season.programs(advice.field().name()).isEmpty()
                ? Optional.empty()
                : season.field(advice.field().name()).map(field -> Adviser.next(own.of(field), options, drawn));
    }

    /** The field of an advice may have left the season since; then nothing is said. */
    private static String later(Season season, FieldAdvice advice) {
        return season.programs(advice.field().name()).isEmpty()
                ? ""
                : season.field(advice.field().name())
                        .map(field -> BesideOneSeason.orWhyNot(season, field))
                        .orElse("");
    }
}
