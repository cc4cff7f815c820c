package plumbrow.documents.binder;

import java.util.List;
import java.util.Optional;
import plumbrow.advice.calendar.SeasonTrial;
import plumbrow.advice.weighing.Comparison;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.advice.weighing.GainDoubt;
import plumbrow.advice.weighing.WeighedCourse;
import plumbrow.documents.binder.Html.Column;
import plumbrow.documents.picture.CoursePalette;
import plumbrow.documents.picture.StripPicture;
import plumbrow.science.figure.Numbers;

/**
 * The part of the binder for one field, in the order of a person's questions: what to do, how sure, is it allowed, what
 * would change it, and the arithmetic.
 *
 * @param id under which contents and bookmarks find it
 * @param season the advised course day by day, else the baseline; empty where the field's weeds can't be followed
 */
record FieldPages(FieldAdvice field, CoursePalette palette, String id, Optional<SeasonTrial> season) {
    private static final int PICTURE_PX = 690;
    private static final int MOST_IN_A_PICTURE = 8; // what fits under the advice on one page

    void write(Html html) {
        String name = field.field().name();
        html.markup("<div class=\"part\" id=\"" + id + "\">");
        html.element("div", "head", name);
        html.element("h1", name);
        html.element("p", "quiet", place());
        html.element("p", "lead", field.sentence());
        paragraph(html, "Why", field.reason());
        GainDoubt gain = field.gainDoubt();
        if (gain != null) {
            paragraph(html, "What the doubt is", gain.says());
        }
        paragraph(html, "In doubt", field.doubt());
        for (String picture : StripPicture.svgs(field, palette, PICTURE_PX, MOST_IN_A_PICTURE)) {
            html.open("div", "picture")
                    .picture(picture, StripPicture.finding(field))
                    .close("div");
        }
        if (!field.courses().isEmpty()) {
            courses(html);
        }
        comparisons(html);
        season.ifPresent(trial -> SeasonPages.write(html, trial));
        new FindingPages(field).write(html);
        new ChangePages(field, palette).write(html);
        new WorkingPages(field).write(html);
        cautions(html);
        html.close("div");
    }

    private String place() {
        return field.field().farm() + ", " + field.grower() + ". "
                + Numbers.fixed(field.field().acres(), 1) + " ac of "
                + field.field().crop().word() + ", " + field.field().county() + " County, "
                + field.field().state()
                + ".";
    }

    private static void paragraph(Html html, String head, String sentence) {
        if (!sentence.isBlank()) {
            html.open("p").element("b", head + ": ").words(sentence).close("p");
        }
    }

    private void courses(Html html) {
        html.element("h2", "The courses");
        html.table(
                field.courses().size() <= MOST_IN_A_PICTURE ? "courses whole" : "courses",
                List.of(
                        Column.words("course", 20),
                        Column.words("standing", 12),
                        Column.figure("cost, $/ac", 7),
                        Column.figure("mean yield, bu/ac", 7),
                        Column.figure("mean margin, $/ac", 8),
                        Column.figure("10 of 100 below, $/ac", 7),
                        Column.figure("half below, $/ac", 7),
                        Column.figure("10 of 100 above, $/ac", 7),
                        Column.figure("worst tenth, $/ac", 7),
                        Column.figure("beats baseline in", 9),
                        Column.figure("best of all in", 9)));
        field.courses().forEach(course -> course(html, course));
        html.endTable();
        double widest = field.courses().stream()
                .mapToDouble(course -> 2 * course.standardErrorUsdPerAcre())
                .max()
                .orElse(0);
        html.element(
                "p",
                "quiet",
                "Margin is what the operator keeps over these inputs. Worst tenth: mean of the worst 10 of 100 draws. With "
                        + Numbers.fixed(field.draws(), 0) + " draws the means are good to ± "
                        + Numbers.dollars(widest, 2) + "/ac or better. "
                        + field.equal().words());
    }

    private void course(Html html, WeighedCourse course) {
        html.open("tr").open("td");
        html.markup("<span class=\"swatch\" style=\"background-color:" + palette.colour(course) + "\"></span>");
        html.element("b", course.name());
        if (!course.note().isBlank()) {
            html.markup("<br/>").element("span", "quiet", course.note());
        }
        html.close("td").open("td");
        html.standing(course.standing());
        if (course.name().equals(field.advised())) {
            html.markup("<br/>").element("b", "advised");
        } else if (field.leading().contains(course.name())) {
            html.markup("<br/>").element("b", "about equal");
        }
        html.close("td")
                .figure(Numbers.fixed(course.costUsdPerAcre(), 2))
                .figure(Numbers.fixed(course.meanYieldBuPerAcre(), 1))
                .figure(Numbers.fixed(course.meanMarginUsdPerAcre(), 0))
                .figure(Numbers.fixed(course.margin().low(), 0))
                .figure(Numbers.fixed(course.margin().middle(), 0))
                .figure(Numbers.fixed(course.margin().high(), 0))
                .figure(Numbers.fixed(course.shortfallUsdPerAcre(), 0))
                .figure(course.baseline() ? "the baseline" : field.odds(course.chanceBeatsBaseline()))
                .figure(field.odds(course.chanceBest()))
                .close("tr");
    }

    private void comparisons(Html html) {
        if (field.comparisons().isEmpty()) {
            return;
        }
        html.element("h2", "The advised course against each other one");
        html.table(
                "plain",
                List.of(
                        Column.words("against", 30),
                        Column.figure("mean difference, $/ac", 13),
                        Column.figure("80 of 100 draws from, $/ac", 12),
                        Column.figure("to, $/ac", 10),
                        Column.words("earns more in", 13),
                        Column.words("better whatever the luck", 11),
                        Column.words("better for the careful", 11)));
        for (Comparison pair : field.comparisons()) {
            html.open("tr")
                    .cell(
                            pair.course().equals(field.advised())
                                    ? pair.other()
                                    : pair.course() + " over " + pair.other())
                    .figure(Numbers.fixed(pair.meanDifferenceUsdPerAcre(), 2))
                    .figure(Numbers.fixed(pair.difference().low(), 0))
                    .figure(Numbers.fixed(pair.difference().high(), 0))
                    .cell(field.odds(pair.chanceBetter()))
                    .cell(pair.firstDegree())
                    .cell(pair.secondDegree())
                    .close("tr");
        }
        html.endTable();
    }

    private void cautions(Html html) {
        html.element("h2", "Cautions");
        html.list(field.cautions());
        html.list(StandingCautions.WHO_DECIDES.subList(0, 2));
        html.element("p", "quiet", "Who to call stands on the cover.");
    }
}
