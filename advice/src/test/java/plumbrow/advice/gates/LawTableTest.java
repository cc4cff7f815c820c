package plumbrow.advice.gates;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Decision tables of the gates that protect the distribution: clear, at the limit, just beyond, unknown.
 *
 * <p>Checked against 7 U.S.C. 136(ee), 136j(a)(2), 136p and 136v: lower rates are lawful unless forbidden; a carrier volume
 * below the label, an aerial use it forbids, a special label of another state or past its last day are not.
 */
class LawTableTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            nullValues = "-",
            value = {
                "crop-on-label | special.until=2026-05-20                           | CLEAR",
                "crop-on-label | special.until=2026-05-19                           | BARRED",
                "crop-on-label | special.until=?                                    | UNKNOWN",
                "crop-on-label | special.until=9999-12-31                           | CLEAR",
                "crop-on-label | special.until=?; special.from=2026-05-21           | BARRED",
                "crop-on-label | special.from=?; special.until=2026-05-19           | BARRED",
                "crop-on-label | special.from=2026-05-20                            | CLEAR",
                "crop-on-label | special.from=2026-05-21                            | BARRED",
                "crop-on-label | special.from=?                                     | UNKNOWN",
                "crop-on-label | special.state=IL                                   | BARRED",
                "crop-on-label | special.state=ia                                   | CLEAR",
                "crop-on-label | special.counties=Sorrel                            | BARRED",
                "crop-on-label | special.counties=Sorrel, Marrow                    | CLEAR",
                "crop-on-label | special.counties=Marrow; also.county=Sorrel        | BARRED",
                "crop-on-label | special.counties=IA: Marrow County; also.state=IL  | BARRED",
                "crop-on-label | special.state=IA; pass.date=?                      | UNKNOWN",
                "crop-on-label | special.state=IA; -use                             | UNKNOWN",
                "crop-on-label | special.crop=SOYBEAN                               | CLEAR",
                "registered-in-state | -                                            | CLEAR",
                "registered-in-state | product.states=IL                            | BARRED",
                "registered-in-state | product.states=?                             | UNKNOWN",
                "registered-in-state | also.state=IL                                | CLEAR",
                "registered-in-state | also.state=MN                                | BARRED",
                "registered-in-state | product.states=IL; special.state=IA          | CLEAR",
                "registered-in-state | product.states=IL; special.state=MN          | BARRED",
                "county | -                                                         | CLEAR",
                "county | product.excludedCounties=IA: Marrow                       | BARRED",
                "county | product.excludedCounties=IA: Sorrel                       | CLEAR",
                "county | product.excludedCounties=IA: Sorrel; also.county=Sorrel   | BARRED",
                "county | product.excludedCounties=?                                | UNKNOWN",
                "label-current | care.confirmed=2025-03-01                          | CLEAR",
                "label-current | care.confirmed=2025-02-28                          | CONDITIONAL",
                "label-current | care.confirmed=?                                   | UNKNOWN",
                "label-current | -care                                              | SILENT",
                "terms-read | -                                                     | SILENT",
                "terms-read | -terms                                                | UNKNOWN",
                "terms-read | log.product=Elsewhere                                 | UNKNOWN",
                "terms-read | log.product=Tackline                                  | SILENT",
                "care-read | -                                                      | SILENT",
                "care-read | -care                                                  | UNKNOWN",
                "spray-planned | -                                                  | SILENT",
                "spray-planned | -plan                                              | UNKNOWN",
                "spray-planned | -plan; pass.kind=GRANULE                           | UNKNOWN",
                "spray-planned | -plan; pass.kind=SEED                              | SILENT",
            })
    void placesAndReading(String gate, @Nullable String edits, String expected) {
        Decides.line(gate, edits, expected);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            nullValues = "-",
            value = {
                "- | SILENT",
                "soil.highRate=1 qt | CLEAR",
                "soil.highRate=0.99 qt | BARRED",
                "soil.highRate=? | UNKNOWN",
                "soil.lowRate=1 qt | CLEAR",
                "soil.lowRate=1.1 qt | CONDITIONAL",
                "soil.lowRate=1.1 qt; use.lessForbidden=YES | BARRED",
                "soil.lowRate=1.1 qt; use.lessForbidden=UNKNOWN | UNKNOWN",
                "soil.lowRate=1.1 qt; -use | UNKNOWN",
                "soil.lowRate=? | CONDITIONAL",
                "soil.lowRate=?; use.lessForbidden=YES | UNKNOWN",
                "soil.forbidden=true | BARRED",
                "soil.textures=SAND, LOAM | BARRED",
                "soil.textures=SILTY_CLAY_LOAM, LOAM | CLEAR",
                "soil.textures=SAND; field.texture=? | UNKNOWN",
                "soil.forbidden=false; field.texture=?; field.ph=?; field.organicMatterPct=? | CLEAR",
                "soil.organicMatterLowPct=3.5 | CLEAR",
                "soil.organicMatterLowPct=3.6 | BARRED",
                "soil.organicMatterHighPct=3.6 | CLEAR",
                "soil.organicMatterHighPct=3.5 | BARRED",
                "soil.organicMatterHighPct=3.6; field.organicMatterPct=? | UNKNOWN",
                "soil.phLow=6.5 | CLEAR",
                "soil.phLow=6.6 | BARRED",
                "soil.phHigh=6.6 | CLEAR",
                "soil.phHigh=6.5 | BARRED",
                "soil.phHigh=6.5; field.ph=? | UNKNOWN",
                "soil.phHigh=6.6; soil.textures=SAND; field.ph=? | BARRED",
                "soil.forbidden=true; +soil; soil2.textures=SAND | BARRED",
                "soil.textures=SAND; +soil | CLEAR",
                "soil.highRate=1 lb | UNKNOWN",
                "soil.highRate=1 qt; pass.rate=? | UNKNOWN",
            })
    void soilRate(@Nullable String edits, String expected) {
        Decides.line("soil-rate", edits, expected);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            nullValues = {"-"},
            value = {
                "days-between   | -                                       | SILENT      | - | -",
                "days-between   | +again                                  | CLEAR       | 7 | 7",
                "days-between   | +again; terms.daysBetween=8             | BARRED      | 7 | 8",
                "days-between   | +again; terms.daysBetween=0             | SILENT      | - | -",
                "days-between   | +again; pass.date=?                     | UNKNOWN     | - | -",
                "days-between   | terms.daysBetween=?                     | UNKNOWN     | - | -",
                "days-between   | log.date=2026-05-13                     | CLEAR       | 7 | 7",
                "days-between   | log.date=2026-05-14                     | BARRED      | 6 | 7",
                "days-between   | log.date=2026-05-20                     | SILENT      | - | -",
                "growth-stage   | plan.cropStage=V8                       | CLEAR       | 9 | 9",
                "growth-stage   | plan.cropStage=V9                       | BARRED      | - | -",
                "growth-stage   | plan.cropStage=VE                       | CLEAR       | 1 | 9",
                "growth-stage   | plan.cropStage=PRE                      | BARRED      | - | -",
                "growth-stage   | plan.cropStage=?                        | UNKNOWN     | - | -",
                "growth-stage   | plan.cropStage=Feekes 4                 | UNKNOWN     | - | -",
                "growth-stage   | terms.latestStage=tall                  | UNKNOWN     | - | -",
                "growth-stage   | terms.latestStage=?                     | UNKNOWN     | - | -",
                "growth-stage   | terms.earliestStage=?                   | UNKNOWN     | - | -",
                "growth-stage   | terms.earliestStage='';terms.latestStage='';plan.cropStage=? | CLEAR | - | -",
                "growth-stage   | -plan                                   | SILENT      | - | -",
                "height         | plan.cropHeightIn=30                    | CLEAR       | - | -",
                "height         | plan.cropHeightIn=30.1                  | BARRED      | - | -",
                "height         | plan.cropHeightIn=?                     | UNKNOWN     | - | -",
                "height         | terms.highestCropIn=?                   | UNKNOWN     | - | -",
                "height         | terms.highestCropIn=999;plan.cropHeightIn=? | CLEAR   | 3 | 4",
                "height         | plan.weedHeightIn=4                     | CLEAR       | 4 | 4",
                "height         | plan.weedHeightIn=4.1                   | BARRED      | - | -",
                "height         | plan.weedHeightIn=?                     | UNKNOWN     | - | -",
                "height         | terms.highestWeedIn=?                   | UNKNOWN     | - | -",
                "height         | -plan                                   | SILENT      | - | -",
                "method         | -                                       | CLEAR       | - | -",
                "method         | plan.method=AERIAL                      | BARRED      | - | -",
                "method         | plan.method=?                           | UNKNOWN     | - | -",
                "method         | terms.methods=?                         | UNKNOWN     | - | -",
                "method         | -plan                                   | SILENT      | - | -",
                "method         | -plan; pass.kind=SEED                   | BARRED      | - | -",
                "method         | -plan; pass.kind=SEED; terms.methods=ON_SEED | CLEAR  | - | -",
                "method         | plan.method=?; terms.methods=GROUND_BROADCAST,BAND,IN_FURROW,DIRECTED,SPOT,AERIAL,CHEMIGATION,ON_SEED | SILENT | - | -",
                "carrier-volume | plan.carrierGalPerAcre=15               | CLEAR       | 15 | 15",
                "carrier-volume | plan.carrierGalPerAcre=14.9             | BARRED      | 14.9 | 15",
                "carrier-volume | plan.carrierGalPerAcre=?                | UNKNOWN     | - | -",
                "carrier-volume | terms.carrierLowGalPerAcre=?            | UNKNOWN     | - | -",
                "carrier-volume | terms.carrierLowGalPerAcre=0; plan.carrierGalPerAcre=? | CLEAR | - | -",
                "carrier-volume | plan.method=AERIAL                      | UNKNOWN     | - | -",
                "carrier-volume | plan.method=AERIAL; terms.carrierLowGalPerAcre=0 | CLEAR | - | -",
                "carrier-volume | plan.method=AERIAL; terms.carrierLowGalPerAcre=? | UNKNOWN | - | -",
                "carrier-volume | plan.method=IN_FURROW                   | SILENT      | - | -",
                "carrier-volume | -plan                                   | SILENT      | - | -",
                "droplet-class  | plan.droplets=MEDIUM                    | CLEAR       | 4 | 6",
                "droplet-class  | plan.droplets=FINE                      | BARRED      | 3 | 4",
                "droplet-class  | plan.droplets=VERY_COARSE               | CLEAR       | 6 | 6",
                "droplet-class  | plan.droplets=EXTREMELY_COARSE          | BARRED      | 7 | 6",
                "droplet-class  | plan.droplets=?                         | UNKNOWN     | - | -",
                "droplet-class  | terms.finest=?                          | UNKNOWN     | - | -",
                "droplet-class  | terms.coarsest=?                        | UNKNOWN     | - | -",
                "droplet-class  | terms.finest=EXTREMELY_FINE; terms.coarsest=ULTRA_COARSE; plan.droplets=? | CLEAR | - | -",
                "droplet-class  | terms.coarsest=ULTRA_COARSE; plan.droplets=? | UNKNOWN | - | -",
                "droplet-class  | terms.finest=EXTREMELY_FINE; plan.droplets=? | UNKNOWN | - | -",
                "droplet-class  | plan.method=SPOT                        | SILENT      | - | -",
                "droplet-class  | -plan                                   | SILENT      | - | -",
                "boom-height    | plan.boomIn=24                          | CLEAR       | 24 | 24",
                "boom-height    | plan.boomIn=24.1                        | BARRED      | 24.1 | 24",
                "boom-height    | plan.boomIn=?                           | UNKNOWN     | - | -",
                "boom-height    | terms.boomHighestIn=?                   | UNKNOWN     | - | -",
                "boom-height    | terms.boomHighestIn=999; plan.boomIn=?  | CLEAR       | - | -",
                "boom-height    | plan.method=AERIAL                      | SILENT      | - | -",
                "boom-height    | plan.method=ON_SEED                     | SILENT      | - | -",
                "boom-height    | -plan                                   | SILENT      | - | -",
            })
    void terms(
            String gate, @Nullable String edits, String expected, @Nullable Double measured, @Nullable Double limit) {
        List<Finding> findings = Decides.line(gate, edits, expected);
        if (measured != null) {
            Finding last = findings.get(findings.size() - 1);
            assertThat(last.measured()).isEqualTo(measured);
            assertThat(last.limit()).isEqualTo(limit);
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            nullValues = "-",
            value = {
                "- | CONDITIONAL | Spray only with wind of 3 mph or more, wind of 10 mph or less, air at 85 °F or less, no rain for 4 h after.",
                "terms.windLowestMph=? | UNKNOWN | Look up on the label: lowest wind.",
                "terms.windHighestMph=?; terms.warmestF=? | UNKNOWN | Look up on the label: highest wind, highest air temperature.",
                "terms.rainFreeHours=? | UNKNOWN | Look up on the label: rain-free hours.",
                "terms.windLowestMph=0; terms.rainFreeHours=0 | CONDITIONAL | Spray only with wind of 10 mph or less, air at 85 °F or less.",
                "terms.windLowestMph=0; terms.rainFreeHours=0; terms.windHighestMph=999; terms.warmestF=999 | CLEAR | ''",
            })
    void weather(@Nullable String edits, String expected, String clears) {
        assertThat(Decides.line("spray-weather", edits, expected).get(0).clears())
                .isEqualTo(clears);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            nullValues = "-",
            value = {
                "tank-mix | -                                                          | SILENT",
                "tank-mix | -plan                                                      | SILENT",
                "tank-mix | mix.partner=adjuvant                                       | BARRED",
                "tank-mix | mix.partner=Adjuvant; +adjuvant                            | CLEAR",
                "tank-mix | mix.partner=spreader; +adjuvant                            | CLEAR",
                "tank-mix | mix.partner=adjuvant; +adjuvant; plan2.tank=B              | BARRED",
                "tank-mix | mix.partner=adjuvant; mix.word=FORBIDDEN                   | SILENT",
                "tank-mix | mix.partner=adjuvant; mix.word=FORBIDDEN; +adjuvant        | BARRED",
                "tank-mix | +adjuvant                                                  | CONDITIONAL",
                "tank-mix | +partner                                                   | CONDITIONAL",
                "tank-mix | +partner; mix.partner=mesotrione; mix.word=FORBIDDEN       | BARRED",
                "tank-mix | +partner; mix.partner=glyphosate; mix.word=FORBIDDEN       | CONDITIONAL",
                "tank-mix | +partner; mix.partner=herbicide; mix.word=FORBIDDEN        | BARRED",
                "tank-mix | +partner; mix.partner=glyphosate; mix.word=FORBIDDEN; -active | UNKNOWN",
                "tank-mix | +adjuvant; mix.partner=glyphosate; mix.word=FORBIDDEN; -active | CONDITIONAL",
                "restricted-use | -                                                    | CLEAR",
                "restricted-use | care.restrictedUse=UNKNOWN                           | UNKNOWN",
                "restricted-use | care.restrictedUse=YES                               | CLEAR",
                "restricted-use | care.restrictedUse=YES; person.validUntil=2026-05-20 | CLEAR",
                "restricted-use | care.restrictedUse=YES; person.validUntil=2026-05-19 | BARRED",
                "restricted-use | care.restrictedUse=YES; person.validUntil=?          | UNKNOWN",
                "restricted-use | care.restrictedUse=YES; person.licence=?             | UNKNOWN",
                "restricted-use | care.restrictedUse=YES; person.state=?               | UNKNOWN",
                "restricted-use | care.restrictedUse=YES; person.state=IL              | BARRED",
                "restricted-use | care.restrictedUse=YES; also.state=IL                | BARRED",
                "restricted-use | care.restrictedUse=YES; plan.applicator=?            | UNKNOWN",
                "restricted-use | care.restrictedUse=YES; plan.applicator=Sam          | UNKNOWN",
                "restricted-use | care.restrictedUse=YES; pass.date=?                  | UNKNOWN",
                "restricted-use | care.restrictedUse=YES; -plan                        | UNKNOWN",
                "restricted-use | -care                                                | SILENT",
                "label-rate | log.date=2026-05-20; log.rate=3 qt                       | BARRED",
                "applications | -                                                      | CLEAR",
                "applications | +log                                                   | CLEAR",
                "applications | +log; use.mostApplications=1                           | BARRED",
                "applications | +log; use.mostApplications=?                           | UNKNOWN",
                "applications | log.date=2026-05-20; use.mostApplications=1            | CLEAR",
                "applications | log.date=2025-10-01; use.mostApplications=1            | BARRED",
                "applications | log.date=2025-09-30; use.mostApplications=1            | CLEAR",
                "product-season-maximum | +log; use.seasonMax=2 qt                     | CLEAR",
                "product-season-maximum | +log; use.seasonMax=1.9 qt                   | BARRED",
                "product-season-maximum | +log; log.field=Elsewhere; use.seasonMax=1 qt | CLEAR",
                "active-season-maximum | +log; limit.seasonMaxPounds=2                 | CLEAR",
                "active-season-maximum | +log; limit.seasonMaxPounds=1.9               | BARRED",
                "active-season-maximum | log.product=Elsewhere                         | UNKNOWN",
                "active-season-maximum | +adjuvant; log.product=Spreader               | CLEAR",
            })
    void mixesLicencesAndTheLog(String gate, @Nullable String edits, String expected) {
        Decides.line(gate, edits, expected);
    }
}
