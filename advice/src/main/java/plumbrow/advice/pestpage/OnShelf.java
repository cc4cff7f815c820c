package plumbrow.advice.pestpage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.assumptions.Chances;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.field.Crop;
import plumbrow.advice.gates.Ingredient;
import plumbrow.advice.gates.ProductGroups;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.Control;
import plumbrow.advice.shelf.Method;
import plumbrow.advice.shelf.Product;
import plumbrow.advice.shelf.ProductKind;
import plumbrow.advice.shelf.Seed;
import plumbrow.advice.shelf.Trait;
import plumbrow.advice.shelf.UseTerms;
import plumbrow.advice.weeds.Timing;
import plumbrow.advice.weedseason.ShelfRatings;

/** How every product of the shelf that is labelled in a crop works on a pest; what nobody has rated is there as unrated. */
final class OnShelf {
    private static final double NARROW = .1;
    private static final String NO_RATING =
            "no rating on file: read the state's guide and your own strips, and type it into the sheet ";

    private final Season season;
    private final String pest;
    private final Crop crop;
    private final List<Works> found = new ArrayList<>();

    private OnShelf(Season season, String pest, Crop crop) {
        this.season = season;
        this.pest = pest;
        this.crop = crop;
    }

    /** Best first, unrated last; in the order of the shelf where alike. */
    static List<Works> of(Season season, PestKind kind, String pest, Crop crop) {
        OnShelf shelf = new OnShelf(season, pest, crop);
        for (Product product : season.shelf().products()) {
            if (kind == PestKind.WEED) {
                shelf.herbicide(product);
            } else {
                shelf.againstInsect(product);
            }
        }
        shelf.found.sort(Comparator.comparing(Works::rank)
                .thenComparingDouble(works -> works.meanPct() == null ? 0 : -works.meanPct()));
        return List.copyOf(shelf.found);
    }

    private void herbicide(Product product) {
        String name = product.name();
        if (product.kind() != ProductKind.HERBICIDE
                || season.shelf().labelUse(name, crop).isEmpty()) {
            return;
        }
        int before = found.size();
        for (Timing timing : Timing.values()) {
            List<ShelfRatings.Rated> own = ShelfRatings.own(season, name, pest, timing);
            own.forEach(rated -> add(name, rated, Works.Rank.OWN));
            if (own.isEmpty()) {
                ShelfRatings.published(season, crop, name, pest, timing)
                        .forEach(rated -> add(name, rated, Works.Rank.PUBLISHED));
            }
        }
        controls(name, Works.Reach.UNSAID);
        if (found.size() == before) {
            unrated(name, Works.Reach.UNSAID, NO_RATING + "ratings");
        }
    }

    private void add(String product, ShelfRatings.Rated rated, Works.Rank rank) {
        boolean own = rank == Works.Rank.OWN;
        found.add(works(
                product,
                own ? product : String.join(" + ", rated.actives()),
                rated.timing() == Timing.SOIL ? Works.Reach.SOIL : Works.Reach.LEAF,
                rated.control(),
                rated.rate(),
                rated.heightIn(),
                own ? groups(product) : groupsOf(rated.actives()),
                rank,
                rated.source()));
    }

    private void controls(String product, Works.Reach reach) {
        for (Control row : season.shelf().controls()) {
            if (row.product().equals(product) && row.pest().equalsIgnoreCase(pest)) {
                found.add(works(
                        product,
                        product,
                        reach,
                        row.share(),
                        row.rate(),
                        null,
                        groups(product),
                        Works.Rank.BOOK,
                        row.source()));
            }
        }
    }

    private void againstInsect(Product product) {
        Seed seed = season.shelf().seed(product.name()).orElse(null);
        if (seed != null) {
            if (seed.crop() == crop) {
                controls(product.name(), Works.Reach.PLANTING);
                season.shelf().traits().stream()
                        .filter(trait -> trait.insect().equalsIgnoreCase(pest)
                                && seed.traits().contains(trait.name()))
                        .forEach(trait -> add(product.name(), trait));
            }
            return;
        }
        boolean treats = product.kind() == ProductKind.INSECTICIDE || product.kind() == ProductKind.SEED_TREATMENT;
        if (!treats || season.shelf().labelUse(product.name(), crop).isEmpty()) {
            return;
        }
        int before = found.size();
        Works.Reach reach = reach(product);
        controls(product.name(), reach);
        if (found.size() == before) {
            unrated(product.name(), reach, NO_RATING + "control");
        }
    }

    private void add(String product, Trait trait) {
        found.add(works(
                product,
                "trait " + trait.name(),
                Works.Reach.PLANTING,
                trait.control(),
                null,
                null,
                List.of(trait.group()),
                Works.Rank.TRAITS,
                trait.source()));
    }

    /** Where the label lets it go both ways, what feeds below ground can be met at planting only. */
    private Works.Reach reach(Product product) {
        UseTerms terms = season.shelf().labels().terms(product.name(), crop).orElse(null);
        Set<Method> methods = terms == null ? null : terms.methods();
        if (product.kind() == ProductKind.SEED_TREATMENT) {
            return Works.Reach.PLANTING;
        }
        if (methods == null) {
            return Works.Reach.UNSAID;
        }
        boolean planting = methods.contains(Method.IN_FURROW) || methods.contains(Method.ON_SEED);
        boolean over = methods.contains(Method.GROUND_BROADCAST) || methods.contains(Method.AERIAL);
        boolean below = KnownInsect.find(pest).filter(KnownInsect::below).isPresent();
        if (planting && (below || !over)) {
            return Works.Reach.PLANTING;
        }
        return over && !planting ? Works.Reach.RESCUE : Works.Reach.UNSAID;
    }

    private void unrated(String product, Works.Reach reach, String lookUp) {
        found.add(new Works(
                product,
                product,
                crop,
                reach,
                null,
                null,
                null,
                null,
                null,
                groups(product),
                Works.Rank.UNRATED,
                lookUp));
    }

    private Works works(
            String product,
            String rated,
            Works.Reach reach,
            Distribution control,
            @Nullable Amount rate,
            @Nullable Double heightIn,
            @Nullable List<String> groups,
            Works.Rank rank,
            String source) {
        var distribution = Chances.of(control);
        double low = control instanceof Distribution.Pert pert ? pert.low() : distribution.quantile(NARROW);
        double high = control instanceof Distribution.Pert pert ? pert.high() : distribution.quantile(1 - NARROW);
        return new Works(
                product,
                rated,
                crop,
                reach,
                100 * low,
                100 * distribution.mean(),
                100 * high,
                rate,
                heightIn,
                groups,
                rank,
                source);
    }

    private @Nullable List<String> groups(String product) {
        return ProductGroups.of(season.shelf(), product).map(OnShelf::inOrder).orElse(null);
    }

    private static @Nullable List<String> groupsOf(List<String> actives) {
        Set<String> groups = new TreeSet<>();
        for (String active : actives) {
            List<String> known = Ingredient.of(active).groups();
            if (known.isEmpty()) {
                return null;
            }
            groups.addAll(known);
        }
        return groups.isEmpty() ? null : inOrder(groups);
    }

    private static List<String> inOrder(Set<String> groups) {
        return groups.stream()
                .sorted(Comparator.comparingInt(String::length).thenComparing(Comparator.naturalOrder()))
                .toList();
    }
}
