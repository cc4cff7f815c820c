package plumbrow.advice.gates;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.program.RefugePlan;
import plumbrow.advice.shelf.Ask;
import plumbrow.advice.shelf.RefugeRule.Form;
import plumbrow.advice.shelf.SeedRights;
import plumbrow.advice.shelf.Trait;

/** The right to save seed, and the refuge. */
class SeedGatesTest {

    /**
     * Order and cases of asking: University of Maryland FS-1000 (2015), 569 U.S. 278 (2013), 7 U.S.C. 2543. Columns:
     * agreement forbids, patent in force, variety protected, own harvest, hybrid.
     */
    @ParameterizedTest
    @CsvSource({
        // soybean, agreement forbids replanting, all patents expired
        "YES, NO, NO, YES, NO, BARRED, agreement",
        // soybean, trait patent expired, variety patent unknown
        "NO, UNKNOWN, NO, YES, NO, UNKNOWN, patent",
        // wheat, protected variety, own farm
        "NO, NO, YES, YES, NO, CONDITIONAL, protected",
        // wheat, public: no protection, no patent, no agreement
        "NO, NO, NO, YES, NO, CONDITIONAL, No agreement",
        // bought as elevator grain with a patented trait in force
        "NO, YES, UNKNOWN, NO, NO, BARRED, patent",
        // corn hybrid
        "NO, NO, NO, YES, YES, BARRED, hybrid",
        // each missing answer, and the first in order speaks
        "UNKNOWN, NO, NO, YES, NO, UNKNOWN, agreement",
        "NO, NO, UNKNOWN, YES, NO, UNKNOWN, protected",
        "NO, NO, YES, UNKNOWN, NO, UNKNOWN, own farm",
        "NO, NO, YES, NO, NO, BARRED, own farm",
        "NO, NO, NO, UNKNOWN, NO, CONDITIONAL, No agreement",
        "NO, NO, NO, YES, UNKNOWN, UNKNOWN, hybrid",
        "YES, YES, YES, YES, YES, BARRED, agreement",
        "UNKNOWN, YES, YES, YES, NO, BARRED, patent",
        "UNKNOWN, UNKNOWN, UNKNOWN, UNKNOWN, UNKNOWN, UNKNOWN, agreement",
    })
    void rightToSave(Ask contract, Ask patent, Ask variety, Ask own, Ask hybrid, Standing expected, String reason) {
        Scene scene = new Scene()
                .savedSeed("Bin", new SeedRights(contract, patent, variety, own, hybrid))
                .plant("Bin", 100);
        Finding finding = scene.findings(new RightToSave()).get(0);
        assertThat(finding.standing()).isEqualTo(expected);
        assertThat(finding.says()).contains(reason);
        assertThat(finding.clears()).isNotEmpty();
    }

    @Test
    void protectedSeedIsForOwnAcresOnly() {
        Scene scene = new Scene()
                .savedSeed("Bin", new SeedRights(Ask.NO, Ask.NO, Ask.YES, Ask.YES, Ask.NO))
                .plant("Bin", 100);
        assertThat(scene.findings(new RightToSave()).get(0).clears())
                .isEqualTo("Own acres only: none of it to a neighbour.");
    }

    @Test
    void allOpenQuestionsAreListed() {
        Scene scene = new Scene().savedSeed("Bin", SeedRights.UNASKED).plant("Bin", 100);
        assertThat(scene.findings(new RightToSave()).get(0).clears())
                .contains("agreement", "patent", "protected", "own farm", "hybrid");
    }

    @Test
    void boughtSeedHasNothingToAnswer() {
        Scene scene = new Scene().plainSeed("Bought").plant("Bought", 100);
        assertThat(scene.findings(new RightToSave())).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            nullValues = "?",
            value = {
                "5, 5, BLEND, CLEAR",
                "10, 5, BLEND, CLEAR",
                "4.9, 5, BLEND, BARRED",
                "5, ?, BLEND, UNKNOWN",
                "5, 5, UNKNOWN, UNKNOWN",
                "0, ?, NONE, UNKNOWN",
                // a blend does not settle a block that the tag still asks for
                "10, 5, BLOCK, BARRED",
            })
    void refugeInTheBag(double inBag, @Nullable Double required, Form form, Standing expected) {
        Scene scene = new Scene()
                .pyramidSeed("Trait", inBag, Scene.rule(form, required, 0.0, 4))
                .plant("Trait", 100);
        assertThat(scene.standing(new RefugeAcres())).isEqualTo(expected);
    }

