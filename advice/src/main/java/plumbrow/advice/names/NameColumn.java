package plumbrow.advice.names;

import static plumbrow.advice.names.Refers.ACTIVE;
import static plumbrow.advice.names.Refers.ACTIVE_OF_PRODUCT;
import static plumbrow.advice.names.Refers.COUNTY;
import static plumbrow.advice.names.Refers.CROP;
import static plumbrow.advice.names.Refers.FARM;
import static plumbrow.advice.names.Refers.FIELD;
import static plumbrow.advice.names.Refers.FIELD_INSECT;
import static plumbrow.advice.names.Refers.FORMER_PERSON;
import static plumbrow.advice.names.Refers.GEAR;
import static plumbrow.advice.names.Refers.INSECT;
import static plumbrow.advice.names.Refers.ITSELF;
import static plumbrow.advice.names.Refers.LABEL_CROP;
import static plumbrow.advice.names.Refers.MACHINE;
import static plumbrow.advice.names.Refers.NAMES_INSECT;
import static plumbrow.advice.names.Refers.NAMES_WEED;
import static plumbrow.advice.names.Refers.NOTHING;
import static plumbrow.advice.names.Refers.PARTNER;
import static plumbrow.advice.names.Refers.PERSON;
import static plumbrow.advice.names.Refers.PEST;
import static plumbrow.advice.names.Refers.PLACE;
import static plumbrow.advice.names.Refers.PRODUCT;
import static plumbrow.advice.names.Refers.PROGRAM;
import static plumbrow.advice.names.Refers.SITE_GROUP;
import static plumbrow.advice.names.Refers.TRAIT;
import static plumbrow.advice.names.Refers.TRAIT_GROUP;
import static plumbrow.advice.names.Refers.TRAIT_INSECT;
import static plumbrow.advice.names.Refers.WEED;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.assumptions.AssumptionLine;
import plumbrow.advice.crew.Licence;
import plumbrow.advice.crew.Person;
import plumbrow.advice.field.AlsoIn;
import plumbrow.advice.field.CropYear;
import plumbrow.advice.field.Farm;
import plumbrow.advice.field.Feature;
import plumbrow.advice.field.Field;
import plumbrow.advice.field.NextCrop;
import plumbrow.advice.land.FieldLand;
import plumbrow.advice.means.FarmLimit;
import plumbrow.advice.means.Machine;
import plumbrow.advice.means.PriceBreak;
import plumbrow.advice.means.Supply;
import plumbrow.advice.means.WorkWindow;
import plumbrow.advice.pests.InsectPressure;
import plumbrow.advice.pests.KnownResistance;
import plumbrow.advice.pests.TraitDoubt;
import plumbrow.advice.pests.WeedPressure;
import plumbrow.advice.program.Done;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.Program;
import plumbrow.advice.program.SprayPlan;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.ActiveContent;
import plumbrow.advice.shelf.ActiveLimit;
import plumbrow.advice.shelf.BulletinLook;
import plumbrow.advice.shelf.Control;
import plumbrow.advice.shelf.LabelLimit;
import plumbrow.advice.shelf.LabelUse;
import plumbrow.advice.shelf.MixRule;
import plumbrow.advice.shelf.PlantBack;
import plumbrow.advice.shelf.Product;
import plumbrow.advice.shelf.ProductCare;
import plumbrow.advice.shelf.Seed;
import plumbrow.advice.shelf.Setback;
import plumbrow.advice.shelf.SoilRate;
import plumbrow.advice.shelf.SpecialLabel;
import plumbrow.advice.shelf.ToleranceRule;
import plumbrow.advice.shelf.Trait;
import plumbrow.advice.shelf.UseTerms;
import plumbrow.advice.stand.StandCount;
import plumbrow.advice.tank.Addition;
import plumbrow.advice.tank.HourLimit;
import plumbrow.advice.tank.MixCare;
import plumbrow.advice.tank.Nozzle;
import plumbrow.advice.tank.Sprayer;
import plumbrow.advice.tank.WaterTest;
import plumbrow.advice.weeds.CropTiming;
import plumbrow.advice.weeds.FloorDepth;
import plumbrow.advice.weeds.LikeWeed;
import plumbrow.advice.weeds.MonthClimate;
import plumbrow.advice.weeds.TillageWork;
import plumbrow.advice.weeds.WeatherDay;
import plumbrow.advice.weeds.WeedRating;

