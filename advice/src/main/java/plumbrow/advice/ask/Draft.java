package plumbrow.advice.ask;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.assumptions.AssumptionLine;
import plumbrow.advice.assumptions.AssumptionQuantity;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.field.Crop;
import plumbrow.advice.field.CropYear;
import plumbrow.advice.field.Farm;
import plumbrow.advice.field.Field;
import plumbrow.advice.pests.InsectPressure;
import plumbrow.advice.pests.InsectPressure.Measure;
import plumbrow.advice.pests.Pests;
import plumbrow.advice.pests.TraitDoubt;
import plumbrow.advice.pests.WeedPressure;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.PassKind;
import plumbrow.advice.program.Program;
import plumbrow.advice.program.RefugePlan;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.season.Ground;
import plumbrow.advice.season.Season;
import plumbrow.advice.season.Work;
import plumbrow.advice.shelf.Ask;
import plumbrow.advice.shelf.Control;
import plumbrow.advice.shelf.LabelUse;
import plumbrow.advice.shelf.Product;
import plumbrow.advice.shelf.ProductKind;
import plumbrow.advice.shelf.RefugeRule;
import plumbrow.advice.shelf.SavedSeed;
import plumbrow.advice.shelf.Seed;
import plumbrow.advice.shelf.SeedRights;
import plumbrow.advice.shelf.SeedTag;
import plumbrow.advice.shelf.Shelf;
import plumbrow.advice.shelf.Trait;
import plumbrow.advice.stand.StandCount;
import plumbrow.science.figure.Numbers;
import plumbrow.science.reference.TypicalValue;
import plumbrow.science.reference.TypicalValues;

/** A season of one field while it is put together from what was told and what is typical. */
final class Draft {
    static final String FIELD = "My field";
    static final String FARM = "My farm";
    static final String TOLD = "told at the question";

    /** Acres where nobody has told them: they scale dollars for the field and nothing else. */
    static final double ACRES = 100;

    /** Doubt about a typical price besides its volatility: basis, and what the market has done since. Common practice, no source. */
    static final double PRICE_SD = 0.08;

    /** How far the long-run means of fields lie about their state's, as a share. Common practice, no source. */
    static final double LEVEL_CV = 0.15;

    private static final int LAST_PLANTING_MONTH = 8;

    private final Answers answers;
    private final Crop crop;
    private final LocalDate asOf;
    private final int year;
    private final Map<String, TypicalValue> used = new LinkedHashMap<>();
    private final Map<String, String> boxes = new LinkedHashMap<>();
    private final List<AssumptionLine> assumptions = new ArrayList<>();
    private final List<CropYear> history = new ArrayList<>();
    private final List<Product> products = new ArrayList<>();
    private final List<Seed> seeds = new ArrayList<>();
    private final List<Trait> traits = new ArrayList<>();
    private final List<Control> controls = new ArrayList<>();
    private final List<LabelUse> labelUses = new ArrayList<>();
    private final List<InsectPressure> insects = new ArrayList<>();
    private final List<TraitDoubt> traitDoubts = new ArrayList<>();
    private final List<WeedPressure> weeds = new ArrayList<>();
    private final List<StandCount> stands = new ArrayList<>();
    private final List<Program> programs = new ArrayList<>();

    Draft(Answers answers, Crop crop, LocalDate asOf) {
        this.answers = answers;
        this.crop = crop;
        this.asOf = asOf;
        this.year = year(asOf);
        money();
    }

    /** The harvest that is decided about: this year's until the end of August, else the next. */
    static int year(LocalDate asOf) {
        return asOf.getMonthValue() > LAST_PLANTING_MONTH ? asOf.getYear() + 1 : asOf.getYear();
    }

    Answers answers() {
        return answers;
    }

    int year() {
        return year;
    }

    private String state() {
        return answers.choice("state");
    }

    /** A typical value, which is remembered as used. */
    TypicalValue typical(String quantity) {
        TypicalValue found = TypicalValues.find(crop.word(), state(), quantity)
                .orElseThrow(() -> new IllegalStateException("no typical value of '" + quantity + "'"));
        used.put(quantity, found);
        return found;
    }

    /** Its lowest, likely and highest as a distribution. */
    static Distribution spread(TypicalValue value) {
        double low = value.low().orElse(value.likely());
        double high = value.high().orElse(value.likely());
        return low < high ? new Distribution.Pert(low, value.likely(), high) : new Distribution.Fixed(value.likely());
    }

    /** A number of a box, else the typical one. */
    double number(String box, String quantity) {
        Double told = answers.numbers().get(box);
        return told == null ? typical(quantity).likely() : told;
    }

    /** Who says what {@link #number} gives. */
    String source(String box, String quantity) {
        return answers.told(box) ? TOLD : typical(quantity).words();
    }

