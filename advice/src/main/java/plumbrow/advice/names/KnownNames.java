package plumbrow.advice.names;

import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import plumbrow.advice.field.CropName;
import plumbrow.advice.names.NameColumn.Named;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.ProductKind;

/** The names that may be offered for a column of names: what stands in the season first, then what the reference data know. */
public final class KnownNames {
    private KnownNames() {}

    /**
     * Names to choose from, each once; none for words that refer to nothing.
     *
     * @param season the season, of which there may be none yet
     * @param column the column of names
     * @param within what stands in the column within which a name is looked for, such as the state of a county or the field of a
     *     program; empty where nothing stands there yet
     */
    public static List<String> of(Season season, NameColumn column, String within) {
        return switch (column.refers()) {
            case NOTHING, ITSELF -> List.of();
            case FARM -> all(season, "farms", "farm");
            case FIELD -> all(season, "fields", "field");
            case PROGRAM -> all(season, "programs", "program", within);
            case PRODUCT -> all(season, "shelf", "product");
            case TRAIT -> all(season, "traits", "trait");
            case TRAIT_GROUP -> all(season, "traits", "group");
            case TRAIT_INSECT -> all(season, "traits", "insect", within);
            case MACHINE -> all(season, "machines", "machine", within);
            case FIELD_INSECT -> all(season, "insects", "insect", within);
            case PERSON, FORMER_PERSON -> all(season, "people", "person");
            case NAMES_INSECT -> joined(all(season, "insects", "insect"), Vocabulary.INSECTS);
            case NAMES_WEED -> joined(all(season, "weeds", "weed"), Vocabulary.WEEDS);
            case INSECT -> joined(all(season, "insects", "insect"), Vocabulary.INSECTS);
            case WEED -> joined(all(season, "weeds", "weed"), Vocabulary.WEEDS);
            case PEST ->
                joined(
                        joined(all(season, "insects", "insect"), all(season, "weeds", "weed")),
                        joined(sorted(Vocabulary.INSECTS), Vocabulary.WEEDS));
            case ACTIVE -> joined(all(season, "actives", "ingredient"), Vocabulary.ACTIVES);
            case ACTIVE_OF_PRODUCT -> all(season, "actives", "ingredient", within);
            case PARTNER ->
                joined(
                        joined(all(season, "shelf", "product"), all(season, "actives", "ingredient")),
                        Arrays.stream(ProductKind.values())
                                .map(ProductKind::word)
                                .toList());
            case SITE_GROUP -> Vocabulary.SITES;
            case CROP -> joined(all(season, "plant_backs", "next_crop"), CropName.known());
            case LABEL_CROP -> joined(all(season, "next_crops", "crop"), CropName.known());
            case COUNTY -> within.isEmpty() ? List.of() : Vocabulary.countyNames(within);
            case PLACE -> all(season, "fields", "field");
            case GEAR -> all(season, "care", "wear");
        };
    }

    private static List<String> all(Season season, String sheet, String key) {
        return named(season, sheet, key, named -> true);
    }

    private static List<String> all(Season season, String sheet, String key, String within) {
        return named(
                season,
                sheet,
                key,
                named -> within.isEmpty()
                        || named.within().equals(within)
                        || named.field().equals(within)
                        || named.product().equals(within));
    }

    private static List<String> named(Season season, String sheet, String key, Predicate<Named> which) {
        NameColumn column = NameColumn.find(sheet, key);
        return column == null
                ? List.of()
                : column.names().apply(season).stream()
                        .filter(which)
                        .map(Named::name)
                        .distinct()
                        .toList();
    }

    private static List<String> joined(Collection<String> first, Collection<String> then) {
        Set<String> there = first.stream().map(KnownNames::plain).collect(Collectors.toSet());
        return Stream.concat(first.stream(), sorted(then).stream().filter(name -> !there.contains(plain(name))))
                .toList();
    }

    private static List<String> sorted(Collection<String> names) {
        Set<String> sorted = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
        sorted.addAll(names);
        return List.copyOf(sorted);
    }

    private static String plain(String name) {
        return name.toLowerCase(Locale.ROOT);
    }
}
