package plumbrow.advice.weedseason;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.assumptions.SiteSpread;
import plumbrow.advice.field.Crop;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.LabelUse;
import plumbrow.advice.weeds.Basis;
import plumbrow.advice.weeds.Timing;
import plumbrow.advice.weeds.WeedRating;
import plumbrow.science.reference.EfficacyGuide;
import plumbrow.science.reference.Rating;
import plumbrow.science.reference.Ratings;

/**
 * Finds the rating of a product or of its active ingredients on a weed: the adviser's own before what is published.
 *
 * Published ratings hold for susceptible plants at the labelled rate and size: taken as seen at the middle of the label's
 * rates. They are the middle of a spread between trials ({@link SiteSpread}); doubt about that middle falls with their number, and
 * is as much again where they are from another crop or another weed. A row that gives only the best mean is no expected value and is left out.
 */
final class RatingBook {
    private static final double CM_PER_INCH = 2.54;
    private static final double SAME = 1e-6;
    private static final List<String> ON_SOIL = List.of("pre-emergence", "preplant-incorporated");
    private static final List<String> ON_LEAVES = List.of("post-emergence", "burndown");

    private final Season season;
    private final Crop crop;

    RatingBook(Season season, Crop crop) {
        this.season = season;
        this.crop = crop;
    }

    /**
     * The adviser's own rating of a product, the one nearest in rate; of several at that rate the first on leaves, on soil that of
     * the earliest day together with that of the last.
     */
    Optional<FoundRating> own(String product, FieldWeed weed, Timing timing, Amount rate) {
        List<WeedRating> rows = season.pests().weedBook().ratings().stream()
                .filter(row -> row.product().equals(product)
                        && row.weed().equalsIgnoreCase(weed.name())
                        && row.timing() == timing
                        && row.rate().comparableWith(rate))
                .toList();
        Optional<WeedRating> nearest =
                rows.stream().min(Comparator.comparingDouble((WeedRating row) -> away(row, rate)));
        if (nearest.isEmpty() || timing == Timing.LEAF) {
            return nearest.map(RatingBook::found);
        }
        List<WeedRating> looks = rows.stream()
                .filter(row -> away(row, nearest.get().rate()) < SAME)
                .sorted(Comparator.comparingInt(RatingBook::seenDays))
                .toList();
        WeedRating first = looks.get(0);
        WeedRating last = looks.get(looks.size() - 1);
        FoundRating found = found(first);
        return Optional.of(
                seenDays(last) == seenDays(first)
                        ? found
                        : found.with(new FoundRating.Later(FoundRating.likely(last.control()), seenDays(last))));
    }

    private static double away(WeedRating row, Amount rate) {
        return Math.abs(Math.log(row.rate().inBase() / Math.max(1e-12, rate.inBase())));
    }

    private static int seenDays(WeedRating row) {
        Integer days = row.seenDays();
        return days == null ? FoundRating.USUAL_DAYS : days;
    }

    static FoundRating found(WeedRating row) {
        Double height = row.heightIn();
        boolean borrowed = row.asFor() != null;
        SiteSpread.Drawn drawn =
                row.timing() == Timing.SOIL ? SiteSpread.soil(row.control(), true) : SiteSpread.leaf(row.control());
        return new FoundRating(
                borrowed ? FoundRating.widened(drawn.distribution()) : drawn.distribution(),
                row.rate(),
                height == null ? FoundRating.USUAL_HEIGHT_CM : height * CM_PER_INCH,
                seenDays(row),
                row.basis() == Basis.OWN_RATING,
                null,
                drawn.source(row.basis().word() + ": " + row.source())
                        + (borrowed ? "; borrowed, as for " + row.asFor() + ", and widened" : ""));
    }

    /** What is published on exactly these active ingredients together. */
    Optional<FoundRating> published(String product, List<String> actives, FieldWeed weed, Timing timing) {
        return published(product, actives, weed.name(), weed.as(), timing);
    }

    /** The same for a weed by its name, and by that of the one that stands in for it. */
    Optional<FoundRating> published(String product, List<String> actives, String weed, String as, Timing timing) {
        for (String name : as.equalsIgnoreCase(weed) ? List.of(weed) : List.of(weed, as)) {
            for (String word : timing == Timing.SOIL ? ON_SOIL : ON_LEAVES) {
                Ratings ratings = EfficacyGuide.packed().ratings(actives, name, word, crop.word());
                boolean elsewhere = ratings.onSusceptible().isEmpty();
                List<Rating> rows = (elsewhere ? ratings.elsewhere() : ratings.onSusceptible())
                        .stream()
                                .filter(row -> !row.onResistantPlants()
                                        && row.lowPercent().isPresent())
                                .toList();
                if (!rows.isEmpty()) {
                    boolean borrowed = elsewhere || !name.equalsIgnoreCase(weed);
                    return Optional.of(found(product, rows, timing, borrowed, elsewhere, name, weed));
                }
            }
        }
        return Optional.empty();
    }

    private FoundRating found(
            String product,
            List<Rating> rows,
            Timing timing,
            boolean borrowed,
            boolean elsewhere,
            String name,
            String weed) {
        double mean = rows.stream()
                .mapToDouble(row -> (row.lowPercent().orElseThrow() + row.highPercent()) / 200)
                .average()
                .orElseThrow();
        Distribution distribution = SiteSpread.ofRatings(mean, rows.size(), timing == Timing.SOIL, borrowed);
        List<String> words = new ArrayList<>();
        words.add(
                rows.size() == 1
                        ? "published: " + rows.get(0).origin().source()
                        : rows.size() + " published ratings, the first "
                                + rows.get(0).origin().source());
        if (elsewhere) {
            words.add("seen in another crop, so widened");
        }
        if (!name.equalsIgnoreCase(weed)) {
            words.add("borrowed, as for " + name + ", and widened");
        }
        words.add("for susceptible plants at the labelled rate and size");
        double height = rows.stream()
                .flatMapToDouble(row -> row.tallestInches().stream())
                .map(inches -> inches * CM_PER_INCH)
                .average()
                .orElse(FoundRating.USUAL_HEIGHT_CM);
        return new FoundRating(
                distribution, labelled(product), height, FoundRating.USUAL_DAYS, false, null, String.join("; ", words));
    }

    /** The middle of the label's rates. */
    private @Nullable Amount labelled(String product) {
        LabelUse use = season.shelf().labelUse(product, crop).orElse(null);
        if (use == null) {
            return null;
        }
        Amount low = use.lowRate();
        Amount high = use.highRate();
        if (low == null || high == null || !low.comparableWith(high)) {
            return high == null ? low : high;
        }
        return new Amount((low.in(high.unit()).value() + high.value()) / 2, high.unit());
    }
}