/**
 * A column of text and what it refers to. Every such column of every sheet stands here once; a test walks the sheets and
 * asks for each.
 *
 * @param sheet its sheet in the workbook
 * @param key its name there
 * @param refers what its text refers to
 * @param within the column of the same row within which a name is looked for, as the field of a program; empty for none
 * @param names every text in the column of a season
 */
public record NameColumn(String sheet, String key, Refers refers, String within, Function<Season, List<Named>> names) {

    /**
     * One text in a column.
     *
     * @param row as a spreadsheet counts, the header being row 1
     * @param name the text
     * @param within what stands in the column {@code within} of the row; empty where there is none
     * @param field the field of the row; empty where it is of none
     * @param product the product of the row; empty where it is of none
     */
    public record Named(int row, String name, String within, String field, String product) {}

    /** All of them, in the order of the sheets. */
    public static final List<NameColumn> ALL = all();

    private static List<NameColumn> all() {
        List<NameColumn> all = new ArrayList<>();
        Table<Season> season = new Table<>(all, "season", List::of, one -> "", one -> "");
        season.free("adviser");

        Table<Farm> farms = new Table<>(all, "farms", Season::farms, one -> "", one -> "");
        farms.of("farm", ITSELF, Farm::name).free("grower");
        Table<Field> fields = new Table<>(all, "fields", Season::fields, Field::name, one -> "");
        fields.of("field", ITSELF, Field::name)
                .of("farm", FARM, Field::farm)
                .of("county", COUNTY, Field::county, "state", Field::state);
        Table<CropYear> history = new Table<>(all, "history", Season::history, CropYear::field, one -> "");
        history.of("field", FIELD, CropYear::field)
                .of("crop", CROP, CropYear::crop)
                .free("herbicide_traits");

        Table<InsectPressure> insects =
                new Table<>(all, "insects", from -> from.pests().insects(), InsectPressure::field, one -> "");
        insects.of("field", FIELD, InsectPressure::field)
                .of("insect", NAMES_INSECT, InsectPressure::insect, "field", InsectPressure::field)
                .free("source");
        Table<TraitDoubt> doubts =
                new Table<>(all, "trait_doubts", from -> from.pests().traitDoubts(), TraitDoubt::field, one -> "");
        doubts.of("field", FIELD, TraitDoubt::field)
                .of("trait_group", TRAIT_GROUP, TraitDoubt::group)
                .of("insect", TRAIT_INSECT, TraitDoubt::insect, "trait_group", TraitDoubt::group)
                .free("source");
        Table<WeedPressure> weeds =
                new Table<>(all, "weeds", from -> from.pests().weeds(), WeedPressure::field, one -> "");
        weeds.of("field", FIELD, WeedPressure::field)
                .of("weed", NAMES_WEED, WeedPressure::weed)
                .free("source");

        shelf(all);

        Table<Program> programs = new Table<>(all, "programs", Season::programs, Program::field, one -> "");
        programs.of("field", FIELD, Program::field)
                .of("program", ITSELF, Program::name, "field", Program::field)
                .free("note");
        Table<Trip> passes = new Table<>(all, "passes", NameColumn::trips, Trip::field, Trip::product);
        passes.of("field", FIELD, Trip::field)
                .of("program", PROGRAM, Trip::program, "field", Trip::field)
                .of("product", PRODUCT, Trip::product)
                .of("scout_insect", FIELD_INSECT, Trip::scouted, "field", Trip::field)
                .free("scout_unit");
        Table<AssumptionLine> assumptions =
                new Table<>(all, "assumptions", Season::assumptions, one -> text(one.field()), one -> "");
        assumptions.of("field", FIELD, one -> text(one.field())).free("source");

        ground(all);
        work(all);
        weedBook(all);
        return List.copyOf(all);
    }

