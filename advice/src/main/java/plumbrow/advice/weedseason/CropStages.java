package plumbrow.advice.weedseason;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import plumbrow.advice.field.Crop;
import plumbrow.science.insects.CornCalendar;

/**
 * When corn reaches its stages, by degree days from planting: the High Plains table for hybrids of medium maturity, leaf by leaf
 * between its lines.
 *
 * Up at 115 as in {@link CropDays}; V1 to V3 on a straight line from there to V4, V17 to V19 from V16 to silking, both ours. A stage
 * seen in the field goes before any of them. There is no such table for soybeans and wheat here.
 */
final class CropStages {
    private static final double UP = 115;
    private static final int FIRST_LEAF_OF_TABLE = 4;
    private static final int LAST_LEAF_OF_TABLE = 16;
    private static final int LAST_LEAF = 19;

    private CropStages() {}

    /** In the season in the middle, with the days between which they come in eight seasons of ten. */
    static List<CropStage> of(FieldClimate climate, Crop crop, int planned) {
        List<Map<String, Integer>> seasons = climate.seasons().stream()
                .map(season ->
                        of(season, crop, planned).stream().collect(Collectors.toMap(CropStage::word, CropStage::day)))
                .toList();
        return of(climate.middle(), crop, planned).stream()
                .map(stage -> {
                    int[] days = seasons.stream()
                            .mapToInt(season -> season.getOrDefault(stage.word(), WeatherOnFile.LAST_DAY + 1))
                            .sorted()
                            .toArray();
                    int off = days.length / 10;
                    return new CropStage(stage.word(), stage.day(), days[off], days[days.length - 1 - off]);
                })
                .toList();
    }

    private static List<CropStage> of(SeasonDays climate, Crop crop, int planned) {
        if (crop != Crop.CORN || !climate.days().has(planned)) {
            return List.of();
        }
        int planted = climate.fitFrom(planned);
        List<CropStage> stages = new ArrayList<>();
        add(stages, climate, planted, "VE", UP);
        for (int leaf = 1; leaf <= LAST_LEAF; leaf++) {
            add(stages, climate, planted, "V" + leaf, leaf(leaf));
        }
        add(stages, climate, planted, "R1", CornCalendar.plainsMedium("silk"));
        add(stages, climate, planted, "R2", CornCalendar.plainsMedium("blister"));
        add(stages, climate, planted, "R4", CornCalendar.plainsMedium("dough"));
        add(stages, climate, planted, "R5", CornCalendar.plainsMedium("begin-dent"));
        add(stages, climate, planted, "R6", CornCalendar.plainsMedium("black-layer"));
        return stages;
    }

    private static void add(List<CropStage> stages, SeasonDays climate, int planted, String word, double degreeDays) {
        int day = climate.dayAfter(planted, degreeDays);
        if (climate.days().has(day)) {
            stages.add(new CropStage(word, day, day, day));
        }
    }

    private static double leaf(int leaf) {
        if (leaf < FIRST_LEAF_OF_TABLE) {
            return between(UP, CornCalendar.plainsMedium("v4"), leaf, FIRST_LEAF_OF_TABLE);
        }
        if (leaf > LAST_LEAF_OF_TABLE) {
            return between(
                    CornCalendar.plainsMedium("v16"),
                    CornCalendar.plainsMedium("silk"),
                    leaf - LAST_LEAF_OF_TABLE,
                    LAST_LEAF + 1 - LAST_LEAF_OF_TABLE);
        }
        int even = leaf / 2 * 2;
        double from = CornCalendar.plainsMedium("v" + even);
        return even == leaf ? from : between(from, CornCalendar.plainsMedium("v" + (even + 2)), 1, 2);
    }

    private static double between(double from, double to, int step, int of) {
        return from + (to - from) * step / of;
    }
}
