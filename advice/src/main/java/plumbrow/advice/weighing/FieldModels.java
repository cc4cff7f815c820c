package plumbrow.advice.weighing;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.assumptions.AssumptionLine;
import plumbrow.advice.assumptions.AssumptionQuantity;
import plumbrow.advice.assumptions.Chances;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.assumptions.DoubtKind;
import plumbrow.advice.assumptions.SiteSpread;
import plumbrow.advice.done.DoneWork;
import plumbrow.advice.field.Crop;
import plumbrow.advice.field.Farm;
import plumbrow.advice.field.Field;
import plumbrow.advice.pests.InsectPressure;
import plumbrow.advice.prices.OldPrice;
import plumbrow.advice.program.Program;
import plumbrow.advice.season.Season;
import plumbrow.advice.weedseason.FieldSeason;
import plumbrow.advice.weedseason.SeasonAnswer;
import plumbrow.advice.weedseason.SeasonLacks;
import plumbrow.advice.weedseason.SeasonWeather;
import plumbrow.advice.weedseason.WeedSeasons;
import plumbrow.science.figure.Numbers;

/** Boils a field of a season down to what the kernel reads, or says what the season lacks. */
final class FieldModels {
    private static final double TIE_LIMIT = 0.95;

    private final Season season;
    private final Field field;
    private final Variables variables;
    private final Map<String, Distribution> changed;
    private final DoneWork done;
    private final List<String> cautions = new ArrayList<>();

    private FieldModels(Season season, Field field, Map<String, Distribution> changed, DoneWork done) {
        this.done = done;
        this.season = season;
        this.field = field;
        this.changed = changed;
        this.variables = new Variables(changed);
    }

    /**
     * The model of a field.
     *
     * @param changed distributions that a person put in place of the season's, by input id
     * @throws SeasonGapException where the season lacks what weighing needs
     */
    static FieldModel of(Season season, Field field, Map<String, Distribution> changed) {
        return of(season, field, changed, DoneWork.of(season, field));
    }

    /** As {@link #of(Season, Field, Map)}, where what was done belongs to more programs than those of the season at hand. */
    static FieldModel of(Season season, Field field, Map<String, Distribution> changed, DoneWork done) {
        return new FieldModels(season, field, changed, done).build();
    }

    private FieldModel build() {
        Farm farm = season.farm(field.farm())
                .orElseThrow(() -> gap("its farm '" + field.farm() + "' is not in the farms sheet"));
        List<Program> programs = season.programs(field.name());
        if (programs.isEmpty()) {
            throw gap("it has no program; enter at least one in the programs sheet");
        }
        if (programs.stream().filter(Program::baseline).count() != 1) {
            throw gap("exactly one of its programs must be the baseline");
        }
        int price = assumptions(AssumptionQuantity.PRICE, null);
        int yield = assumptions(AssumptionQuantity.YIELD, null);
        int handling = assumptions(AssumptionQuantity.HANDLING, 0.0);
        int drying = season.assumptions(field, AssumptionQuantity.DRYING).isPresent()
                ? assumptions(AssumptionQuantity.DRYING, 0.0)
                : -1;
        if (drying < 0 && farm.cropShare() < 1 && farm.shares().hauling() == null) {
            cautions.add("Drying is part of handling in the assumptions, and the operator of " + farm.name()
                    + " is charged all of it. Where the landowner pays for drying his share, enter drying by itself.");
        }
        int lag = assumptions(AssumptionQuantity.GENETIC_LAG, 0.0);
        int delay = assumptions(AssumptionQuantity.DELAY_LOSS, 0.0);
        List<ProgramModel.Insect> insects = insects();
        WeatherTie weather = weather();
        ProgramModels reader = new ProgramModels(season, field, farm, variables, insects, cautions, season(), done);
        cautions.addAll(0, done.sentences());
        List<ProgramModel> models = programs.stream().map(reader::of).toList();
        refuseUnknownChanges();
        spreads();
        oldPrices(programs);
        return new FieldModel(
                field,
                farm,
                variables.all(),
                price,
                yield,
                handling,
                drying,
                lag,
                delay,
                tie(),
                weather,
                models,
                List.copyOf(cautions));
    }