    private static void shelf(List<NameColumn> all) {
        Table<Product> shelf = new Table<>(all, "shelf", from -> from.shelf().products(), one -> "", Product::name);
        shelf.of("product", ITSELF, Product::name)
                .free("registration")
                .each("excluded_counties", COUNTY, Product::excludedCounties)
                .free("source");
        Table<Seed> seeds = new Table<>(all, "seeds", from -> from.shelf().seeds(), one -> "", Seed::product);
        seeds.of("product", PRODUCT, Seed::product)
                .each("traits", TRAIT, Seed::traits)
                .each("treatments", PRODUCT, one -> one.tag().treatments())
                .free("herbicide_traits")
                .free("refuge_checked_by")
                .free("refuge_source");
        Table<Trait> traits = new Table<>(all, "traits", from -> from.shelf().traits(), one -> "", one -> "");
        traits.of("trait", ITSELF, Trait::name)
                .of("group", ITSELF, Trait::group)
                .of("insect", INSECT, Trait::insect, "group", Trait::group)
                .free("source");
        Table<ActiveContent> actives =
                new Table<>(all, "actives", from -> from.shelf().actives(), one -> "", ActiveContent::product);
        actives.of("product", PRODUCT, ActiveContent::product)
                .of("ingredient", ACTIVE, ActiveContent::ingredient, "product", ActiveContent::product);
        Table<LabelUse> uses =
                new Table<>(all, "label_uses", from -> from.shelf().labelUses(), one -> "", LabelUse::product);
        uses.of("product", PRODUCT, LabelUse::product).free("source");
        Table<ActiveLimit> limits =
                new Table<>(all, "active_limits", from -> from.shelf().activeLimits(), one -> "", ActiveLimit::product);
        limits.of("product", PRODUCT, ActiveLimit::product)
                .of("ingredient", ACTIVE_OF_PRODUCT, ActiveLimit::ingredient, "product", ActiveLimit::product)
                .free("source");
        Table<Control> control =
                new Table<>(all, "control", from -> from.shelf().controls(), one -> "", Control::product);
        control.of("product", PRODUCT, Control::product)
                .of("pest", PEST, Control::pest, "product", Control::product)
                .free("source");
        Table<UseTerms> terms =
                new Table<>(all, "terms", from -> from.shelf().labels().terms(), one -> "", UseTerms::product);
        terms.of("product", PRODUCT, UseTerms::product).free("source");
        Table<SoilRate> soil =
                new Table<>(all, "soil_rates", from -> from.shelf().labels().soilRates(), one -> "", SoilRate::product);
        soil.of("product", PRODUCT, SoilRate::product).free("source");
        Table<Setback> setbacks =
                new Table<>(all, "setbacks", from -> from.shelf().labels().setbacks(), one -> "", Setback::product);
        setbacks.of("product", PRODUCT, Setback::product).free("source");
        Table<PlantBack> plantBacks = new Table<>(
                all, "plant_backs", from -> from.shelf().labels().plantBacks(), one -> "", PlantBack::product);
        plantBacks
                .of("product", PRODUCT, PlantBack::product)
                .of("next_crop", LABEL_CROP, PlantBack::nextCrop)
                .free("condition")
                .free("source");
        Table<MixRule> mixRules =
                new Table<>(all, "mix_rules", from -> from.shelf().labels().mixRules(), one -> "", MixRule::product);
        mixRules.of("product", PRODUCT, MixRule::product)
                .each("partner", PARTNER, MixRule::partners)
                .free("source");
        Table<SpecialLabel> special = new Table<>(
                all, "special_labels", from -> from.shelf().labels().specialLabels(), one -> "", SpecialLabel::product);
        special.of("product", PRODUCT, SpecialLabel::product)
                .each("counties", COUNTY, SpecialLabel::counties, "state", SpecialLabel::state)
                .free("source");
        Table<ProductCare> care =
                new Table<>(all, "care", from -> from.shelf().labels().cares(), one -> "", ProductCare::product);
        care.of("product", PRODUCT, ProductCare::product)
                .each("wear", ITSELF, ProductCare::wear)
                .free("source");
        Table<ToleranceRule> tolerances = new Table<>(
                all, "tolerances", from -> from.shelf().labels().tolerances(), one -> "", ToleranceRule::product);
        tolerances.of("product", PRODUCT, ToleranceRule::product).free("trait").free("source");
        Table<LabelLimit> labelLimits = new Table<>(
                all, "label_limits", from -> from.shelf().labels().limits(), one -> "", LabelLimit::product);
        labelLimits.of("product", PRODUCT, LabelLimit::product).free("value").free("source");
        Table<BulletinLook> bulletins = new Table<>(
                all, "bulletins", from -> from.shelf().labels().bulletins(), one -> "", BulletinLook::product);
        bulletins
                .of("product", PRODUCT, BulletinLook::product)
                .of("county", COUNTY, BulletinLook::county, "state", BulletinLook::state)
                .free("by")
                .free("says");
    }

