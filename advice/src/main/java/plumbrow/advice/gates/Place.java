package plumbrow.advice.gates;

import java.util.Locale;

/** A county that a field lies in, wholly or in part. */
record Place(String state, String county) {

    /** As people say it: "Marrow County, IA". */
    String words() {
        return county + " County, " + state;
    }

    boolean inState(String code) {
        return state.strip().equalsIgnoreCase(code.strip());
    }

    /** Whether an entry such as "IA: Marrow" means this county; one without a state means every county of that name. */
    boolean named(String entry) {
        int colon = entry.indexOf(':');
        return sameCounty(entry.substring(colon + 1)) && (colon < 0 || inState(entry.substring(0, colon)));
    }

    private boolean sameCounty(String name) {
        return plain(name).equals(plain(county));
    }

    private static String plain(String name) {
        return name.strip()
                .toLowerCase(Locale.ROOT)
                .replaceAll("\\s+county$", "")
                .replaceAll("\\s+", " ");
    }
}
