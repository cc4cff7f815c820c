package plumbrow.app.desk.build;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plumbrow.documents.workbook.edit.ProgramDraft;
import plumbrow.documents.workbook.edit.ProgramDraft.Trip;

/** Programs that differ in one pass only: without it, at half and full rate, at several rates, or on several days. */
final class Series {
    private static final int MOST = 20;

    private Series() {}

    /**
     * The programs by name.
     *
     * @param by "levels", "rates" or "days"
     * @param values rates or days parted by semicolons; not read for levels
     * @throws IllegalArgumentException with a sentence, where the values can't be read
     */
    static Map<String, ProgramDraft> of(
            ProgramDraft from, String base, int trip, String by, String values, Choices choices) {
        if (trip < 0 || trip >= from.trips().size()) {
            throw new IllegalArgumentException("Choose the pass in which the programs are to differ.");
        }
        Trip pass = from.trips().get(trip);
        String product = pass.pass().getOrDefault("product", "");
        String unit = pass.pass().getOrDefault("rate_unit", "");
        Map<String, ProgramDraft> series = new LinkedHashMap<>();
        switch (by) {
            case "levels" -> {
                String full = full(pass, product, unit, choices);
                series.put(name(base, "no " + product), without(from, trip));
                series.put(
                        name(base, product + " half rate"),
                        with(from, trip, pass.withPass("rate", Choices.plain(number(full) / 2))));
                series.put(name(base, product + " full rate"), with(from, trip, pass.withPass("rate", full)));
            }
            case "rates" -> {
                for (String rate : parts(values, "rates such as 3; 4.5; 6")) {
                    number(rate);
                    series.put(
                            name(base, product + " " + rate + " " + unit),
                            with(from, trip, pass.withPass("rate", rate)));
                }
            }
            case "days" -> {
                for (String day : parts(values, "days such as 2026-05-20; 2026-05-27")) {
                    series.put(name(base, product + " on " + day), with(from, trip, pass.withPass("date", day)));
                }
            }
            default -> throw new IllegalArgumentException("Choose in what the programs are to differ.");
        }
        return series;
    }

    /** The label's highest rate where it is known in the pass's unit, else the rate of the pass. */
    private static String full(Trip pass, String product, String unit, Choices choices) {
        return choices.find(product)
                .filter(choice -> choice.unit().equals(unit) && !choice.high().isEmpty())
                .map(Choices.Choice::high)
                .orElse(pass.pass().getOrDefault("rate", ""));
    }

    private static double number(String text) {
        try {
            return Double.parseDouble(text);
        } catch (NumberFormatException none) {
            throw new IllegalArgumentException(
                    "Rates: found \"" + text + "\", expected numbers parted by semicolons, such as 3; 4.5; 6.", none);
        }
    }

    private static List<String> parts(String values, String expected) {
        List<String> parts = Arrays.stream(values.split("[;\\n]"))
                .map(String::strip)
                .filter(part -> !part.isEmpty())
                .distinct()
                .toList();
        if (parts.isEmpty() || parts.size() > MOST) {
            throw new IllegalArgumentException("Expected up to " + MOST + " " + expected + ".");
        }
        return parts;
    }

    private static ProgramDraft without(ProgramDraft from, int trip) {
        List<Trip> trips = new ArrayList<>(from.trips());
        trips.remove(trip);
        return from.withTrips(trips).withBaseline(false);
    }

    private static ProgramDraft with(ProgramDraft from, int at, Trip trip) {
        List<Trip> trips = new ArrayList<>(from.trips());
        trips.set(at, trip);
        return from.withTrips(trips).withBaseline(false);
    }

    private static String name(String base, String difference) {
        String name = base + ": " + difference;
        return name.length() <= 76 ? name : difference.length() <= 76 ? difference : difference.substring(0, 76);
    }
}