    private static void ground(List<NameColumn> all) {
        Table<Feature> features =
                new Table<>(all, "surroundings", from -> from.ground().features(), Feature::field, one -> "");
        features.of("field", FIELD, Feature::field).free("name").free("source");
        Table<AlsoIn> alsoIn = new Table<>(all, "also_in", from -> from.ground().alsoIn(), AlsoIn::field, one -> "");
        alsoIn.of("field", FIELD, AlsoIn::field).of("county", COUNTY, AlsoIn::county, "state", AlsoIn::state);
        Table<FieldLand> lands = new Table<>(all, "land", from -> from.ground().lands(), FieldLand::field, one -> "");
        lands.of("field", FIELD, FieldLand::field).free("source");
        Table<NextCrop> next =
                new Table<>(all, "next_crops", from -> from.ground().nextCrops(), NextCrop::field, one -> "");
        next.of("field", FIELD, NextCrop::field).of("crop", CROP, NextCrop::crop);
    }

    private static void work(List<NameColumn> all) {
        Table<KnownResistance> resistance =
                new Table<>(all, "resistance", from -> from.pests().resistance(), KnownResistance::field, one -> "");
        resistance
                .of("field", FIELD, KnownResistance::field)
                .of("weed", WEED, KnownResistance::weed)
                .of("group", SITE_GROUP, KnownResistance::group)
                .free("source");
        Table<SprayPlan> sprays =
                new Table<>(all, "sprays", from -> from.work().sprayPlans(), SprayPlan::field, one -> "");
        sprays.of("field", FIELD, SprayPlan::field)
                .of("program", PROGRAM, SprayPlan::program, "field", SprayPlan::field)
                .free("tank")
                .of("applicator", PERSON, one -> text(one.applicator()));
        Table<Person> people =
                new Table<>(all, "people", from -> from.work().crew().people(), one -> "", one -> "");
        people.of("person", ITSELF, Person::name).free("licence");
        Table<Licence> licences =
                new Table<>(all, "licences", from -> from.work().crew().licences(), one -> "", one -> "");
        licences.of("person", PERSON, Licence::person).free("licence");
        Table<Collection<String>> crew = new Table<>(all, "crew", from -> gear(from), one -> "", one -> "");
        crew.each("gear", GEAR, one -> one);
        Table<Done> log = new Table<>(all, "log", from -> from.work().log(), Done::field, Done::product);
        log.of("field", FIELD, Done::field)
                // A product that was put on before the season need not be on its shelf: the rule LoggedProducts knows
                // the days.
                .free("product")
                .of("applicator", FORMER_PERSON, one -> text(one.applicator()))
                .of(
                        "program",
                        PROGRAM,
                        one -> one.meant() == null ? "" : text(one.meant().program()),
                        "field",
                        Done::field)
                .free("pass")
                .free("source");
        Table<Machine> machines =
                new Table<>(all, "machines", from -> from.work().means().machines(), one -> "", one -> "");
        machines.of("farm", FARM, Machine::farm)
                .of("machine", ITSELF, Machine::name, "farm", Machine::farm)
                .free("source");
        Table<WorkWindow> windows =
                new Table<>(all, "work_windows", from -> from.work().means().windows(), one -> "", one -> "");
        windows.of("farm", FARM, WorkWindow::farm).free("window").free("source");
        Table<FarmLimit> farmLimits =
                new Table<>(all, "farm_limits", from -> from.work().means().limits(), one -> "", one -> "");
        farmLimits.of("farm", FARM, FarmLimit::farm).free("source");
        Table<PriceBreak> breaks =
                new Table<>(all, "price_breaks", from -> from.work().means().breaks(), one -> "", PriceBreak::product);
        breaks.of("farm", FARM, PriceBreak::farm)
                .of("product", PRODUCT, PriceBreak::product)
                .free("source");
        Table<Supply> supplies =
                new Table<>(all, "supplies", from -> from.work().means().supplies(), one -> "", Supply::product);
        supplies.of("farm", FARM, Supply::farm)
                .of("product", PRODUCT, Supply::product)
                .free("source");
        tank(all);
    }

