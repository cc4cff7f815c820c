package plumbrow.advice.gates;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plumbrow.advice.field.AlsoIn;
import plumbrow.advice.field.Field;

/** What must hold of any season, whatever the labels say. */
class GatesPropertyTest {
    private static final int SCENES = 120;

    static LongStream seeds() {
        return LongStream.range(0, SCENES);
    }

    @Test
    void scenesReachEveryStanding() {
        Map<Standing, Integer> count = new EnumMap<>(Standing.class);
        seeds().forEach(seed -> count.merge(RandomScene.of(seed).standing(), 1, Integer::sum));
        assertThat(count.keySet()).contains(Standing.BARRED, Standing.UNKNOWN, Standing.CONDITIONAL);
        assertThat(count.get(Standing.CONDITIONAL)).isGreaterThan(20);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void forgettingAnyValueNeverPermitsMore(long seed) {
        Held.forgettingNeverPermitsMore(seed, Gates.all());
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void tighteningAnyLimitNeverBettersAnyGate(long seed) {
        Held.tighteningNeverBetters(seed, Gates.all());
    }

    /** Each row is added at either end of its list, so fewer scenes take as long as the others. */
    static LongStream fewSeeds() {
        return LongStream.range(0, SCENES / 4);
    }

    @ParameterizedTest
    @MethodSource("fewSeeds")
    void addingARowOfRestrictionNeverBettersAnyGate(long seed) {
        Held.addingARestrictionNeverBetters(seed, Gates.all());
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void orderOfPassesDoesNotMatter(long seed) {
        Held.orderOfPassesDoesNotMatter(seed, Gates.all());
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void splittingAFieldNeverLetsThroughWhatTheWholeBars(long seed) {
        Held.splittingNeverLetsThrough(seed, Gates.all());
    }

    /** A county more can only bar more: each judges as if the field lay in it alone. */
    @ParameterizedTest
    @MethodSource("seeds")
    void fieldInTwoCountiesIsJudgedByBoth(long seed) {
        Scene scene = RandomScene.of(seed);
        scene.alsoIn.clear();
        List<Standing> here = byGate(scene);
        Field home = scene.field;
        scene.field = LabelEdits.with(LabelEdits.with(home, "state", "IL"), "county", "Sorrel");
        List<Standing> there = byGate(scene);
        scene.field = home;
        scene.alsoIn.add(new AlsoIn("Home", "IL", "Sorrel"));
        List<Standing> both = byGate(scene);
        for (int gate = 0; gate < both.size(); gate++) {
            assertThat(both.get(gate))
                    .as("seed %d, gate %s", seed, Gates.all().get(gate).id())
                    .isEqualTo(here.get(gate).worse(there.get(gate)));
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void orderOfTheLogDoesNotMatter(long seed) {
        Scene scene = RandomScene.of(seed);
        for (int day = 1; day < 4; day++) {
            Edits.apply(scene, "+log; log" + (scene.log.size() + 1) + ".product=Product 0");
            scene.log.set(
                    scene.log.size() - 1,
                    LabelEdits.with(scene.log.get(scene.log.size() - 1), "date", Scene.PLANTING.plusDays(day)));
        }
        List<Finding> before = Gates.check(scene.season(), scene.field(), scene.program());
        Collections.shuffle(scene.log, new Random(seed));
        assertThat(Gates.check(scene.season(), scene.field(), scene.program())).isEqualTo(before);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void findingsComeWorstFirstAndSayWhatClearsThem(long seed) {
        Scene scene = RandomScene.of(seed);
        List<Finding> findings = Gates.check(scene.season(), scene.field(), scene.program());
        assertThat(findings).extracting(Finding::standing).isSorted();
        assertThat(Gates.standing(findings)).isEqualTo(findings.get(0).standing());
        assertThat(findings).allSatisfy(finding -> {
            assertThat(finding.says()).isNotBlank();
            assertThat(finding.clears().isEmpty()).isEqualTo(finding.standing() == Standing.CLEAR);
            assertThat(finding.measured() == null).isEqualTo(finding.limit() == null);
        });
    }

    private static List<Standing> byGate(Scene scene) {
        return Gates.all().stream().map(scene::standing).toList();
    }
}
