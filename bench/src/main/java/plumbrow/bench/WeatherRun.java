package plumbrow.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import plumbrow.science.weatheryears.FitDays;
import plumbrow.science.weatheryears.SiteNormals;
import plumbrow.science.weatheryears.WeatherGenerator;
import plumbrow.science.weatheryears.WeatherYear;

/** Makes years of weather with each state's spread between years and lets NumPy make its own beside them and the states' statistics. */
public final class WeatherRun {
    private static final int YEARS = 2_000;
    private static final List<String> STATES = List.of("IL", "IN", "IA", "MN", "MO", "NE", "OH");

    private WeatherRun() {}

    /** Arguments: Python, the script, a folder to work in, the file for the section. */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        Path folder = Path.of(arguments[2]);
        Files.createDirectories(folder);
        List<String> rows = new ArrayList<>();
        for (String state : STATES) {
            List<WeatherYear> years =
                    WeatherGenerator.of(SiteNormals.station(), state, 30).free(YEARS, 7);
            for (WeatherYear year : years) {
                StringBuilder row = new StringBuilder(state);
                for (int month = 0; month < 12; month++) {
                    row.append(String.format(
                            Locale.ROOT,
                            ",%.4f,%.4f,%.0f",
                            year.monthRainMm(month),
                            year.monthC(month),
                            year.monthWetDays(month)));
                }
                boolean[] fit = FitDays.of(year);
                int days = 0;
                for (int day = 100; day <= 140; day++) {
                    days += fit[day - 1] ? 1 : 0;
                }
                rows.add(row.append(',').append(days).toString());
            }
        }
        Path made = folder.resolve("made.csv");
        Files.write(made, rows);
        int code = new ProcessBuilder(arguments[0], arguments[1], made.toString(), arguments[3])
                .inheritIO()
                .start()
                .waitFor();
        if (code != 0) {
            System.exit(code);
        }
    }
}