    private static void tank(List<NameColumn> all) {
        Table<Sprayer> sprayers =
                new Table<>(all, "sprayers", from -> from.work().means().tank().sprayers(), one -> "", one -> "");
        sprayers.of("farm", FARM, Sprayer::farm)
                .of("machine", MACHINE, Sprayer::machine, "farm", Sprayer::farm)
                .free("source");
        Table<Nozzle> nozzles =
                new Table<>(all, "nozzles", from -> from.work().means().tank().nozzles(), one -> "", one -> "");
        nozzles.of("farm", FARM, Nozzle::farm).free("nozzle").free("source");
        Table<MixCare> mixing =
                new Table<>(all, "mixing", from -> from.work().means().tank().mixing(), one -> "", MixCare::product);
        mixing.of("product", PRODUCT, MixCare::product)
                .free("order")
                .free("clean_out")
                .free("source");
        Table<WaterTest> water = new Table<>(
                all, "water_tests", from -> from.work().means().tank().water(), one -> "", one -> "");
        water.of("farm", FARM, WaterTest::farm).free("source");
        Table<Addition> additions = new Table<>(
                all,
                "additions",
                from -> from.work().means().tank().additions(),
                one -> text(one.field()),
                Addition::product);
        additions
                .of("product", PRODUCT, Addition::product)
                .of("field", FIELD, one -> text(one.field()))
                .of("addition", PRODUCT, Addition::addition)
                .free("source");
        Table<HourLimit> hours = new Table<>(
                all, "hour_limits", from -> from.work().means().tank().limits(), one -> "", one -> text(one.product()));
        hours.of("product", PRODUCT, one -> text(one.product())).free("source");
    }

