package plumbrow.advice.weedseason;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import plumbrow.advice.course.Course;
import plumbrow.science.weedseason.Biotype;
import plumbrow.science.weedseason.CriticalDays;
import plumbrow.science.weedseason.Crop;
import plumbrow.science.weedseason.Pass;
import plumbrow.science.weedseason.Post;
import plumbrow.science.weedseason.Residual;
import plumbrow.science.weedseason.SeasonLoss;
import plumbrow.science.weedseason.SeasonTrace;
import plumbrow.science.weedseason.Species;
import plumbrow.science.weedseason.Uncertain;
import plumbrow.science.weedseason.WeedSeason;
import plumbrow.science.years.SeasonResponse;
import plumbrow.science.years.WeedResponse;

/**
 * The season of a field's weeds under one course. Draws come in as a row for each of the field's inputs, by its place.
 *
 * Density is entered as plants that would stand if nothing were done; the engine counts seedlings: that density over the share
 * of seedlings that would live.
 */
public final class CourseSeason {
    private final Course course;
    private final FieldClimate climate;
    private final Crop crop;
    private final List<FieldWeed> weeds;
    private final List<Uncertain> shifts;
    private final List<MadePass> made;
    private final List<EngineColumn> columns;
    private final Groups groups;
    private final List<String> notes;
    private final double[] seedlings;
    private final int losses;
    private final List<List<Biotype>> biotypes;

    CourseSeason(
            Course course,
            FieldClimate climate,
            Crop crop,
            List<FieldWeed> weeds,
            List<Uncertain> shifts,
            List<MadePass> made,
            List<EngineColumn> columns,
            Groups groups,
            List<String> notes) {
        this.course = course;
        this.climate = climate;
        this.crop = crop;
        this.weeds = weeds;
        this.shifts = List.copyOf(shifts);
        this.made = List.copyOf(made);
        this.groups = groups;
        this.notes = List.copyOf(notes);
        this.seedlings = weeds.stream()
                .mapToDouble(weed -> 1 / Math.max(1e-6, weed.species().livingShare(climate.days(), crop)))
                .toArray();
        List<EngineColumn> all = new ArrayList<>(columns);
        this.losses = all.size();
        for (FieldWeed weed : weeds) {
            all.add(new EngineColumn.Times(weed.loss(), 1));
        }
        this.biotypes = weeds.stream().map(weed -> biotypes(weed, all)).toList();
        for (int j = 0; j < seedlings.length; j++) {
            all.add(new EngineColumn.Times(weeds.get(j).density(), seedlings[j]));
        }
        this.columns = List.copyOf(all);
    }

    public Course course() {
        return course;
    }

    /** Names of the weeds, in the order of all answers. */
    public List<String> weeds() {
        return weeds.stream().map(FieldWeed::name).toList();
    }

    /** When the crop is up and closed. */
    public Crop crop() {
        return crop;
    }

    /** What is unknown of this course and counted as nothing, in sentences. */
    public List<String> notes() {
        return notes;
    }

    /** Number of the course's pass that each pass of {@link #season} is part of. */
    public List<Integer> passNumbers() {
        return made.stream().map(MadePass::number).toList();
    }

    /** Seedlings that come up for each plant that would stand if nothing were done [-]. */
    public double seedlingsPerPlant(int weed) {
        return seedlings[weed];
    }

    /** What the engine reckons; its columns come from {@link #columns}. */
    public WeedSeason season() {
        List<Species> species = new ArrayList<>();
        for (int j = 0; j < weeds.size(); j++) {
            Species weed = species(j);
            species.add(weed.withDensity(density(j))
                    .withBiotypes(biotypes.get(j))
                    .withCompetition(weed.competition().times(Uncertain.drawn(losses + j))));
        }
        return new WeedSeason(
                climate.days(), crop, species, made.stream().map(MadePass::pass).toList());
    }

    /** The engine's columns for the draws of the field's inputs. */
    public double[][] columns(double[][] drawn) {
        return columns.stream().map(column -> column.of(drawn)).toArray(double[][]::new);
    }

