package plumbrow.advice.gates;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Decision tables of the gates that protect people.
 *
 * <p>Checked against the worker protection rule: exclusion zone A1 to A7 (40 CFR 170.405(a), 2024 rule), longest interval
 * of the day R3 (4, 12, 24 h: 24 h), display 30 days and records 2 years.
 */
class PeopleTableTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            nullValues = "-",
            value = {
                "-                                                     | CLEAR       | 3192 | 12",
                "terms.reentryHours=?                                  | UNKNOWN     | -    | -",
                "-terms                                                | SILENT      | -    | -",
                "terms.reentryHours=0                                  | SILENT      | -    | -",
                "terms.reentryHours=0; pass.date=?                     | SILENT      | -    | -",
                "pass.date=?                                           | UNKNOWN     | -    | -",
                "pass2.date=?                                          | UNKNOWN     | -    | -",
                "+scout                                                | CONDITIONAL | 0    | 12",
                "+scout; pass3.date=2026-05-22                         | CLEAR       | 24   | 12",
                "+scout; pass3.date=2026-05-22; terms.reentryHours=24  | CLEAR       | 24   | 24",
                "+scout; pass3.date=2026-05-22; terms.reentryHours=25  | CONDITIONAL | 24   | 25",
                "+scout; pass3.date=2026-05-22; terms.reentryHours=72  | BARRED      | 24   | 72",
                "+scout; terms.reentryHours=47                         | CONDITIONAL | 0    | 47",
                "+scout; terms.reentryHours=48                         | BARRED      | 0    | 48",
                "+till; terms.reentryHours=48                          | BARRED      | 0    | 48",
                "+scout; pass3.kind=SPRAY; terms.reentryHours=48       | CLEAR       | -    | -",
                "+scout; pass3.kind=SEED; terms.reentryHours=48        | BARRED      | 0    | 48",
                "+scout; pass3.date=2026-05-20; terms.reentryHours=72  | CONDITIONAL | 0    | 72",
                "+scout; pass3.date=2026-05-19                         | CLEAR       | 3192 | 12",
                "+scout; pass3.date=?                                  | UNKNOWN     | -    | -",
                "+scout; pass3.date=2026-05-20; +till; terms.reentryHours=48 | BARRED | -   | -",
                "pass2.kind=TILLAGE; pass2.date=2026-05-01             | CLEAR       | -    | -",
                "+scout; pass3.date=2026-05-20; pass3.kind=SEED             | CONDITIONAL | 0    | 12",
                "+scout; pass3.date=2026-05-20; pass3.kind=SEED; pass.kind=GRANULE | CLEAR | 3192 | 12",
                "+scout; pass3.date=2026-05-20; pass3.kind=SEED; plan.method=IN_FURROW | CLEAR | 3192 | 12",
                "+scout; pass3.date=2026-05-20; pass.kind=GRANULE           | CONDITIONAL | 0    | 12",
                "log.date=2026-05-21; +scout; pass3.date=2026-05-22; terms.reentryHours=48 | BARRED | - | -",
            })
    void reEntry(@Nullable String edits, String expected, @Nullable Double measured, @Nullable Double limit) {
        List<Finding> findings = Decides.line("re-entry", edits, expected);
        if (measured != null) {
            assertThat(findings.get(0).measured()).isEqualTo(measured);
            assertThat(findings.get(0).limit()).isEqualTo(limit);
        }
    }

    @Test
    void longestIntervalOfTheDayCounts() {
        Scene scene = Edits.apply(WholeLabel.scene(), "+partner; terms.reentryHours=4");
        WholeLabel.read(scene, "Partner");
        scene.terms.set(1, LabelEdits.with(scene.terms.get(1), "reentryHours", 24));
        Edits.apply(scene, "+scout; pass4.date=2026-05-22");
        Finding finding = scene.findings(new ReEntry()).get(0);
        assertThat(finding.limit()).isEqualTo(24.0);
        assertThat(finding.subject()).isEqualTo("pass 1, Tackline; pass 3, Partner");
        assertThat(finding.standing()).isEqualTo(Standing.CLEAR);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "terms.reentryHours=48; +scout | Put the scouting of pass 3 off to 2026-05-23 or later.",
                "terms.reentryHours=49; +scout | Put the scouting of pass 3 off to 2026-05-24 or later.",
                "terms.reentryHours=12; +scout | Nobody goes in until 12 h after the end of the application.",
                "+scout; pass3.date=2026-05-20 | Finish the scouting of pass 3 before the application, or wait until 12 h after the end of the application.",
                "+scout; pass3.date=2026-05-20; pass3.kind=SEED | Finish the planting of pass 3 before the application, or wait until 12 h after the end of the application.",
            })
    void saysWhenPeopleMayGoIn(String edits, String clears) {
        assertThat(Edits.apply(WholeLabel.scene(), edits)
                        .findings(new ReEntry())
                        .get(0)
                        .clears())
                .isEqualTo(clears);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            nullValues = "-",
            value = {
                "-                                                                            | CONDITIONAL | -",
                "feature.kind=DWELLING; feature.nearestFt=25                                  | CONDITIONAL | 25",
                "feature.kind=DWELLING; feature.nearestFt=24.9                                | CONDITIONAL | 25",
                "feature.kind=SCHOOL; feature.nearestFt=24.9                                  | CONDITIONAL | 25",
                "feature.kind=DWELLING; feature.nearestFt=?                                   | UNKNOWN     | -",
                "feature.kind=DWELLING; feature.nearestFt=99; plan.droplets=FINE              | CONDITIONAL | 100",
                "feature.kind=DWELLING; feature.nearestFt=100; plan.droplets=FINE             | CONDITIONAL | 100",
                "feature.kind=DWELLING; feature.nearestFt=99; plan.droplets=?                 | CONDITIONAL | 100",
                "feature.kind=DWELLING; feature.nearestFt=99; plan.droplets=MEDIUM            | CONDITIONAL | 25",
                "feature.kind=DWELLING; feature.nearestFt=99; plan.method=AERIAL              | CONDITIONAL | 100",
                "feature.kind=DWELLING; feature.nearestFt=1; plan.boomIn=12                   | CONDITIONAL | 25",
                "feature.kind=DWELLING; feature.nearestFt=1; plan.boomIn=2                    | CLEAR       | -",
                "feature.kind=DWELLING; feature.nearestFt=1; plan.boomIn=2; plan.cropHeightIn=? | CONDITIONAL | 25",
                "feature.kind=DWELLING; feature.nearestFt=99; plan.method=CHEMIGATION; plan.droplets=? | CONDITIONAL | 100",
                "feature.kind=DWELLING; feature.nearestFt=1; plan.method=SPOT                 | CONDITIONAL | 25",
                "feature.kind=DWELLING; feature.nearestFt=1; plan.boomIn=12.1                 | CONDITIONAL | 25",
                "feature.kind=DWELLING; feature.nearestFt=1; plan.boomIn=?                    | CONDITIONAL | 25",
                "feature.kind=DWELLING; feature.nearestFt=1; plan.boomIn=10; plan.droplets=FINE | CONDITIONAL | 100",
                "feature.kind=DWELLING; feature.nearestFt=1; plan.method=IN_FURROW            | SILENT      | -",
                "feature.kind=DWELLING; feature.nearestFt=99; -plan                           | CONDITIONAL | 100",
                "feature.kind=DWELLING; feature.nearestFt=1; pass.kind=GRANULE                | SILENT      | -",
            })
    void exclusionZone(@Nullable String edits, String expected, @Nullable Double zone) {
        List<Finding> findings = Decides.line("exclusion-zone", edits, expected);
        if (zone != null) {
            Finding house = findings.stream()
                    .filter(finding -> finding.limit() != null)
                    .findFirst()
                    .orElseThrow();
            assertThat(house.limit()).isEqualTo(zone);
            assertThat(house.says()).startsWith("The ");
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            nullValues = "-",
            value = {
                "pre-harvest-interval | -                                                  | CLEAR",
                "pre-harvest-interval | log.date=2026-08-02                                | CLEAR",
                "pre-harvest-interval | log.date=2026-08-03                                | BARRED",
                "grazing-feeding | terms.grazingDays=134                                   | CLEAR",
                "grazing-feeding | terms.grazingDays=135                                   | CONDITIONAL",
                "grazing-feeding | terms.grazingDays=?                                     | UNKNOWN",
                "grazing-feeding | terms.grazingDays=0; pass.date=?                        | CLEAR",
                "grazing-feeding | pass.date=?                                             | CONDITIONAL",
                "grazing-feeding | pass2.date=?                                            | CONDITIONAL",
                "grazing-feeding | pass2.date=2026-05-19                                   | CONDITIONAL",
                "grazing-feeding | pass2.date=2026-05-20; terms.grazingDays=0              | CLEAR",
                "grazing-feeding | terms.feedingForbidden=YES                              | CONDITIONAL",
                "grazing-feeding | terms.feedingForbidden=UNKNOWN                          | UNKNOWN",
                "grazing-feeding | terms.feedingForbidden=YES; terms.grazingDays=?         | UNKNOWN",
                "grazing-feeding | -terms                                                  | SILENT",
                "surroundings | -                                                          | SILENT",
                "surroundings | -looked                                                    | UNKNOWN",
                "surroundings | looked.kind=STREAM                                         | UNKNOWN",
                "surroundings | -looked; -plan; pass.kind=SEED                             | SILENT",
                "wear | -                                                                  | CLEAR",
                "wear | care.wear=gloves, GOGGLES                                          | CLEAR",
                "wear | care.wear=gloves, apron                                            | CONDITIONAL",
                "wear | care.wear=                                                         | CLEAR",
                "wear | care.wear=; crew.gear=?                                            | CLEAR",
                "wear | care.wear=?                                                        | UNKNOWN",
                "wear | crew.gear=?                                                        | UNKNOWN",
                "wear | -care                                                              | SILENT",
                "central-display | -                                                       | CLEAR",
                "central-display | crew.display=NO                                         | CONDITIONAL",
                "central-display | crew.display=UNKNOWN                                    | UNKNOWN",
                "central-display | crew.display=UNKNOWN; -plan; pass.kind=SEED             | SILENT",
                "setback-people | feature.kind=DWELLING; setback.kind=DWELLING             | CLEAR",
                "setback-people | feature.kind=SCHOOL; setback.kind=SCHOOL                 | CLEAR",
                "setback-people | feature.kind=SCHOOL                                      | UNKNOWN",
            })
    void peopleElsewhere(String gate, @Nullable String edits, String expected) {
        Decides.line(gate, edits, expected);
    }
}
