package plumbrow.advice.weedseason;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.field.Crop;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.ActiveName;
import plumbrow.advice.weeds.Timing;
import plumbrow.advice.weeds.WeedRating;

/** The ratings by which the weed season reckons, to be read by a person: the adviser's own, then what is published. */
public final class ShelfRatings {
    private static final double CM_PER_INCH = 2.54;

    private ShelfRatings() {}

    /**
     * One rating.
     *
     * @param actives what is rated: the product's own name, or the active ingredients
     * @param control share of the plants killed, as the weed season takes it
     * @param rate at which it was seen; null where no label rate is on file
     * @param heightIn height of the weed [in]; null on soil
     * @param source provenance in words
     */
    public record Rated(
            List<String> actives,
            Timing timing,
            Distribution control,
            @Nullable Amount rate,
            @Nullable Double heightIn,
            String source) {
        public Rated {
            actives = List.copyOf(actives);
        }
    }

    /** The adviser's own ratings of a product on a weed, as they were entered. */
    public static List<Rated> own(Season season, String product, String weed, Timing timing) {
        return season.pests().weedBook().ratings().stream()
                .filter(row ->
                        row.product().equals(product) && row.weed().equalsIgnoreCase(weed) && row.timing() == timing)
                .map(row -> rated(List.of(product), row))
                .toList();
    }

    private static Rated rated(List<String> actives, WeedRating row) {
        return rated(actives, row.timing(), RatingBook.found(row));
    }

    /** What is published on the active ingredients of a product together, else on each of them that is rated by itself. */
    public static List<Rated> published(Season season, Crop crop, String product, String weed, Timing timing) {
        String as = WeedSeasons.species(season, weed).map(one -> one.name()).orElse(weed);
        RatingBook book = new RatingBook(season, crop);
        List<String> actives = season.shelf().actives(product).stream()
                .map(active -> ActiveName.plain(active.ingredient()))
                .toList();
        Optional<FoundRating> whole = book.published(product, actives, weed, as, timing);
        if (whole.isPresent()) {
            return List.of(rated(actives, timing, whole.get()));
        }
        List<Rated> single = new ArrayList<>();
        if (actives.size() > 1) {
            for (String active : actives) {
                book.published(product, List.of(active), weed, as, timing)
                        .ifPresent(found -> single.add(rated(List.of(active), timing, found)));
            }
        }
        return single;
    }

    private static Rated rated(List<String> actives, Timing timing, FoundRating found) {
        return new Rated(
                actives,
                timing,
                found.distribution(),
                found.rate(),
                timing == Timing.SOIL ? null : found.heightCm() / CM_PER_INCH,
                found.source());
    }
}
