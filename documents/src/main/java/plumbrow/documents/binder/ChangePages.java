package plumbrow.documents.binder;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import plumbrow.advice.weighing.AdviceRange;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.advice.weighing.InformationValue;
import plumbrow.advice.weighing.SampleWorth;
import plumbrow.advice.weighing.UncertainInput;
import plumbrow.documents.binder.Html.Column;
import plumbrow.documents.picture.BandsPicture;
import plumbrow.documents.picture.ProgramPalette;
import plumbrow.science.figure.Numbers;

/** What would change the advice for a field: the range over which it holds, what knowing more is worth, and what is uncertain. */
record ChangePages(FieldAdvice field, ProgramPalette palette) {
    private static final int PICTURE_PX = 690;

    void write(Html html) {
        html.element("h2", "The range over which this holds");
        ranges(html);
        html.element("h2", "What matters most");
        matters(html);
        samples(html);
        html.element("h2", "What is uncertain, and who says so");
        inputs(html);
    }

    private void ranges(Html html) {
        if (field.ranges().isEmpty()) {
            html.element("p", "There are no two programs that may be advised, so there is no order to turn.");
            return;
        }
        if (field.ranges().stream().anyMatch(AdviceRange::turns)) {
            html.open("div", "picture")
                    .picture(BandsPicture.svg(field, palette, PICTURE_PX), BandsPicture.finding(field))
                    .close("div");
            html.list(field.ranges().stream()
                    .filter(AdviceRange::turns)
                    .map(AdviceRange::says)
                    .toList());
        }
        sentence(
                html,
                "By itself, within the range looked at, none of these changes which program is best: ",
                field.ranges().stream().filter(range -> !range.turns()).map(ChangePages::ranged));
    }

    private static String ranged(AdviceRange range) {
        return range.label() + " (" + ThreeFigures.of(range.plausibleLow()) + " to "
                + (ThreeFigures.of(range.plausibleHigh()) + " " + range.unit()).strip() + ")";
    }

    private static void sentence(Html html, String opening, Stream<String> parts) {
        String list = parts.collect(Collectors.joining("; "));
        if (!list.isEmpty()) {
            html.element("p", opening + list + ".");
        }
    }

    private void matters(Html html) {
        html.element(
                "p",
                "Knowing everything before deciding would be worth at most "
                        + Numbers.dollars(field.evpiUsdPerAcre(), 2) + "/ac, "
                        + Numbers.dollars(field.evpiUsdPerAcre() * field.field().acres(), 0)
                        + " on this field.");
        List<InformationValue> worthwhile =
                field.whatMatters().stream().filter(ChangePages::worthACent).toList();
        if (!worthwhile.isEmpty()) {
            worthwhile(html, worthwhile);
        }
        sentence(
                html,
                "Knowing any of these by itself is worth less than a cent an acre: ",
                field.whatMatters().stream()
                        .filter(knowing -> !worthACent(knowing))
                        .map(InformationValue::label));
    }

    private static boolean worthACent(InformationValue knowing) {
        return knowing.usdPerAcre() >= 0.005;
    }

    private static void worthwhile(Html html, List<InformationValue> worthwhile) {
        html.table(
                "plain",
                List.of(
                        Column.words("knowing", 55),
                        Column.figure("is worth at most, $/ac", 15),
                        Column.figure("from half of them, $/ac", 15),
                        Column.figure("on this field, $", 15)));
        for (InformationValue knowing : worthwhile) {
            html.open("tr")
                    .cell(knowing.label())
                    .figure(Numbers.fixed(knowing.usdPerAcre(), 2))
                    .figure(Numbers.fixed(knowing.halfSampleUsdPerAcre(), 2))
                    .figure(Numbers.fixed(knowing.usdField(), 0))
                    .close("tr");
        }
        html.endTable();
    }

    private void samples(Html html) {
        if (field.samples().isEmpty()) {
            return;
        }
        html.element("h2", "Scouting that could be done first");
        html.table(
                "plain",
                List.of(
                        Column.words("of", 20),
                        Column.figure("number looked at", 11),
                        Column.figure("costs, $", 11),
                        Column.figure("worth, $/ac", 11),
                        Column.figure("worth less cost, $ on this field", 14),
                        Column.words("in words", 33)));
        for (SampleWorth worth : field.samples()) {
            html.open("tr")
                    .cell(worth.insect())
                    .figure(Numbers.fixed(worth.sample().size(), 0))
                    .figure(Numbers.fixed(worth.sample().costUsd(), 0))
                    .figure(Numbers.fixed(worth.usdPerAcre(), 2))
                    .figure(Numbers.fixed(worth.netUsdField(), 0))
                    .cell(worth.says())
                    .close("tr");
        }
        html.endTable();
    }

    private void inputs(Html html) {
        if (field.inputs().isEmpty()) {
            html.element("p", "Nothing was taken as uncertain.");
            return;
        }
        html.table(
                "plain",
                List.of(
                        Column.words("input", 22),
                        Column.words("unit", 8),
                        Column.words("how it is spread", 19),
                        Column.figure("mean", 7),
                        Column.figure("10 of 100 below", 8),
                        Column.figure("10 of 100 above", 8),
                        Column.words("source", 28)));
        for (UncertainInput input : field.inputs()) {
            html.open("tr")
                    .cell(input.label())
                    .cell(input.unit())
                    .cell(DistributionWords.of(input.distribution()))
                    .figure(ThreeFigures.of(input.mean()))
                    .figure(ThreeFigures.of(input.band().low()))
                    .figure(ThreeFigures.of(input.band().high()))
                    .cell(input.source())
                    .close("tr");
        }
        html.endTable();
    }
}
