package plumbrow.app.command.said;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import plumbrow.advice.weighing.Band;
import plumbrow.advice.weighing.Odds;
import plumbrow.advice.years.Assumption;
import plumbrow.advice.years.Failure;
import plumbrow.advice.years.RotationAhead;
import plumbrow.advice.years.RotationAhead.InsectAhead;
import plumbrow.advice.years.RotationAhead.Share;
import plumbrow.advice.years.RotationAhead.WeedAhead;
import plumbrow.advice.years.RotationAhead.YearMargin;
import plumbrow.advice.years.YearsAhead;
import plumbrow.science.figure.Numbers;
import plumbrow.science.figure.Step;

/** A look ahead said in text: what earns most and what holds, then each rotation year by year. */
public final class YearsWords {
    private YearsWords() {}

    public static String of(YearsAhead ahead) {
        Paper paper = new Paper();
        paper.heading(ahead.field().name() + ": " + ahead.sentence()).gap();
        for (String one : List.of(ahead.nowAndLater(), ahead.decides())) {
            if (!one.isEmpty()) {
                paper.prose(one).gap();
            }
        }
        paper.table(glance(ahead));
        for (RotationAhead rotation : ahead.rotations()) {
            add(paper, ahead, rotation);
        }
        paper.heading("What was taken");
        ahead.assumptions().forEach(one -> paper.prose("  ", taken(one)));
        paper.gap();
        ahead.cautions().forEach(caution -> paper.prose("Mind  ", caution));
        return paper.gap()
                .prose(ahead.firstYear() + " and on, " + ahead.options().seasons() + " seasons, "
                        + Numbers.fixed(ahead.options().draws(), 0) + " simulated seasons from seed "
                        + ahead.options().seed() + ". All money is the operator's, in $/ac of the field.")
                .text();
    }

    /** An assumption in words. */
    public static String taken(Assumption one) {
        return one.label() + ": " + one.words() + ". Source: " + one.source() + ".";
    }

    private static TextTable glance(YearsAhead ahead) {
        TextTable table = TextTable.empty()
                .words("Every year")
                .numbers("a year", "$/ac")
                .numbers("present value", "$/ac")
                .numbers("10 of 100 below", "$/ac")
                .numbers("10 of 100 above", "$/ac")
                .words("earns most in")
                .words("control fails by")
                .words("status");
        for (RotationAhead one : ahead.rotations()) {
            table.row(
                    (one.name().equals(ahead.best()) ? "▸ " : "  ") + one.name(),
                    Numbers.fixed(one.perYearUsdPerAcre(), 0),
                    Numbers.fixed(one.presentValueUsdPerAcre(), 0),
                    Numbers.fixed(one.presentValue().low(), 0),
                    Numbers.fixed(one.presentValue().high(), 0),
                    ahead.rotations().size() == 1 ? "" : Odds.words(one.chanceMost()),
                    by(one.fails(), ahead.firstYear()),
                    one.standing().word());
        }
        return table;
    }

    private static String by(Failure fails, int firstYear) {
        Integer median = fails.medianYear();
        return median == null ? "not in half of them" : String.valueOf(firstYear + median - 1);
    }

    private static void add(Paper paper, YearsAhead ahead, RotationAhead rotation) {
        paper.heading(rotation.name());
        rotation.weeds().forEach(weed -> paper.prose("  ", weed.fails().says()));
        rotation.insects().forEach(insect -> paper.prose("  ", insect.fails().says()));
        rotation.findings()
                .forEach(finding -> paper.prose(
                        "  ", finding.standing().word() + ": " + finding.subject() + ". " + finding.says()));
        if (ahead.rotations().size() == 1 || rotation.name().equals(ahead.best())) {
            paper.gap().table(years(rotation));
            rare(rotation).forEach(line -> paper.prose("  ", line));
        }
        rotation.weeds().stream().filter(weed -> !weed.followed()).forEach(weed -> paper.prose("  ", weed.source()));
        if (ahead.rotations().size() == 1) {
            paper.heading("How the present value comes about");
            rotation.working().stream().map(Step::text).forEach(line -> paper.prose("  ", line));
        }
    }

    private static TextTable years(RotationAhead rotation) {
        TextTable table = TextTable.empty().words("Year").words("crop").numbers("margin", "$/ac");
        for (WeedAhead weed : rotation.weeds()) {
            if (weed.followed()) {
                table.numbers(weed.weed(), "seeds/m²");
                shown(weed.resistant()).forEach(share -> table.numbers("resists " + share.group(), "% of seed"));
            }
            table.numbers("failed", "chance, %");
        }
        for (InsectAhead insect : rotation.insects()) {
            shown(insect.resistant())
                    .forEach(share -> table.numbers(insect.insect() + ", " + share.group(), "% of copies"));
            table.numbers("failed", "chance, %");
        }
        List<YearMargin> years = rotation.years();
        for (int y = 0; y < years.size(); y++) {
            table.row(row(rotation, years.get(y), y).toArray(String[]::new));
        }
        return table;
    }

    private static List<String> row(RotationAhead rotation, YearMargin year, int y) {
        List<String> cells = new ArrayList<>(
                List.of(String.valueOf(year.year()), year.crop(), Numbers.fixed(year.meanMarginUsdPerAcre(), 0)));
        for (WeedAhead weed : rotation.weeds()) {
            if (weed.followed()) {
                cells.add(spread(weed.seedsM2().get(y), 1));
                shown(weed.resistant())
                        .forEach(share -> cells.add(spread(share.share().get(y), 100)));
            }
            cells.add(Numbers.fixed(100 * weed.fails().chanceByYear().get(y), 0));
        }
        for (InsectAhead insect : rotation.insects()) {
            shown(insect.resistant())
                    .forEach(share -> cells.add(spread(share.share().get(y), 100)));
            cells.add(Numbers.fixed(100 * insect.fails().chanceByYear().get(y), 0));
        }
        return cells;
    }

    private static List<Share> shown(List<Share> shares) {
        return shares.stream().filter(Share::shows).toList();
    }

    private static List<String> rare(RotationAhead rotation) {
        List<String> lines = new ArrayList<>();
        for (WeedAhead weed : rotation.weeds()) {
            rare(weed.weed(), weed.resistant(), lines);
        }
        rotation.insects().forEach(insect -> rare(insect.insect(), insect.resistant(), lines));
        return lines;
    }

    private static void rare(String pest, List<Share> shares, List<String> lines) {
        List<String> groups = shares.stream()
                .filter(share -> !share.shows())
                .map(Share::group)
                .toList();
        if (!groups.isEmpty()) {
            lines.add("Resistance of " + pest + " to " + String.join(", ", groups)
                    + " stays below 1 % in 90 of 100 simulated seasons.");
        }
    }

    /** The middle, and the band of eight in ten draws: "1,200 (300–9,000)". */
    private static String spread(Band band, double times) {
        return twoDigits(times * band.middle()) + " (" + twoDigits(times * band.low()) + "–"
                + twoDigits(times * band.high()) + ")";
    }

    private static String twoDigits(double value) {
        return value == 0
                ? "0"
                : value < .01
                        ? "<0.01"
                        : Numbers.plain(
                                new BigDecimal(value).round(new MathContext(2)).doubleValue());
    }
}
