package plumbrow.advice.gates;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import plumbrow.advice.field.AlsoIn;
import plumbrow.advice.field.Feature;
import plumbrow.advice.field.Field;
import plumbrow.advice.field.Texture;

/** What must hold of any gates in any season. Told of a list of gates, so that a faulty one can be held to it too. */
final class Held {
    private static final List<Texture> TEXTURES = List.of(Texture.values());

    private Held() {}

    /** One edit made, looked at and undone by what runs it. */
    static void forgettingNeverPermitsMore(long seed, List<Gate> gates) {
        Scene scene = RandomScene.of(seed);
        int before = permission(together(scene, gates));
        LabelEdits.forgetting(
                scene,
                edit -> assertThat(permission(together(scene, gates)))
                        .as("seed %d, without the %s", seed, edit)
                        .isLessThanOrEqualTo(before));
    }

    static void tighteningNeverBetters(long seed, List<Gate> gates) {
        Scene scene = RandomScene.of(seed);
        List<Standing> before = each(scene, gates);
        LabelEdits.tightening(
                scene, edit -> noneBetter(each(scene, gates), before, gates, "seed " + seed + ", tighter " + edit));
    }

    static void addingARestrictionNeverBetters(long seed, List<Gate> gates) {
        Scene scene = RandomScene.of(seed);
        List<Standing> before = each(scene, gates);
        LabelEdits.adding(
                scene, row -> noneBetter(each(scene, gates), before, gates, "seed " + seed + ", with " + row));
    }

    static void orderOfPassesDoesNotMatter(long seed, List<Gate> gates) {
        Scene scene = RandomScene.of(seed);
        List<List<Finding>> before = findings(scene, gates);
        Collections.shuffle(scene.passes, new Random(seed));
        assertThat(findings(scene, gates)).as("seed %d", seed).isEqualTo(before);
    }

    /**
     * The field is cut in two: one part keeps the soil, the home county and what lies nearest; the other has soil, county
     * and distances of its own. Together they bar at least what the whole bars.
     */
    static void splittingNeverLetsThrough(long seed, List<Gate> gates) {
        Random random = new Random(seed);
        List<Standing> whole = each(across(seed), gates);
        Scene first = across(seed);
        Scene second = across(seed);
        AlsoIn other = second.alsoIn.get(0);
        double share = 0.1 + 0.8 * random.nextDouble();
        first.field = acres(first.field, share);
        first.alsoIn.clear();
        second.field = LabelEdits.with(
                LabelEdits.with(acres(second.field, 1 - share), "state", other.state()), "county", other.county());
        second.field = LabelEdits.with(second.field, "texture", TEXTURES.get(random.nextInt(TEXTURES.size())));
        second.alsoIn.clear();
        List<Feature> farther = new ArrayList<>();
        for (Feature feature : second.features) {
            Double feet = feature.nearestFt();
            farther.add(feet == null ? feature : LabelEdits.with(feature, "nearestFt", feet + 50 * random.nextInt(5)));
        }
        second.features.clear();
        second.features.addAll(farther);
        List<Standing> parts = new ArrayList<>();
        for (Gate gate : gates) {
            parts.add(first.standing(gate).worse(second.standing(gate)));
        }
        noneBetter(parts, whole, gates, "seed " + seed + ", in two parts");
    }

    /** A random scene on a field that lies in two counties, now and then of two states. */
    private static Scene across(long seed) {
        Scene scene = RandomScene.of(seed);
        scene.alsoIn.clear();
        scene.alsoIn.add(
                switch ((int) (seed % 3)) {
                    case 0 -> new AlsoIn("Home", "IL", "Sorrel");
                    case 1 -> new AlsoIn("Home", "IA", "Brindle");
                    default -> new AlsoIn("Home", "MN", "Larkin");
                });
        return scene;
    }

    private static Field acres(Field field, double share) {
        return LabelEdits.with(field, "acres", field.acres() * share);
    }

    private static void noneBetter(List<Standing> after, List<Standing> before, List<Gate> gates, String what) {
        for (int gate = 0; gate < gates.size(); gate++) {
            assertThat(after.get(gate))
                    .as("%s, gate %s", what, gates.get(gate).id())
                    .isLessThanOrEqualTo(before.get(gate));
        }
    }

    private static List<List<Finding>> findings(Scene scene, List<Gate> gates) {
        Case at = Gates.of(scene.season()).at(scene.field(), scene.program());
        return gates.stream().map(gate -> gate.check(at)).toList();
    }

    private static List<Standing> each(Scene scene, List<Gate> gates) {
        return findings(scene, gates).stream().map(Gates::standing).toList();
    }

    private static Standing together(Scene scene, List<Gate> gates) {
        return each(scene, gates).stream().reduce(Standing.CLEAR, Standing::worse);
    }

    /** Barred and unknown both permit nothing. */
    private static int permission(Standing standing) {
        return switch (standing) {
            case BARRED, UNKNOWN -> 0;
            case CONDITIONAL -> 1;
            case CLEAR, NOTHING_ASKED -> 2;
        };
    }
}
