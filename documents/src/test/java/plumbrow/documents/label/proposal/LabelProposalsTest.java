package plumbrow.documents.label.proposal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import plumbrow.advice.field.Crop;
import plumbrow.advice.field.FeatureKind;
import plumbrow.advice.field.Texture;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.shelf.ActiveContent;
import plumbrow.advice.shelf.ActiveLimit;
import plumbrow.advice.shelf.Ask;
import plumbrow.advice.shelf.Droplets;
import plumbrow.advice.shelf.LabelUse;
import plumbrow.advice.shelf.PlantBack;
import plumbrow.advice.shelf.SoilRate;
import plumbrow.advice.shelf.UseTerms;
import plumbrow.documents.label.LabelReading;
import plumbrow.documents.reading.LabelReader;

class LabelProposalsTest {
    private static final String LABEL = """
            RESTRICTED USE PESTICIDE
            ACTIVE INGREDIENT:
            Atrazine ............................. 42.6%
            OTHER INGREDIENTS: ................... 57.4%
            TOTAL: ............................... 100.0%
            Contains 4 pounds of atrazine per gallon.

            ENVIRONMENTAL HAZARDS
            Do not mix or load within 50 feet of wells.
            Do not apply within 66 feet of streams.

            AGRICULTURAL USE REQUIREMENTS
            The restricted-entry interval (REI) is 12 hours.

            SPRAY DRIFT MANAGEMENT
            Apply medium or coarser droplets. Apply only when the wind speed is between 3 and 10 mph.
            Ground boom height must not exceed 2 feet above the target.

            CORN
            Apply 1.5 to 2 qt/A preemergence in at least 10 gallons of water per acre by ground.
            Do not apply more than 2.5 qt/A per year.
            Do not apply more than 2.5 lb a.i. of atrazine per acre per year.
            Do not make more than two applications per year.
            Do not apply within 60 days of harvest.

            SWEET CORN
            Apply 1 qt/A preemergence.

            SOYBEANS
            Apply 1 qt/A preemergence.
            Apply 2 qt/A postemergence.

            ROTATIONAL CROP RESTRICTIONS
            Do not plant alfalfa within 10 months of application.
            All other crops: 18 months
            """;

    private final LabelProposals proposals =
            LabelProposals.of(LabelReader.read(LABEL.getBytes(StandardCharsets.UTF_8), "label.txt"), "Quarrywick 4L");

    private LabelUse use(Crop crop) {
        return proposals.uses().stream()
                .map(Proposal::row)
                .filter(row -> row.crop() == crop)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void ratesAndLimitsOfACrop() {
        LabelUse corn = use(Crop.CORN);
        assertThat(corn.lowRate()).isEqualTo(new Amount(1.5, FarmUnit.QT));
        assertThat(corn.highRate()).isEqualTo(new Amount(2, FarmUnit.QT));
        assertThat(corn.seasonMax()).isEqualTo(new Amount(2.5, FarmUnit.QT));
        assertThat(corn.mostApplications()).isEqualTo(2);
        assertThat(corn.preHarvestDays()).isEqualTo(60);
        assertThat(corn.lessForbidden()).isEqualTo(Ask.UNKNOWN);
        assertThat(corn.source()).isEqualTo("Quarrywick 4L label, page 1");
    }

    @Test
    void twoRatesLeaveTheRowWithoutOneAndSayWhy() {
        assertThat(use(Crop.SOYBEAN).highRate()).isNull();
        LabelReading why = proposals.uses().get(1).grounds().get("high_rate");
        assertThat(why).isInstanceOf(LabelReading.Differing.class);
    }

    @Test
    void aCropThatTheLabelDoesNotNameGetsNoRow() {
        assertThat(proposals.uses()).extracting(each -> each.row().crop()).containsExactly(Crop.CORN, Crop.SOYBEAN);
    }

    @Test
    void termsOfAUse() {
        UseTerms corn = proposals.terms().get(0).row();
        assertThat(corn.reentryHours()).isEqualTo(12);
        assertThat(corn.carrierLowGalPerAcre()).isEqualTo(10);
        assertThat(corn.finest()).isEqualTo(Droplets.MEDIUM);
        assertThat(corn.coarsest()).isNull();
        assertThat(corn.windLowestMph()).isEqualTo(3);
        assertThat(corn.windHighestMph()).isEqualTo(10);
        assertThat(corn.boomHighestIn()).isEqualTo(24);
        assertThat(corn.daysBetween()).isNull();
        assertThat(corn.feedingForbidden()).isEqualTo(Ask.UNKNOWN);
    }

    /** Months count as 31 days so that the wait is never too short. */
    @Test
    void plantBacksAndDistances() {
        assertThat(proposals.plantBacks())
                .extracting(Proposal::row)
                .extracting(PlantBack::nextCrop, PlantBack::days)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple("alfalfa", 310),
                        org.assertj.core.groups.Tuple.tuple(PlantBack.ANY_OTHER, 558));
        assertThat(proposals.setbacks()).hasSize(1);
        assertThat(proposals.setbacks().get(0).row().kind()).isEqualTo(FeatureKind.STREAM);
        assertThat(proposals.setbacks().get(0).row().feet()).isEqualTo(66);
    }

