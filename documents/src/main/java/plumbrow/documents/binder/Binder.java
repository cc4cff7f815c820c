package plumbrow.documents.binder;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Field;
import plumbrow.advice.fieldplan.FarmPage;
import plumbrow.advice.fieldplan.FarmPages;
import plumbrow.advice.fieldplan.FieldPlan;
import plumbrow.advice.hours.HourlyWeather;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.Advice;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.documents.FileTrouble;
import plumbrow.documents.WholeFile;
import plumbrow.documents.card.ProductCard;

/**
 * The printed packet of one grower: the page of each of his farms, the plan of each field, the load cards, the product cards, and on
 * request an annex with odds, findings and workings.
 *
 * <p>Dates in the file are those of the season and not of the clock: the same contents give the same file.
 */
public final class Binder {
    private Binder() {}

    /**
     * What is asked for besides the plans.
     *
     * @param advice of the fields of the packet
     * @param weather hourly weather of a field, from which the season pictures have their fit hours
     */
    public record Annex(Advice advice, Function<Field, Optional<HourlyWeather>> weather) {}

    /**
     * What a packet is made of.
     *
     * @param plans of fields of one grower, one at least
     * @param cards of the products that go out, where their papers are on file
     * @param annex null where none is asked for
     * @param recordHead the head of the book's record as the book prints it, by which anybody can check later that nothing up to this
     *     day was changed; empty where the season comes from no book
     */
    public record Contents(
            Season season,
            List<FieldPlan> plans,
            List<ProductCard> cards,
            @Nullable Annex annex,
            String recordHead) {
        public Contents {
            plans = List.copyOf(plans);
            cards = List.copyOf(cards);
            List<String> growers = growers(plans, annex);
            if (growers.size() != 1) {
                throw new IllegalArgumentException(
                        growers.isEmpty()
                                ? "There is no field to make a binder of."
                                : "A binder holds the money of one grower; these are fields of "
                                        + String.join(", ", growers) + ". Name a farm or fields of one of them.");
            }
        }

        private static List<String> growers(List<FieldPlan> plans, @Nullable Annex annex) {
            return Stream.concat(
                            plans.stream().map(FieldPlan::grower),
                            annex == null
                                    ? Stream.of()
                                    : annex.advice().fields().stream().map(FieldAdvice::grower))
                    .distinct()
                    .toList();
        }
    }

    /**
     * Writes the binder as PDF, in place of an older one of that name.
     *
     * @throws FileTrouble if the file can't be written; an older one is then still as it was
     */
    public static void write(Contents contents, Path pdf) {
        byte[] file = print(contents);
        WholeFile.write(pdf, out -> out.write(file));
    }

    /** The binder as PDF. */
    public static byte[] print(Contents contents) {
        Season season = contents.season();
        List<FarmPage> farms = FarmPages.of(season, contents.plans());
        List<FieldPlan> plans = farms.stream()
                .flatMap(farm -> contents.plans().stream()
                        .filter(plan -> plan.field().farm().equals(farm.farm())))
                .toList();
        List<Sheet> sheets = new ArrayList<>();
        int first = farms.size();
        for (FarmPage farm : farms) {
            List<Integer> places = new ArrayList<>();
            for (int i = 0; i < farm.rows().size(); i++) {
                places.add(first + i);
            }
            first += places.size();
            sheets.add(new FarmSheet(farm, places, sheets.isEmpty() ? contents.recordHead() : ""));
        }
        plans.forEach(plan -> sheets.add(new FieldPlanSheet(plan)));
        plans.forEach(plan -> FarmPages.loadCards(season, plan).forEach(card -> sheets.add(new LoadCardSheet(card))));
        contents.cards().forEach(card -> sheets.add(new ProductCardSheet(card)));
        Annex annex = contents.annex();
        if (annex != null) {
            sheets.addAll(Annexes.of(season, annex));
        }
        String grower = plans.get(0).grower();
        return Packet.print(
                "Binder for the " + season.year() + " season" + (grower.isEmpty() ? "" : ", " + grower),
                "What to do on each field, as of " + season.asOf(),
                season.adviser(),
                sheets,
                season.asOf());
    }

    /** The products that go out by these plans, for whose cards to look; in the order of the plans. */
    public static List<String> products(Season season, List<FieldPlan> plans) {
        return plans.stream()
                .flatMap(plan -> FarmPages.loadCards(season, plan).stream())
                .flatMap(card -> card.products().stream())
                .distinct()
                .toList();
    }
}
