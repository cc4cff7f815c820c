package plumbrow.advice.weedseason;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import plumbrow.advice.program.Program;
import plumbrow.science.weedseason.Biotype;
import plumbrow.science.weedseason.CriticalDays;
import plumbrow.science.weedseason.Crop;
import plumbrow.science.weedseason.Pass;
import plumbrow.science.weedseason.Post;
import plumbrow.science.weedseason.Residual;
import plumbrow.science.weedseason.SeasonLoss;
import plumbrow.science.weedseason.SeasonTrace;
import plumbrow.science.weedseason.Species;
import plumbrow.science.weedseason.Tillage;
import plumbrow.science.weedseason.Uncertain;
import plumbrow.science.weedseason.WeedSeason;
import plumbrow.science.years.WeedResponse;

/**
 * The season of a field's weeds under one program. Draws come in as a row for each of the field's inputs, by its place.
 *
 * Density is entered as plants that would stand if nothing were done; the engine counts seedlings: that density over the share
 * of seedlings that would live.
 */
public final class ProgramSeason {
    private final Program program;
    private final FieldClimate climate;
    private final List<Crop> crops;
    private final int weather;
    private final List<FieldWeed> weeds;
    private final List<Uncertain> shifts;
    private final List<MadePass> made;
    private final List<EngineColumn> columns;
    private final Groups groups;
    private final List<String> notes;
    private final double[] seedlings;
    private final int losses;
    private final List<List<Biotype>> biotypes;