    private static void weedBook(List<NameColumn> all) {
        Table<MonthClimate> climate =
                new Table<>(all, "climate", from -> from.pests().weedBook().climate(), one -> "", one -> "");
        climate.of("place", PLACE, MonthClimate::place).free("source");
        Table<WeatherDay> days =
                new Table<>(all, "weather_days", from -> from.pests().weedBook().days(), one -> "", one -> "");
        days.of("place", PLACE, WeatherDay::place).free("source");
        Table<CropTiming> cropDays =
                new Table<>(all, "crop_days", from -> from.pests().weedBook().crops(), CropTiming::field, one -> "");
        cropDays.of("field", FIELD, CropTiming::field).free("source");
        Table<LikeWeed> likes =
                new Table<>(all, "like_weeds", from -> from.pests().weedBook().likes(), one -> "", one -> "");
        likes.of("weed", WEED, LikeWeed::weed).free("source");
        Table<WeedRating> ratings =
                new Table<>(all, "ratings", from -> from.pests().weedBook().ratings(), one -> "", WeedRating::product);
        ratings.of("product", PRODUCT, WeedRating::product)
                .of("weed", WEED, WeedRating::weed, "product", WeedRating::product)
                .of("as_for", NAMES_WEED, one -> text(one.asFor()))
                .free("source");
        Table<TillageWork> tillage =
                new Table<>(all, "tillage", from -> from.pests().weedBook().tillage(), TillageWork::field, one -> "");
        tillage.of("field", FIELD, TillageWork::field)
                .of("program", PROGRAM, TillageWork::program, "field", TillageWork::field)
                .free("source");
        Table<FloorDepth> floor =
                new Table<>(all, "floor_checks", from -> from.pests().weedBook().floor(), FloorDepth::field, one -> "");
        floor.of("field", FIELD, FloorDepth::field).free("place").free("source");
        Table<StandCount> stands =
                new Table<>(all, "stand_counts", from -> from.work().stands(), StandCount::field, one -> "");
        stands.of("field", FIELD, StandCount::field).free("source");
    }

    private record Trip(String field, String program, String product, String scouted) {}

    private static List<Trip> trips(Season season) {
        return season.programs().stream()
                .flatMap(program -> program.passes().stream()
                        .map((Pass pass) -> new Trip(
                                program.field(),
                                program.name(),
                                text(pass.product()),
                                pass.trigger() == null ? "" : pass.trigger().insect())))
                .toList();
    }

    private static List<Collection<String>> gear(Season season) {
        Collection<String> gear = season.work().crew().gear();
        return gear == null ? List.of() : List.of(gear);
    }

    private static String text(@Nullable String text) {
        return text == null ? "" : text;
    }

    /** A getter whose answer may be unknown. */
    @FunctionalInterface
    private interface Texts<R> {
        @Nullable
        Collection<String> of(R row);
    }

    /** The columns of one sheet while they are put together. */
    private record Table<R>(
            List<NameColumn> all,
            String sheet,
            Function<Season, List<R>> rows,
            Function<R, String> field,
            Function<R, String> product) {

        Table<R> free(String key) {
            all.add(new NameColumn(sheet, key, NOTHING, "", season -> List.of()));
            return this;
        }

        Table<R> of(String key, Refers refers, Function<R, String> name) {
            return of(key, refers, name, "", one -> "");
        }

        Table<R> of(String key, Refers refers, Function<R, String> name, String withinKey, Function<R, String> within) {
            return each(key, refers, row -> List.of(name.apply(row)), withinKey, within);
        }

        Table<R> each(String key, Refers refers, Texts<R> names) {
            return each(key, refers, names, "", one -> "");
        }

        Table<R> each(String key, Refers refers, Texts<R> names, String withinKey, Function<R, String> within) {
            all.add(new NameColumn(sheet, key, refers, withinKey, season -> named(season, names, within)));
            return this;
        }

        private List<Named> named(Season season, Texts<R> names, Function<R, String> within) {
            List<Named> found = new ArrayList<>();
            int number = 1;
            for (R row : rows.apply(season)) {
                number++;
                Collection<String> texts = names.of(row);
                for (String name : texts == null ? List.<String>of() : texts) {
                    if (!name.isEmpty()) {
                        found.add(new Named(number, name, within.apply(row), field.apply(row), product.apply(row)));
                    }
                }
            }
            return found;
        }
    }

    /** The column of a sheet by its name; null where it holds no text. */
    public static @Nullable NameColumn find(String sheet, String key) {
        return ALL.stream()
                .filter(column -> column.sheet.equals(sheet) && column.key.equals(key))
                .findFirst()
                .orElse(null);
    }
}
