package plumbrow.advice.weedseason;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.assumptions.DoubtKind;
import plumbrow.advice.assumptions.SiteSpread;
import plumbrow.advice.field.Field;
import plumbrow.advice.gates.Ingredient;
import plumbrow.advice.pests.KnownResistance;
import plumbrow.advice.pests.LossPerPlant;
import plumbrow.advice.pests.WeedPressure;
import plumbrow.advice.planting.Planting;
import plumbrow.advice.program.Program;
import plumbrow.advice.season.Season;
import plumbrow.science.figure.Numbers;
import plumbrow.science.weedseason.Competition;
import plumbrow.science.weedseason.Crop;
import plumbrow.science.weedseason.Species;

/** The season of weeds on one field: climate, weeds and their uncertain inputs, to be run under any program. */
public final class FieldSeason implements SeasonAnswer {
    private static final Distribution USUAL_SHIFT = new Distribution.Pert(-10, 0, 10);
    private static final Distribution BORROWED_SHIFT = new Distribution.Pert(-20, 0, 20);

    private final Season season;
    private final Field field;
    private final FieldClimate climate;
    private final SeasonInputs inputs;
    private final int weather;
    private final List<FieldWeed> weeds;

    FieldSeason(Season season, Field field, FieldClimate climate, SeasonInputs inputs) {
        this.season = season;
        this.field = field;
        this.climate = climate;
        this.inputs = inputs;
        this.weather = climate.seasons().size() > 1 ? SeasonWeather.place(inputs, climate) : -1;
        this.weeds = WeedSeasons.weeds(season, field).stream().map(this::weed).toList();
    }

    /**
     * The season under a program of this field, one of the season's or one just thought of.
     *
     * @throws IllegalArgumentException with a sentence, where the program lacks what the season needs
     */
    public ProgramSeason program(Program program) {
        List<String> gaps = ProgramGaps.of(season, field, program, Optional.of(climate));
        if (!gaps.isEmpty()) {
            throw new IllegalArgumentException("The weeds of " + field.name() + " can't be followed under '"
                    + program.name() + "': missing is " + String.join("; ", gaps) + ".");
        }
        List<Crop> crops = climate.seasons().stream()
                .map(days -> CropDays.of(days, field, ProgramGaps.typed(season, field), Planting.of(season, program))
                        .orElseThrow())
                .toList();
        return new ProgramPasses(season, field, climate, inputs, weather, weeds, program, crops).season();
    }

    /** The stages of the crop under a program, planted as it says, in order; empty where there is no table for the crop. */
    public List<CropStage> stages(Program program) {
        return Planting.of(season, program)
                .day()
                .filter(planted -> planted.getYear() == season.year())
                .map(planted -> CropStages.of(climate, field.crop(), DayOfYear.of(planted)))
                .orElse(List.of());
    }

    /** The date of a day of the year as the season of weeds counts them. */
    public static LocalDate date(int year, int dayOfYear) {
        return DayOfYear.date(year, dayOfYear);
    }

    /** What is shown where one season must stand for all. */
    public String shownSeason() {
        int seasons = climate.seasons().size();
        return seasons == 1
                ? "Shown is the season as it was measured."
                : "Shown is one season of " + seasons
                        + " as likely as each other: the one in the middle by the rain of its" + " spring, of "
                        + climate.source() + ".";
    }

    /** Where the days come from. */
    public String climateSource() {
        return climate.source();
    }

    /** Sentences to stand beside everything that comes of it: what is borrowed, resistant or dug. */
    public List<String> cautions() {
        List<String> cautions = new ArrayList<>(climate.says());
        for (FieldWeed weed : weeds) {
            if (weed.borrowed()) {
                cautions.add("How " + weed.name() + " comes up and grows is borrowed from " + weed.as()
                        + ": its flush is taken as up to 20 days early or late.");
            }
        }
        resistance().forEach(known -> cautions.add(resistant(known)));
        cautions.addAll(FloorCheck.sentences(season.pests().weedBook(), field.name()));
        return cautions;
    }

    private static String resistant(KnownResistance known) {
        Double share = known.sharePct();
        return (share == null
                        ? "Half to all of the " + known.weed() + " here is taken to resist group " + known.group()
                                + ", since nobody has counted"
                        : Numbers.plain(share) + " % of the " + known.weed() + " here is taken to resist group "
                                + known.group())
                + " (" + known.source() + "): a share counted in the field would settle it.";
    }

    private List<KnownResistance> resistance() {
        return season.pests().resistance().stream()
                .filter(known -> known.field().equals(field.name())
                        && weeds.stream().anyMatch(weed -> weed.name().equals(known.weed())))
                .toList();
    }

