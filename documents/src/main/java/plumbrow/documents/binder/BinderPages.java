package plumbrow.documents.binder;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import plumbrow.advice.assumptions.DrawSource;
import plumbrow.advice.calendar.SeasonTrials;
import plumbrow.advice.field.Field;
import plumbrow.advice.hours.HourlyWeather;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.Advice;
import plumbrow.advice.weighing.Adviser;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.advice.weighing.NextInputs;
import plumbrow.advice.weighing.OwnSeasons;
import plumbrow.advice.weighing.WeighingOptions;
import plumbrow.advice.years.BesideOneSeason;
import plumbrow.documents.binder.Html.Column;
import plumbrow.documents.picture.Markup;
import plumbrow.documents.picture.ProgramPalette;
import plumbrow.science.figure.Numbers;

/** All pages of the binder as one XHTML document: cover, a part for each field, sources of the shelf. */
final class BinderPages {
    /** Draws by which it is told what to tell next: enough to put it in order. */
    private static final int NEXT_DRAWS = 4_000;

    private BinderPages() {}

    static String html(
            Season season, Advice advice, String recordHead, Function<Field, Optional<HourlyWeather>> weather) {
        ProgramPalette palette = ProgramPalette.of(season);
        SeasonTrials seasons = new SeasonTrials(
                season, WeighingOptions.DEFAULT.withDraws(advice.draws()).withSeed(advice.seed()), weather);
        OwnSeasons own = OwnSeasons.of(season);
        WeighingOptions few = WeighingOptions.DEFAULT
                .withDraws(Math.min(NEXT_DRAWS, advice.draws()))
                .withSeed(advice.seed());
        DrawSource drawn = new DrawSource(few.draws(), few.seed());
        List<FieldPages> parts = new ArrayList<>();
        for (int i = 0; i < advice.fields().size(); i++) {
            FieldAdvice field = advice.fields().get(i);
            parts.add(new FieldPages(
                    field,
                    palette,
                    "field-" + (i + 1),
                    SeasonPages.of(seasons, field),
                    later(season, field),
                    next(season, own, field, few, drawn)));
        }
        Html html = new Html();
        html.markup("<html lang=\"en-US\">");
        head(html, advice, parts);
        html.open("body");
        cover(html, season, advice, recordHead, parts);
        parts.forEach(part -> part.write(html));
        ShelfSources.write(html, season);
        return html.close("body").close("html").toString();
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

    private static void head(Html html, Advice advice, List<FieldPages> parts) {
        html.open("head").element("title", "Binder for the " + advice.year() + " season");
        meta(html, "subject", "Advice for each field as of " + advice.asOf());
        meta(html, "author", advice.adviser());
        html.open("style").markup(style()).close("style");
        html.open("bookmarks").markup(bookmark("Cover", "cover"));
        parts.forEach(part -> html.markup(bookmark(part.field().field().name(), part.id())));
        html.markup(bookmark("Sources of the shelf", ShelfSources.ID)).close("bookmarks");
        html.close("head");
    }

    private static void meta(Html html, String name, String content) {
        html.markup("<meta name=\"" + name + "\" content=\"" + Markup.escape(content) + "\"/>");
    }

    private static String bookmark(String name, String id) {
        return "<bookmark name=\"" + Markup.escape(name) + "\" href=\"#" + id + "\"/>";
    }

    private static void cover(Html html, Season season, Advice advice, String recordHead, List<FieldPages> parts) {
        String growers = season.farms().stream()
                .map(farm -> farm.name() + " (" + farm.grower() + ")")
                .collect(Collectors.joining(", "));
        html.element("div", "head", "Season " + advice.year());
        html.element(
                "div", "foot", "Season " + advice.year() + ", as of " + advice.asOf() + ", by " + advice.adviser());
        html.markup("<div id=\"cover\">");
        html.element("h1", "Binder for the " + advice.year() + " season");
        html.element("p", "lead", growers.isEmpty() ? "No farm has been entered." : growers);
        html.element(
                "p",
                "Adviser: " + advice.adviser() + ". As of " + advice.asOf() + ". Weighed on "
                        + Numbers.fixed(advice.draws(), 0) + " simulated seasons, seed " + advice.seed()
                        + "; the same season, number and seed give the same pages.");
        if (!recordHead.isEmpty()) {
            html.element(
                    "p",
                    "Head of the book's record: " + recordHead
                            + ". With it, plumbrow book check --head shows later whether the record up to this day is still"
                            + " the same.");
        }
        html.element("h2", "What is advised");
        if (parts.isEmpty()) {
            html.element("p", "No field has been weighed, so nothing is advised.");
        } else {
            contents(html, parts);
        }
        cautions(html);
        html.close("div");
    }

    private static void contents(Html html, List<FieldPages> parts) {
        html.table(
                "contents",
                List.of(
                        Column.words("field", 23),
                        Column.figure("area, ac", 10),
                        Column.words("crop", 10),
                        Column.words("advice", 49),
                        Column.figure("page", 8)));
        for (FieldPages part : parts) {
            FieldAdvice field = part.field();
            html.open("tr")
                    .cell(field.field().name())
                    .figure(Numbers.fixed(field.field().acres(), 1))
                    .cell(field.field().crop().word())
                    .cell(field.sentence())
                    .open("td", "figure")
                    .markup("<a class=\"page\" title=\"the page of this field\" href=\"#" + part.id() + "\"></a>")
                    .close("td")
                    .close("tr");
        }
        html.endTable();
    }

    private static void cautions(Html html) {
        html.element("h2", "Before anything is bought or put on");
        html.list(StandingCautions.WHO_DECIDES);
        html.element("h2", "Who to call");
        html.list(StandingCautions.WHO_TO_CALL);
    }

    static String style() {
        try (InputStream in = BinderPages.class.getResourceAsStream("binder.css")) {
            if (in == null) {
                throw new IllegalStateException("binder.css is missing from this installation");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
