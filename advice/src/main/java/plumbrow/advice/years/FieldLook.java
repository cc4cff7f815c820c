package plumbrow.advice.years;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Field;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.ProgramYears;
import plumbrow.science.weeds.HyperbolicLoss;

/** A field through the years under any order of the programs it was made for, always on the same draws. */
final class FieldLook {
    private final YearsOptions options;
    private final YearDraws draws;
    private final List<WeedLook> weeds;
    private final List<InsectLook> insects;

    /** @param programs all that any order will name */
    FieldLook(Season season, Field field, List<ProgramYears> programs, YearsOptions options, YearDraws draws) {
        this.options = options;
        this.draws = draws;
        TreeSet<String> weedNames = new TreeSet<>();
        TreeSet<String> insectNames = new TreeSet<>();
        for (ProgramYears program : programs) {
            program.weeds().forEach(weed -> weedNames.add(weed.weed()));
            program.lots()
                    .forEach(lot -> lot.groups().forEach((insect, groups) -> {
                        if (!groups.isEmpty()) {
                            insectNames.add(insect);
                        }
                    }));
        }
        weeds = weedNames.stream()
                .map(weed -> new WeedLook(season, field, weed, programs, draws))
                .toList();
        insects = insectNames.stream()
                .map(insect -> new InsectLook(insect, field.name(), programs, draws))
                .toList();
    }

    List<WeedLook> weeds() {
        return weeds;
    }

    List<InsectLook> insects() {
        return insects;
    }

    /** @param margins year by draw [$/ac]; 0 in a year without a program */
    @SuppressWarnings("ArrayRecordComponent") // Primitive arrays on purpose: twenty years of thousands of draws.
    record Run(double[][] margins, List<WeedRun> weeds, List<InsectRun> insects) {}

    /** Runs the years; one without a program leaves everything as it was and earns nothing. */
    Run run(List<@Nullable ProgramYears> years) {
        List<WeedRun> weedRuns = weeds.stream().map(weed -> weed.run(years)).toList();
        List<InsectRun> insectRuns =
                insects.stream().map(insect -> insect.run(years)).toList();
        double[][] margins = new double[years.size()][];
        for (int y = 0; y < years.size(); y++) {
            ProgramYears program = years.get(y);
            margins[y] = program == null
                    ? new double[draws.draws()]
                    : program.margins(new ProgramYears.Year(
                            draws.year(y), kept(program, weedRuns, y), holds(insectRuns, y), pressure(years, y)));
        }
        return new Run(margins, weedRuns, insectRuns);
    }

    private double[] kept(ProgramYears program, List<WeedRun> runs, int y) {
        double most = weeds.stream()
                .mapToDouble(weed -> weed.mostLossPct(program))
                .max()
                .orElse(0);
        double[] kept = new double[draws.draws()];
        for (int k = 0; k < kept.length; k++) {
            double load = 0;
            for (WeedRun run : runs) {
                load += run.loadPct()[y][k];
            }
            kept[k] = load == 0 ? 1 : 1 - HyperbolicLoss.ofLoad(load, most) / 100;
        }
        return kept;
    }

    private static Map<String, double[]> holds(List<InsectRun> runs, int y) {
        Map<String, double[]> holds = new HashMap<>();
        for (InsectRun run : runs) {
            for (int l = 0; l < run.groups().size(); l++) {
                holds.put(ProgramYears.key(run.groups().get(l), run.insect()), run.holds()[l][y]);
            }
        }
        return holds;
    }

    private Map<String, double[]> pressure(List<@Nullable ProgramYears> years, int y) {
        Map<String, double[]> shares = new HashMap<>();
        ProgramYears before = y == 0 ? null : years.get(y - 1);
        ProgramYears now = years.get(y);
        if (before != null && now != null) {
            List<String> waiting = new ArrayList<>(now.insects());
            waiting.removeAll(before.insects());
            waiting.removeIf(insect -> !InsectLook.waitsInTheField(insect)
                    || before.field().crop() == now.field().crop());
            waiting.forEach(insect -> shares.put(insect, afterBreak()));
        }
        return shares;
    }

    private double[] afterBreak() {
        if (options.afterBreakTyped()) {
            double[] typed = new double[draws.draws()];
            Arrays.fill(typed, options.pressureAfterBreakPct() / 100);
            return typed;
        }
        return draws.of("insects", Assumption.AFTER_BREAK);
    }
}
