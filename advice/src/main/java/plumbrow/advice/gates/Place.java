package plumbrow.advice.gates;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import plumbrow.advice.field.AlsoIn;
import plumbrow.advice.field.Field;
import plumbrow.advice.land.CountyFit;
import plumbrow.science.reference.County;

/** A county that a field lies in, wholly or in part. */
record Place(String state, String county) {

    /**
     * Every county that judges a field: its own, those that somebody wrote down, and those that its outline crosses into
     * by the census map.
     */
    static List<Place> all(Field field, List<AlsoIn> also, Optional<CountyFit> fit) {
        List<Place> places = new ArrayList<>(List.of(new Place(field.state(), field.county())));
        also.stream()
                .map(one -> new Place(one.state(), one.county()))
                .filter(place -> !places.contains(place))
                .forEach(places::add);
        fit.stream()
                .flatMap(one -> one.in().stream())
                .map(CountyFit.Part::county)
                .filter(county -> places.stream().noneMatch(place -> place.is(county)))
                .forEach(county -> places.add(new Place(county.state(), county.name())));
        return List.copyOf(places);
    }

    /** Whether it is this county of the census map. */
    boolean is(County county) {
        return inState(county.state()) && county.called(this.county);
    }

    /** As people say it: "Marrow County, IA". */
    String words() {
        return county + (county.endsWith(" city") ? ", " : " County, ") + state;
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
