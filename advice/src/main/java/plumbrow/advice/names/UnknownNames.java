package plumbrow.advice.names;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import plumbrow.advice.field.CropName;
import plumbrow.advice.names.NameColumn.Named;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.ActiveName;
import plumbrow.advice.shelf.PlantBack;
import plumbrow.advice.shelf.ProductKind;

/**
 * Finds the names that refer to nothing: their rows would count as nothing, and nobody would see why. One rule for workbook,
 * desk, command line and programs.
 *
 * <p>A shelf may know pests that no field has this year. Such a name passes where it is a known one, and where it is not
 * wider or narrower than a pest that a field has: control of "rootworm" would leave "western corn rootworm" alone.
 */
public final class UnknownNames {
    private static final int ONE_SLIP = 1;

    private final Map<NameColumn, List<Named>> names = new HashMap<>();
    private final Map<String, Set<String>> held = new HashMap<>();
    private final Map<String, Map<String, Set<String>>> heldWithin = new HashMap<>();
    private final Map<List<Object>, Optional<String>> asked = new HashMap<>();

    private final Predicate<String> there;

    private UnknownNames(Function<NameColumn, List<Named>> names, Predicate<String> there) {
        this.there = there;
        NameColumn.ALL.forEach(column -> this.names.put(column, names.apply(column)));
    }

    /** Those of a season, sheet by sheet. */
    public static List<UnknownName> of(Season season) {
        return among(column -> column.names().apply(season), sheet -> true);
    }

    /** Those of a season that another one, of which it was made by a change, does not have. */
    public static List<UnknownName> added(Season before, Season after) {
        Set<List<String>> known = of(before).stream().map(UnknownNames::key).collect(Collectors.toSet());
        return of(after).stream().filter(name -> !known.contains(key(name))).toList();
    }

    private static List<String> key(UnknownName name) {
        return List.of(name.sheet(), name.column(), name.found(), name.field(), name.product());
    }

    /**
     * Those among names however they are kept.
     *
     * @param there whether a sheet is there at all; what would stand on a missing one is not asked for
     */
    public static List<UnknownName> among(Function<NameColumn, List<Named>> names, Predicate<String> there) {
        UnknownNames known = new UnknownNames(names, there);
        List<UnknownName> unknown = new ArrayList<>();
        for (NameColumn column : NameColumn.ALL) {
            for (Named named : known.names.getOrDefault(column, List.of())) {
                known.expected(column, named)
                        .ifPresent(expected -> unknown.add(new UnknownName(
                                column.sheet(),
                                named.row(),
                                column.key(),
                                named.name(),
                                expected,
                                named.field(),
                                named.product())));
            }
        }
        return unknown;
    }

    /** What would be right where a name is wrong; empty where it is right. */
    private Optional<String> expected(NameColumn column, Named named) {
        String name = named.name();
        return switch (column.refers()) {
            case NOTHING, ITSELF -> Optional.empty();
            case FARM -> row(name, "farms", "farm");
            case FIELD -> row(name, "fields", "field");
            case PRODUCT -> row(name, "shelf", "product");
            case TRAIT -> row(name, "traits", "trait");
            case TRAIT_GROUP -> row(name, "traits", "group");
            case PERSON -> row(name, "people", "person");
            case MACHINE ->
                within(
                        name,
                        "machines",
                        "machine",
                        named.within(),
                        "a machine of " + named.within() + " on the sheet machines");
            case PROGRAM ->
                within(
                        name,
                        "programs",
                        "program",
                        named.within(),
                        "a program of " + named.within() + " on the sheet programs");
            case TRAIT_INSECT ->
                within(
                        name,
                        "traits",
                        "insect",
                        named.within(),
                        "an insect at which the sheet traits aims " + named.within());
            case FIELD_INSECT ->
                within(
                        name,
                        "insects",
                        "insect",
                        named.within(),
                        "an insect of " + named.within() + " on the sheet insects");
            case FORMER_PERSON -> alike(name, all("people", "person"), "as the sheet people spells it");
            case NAMES_INSECT -> slip(name, Vocabulary.INSECTS);
            case NAMES_WEED -> slip(name, Vocabulary.WEEDS);
            case INSECT ->
                pest(column, named, all("insects", "insect"), Vocabulary.INSECTS, "an insect of the sheet insects");
            case WEED -> pest(column, named, all("weeds", "weed"), Vocabulary.WEEDS, "a weed of the sheet weeds");
            case PEST ->
                pest(column, named, pests(), both(), "an insect of the sheet insects or a weed of the sheet weeds");
            case ACTIVE -> active(name);
            case ACTIVE_OF_PRODUCT -> ofProduct(name, named.within());
            case PARTNER -> partner(name);
            case SITE_GROUP ->
                Vocabulary.SITES.contains(name)
                        ? Optional.empty()
                        : Optional.of("the number of a site-of-action group, such as 9 or 14");
            case CROP -> once(column, named, () -> crop(name));
            case LABEL_CROP -> once(column, named, () -> labelCrop(name));
            case COUNTY -> once(column, named, () -> county(name, named.within()));
            case PLACE -> once(column, named, () -> place(name));
            case GEAR -> alike(name, all("care", "wear"), "as the sheet care spells it");
        };
    }

