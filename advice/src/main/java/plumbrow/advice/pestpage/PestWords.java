package plumbrow.advice.pestpage;

import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import plumbrow.science.figure.Numbers;

/** The values of a pest's page in words, the same on screen, on paper and at the command line. */
public final class PestWords {
    public static final String NOT_ON_FIELDS =
            "no field of this season is written down with it; scout, and add it to the sheet weeds or insects.";
    public static final String NOTHING_LABELLED =
            "no product on this shelf is written down as labelled in these crops; read the labels into the sheet"
                    + " label_uses.";
    public static final String NONE = "none on this shelf";
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("MMM d", Locale.US);

    private PestWords() {}

    public static String capital(String words) {
        return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    public static String comingTitle(PestPage page) {
        return page.kind() == PestKind.WEED ? "When it comes up here" : "When it comes here";
    }

    /** "10 % up Apr 21, 50 % up May 20 …; 10 days either way." */
    public static String days(Coming coming) {
        return coming.days().stream().map(day -> day.event() + " " + day(day)).collect(Collectors.joining("; "))
                + (coming.eitherWayDays() == 0 ? "." : "; " + eitherWay(coming) + ".");
    }

    public static String day(Coming.Day day) {
        return day.date() == null ? "not by the end of September" : DAY.format(day.date());
    }

    public static String eitherWay(Coming coming) {
        return "up to " + coming.eitherWayDays() + " days early or late";
    }

    /** "25 plants/m² cost 18 % of the yield." */
    public static String pressing(Pressing one) {
        return Numbers.fixed(one.pressure(), one.pressure() < 10 ? 2 : 0) + " " + one.unit()
                + ", the mean if nothing is done, would cost " + Numbers.fixed(one.lossPct(), 1) + " % of the yield.";
    }

    public static String threshold(Threshold one) {
        Double density = one.density();
        return (density == null ? "never pays" : "pays from " + amount(density) + " " + one.unit() + " on") + " with "
                + one.treatment() + ".";
    }

    /** Two digits: more would say more than is known. */
    public static String amount(double value) {
        return value == 0
                ? "0"
                : Numbers.plain(new java.math.BigDecimal(value)
                        .round(new java.math.MathContext(2))
                        .doubleValue());
    }

    public static String failed(FailedSite one) {
        return one.says() + (one.log().isEmpty() ? "" : " The log has it there: " + String.join("; ", one.log()) + ".");
    }

    /** Where nobody has written what the pest resists. */
    public static String unasked(PestPage page) {
        String look = page.kind() == PestKind.WEED
                ? "send seed of survivors in, or spray a strip twice, and write it into the sheet resistance."
                : "dig, trap or count where a trait stands, and write it into the sheet of trait doubts.";
        return page.unasked().isEmpty()
                ? "nobody has written what fails against it anywhere in this book; " + look
                : "what fails nobody has written on " + String.join(", ", page.unasked()) + "; " + look;
    }

    public static String product(Works one) {
        return one.product() + (one.rated().equals(one.product()) ? "" : " (" + one.rated() + ")");
    }

    /** "corn, on leaves, when it is up, 40 fl oz/ac, to 4 in: 96 % (92 to 99), group 9; own rating". */
    public static String control(Works one) {
        Double mean = one.meanPct();
        StringBuilder says =
                new StringBuilder(one.crop().word() + ", " + one.reach().word());
        says.append(at(one));
        says.append(mean == null ? ": unrated" : ": " + percent(one) + (one.works() ? ", works" : ", under 80 %"));
        return says + ", " + groups(one.groups()) + "; " + one.rank().word() + ".";
    }

    /** ", 40 fl oz/ac, to 4 in". */
    public static String at(Works one) {
        return (one.rate() == null ? "" : ", " + one.rate().text() + "/ac")
                + (one.heightIn() == null ? "" : ", to " + Numbers.fixed(one.heightIn(), 0) + " in");
    }

    /** "96 % (92 to 99)", or unrated. */
    public static String percent(Works one) {
        Double low = one.lowPct();
        Double mean = one.meanPct();
        Double high = one.highPct();
        return low == null || mean == null || high == null
                ? "unrated"
                : Numbers.fixed(mean, 0) + " % (" + Numbers.fixed(low, 0) + " to " + Numbers.fixed(high, 0) + ")";
    }

    public static String groups(@Nullable List<String> groups) {
        return groups == null ? "group unknown: read its label" : "group " + String.join(" + ", groups);
    }

    /** A pass of a plan. */
    public static String choice(@Nullable Works one) {
        return one == null
                ? NONE
                : product(one) + at(one) + ", " + one.reach().word() + ": " + percent(one) + ", " + groups(one.groups())
                        + ".";
    }

    public static String nobodyAlike(PestPage page) {
        return page.kind() == PestKind.INSECT
                ? "Between insects nothing is borrowed: each has its own calendar and loss."
                : "It has numbers of its own; nothing is borrowed.";
    }
}
