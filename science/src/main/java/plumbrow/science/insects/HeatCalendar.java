package plumbrow.science.insects;

import java.util.List;
import java.util.Optional;
import plumbrow.science.figure.Figure;

/**
 * The year of an insect by degree days, counted from a day of the calendar.
 *
 * @param insect by its common name
 * @param rule how a day's heat is counted
 * @param fromDayOfYear the day it is counted from, 1 for 1 January, 60 for 1 March
 * @param events in their order
 * @param figure the figure that holds the table, with its source
 * @param reserve what to mind where the heat is reckoned from air temperatures; empty for nothing
 */
public record HeatCalendar(
        String insect, Rule rule, int fromDayOfYear, List<Event> events, Figure figure, String reserve) {
    private static final List<HeatCalendar> ALL = List.of(
            new HeatCalendar(
                    "corn rootworm",
                    Rule.SOIL_52,
                    1,
                    InsectCalendars.hatch(),
                    InsectCalendars.ROOTWORM,
                    "The source counts a thermometer 4 inches deep in bare soil; here the soil is calculated from the air,"
                            + " so take the days as rough, and dig."),
            new HeatCalendar(
                    "European corn borer", Rule.AIR_86_50, 1, BorerCalendar.events(), BorerCalendar.CALENDAR, ""),
            new HeatCalendar(
                    "western bean cutworm",
                    Rule.AIR_38_75,
                    60,
                    WesternBeanCutwormCounts.flight(),
                    WesternBeanCutwormCounts.FLIGHT,
                    ""));

    /** How the heat of a day is counted [DD °F]. */
    public enum Rule {
        /** Daily mean of the soil above 52 °F. */
        SOIL_52("soil degree days, base 52 °F"),
        /** {@link DegreeDays#modified} with 50 and 86 °F. */
        AIR_86_50("degree days 86/50"),
        /** {@link WesternBeanCutworm#degreeDays}. */
        AIR_38_75("degree days of the mean held to 38 to 75 °F");

        private final String words;

        Rule(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }

        /**
         * Heat of one day [DD °F].
         *
         * @param soilF daily mean of the soil [°F]
         * @param lowF lowest air temperature [°F]
         * @param highF highest air temperature [°F], not below {@code lowF}
         */
        public double ofDay(double soilF, double lowF, double highF) {
            return switch (this) {
                case SOIL_52 -> Math.max(0, soilF - 52);
                case AIR_86_50 -> DegreeDays.modified(lowF, highF, 50, 86);
                case AIR_38_75 -> WesternBeanCutworm.degreeDays(lowF, highF);
            };
        }
    }

    /** Something that happens when so much heat has come together [DD °F]. */
    public record Event(String says, double degreeDaysF) {}

    public HeatCalendar {
        events = List.copyOf(events);
    }

    /** By name, capitals ignored; empty where no calendar is counted from a fixed day. */
    public static Optional<HeatCalendar> find(String insect) {
        return ALL.stream()
                .filter(one -> one.insect.equalsIgnoreCase(insect.strip()))
                .findFirst();
    }
}
