package plumbrow.advice.weighing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import plumbrow.advice.assumptions.Column;
import plumbrow.advice.assumptions.DoubtKind;
import plumbrow.advice.assumptions.DrawSource;
import plumbrow.advice.field.Field;
import plumbrow.advice.gates.ProductGroups;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.Program;
import plumbrow.advice.season.Season;
import plumbrow.advice.weedseason.ProgramSeason;

/**
 * One program of a field, to be reckoned again for other years: with other draws of what each year brings anew, other weeds and
 * other insects. Its money is that of {@link Kernel}.
 */
public final class ProgramYears {
    private final FieldModel model;
    private final ProgramModel program;
    private final Season season;
    private final DrawSource source;
    private final Column[] drawn;
    private final double[][] columns;
    private final Kernel kernel;

    /**
     * A trait group of the program against an insect.
     *
     * @param control share of the injury it prevents where it works, draw by draw
     * @param works 1 in the draws in which it works at the start, else 0; ones where nobody doubts it
     * @param ifFailed share it prevents where it has failed
     */
    @SuppressWarnings("ArrayRecordComponent") // One number a draw; read only.
    public record TraitOn(String group, String insect, double[] control, double[] works, double ifFailed) {}

    /**
     * A seed lot of the program.
     *
     * @param share of the field's acres
     * @param unprotected share of its plants without the trait
     * @param groups trait groups by the insect they are aimed at
     */
    public record LotOf(double share, double unprotected, Map<String, List<String>> groups) {}

    /**
     * The draws of one year. What belongs to the field keeps its draw in every year; what the year brings takes that of another
     * draw, all of it of the same; what is some of both keeps a share of its spread.
     *
     * @param row for each draw, the draw whose price, yield, weather and pressure this year takes; itself in the first year
     * @param stays for each draw, the part of the spread of control and of pressure that stays with the field [0 to 1]
     * @param yieldStays the same of attainable yield
     * @param first whether it is the year of the weighing
     */
    @SuppressWarnings("ArrayRecordComponent") // One number a draw; read only.
    public record Draws(int[] row, double[] stays, double[] yieldStays, boolean first) {}

    /**
     * What is otherwise in a later year.
     *
     * @param draws of the year
     * @param keptFromWeeds share of the yield that weeds leave, draw by draw
     * @param traitHolds share of a trait group's control that is left, draw by draw, by {@link #key}
     * @param pressure share of its untreated pressure with which an insect comes, draw by draw
     */
    @SuppressWarnings("ArrayRecordComponent") // One number a draw; read only.
    public record Year(
            Draws draws, double[] keptFromWeeds, Map<String, double[]> traitHolds, Map<String, double[]> pressure) {}

    private ProgramYears(Season season, FieldModel model, ProgramModel program, DrawSource source) {
        this.season = season;
        this.model = model;
        this.program = program;
        this.source = source;
        this.drawn = FieldWeighing.drawn(model, source);
        this.columns = Arrays.stream(drawn).map(Column::values).toArray(double[][]::new);
        this.kernel = new Kernel(model);
    }

    /**
     * Makes a program ready. The draws are those of the weighing with the same options.
     *
     * @throws SeasonGapException where the season lacks what weighing needs
     */
    public static ProgramYears of(
            Season season, Field field, String program, WeighingOptions options, DrawSource source) {
        FieldModel model = FieldModels.of(season, field, options.changed());
        return model.programs().stream()
                .filter(one -> one.program().name().equals(program))
                .findFirst()
                .map(one -> new ProgramYears(season, model, one, source))
                .orElseThrow(() ->
                        new SeasonGapException(field.name() + " has no program '" + program + "'; its programs are "
                                + String.join(
                                        ", ",
                                        model.programs().stream()
                                                .map(one -> one.program().name())
                                                .toList())
                                + "."));
    }

    /** How a trait group on an insect is named in {@link Year#traitHolds}. */
    public static String key(String group, String insect) {
        return group + " on " + insect;
    }

    public Program program() {
        return program.program();
    }

    public Field field() {
        return model.field();
    }

    /** The season it was made from. */
    public Season season() {
        return season;
    }

    /** What counted in reading the season, in sentences. */
    public List<String> cautions() {
        return model.cautions();
    }

    /** The weeds of the field under the program in this season. */
    public List<WeedOn> weeds() {
        return weeds(columns);
    }

    /** The same in another year. */
    public List<WeedOn> weeds(Draws year) {
        return weeds(columns(year));
    }

    private List<WeedOn> weeds(double[][] columns) {
        ProgramSeason followed = program.season();
        List<WeedOn> weeds = new ArrayList<>();
        for (int j = 0; j < program.weeds().size(); j++) {
            ProgramModel.Weed weed = program.weeds().get(j);
            weeds.add(
                    followed == null
                            ? byPasses(weed, columns)
                            : new WeedBySeason(followed, j, columns[weed.density()], weed.mostLossPct(), columns));
        }
        return weeds;
    }

    private WeedOn byPasses(ProgramModel.Weed weed, double[][] columns) {
        List<Pass> rated = program.program().passes().stream()
                .sorted(Comparator.comparingInt(Pass::number))
                .filter(pass -> pass.product() != null
                        && pass.rate() != null
                        && !season.shelf()
                                .controls(String.valueOf(pass.product()), weed.name())
                                .isEmpty())
                .toList();
        List<WeedByPasses.OnePass> passes = new ArrayList<>();
        for (int i = 0; i < weed.cuts().size(); i++) {
            passes.add(new WeedByPasses.OnePass(
                    ProductGroups.of(season.shelf(), String.valueOf(rated.get(i).product()))
                            .orElse(Set.of()),
                    left(weed.cuts().get(i), columns)));
        }
        return new WeedByPasses(weed.name(), columns[weed.density()], columns[weed.loss()], weed.mostLossPct(), passes);
    }