    ProgramSeason(
            Program program,
            FieldClimate climate,
            List<Crop> crops,
            int weather,
            List<FieldWeed> weeds,
            List<Uncertain> shifts,
            List<MadePass> made,
            List<EngineColumn> columns,
            Groups groups,
            List<String> notes) {
        this.program = program;
        this.climate = climate;
        this.crops = List.copyOf(crops);
        this.weather = weather;
        this.weeds = weeds;
        this.shifts = List.copyOf(shifts);
        this.made = List.copyOf(made);
        this.groups = groups;
        this.notes = List.copyOf(notes);
        this.seedlings = weeds.stream()
                .mapToDouble(weed -> 1 / Math.max(1e-6, livingShare(weed.species())))
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

    /** Mean over the seasons of the share of seedlings that live where nothing is done. */
    private double livingShare(Species species) {
        double sum = 0;
        for (int season = 0; season < crops.size(); season++) {
            sum += species.livingShare(climate.seasons().get(season).days(), crops.get(season));
        }
        return sum / crops.size();
    }

    public Program program() {
        return program;
    }

    /** Names of the weeds, in the order of all answers. */
    public List<String> weeds() {
        return weeds.stream().map(FieldWeed::name).toList();
    }

    /** When the crop is up and closed, in the season that stands for all. */
    public Crop crop() {
        return crops.get(middle());
    }

    /** Seasons as likely as each other that its weather may be. */
    public int seasons() {
        return crops.size();
    }

    private int middle() {
        return crops.size() / 2;
    }

    /** The season that the weather of a draw stands for. */
    private int at(double[][] drawn, int draw) {
        return weather < 0 ? 0 : climate.at(drawn[weather][draw]);
    }

    /** What is unknown of this program and counted as nothing, in sentences. */
    public List<String> notes() {
        return notes;
    }

    /** Number of the program's pass that each pass of {@link #season} is part of. */
    public List<Integer> passNumbers() {
        return made.stream().map(MadePass::number).toList();
    }

    /** Seedlings that come up for each plant that would stand if nothing were done [-]. */
    public double seedlingsPerPlant(int weed) {
        return seedlings[weed];
    }

    /** What the engine reckons in the season that stands for all; its columns come from {@link #columns}. */
    public WeedSeason season() {
        return season(middle());
    }

    private WeedSeason season(int season) {
        SeasonDays days = climate.seasons().get(season);
        List<Species> species = new ArrayList<>();
        for (int j = 0; j < weeds.size(); j++) {
            Species weed = species(j);
            species.add(weed.withDensity(density(j))
                    .withBiotypes(biotypes.get(j))
                    .withCompetition(weed.competition().times(Uncertain.drawn(losses + j))));
        }
        return new WeedSeason(
                days.days(),
                crops.get(season),
                species,
                made.stream().map(pass -> pass.in(days)).toList());
    }

    /** The engine's columns for the draws of the field's inputs. */
    public double[][] columns(double[][] drawn) {
        return columns.stream().map(column -> column.of(drawn)).toArray(double[][]::new);
    }

    /** Loss, survivors and seed of all draws, by weed. */
    public SeasonLoss loss(double[][] drawn, int draws) {
        return bySeason(drawn).loss(this::season, columns(drawn), weeds.size(), draws);
    }

    private DrawsBySeason bySeason(double[][] drawn) {
        return weather < 0 ? DrawsBySeason.one() : DrawsBySeason.of(drawn[weather], seasons(), climate::at);
    }

    /** One draw day by day: emergence, control left by each residual, kills, loss, seed. */
    public SeasonTrace trace(double[][] drawn, int draw) {
        return SeasonTrace.of(season(at(drawn, draw)), columns(drawn), draw);
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
        double[][] one = oneDraw(at);
        return CriticalDays.of(season(at(one, 0)), columns(one), 0, acceptedLossPct);
    }

    /** Loss in each season, every other input at a value [%], from the driest spring to the wettest. */
    public double[] lossBySeason(double[] at) {
        int seasons = seasons();
        double[][] drawn = new double[at.length][seasons];
        for (int place = 0; place < at.length; place++) {
            Arrays.fill(drawn[place], at[place]);
        }
        if (weather >= 0) {
            Arrays.setAll(drawn[weather], season -> 100 * (season + .5) / seasons);
        }
        return loss(drawn, seasons).lossPct();
    }

    /** The same told weed by weed. */
    public SeasonStory storyAt(double[] at) {
        return SeasonStory.of(season(at(oneDraw(at), 0)), traceAt(at));
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
                int weed = j;
                List<Biotype> biotype = List.of(new Biotype(1, groups.resisted(plants.groups())));
                SeasonLoss one = bySeason(drawn)
                        .loss(season -> alone(season, weed, biotype, Uncertain.known(1)), values, 1, draws);
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
        List<Biotype> any = List.of(Biotype.susceptible());
        return bySeason(drawn)
                .response(
                        season -> costly(alone(season, weed, any, Uncertain.known(1)), weed),
                        biotypes,
                        columns(drawn),
                        draws);
    }

    /** Competitive load [%] of one seedling/m² of a weed that no pass touches, draw by draw. */
    public double[] untreatedLoad(int weed, double[][] drawn, int draws) {
        List<Biotype> any = List.of(Biotype.susceptible());
        return bySeason(drawn)
                .loss(
                        season -> costly(alone(season, weed, any, Uncertain.known(1)), weed)
                                .with(List.of()),
                        columns(drawn),
                        1,
                        draws)
                .loadPct()[0];
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
        return bySeason(drawn)
                .loss(
                        season -> alone(season, weed, biotypes.get(weed), Uncertain.known(seedlings[weed])),
                        values,
                        1,
                        draws)
                .loadPct()[0];
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
        IntStream own = weather < 0
                ? IntStream.of(weeds.get(weed).shift())
                : IntStream.of(weather, weeds.get(weed).shift());
        return IntStream.concat(own, IntStream.concat(passes, shares));
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
        } else if (pass instanceof Tillage tillage) {
            columns.add(tillage.depthTimes().column());
        } else if (pass instanceof Post post) {
            post.responses()
                    .forEach(response -> columns.add(response.oddsTimes().column()));
        }
        return columns.build().filter(column -> column >= 0);
    }

    private WeedSeason alone(int season, int weed, List<Biotype> biotypes, Uncertain density) {
        SeasonDays days = climate.seasons().get(season);
        return new WeedSeason(
                days.days(),
                crops.get(season),
                List.of(species(weed).withDensity(density).withBiotypes(biotypes)),
                made.stream()
                        .filter(pass -> pass.touches(weed))
                        .map(pass -> pass.in(days, weed))
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
                    : ProgramPasses.drawn(columns, new EngineColumn.Plants(plants.share(), plants.drawn()));
            all.add(new Biotype(share, groups.resisted(plants.groups())));
        }
        return all;
    }
}
