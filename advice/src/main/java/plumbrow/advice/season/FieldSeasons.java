package plumbrow.advice.season;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.assumptions.AssumptionLine;
import plumbrow.advice.field.AlsoIn;
import plumbrow.advice.field.CropYear;
import plumbrow.advice.field.Farm;
import plumbrow.advice.field.Feature;
import plumbrow.advice.field.Field;
import plumbrow.advice.field.Looked;
import plumbrow.advice.field.NextCrop;
import plumbrow.advice.land.FieldLand;
import plumbrow.advice.pests.InsectPressure;
import plumbrow.advice.pests.KnownResistance;
import plumbrow.advice.pests.Pests;
import plumbrow.advice.pests.TraitDoubt;
import plumbrow.advice.pests.WeedPressure;
import plumbrow.advice.program.Done;
import plumbrow.advice.program.Program;
import plumbrow.advice.program.SprayPlan;
import plumbrow.advice.stand.StandCount;
import plumbrow.advice.weeds.CropTiming;
import plumbrow.advice.weeds.FloorDepth;
import plumbrow.advice.weeds.TillageWork;
import plumbrow.advice.weeds.WeedBook;

/**
 * A season cut into the seasons of its fields: for each field all that its answer can depend on, and nothing that is said of
 * other fields. What fields share (shelf, crew, climate, assumptions of crops, means of farms) is the same instance in all.
 *
 * <p>So two such seasons that are equal have the same answer for the field, whatever became of the rest of the farm; and a
 * thousand fields cost a thousand times one field, since no list of the whole farm is gone through for each of them.
 */
public final class FieldSeasons {
    private final Season season;
    private final Map<String, Rows> rows = new HashMap<>();
    private final Map<String, List<Farm>> farms = new HashMap<>();
    private final List<AssumptionLine> ofCrops;

    /** What is said of one field. */
    private static final class Rows {
        private final List<CropYear> history = new ArrayList<>(2);
        private final List<Program> programs = new ArrayList<>(4);
        private final List<AssumptionLine> assumptions = new ArrayList<>(2);
        private final List<InsectPressure> insects = new ArrayList<>(2);
        private final List<TraitDoubt> traitDoubts = new ArrayList<>(2);
        private final List<WeedPressure> weeds = new ArrayList<>(2);
        private final List<KnownResistance> resistance = new ArrayList<>(2);
        private final List<CropTiming> crops = new ArrayList<>(1);
        private final List<TillageWork> tillage = new ArrayList<>(1);
        private final List<FloorDepth> floor = new ArrayList<>(1);
        private final List<Looked> looked = new ArrayList<>(2);
        private final List<Feature> features = new ArrayList<>(2);
        private final List<AlsoIn> alsoIn = new ArrayList<>(1);
        private final List<NextCrop> nextCrops = new ArrayList<>(1);
        private final List<FieldLand> lands = new ArrayList<>(1);
        private final List<SprayPlan> sprayPlans = new ArrayList<>(4);
        private final List<Done> log = new ArrayList<>(2);
        private final List<StandCount> stands = new ArrayList<>(1);
    }

    private FieldSeasons(Season season, @Nullable String only) {
        this.season = season;
        this.ofCrops = season.assumptions().stream()
                .filter(line -> line.field() == null)
                .toList();
        season.farms().forEach(farm -> farms.putIfAbsent(farm.name(), List.of(farm)));
        Pests pests = season.pests();
        WeedBook weeds = pests.weedBook();
        Ground ground = season.ground();
        Work work = season.work();
        deal(only, season.history(), CropYear::field, of -> of.history);
        deal(only, season.programs(), Program::field, of -> of.programs);
        deal(only, season.assumptions(), AssumptionLine::field, of -> of.assumptions);
        deal(only, pests.insects(), InsectPressure::field, of -> of.insects);
        deal(only, pests.traitDoubts(), TraitDoubt::field, of -> of.traitDoubts);
        deal(only, pests.weeds(), WeedPressure::field, of -> of.weeds);
        deal(only, pests.resistance(), KnownResistance::field, of -> of.resistance);
        deal(only, weeds.crops(), CropTiming::field, of -> of.crops);
        deal(only, weeds.tillage(), TillageWork::field, of -> of.tillage);
        deal(only, weeds.floor(), FloorDepth::field, of -> of.floor);
        deal(only, ground.looked(), Looked::field, of -> of.looked);
        deal(only, ground.features(), Feature::field, of -> of.features);
        deal(only, ground.alsoIn(), AlsoIn::field, of -> of.alsoIn);
        deal(only, ground.nextCrops(), NextCrop::field, of -> of.nextCrops);
        deal(only, ground.lands(), FieldLand::field, of -> of.lands);
        deal(only, work.sprayPlans(), SprayPlan::field, of -> of.sprayPlans);
        deal(only, work.log(), Done::field, of -> of.log);
        deal(only, work.stands(), StandCount::field, of -> of.stands);
    }

    /** Cuts a season once, to ask for field after field. */
    public static FieldSeasons of(Season season) {
        return new FieldSeasons(season, null);
    }

    /** The season of one field alone. */
    public static Season of(Season season, Field field) {
        return new FieldSeasons(season, field.name()).of(field);
    }

    /** The season of a field: as if the farm had no other. */
    public Season of(Field field) {
        Rows own = rows.getOrDefault(field.name(), new Rows());
        Pests pests = season.pests();
        WeedBook weeds = pests.weedBook();
        Work work = season.work();
        List<AssumptionLine> assumptions = new ArrayList<>(own.assumptions);
        assumptions.addAll(ofCrops);
        return new Season(
                season.year(),
                season.asOf(),
                season.adviser(),
                farms.getOrDefault(field.farm(), List.of()),
                List.of(field),
                own.history,
                season.shelf(),
                new Pests(
                        own.insects,
                        own.traitDoubts,
                        own.weeds,
                        own.resistance,
                        new WeedBook(
                                weeds.climate(),
                                weeds.days(),
                                own.crops,
                                weeds.likes(),
                                weeds.ratings(),
                                own.tillage,
                                own.floor)),
                own.programs,
                assumptions,
                new Ground(own.looked, own.features, own.alsoIn, own.nextCrops, own.lands),
                new Work(own.sprayPlans, work.crew(), own.log, work.means(), own.stands));
    }

    /** The programs of a field, in the order of the season. */
    public List<Program> programs(Field field) {
        Rows own = rows.get(field.name());
        return own == null ? List.of() : List.copyOf(own.programs);
    }

    private <R> void deal(
            @Nullable String only, List<R> all, Function<R, @Nullable String> field, Function<Rows, List<R>> to) {
        for (R row : all) {
            String name = field.apply(row);
            if (name != null && (only == null || only.equals(name))) {
                to.apply(rows.computeIfAbsent(name, first -> new Rows())).add(row);
            }
        }
    }
}
