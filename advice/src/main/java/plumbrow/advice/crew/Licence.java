package plumbrow.advice.crew;

import java.time.LocalDate;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A licence to apply pesticides, as one state gave it.
 *
 * @param person whose it is, by the name in the crew
 * @param number its number; null for none on file
 * @param state the state that gave it, two-letter code
 * @param validUntil last day it is valid
 * @param kind for whom it lets apply; null where that is not on file
 * @param covers what its categories cover; null where that is not on file
 */
public record Licence(
        String person,
        @Nullable String number,
        @Nullable String state,
        @Nullable LocalDate validUntil,
        @Nullable LicenceKind kind,
        @Nullable Set<Cover> covers) {
    public Licence {
        covers = covers == null ? null : Set.copyOf(covers);
    }

    /** What categories cover, as far as fields ask for it (40 CFR 171.101, 171.105; value from memory). */
    public enum Cover {
        FIELD_CROPS("field crops"),
        AERIAL("aerial"),
        SEED_TREATMENT("seed treatment"),
        SOIL_FUMIGATION("soil fumigation");

        private final String word;

        Cover(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }
}