    /** Loss, survivors and seed of all draws, by weed. */
    public SeasonLoss loss(double[][] drawn, int draws) {
        return SeasonLoss.of(season(), columns(drawn), draws);
    }

    /** One draw day by day: emergence, control left by each residual, kills, loss, seed. */
    public SeasonTrace trace(double[][] drawn, int draw) {
        return SeasonTrace.of(season(), columns(drawn), draw);
    }

    /** One draw day by day with every input at a value: its mean, say. */
    public SeasonTrace traceAt(double[] at) {
        return trace(oneDraw(at), 0);
    }

    /**
     * From when to when the crop must be kept free of these weeds, every input at a value; empty where they never cost so much.
     *
     * @param acceptedLossPct loss that is accepted [%]
     */
    public Optional<CriticalDays> critical(double[] at, double acceptedLossPct) {
        return CriticalDays.of(season(), columns(oneDraw(at)), 0, acceptedLossPct);
    }

    /** The same told weed by weed. */
    public SeasonStory storyAt(double[] at) {
        return SeasonStory.of(season(), traceAt(at));
    }

    /** A row of one draw for each input. */
    public static double[][] oneDraw(double[] at) {
        double[][] one = new double[at.length][1];
        for (int place = 0; place < at.length; place++) {
            one[place][0] = at[place];
        }
        return one;
    }

    /** Survivors and seed by weed and by what its plants resist. */
    public List<BiotypeOutcome> biotypes(double[][] drawn, int draws) {
        double[][] values = columns(drawn);
        List<BiotypeOutcome> all = new ArrayList<>();
        for (int j = 0; j < weeds.size(); j++) {
            double[] density = values[density(j).column()];
            for (int b = 0; b < biotypes.get(j).size(); b++) {
                FieldWeed.ResistantPlants plants = weeds.get(j).biotypes().get(b);
                Uncertain share = biotypes.get(j).get(b).share();
                SeasonLoss one = SeasonLoss.of(
                        alone(j, List.of(new Biotype(1, groups.resisted(plants.groups()))), Uncertain.known(1)),
                        values,
                        draws);
                double[] survivors = one.survivorsM2()[0];
                double[] seeds = one.seedsM2()[0];
                for (int i = 0; i < draws; i++) {
                    double plantsM2 = density[i] * share.in(values, i);
                    survivors[i] *= plantsM2;
                    seeds[i] *= plantsM2;
                }
                double mean = IntStream.range(0, draws)
                        .mapToDouble(i -> share.in(values, i))
                        .average()
                        .orElse(0);
                all.add(new BiotypeOutcome(weeds.get(j).name(), mean, plants.groups(), survivors, seeds));
            }
        }
        return all;
    }

    /** Whether some pass does something to a weed. */
    public boolean touches(int weed) {
        return made.stream().anyMatch(pass -> pass.touches(weed));
    }

    /** Sites of action of the passes that do something to a weed, pass by pass; a pass of unknown site is left out. */
    public List<Set<String>> sites(int weed) {
        return made.stream()
                .filter(pass -> pass.touches(weed))
                .map(MadePass::pass)
                .map(pass -> pass instanceof Residual soil
                        ? groups.sites(soil.group())
                        : pass instanceof Post post ? groups.sites(post.group()) : Set.<String>of())
                .filter(sites -> !sites.isEmpty())
                .toList();
    }

    /**
     * What becomes of one seedling of a weed, draw by draw, by what it resists: bit l of a biotype's number says that the l-th of
     * these groups does not kill it.
     */
    public WeedResponse response(int weed, List<String> resisted, double[][] drawn, int draws) {
        List<Set<Integer>> biotypes = new ArrayList<>();
        for (int b = 0; b < 1 << resisted.size(); b++) {
            int biotype = b;
            biotypes.add(groups.resisted(IntStream.range(0, resisted.size())
                    .filter(l -> (biotype >> l & 1) == 1)
                    .mapToObj(resisted::get)
                    .collect(Collectors.toSet())));
        }
        return SeasonResponse.ofBiotypes(
                costly(alone(weed, List.of(Biotype.susceptible()), Uncertain.known(1)), weed),
                0,
                biotypes,
                columns(drawn),
                draws,
                1);
    }

