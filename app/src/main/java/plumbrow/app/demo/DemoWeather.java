package plumbrow.app.demo;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;

/**
 * Invented hours of weather for the demo: ten past years of late May to mid June, and a week of forecast for June 2026. Days have
 * their warm afternoon and calm night, winds come and go over days, rain comes in spells. One past year lacks its rain, as real
 * files do. The shape is ours; nothing of it was measured.
 */
public final class DemoWeather {
    /** The places and their files. */
    public static final List<String> PLACES = List.of("IA: Kossuth", "MN: Faribault");

    private static final int FIRST_YEAR = 2016;
    private static final int LAST_YEAR = 2025;
    private static final int WITHOUT_RAIN = 2019;
    private static final String HEADER =
            "time_beginning,temperature_c,humidity_pct,wind_mph,gust_mph,wind_from_deg,rain_in,cloud_pct,rain_chance_pct,forecast\n";

    private DemoWeather() {}

    /**
     * Writes them into a folder.
     *
     * @return the files, in the order of {@link #PLACES}
     */
    public static List<Path> writeTo(Path folder) throws IOException {
        Files.createDirectories(folder);
        List<Path> files = new ArrayList<>();
        for (int i = 0; i < PLACES.size(); i++) {
            Path file = folder.resolve(i == 0 ? "kossuth-hours.csv" : "faribault-hours.csv");
            Files.write(file, csv(i).getBytes(StandardCharsets.UTF_8), StandardOpenOption.CREATE_NEW);
            files.add(file);
        }
        return files;
    }

    /** The text of a place's file. */
    static String csv(int place) {
        StringBuilder text = new StringBuilder(HEADER);
        for (int year = FIRST_YEAR; year <= LAST_YEAR; year++) {
            stretch(text, LocalDate.of(year, 5, 20), 27, year * 10L + place, year == WITHOUT_RAIN, false);
        }
        stretch(text, LocalDate.of(2026, 5, 22), 9, 20_260 + place, false, false);
        stretch(text, LocalDate.of(2026, 5, 31), 8, 20_265 + place, false, true);
        return text.toString();
    }

    private static void stretch(
            StringBuilder text, LocalDate first, int days, long seed, boolean withoutRain, boolean forecast) {
        SplittableRandom random = new SplittableRandom(seed);
        double front = random.nextDouble(-1, 1);
        double breeze = random.nextDouble(-1, 1);
        int rainLeft = 0;
        for (int day = 0; day < days; day++) {
            front = .7 * front + .7 * random.nextDouble(-1, 1);
            breeze = .6 * breeze + .8 * random.nextDouble(-1, 1);
            int rainFrom = random.nextInt(100) < 28 ? random.nextInt(24) : -1;
            for (int hour = 0; hour < 24; hour++) {
                double sun = Math.max(0, Math.sin(Math.PI * (hour - 6) / 15.0));
                double celsius = 14 + 3 * front + 10 * sun + random.nextDouble(-.4, .4);
                rainLeft = hour == rainFrom ? 2 + random.nextInt(5) : Math.max(0, rainLeft - 1);
                boolean rains = rainLeft > 0;
                double humidity = Math.min(
                        100, Math.max(28, (rains ? 95 : 88 - 45 * sun - 5 * front) + random.nextDouble(-3, 3)));
                double wind = Math.max(0, 7 + 9 * sun + 5 * breeze + random.nextDouble(-1.5, 1.5) + (rains ? 4 : 0));
                String rain = withoutRain ? "" : number(rains ? random.nextInt(1, 12) / 100.0 : 0, 2);
                LocalDateTime at = first.plusDays(day).atTime(hour, 0);
                text.append(at.toString().replace('T', ' '))
                        .append(',')
                        .append(number(celsius, 1))
                        .append(',')
                        .append(number(humidity, 0))
                        .append(',')
                        .append(number(wind, 1))
                        .append(',')
                        .append(wind > 12 ? number(wind * 1.45, 1) : "")
                        .append(',')
                        .append(Math.floorMod(Math.round(200 + 60 * front + 30 * breeze), 360))
                        .append(',')
                        .append(forecast ? "" : rain)
                        .append(',')
                        .append(number(Math.min(100, Math.max(0, 40 - 40 * front + (rains ? 50 : 0))), 0))
                        .append(',')
                        .append(forecast ? String.valueOf(rains ? 70 : rainFrom >= 0 ? 25 : 5) : "")
                        .append(',')
                        .append(forecast ? "yes" : "no")
                        .append('\n');
            }
        }
    }

    private static String number(double value, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }
}
