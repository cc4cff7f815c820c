package plumbrow.app.command.said;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import plumbrow.advice.hours.FinishOdds;
import plumbrow.advice.hours.HourRule;
import plumbrow.advice.hours.SprayHour;
import plumbrow.advice.hours.TripHours;
import plumbrow.app.book.WeatherOnFile;
import plumbrow.documents.weather.WeatherRead;
import plumbrow.science.figure.Numbers;

/** Hours fit for spraying in words. */
public final class HoursWords {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE MMM d", Locale.US);

    private HoursWords() {}

    public static String of(TripHours trip) {
        Paper paper = new Paper();
        paper.heading(trip.field() + ", " + String.join(" + ", trip.products()) + ": " + trip.sentence());
        FinishOdds odds = trip.odds();
        if (odds != null) {
            paper.prose("Chance of finishing from " + odds.from() + " to " + odds.until() + ": " + odds.words() + ".");
        }
        for (Map.Entry<LocalDate, List<SprayHour>> day : trip.byDay().entrySet()) {
            paper.heading(DAY.format(day.getKey()));
            stretches(paper, trip, day.getValue());
        }
        paper.heading("Whose rules");
        trip.rules().forEach(rule -> paper.prose("  ", rule(rule)));
        paper.heading("Mind");
        trip.cautions().forEach(caution -> paper.prose("  ", caution));
        paper.prose("  ", "Weather: " + trip.source() + ". The label in your hand is the law.");
        return paper.text();
    }

    /** Hours after one another that say the same are told together. */
    private static void stretches(Paper paper, TripHours trip, List<SprayHour> hours) {
        int from = 0;
        for (int i = 1; i <= hours.size(); i++) {
            if (i < hours.size() && said(hours.get(i)).equals(said(hours.get(from)))) {
                continue;
            }
            int begin = hours.get(from).begin().atZone(trip.zone()).getHour();
            int end = hours.get(i - 1)
                    .begin()
                    .plusSeconds(3600)
                    .atZone(trip.zone())
                    .getHour();
            paper.prose(
                    String.format(Locale.ROOT, "  %02d:00 to %02d:00  ", begin, end == 0 ? 24 : end),
                    said(hours.get(from)));
            from = i;
        }
    }

    private static String said(SprayHour hour) {
        String why = hour.reasons();
        return hour.standing().word() + (why.isEmpty() ? "" : ": " + why);
    }

    /** A rule in words, with whose it is and where it stands. */
    public static String rule(HourRule rule) {
        Double least = rule.least();
        Double most = rule.most();
        String limits = !rule.unread().isEmpty()
                ? "not read: " + rule.unread()
                : switch (rule.kind()) {
                    case RAIN_NOW, GROUND -> "none";
                    case INVERSION, DARK ->
                        (least == null ? "" : "from " + Numbers.plain(least) + " h after sunrise")
                                + (least == null || most == null ? "" : " ")
                                + (most == null ? "" : "to " + Numbers.plain(most) + " h before sunset");
                    case RAIN_FREE -> (least == null ? "0" : Numbers.plain(least)) + " h without rain after it";
                    default ->
                        (least == null || (least == 0 && most != null) ? "" : "least " + Numbers.plain(least) + " ")
                                + (most == null ? "" : "most " + Numbers.plain(most));
                };
        return rule.kind().word() + ": " + limits.strip() + " (" + rule.owner() + "; " + rule.source() + ")";
    }

    public static String taken(WeatherRead read, String place, boolean already) {
        Paper paper = new Paper();
        int hours = read.weather().hours().size();
        String what = hours > 0
                ? Numbers.fixed(hours, 0) + " hours of " + place
                : Numbers.fixed(read.days().size(), 0) + " whole days of " + place;
        paper.prose(
                already
                        ? "The book has this file for " + place + " already; nothing was changed."
                        : "Taken in: " + what + " (" + read.format() + ").");
        read.notes().forEach(note -> paper.prose("  ", note));
        return paper.text();
    }

    public static String files(List<WeatherOnFile> files) {
        if (files.isEmpty()) {
            return "No hourly weather is on file. Bring some in with: plumbrow hours import FILE --place PLACE";
        }
        TextTable table = TextTable.empty()
                .numbers("number", "")
                .words("place")
                .words("kind")
                .words("from")
                .words("until")
                .numbers("hours", "")
                .words("source");
        files.forEach(file -> table.row(
                String.valueOf(file.number()),
                file.place(),
                file.format(),
                file.first().toString().substring(0, 10),
                file.until().toString().substring(0, 10),
                Numbers.fixed(file.hours(), 0),
                file.source()));
        return new Paper().table(table).text();
    }
}
