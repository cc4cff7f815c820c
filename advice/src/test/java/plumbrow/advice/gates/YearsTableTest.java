package plumbrow.advice.gates;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Decision tables of the gates that protect the next crop and the usefulness of the chemistry.
 *
 * <p>Checked against the weed reference 7.1: atrazine with metribuzin is one site of action, with mesotrione two; old group
 * 7 is today's 5. First-order loss: after one half-life half is left, after two a quarter.
 */
class YearsTableTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            nullValues = "-",
            value = {
                "-                                                            | CLEAR       | 355 | 300",
                "plantback.days=355                                           | CLEAR       | 355 | 355",
                "plantback.days=356                                           | BARRED      | 355 | 356",
                "plantback.days=?                                             | UNKNOWN     | -   | -",
                "plantback.days=0; next.planted=?                             | CLEAR       | -   | -",
                "plantback.condition=15 in of rain                            | CONDITIONAL | 355 | 300",
                "plantback.days=0; plantback.condition=15 in of rain          | CONDITIONAL | -   | -",
                "plantback.days=356; plantback.condition=15 in of rain        | BARRED      | -   | -",
                "-plantback                                                   | UNKNOWN     | -   | -",
                "-next                                                        | UNKNOWN     | -   | -",
                "next.planted=?                                               | UNKNOWN     | -   | -",
                "pass.date=?                                                  | UNKNOWN     | -   | -",
                "next.crop=Soybean                                            | CLEAR       | 355 | 300",
                "next.crop=alfalfa                                            | BARRED      | 355 | 500",
                "plantback.forPhFrom=6.5                                      | CLEAR       | 355 | 300",
                "plantback.forPhFrom=6.6                                      | UNKNOWN     | -   | -",
                "plantback.forPhBelow=6.6                                     | CLEAR       | 355 | 300",
                "plantback.forPhBelow=6.5                                     | UNKNOWN     | -   | -",
                "plantback.forPhBelow=6.6; field.ph=?                         | UNKNOWN     | -   | -",
                "field.ph=?                                                   | CLEAR       | 355 | 300",
                "plantback2.nextCrop=soybean                                  | BARRED      | 355 | 500",
                "plantback2.nextCrop=soybean; plantback2.days=?               | UNKNOWN     | -   | -",
                "plantback2.nextCrop=soybean; plantback2.forPhFrom=7          | CLEAR       | 355 | 300",
                "log.date=2026-07-14                                          | CLEAR       | -   | -",
                "log.date=2026-07-15                                          | BARRED      | -   | -",
                "next.use=ESCAPE                                              | UNKNOWN     | -   | -",
                "next.use=COVER                                               | UNKNOWN     | -   | -",
            })
    void plantBack(@Nullable String edits, String expected, @Nullable Double measured, @Nullable Double limit) {
        List<Finding> findings = Decides.line("plant-back", edits, expected);
        if (measured != null) {
            assertThat(findings.get(0).measured()).isEqualTo(measured);
            assertThat(findings.get(0).limit()).isEqualTo(limit);
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            nullValues = "?",
            value = {
                "COVER  | true  | 2026-09-01 | BARRED",
                "COVER  | false | 2026-09-01 | CONDITIONAL",
                "COVER  | ?     | 2026-09-01 | UNKNOWN",
                "COVER  | ?     | 2027-05-01 | CLEAR",
                "ESCAPE | false | 2026-06-15 | CONDITIONAL",
                "ESCAPE | false | 2027-05-01 | CLEAR",
            })
    void coverAndEscape(String use, @Nullable String fed, String planted, String expected) {
        Scene scene = WholeLabel.scene();
        scene.nextCrops.add(scene.nextCrops.get(0));
        Edits.apply(
                scene, "next2.use=" + use + "; next2.planted=" + planted + "; next2.fed=" + (fed == null ? "?" : fed));
        assertThat(Gates.standing(scene.findings(new PlantBacks())).name()).isEqualTo(expected);
    }

    /** Atrazine fades with a half-life of 60 d in the reference data: 120 days leave a quarter. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            nullValues = "-",
            value = {
                "-                                                        | CLEAR",
                "next.planted=2026-09-17                                  | CLEAR",
                "next.planted=2026-09-16                                  | CONDITIONAL",
                "next.planted=2026-05-20                                  | CONDITIONAL",
                "next.planted=2026-05-19                                  | SILENT",
                "next.planted=?                                           | UNKNOWN",
                "pass.date=?                                              | UNKNOWN",
                "active.ingredient=pyroxasulfone                          | CONDITIONAL",
                "product.kind=INSECTICIDE                                 | SILENT",
                "-next                                                    | SILENT",
                "log.date=2026-04-20; next.planted=2026-09-17             | CLEAR",
            })
    void carryOver(@Nullable String edits, String expected) {
        Decides.line("carry-over", edits, expected);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            nullValues = "-",
            value = {
                "-                                                                             | SILENT      | -",
                "+weed                                                                         | CONDITIONAL | 0",
                "+weed; +control                                                               | CONDITIONAL | 1",
                "+weed; +control; control.share=0.8                                            | CONDITIONAL | 1",
                "+weed; +control; control.share=0.79                                           | CONDITIONAL | 0",
                "+weed; +control; pass.rate=0.99 qt                                            | CONDITIONAL | 0",
                "+weed; +control; pass.rate=?                                                  | UNKNOWN     | 0",
                "+weed; +control; active.ingredient=no such thing                              | UNKNOWN     | 0",
                "+weed; +control; -active                                                      | UNKNOWN     | 0",
                "+weed; +control; +partner; +control; control2.product=Partner; control2.rate=3 fl oz | CONDITIONAL | 2",
                "+weed; +control; +partner; +control; control2.product=Partner; control2.rate=3 fl oz; +resistance | CLEAR | 2",
                "+weed; +control; +partner; +control; control2.product=Partner; control2.rate=3 fl oz; resistance.group=5 | CONDITIONAL | 1",
                "+weed; +control; +partner; +control; control2.product=Partner; control2.rate=3 fl oz; resistance.group=7 | CONDITIONAL | 1",
                "+weed; +control; +partner; +control; control2.product=Partner; control2.rate=3 fl oz; resistance.group=5; resistance.weed=ragweed | CONDITIONAL | 2",
                "+weed; +control; +partner; +control; control2.product=Partner; control2.rate=3 fl oz; active2.ingredient=metribuzin; +resistance | CONDITIONAL | 1",
                "+weed; +control; +partner; active2.product=Tackline; +resistance               | CONDITIONAL | 2",
                "+weed; +control; product.kind=INSECTICIDE                                     | SILENT      | -",
            })
    void sitesOfAction(@Nullable String edits, String expected, @Nullable Double sites) {
        List<Finding> findings = Decides.line("sites-of-action", edits, expected);
        if (sites != null) {
            assertThat(findings.get(0).measured()).isEqualTo(sites);
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            nullValues = "-",
            value = {
                "effective-rate | -                                                      | SILENT",
                "effective-rate | +weed; +control                                        | CLEAR",
                "effective-rate | +weed; control.rate=1.1 qt                             | CONDITIONAL",
                "effective-rate | +weed; control.rate=1.1 qt; control.share=0.79         | SILENT",
                "effective-rate | +weed; control.rate=1.1 qt; +control                   | CLEAR",
                "effective-rate | +weed; control.rate=1 lb                               | UNKNOWN",
                "effective-rate | +weed; +control; pass.rate=?                           | UNKNOWN",
                "effective-rate | +insect; control.pest=corn borer; control.rate=2 qt    | CONDITIONAL",
                "repeated-group | +log                                                   | SILENT",
                "repeated-group | log.date=2025-05-20                                    | CLEAR",
                "repeated-group | log.date=2025-05-20; +log; log2.date=2024-05-20        | CONDITIONAL",
                "repeated-group | log.date=2025-05-20; +log; log2.date=2025-06-20        | CLEAR",
                "repeated-group | log.date=2024-10-01; +log; log2.date=2023-10-01        | CONDITIONAL",
                "repeated-group | log.date=2025-09-30; +log; log2.date=2024-09-30        | CONDITIONAL",
                "repeated-group | log.date=2025-05-20; +log; log2.date=2023-09-30        | CLEAR",
                "repeated-group | log.date=2025-05-20; +log; log2.date=2024-05-20; product.kind=INSECTICIDE | SILENT",
                "insecticide-rotation | -                                                | SILENT",
                "insecticide-rotation | product.kind=INSECTICIDE; active.ingredient=bifenthrin | CLEAR",
                "insecticide-rotation | product.kind=INSECTICIDE; active.ingredient=bifenthrin; +again | CONDITIONAL",
                "insecticide-rotation | product.kind=INSECTICIDE; active.ingredient=bifenthrin; +log | CONDITIONAL",
            })
    void usefulness(String gate, @Nullable String edits, String expected) {
        Decides.line(gate, edits, expected);
    }
}
