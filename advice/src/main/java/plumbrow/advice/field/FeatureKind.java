package plumbrow.advice.field;

import java.util.Arrays;
import java.util.Optional;

/** What lies in or near a field and may need distance kept from it. */
public enum FeatureKind {
    STREAM("stream"),
    DITCH("ditch"),
    POND("pond"),
    WELL("well"),
    SINKHOLE("sinkhole"),
    TILE_INLET("tile inlet"),
    DWELLING("dwelling"),
    SCHOOL("school"),
    /** The house of whoever owns the farm: his family may stay inside while he sprays, with doors and windows closed. */
    OWN_HOUSE("own house"),
    PUBLIC_ROAD("public road"),
    BEE_YARD("bee yard"),
    SENSITIVE_CROP("sensitive crop"),
    ORGANIC_FIELD("organic field"),
    HABITAT("protected habitat");

    private final String word;

    FeatureKind(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }

    /** The kind of a word, however it is capitalised. */
    public static Optional<FeatureKind> called(String word) {
        return Arrays.stream(values())
                .filter(kind -> kind.word.equalsIgnoreCase(word.strip()))
                .findFirst();
    }

    /** Whether it is surface water or leads there. */
    public boolean water() {
        return this == STREAM || this == DITCH || this == POND || this == TILE_INLET || this == SINKHOLE;
    }
}