    /** Competitive load [%] of one seedling/m² of a weed that no pass touches, draw by draw. */
    public double[] untreatedLoad(int weed, double[][] drawn, int draws) {
        WeedSeason alone = costly(alone(weed, List.of(Biotype.susceptible()), Uncertain.known(1)), weed);
        return SeasonLoss.of(alone.with(List.of()), columns(drawn), draws).loadPct()[0];
    }

    /**
     * Competitive load of a weed in each draw for one plant/m² that would stand if nothing were done, as a factor on the loss per
     * plant: neither density nor that loss is in it.
     */
    public double[] unitLoad(int weed, double[][] drawn, int draws) {
        double[][] values = new double[columns.size()][];
        for (int c = 0; c < values.length; c++) {
            EngineColumn column = columns.get(c);
            values[c] = column.places().allMatch(place -> reads(weed, place)) ? column.of(drawn) : new double[0];
        }
        WeedSeason alone = alone(weed, biotypes.get(weed), Uncertain.known(seedlings[weed]));
        return SeasonLoss.of(alone, values, draws).loadPct()[0];
    }

    /** Places of the inputs that the load of one plant of a weed hangs on. */
    public IntStream places(int weed) {
        IntStream passes = made.stream()
                .filter(pass -> pass.touches(weed))
                .flatMapToInt(pass -> drawn(pass.on(weed)))
                .flatMap(column -> columns.get(column).places());
        IntStream shares = weeds.get(weed).biotypes().stream()
                .flatMap(plants -> plants.drawn().stream())
                .mapToInt(EngineColumn.Plants.OfGroup::place);
        return IntStream.concat(IntStream.of(weeds.get(weed).shift()), IntStream.concat(passes, shares));
    }

    public boolean reads(int weed, int place) {
        return places(weed).anyMatch(one -> one == place);
    }

    private static IntStream drawn(Pass pass) {
        IntStream.Builder columns = IntStream.builder();
        columns.add(pass.daysLate().column());
        if (pass instanceof Residual soil) {
            soil.rainAfterDays().ifPresent(rain -> columns.add(rain.column()));
            soil.responses()
                    .forEach(response -> columns.add(response.oddsTimes().column()));
        } else if (pass instanceof Post post) {
            post.responses()
                    .forEach(response -> columns.add(response.oddsTimes().column()));
        }
        return columns.build().filter(column -> column >= 0);
    }

    private WeedSeason alone(int weed, List<Biotype> biotypes, Uncertain density) {
        return new WeedSeason(
                climate.days(),
                crop,
                List.of(species(weed).withDensity(density).withBiotypes(biotypes)),
                made.stream()
                        .filter(pass -> pass.touches(weed))
                        .map(pass -> pass.on(weed))
                        .toList());
    }

    private Species species(int weed) {
        return weeds.get(weed).species().withShift(shifts.get(weed));
    }

    private Uncertain density(int weed) {
        return Uncertain.drawn(columns.size() - weeds.size() + weed);
    }

    /** The same with the weed's drawn loss per plant in its load. */
    private WeedSeason costly(WeedSeason alone, int weed) {
        Species species = alone.species().get(0);
        return new WeedSeason(
                alone.days(),
                alone.crop(),
                List.of(species.withCompetition(species.competition().times(Uncertain.drawn(losses + weed)))),
                alone.passes());
    }

    private List<Biotype> biotypes(FieldWeed weed, List<EngineColumn> columns) {
        List<Biotype> all = new ArrayList<>();
        for (FieldWeed.ResistantPlants plants : weed.biotypes()) {
            Uncertain share = plants.drawn().isEmpty()
                    ? Uncertain.known(plants.share())
                    : CoursePasses.drawn(columns, new EngineColumn.Plants(plants.share(), plants.drawn()));
            all.add(new Biotype(share, groups.resisted(plants.groups())));
        }
        return all;
    }
}
