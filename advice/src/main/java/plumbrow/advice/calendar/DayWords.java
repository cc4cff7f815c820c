package plumbrow.advice.calendar;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import plumbrow.advice.season.Season;
import plumbrow.advice.weedseason.FieldSeason;
import plumbrow.advice.weedseason.ProgramSeason;
import plumbrow.advice.weedseason.SeasonStory;
import plumbrow.science.figure.Numbers;
import plumbrow.science.weedseason.SeasonTrace;

/** The days of a program in words: what came up when, what was left of the soil herbicides, what escaped which pass. */
final class DayWords {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("MMMM d", Locale.US);
    private static final double CM_PER_INCH = 2.54;
    private static final double FIRST = .01;
    private static final double MOST = .95;
    private static final double NOTHING = .005;

    private final Season season;
    private final ProgramSeason followed;
    private final SeasonTrace trace;
    private final SeasonStory story;

    DayWords(Season season, ProgramSeason followed, SeasonTrace trace, SeasonStory story) {
        this.season = season;
        this.followed = followed;
        this.trace = trace;
        this.story = story;
    }

    List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add("The crop is up on " + day(followed.crop().emergenceDay()) + " and closes its rows on "
                + day(followed.crop().closedDay()) + ".");
        for (int j = 0; j < story.weeds().size(); j++) {
            lines.add(weed(trace.species().get(j), story.weeds().get(j)));
        }
        lines.add(
                "Weeds take " + Numbers.fixed(trace.lossPct(), 1) + " % of the yield. Every input stands at its mean.");
        return lines;
    }

    private String weed(SeasonTrace.OfSpecies walk, SeasonStory.OfWeed weed) {
        StringBuilder text = new StringBuilder(capital(weed.name()));
        double all = weed.seedlings();
        if (all < NOTHING) {
            return text.append(": none comes up.").toString();
        }
        text.append(": the first come up about ")
                .append(day(when(walk, FIRST * all)))
                .append(", half by ")
                .append(day(when(walk, all / 2)))
                .append(", nearly all by ")
                .append(day(when(walk, MOST * all)))
                .append("; ")
                .append(plants(all))
                .append(" seedlings/m² in all, of which ")
                .append(plants(weed.died()))
                .append(" die on their own or under the crop.");
        for (SeasonStory.Laid laid : weed.residuals()) {
            text.append(' ').append(laid(laid));
        }
        if (!weed.residuals().isEmpty()) {
            text.append(" The soil stops ").append(plants(weed.stopped())).append("/m² in all.");
        }
        for (SeasonStory.Strike strike : weed.passes()) {
            text.append(' ').append(strike(strike));
        }
        return text.append(" Left at harvest: ")
                .append(plants(weed.standing()))
                .append("/m², which shed ")
                .append(plants(weed.seedsM2()))
                .append(" seeds/m².")
                .toString();
    }

    private String laid(SeasonStory.Laid laid) {
        String starts = laid.startsAfterDays() == 0
                ? "at work at once"
                : "at work " + laid.startsAfterDays() + (laid.startsAfterDays() == 1 ? " day" : " days") + " later";
        String weak = laid.weakFrom() <= 0
                ? ""
                : laid.weakFrom() <= laid.day()
                        ? ", and never half"
                        : ", and from " + day(laid.weakFrom()) + " on less than half";
        return laid.name() + ", laid on " + day(laid.day()) + " and " + starts + ", stops " + percent(laid.monthLater())
                + " of a day's seedlings four weeks after it was laid" + weak + ".";
    }

    private String strike(SeasonStory.Strike strike) {
        if (strike.met() < NOTHING) {
            return capital(strike.name()) + " on " + day(strike.day()) + " meets none that stand; "
                    + plants(strike.after()) + "/m² come up after it and live.";
        }
        return capital(strike.name()) + " on " + day(strike.day()) + " meets " + plants(strike.met())
                + "/m², the first of them "
                + tall(strike.tallestCm() / CM_PER_INCH) + " tall, and kills " + plants(strike.killed())
                + "; " + plants(strike.met() - strike.killed()) + " escape it and " + plants(strike.after())
                + " come up after it and live.";
    }

    private static String tall(double inches) {
        return inches < 1 ? "less than an inch" : Numbers.fixed(inches, 0) + " in";
    }

    private int when(SeasonTrace.OfSpecies walk, double so) {
        int i = 0;
        while (i < walk.brokenDormancy().length - 1 && walk.brokenDormancy()[i] < so) {
            i++;
        }
        return trace.firstDay() + i;
    }

    private String day(int dayOfYear) {
        LocalDate date = FieldSeason.date(season.year(), dayOfYear);
        return DAY.format(date);
    }

    private static String percent(double pct) {
        return Numbers.fixed(pct, 0) + " %";
    }

    private static String plants(double number) {
        return Numbers.fixed(number, number < 10 ? 1 : 0);
    }

    private static String capital(String name) {
        return Character.toUpperCase(name.charAt(0)) + name.substring(1);
    }
}
