package plumbrow.advice.years;

import static plumbrow.science.figure.Numbers.plain;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Field;
import plumbrow.advice.field.NextCrop;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.Odds;
import plumbrow.advice.weighing.ProgramYears;
import plumbrow.advice.weighing.Quantities;
import plumbrow.advice.weighing.WeedOn;

/** The look ahead in sentences. Never more certain than the draws. */
final class AheadWords {
    private final Season season;
    private final Field field;
    private final YearsOptions options;
    private final FieldLook look;
    private final List<Rotation> rotations;

    AheadWords(Season season, Field field, YearsOptions options, FieldLook look, List<Rotation> rotations) {
        this.season = season;
        this.field = field;
        this.options = options;
        this.look = look;
        this.rotations = rotations;
    }

    /** @param equals those about equal to the best */
    String sentence(List<RotationAhead> all, @Nullable String best, List<String> equals) {
        RotationAhead top =
                all.stream().filter(one -> one.name().equals(best)).findFirst().orElse(null);
        if (top == null) {
            return "Over " + seasons() + " none of these can be advised yet: each is barred or has something unknown.";
        }
        String money = Quantities.dollarsPerAcre(top.perYearUsdPerAcre()) + " a year in money of " + season.year();
        String earns = all.size() == 1
                ? top.name() + " earns " + money + " over " + seasons() + "."
                : top.name() + " earns most of what may be advised over " + seasons() + ": " + money
                        + ", ahead of all others in " + Odds.words(top.chanceMost()) + ".";
        String equal = equals.isEmpty() ? "" : " About equal to it: " + String.join("; ", equals) + ".";
        return earns + equal + " " + top.fails().says();
    }

    private String seasons() {
        return options.seasons() == 1 ? "1 season" : options.seasons() + " seasons";
    }

    static String seedSource(WeedLook weed) {
        SeedLife life = weed.life();
        return life == null
                ? "How the seed of " + weed.weed()
                        + " lives in the soil is not known here: it is taken to come each year as thick as this season."
                        + " Known are " + String.join(", ", SeedLife.known()) + "."
                : life.source();
    }

    List<String> cautions(List<ProgramYears> programs) {
        List<String> all = new ArrayList<>();
        all.add(
                "The current label is the law. Local code and licensed practice decide; resistance is a matter for the county"
                        + " extension office. This is arithmetic, not a forecast: it tells orders of magnitude and directions.");
        all.add(Failure.DEFINED);
        all.add("Prices and yields are those of this season's assumptions in every year, discounted at "
                + plain(options.discountPct()) + " % a year ("
                + (options.discountPct() == YearsOptions.DISCOUNT_PCT ? YearsOptions.NO_SOURCE : "typed") + ").");
        all.add(
                "Resistant pollen and seed from neighbours are not counted, nor resistance to insecticides, nor resistance by"
                        + " metabolism that crosses sites of action.");
        for (WeedLook weed : look.weeds()) {
            if (!weed.notFollowed().isEmpty()) {
                all.add("Resistance of " + weed.weed() + " to group " + String.join(" and ", weed.notFollowed())
                        + " is not followed: four sites of action are, those of most passes.");
            }
        }
        if (look.insects().stream().anyMatch(insect -> insect.groups().size() > 0)
                && rotations.stream().anyMatch(this::leavesCrop)) {
            all.add("In the first year after another crop, insects whose eggs wait in the field come with "
                    + (options.afterBreakTyped()
                            ? plain(options.pressureAfterBreakPct()) + " % of their pressure (typed)"
                            : "0 to 40 % of their pressure, most likely 10 % (" + YearsOptions.NO_SOURCE + ")")
                    + "; a strain that lays in other crops, or eggs that wait for years, come in"
                    + " full.");
        }
        borrowed(all);
        next(all);
        untouched(all, programs);
        programs.stream()
                .flatMap(program -> program.cautions().stream())
                .sorted()
                .distinct()
                .forEach(all::add);
        return all;
    }

    /** Weeds against which a program of the rotations does nothing. */
    private void untouched(List<String> all, List<ProgramYears> programs) {
        for (ProgramYears program : programs) {
            String weeds = program.weeds().stream()
                    .filter(weed -> !weed.touched())
                    .map(WeedOn::weed)
                    .collect(Collectors.joining(" and "));
            if (!weeds.isEmpty()) {
                all.add(program.program().name() + " has no pass against " + weeds + " in its crop, "
                        + program.field().crop().word() + ": in its years they grow as they like.");
            }
        }
    }

    private boolean leavesCrop(Rotation rotation) {
        return rotation.steps().stream().anyMatch(step -> !step.from().equals(field.name()));
    }

    private void borrowed(List<String> all) {
        TreeSet<String> from = new TreeSet<>();
        rotations.forEach(rotation -> rotation.steps().stream()
                .map(Rotation.Step::from)
                .filter(name -> !name.equals(field.name()))
                .forEach(from::add));
        for (String other : from) {
            all.add("The program of " + other
                    + " stands in with that field's assumptions and insects; weeds and ground are those of "
                    + field.name() + ". What a plant of a weed costs is this crop's where " + other
                    + " does not have that weed.");
        }
    }

    /** Where another crop is planned to follow and every rotation repeats this one. */
    private void next(List<String> all) {
        boolean repeats = rotations.stream().noneMatch(this::leavesCrop);
        season.ground().nextCrops(field.name()).stream()
                .filter(next -> next.use() == NextCrop.Use.NEXT
                        && repeats
                        && !next.crop().equals(field.crop().word()))
                .findFirst()
                .ifPresent(next -> all.add("The book plans " + next.crop() + " here next. These years repeat "
                        + field.crop().word() + "; name a program of a " + next.crop()
                        + " field to stand in between, as 'Field: Program'."));
    }
}
