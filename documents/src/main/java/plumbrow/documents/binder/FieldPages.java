package plumbrow.documents.binder;

import java.util.List;
import java.util.Optional;
import plumbrow.advice.calendar.SeasonTrial;
import plumbrow.advice.weighing.Comparison;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.advice.weighing.GainDoubt;
import plumbrow.advice.weighing.NextInput;
import plumbrow.advice.weighing.NextInputs;
import plumbrow.advice.weighing.WeighedProgram;
import plumbrow.documents.binder.Html.Column;
import plumbrow.documents.picture.ProgramPalette;
import plumbrow.documents.picture.StripPicture;
import plumbrow.science.figure.Numbers;

/**
 * The annex of one field, in the order of a person's questions: what to do, how sure, is it allowed, what
 * would change it, and the arithmetic.
 *
 * @param later what the seasons to come make of it; empty where nothing is to be said of them
 * @param season the advised program day by day, else the baseline; empty where the field's weeds can't be followed
 * @param next what to tell or look up next; empty where nothing is to be said of it
 */
record FieldPages(
        FieldAdvice field,
        ProgramPalette palette,
        Optional<SeasonTrial> season,
        String later,
        Optional<NextInputs> next) {
    private static final int PICTURE_PX = 690;
    private static final int MOST_IN_A_PICTURE = 8; // what fits under the advice on one page

    void write(Html html) {
        String name = field.field().name();
        html.element("h1", name);
        html.element("p", "quiet", place());
        html.element("p", "lead", field.sentence());
        paragraph(html, "Why", field.reason());
        GainDoubt gain = field.gainDoubt();
        if (gain != null) {
            paragraph(html, "What the doubt is", gain.says());
        }
        paragraph(html, "In doubt", field.doubt());
        paragraph(html, "Later seasons", later);
        for (String picture : StripPicture.svgs(field, palette, PICTURE_PX, MOST_IN_A_PICTURE)) {
            html.open("div", "picture")
                    .picture(picture, StripPicture.finding(field))
                    .close("div");
        }
        if (!field.programs().isEmpty()) {
            programs(html);
        }
        comparisons(html);
        next.ifPresent(inputs -> next(html, inputs));
        season.ifPresent(trial -> SeasonPages.write(html, trial));
        new FindingPages(field).write(html);
        new ChangePages(field, palette).write(html);
        new WorkingPages(field).write(html);
        cautions(html);
    }

    private String place() {
        return field.field().farm() + ", " + field.grower() + ". "
                + Numbers.fixed(field.field().acres(), 1) + " ac of "
                + field.field().crop().word() + ", " + field.field().county() + " County, "
                + field.field().state()
                + ".";
    }

    private static void next(Html html, NextInputs next) {
        html.element("h2", "Tell me next");
        if (next.inputs().isEmpty()) {
            html.element("p", next.says());
        } else {
            html.list(next.inputs().stream().map(NextInput::says).toList());
        }
    }

    private static void paragraph(Html html, String head, String sentence) {
        if (!sentence.isBlank()) {
            html.open("p").element("b", head + ": ").words(sentence).close("p");
        }
    }

    private void programs(Html html) {
        html.element("h2", "The programs");
        html.table(
                field.programs().size() <= MOST_IN_A_PICTURE ? "programs whole" : "programs",
                List.of(
                        Column.words("program", 20),
                        Column.words("status", 12),
                        Column.figure("cost, $/ac", 7),
                        Column.figure("mean yield, bu/ac", 7),
                        Column.figure("mean margin, $/ac", 8),
                        Column.figure("10 of 100 below, $/ac", 7),
                        Column.figure("half below, $/ac", 7),
                        Column.figure("10 of 100 above, $/ac", 7),
                        Column.figure("shortfall, $/ac", 7),
                        Column.figure("beats baseline in", 9),
                        Column.figure("best of all in", 9)));
        field.programs().forEach(program -> program(html, program));
        html.endTable();
        double widest = field.programs().stream()
                .mapToDouble(program -> 2 * program.standardErrorUsdPerAcre())
                .max()
                .orElse(0);
        html.element(
                "p",
                "quiet",
                "Margin is what the operator keeps over these inputs. Shortfall (expected shortfall): mean of the worst 10 of 100 draws. With "
                        + Numbers.fixed(field.draws(), 0) + " simulated seasons the means are good to ± "
                        + Numbers.dollars(widest, 2) + "/ac or better. "
                        + field.equal().words());
    }

    private void program(Html html, WeighedProgram program) {
        html.open("tr").open("td");
        html.markup("<span class=\"swatch\" style=\"background-color:" + palette.colour(program) + "\"></span>");
        html.element("b", program.name());
        if (!program.note().isBlank()) {
            html.markup("<br/>").element("span", "quiet", program.note());
        }
        if (!program.scouted().isEmpty()) {
            html.markup("<br/>").element("span", "quiet", program.waits());
        }
        html.close("td").open("td");
        html.standing(program.standing());
        if (program.name().equals(field.advised())) {
            html.markup("<br/>").element("b", "advised");
        } else if (field.leading().contains(program.name())) {
            html.markup("<br/>").element("b", "about equal");
        }
        html.close("td")
                .figure(Numbers.fixed(program.costUsdPerAcre(), 2))
                .figure(Numbers.fixed(program.meanYieldBuPerAcre(), 1))
                .figure(Numbers.fixed(program.meanMarginUsdPerAcre(), 0))
                .figure(Numbers.fixed(program.margin().low(), 0))
                .figure(Numbers.fixed(program.margin().middle(), 0))
                .figure(Numbers.fixed(program.margin().high(), 0))
                .figure(Numbers.fixed(program.shortfallUsdPerAcre(), 0))
                .figure(program.baseline() ? "the baseline" : field.odds(program.chanceBeatsBaseline()))
                .figure(field.odds(program.chanceBest()))
                .close("tr");
    }

    private void comparisons(Html html) {
        if (field.comparisons().isEmpty()) {
            return;
        }
        html.element("h2", "The advised program against each other one");
        html.table(
                "plain",
                List.of(
                        Column.words("against", 30),
                        Column.figure("mean difference, $/ac", 13),
                        Column.figure("80 of 100 from, $/ac", 12),
                        Column.figure("to, $/ac", 10),
                        Column.words("earns more in", 13),
                        Column.words("better whatever the luck", 11),
                        Column.words("better for the careful", 11)));
        for (Comparison pair : field.comparisons()) {
            html.open("tr")
                    .cell(
                            pair.program().equals(field.advised())
                                    ? pair.other()
                                    : pair.program() + " over " + pair.other())
                    .figure(Numbers.fixed(pair.meanDifferenceUsdPerAcre(), 2))
                    .figure(Numbers.fixed(pair.difference().low(), 0))
                    .figure(Numbers.fixed(pair.difference().high(), 0))
                    .cell(field.odds(pair))
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
        html.element("p", String.join(" ", StandingCautions.WHO_TO_CALL));
    }
}