    /** The season of the field's weeds, where there is all that it needs; which way was taken stands among the cautions. */
    private @Nullable FieldSeason season() {
        if (WeedSeasons.weeds(season, field).isEmpty()) {
            return null;
        }
        SeasonAnswer answer = WeedSeasons.of(season, field, variables);
        if (answer instanceof FieldSeason followed) {
            cautions.add("Weeds are followed day by day through " + followed.climateSource()
                    + ". Loss per plant differs between sites by a factor of several.");
            cautions.addAll(followed.cautions());
            return followed;
        }
        cautions.add(
                "Weeds are weighed by what the passes leave, whenever they come up. To follow them day by day there is"
                        + " missing: " + String.join("; ", ((SeasonLacks) answer).missing()) + ".");
        return null;
    }

    /**
     * How many insects come counts as the year's, though a field keeps some of it (eggs in the ground): a year moves it by a
     * factor. What one of them costs is drawn as doubt about a mean, which holds from year to year, and so counts as the field's.
     */
    private List<ProgramModel.Insect> insects() {
        List<ProgramModel.Insect> insects = new ArrayList<>();
        for (InsectPressure pressure : season.pests().insects()) {
            if (!pressure.field().equals(field.name())) {
                continue;
            }
            String insect = pressure.insect();
            String unit = pressure.measure().unit();
            int count = variables.place(
                    "pressure: " + insect,
                    "untreated pressure of " + insect,
                    unit,
                    pressure.pressure(),
                    pressure.source(),
                    "pressure of " + insect + " on " + field.name(),
                    DoubtKind.YEAR);
            SiteSpread.Drawn perUnit = pressure.measure() == InsectPressure.Measure.NODE_INJURY
                    ? SiteSpread.lossPerNode(pressure.lossPerUnitPct())
                    : SiteSpread.lossPerInsect(pressure.lossPerUnitPct());
            int loss = variables.place(
                    "loss: " + insect,
                    "yield lost to " + insect,
                    "% per " + pressure.measure().one(),
                    perUnit.distribution(),
                    perUnit.source(pressure.source()),
                    perUnit.stream("loss to " + insect, field.name()),
                    DoubtKind.FIELD);
            insects.add(new ProgramModel.Insect(
                    insect,
                    pressure.measure(),
                    count,
                    pressure.measure().cap(),
                    loss,
                    pressure.neighbourShare(),
                    List.of()));
        }
        return insects;
    }

    /** The place of assumptions quantity; without a line for it, the number without doubt that stands in, or a gap. */
    private int assumptions(AssumptionQuantity quantity, @Nullable Double standIn) {
        Optional<AssumptionLine> line = season.assumptions(field, quantity);
        if (line.isEmpty() && standIn == null) {
            throw gap("the assumptions have no " + quantity.word() + " for it or for "
                    + field.crop().word());
        }
        Distribution distribution = line.map(AssumptionLine::distribution)
                .orElseGet(() -> new Distribution.Fixed(standIn == null ? 0 : standIn));
        String source = line.map(AssumptionLine::source).orElse("not in the assumptions: taken as none");
        boolean own = line.map(found -> found.field() != null).orElse(false);
        boolean shared = quantity != AssumptionQuantity.YIELD && !own;
        return variables.place(
                quantity.word(),
                quantity == AssumptionQuantity.PRICE
                        ? "price of " + field.crop().word()
                        : label(quantity),
                quantity.unit(),
                distribution,
                source,
                quantity.word() + " of " + (shared ? field.crop().word() : field.name()),
                quantity.doubt());
    }

