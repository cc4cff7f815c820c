package plumbrow.documents.sheet;

import java.util.Arrays;
import java.util.Optional;
import java.util.regex.Pattern;

/** Living things that are tested in place of wildlife, with the names that sheets give them. */
public enum Organism {
    RAINBOW_TROUT("rainbow trout", Group.FISH, "rainbow\\s+trout|oncorhynchus\\s+mykiss|salmo\\s+gairdneri"),
    BLUEGILL("bluegill", Group.FISH, "bluegill(?:\\s+sunfish)?|lepomis\\s+macrochirus"),
    FATHEAD_MINNOW("fathead minnow", Group.FISH, "fathead\\s+minnow|pimephales\\s+promelas"),
    ZEBRAFISH("zebrafish", Group.FISH, "zebra\\s?fish|danio\\s+rerio|brachydanio\\s+rerio"),
    CARP("carp", Group.FISH, "(?:common\\s+)?carp\\b|cyprinus\\s+carpio"),
    CATFISH("channel catfish", Group.FISH, "channel\\s+catfish|ictalurus\\s+punctatus"),
    SHEEPSHEAD_MINNOW("sheepshead minnow", Group.FISH, "sheepshead\\s+minnow|cyprinodon\\s+variegatus"),
    DAPHNIA("water flea", Group.INVERTEBRATE, "daphnia(?:\\s+magna|\\s+pulex)?|water\\s?fleas?|d\\.\\s?magna"),
    MYSID("mysid shrimp", Group.INVERTEBRATE, "mysid(?:\\s+shrimp)?|(?:americamysis|mysidopsis)\\s+bahia"),
    OYSTER("oyster", Group.INVERTEBRATE, "(?:eastern\\s+)?oyster|crassostrea\\s+virginica"),
    ALGAE(
            "algae",
            Group.ALGAE,
            "(?:green\\s+)?alga[e]?\\b|(?:pseudokirchneriella|raphidocelis|selenastrum)\\s+\\w+|skeletonema\\s+\\w+|"
                    + "(?:scenedesmus|desmodesmus)\\s+\\w+"),
    DUCKWEED("duckweed", Group.WATER_PLANT, "duckweed|lemna(?:\\s+(?:gibba|minor))?"),
    BOBWHITE("bobwhite quail", Group.BIRD, "(?:northern\\s+)?bobwhite(?:\\s+quail)?|colinus\\s+virginianus"),
    MALLARD("mallard duck", Group.BIRD, "mallard(?:\\s+duck)?|anas\\s+platyrhynchos"),
    JAPANESE_QUAIL("Japanese quail", Group.BIRD, "japanese\\s+quail|coturnix\\s+\\w+"),
    HONEY_BEE("honey bee", Group.BEE, "honey\\s?bees?|apis\\s+mellifera|\\bbees?\\b"),
    EARTHWORM("earthworm", Group.SOIL, "earth\\s?worms?|eisenia\\s+\\w+"),
    FISH(
            "fish",
            Group.FISH,
            "\\bfish\\b|mosquito\\s?fish|gambusia\\s+\\w+|poecilia\\s+\\w+|guppy|golden\\s+orfe|leuciscus\\s+\\w+|silverside|menidia\\s+\\w+|medaka|oryzias\\s+\\w+"),
    BIRD("bird", Group.BIRD, "\\bbirds?\\b|\\bquail\\b|\\bduck\\b");

    /** Kinds of living things. */
    public enum Group {
        FISH,
        INVERTEBRATE,
        ALGAE,
        WATER_PLANT,
        BIRD,
        BEE,
        SOIL
    }

    private final String word;
    private final Group group;

    @SuppressWarnings("ImmutableEnumChecker") // patterns never change
    private final Pattern names;

    Organism(String word, Group group, String names) {
        this.word = word;
        this.group = group;
        this.names = Pattern.compile(names, Pattern.CASE_INSENSITIVE);
    }

    public String word() {
        return word;
    }

    public Group group() {
        return group;
    }

    /** The one that a text names; one with a name of its own goes before "fish" and "bird". */
    public static Optional<Organism> in(String text) {
        return Arrays.stream(values())
                .filter(each -> each.names.matcher(text).find())
                .findFirst();
    }
}