    /** What was asked before is not worked out again: many rows hold the same few names. */
    private Optional<String> once(NameColumn column, Named named, Supplier<Optional<String>> answer) {
        return asked.computeIfAbsent(List.of(column.refers(), named.name(), named.within()), question -> answer.get());
    }

    private Set<String> all(String sheet, String key) {
        return held.computeIfAbsent(sheet + "." + key, at -> {
            Set<String> texts = new LinkedHashSet<>();
            NameColumn column = NameColumn.find(sheet, key);
            if (column != null) {
                names.getOrDefault(column, List.of()).forEach(named -> texts.add(named.name()));
            }
            return texts;
        });
    }

    private Set<String> all(String sheet, String key, String within) {
        return heldWithin
                .computeIfAbsent(sheet + "." + key, at -> {
                    Map<String, Set<String>> texts = new HashMap<>();
                    NameColumn column = NameColumn.find(sheet, key);
                    if (column != null) {
                        names.getOrDefault(column, List.of())
                                .forEach(named -> texts.computeIfAbsent(named.within(), one -> new LinkedHashSet<>())
                                        .add(named.name()));
                    }
                    return texts;
                })
                .getOrDefault(within, Set.of());
    }

    private Set<String> pests() {
        Set<String> pests = new LinkedHashSet<>(all("insects", "insect"));
        pests.addAll(all("weeds", "weed"));
        return pests;
    }

    private static Set<String> both() {
        Set<String> both = new HashSet<>(Vocabulary.INSECTS);
        both.addAll(Vocabulary.WEEDS);
        return both;
    }

    private Optional<String> row(String name, String sheet, String key) {
        return !there.test(sheet) || all(sheet, key).contains(name)
                ? Optional.empty()
                : Optional.of("a " + key + " of the sheet " + sheet + Near.suggested(name, all(sheet, key)));
    }

    private Optional<String> within(String name, String sheet, String key, String within, String what) {
        Set<String> fitting = all(sheet, key, within);
        return !there.test(sheet) || fitting.contains(name)
                ? Optional.empty()
                : Optional.of(what + Near.suggested(name, fitting));
    }

    private static Optional<String> alike(String name, Collection<String> names, String as) {
        return names.contains(name)
                ? Optional.empty()
                : Near.to(name, names, ONE_SLIP).map(near -> near + ", " + as);
    }

    /** A name of one's own, but no slip for one that the reference data know. */
    private static Optional<String> slip(String name, Collection<String> known) {
        return Vocabulary.holds(known, name)
                ? Optional.empty()
                : Near.to(name, known)
                        .map(near ->
                                "another name, since this is a slip away from a known one; did you mean " + near + "?");
    }

    private Optional<String> pest(
            NameColumn column, Named named, Set<String> onFields, Set<String> known, String what) {
        String name = named.name();
        if (onFields.contains(name) || !there.test("insects") || !there.test("weeds")) {
            return Optional.empty();
        }
        Optional<String> near = Near.to(name, onFields).or(() -> unmet(column, named, onFields));
        if (near.isPresent()) {
            return Optional.of(what + "; did you mean " + near.get() + "?");
        }
        if (Vocabulary.holds(known, name)) {
            return Optional.empty();
        }
        Set<String> suggested = new LinkedHashSet<>(onFields);
        suggested.addAll(known);
        String nearest = Near.to(name, suggested)
                .or(() -> Near.best(name, onFields))
                .or(() -> Near.best(name, known))
                .map(one -> "; did you mean " + one + "?")
                .orElse("");
        return Optional.of(what + ", or a known one that no field has" + nearest);
    }

