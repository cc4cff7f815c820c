package plumbrow.advice.weighing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.weedseason.ProgramSeason;
import plumbrow.science.chance.SortedDraws;

/**
 * Mean margins of programs with one input held at a value and everything else drawn as before, on the same draws for all.
 *
 * <p>A yes or no is held at a chance: the margin is then that of both answers, each with its chance, which is exact.
 *
 * <p>An input that the season of weeds hangs on asks for the season to be followed again at every value. That is done for all
 * programs at once on every so manieth draw,
 *
 *   m(x) ≈ m_all + m_few(x) − m_few
 *
 * where m_all is on all draws and m_few on the few, the input drawn: what the few draws have in common with all is kept.
 */
final class HeldMargins {
    private static final int FEW = 500;

    private final FieldModel model;
    private final List<ProgramModel> programs;
    private final List<Set<Integer>> read;
    private final Draws all;
    private final Draws few;
    private final double[] means;
    private Draws last;
    private int chancePlace = -1;
    private double[][] works = {};
    private double[][] fails = {};

    /** The margins with an input held, on all draws or on the few. */
    private final class Draws {
        final double[][] columns;
        final double[][] drawn;
        final double[][] held;
        final List<ProgramModel> models;
        final SeasonLoads loads;
        final Kernel kernel;

        Draws(double[][] columns, double[][] drawn, SeasonLoads loads, List<ProgramModel> models) {
            this.columns = columns.clone();
            this.drawn = drawn;
            this.held = new double[drawn.length][];
            this.models = models;
            this.loads = loads;
            this.kernel = new Kernel(model, loads);
        }

        int size() {
            return columns[0].length;
        }

        /** The margins of every program with the input held at one number; those of programs that don't read it as drawn. */
        void hold(int place, double value, double[][] margins) {
            List<ProgramModel> readers = new ArrayList<>();
            List<double[]> rows = new ArrayList<>();
            for (int c = 0; c < drawn.length; c++) {
                if (!read.get(c).contains(place)) {
                    margins[c] = drawn[c];
                    continue;
                }
                if (margins[c] == null || margins[c] == drawn[c]) {
                    margins[c] = new double[size()];
                }
                readers.add(models.get(c));
                rows.add(margins[c]);
            }
            if (readers.isEmpty()) {
                return;
            }
            double[] own = columns[place];
            columns[place] = new double[size()];
            Arrays.fill(columns[place], value);
            kernel.with(follows(place) ? loads.with(readers, place, columns, size()) : loads)
                    .run(readers, columns, new double[readers.size()][0], rows.toArray(new double[0][]));
            columns[place] = own;
        }
    }

    /**
     * @param columns the draws of each input, by its place
     * @param margins of the programs on these draws [$/ac]
     */
    HeldMargins(
            FieldModel model, double[][] columns, SeasonLoads loads, List<ProgramModel> programs, double[][] margins) {
        this.model = model;
        this.programs = programs;
        this.read = programs.stream()
                .map(program -> {
                    Set<Integer> places = new HashSet<>();
                    model.inputs(program).forEach(places::add);
                    return places;
                })
                .toList();
        this.all = new Draws(columns, margins, loads, programs);
        int step = Math.max(1, all.size() / FEW);
        boolean followed = programs.stream().anyMatch(program -> program.season() != null);
        this.few = followed
                ? new Draws(
                        Thinned.rows(columns, step),
                        Thinned.rows(margins, step),
                        loads.thinned(step),
                        programs.stream().map(program -> program.thinned(step)).toList())
                : all;
        this.means = Arrays.stream(margins).mapToDouble(SortedDraws::mean).toArray();
        this.last = all;
    }

    /** Whether any of the programs hangs on an input. */
    boolean reads(int place) {
        return read.stream().anyMatch(places -> places.contains(place));
    }

    /** Whether holding an input asks for the season to be followed again. */
    boolean follows(int place) {
        return programs.stream().anyMatch(program -> {
            ProgramSeason season = program.season();
            return season != null && IntStream.range(0, program.weeds().size()).anyMatch(j -> season.reads(j, place));
        });
    }

    /** Mean margins of the programs [$/ac] with an input held at a value; a yes or no at its chance. */
    double[] at(int place, double value) {
        last = follows(place) ? few : all;
        if (model.variables().get(place).distribution() instanceof Distribution.Chance) {
            mix(place, value);
        } else {
            last.hold(place, value, last.held);
        }
        double[] answer = new double[means.length];
        for (int c = 0; c < answer.length; c++) {
            answer[c] = last.held[c] == last.drawn[c]
                    ? means[c]
                    : SortedDraws.mean(last.held[c]) + (last == all ? 0 : means[c] - SortedDraws.mean(last.drawn[c]));
        }
        return answer;
    }

    private void mix(int place, double chance) {
        if (chancePlace != place) {
            works = new double[means.length][];
            fails = new double[means.length][];
            last.hold(place, 1, works);
            last.hold(place, 0, fails);
            chancePlace = place;
        }
        for (int c = 0; c < means.length; c++) {
            if (works[c] == last.drawn[c]) {
                last.held[c] = last.drawn[c];
                continue;
            }
            if (last.held[c] == null || last.held[c] == last.drawn[c]) {
                last.held[c] = new double[last.size()];
            }
            for (int i = 0; i < last.size(); i++) {
                last.held[c][i] = chance * works[c][i] + (1 - chance) * fails[c][i];
            }
        }
    }

    /** Standard error of the mean difference of two programs at the value last asked for [$/ac], as of plain draws. */
    double standardError(int one, int other) {
        double[] now = FieldWeighing.difference(last.held[one], last.held[other]);
        if (last == all) {
            return FieldWeighing.standardError(now, SortedDraws.mean(now));
        }
        double[] moved = FieldWeighing.difference(now, FieldWeighing.difference(last.drawn[one], last.drawn[other]));
        double[] drawn = FieldWeighing.difference(all.drawn[one], all.drawn[other]);
        return Math.hypot(
                FieldWeighing.standardError(moved, SortedDraws.mean(moved)),
                FieldWeighing.standardError(drawn, SortedDraws.mean(drawn)));
    }
}
