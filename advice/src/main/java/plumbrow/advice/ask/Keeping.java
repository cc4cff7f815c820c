package plumbrow.advice.ask;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import plumbrow.advice.assumptions.AssumptionLine;
import plumbrow.advice.field.CropYear;
import plumbrow.advice.field.Farm;
import plumbrow.advice.field.Field;
import plumbrow.advice.pests.InsectPressure;
import plumbrow.advice.pests.Pests;
import plumbrow.advice.pests.TraitDoubt;
import plumbrow.advice.pests.WeedPressure;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.Program;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.Control;
import plumbrow.advice.shelf.LabelUse;
import plumbrow.advice.shelf.Product;
import plumbrow.advice.shelf.Seed;
import plumbrow.advice.shelf.Shelf;
import plumbrow.advice.shelf.Trait;
import plumbrow.advice.stand.StandCount;

/**
 * Keeps the field of a question in a season: under names of its own, beside what is there. Products and traits whose name is taken
 * get the field's name besides, so that nothing that stood in the season changes.
 *
 * @param field name of the field in the book, {@code farm} and {@code grower} of its farm, {@code county} without the word county
 */
public record Keeping(String field, String farm, String grower, String county) {
    /** The asked season by itself, under these names. */
    public Season alone(AskedSeason asked) {
        return named(asked, name -> name, true);
    }

    /**
     * The season with the field added.
     *
     * @throws IllegalArgumentException with a sentence where a field of this name is there already, or the years differ
     */
    public Season into(Season season, AskedSeason asked) {
        if (season.field(field).isPresent()) {
            throw new IllegalArgumentException("There is a field called '" + field + "' in " + season.year()
                    + " already; give this one another name.");
        }
        if (season.year() != asked.season().year()) {
            throw new IllegalArgumentException("The book's season is " + season.year() + ", and this question is about "
                    + asked.season().year() + ".");
        }
        Set<String> taken = new HashSet<>();
        season.shelf().products().forEach(product -> taken.add(product.name()));
        season.shelf().traits().forEach(trait -> {
            taken.add(trait.name());
            taken.add(trait.group());
        });
        Season own = named(
                asked,
                name -> taken.contains(name) ? name + ", " + field : name,
                season.farm(farm).isEmpty());
        Shelf there = season.shelf();
        Shelf more = own.shelf();
        Pests pests = season.pests();
        return new Season(
                season.year(),
                season.asOf(),
                season.adviser(),
                both(season.farms(), own.farms()),
                both(season.fields(), own.fields()),
                both(season.history(), own.history()),
                new Shelf(
                        both(there.products(), more.products()),
                        both(there.seeds(), more.seeds()),
                        both(there.traits(), more.traits()),
                        there.actives(),
                        both(there.labelUses(), more.labelUses()),
                        there.activeLimits(),
                        both(there.controls(), more.controls()),
                        there.labels()),
                new Pests(
                        both(pests.insects(), own.pests().insects()),
                        both(pests.traitDoubts(), own.pests().traitDoubts()),
                        both(pests.weeds(), own.pests().weeds()),
                        pests.resistance(),
                        pests.weedBook()),
                both(season.programs(), own.programs()),
                both(season.assumptions(), own.assumptions()),
                season.ground(),
                season.work().withStands(both(season.work().stands(), own.work().stands())));
    }

    private static <T> List<T> both(List<T> there, List<T> more) {
        List<T> all = new ArrayList<>(there);
        all.addAll(more);
        return all;
    }