    /** Share of all corn acres: 20 % of 160 ac is 32.0 ac, of 74.5 ac 14.9 ac (University of Wisconsin W114 rule). */
    @ParameterizedTest
    @CsvSource({"160, 20, 32", "160, 19.9, 32", "74.5, 20, 14.9", "74.51, 10, 15"})
    void refugeInABlockIsAShareOfAllAcresRoundedUp(double acres, double blockPct, String acresNeeded) {
        Scene scene = new Scene()
                .pyramidSeed("Trait", 0, Scene.rule(Form.BLOCK, 20.0, 0.0, 4))
                .plainSeed("Plain")
                .plant("Trait", 100 - blockPct)
                .plant("Plain", blockPct);
        scene.field = LabelEdits.with(scene.field, "acres", acres);
        Finding finding = scene.findings(new RefugeAcres()).get(0);
        assertThat(finding.standing()).isEqualTo(blockPct >= 20 ? Standing.CLEAR : Standing.BARRED);
        assertThat(finding.says()).contains(", " + acresNeeded + " ac.");
    }

    @Test
    void bagAndBlockTogetherMayMeetARuleKeptInTheBag() {
        Scene scene = new Scene()
                .pyramidSeed("Trait", 5, Scene.rule(Form.BLEND, 10.0, null, null))
                .plainSeed("Plain")
                .plant("Trait", 94)
                .plant("Plain", 6);
        // 6 + 0.94 × 5 = 10.7 %
        assertThat(scene.findings(new RefugeAcres()).get(0).measured()).isEqualTo(10.7);
        assertThat(scene.standing(new RefugeAcres())).isEqualTo(Standing.CLEAR);
    }

    @Test
    void unreadTagNamesPublishedSizesByModesOfAction() {
        Scene scene = new Scene()
                .traitSeed("Trait", 0, Scene.rule(Form.UNKNOWN, null, null, null))
                .plant("Trait", 100);
        assertThat(says(scene)).contains("5 to 20 %");
        scene.traits.add(new Trait("P1", "group 1", "corn rootworm", new Distribution.Fixed(0.9), "label"));
        assertThat(says(scene)).contains("one mode of action on corn rootworm", "20 %", "10 %", "confirm on the tag");
        scene.traits.add(new Trait("P1", "group 2", "corn rootworm", new Distribution.Fixed(0.9), "label"));
        assertThat(says(scene)).contains("2 modes of action on corn rootworm, 5 %");
    }

    /** Half a mile is 2,640 ft, edge to edge: 2,600 ft passes, 2,700 ft fails (University of Wisconsin W114). */
    @ParameterizedTest
    @CsvSource(
            nullValues = "?",
            value = {
                "2640, 4, 2600, 6, CLEAR",
                "2640, 4, 2640, 4, CLEAR",
                "2640, 4, 2700, 6, BARRED",
                "2640, 4, 0, 3, BARRED",
                "0, 4, 0, 4, CLEAR",
                "0, 4, 1, 4, BARRED",
                "?, 4, 0, 4, UNKNOWN",
                "0, ?, 0, 4, UNKNOWN",
                "0, 4, ?, 4, UNKNOWN",
                "0, 4, 0, ?, UNKNOWN",
            })
    void refugeLiesNearAndWide(
            @Nullable Double farthest,
            @Nullable Integer fewest,
            @Nullable Double distance,
            @Nullable Integer rows,
            Standing expected) {
        Scene scene = new Scene()
                .pyramidSeed("Trait", 0, Scene.rule(Form.BLOCK, 20.0, farthest, fewest))
                .plant("Trait", 80);
        scene.refuge = new RefugePlan(distance, rows);
        assertThat(scene.standing(new RefugePlacement())).isEqualTo(expected);
    }

    @Test
    void seedWithoutTraitsOrKeptInTheBagHasNoPlacementToAnswer() {
        Scene plain = new Scene().plainSeed("Plain").plant("Plain", 100);
        assertThat(plain.findings(new RefugeAcres())).isEmpty();
        assertThat(plain.findings(new RefugePlacement())).isEmpty();
        Scene bag = new Scene()
                .pyramidSeed("Trait", 5, Scene.rule(Form.BLEND, 5.0, null, null))
                .plant("Trait", 100);
        assertThat(bag.findings(new RefugePlacement())).isEmpty();
    }

    private static String says(Scene scene) {
        List<Finding> findings = scene.findings(new RefugeAcres());
        assertThat(findings.get(0).standing()).isEqualTo(Standing.UNKNOWN);
        return findings.get(0).says();
    }
}