    @Test
    void activesAndTheirSeason() {
        assertThat(proposals.actives())
                .extracting(Proposal::row)
                .containsExactly(new ActiveContent("Quarrywick 4L", "atrazine", 4, FarmUnit.GAL, null));
        ActiveLimit limit = proposals.limits().get(0).row();
        assertThat(limit.ingredient()).isEqualTo("atrazine");
        assertThat(limit.seasonMaxPounds()).isEqualTo(2.5);
        assertThat(limit.basis()).isEqualTo(ActiveLimit.Basis.ACTIVE_INGREDIENT);
    }

    @Test
    void silenceIsUnknown() {
        assertThat(proposals.care().row().restrictedUse()).isEqualTo(Ask.YES);
        assertThat(proposals.care().row().bees()).isEqualTo(Ask.UNKNOWN);
        assertThat(proposals.care().row().confirmed()).isNull();
        assertThat(proposals.care().grounds().get("bees")).isInstanceOf(LabelReading.NotStated.class);
    }

    @Test
    void ratesBySoil() {
        String label = """
                WHEAT
                Soil texture                          Less than 3% organic matter   3% organic matter or more
                Coarse (sand, loamy sand)             1 pt/A                        1.5 pt/A
                """;
        List<SoilRate> rows =
                LabelProposals.of(LabelReader.read(label.getBytes(StandardCharsets.UTF_8), "label.txt"), "P")
                        .soilRates()
                        .stream()
                        .map(Proposal::row)
                        .toList();
        assertThat(rows).hasSize(2);
        assertThat(rows.get(0).textures()).isEqualTo(Set.of(Texture.SAND, Texture.LOAMY_SAND));
        assertThat(rows.get(0).organicMatterHighPct()).isEqualTo(3);
        assertThat(rows.get(0).organicMatterLowPct()).isNull();
        assertThat(rows.get(1).organicMatterLowPct()).isEqualTo(3);
        assertThat(rows.get(1).highRate()).isEqualTo(new Amount(1.5, FarmUnit.PT));
    }

    @Test
    void nobodyConfirmsWithoutAName() {
        Proposal<LabelUse> proposal = proposals.uses().get(0);
        assertThat(proposal.confirmed(proposal.row(), "Ada Field", LocalDate.of(2026, 4, 1))
                        .row())
                .isEqualTo(proposal.row());
        assertThatThrownBy(() -> proposal.confirmed(proposal.row(), " ", LocalDate.of(2026, 4, 1)))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static UseTerms corn(String... sentences) {
        String text = LABEL.replace("SWEET CORN", String.join("\n", sentences) + "\n\nSWEET CORN");
        return LabelProposals.of(LabelReader.read(text.getBytes(StandardCharsets.UTF_8), "label.txt"), "Quarrywick 4L")
                .terms()
                .get(0)
                .row();
    }

    @Test
    void stagesHeightsAndWarmAir() {
        UseTerms terms = corn(
                "Apply from V2 through V8.",
                "Do not apply to corn taller than 30 inches.",
                "Apply when weeds are 2 to 4 inches tall.",
                "Do not apply when the air temperature exceeds 85°F.");
        assertThat(terms.earliestStage()).isEqualTo("V2");
        assertThat(terms.latestStage()).isEqualTo("V8");
        assertThat(terms.highestCropIn()).isEqualTo(30);
        assertThat(terms.highestWeedIn()).isEqualTo(4);
        assertThat(terms.warmestF()).isEqualTo(85);
    }

    /** Before a stage is up to the one that comes before it; 30 °C is 86 °F. */
    @Test
    void beforeAStageAndCelsius() {
        UseTerms terms =
                corn("Apply before corn reaches V8.", "Do not spray if temperatures are above 30 °C during the day.");
        assertThat(terms.latestStage()).isEqualTo("V7");
        assertThat(terms.earliestStage()).isNull();
        assertThat(terms.warmestF()).isEqualTo(86);
    }

    @Test
    void whatIsNoLimitIsNotTakenForOne() {
        UseTerms terms = corn(
                "Cultivate when corn is at least 12 inches tall.",
                "Incorporate to a depth of 2 inches before corn emerges.",
                "Do not store above 100 degrees F.",
                "Do not apply between V4 and V6.",
                "Scout weekly until R1.");
        assertThat(terms.highestCropIn()).isNull();
        assertThat(terms.warmestF()).isNull();
        assertThat(terms.earliestStage()).isNull();
        assertThat(terms.latestStage()).isNull();
    }

    @Test
    void twoLastStagesContradictEachOther() {
        assertThat(corn("Do not apply after V8.", "Do not apply after V6.").latestStage())
                .isNull();
    }
}