    private static double[] left(ProgramModel.Cut cut, double[][] columns) {
        double[] left = new double[columns[0].length];
        Arrays.fill(left, 1);
        for (ProgramModel.Term term : cut.terms()) {
            double[] control = columns[term.control()];
            for (int k = 0; k < left.length; k++) {
                left[k] -= term.weight() * control[k];
            }
        }
        return Arrays.stream(left).map(share -> Math.max(0, share)).toArray();
    }

    /** The draws of an input of the field by its id, in the first year; empty where the field has no such input. */
    public Optional<double[]> drawn(String input) {
        for (int place = 0; place < columns.length; place++) {
            if (model.variables().get(place).id().equals(input)) {
                return Optional.of(columns[place].clone());
            }
        }
        return Optional.empty();
    }

    /** Insects that press on the field. */
    public List<String> insects() {
        return program.insects().stream().map(ProgramModel.Insect::name).toList();
    }

    public List<LotOf> lots() {
        return program.lots().stream()
                .map(lot -> {
                    Map<String, List<String>> groups = new LinkedHashMap<>();
                    for (int j = 0; j < program.insects().size(); j++) {
                        groups.put(
                                program.insects().get(j).name(),
                                lot.modes().get(j).stream()
                                        .map(ProgramModel.Mode::group)
                                        .toList());
                    }
                    return new LotOf(lot.share(), lot.unprotected(), groups);
                })
                .toList();
    }

    /** A trait group on an insect, where a lot of the program carries it. */
    public Optional<TraitOn> trait(String group, String insect) {
        for (ProgramModel.Lot lot : program.lots()) {
            for (int j = 0; j < program.insects().size(); j++) {
                if (program.insects().get(j).name().equals(insect)) {
                    for (ProgramModel.Mode mode : lot.modes().get(j)) {
                        if (mode.group().equals(group)) {
                            return Optional.of(trait(mode, insect));
                        }
                    }
                }
            }
        }
        return Optional.empty();
    }

    private TraitOn trait(ProgramModel.Mode mode, String insect) {
        double[] works = new double[columns[0].length];
        Arrays.fill(works, 1);
        return new TraitOn(
                mode.group(),
                insect,
                columns[mode.control()],
                mode.works() < 0 ? works : columns[mode.works()],
                mode.ifFailed());
    }

    /** Margins of the program in another year, one a draw [$/ac]. */
    public double[] margins(Year year) {
        double[][] changed = columns(year.draws());
        changed[model.yield()] = times(changed[model.yield()], year.keptFromWeeds());
        for (ProgramModel.Insect insect : program.insects()) {
            double[] share = year.pressure().get(insect.name());
            if (share != null) {
                changed[insect.pressure()] = times(changed[insect.pressure()], share);
            }
        }
        for (ProgramModel.Lot lot : program.lots()) {
            for (int j = 0; j < program.insects().size(); j++) {
                for (ProgramModel.Mode mode : lot.modes().get(j)) {
                    hold(mode, program.insects().get(j).name(), year, changed);
                }
            }
        }
        double[] margins = new double[columns[0].length];
        kernel.run(program.withoutWeeds(), changed, new double[0], margins);
        return margins;
    }

    /** The columns of a year, in an array of their own. */
    private double[][] columns(Draws year) {
        double[][] changed = columns.clone();
        for (int place = 0; place < changed.length && !year.first(); place++) {
            Variable variable = model.variables().get(place);
            if (place == model.yield() || someOfBoth(variable)) {
                changed[place] = source.again(
                                variable.stream(),
                                drawn[place],
                                year.row(),
                                place == model.yield() ? year.yieldStays() : year.stays())
                        .values();
            } else if (variable.doubt() == DoubtKind.YEAR) {
                changed[place] = taken(columns[place], year.row());
            }
        }
        return changed;
    }

    /**
     * What a spray does and how many insects come: its spread is between fields as well as between years (soil, strain, eggs in the
     * ground against weather), and nobody has said how much of it is which.
     */
    private static boolean someOfBoth(Variable variable) {
        return variable.doubt() == DoubtKind.YEAR
                && (variable.id().startsWith("control: ")
                        || variable.id().startsWith("rating: ")
                        || variable.id().startsWith("pressure: "));
    }

    /** A trait that resistance has worn: what is left of its control stands for whether it works. */
    private void hold(ProgramModel.Mode mode, String insect, Year year, double[][] changed) {
        double[] holds = year.traitHolds().get(key(mode.group(), insect));
        if (holds != null) {
            changed[mode.control()] = times(columns[mode.control()], holds);
            if (mode.works() >= 0) {
                changed[mode.works()] = new double[holds.length];
                Arrays.fill(changed[mode.works()], 1);
            }
        }
    }

    private static double[] taken(double[] values, int[] row) {
        double[] taken = new double[values.length];
        for (int k = 0; k < taken.length; k++) {
            taken[k] = values[row[k]];
        }
        return taken;
    }

    private static double[] times(double[] values, double[] shares) {
        double[] product = new double[values.length];
        for (int k = 0; k < product.length; k++) {
            product[k] = values[k] * shares[k];
        }
        return product;
    }
}