    private FieldWeed weed(WeedPressure pressure) {
        Species known = WeedSeasons.species(season, pressure.weed()).orElseThrow();
        Competition grown = known.competition();
        Species species = known.named(pressure.weed())
                .withCompetition(new Competition(
                        1, // times the loss per plant that is drawn
                        pressure.mostLossPct(),
                        grown.perDay(),
                        grown.halfDays(),
                        grown.slope()));
        boolean borrowed = !known.name().equalsIgnoreCase(pressure.weed());
        int density = inputs.place(
                "density: " + pressure.weed(),
                "density of " + pressure.weed() + " if nothing is done",
                "plants/m²",
                pressure.densityPerSquareMetre(),
                pressure.source(),
                "density of " + pressure.weed() + " on " + field.name(),
                DoubtKind.FIELD);
        int shift = inputs.place(
                "shift: " + pressure.weed(),
                "days by which " + pressure.weed() + " comes up late",
                "days",
                borrowed ? BORROWED_SHIFT : USUAL_SHIFT,
                borrowed
                        ? "borrowed from " + known.name() + " and widened; common practice, no source"
                        : "common practice, no source",
                "flush of " + pressure.weed() + " on " + field.name(),
                DoubtKind.YEAR);
        SiteSpread.Drawn perPlant = SiteSpread.lossPerWeed(pressure.lossPerPlantPct(), borrowed);
        int loss = inputs.place(
                LossPerPlant.id(pressure.weed()),
                LossPerPlant.label(pressure.weed()),
                LossPerPlant.UNIT,
                perPlant.distribution(),
                perPlant.source(pressure.source()),
                LossPerPlant.stream(pressure.weed(), field.name()),
                DoubtKind.FIELD);
        return new FieldWeed(pressure, species, known.name(), density, shift, loss, biotypes(pressure.weed()));
    }

    /**
     * Plants by what they resist: what is typed for one group is taken as independent of what is typed for another. How many resist is
     * the field's own.
     */
    private List<FieldWeed.ResistantPlants> biotypes(String weed) {
        List<FieldWeed.ResistantPlants> plants = new ArrayList<>();
        plants.add(new FieldWeed.ResistantPlants(1, List.of(), Set.of()));
        for (KnownResistance known : season.pests().resistance()) {
            if (known.field().equals(field.name()) && known.weed().equals(weed)) {
                plants = split(plants, known);
            }
        }
        return List.copyOf(plants);
    }

    /** How the share of a weed's plants that resist a site of action is named among the inputs of a field. */
    public static String resistant(String weed, String group) {
        return "resistant: " + weed + " to group " + Ingredient.sameSite(group);
    }

    private List<FieldWeed.ResistantPlants> split(List<FieldWeed.ResistantPlants> plants, KnownResistance known) {
        Double typed = known.sharePct();
        SiteSpread.Drawn share = SiteSpread.resistant(typed == null ? null : typed / 100);
        String group = Ingredient.sameSite(known.group());
        if (share.distribution() instanceof Distribution.Fixed fixed) {
            return split(plants, group, fixed.value(), -1);
        }
        int place = inputs.place(
                resistant(known.weed(), known.group()),
                "share of " + known.weed() + " that resists group " + group,
                "share",
                share.distribution(),
                share.source(known.source()),
                "resistance of " + known.weed() + " to group " + group + " on " + field.name(),
                DoubtKind.FIELD);
        return split(plants, group, 1, place);
    }

    /** @param place of the share where it is drawn; below 0 where it is known */
    private static List<FieldWeed.ResistantPlants> split(
            List<FieldWeed.ResistantPlants> plants, String group, double share, int place) {
        List<FieldWeed.ResistantPlants> all = new ArrayList<>();
        for (FieldWeed.ResistantPlants one : plants) {
            Set<String> more = new TreeSet<>(one.groups());
            more.add(group);
            if (place >= 0) {
                all.add(new FieldWeed.ResistantPlants(one.share(), with(one, place, false), one.groups()));
                all.add(new FieldWeed.ResistantPlants(one.share(), with(one, place, true), more));
            } else {
                if (share < 1) {
                    all.add(new FieldWeed.ResistantPlants(one.share() * (1 - share), one.drawn(), one.groups()));
                }
                if (share > 0) {
                    all.add(new FieldWeed.ResistantPlants(one.share() * share, one.drawn(), more));
                }
            }
        }
        return all;
    }

    private static List<EngineColumn.Plants.OfGroup> with(FieldWeed.ResistantPlants one, int place, boolean resist) {
        List<EngineColumn.Plants.OfGroup> more = new ArrayList<>(one.drawn());
        more.add(new EngineColumn.Plants.OfGroup(place, resist));
        return more;
    }
}