    private Season named(AskedSeason asked, UnaryOperator<String> free, boolean newFarm) {
        Season season = asked.season();
        Field was = asked.field();
        Map<String, String> renamed = new LinkedHashMap<>();
        season.shelf().products().forEach(product -> renamed.put(product.name(), free.apply(product.name())));
        season.shelf().traits().forEach(trait -> {
            renamed.put(trait.name(), free.apply(trait.name()));
            renamed.put(trait.group(), free.apply(trait.group()));
        });
        UnaryOperator<String> of = name -> renamed.getOrDefault(name, name);
        Shelf shelf = season.shelf();
        return new Season(
                season.year(),
                season.asOf(),
                season.adviser(),
                newFarm ? List.of(new Farm(farm, grower, 1, 1)) : List.of(),
                List.of(new Field(
                        field,
                        farm,
                        was.acres(),
                        null,
                        was.state(),
                        county,
                        was.crop(),
                        was.texture(),
                        was.organicMatterPct(),
                        was.ph(),
                        was.slopePct())),
                season.history().stream()
                        .map(one -> new CropYear(field, one.year(), one.crop(), one.yieldBuPerAcre()))
                        .toList(),
                shelf(shelf, of),
                pests(season.pests(), of),
                season.programs().stream().map(program -> program(program, of)).toList(),
                season.assumptions().stream()
                        .map(line -> new AssumptionLine(
                                line.crop(),
                                line.field() == null ? null : field,
                                line.quantity(),
                                line.distribution(),
                                line.source()))
                        .toList(),
                season.ground(),
                season.work()
                        .withStands(season.work().stands().stream()
                                .map(count -> new StandCount(
                                        field,
                                        count.planted(),
                                        count.counted(),
                                        count.plantsPerAcre(),
                                        count.gapsLossPct(),
                                        count.paymentUsdPerAcre(),
                                        count.source()))
                                .toList()));
    }

    private static Shelf shelf(Shelf shelf, UnaryOperator<String> of) {
        return new Shelf(
                shelf.products().stream()
                        .map(one -> new Product(
                                of.apply(one.name()),
                                one.kind(),
                                one.priceUsd(),
                                one.pricedPer(),
                                one.onHand(),
                                one.registration(),
                                one.states(),
                                one.excludedCounties(),
                                one.labelDate(),
                                one.source()))
                        .toList(),
                shelf.seeds().stream()
                        .map(one -> new Seed(
                                of.apply(one.product()),
                                one.crop(),
                                one.seedsPerUnit(),
                                one.seedsPerPound(),
                                one.germinationPct(),
                                one.emergencePct(),
                                one.traits().stream().map(of).toList(),
                                one.blendRefugePct(),
                                one.rule(),
                                one.gainBuPerAcre(),
                                one.standPct(),
                                one.saved(),
                                one.rights(),
                                one.tag()))
                        .toList(),
                shelf.traits().stream()
                        .map(one -> new Trait(
                                of.apply(one.name()), of.apply(one.group()), one.insect(), one.control(), one.source()))
                        .toList(),
                List.of(),
                shelf.labelUses().stream()
                        .map(one -> new LabelUse(
                                of.apply(one.product()),
                                one.crop(),
                                one.lowRate(),
                                one.highRate(),
                                one.lessForbidden(),
                                one.seasonMax(),
                                one.mostApplications(),
                                one.preHarvestDays(),
                                one.source()))
                        .toList(),
                List.of(),
                shelf.controls().stream()
                        .map(one ->
                                new Control(of.apply(one.product()), one.pest(), one.rate(), one.share(), one.source()))
                        .toList());
    }

    private Pests pests(Pests pests, UnaryOperator<String> of) {
        return new Pests(
                pests.insects().stream()
                        .map(one -> new InsectPressure(
                                field,
                                one.insect(),
                                one.measure(),
                                one.pressure(),
                                one.lossPerUnitPct(),
                                one.neighbourShare(),
                                one.sample(),
                                one.scouted(),
                                one.source()))
                        .toList(),
                pests.traitDoubts().stream()
                        .map(one -> new TraitDoubt(
                                field,
                                of.apply(one.group()),
                                one.insect(),
                                one.chance(),
                                one.controlIfFailed(),
                                one.source()))
                        .toList(),
                pests.weeds().stream()
                        .map(one -> new WeedPressure(
                                field,
                                one.weed(),
                                one.densityPerSquareMetre(),
                                one.lossPerPlantPct(),
                                one.mostLossPct(),
                                one.source()))
                        .toList());
    }

    private Program program(Program program, UnaryOperator<String> of) {
        return new Program(
                field,
                program.name(),
                program.baseline(),
                program.refuge(),
                program.note(),
                program.passes().stream()
                        .map(pass -> new Pass(
                                pass.number(),
                                pass.kind(),
                                pass.date(),
                                pass.product() == null ? null : of.apply(pass.product()),
                                pass.rate(),
                                pass.sharePct(),
                                pass.chargeUsdPerAcre(),
                                pass.injuryPct(),
                                pass.delayDays(),
                                pass.trigger()))
                        .toList());
    }
}
