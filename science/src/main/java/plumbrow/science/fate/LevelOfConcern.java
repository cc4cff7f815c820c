package plumbrow.science.fate;

import java.util.List;

/**
 * A level that a risk quotient may reach.
 *
 * Source: birds and mammals: US FWS National Conservation Training Center exercise on EPA quotients (verified); all other
 * rows: values from memory. Water has 0.5, 0.1 and 0.05, not the 0.5, 0.2 and 0.1 of the land.
 *
 * @param word acute, restricted-use, listed-species or chronic
 * @param quotient reached at or above
 */
public record LevelOfConcern(String word, double quotient) {
    static final List<String> GROUPS = List.of("bird", "mammal", "fish", "invertebrate", "bee", "plant");

    private static final List<LevelOfConcern> LAND = acute(0.5, 0.2, 0.1);
    private static final List<LevelOfConcern> WATER = acute(0.5, 0.1, 0.05);
    private static final List<LevelOfConcern> BEE = List.of(new LevelOfConcern("acute", 0.4));
    private static final List<LevelOfConcern> PLANT = List.of(new LevelOfConcern("acute", 1));
    private static final List<LevelOfConcern> CHRONIC = List.of(new LevelOfConcern("chronic", 1));
    /** 0.3 ÷ 3 must reach 0.1. */
    private static final double ROUNDING = 1e-12;

    /** The levels reached, strongest first, as words; the group is one of bird, mammal, fish, invertebrate, bee, plant. */
    public static List<String> reached(double quotient, String group, String kind) {
        return of(group, kind).stream()
                .filter(level -> quotient >= level.quotient() * (1 - ROUNDING))
                .map(LevelOfConcern::word)
                .toList();
    }

    private static List<LevelOfConcern> of(String group, String kind) {
        if (kind.equals("chronic")) {
            return CHRONIC;
        }
        return switch (group) {
            case "bird", "mammal" -> LAND;
            case "fish", "invertebrate" -> WATER;
            case "bee" -> BEE;
            case "plant" -> PLANT;
            default -> throw new IllegalArgumentException("no levels of concern for " + group);
        };
    }

    private static List<LevelOfConcern> acute(double acute, double restrictedUse, double listedSpecies) {
        return List.of(
                new LevelOfConcern("acute", acute),
                new LevelOfConcern("restricted-use", restrictedUse),
                new LevelOfConcern("listed-species", listedSpecies));
    }
}
