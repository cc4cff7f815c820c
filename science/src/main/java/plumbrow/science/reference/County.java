package plumbrow.science.reference;

import java.util.List;
import java.util.Locale;

/**
 * A county or what stands for one: a parish, a borough, a city that belongs to no county.
 *
 * @param fips five digits, the first two for the state
 * @param state two-letter postal code
 * @param name without the word county; a city that shares its name with a county ends in "city"
 * @param rings its outlines, each closed
 */
public record County(String fips, String state, String name, List<Ring> rings) {
    private static final String KINDS =
            " (county|parish|borough|census area|municipality|municipio|city and borough|island|district)$";

    public County {
        rings = List.copyOf(rings);
    }

    /** A closed outline. */
    public static final class Ring {
        private final boolean hole;
        private final double[] degrees;

        Ring(boolean hole, double[] degrees) {
            this.hole = hole;
            this.degrees = degrees;
        }

        /** Whether it is cut out of the ring before it. */
        public boolean hole() {
            return hole;
        }

        /** Longitude and latitude in turn [degrees]. */
        public double[] degrees() {
            return degrees.clone();
        }
    }

    /** Whether a person means this county by a name: "Saint Clair County" is "St. Clair", "De Kalb" is "DeKalb". */
    public boolean called(String typed) {
        return plain(typed).equals(plain(name));
    }

    /** As people say it: "Story County, IA", "St. Louis city, MO". */
    public String words() {
        return name + (name.endsWith(" city") ? ", " : " County, ") + state;
    }

    private static String plain(String name) {
        String letters = java.text.Normalizer.normalize(name.strip(), java.text.Normalizer.Form.NFD)
                .replaceAll("\\p{M}", "")
                .toLowerCase(Locale.ROOT)
                .replaceAll("\\s+", " ");
        return letters.replaceFirst(KINDS, "")
                .replaceFirst("^sainte ", "ste ")
                .replaceFirst("^saint ", "st ")
                .replaceAll("[^a-z0-9]", "");
    }
}
