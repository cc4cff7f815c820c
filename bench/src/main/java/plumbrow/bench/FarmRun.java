package plumbrow.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.farmplan.FarmPlan;
import plumbrow.advice.farmplan.FarmPlanner;
import plumbrow.advice.farmplan.PlanOptions;
import plumbrow.advice.means.FarmLimit;
import plumbrow.advice.means.Machine;
import plumbrow.advice.means.MachineKind;
import plumbrow.advice.means.Means;
import plumbrow.advice.means.WorkWindow;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.Program;
import plumbrow.advice.season.Season;
import plumbrow.advice.season.Work;

/** Times the plan of a large farm under hours, money and a floor, and writes the section of the results. */
public final class FarmRun {
    private static final int PROGRAMS = 8;
    private static final int SCENARIOS = 200;
    private static final double TARGET_S = 60;
    private static final String SOURCE = "invented for the benchmark";
    private static final LocalDate WEEK_ENDS = LocalDate.of(2026, 5, 6);

    private FarmRun() {}

    /** Runs it all; the one argument is the file to write the section to. */
    public static void main(String[] arguments) throws IOException {
        StringBuilder rows = new StringBuilder("""
                | fields | programs | scenarios | gap % | held back $ | s |
                |--:|--:|--:|--:|--:|--:|
                """);
        time(50, new StringBuilder());
        time(75, rows);
        time(150, rows);
        double all = time(300, rows);
        Files.writeString(
                Path.of(arguments[0]),
                rows
                        + String.format(
                                Locale.ROOT,
                                "%n- Target: 300 fields × %d programs × %d scenarios, gap at most 1 %%, within %.0f s: **%s** (%.1f s).%n",
                                PROGRAMS,
                                SCENARIOS,
                                TARGET_S,
                                all < TARGET_S ? "met" : "missed",
                                all));
    }

    private static double time(int fields, StringBuilder rows) {
        Season season = season(fields);
        FarmPlan free = plan(season, Means.NONE);
        double cost =
                free.fields().stream().mapToDouble(FarmPlan.Taken::costUsd).sum();
        Means noFloor = means(fields, cost * 0.97, null);
        // What hours and money leave of the worst tenth, so that the floor is asked for where a plan can reach it.
        Means tight = means(fields, cost * 0.97, plan(season, noFloor).worstTenthUsd());
        long start = System.nanoTime();
        FarmPlan plan = plan(season, tight);
        double seconds = (System.nanoTime() - start) / 1e9;
        if (!plan.possible() || plan.gapPct() > 1) {
            throw new IllegalStateException("not proven: " + plan.says());
        }
        rows.append(String.format(
                Locale.ROOT,
                "| %d | %d | %d | %.3f | %,.0f | %.1f |%n",
                fields,
                PROGRAMS,
                SCENARIOS,
                plan.gapPct(),
                plan.freeUsd() - plan.meanUsd(),
                seconds));
        return seconds;
    }

    private static FarmPlan plan(Season season, Means means) {
        Work work = season.work();
        Season with =
                season.withPrograms(season.programs(), new Work(work.sprayPlans(), work.crew(), work.log(), means));
        return FarmPlanner.of(with, List.of(), new PlanOptions(SCENARIOS, 1, false))
                .get(0);
    }

    /** Each field's programs, and as many of them again, all passes a week later and two dollars dearer, as make eight. */
    private static Season season(int fields) {
        Season season = BenchSeason.of(fields);
        List<Program> programs = new ArrayList<>();
        season.fields().forEach(field -> {
            List<Program> own = season.programs(field.name());
            programs.addAll(own);
            for (int i = 0; i < PROGRAMS - own.size(); i++) {
                programs.add(later(own.get(i)));
            }
        });
        return season.withPrograms(programs, BenchLabels.work(programs));
    }

    private static Program later(Program program) {
        return new Program(
                program.field(),
                program.name() + ", a week later",
                false,
                program.refuge(),
                program.note(),
                program.passes().stream().map(FarmRun::later).toList());
    }

    private static Pass later(Pass pass) {
        LocalDate date = pass.date();
        return new Pass(
                pass.number(),
                pass.kind(),
                date == null ? null : date.plusDays(7),
                pass.product(),
                pass.rate(),
                pass.sharePct(),
                pass.chargeUsdPerAcre() + 2,
                pass.injuryPct(),
                pass.delayDays());
    }

    private static Means means(int fields, double capital, @Nullable Double floor) {
        String farm = "Home";
        return new Means(
                List.of(
                        new Machine(farm, "planter", MachineKind.PLANTER, 40, 5.5, 65, SOURCE),
                        new Machine(farm, "sprayer", MachineKind.SPRAYER, 60, 12, 65, SOURCE)),
                List.of(
                        new WorkWindow(
                                farm,
                                "first week of May",
                                MachineKind.PLANTER,
                                LocalDate.of(2026, 5, 1),
                                WEEK_ENDS,
                                fields * 0.45,
                                9,
                                SOURCE),
                        new WorkWindow(
                                farm,
                                "spraying in May and June",
                                MachineKind.SPRAYER,
                                LocalDate.of(2026, 5, 1),
                                LocalDate.of(2026, 6, 30),
                                fields * 0.3,
                                8,
                                SOURCE)),
                List.of(new FarmLimit(farm, capital, floor, null, FarmLimit.USUAL_YIELD_TIE, SOURCE)),
                List.of(),
                List.of());
    }
}