    /** Remembers which box tells an input. */
    void told(String input, String box) {
        boxes.put(input, box);
    }

    private void money() {
        told("price", "price");
        told("yield", "yield");
        Double price = answers.numbers().get("price");
        if (price == null && own(AssumptionQuantity.PRICE)) {
            told("price", "price");
        } else if (price == null) {
            double volatility = typical("volatility factor").likely();
            TypicalValue found = typical(crop == Crop.WHEAT ? "planning price" : "projected price");
            assume(
                    AssumptionQuantity.PRICE,
                    new Distribution.Lognormal(found.likely(), root(volatility, PRICE_SD), 1),
                    found.words());
        } else {
            assume(
                    AssumptionQuantity.PRICE,
                    new Distribution.Lognormal(
                            price, typical("volatility factor").likely(), 1),
                    "price " + TOLD + "; volatility "
                            + typical("volatility factor").words());
        }
        Double yield = answers.numbers().get("yield");
        if (yield == null && own(AssumptionQuantity.YIELD)) {
            told("yield", "yield");
        } else if (yield == null) {
            TypicalValue level = typical(crop == Crop.WHEAT ? "state mean yield" : "planning yield level, crop 2026");
            assume(
                    AssumptionQuantity.YIELD,
                    new Distribution.Weibull(
                            level.likely(), root(typical("field yield CV").likely(), LEVEL_CV)),
                    level.words());
        } else {
            assume(
                    AssumptionQuantity.YIELD,
                    new Distribution.Weibull(yield, typical("field yield CV").likely()),
                    "level " + TOLD + "; spread " + typical("field yield CV").words());
        }
        boolean handled = answers.own(crop, AssumptionQuantity.HANDLING).isPresent();
        typicalLine(AssumptionQuantity.HANDLING, "haul and check-off");
        if (crop == Crop.CORN
                && (!handled || answers.own(crop, AssumptionQuantity.DRYING).isPresent())) {
            typicalLine(AssumptionQuantity.DRYING, "drying");
        }
        if (own(AssumptionQuantity.PRICE_YIELD_TIE)) {
            return;
        }
        TypicalValue tie = TypicalValues.find(crop.word(), state(), "price-yield correlation, field")
                .filter(found -> !found.state().equals("all"))
                .orElseGet(() -> typical("field price-yield correlation"));
        used.put(tie.quantity(), tie);
        assume(AssumptionQuantity.PRICE_YIELD_TIE, new Distribution.Fixed(tie.likely()), tie.words());
    }

    private static double root(double one, double other) {
        return Math.sqrt(one * one + other * other);
    }

    /** Takes the book's own line for the crop, if it has one. */
    private boolean own(AssumptionQuantity quantity) {
        return answers.own(crop, quantity)
                .map(line -> {
                    assume(quantity, line.distribution(), "your book’s assumptions: " + line.source());
                    return true;
                })
                .orElse(false);
    }

    void typicalLine(AssumptionQuantity quantity, String typical) {
        if (own(quantity)) {
            return;
        }
        TypicalValue found = typical(typical);
        assume(quantity, spread(found), found.words());
    }

    private void assume(AssumptionQuantity quantity, Distribution distribution, String source) {
        assumptions.add(new AssumptionLine(null, FIELD, quantity, distribution, source));
    }

    void grown(int before, String what) {
        history.add(new CropYear(FIELD, year - before, what, null));
    }

    /** Product priced per one {@code per}. */
    void product(String name, ProductKind kind, double usd, FarmUnit per, String source) {
        products.add(new Product(name, kind, usd, per, null, null, null, null, null, source));
    }

    /** A product of which one unit is the full rate of an acre. */
    void byTheAcre(String name, ProductKind kind, String box, String typicalPrice) {
        product(name, kind, number(box, typicalPrice), FarmUnit.UNIT, source(box, typicalPrice));
        told("price: " + name, box);
    }

    static Amount rate(double share) {
        return new Amount(share, FarmUnit.UNIT);
    }

    void control(String product, String pest, double rate, String typical) {
        TypicalValue found = typical(typical);
        controls.add(new Control(product, pest, rate(rate), spread(found), found.words()));
    }

    /** A seed that is bought, of full stand. */
    void seed(
            String name, @Nullable Double perUnit, @Nullable Double perPound, double refugePct, String... traitNames) {
        seed(name, perUnit, perPound, 95, refugePct, new Distribution.Fixed(100), null, SeedRights.UNASKED, traitNames);
    }

