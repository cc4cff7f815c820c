package plumbrow.advice.land;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import plumbrow.science.reference.Counties;
import plumbrow.science.reference.County;

/**
 * What the outline says of the state and county that are written down for a field.
 *
 * @param says one sentence for whoever wrote them; empty where both agree
 */
public record TypedPlace(Verdict verdict, String says) {
    public enum Verdict {
        /** The outline lies in the county, wholly or in part. */
        AGREES,
        /** It lies beside the county, nearer than the map is exact. */
        NEAR,
        /** It lies in no county of the map, as outside the country. */
        OUTSIDE,
        /** It lies farther from the county than the map's own error. */
        ELSEWHERE,
        /** The state has no county of that name. */
        NO_SUCH_COUNTY;

        /** Whether what is written can't be true. */
        public boolean wrong() {
            return this == ELSEWHERE || this == NO_SUCH_COUNTY;
        }
    }

    /** What is said of a field without an outline. */
    public static final String UNDRAWN =
            "Without an outline nobody can tell its county; state and county are taken as written.";

    public static TypedPlace of(String state, String county, CountyFit fit) {
        if (fit.in().isEmpty() && fit.near().isEmpty()) {
            return new TypedPlace(
                    Verdict.OUTSIDE,
                    "The outline lies in no county of the census map; state and county are taken as written.");
        }
        String there = there(fit);
        Optional<County> named = Counties.named(state, county);
        if (named.isEmpty()) {
            return new TypedPlace(
                    Verdict.NO_SUCH_COUNTY,
                    "a county of " + state + " as the census spells it; the outline lies in " + there);
        }
        if (fit.liesIn(named.get())) {
            return new TypedPlace(Verdict.AGREES, "");
        }
        if (fit.liesNear(named.get())) {
            return new TypedPlace(
                    Verdict.NEAR,
                    "By the census map it lies in " + there + ", beside "
                            + named.get().words()
                            + " that is written down; the map is exact to about a mile: look at the deed or the county map.");
        }
        return new TypedPlace(Verdict.ELSEWHERE, there + ", where the outline lies by the census map");
    }

    private static String there(CountyFit fit) {
        List<String> names = fit.in().isEmpty()
                ? fit.near().stream().map(near -> near.county().words()).toList()
                : fit.in().stream().map(part -> part.county().words()).toList();
        return names.stream().limit(3).collect(Collectors.joining(" and "));
    }

    /** All that a person should know about the state and county written down for a field; empty where they are sure. */
    public static List<String> remarks(String state, String county, CountyFit fit) {
        TypedPlace place = of(state, county, fit);
        String own = place.verdict().wrong()
                ? "Written down is " + county + ", " + state + "; expected " + place.says() + "."
                : place.says();
        Stream<String> crossed = fit.crosses()
                ? Stream.of("By the census map it crosses a county line: " + there(fit) + " both judge it.")
                : Stream.empty();
        Stream<String> perhaps = place.verdict() == Verdict.NEAR ? Stream.empty() : perhaps(fit).stream();
        return Stream.of(Stream.of(own), crossed, perhaps)
                .flatMap(one -> one)
                .filter(says -> !says.isEmpty())
                .toList();
    }

    /** Sentences about counties nearer than the map is exact; empty where there is none. */
    private static List<String> perhaps(CountyFit fit) {
        return fit.near().stream()
                .map(near -> String.format(
                        Locale.ROOT,
                        "It may also lie in %s, %,.0f ft away by the census map, which is exact to about a mile: look at "
                                + "the deed or the county map.",
                        near.county().words(),
                        near.feet()))
                .toList();
    }
}