    /** A pest of a field that the name is wider or narrower than, and for which its product or trait has no row of its own. */
    private Optional<String> unmet(NameColumn column, Named named, Set<String> onFields) {
        Set<String> met = all(column.sheet(), column.key(), named.within());
        return Near.kin(
                named.name(),
                onFields.stream().filter(pest -> !met.contains(pest)).toList());
    }

    private static Optional<String> active(String name) {
        return ActiveName.known(name).isPresent()
                ? Optional.empty()
                : Near.to(name, Vocabulary.ACTIVES)
                        .map(near -> "an ISO common name, and this is a slip away from a known one; did you mean "
                                + near + "?");
    }

    private Optional<String> ofProduct(String name, String product) {
        Set<String> written = all("actives", "ingredient", product);
        return written.isEmpty() || written.stream().anyMatch(one -> ActiveName.same(one, name))
                ? Optional.empty()
                : Optional.of("an ingredient of this product on the sheet actives: "
                        + written.stream().sorted().collect(Collectors.joining(", ")));
    }

    private Optional<String> partner(String name) {
        Set<String> actives = all("actives", "ingredient");
        List<String> kinds =
                Arrays.stream(ProductKind.values()).map(ProductKind::word).toList();
        if (Vocabulary.holds(all("shelf", "product"), name)
                || Vocabulary.holds(kinds, name)
                || actives.stream().anyMatch(one -> ActiveName.same(one, name))
                || ActiveName.known(name).isPresent()) {
            return Optional.empty();
        }
        Set<String> partners = new LinkedHashSet<>(all("shelf", "product"));
        partners.addAll(actives);
        partners.addAll(kinds);
        partners.addAll(Vocabulary.ACTIVES);
        return Optional.of("a product of the sheet shelf, an active ingredient, or a kind of product such as adjuvant"
                + Near.suggested(name, partners));
    }

    private Optional<String> crop(String name) {
        Set<String> labels = all("plant_backs", "next_crop");
        if (CropName.known(name, labels)) {
            return Optional.empty();
        }
        Set<String> crops = new LinkedHashSet<>(labels);
        crops.addAll(CropName.known());
        return Optional.of("a crop, as the sheet plant_backs or common use names it" + Near.suggested(name, crops));
    }

    private Optional<String> labelCrop(String name) {
        if (name.strip().equalsIgnoreCase(PlantBack.ANY_OTHER)) {
            return Optional.empty();
        }
        Set<String> crops = new LinkedHashSet<>(all("next_crops", "crop"));
        crops.addAll(CropName.known());
        return CropName.known(name, crops)
                ? Optional.empty()
                : Near.to(name, crops).map(near -> "a crop; did you mean " + near + "?");
    }

    private static Optional<String> county(String name, String within) {
        int colon = name.indexOf(':');
        String state = within.isEmpty() && colon > 0 ? name.substring(0, colon).strip() : within;
        String county =
                within.isEmpty() && colon > 0 ? name.substring(colon + 1).strip() : name;
        return state.isEmpty() || Vocabulary.county(state, county)
                ? Optional.empty()
                : Optional.of("a county of " + state + " as the census spells it"
                        + Near.to(county, Vocabulary.countyNames(state))
                                .map(near -> "; did you mean " + near + "?")
                                .orElseGet(() -> Vocabulary.statesWith(county)
                                        .map(states -> "; " + county + " is a county of " + states)
                                        .orElse("")));
    }

    private Optional<String> place(String name) {
        Set<String> fields = all("fields", "field");
        if (fields.contains(name) || Vocabulary.holds(fields, name)) {
            return Optional.empty();
        }
        return name.matches("[A-Za-z]{2}\\s*:.*")
                ? county(name, "")
                : Optional.of("a field of the sheet fields, or a county as IA: Adams" + Near.suggested(name, fields));
    }
}
