package plumbrow.advice.weighing;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import plumbrow.advice.weedseason.ProgramSeason;

/**
 * Competitive load of each weed for one plant/m² of it, as a factor on its loss per plant, draw by draw and program by program, as
 * far as programs are followed by the season of weeds. Neither density nor loss per plant is in it: a change of those asks for no new
 * season.
 */
final class SeasonLoads {
    static final SeasonLoads NONE = new SeasonLoads(Map.of());

    private final Map<String, double[][]> byProgram;

    private SeasonLoads(Map<String, double[][]> byProgram) {
        this.byProgram = byProgram;
    }

    /** @param columns the draws of each input, by its place */
    static SeasonLoads of(List<ProgramModel> programs, double[][] columns, int draws) {
        Map<String, double[][]> byProgram = new HashMap<>();
        for (ProgramModel program : programs) {
            ProgramSeason season = program.season();
            if (season != null) {
                double[][] loads = new double[program.weeds().size()][];
                for (int j = 0; j < loads.length; j++) {
                    loads[j] = season.unitLoad(j, columns, draws);
                }
                byProgram.put(program.program().name(), loads);
            }
        }
        return byProgram.isEmpty() ? NONE : new SeasonLoads(byProgram);
    }

    /** Loads of a program by weed and draw; empty where it is not followed by the season. */
    double[][] of(ProgramModel program) {
        return byProgram.getOrDefault(program.program().name(), new double[0][]);
    }

    /** Every so manieth draw. */
    SeasonLoads thinned(int step) {
        Map<String, double[][]> fewer = new HashMap<>();
        byProgram.forEach((program, loads) -> fewer.put(program, Thinned.rows(loads, step)));
        return new SeasonLoads(fewer);
    }

    /** The loads after the draws of one input became others: only weeds that hang on it are followed again. */
    SeasonLoads with(List<ProgramModel> programs, int place, double[][] columns, int draws) {
        Map<String, double[][]> changed = new HashMap<>(byProgram);
        for (ProgramModel program : programs) {
            ProgramSeason season = program.season();
            if (season != null) {
                double[][] loads = of(program).clone();
                for (int j = 0; j < loads.length; j++) {
                    if (season.reads(j, place)) {
                        loads[j] = season.unitLoad(j, columns, draws);
                    }
                }
                changed.put(program.program().name(), loads);
            }
        }
        return new SeasonLoads(changed);
    }
}
