package plumbrow.bench;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import plumbrow.advice.calendar.PassChange;
import plumbrow.advice.calendar.SeasonTrial;
import plumbrow.advice.calendar.SeasonTrials;
import plumbrow.advice.field.Field;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.PassKind;
import plumbrow.advice.program.Program;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.WeighingOptions;
import plumbrow.documents.picture.SeasonPicture;

/** Times what answers while a pass is dragged from day to day: numbers, findings, days and the picture. */
public final class TrialRun {
    private static final double TARGET_MS = 100;
    private static final int WARM_UP = 40;
    private static final int ROUNDS = 41;
    private static final int DAYS = 20;

    private TrialRun() {}

    /** Runs it; the one argument is the file to which the section is added. */
    public static void main(String[] arguments) throws IOException {
        Season season = FollowedSeason.of(1, 4);
        double[] moving = times(season, 1_000);
        double[] letGo = times(season, 10_000);
        String text = String.format(
                Locale.ROOT,
                "%nA pass dragged to another day, one field of six programs and four weeds: numbers, findings and the whole"
                        + " picture, one thread.%n%n| draws | wall ms | processor ms |%n|--:|--:|--:|%n| 1,000 | %.1f | %.1f |%n"
                        + "| 10,000 | %.1f | %.1f |%n%n- Within %.0f ms while moving: **%s**; when let go: **%s**.%n",
                moving[0],
                moving[1],
                letGo[0],
                letGo[1],
                TARGET_MS,
                moving[0] <= TARGET_MS ? "met" : "missed",
                letGo[0] <= TARGET_MS ? "met" : "missed");
        Files.writeString(Path.of(arguments[0]), text, StandardOpenOption.CREATE, StandardOpenOption.APPEND);
    }

    /** Medians of wall and processor time [ms]. */
    private static double[] times(Season season, int draws) {
        Field field = season.fields().get(0);
        Program program = season.programs(field.name()).stream()
                .reduce((one, other) -> other.passes().size() > one.passes().size() ? other : one)
                .orElseThrow();
        Pass spray = program.passes().stream()
                .filter(pass -> pass.kind() == PassKind.SPRAY)
                .reduce((one, other) -> other)
                .orElseThrow();
        SeasonTrials trials = new SeasonTrials(season, WeighingOptions.DEFAULT.withDraws(draws));
        double[] wall = new double[ROUNDS];
        double[] processor = new double[ROUNDS];
        for (int i = -WARM_UP; i < ROUNDS; i++) {
            LocalDate day = LocalDate.of(season.year(), 5, 15).plusDays(Math.floorMod(i, DAYS));
            long worked = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
            long began = System.nanoTime();
            SeasonTrial trial = trials.tried(field, program.name(), List.of(new PassChange(spray.number(), day, null)));
            SeasonPicture.of(trial.calendar(), 1140);
            if (i >= 0) {
                wall[i] = (System.nanoTime() - began) / 1e6;
                processor[i] = (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - worked) / 1e6;
            }
        }
        Arrays.sort(wall);
        Arrays.sort(processor);
        return new double[] {wall[ROUNDS / 2], processor[ROUNDS / 2]};
    }
}
