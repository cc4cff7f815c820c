package plumbrow.documents.binder;

import java.util.List;
import java.util.Locale;
import plumbrow.advice.weighing.BreakEven;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.advice.weighing.Knowing;
import plumbrow.advice.weighing.SampleWorth;
import plumbrow.advice.weighing.UncertainInput;
import plumbrow.documents.binder.Html.Column;
import plumbrow.science.figure.Numbers;

/** What would change the advice for a field: break-evens, what knowing more is worth, and what is uncertain. */
record ChangePages(FieldAdvice field) {
    void write(Html html) {
        html.element("h2", "What would change it");
        breakEvens(html);
        html.element("h2", "What matters most");
        matters(html);
        samples(html);
        html.element("h2", "What is uncertain, and who says so");
        inputs(html);
    }

    private void breakEvens(Html html) {
        if (field.breakEvens().isEmpty()) {
            html.element("p", "There are no two courses that may be advised, so there is no order to turn.");
            return;
        }
        html.table(
                "plain",
                List.of(
                        Column.words("input", 27),
                        Column.words("unit", 10),
                        Column.figure("mean now", 10),
                        Column.figure("looked at from", 10),
                        Column.figure("to", 9),
                        Column.figure("order turns at", 10),
                        Column.words("in words", 24)));
        for (BreakEven even : field.breakEvens()) {
            html.open("tr")
                    .cell(even.label())
                    .cell(even.unit())
                    .figure(Numbers.plain(rounded(even.likely())))
                    .figure(Numbers.plain(rounded(even.plausibleLow())))
                    .figure(Numbers.plain(rounded(even.plausibleHigh())))
                    .figure(even.value() == null ? "never" : Numbers.plain(rounded(even.value())))
                    .cell(even.says())
                    .close("tr");
        }
        html.endTable();
    }

    private void matters(Html html) {
        html.element(
                "p",
                "Knowing everything before deciding would be worth at most "
                        + Numbers.dollars(field.worthOfKnowingAllUsdPerAcre(), 2) + "/ac, "
                        + Numbers.dollars(
                                field.worthOfKnowingAllUsdPerAcre()
                                        * field.field().acres(),
                                0)
                        + " on this field.");
        if (field.whatMatters().isEmpty()) {
            return;
        }
        html.table(
                "plain",
                List.of(
                        Column.words("knowing", 32),
                        Column.figure("is worth at most, $/ac", 13),
                        Column.figure("from half the draws, $/ac", 13),
                        Column.figure("on this field, $", 12),
                        Column.words("in words", 30)));
        for (Knowing knowing : field.whatMatters()) {
            html.open("tr")
                    .cell(knowing.label())
                    .figure(Numbers.fixed(knowing.usdPerAcre(), 2))
                    .figure(Numbers.fixed(knowing.halfSampleUsdPerAcre(), 2))
                    .figure(Numbers.fixed(knowing.usdField(), 0))
                    .cell(knowing.says())
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
                        Column.words("input", 24),
                        Column.words("unit", 9),
                        Column.words("how it is spread", 21),
                        Column.figure("mean", 8),
                        Column.figure("1 in 10 below", 8),
                        Column.figure("1 in 10 above", 8),
                        Column.words("source", 22)));
        for (UncertainInput input : field.inputs()) {
            html.open("tr")
                    .cell(input.label())
                    .cell(input.unit())
                    .cell(LawWords.of(input.law()))
                    .figure(Numbers.plain(rounded(input.mean())))
                    .figure(Numbers.plain(rounded(input.band().low())))
                    .figure(Numbers.plain(rounded(input.band().high())))
                    .cell(input.source())
                    .close("tr");
        }
        html.endTable();
    }

    /** Three figures: no more than a mean over the draws supports. */
    private static double rounded(double value) {
        return value == 0 ? 0 : Double.parseDouble(String.format(Locale.ROOT, "%.2e", value));
    }
}
