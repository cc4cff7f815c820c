package plumbrow.advice.pestpage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.ProductKind;
import plumbrow.science.reference.EfficacyGuide;
import plumbrow.science.reference.Rating;
import plumbrow.science.weedseason.KnownWeeds;

/** The pests that have a page: those of the fields first, then those that are only rated or known. */
public final class PestNames {
    private final Season season;
    private final Map<String, PestName> found = new LinkedHashMap<>();

    private PestNames(Season season) {
        this.season = season;
    }

    /** All of a season, most fields first, then by name. */
    public static List<PestName> of(Season season) {
        return new PestNames(season).all();
    }

    /** By name, capitals ignored. */
    public static Optional<PestName> find(Season season, String name) {
        return of(season).stream()
                .filter(one -> one.name().equalsIgnoreCase(name.strip()))
                .findFirst();
    }

    private List<PestName> all() {
        season.pests().weeds().forEach(weed -> add(weed.weed(), PestKind.WEED));
        season.pests().insects().forEach(insect -> add(insect.insect(), PestKind.INSECT));
        season.pests().traitDoubts().forEach(doubt -> add(doubt.insect(), PestKind.INSECT));
        season.shelf().traits().forEach(trait -> add(trait.insect(), PestKind.INSECT));
        season.pests().weedBook().ratings().forEach(row -> add(row.weed(), PestKind.WEED));
        season.pests().weedBook().likes().forEach(row -> add(row.weed(), PestKind.WEED));
        season.pests().resistance().forEach(row -> add(row.weed(), PestKind.WEED));
        season.shelf()
                .controls()
                .forEach(row -> season.shelf()
                        .product(row.product())
                        .ifPresent(product -> add(
                                row.pest(),
                                product.kind() == ProductKind.HERBICIDE ? PestKind.WEED : PestKind.INSECT)));
        KnownWeeds.all().forEach(weed -> add(weed.name(), PestKind.WEED));
        KnownInsect.all().forEach(insect -> add(insect.name(), PestKind.INSECT));
        EfficacyGuide.packed().all().stream().map(Rating::weed).distinct().forEach(weed -> add(weed, PestKind.WEED));
        List<PestName> all = new ArrayList<>(found.values());
        all.sort(Comparator.comparingInt((PestName one) -> -one.fields().size())
                .thenComparing(one -> one.name().toLowerCase(Locale.ROOT)));
        return all;
    }

    private void add(String name, PestKind kind) {
        found.computeIfAbsent(name.toLowerCase(Locale.ROOT), key -> new PestName(name, kind, fields(name, kind)));
    }

    private List<String> fields(String name, PestKind kind) {
        return switch (kind) {
            case WEED ->
                season.pests().weeds().stream()
                        .filter(row -> row.weed().equalsIgnoreCase(name))
                        .map(row -> row.field())
                        .distinct()
                        .toList();
            case INSECT ->
                season.pests().insects().stream()
                        .filter(row -> row.insect().equalsIgnoreCase(name))
                        .map(row -> row.field())
                        .distinct()
                        .toList();
        };
    }
}
