package plumbrow.advice.names;

import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import plumbrow.science.reference.Counties;
import plumbrow.science.reference.County;
import plumbrow.science.reference.EfficacyGuide;
import plumbrow.science.reference.PestFacts;
import plumbrow.science.reference.Rating;
import plumbrow.science.reference.Substance;
import plumbrow.science.reference.Substances;
import plumbrow.science.weedseason.KnownWeeds;
import plumbrow.science.weedseason.Species;

/** Names that are known without anybody writing them down: those of the reference data and some from memory. */
final class Vocabulary {
    /** Insects of corn, soybean and wheat beside those of the reference data. From memory. */
    private static final String MORE_INSECTS =
            "true armyworm, fall armyworm, stink bugs, cereal aphids, Hessian fly, seedcorn maggot, corn rootworm, "
                    + "western corn rootworm, northern corn rootworm, wireworm, white grub, corn earworm, "
                    + "common stalk borer, southwestern corn borer, corn flea beetle, chinch bug, billbug, slugs, "
                    + "grasshoppers, two-spotted spider mite, potato leafhopper, Japanese beetle, green cloverworm, "
                    + "soybean looper, thistle caterpillar, soybean gall midge, dectes stem borer, wheat stem sawfly, "
                    + "cereal leaf beetle, grape colaspis";

    /** Numbers of sites of action of herbicides, today's and those of older labels. From memory of the HRAC and WSSA lists. */
    static final List<String> SITES = List.of(
            "1", "2", "3", "4", "5", "6", "7", "8", "9", "10", "11", "12", "13", "14", "15", "16", "17", "18", "19",
            "20", "21", "22", "23", "24", "25", "26", "27", "28", "29", "30", "31", "32", "33", "34");

    /** Rows of the reference data that are about no one pest. */
    private static final Set<String> NO_PEST =
            Set.of("any", "weed", "pest", "all weeds", "none (crop stage)", "bt trait corn", "aphids", "defoliators");

    static final Set<String> INSECTS = insects();
    static final Set<String> WEEDS = weeds();
    static final Set<String> ACTIVES =
            Substances.all().stream().map(Substance::name).collect(Collectors.toCollection(LinkedHashSet::new));

    private static final Map<String, List<County>> COUNTIES = new ConcurrentHashMap<>();

    private Vocabulary() {}

    static boolean holds(Collection<String> names, String name) {
        return names.stream().anyMatch(known -> known.equalsIgnoreCase(name.strip()));
    }

    /** Whether the census knows a county of that name in a state. */
    static boolean county(String state, String name) {
        return counties(state).stream().anyMatch(county -> county.called(name));
    }

    /** The states that have a county of that name, where they are few. */
    static Optional<String> statesWith(String name) {
        List<String> states = Counties.all().stream()
                .filter(county -> county.called(name))
                .map(County::state)
                .distinct()
                .sorted()
                .toList();
        return states.isEmpty() || states.size() > 3 ? Optional.empty() : Optional.of(String.join(" and ", states));
    }

    static List<String> countyNames(String state) {
        return counties(state).stream().map(County::name).toList();
    }

    private static List<County> counties(String state) {
        return COUNTIES.computeIfAbsent(
                state.strip().toUpperCase(Locale.ROOT),
                code -> Counties.all().stream()
                        .filter(county -> county.state().equals(code))
                        .toList());
    }

    private static Set<String> insects() {
        Stream<String> facts = PestFacts.insects().stream().map(fact -> fact.pest());
        return once(Stream.concat(facts, Arrays.stream(MORE_INSECTS.split(", "))));
    }

    private static Set<String> weeds() {
        Stream<String> facts = PestFacts.weeds().stream().map(fact -> fact.pest());
        Stream<String> followed = KnownWeeds.all().stream().map(Species::name);
        Stream<String> rated = EfficacyGuide.packed().all().stream().map(Rating::weed);
        return once(Stream.of(facts, followed, rated).flatMap(names -> names));
    }

    private static Set<String> once(Stream<String> names) {
        Map<String, String> once = new HashMap<>();
        names.filter(name -> !NO_PEST.contains(name.toLowerCase(Locale.ROOT)))
                .forEach(name -> once.putIfAbsent(name.toLowerCase(Locale.ROOT), name));
        return Set.copyOf(once.values());
    }
}