    void seed(
            String name,
            @Nullable Double perUnit,
            @Nullable Double perPound,
            double germination,
            double refugePct,
            Distribution stand,
            @Nullable SavedSeed saved,
            SeedRights rights,
            String... traitNames) {
        boolean traited = traitNames.length > 0;
        seeds.add(new Seed(
                name,
                crop,
                perUnit,
                perPound,
                germination,
                null,
                List.of(traitNames),
                refugePct,
                new RefugeRule(
                        traited ? RefugeRule.Form.UNKNOWN : RefugeRule.Form.NONE,
                        null,
                        null,
                        null,
                        traited ? "the bag tag, not read" : "no trait"),
                new Distribution.Fixed(0),
                stand,
                saved,
                rights,
                SeedTag.UNREAD));
    }

    void trait(String name, String group, String insect, String typical) {
        TypicalValue found = typical(typical);
        traits.add(new Trait(name, group, insect, spread(found), found.words()));
    }

    void traitDoubt(String group, String insect, double chance, double left, String source) {
        traitDoubts.add(new TraitDoubt(FIELD, group, insect, chance, left, source));
    }

    void insect(
            String name, Measure measure, Distribution pressure, Distribution loss, double neighbours, String source) {
        insects.add(new InsectPressure(FIELD, name, measure, pressure, loss, neighbours, null, null, source));
    }

    void weed(String name, Distribution density, Distribution loss, double most, String source) {
        weeds.add(new WeedPressure(FIELD, name, density, loss, most, source));
    }

    void labelUse(String product, @Nullable Amount low, @Nullable Amount high, Ask lessForbidden) {
        labelUses.add(new LabelUse(product, crop, low, high, lessForbidden, null, null, null, TOLD));
    }

    void stand(StandCount count) {
        stands.add(count);
    }

    /** A day of the season by the typical day of the year. */
    LocalDate day(String quantity) {
        int of = (int) Math.round(typical(quantity).likely());
        boolean before = crop == Crop.WHEAT && quantity.equals("planting day");
        return LocalDate.ofYearDay(before ? year - 1 : year, of);
    }

    void program(String name, boolean baseline, String note, List<Pass> passes) {
        List<Pass> numbered = new ArrayList<>();
        for (Pass pass : passes) {
            numbered.add(pass.numbered(numbered.size() + 1));
        }
        programs.add(new Program(FIELD, name, baseline, new RefugePlan(null, null), note, numbered));
    }

    Pass planting(String seed, double amount, FarmUnit unit, double sharePct) {
        return planting(seed, amount, unit, sharePct, day("planting day"));
    }

    Pass planting(String seed, double amount, FarmUnit unit, double sharePct, LocalDate day) {
        double usd = typical(crop == Crop.WHEAT ? "custom rate: grain drill" : "custom rate: planter with attachments")
                .likely();
        return pass(PassKind.SEED, day, seed, new Amount(amount, unit), sharePct, usd, new Distribution.Fixed(0));
    }

    /** A pass besides planting. */
    static Pass pass(
            PassKind kind,
            LocalDate day,
            @Nullable String product,
            @Nullable Amount rate,
            double sharePct,
            double usd,
            Distribution injury) {
        return new Pass(1, kind, day, product, rate, sharePct, usd, injury, 0);
    }

    Pass spray(String product, double share, LocalDate day, Distribution injury) {
        return pass(
                PassKind.SPRAY, day, product, rate(share), 100, number("trip", "custom rate: spraying now"), injury);
    }

    Pass harvest() {
        String combine = switch (crop) {
            case CORN -> "custom rate: combine corn";
            case SOYBEAN -> "custom rate: combine soybean";
            case WHEAT -> "custom rate: combine small grain";
        };
        return pass(
                PassKind.HARVEST,
                day("harvest day"),
                null,
                null,
                100,
                typical(combine).likely(),
                new Distribution.Fixed(0));
    }

    /** About a number that was told, from so many times less to so many times more; nothing where it is nothing. */
    static Distribution about(double told, double times, double highest) {
        double high = Math.min(highest, told * times);
        return told <= 0 || high <= told / times
                ? new Distribution.Fixed(told)
                : new Distribution.Pert(told / times, Math.min(told, high), high);
    }

    AskedSeason done() {
        Double acres = answers.numbers().get("acres");
        Field field =
                new Field(FIELD, FARM, acres == null ? ACRES : acres, null, state(), "", crop, null, null, null, null);
        Season season = new Season(
                year,
                asOf,
                "",
                List.of(new Farm(FARM, "", 1, 1)),
                List.of(field),
                history,
                new Shelf(products, seeds, traits, List.of(), labelUses, List.of(), controls),
                new Pests(insects, traitDoubts, weeds),
                programs,
                assumptions,
                Ground.UNKNOWN,
                Work.NONE.withStands(stands));
        return new AskedSeason(season, field, List.copyOf(used.values()), Map.copyOf(boxes));
    }

    /** "4.70" as a box shows it. */
    static String shown(double value) {
        return Numbers.plain(value);
    }
}
