package plumbrow.advice.gates;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import plumbrow.advice.field.Field;
import plumbrow.advice.land.Cut;
import plumbrow.advice.land.Zones;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.Program;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.Setback;

/** All gates over one season, and what they find of a program together. */
public final class Gates {
    private static final List<Gate> ALL = List.of(
            new CropOnLabel(),
            new RegisteredInState(),
            new CountyNotExcluded(),
            new LabelCurrent(),
            new TermsRead(),
            new SprayPlanned(),
            new LabelRate(),
            new SoilRates(),
            new MostApplications(),
            new DaysBetween(),
            new ProductSeasonMaximum(),
            new ActiveSeasonMaximum(),
            new GrowthStages(),
            new Tolerance(),
            new Heights(),
            new MethodAllowed(),
            new CarrierVolume(),
            new DropletsAllowed(),
            new BoomHeight(),
            new SprayWeather(),
            new TankMix(),
            new Chemigation(),
            new LabelLimits(),
            new RestrictedUse(),
            new RightToSave(),
            new TreatedSeed(),
            new CareRead(),
            new PreHarvestInterval(),
            new Grazing(),
            new ReEntry(),
            new WorkerNotice(),
            new Surveyed(),
            new ExclusionZone(),
            Setbacks.fromPeople(),
            new WearAtHand(),
            new CentralDisplay(),
            Setbacks.fromWater(),
            new Leaching(),
            new Runoff(),
            new GroundWater(),
            new DriftToWater(),
            new SaturatedSoil(),
            new RainAhead(),
            new Bulletin(),
            new Bees(),
            new BirdsAndMammals(),
            Setbacks.fromWildlife(),
            new DriftToNeighbours(),
            new VapourDrift(),
            Setbacks.fromNeighbours(),
            new PlantBacks(),
            new CarryOver(),
            new VolunteerCrop(),
            new SitesOfAction(),
            new EffectiveRate(),
            new RepeatedGroup(),
            new InsecticideRotation(),
            new RefugeAcres(),
            new RefugePlacement());

    private final SeasonIndex index;

    private Gates(Season season) {
        index = new SeasonIndex(season);
    }

    /** The gates over a season. Asking them about many fields of it costs as many times one field. */
    public static Gates of(Season season) {
        return new Gates(season);
    }

    /** Every gate, in the order of asking. */
    public static List<Gate> all() {
        return ALL;
    }

    /** What all gates say of a program on a field, worst first; within a standing in the order of asking. */
    public List<Finding> check(Field field, Program program) {
        Case at = at(field, program);
        return ALL.stream()
                .flatMap(gate -> gate.check(at).stream())
                .sorted(Comparator.comparing(Finding::standing))
                .toList();
    }

    /** The same for one program of a season. */
    public static List<Finding> check(Season season, Field field, Program program) {
        return of(season).check(field, program);
    }

    /**
     * What the labels' setbacks leave of a field, for each product that a program puts out of doors, by pass. Asks the same
     * rows and distances as the gates that say so in words.
     */
    public List<Zones> zones(Field field, Program program) {
        Case at = at(field, program);
        return at.planned().stream()
                .filter(Application::outdoors)
                .map(application -> zones(at, application))
                .toList();
    }

    /** Every county that judges a field, as people say it: "Marrow County, IA"; that which is written down comes first. */
    public List<String> counties(Field field) {
        return Place.all(field, index.alsoIn(field.name()), index.counties(field)).stream()
                .map(Place::words)
                .toList();
    }

    private static Zones zones(Case at, Application application) {
        String product = application.product();
        List<Cut.Asked> asked = new ArrayList<>();
        List<String> notRead = new ArrayList<>();
        for (Lying lying : at.features()) {
            List<Setback> rows = at.index().setbacks(product, lying.kind());
            if (rows.isEmpty() || rows.stream().anyMatch(row -> row.feet() == null)) {
                notRead.add(lying.kind().word() + " " + lying.name());
            }
            rows.stream()
                    .filter(row -> row.feet() != null)
                    .forEach(row -> asked.add(new Cut.Asked(lying.feature(), row)));
        }
        int number = Optional.ofNullable(application.pass()).map(Pass::number).orElse(0);
        return Cut.of(at.field(), number, product, asked, notRead);
    }

    Case at(Field field, Program program) {
        return new Case(index, field, program);
    }

    /** The standing of a program: that of its worst finding; where no gate has anything to say, that nothing was asked. */
    public static Standing standing(List<Finding> findings) {
        return findings.stream().map(Finding::standing).reduce(Standing.NOTHING_ASKED, Standing::worse);
    }
}
