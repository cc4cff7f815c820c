package plumbrow.documents.picture;

import java.util.ArrayList;
import java.util.List;
import plumbrow.advice.weighing.Band;
import plumbrow.advice.years.Failure;
import plumbrow.advice.years.RotationAhead;
import plumbrow.advice.years.RotationAhead.InsectAhead;
import plumbrow.advice.years.RotationAhead.Share;
import plumbrow.advice.years.RotationAhead.WeedAhead;
import plumbrow.advice.years.RotationAhead.YearMargin;
import plumbrow.advice.years.YearsAhead;
import plumbrow.documents.picture.Canvas.Anchor;
import plumbrow.documents.picture.YearPanel.Line;

/**
 * A rotation year by year: margin, seed in the soil, resistance, and the chance that control has failed, each in its panel over
 * the same years. A band holds eight draws of ten, the line with dots is the middle.
 */
public final class YearsPicture {
    static final int NARROWEST = 280;
    private static final double SCALE_ROOM = 62;
    private static final double PANEL = 84;

    private YearsPicture() {}

    /** The picture of one rotation, {@code widthPx} wide; below 280 px it is drawn for 280 and scaled. */
    public static String svg(YearsAhead ahead, RotationAhead rotation, int widthPx) {
        double width = Math.max(NARROWEST, widthPx);
        Canvas canvas = new Canvas();
        double y = 0;
        String words = "Band: 80 of 100. Line: the middle. Seed goes by powers of ten.";
        for (String line : Lettering.wrap(words, 11.5, false, width - 8, 3)) {
            y += 15;
            canvas.text(2, y, line, 11.5, Canvas.QUIET, false, Anchor.START);
        }
        List<YearPanel> panels = panels(rotation);
        for (int i = 0; i < panels.size(); i++) {
            boolean last = i == panels.size() - 1;
            y = panels.get(i).draw(canvas, SCALE_ROOM, width - 6, y + 6, PANEL, ahead.firstYear(), last);
        }
        return canvas.svg(width, y + 4, title(ahead, rotation), finding(rotation));
    }

    private static List<YearPanel> panels(RotationAhead rotation) {
        List<YearPanel> panels = new ArrayList<>();
        List<Line> margins = List.of(new Line(
                "margin", rotation.years().stream().map(YearMargin::margin).toList()));
        panels.add(new YearPanel(
                "Margin over these inputs, $/ac",
                margins,
                YearScale.money(YearPanel.lowest(margins), YearPanel.highest(margins))));
        List<Line> seeds = rotation.weeds().stream()
                .filter(WeedAhead::followed)
                .map(weed -> new Line(weed.weed(), weed.seedsM2()))
                .toList();
        if (!seeds.isEmpty()) {
            String of = seeds.size() == 1 ? "Seed of " + seeds.get(0).name() : "Weed seed";
            panels.add(new YearPanel(
                    of + " in the soil in spring, seeds/m²",
                    seeds,
                    YearScale.powers(YearPanel.lowest(seeds), YearPanel.highest(seeds))));
        }
        for (WeedAhead weed : rotation.weeds()) {
            resistance(panels, "Seed of " + weed.weed() + " that resists", "group ", weed.resistant());
        }
        for (InsectAhead insect : rotation.insects()) {
            resistance(panels, "Resistant copies in " + insect.insect(), "", insect.resistant());
        }
        failures(panels, rotation);
        return panels;
    }

    private static void resistance(List<YearPanel> panels, String title, String before, List<Share> shares) {
        List<Line> lines = shares.stream()
                .filter(Share::shows)
                .map(share -> new Line(
                        before + share.group(),
                        share.share().stream().map(YearsPicture::percent).toList()))
                .toList();
        if (!lines.isEmpty()) {
            String only = lines.size() == 1
                    ? (before.isEmpty() ? ", " : " ") + lines.get(0).name()
                    : ", by group";
            panels.add(new YearPanel(title + only, lines, YearScale.percent()));
        }
    }

    private static void failures(List<YearPanel> panels, RotationAhead rotation) {
        List<Line> lines = new ArrayList<>();
        rotation.weeds().forEach(weed -> lines.add(chance(weed.weed(), weed.fails())));
        rotation.insects().stream()
                .filter(InsectAhead::used)
                .forEach(insect -> lines.add(chance("trait on " + insect.insect(), insect.fails())));
        if (!lines.isEmpty()) {
            String only = lines.size() == 1 ? ", " + lines.get(0).name() : "";
            panels.add(new YearPanel("Chance that control has failed" + only, lines, YearScale.percent()));
        }
    }

    private static Line chance(String name, Failure fails) {
        return new Line(
                name,
                fails.chanceByYear().stream()
                        .map(share -> new Band(100 * share, 100 * share, 100 * share))
                        .toList());
    }

    private static Band percent(Band share) {
        return new Band(100 * share.low(), 100 * share.middle(), 100 * share.high());
    }

    private static String title(YearsAhead ahead, RotationAhead rotation) {
        return ahead.field().name() + " over " + ahead.options().seasons() + " seasons: " + rotation.name();
    }

    /** What the picture shows, for whoever cannot see it. */
    public static String finding(RotationAhead rotation) {
        List<String> said = new ArrayList<>();
        rotation.weeds().forEach(weed -> said.add(weed.fails().says()));
        rotation.insects().forEach(insect -> said.add(insect.fails().says()));
        return said.isEmpty() ? "No weed and no trait is looked at." : String.join(" ", said);
    }
}
