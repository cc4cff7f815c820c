package plumbrow.advice.weighing;

import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import plumbrow.advice.weedseason.SeasonStory;
import plumbrow.science.figure.Numbers;

/** What a program lets happen among the weeds, in one sentence. */
final class SeasonWords {
    private static final double NEGLIGIBLE = .005;
    private static final int LATE_DAYS = 8;

    private SeasonWords() {}

    /** A day of a common year: "12 June". */
    static String day(int dayOfYear) {
        LocalDate date = LocalDate.ofYearDay(2025, Math.min(365, dayOfYear));
        return date.getDayOfMonth() + " " + date.getMonth().getDisplayName(TextStyle.FULL, Locale.ENGLISH);
    }

    /** "Pre only: weeds take 17 % of the yield. Of burcucumber 12 plants/m² stand at the end: …" */
    static String sentence(String program, SeasonStory story) {
        StringBuilder text = new StringBuilder("Weeds under " + program + " take "
                + Numbers.fixed(story.lossPct(), story.lossPct() < 10 ? 1 : 0) + " % of the yield");
        SeasonStory.OfWeed worst = story.weeds().stream()
                .max(Comparator.comparingDouble(SeasonStory.OfWeed::loadPct))
                .orElseThrow();
        List<String> why = why(worst);
        text.append(", most of it ").append(worst.name()).append(": ");
        text.append(plants(worst.standing())).append(" of ").append(plants(worst.seedlings()));
        text.append(" plants/m² stand at the end");
        if (!why.isEmpty()) {
            text.append("; ").append(String.join("; ", why));
        }
        text.append(".");
        return text.toString();
    }

    private static List<String> why(SeasonStory.OfWeed weed) {
        List<String> why = new ArrayList<>();
        for (SeasonStory.Laid laid : weed.residuals()) {
            if (laid.startsAfterDays() >= LATE_DAYS) {
                why.add(laid.name() + " lay " + laid.startsAfterDays()
                        + " days on the surface before rain put it to work");
            }
            if (laid.weakFrom() > 0 && weed.standing() > NEGLIGIBLE * weed.seedlings()) {
                why.add(
                        laid.weakFrom() <= laid.day()
                                ? laid.name() + " of " + day(laid.day()) + " never stops half of what comes up in a day"
                                : laid.name() + " of " + day(laid.day())
                                        + " stops less than half of what comes up from " + day(laid.weakFrom())
                                        + " on");
            }
        }
        for (SeasonStory.Strike strike : weed.passes()) {
            double left = strike.met() - strike.killed();
            if (left > NEGLIGIBLE * weed.seedlings()) {
                why.add(strike.name() + " of " + day(strike.day()) + " leaves " + plants(left) + " of "
                        + plants(strike.met()) + ", the first of them " + Numbers.fixed(strike.tallestCm() / 2.54, 0)
                        + " in tall");
            }
        }
        if (weed.afterLast() > NEGLIGIBLE * weed.seedlings()) {
            SeasonStory.Strike last = weed.passes().get(weed.passes().size() - 1);
            why.add(plants(weed.afterLast()) + " came up after the " + last.name() + " of " + day(last.day()));
        }
        if (weed.passes().isEmpty() && weed.residuals().isEmpty()) {
            why.add("nothing was done against it");
        }
        return why;
    }

    private static String plants(double number) {
        return Numbers.fixed(number, number < 10 ? 1 : 0);
    }
}
