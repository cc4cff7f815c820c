package plumbrow.advice.field;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The growth stages of a crop in the order in which they come, in the words of labels.
 *
 * <p>Corn: VE, V1 to V22, VT, R1 to R6 (leaf collars; Abendroth et al. 2011, Corn Growth and Development, Iowa State
 * PMR 1009). Soybean: VE, VC, V1 to V20, R1 to R8 (Fehr and Caviness 1977, Iowa State Special Report 80); leaves go on
 * coming after R1, and a plant at R1 is taken as past every V. Wheat: Feekes 1 to 11.4 (Large 1954, Plant Pathology
 * 3:128). PRE, before VE or Feekes 1, is planted and not yet up, or not yet planted.
 */
public final class GrowthStage {
    /** Not up yet. */
    public static final String PRE = "PRE";

    private static final List<String> CORN = Stream.of(
                    Stream.of(PRE, "VE"), numbered("V", 22), Stream.of("VT"), numbered("R", 6))
            .flatMap(part -> part)
            .toList();

    private static final List<String> SOYBEAN = Stream.of(
                    Stream.of(PRE, "VE", "VC"), numbered("V", 20), numbered("R", 8))
            .flatMap(part -> part)
            .toList();

    private static final List<String> WHEAT = wheat();

    private GrowthStage() {}

    /** The stages of a crop, earliest first. */
    public static List<String> of(Crop crop) {
        return switch (crop) {
            case CORN -> CORN;
            case SOYBEAN -> SOYBEAN;
            case WHEAT -> WHEAT;
        };
    }

    /** How many stages of the crop come before this one; empty where the crop has no such stage. */
    public static OptionalInt place(Crop crop, String stage) {
        int place = of(crop).indexOf(tidy(stage));
        return place < 0 ? OptionalInt.empty() : OptionalInt.of(place);
    }

    /** A stage as it is kept: "v4" is "V4". */
    public static String tidy(String stage) {
        return stage.strip().toUpperCase(Locale.ROOT);
    }

    /** The stages of a crop in words. */
    public static String words(Crop crop) {
        return switch (crop) {
            case CORN -> "PRE, VE, V1 to V22, VT or R1 to R6";
            case SOYBEAN -> "PRE, VE, VC, V1 to V20 or R1 to R8";
            case WHEAT -> "PRE or a Feekes stage, 1 to 11.4";
        };
    }

    private static Stream<String> numbered(String letter, int most) {
        return IntStream.rangeClosed(1, most).mapToObj(number -> letter + number);
    }

    private static List<String> wheat() {
        List<String> stages = new ArrayList<>(List.of(PRE));
        numbered("", 10).forEach(stages::add);
        numbered("10.", 5).forEach(stages::add);
        numbered("10.5.", 4).forEach(stages::add);
        stages.add("11");
        numbered("11.", 4).forEach(stages::add);
        return List.copyOf(stages);
    }
}