    private String label(AssumptionQuantity quantity) {
        return switch (quantity) {
            case YIELD -> "attainable yield";
            case HANDLING ->
                season.assumptions(field, AssumptionQuantity.DRYING).isPresent()
                        ? "haul and check-off"
                        : "drying and haul";
            case DRYING -> "drying";
            case GENETIC_LAG -> "genetic lag of older seed";
            case DELAY_LOSS -> "loss per day of delay";
            case PRICE, BEST_STAND, PRICE_YIELD_TIE, WEATHER_YIELD_TIE -> quantity.word();
        };
    }

    private double tie() {
        double tie = season.assumptions(field, AssumptionQuantity.PRICE_YIELD_TIE)
                .map(line -> Chances.of(line.distribution()).mean())
                .orElse(0.0);
        if (Math.abs(tie) > TIE_LIMIT) {
            throw gap("the price-yield tie is " + tie + "; expected −0.95 to 0.95");
        }
        return tie;
    }

    /** One sentence on all inputs of which one number was entered and spread. */
    private void spreads() {
        List<String> spread = variables.all().stream()
                .filter(variable -> variable.source().contains(SiteSpread.ONE_NUMBER))
                .map(Variable::label)
                .toList();
        if (!spread.isEmpty()) {
            cautions.add("One number was entered for: " + String.join("; ", spread)
                    + ". Fields and years differ in them, so each is drawn about its number with the spread of published trials"
                    + " (the list of inputs says how wide). Enter lowest and highest to put your own in its place.");
        }
    }

    /** One sentence on all prices of an earlier season that count here and that nobody has confirmed for this one. */
    private void oldPrices(List<Program> programs) {
        Set<String> used = new HashSet<>();
        programs.forEach(program -> program.passes().forEach(pass -> {
            if (pass.product() != null) {
                used.add(pass.product());
            }
        }));
        List<OldPrice> old = new ArrayList<>();
        for (AssumptionQuantity quantity : AssumptionQuantity.values()) {
            season.assumptions(field, quantity).flatMap(OldPrice::of).ifPresent(old::add);
        }
        season.shelf().products().stream()
                .filter(product -> used.contains(product.name()))
                .forEach(product -> OldPrice.of(product).ifPresent(old::add));
        if (!old.isEmpty()) {
            cautions.add(OldPrice.sentence(old));
        }
    }

    /** The season's weather and how the yield hangs on it; empty where its weather is not known, or all of it is. */
    private @Nullable WeatherTie weather() {
        SeasonWeather weather = SeasonWeather.of(season, field).orElse(null);
        if (weather == null) {
            return null;
        }
        Optional<AssumptionLine> line = season.assumptions(field, AssumptionQuantity.WEATHER_YIELD_TIE);
        double tie = line.map(found -> Chances.of(found.distribution()).mean()).orElse(WeatherTie.USUAL);
        if (Math.abs(tie) > TIE_LIMIT) {
            throw gap("the weather-yield tie is " + tie + "; expected −0.95 to 0.95");
        }
        int place = weather.place(variables);
        double[] summer = weather.summer(field.crop());
        if (summer.length > 0 && tie != 0) {
            cautions.add("Yield goes with the weather of the season: rank correlation " + Numbers.plain(tie)
                    + (field.crop() == Crop.CORN ? " with a wet, cool July" : " with a wet, cool August")
                    + " (" + line.map(AssumptionLine::source).orElse(WeatherTie.SOURCE) + ").");
        }
        return new WeatherTie(place, weather, summer, tie);
    }

    private void refuseUnknownChanges() {
        Map<String, Variable> known = new LinkedHashMap<>();
        variables.all().forEach(variable -> known.put(variable.id(), variable));
        for (String id : changed.keySet()) {
            if (!known.containsKey(id)) {
                throw gap("it has no uncertain input '" + id + "' to change");
            }
        }
    }

    private SeasonGapException gap(String what) {
        return new SeasonGapException(field.name() + " can't be weighed: " + what + ".");
    }
}
