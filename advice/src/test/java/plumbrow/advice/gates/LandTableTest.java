package plumbrow.advice.gates;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumbrow.science.reference.Property;

/**
 * Decision tables of the gates that protect water, wildlife and neighbours.
 *
 * <p>Arithmetic against the fate reference: deposit 2.7705·x^−0.9787 with table values 0.57 % at 5 m and 0.10 % at 30 m
 * (Rautmann et al. 2001); 1 lb/ac over 0.3 m of water 10 m off brings 1.08714 µg/L; leaching scores 3.56 for half-life 60 d
 * and Koc 100; bee contact 2.7 µg for 1 lb/ac; a 20 g bird on short grass takes 273.336 mg/kg for 1 lb/ac.
 */
class LandTableTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            nullValues = "-",
            value = {
                "setback-water | feature.nearestFt=66                                       | CLEAR",
                "setback-water | feature.nearestFt=65.9                                     | CONDITIONAL",
                "setback-water | feature.nearestFt=0                                        | CONDITIONAL",
                "setback-water | feature.nearestFt=?                                        | UNKNOWN",
                "setback-water | setback.feet=?                                             | UNKNOWN",
                "setback-water | setback.feet=0; feature.nearestFt=?                        | CLEAR",
                "setback-water | -setback                                                   | UNKNOWN",
                "setback-water | setback.kind=POND                                          | UNKNOWN",
                "setback-water | feature.nearestFt=10; setback.downwindOnly=true            | CONDITIONAL",
                "setback-water | -feature                                                   | SILENT",
                "setback-water | -plan; pass.kind=SEED                                      | SILENT",
                "setback-water | pass.kind=GRANULE; feature.nearestFt=60                    | CONDITIONAL",
                "setback-water | feature.kind=WELL                                          | UNKNOWN",
                "setback-water | feature.kind=DITCH                                         | UNKNOWN",
                "setback-water | feature.kind=POND                                          | UNKNOWN",
                "setback-water | feature.kind=SINKHOLE                                      | UNKNOWN",
                "setback-water | feature.kind=TILE_INLET                                    | UNKNOWN",
                "setback-water | feature.kind=DWELLING                                      | SILENT",
                "setback-wildlife | feature.kind=BEE_YARD                                   | UNKNOWN",
                "setback-wildlife | feature.kind=HABITAT; setback.kind=HABITAT              | CLEAR",
                "setback-neighbours | feature.kind=ORGANIC_FIELD                            | UNKNOWN",
                "setback-neighbours | feature.kind=SENSITIVE_CROP; setback.kind=SENSITIVE_CROP | CLEAR",
                "leaching | -                                                               | CLEAR",
                "leaching | field.texture=LOAM                                              | CONDITIONAL",
                "leaching | field.texture=SAND                                              | CONDITIONAL",
                "leaching | field.texture=?                                                 | UNKNOWN",
                "leaching | active.ingredient=pyroxasulfone                                 | CONDITIONAL",
                "leaching | active.ingredient=glyphosate; field.texture=SAND                | CLEAR",
                "leaching | active.ingredient=S-metolachlor                                 | CONDITIONAL",
                "leaching | field.texture=?; -active                                        | SILENT",
                "leaching | field.texture=SAND; -plan; pass.kind=SEED                       | SILENT",
                "runoff | -                                                                 | CLEAR",
                "runoff | field.slopePct=2                                                  | CLEAR",
                "runoff | field.slopePct=2.1                                                | CONDITIONAL",
                "runoff | field.slopePct=?                                                  | UNKNOWN",
                "runoff | field.texture=?                                                   | UNKNOWN",
                "runoff | active.ingredient=pyroxasulfone                                   | CONDITIONAL",
                "runoff | active.ingredient=acetochlor                                      | CONDITIONAL",
                "runoff | -active; field.slopePct=?                                         | SILENT",
                "runoff | active.ingredient=lambda-cyhalothrin; field.slopePct=6.1          | CONDITIONAL",
                "runoff | active.ingredient=chlorpyrifos; field.slopePct=6                  | CLEAR",
                "runoff | active.ingredient=chlorpyrifos; field.slopePct=6.1                | CONDITIONAL",
                "runoff | active.ingredient=chlorpyrifos; field.slopePct=2; field.texture=CLAY | CLEAR",
                "runoff | active.ingredient=chlorpyrifos; field.slopePct=2.1; field.texture=CLAY | CONDITIONAL",
                "runoff | active.ingredient=atrazine; field.slopePct=1; field.texture=CLAY  | CONDITIONAL",
                "runoff | active.ingredient=atrazine; field.slopePct=1; field.texture=SILTY_CLAY | CONDITIONAL",
                "runoff | active.ingredient=atrazine; field.slopePct=1; field.texture=SANDY_CLAY | CONDITIONAL",
                "ground-water | care.groundwater=YES                                        | CLEAR",
                "ground-water | care.groundwater=YES; field.texture=SANDY_LOAM              | CONDITIONAL",
                "ground-water | care.groundwater=YES; field.texture=?                       | UNKNOWN",
                "ground-water | care.groundwater=NO; field.texture=?                        | CLEAR",
                "ground-water | care.groundwater=UNKNOWN                                    | UNKNOWN",
                "saturated-soil | -                                                         | CLEAR",
                "saturated-soil | care.saturatedSoil=YES                                    | CONDITIONAL",
                "saturated-soil | care.saturatedSoil=UNKNOWN                                | UNKNOWN",
                "rain-ahead | -                                                             | CLEAR",
                "rain-ahead | care.rainAheadHours=48                                        | CONDITIONAL",
                "rain-ahead | care.rainAheadHours=?                                         | UNKNOWN",
                "bulletin | -                                                               | CLEAR",
                "bulletin | care.bulletin=YES                                               | UNKNOWN",
                "bulletin | care.bulletin=YES; +bulletin                                    | CLEAR",
                "bulletin | care.bulletin=UNKNOWN                                           | UNKNOWN",
                "bulletin | -care                                                           | SILENT",
            })
    void water(String gate, @Nullable String edits, String expected) {
        Decides.line(gate, edits, expected);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            nullValues = "-",
            value = {
                "setback-water | feature.nearestFt=26 | Leave the outer 40 ft of the field on that side unsprayed.",
                "setback-water | feature.nearestFt=0  | Leave all within 66 ft of it unsprayed.",
                "setback-water | feature.nearestFt=26; setback.downwindOnly=true | Leave the outer 40 ft of the field on that side unsprayed, or spray when the wind blows away from it.",
                "bulletin | care.bulletin=YES; bulletin.says=not after sunset | Keep to the bulletin for Marrow County, IA in 2026-05: not after sunset.",
            })
    void conditionIsExact(String gate, String edits, String clears) {
        assertThat(Decides.line(gate, edits, "CONDITIONAL").get(0).clears()).isEqualTo(clears);
    }

    /** Concentrations by hand from the reference: 1 lb/ac, 0.3 m: 1.08714 µg/L at 10 m (32.8084 ft), 10.35106 at 1 m. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            nullValues = "-",
            value = {
                "feature.nearestFt=32.808399                                   | CLEAR       | 1.08714",
                "feature.nearestFt=0                                           | CLEAR       | 10.35106",
                "feature.nearestFt=0; plan.driftReductionPct=50                | CLEAR       | 5.17553",
                "feature.nearestFt=0; plan.driftReductionPct=?                 | CLEAR       | 10.35106",
                "feature.nearestFt=0; -plan                                    | CLEAR       | 10.35106",
                "feature.nearestFt=0; active.ingredient=bifenthrin             | CONDITIONAL | 10.35106",
                "feature.nearestFt=0; active.ingredient=bifenthrin; feature.kind=POND  | CONDITIONAL | 10.35106",
                "feature.nearestFt=0; active.ingredient=bifenthrin; feature.kind=DITCH | CONDITIONAL | 10.35106",
                "feature.nearestFt=0; active.ingredient=bifenthrin; feature.kind=WELL  | SILENT | -",
                "feature.nearestFt=0; active.ingredient=thiamethoxam           | CONDITIONAL | -",
                "feature.nearestFt=329; active.ingredient=bifenthrin           | CONDITIONAL | -",
                "feature.nearestFt=328; active.ingredient=bifenthrin           | CONDITIONAL | -",
                "feature.nearestFt=?                                           | UNKNOWN     | -",
                "pass.rate=?                                                   | UNKNOWN     | -",
                "active.per=LB                                                 | UNKNOWN     | -",
                "feature.nearestFt=0; active.ingredient=bifenthrin; plan.method=IN_FURROW | SILENT | -",
                "feature.nearestFt=0; active.ingredient=bifenthrin; pass.kind=GRANULE     | SILENT | -",
            })
    void driftToWater(String edits, String expected, @Nullable Double concentration) {
        List<Finding> findings = Decides.line("drift-to-water", edits, expected);
        if (concentration != null) {
            String says = findings.get(0).says();
            double found = Double.parseDouble(says.replaceAll("Drift may bring ([0-9.]+) µg/L.*", "$1"));
            assertThat(found).isCloseTo(concentration, within(1e-3));
            double lethal =
                    found / 1000 / Objects.requireNonNull(findings.get(0).measured());
            assertThat(findings.get(0).limit()).isEqualTo(0.05);
            assertThat(lethal).isPositive();
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            nullValues = "-",
            value = {
                "bees | -                                                              | CLEAR",
                "bees | plan.bloom=YES                                                 | CLEAR",
                "bees | plan.bloom=UNKNOWN                                             | CLEAR",
                "bees | care.bees=UNKNOWN                                              | UNKNOWN",
                "bees | care.bees=YES                                                  | CONDITIONAL",
                "bees | care.bees=YES; plan.bloom=YES                                  | BARRED",
                "bees | care.bees=YES; plan.bloom=UNKNOWN                              | UNKNOWN",
                "bees | care.bees=YES; -plan                                           | UNKNOWN",
                "bees | active.ingredient=bifenthrin                                   | CLEAR",
                "bees | active.ingredient=bifenthrin; plan.bloom=YES                   | CONDITIONAL",
                "bees | active.ingredient=bifenthrin; plan.bloom=UNKNOWN               | UNKNOWN",
                "bees | active.ingredient=bifenthrin; feature.kind=BEE_YARD            | CONDITIONAL",
                "bees | active.ingredient=bifenthrin; feature.kind=BEE_YARD; feature.nearestFt=? | CONDITIONAL",
                "bees | active.ingredient=bifenthrin; feature.kind=BEE_YARD; feature.nearestFt=10559 | CONDITIONAL",
                "bees | active.ingredient=bifenthrin; feature.kind=BEE_YARD; feature.nearestFt=10560 | CLEAR",
                "bees | active.ingredient=sethoxydim; plan.bloom=YES                         | CONDITIONAL",
                "bees | active.ingredient=sethoxydim; plan.bloom=UNKNOWN                     | UNKNOWN",
                "bees | pass.rate=?                                                    | UNKNOWN",
                "bees | plan.method=IN_FURROW                                          | SILENT",
                "bees | pass.kind=GRANULE                                              | SILENT",
                "bees | -care                                                          | SILENT",
                "birds-and-mammals | active.ingredient=glyphosate                      | CLEAR",
                "birds-and-mammals | active.ingredient=chlorpyrifos                    | CONDITIONAL",
                "birds-and-mammals | active.ingredient=pyroxasulfone                   | CONDITIONAL",
                "birds-and-mammals | pass.rate=?                                       | UNKNOWN",
                "birds-and-mammals | active.ingredient=chlorpyrifos; plan.method=IN_FURROW | SILENT",
                "birds-and-mammals | active.ingredient=chlorpyrifos; pass.kind=GRANULE | SILENT",
                "drift-to-neighbours | feature.kind=SENSITIVE_CROP                     | CONDITIONAL",
                "drift-to-neighbours | feature.kind=ORGANIC_FIELD; feature.nearestFt=328 | CONDITIONAL",
                "drift-to-neighbours | feature.kind=ORGANIC_FIELD; feature.nearestFt=329 | CONDITIONAL",
                "drift-to-neighbours | feature.kind=ORGANIC_FIELD; feature.nearestFt=? | UNKNOWN",
                "drift-to-neighbours | -                                               | SILENT",
                "drift-to-neighbours | feature.kind=ORGANIC_FIELD; plan.method=ON_SEED | SILENT",
                "vapour-drift | -                                                      | SILENT",
                "vapour-drift | feature.kind=SENSITIVE_CROP                            | CLEAR",
                "vapour-drift | feature.kind=ORGANIC_FIELD; active.ingredient=trifluralin | CONDITIONAL",
                "vapour-drift | feature.kind=SENSITIVE_CROP; active.ingredient=EPTC    | CONDITIONAL",
                "vapour-drift | feature.kind=SENSITIVE_CROP; active.ingredient=mesotrione | CONDITIONAL",
                "vapour-drift | feature.kind=SENSITIVE_CROP; active.ingredient=EPTC; plan.method=SPOT | CONDITIONAL",
            })
    void lifeAround(String gate, @Nullable String edits, String expected) {
        Decides.line(gate, edits, expected);
    }

    /** 1 lb/ac of a 20 g bird on short grass is 273.336 mg/kg; LD50s of bobwhite scale by (20/178)^0.15 = 0.720430. */
    @ParameterizedTest
    @CsvSource({"1 qt, 1", "2 qt, 2"})
    void doseOfASmallBird(String rate, double pounds) {
        Scene scene = Edits.apply(WholeLabel.scene(), "active.ingredient=chlorpyrifos; pass.rate=" + rate);
        Finding bird = scene.findings(new BirdsAndMammals()).get(0);
        double lethal = Objects.requireNonNull(Ingredient.of("chlorpyrifos").number(Property.BOBWHITE_ORAL));
        assertThat(bird.subject()).isEqualTo("chlorpyrifos, bird");
        assertThat(Objects.requireNonNull(bird.measured()))
                .isCloseTo(273.336 * pounds / (lethal * 0.720430), within(1e-3));
        assertThat(bird.limit()).isEqualTo(0.1);
    }

    /** Half of what went on 35 days before is still there: 1 lb and 1 lb make 1.5 lb on the food. */
    @ParameterizedTest
    @CsvSource({"2026-04-15, 1.5", "2026-05-20, 1", "2026-06-24, 1.5"})
    void whatEarlierSpraysLeftIsAdded(String logged, double pounds) {
        Scene once = Edits.apply(WholeLabel.scene(), "active.ingredient=chlorpyrifos");
        Scene twice = Edits.apply(WholeLabel.scene(), "active.ingredient=chlorpyrifos; log.date=" + logged);
        double alone = Objects.requireNonNull(
                once.findings(new BirdsAndMammals()).get(1).measured());
        double both = Objects.requireNonNull(
                twice.findings(new BirdsAndMammals()).get(1).measured());
        assertThat(both / alone).isCloseTo(pounds, within(1e-9));
    }
}
