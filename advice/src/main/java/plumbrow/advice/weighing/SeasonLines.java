package plumbrow.advice.weighing;

import static plumbrow.science.figure.Numbers.fixed;
import static plumbrow.science.figure.Numbers.plain;

import java.util.Arrays;
import plumbrow.advice.weedseason.ProgramSeason;
import plumbrow.advice.weedseason.SeasonStory;
import plumbrow.science.figure.Working;
import plumbrow.science.weeds.HyperbolicLoss;

/** The season of weeds under a program, every input at its mean, as lines of a working. */
final class SeasonLines {
    private final Working working;
    private final ProgramModel program;
    private final ProgramSeason season;
    private final double[] at;

    SeasonLines(Working working, ProgramModel program, ProgramSeason season, double[] at) {
        this.working = working;
        this.program = program;
        this.season = season;
        this.at = at;
    }

    /** Writes the lines; yield lost to weeds [%]. */
    double lossPct() {
        SeasonStory story = season.storyAt(at);
        double load = 0;
        double most = 0;
        for (int j = 0; j < program.weeds().size(); j++) {
            load += weed(program.weeds().get(j), story.weeds().get(j), season.seedlingsPerPlant(j));
            most = Math.max(most, program.weeds().get(j).mostLossPct());
        }
        return working.step(
                "yield lost to weeds",
                plain(load) + " % ÷ (1 + " + plain(load) + " ÷ " + plain(most) + ")" + between(),
                HyperbolicLoss.ofLoad(load, most),
                "%",
                "mixed-weed-loss");
    }

    /** How far the loss of other seasons lies from that of the one in the middle. */
    private String between() {
        if (season.seasons() == 1) {
            return "";
        }
        double[] losses = season.lossBySeason(at);
        Arrays.sort(losses);
        int off = losses.length / 10;
        return "; the season in the middle of " + season.seasons() + ", in eight of ten it is " + fixed(losses[off], 1)
                + " to " + fixed(losses[losses.length - 1 - off], 1) + " %";
    }

    private double weed(ProgramModel.Weed weed, SeasonStory.OfWeed story, double perPlant) {
        String name = weed.name();
        double density = at[weed.density()];
        working.step(
                "seedlings of " + name + " in the season",
                plain(density) + " plants/m² that would stand × " + plain(perPlant)
                        + " seedlings for each; tillage may bring up more",
                story.seedlings(),
                "plants/m²");
        for (SeasonStory.Laid laid : story.residuals()) {
            working.step(
                    laid.name() + " in the soil on " + name + ", four weeks after",
                    "at work " + laid.startsAfterDays() + " days after it was laid, " + plain(laid.before())
                            + " plants/m² up before; " + plain(laid.doseMonthLater() * 100) + " % of the rate left",
                    laid.monthLater(),
                    "% of a day's seedlings stopped",
                    "residual-control");
        }
        if (!story.residuals().isEmpty()) {
            working.step("stopped in the soil over the season", "day by day", story.stopped(), "plants/m²");
        }
        working.step("died on their own or under the crop", "day by day", story.died(), "plants/m²");
        for (SeasonStory.Strike strike : story.passes()) {
            working.step(
                    name + " killed by " + strike.name() + " on " + SeasonWords.day(strike.day()),
                    plain(strike.met()) + " plants/m² stood, the first of them " + plain(strike.tallestCm() / 2.54)
                            + " in tall; " + plain(strike.after()) + " came up after it",
                    strike.killed(),
                    "plants/m²");
        }
        working.step(
                name + " left standing", "day by day: up − stopped − died − killed", story.standing(), "plants/m²");
        working.step("seed returned by " + name, "by the day each plant came up", story.seedsM2(), "seeds/m²");
        return working.step(
                "competition by " + name,
                "what stood and what was removed, by when it came and how long it stayed, in the season of "
                        + plain(density) + " plants/m²",
                story.loadPct(),
                "%",
                "mixed-weed-loss");
    }
}
