package plumbrow.documents.label;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumbrow.documents.reading.LabelReader;

/**
 * Ways of writing that real labels have, put down by hand: each a few lines of a label, and what a careful person would take
 * from them. Wordings are common practice, no source; required parts are those of 40 CFR 156.10.
 */
class UntidyLabelsTest {

    private static LabelPaper label(String... lines) {
        String text = "For control of weeds in crops\n\n" + String.join("\n", lines) + "\n";
        return LabelReader.read(text.getBytes(StandardCharsets.UTF_8), "label.txt");
    }

    private static LabelPaper corn(String... lines) {
        return label("DIRECTIONS FOR USE\n\nCORN\n" + String.join("\n", lines));
    }

    private static List<String> all(LabelPaper label, LabelKind kind) {
        return label.all(kind).stream().map(LabelReading.Stated::words).toList();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Do not enter or allow worker entry into treated areas during the restricted-entry interval (REI) of twelve (12) hours. | 12 h",
                "Restricted Entry Interval: 48 hours | 48 h",
                "REI = 24 hrs | 24 h",
                "Do not allow entry during the restricted entry interval of 4-hours. | 4 h",
                "The restricted-entry interval (REI) is 2 days. | 2 d",
            })
    void reentry(String line, String says) {
        assertThat(all(label("AGRICULTURAL USE REQUIREMENTS", line), LabelKind.REENTRY))
                .containsExactly(says);
    }

    @Test
    void aReentryIntervalWhoseWordAndDigitsDifferIsUnclear() {
        LabelPaper label =
                label("AGRICULTURAL USE REQUIREMENTS", "The restricted-entry interval (REI) is twelve (24) hours.");
        assertThat(label.of(LabelKind.REENTRY)).isInstanceOf(LabelReading.Unclear.class);
    }

    @Test
    void twoReentryIntervalsContradictEachOther() {
        LabelPaper label =
                label("AGRICULTURAL USE REQUIREMENTS", "REI: 12 hours", "The restricted-entry interval is 24 hours.");
        assertThat(label.of(LabelKind.REENTRY)).isInstanceOf(LabelReading.Differing.class);
    }

    @Test
    void reentryForEachCrop() {
        LabelPaper label = label(
                "AGRICULTURAL USE REQUIREMENTS",
                "The restricted-entry interval (REI) is 12 hours for corn and 24 hours for soybeans.");
        assertThat(all(label, LabelKind.REENTRY)).containsExactly("corn: 12 h", "soybeans: 24 h");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Apply 32 fl. oz./A preemergence. | 32 fl oz/ac on CORN preemergence",
                "Apply 1 1/2 to 2 pints per acre postemergence. | 1.5–2 pt/ac on CORN postemergence",
                "Apply 1-1/2 pt/A at planting. | 1.5 pt/ac on CORN at planting",
                "Apply 2½ quarts of this product per acre. | 2.5 qt/ac on CORN",
                "Broadcast 0.75 oz/A in 15 gallons of water per acre. | 0.75 oz/ac on CORN Broadcast",
                "Apply 2.56 - 3.84 fl oz per acre as an in-furrow treatment. | 2.56–3.84 fl oz/ac on CORN in-furrow",
                "Use 1.5 pt/A on coarse soils with less than 3% organic matter. | 1.5 pt/ac on CORN coarse soils, < 3 % organic matter",
                "Apply 12 fl oz/A plus 2.5 lb/A of ammonium sulfate. | 12 fl oz/ac on CORN",
            })
    void rates(String line, String says) {
        assertThat(all(corn(line), LabelKind.USE_RATE)).containsExactly(says);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Do not apply more than 64 fl oz/A per year.",
                "Apply 8.5 lb of ammonium sulfate per 100 gallons of water.",
                "Crop oil concentrate may be added at 1 qt/A.",
                "Do not apply less than 22 fl oz/A.",
                "Apply 0.5 lb a.i./A of this product.",
                "This product contains 4 lb atrazine per gallon.",
            })
    void noRates(String line) {
        assertThat(all(corn(line), LabelKind.USE_RATE)).isEmpty();
    }

    @Test
    void aRateFromMoreToLessIsUnclear() {
        assertThat(corn("Apply 32 to 22 fl oz/A.").of(LabelKind.USE_RATE)).isInstanceOf(LabelReading.Unclear.class);
    }

    @Test
    void twoRatesInOneSentenceAreLeftToAPerson() {
        LabelPaper label = corn("Apply 22 fl oz/A to small weeds or 32 fl oz/A to large weeds.");
        assertThat(label.of(LabelKind.USE_RATE)).isInstanceOf(LabelReading.Unclear.class);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Do not apply more than 2.5 quarts (2.5 lb a.i.) per acre per crop season. | CORN: ≤ 2.5 qt/ac per season; CORN: ≤ 2.5 lb/ac active ingredient per season",
                "The maximum annual application rate is 5.3 lb acid equivalent per acre. | CORN: ≤ 5.3 lb/ac acid equivalent per year",
                "Do not exceed 2.0 lb ae of 2,4-D per acre per year from all products. | CORN: ≤ 2 lb/ac acid equivalent 2,4-D per year",
                "Do not exceed a total of 1,200 g of this product per acre per year. | CORN: ≤ 1200 g/ac per year",
                "Do not apply more than 2.5 lb of atrazine per acre per year. | CORN: ≤ 2.5 lb/ac basis not said atrazine per year",
            })
    void seasonMaxima(String line, String says) {
        assertThat(String.join("; ", all(corn(line), LabelKind.SEASON_MAX))).isEqualTo(says);
    }

    @Test
    void aMostWithoutItsTimeIsUnclear() {
        LabelPaper label = corn("Do not apply more than 44 fl oz/A.");
        assertThat(label.of(LabelKind.SEASON_MAX)).isInstanceOf(LabelReading.Unclear.class);
        assertThat(label.all(LabelKind.SINGLE_MAX)).isEmpty();
    }

    @Test
    void mostAtOnceIsNotTheSeasonsMost() {
        LabelPaper label = corn("Do not exceed 32 fl oz/A in any single application.");
        assertThat(all(label, LabelKind.SINGLE_MAX)).containsExactly("CORN: ≤ 32 fl oz/ac per application");
        assertThat(all(label, LabelKind.SEASON_MAX)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Do not harvest field corn for grain within 60 days of application. | field corn: 60 d | ''",
                "PHI: 21 days. | CORN: 21 d | ''",
                "Do not graze or harvest for forage within 30 days of application. | '' | CORN: 30 d",
                "Do not cut for hay or silage for 45 days after treatment. | '' | CORN: 45 d",
                "Do not graze treated fields or feed treated forage. | '' | Do not graze treated fields or feed treated forage",
            })
    void harvestAndGrazing(String line, String harvest, String grazing) {
        LabelPaper label = corn(line);
        assertThat(String.join("", all(label, LabelKind.PRE_HARVEST))).isEqualTo(harvest);
        assertThat(String.join("", all(label, LabelKind.GRAZING))).isEqualTo(grazing);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Do not apply when winds exceed 10 mph. | ≤ 10 mph",
                "Apply only when wind speed is 3 - 10 mph. | 3–10 mph",
                "Do not apply if wind is less than 3 mph or greater than 15 miles per hour. | ≥ 3 mph; ≤ 15 mph",
                "Apply only when wind speeds are 10 mph or less. | ≤ 10 mph",
                "Do not apply at wind speeds above 15 mph. | ≤ 15 mph",
            })
    void wind(String line, String says) {
        assertThat(String.join("; ", all(label("SPRAY DRIFT MANAGEMENT", line), LabelKind.WIND)))
                .isEqualTo(says);
    }

    @Test
    void droplets() {
        assertThat(all(
                        label("SPRAY DRIFT", "Do not use nozzles that make droplets finer than medium."),
                        LabelKind.DROPLETS))
                .containsExactly("not finer than M");
        assertThat(all(
                        label("SPRAY DRIFT", "Use extremely coarse to ultra-coarse droplets for ground application."),
                        LabelKind.DROPLETS))
                .containsExactly("not finer than XC not coarser than UC by ground");
        assertThat(all(corn("Apply to medium or coarser soils."), LabelKind.DROPLETS))
                .isEmpty();
    }

    @Test
    void theSignalWordStandsAloneAndNotInASentence() {
        assertThat(all(label("Caution must be used near water.", "WARNING / AVISO"), LabelKind.SIGNAL_WORD))
                .containsExactly("WARNING");
    }

    @Test
    void twoSignalWordsContradictEachOther() {
        assertThat(label("CAUTION", "Text between.", "DANGER").of(LabelKind.SIGNAL_WORD))
                .isInstanceOf(LabelReading.Differing.class);
    }

    @Test
    void notARestrictedUsePesticide() {
        LabelPaper label = label("This product is not a restricted use pesticide in most states.");
        assertThat(label.of(LabelKind.RESTRICTED_USE)).isInstanceOf(LabelReading.NotStated.class);
    }

    @Test
    void theNumberOfATankMixPartnerIsNotThisProducts() {
        LabelPaper label = label(
                "EPA Reg. No. 12345-67",
                "MIXING INSTRUCTIONS",
                "May be mixed with Tansyrun 4L (EPA Reg. No. 54321-98).");
        assertThat(all(label, LabelKind.REGISTRATION)).containsExactly("12345-67");
    }

    @Test
    void ingredientOverTwoLinesWithEquivalent() {
        LabelPaper label = label(
                "ACTIVE INGREDIENT:",
                "Glyphosate, N-(phosphonomethyl)glycine, in the form of its",
                "potassium salt* ........................ 48.7%",
                "OTHER INGREDIENTS: ..................... 51.3%",
                "TOTAL: ................................ 100.0%",
                "*Contains 660 grams per litre or 5.5 pounds per U.S. gallon of the active ingredient glyphosate, in the form of its potassium salt.",
                "Equivalent to 4.5 pounds acid equivalent per U.S. gallon of the acid, glyphosate.");
        assertThat(all(label, LabelKind.ACTIVE))
                .containsExactly("Glyphosate, N-(phosphonomethyl)glycine, in the form of its potassium salt 48.7 %");
        assertThat(label.all(LabelKind.STRENGTH).stream()
                        .map(one -> ((LabelContent.Strength) one.content()))
                        .map(one -> one.amount().words() + " " + one.of().word()))
                .containsExactly("5.5 lb/gal active ingredient", "4.5 lb/gal acid equivalent");
    }

    @Test
    void groupBoxSetOverThreeLines() {
        assertThat(all(label("GROUP", "15", "HERBICIDE"), LabelKind.GROUP)).containsExactly("group 15 herbicide");
        assertThat(all(label("GROUP 3A 28 INSECTICIDES"), LabelKind.GROUP))
                .containsExactly("group 3A insecticide", "group 28 insecticide");
    }

    @Test
    void plantBackWithConditionAndRange() {
        LabelPaper label = label(
                "ROTATIONAL CROP RESTRICTIONS",
                "Do not plant alfalfa within 10 months of application unless a field bioassay shows no injury.",
                "Wheat may be planted 4 to 6 months after application.",
                "Corn can be replanted immediately.");
        assertThat(all(label, LabelKind.PLANT_BACK))
                .containsExactly("alfalfa: 10 months unless a field bioassay shows no injury", "Corn: 0 d");
        assertThat(label.unclear(LabelKind.PLANT_BACK)).hasSize(1);
    }

    @Test
    void distances() {
        LabelPaper label = label(
                "ENVIRONMENTAL HAZARDS",
                "Do not apply by air within 300 feet, or by ground within 66 feet, of streams and rivers.",
                "Do not mix or load within 50 ft of any well.");
        assertThat(all(label, LabelKind.SETBACK))
                .containsExactly(
                        "300 ft from streams by air",
                        "300 ft from rivers by air",
                        "66 ft from streams by ground",
                        "66 ft from rivers by ground",
                        "50 ft from well when mixing or loading");
    }

    @Test
    void rainBeforeAndAfter() {
        LabelPaper label = corn("Rainfast in 1 hour.", "Do not apply if rain is forecast within 48 hours.");
        assertThat(all(label, LabelKind.RAINFAST)).containsExactly("1 h");
        assertThat(all(label, LabelKind.RAIN_AHEAD)).containsExactly("48 h");
    }

    @Test
    void severalTimesInOneSentenceAreNeverMixedUp() {
        LabelPaper label = corn(
                "Allow at least 7 days between applications and 14 days before harvest.",
                "Do not apply within 30 days of harvest or 45 days of grazing.");
        assertThat(label.all(LabelKind.PRE_HARVEST)).isEmpty();
        assertThat(label.all(LabelKind.GRAZING)).isEmpty();
        assertThat(label.unclear(LabelKind.PRE_HARVEST)).hasSize(2);
        assertThat(label.unclear(LabelKind.GRAZING)).hasSize(1);
    }

    @Test
    void mostAtOnceAndInAYearInOneSentence() {
        LabelPaper label = corn("Do not apply more than 32 fl oz/A per application or 64 fl oz/A per year.");
        assertThat(all(label, LabelKind.SINGLE_MAX)).containsExactly("CORN: ≤ 32 fl oz/ac per application");
        assertThat(all(label, LabelKind.SEASON_MAX)).containsExactly("CORN: ≤ 64 fl oz/ac per year");
    }

    @Test
    void heightsByGroundAndByAir() {
        LabelPaper label = label(
                "SPRAY DRIFT",
                "Boom height must not exceed 24 inches above the target for ground application and 10 feet for aerial application.");
        assertThat(all(label, LabelKind.BOOM)).containsExactly("≤ 24 in by ground", "≤ 10 ft by air");
    }

    @Test
    void applications() {
        assertThat(all(corn("Do not make more than two (2) applications per growing season."), LabelKind.APPLICATIONS))
                .containsExactly("CORN: at most 2 per season");
        assertThat(corn("Do not make more than two (3) applications per year.").of(LabelKind.APPLICATIONS))
                .isInstanceOf(LabelReading.Unclear.class);
    }

    @Test
    void anEmptyPageNeedsTyping() {
        LabelPaper label = LabelReader.read(" \n \n".getBytes(StandardCharsets.UTF_8), "label.txt");
        assertThat(label.needsTyping()).isTrue();
        assertThat(label.readings()).isEmpty();
    }

    @Test
    void establishmentsInAListOverLines() {
        LabelPaper label = label(
                "EPA Reg. No. 1234-567-8901",
                "EPA Est. Nos. 1234-MO-1 U, 567-WI-2 BU, 8901-PA-",
                "12, 345-OH-3 AE",
                "Circled letter is first letter of lot number.");
        assertThat(all(label, LabelKind.ESTABLISHMENT))
                .containsExactly("1234-MO-1", "567-WI-2", "8901-PA-12", "345-OH-3");
    }

    @Test
    void theSignalWordAtTheHeadOfItsSentence() {
        LabelPaper label = label(
                "PRECAUTIONARY STATEMENTS",
                "Hazards to Humans and Domestic Animals",
                "CAUTION. Harmful if swallowed. Wash hands.");
        assertThat(all(label, LabelKind.SIGNAL_WORD)).containsExactly("CAUTION");
    }

    @Test
    void aTableOfContentsIsNoHeading() {
        LabelPaper label = label(
                "INDEX:",
                "1.0 First Aid",
                "2.0 Storage and Disposal",
                "3.0 Notice to User",
                "",
                "KEEP OUT OF REACH OF CHILDREN",
                "CAUTION");
        assertThat(all(label, LabelKind.SIGNAL_WORD)).containsExactly("CAUTION");
    }

    @Test
    void storageDisposalAndContainerEachUnderItsWords() {
        LabelPaper label = label(
                "STORAGE AND DISPOSAL",
                "Do not contaminate water, food or feed by storage or disposal.",
                "Pesticide Storage: Store in a cool, dry place.",
                "Pesticide Disposal: Wastes may be disposed of at an approved waste disposal facility.",
                "Container Handling: Nonrefillable container. Do not reuse or refill this container.",
                "",
                "WARRANTY",
                "None.");
        assertThat(all(label, LabelKind.STORAGE)).containsExactly("Store in a cool, dry place.");
        assertThat(all(label, LabelKind.DISPOSAL))
                .containsExactly("Wastes may be disposed of at an approved waste disposal facility.");
        assertThat(all(label, LabelKind.CONTAINER))
                .containsExactly("Nonrefillable container. Do not reuse or refill this container.");
    }

    @Test
    void storageThatIsCutOffIsUnclear() {
        LabelPaper label = label("STORAGE AND DISPOSAL", "Pesticide Storage: Store in a cool, dry place away from");
        assertThat(label.of(LabelKind.STORAGE)).isInstanceOf(LabelReading.Unclear.class);
    }

    @Test
    void onlyANumberForEmergenciesIsOne() {
        LabelPaper label = label(
                "FIRST AID",
                "IF SWALLOWED: Call a poison control center. Do not induce vomiting.",
                "HOT LINE NUMBER",
                "You may also contact 1-800-555-0147 (24 hours) for emergency medical treatment information.",
                "For all other information, call 1-800-555-0199.",
                "Questions or comments? Call 1-800-555-0188.");
        assertThat(all(label, LabelKind.TELEPHONE)).containsExactly("1-800-555-0147");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "IF SWALLOWED: Call a poison control center or doctor. Do NOT induce",
                "IF SWALLOWED: Call a poison control center or doctor. Do not give. Rinse skin with water.",
                "IF IN EYES: Hold eye open and rinse slowly. Move person to fresh air.",
                "IF ON SKIN: Take off contaminated clothing. Kills Weeds Fast Rinse skin immediately with water.",
                "IF INHALED: Move person to fresh air. para recibir instrucciones Call a doctor.",
            })
    void firstAidThatMayBeCutOrMixedIsNotStated(String line) {
        LabelPaper label = label("FIRST AID", line, "", "PRECAUTIONARY STATEMENTS", "CAUTION");
        assertThat(all(label, LabelKind.FIRST_AID)).isEmpty();
        assertThat(label.unclear(LabelKind.FIRST_AID)).isNotEmpty();
    }

    @Test
    void oneLineMayHoldTheHelpForSeveralWays() {
        LabelPaper label = label(
                "FIRST AID",
                "If Swallowed: Call a doctor. Do not induce vomiting. If on Skin: Take off contaminated clothing. If in Eyes: Hold eye open and rinse slowly.");
        assertThat(all(label, LabelKind.FIRST_AID))
                .containsExactly(
                        "swallowed: Call a doctor. Do not induce vomiting.",
                        "skin: Take off contaminated clothing.",
                        "eyes: Hold eye open and rinse slowly.");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Do not apply by fixed wing aircraft at a height less than 100 feet above the canopy. | ≥ 100 ft by air",
                "Do not release spray at a height greater than 10 feet above the canopy by aircraft. | ≤ 10 ft by air",
            })
    void heightOfFlightHasALeastOrAMost(String line, String says) {
        assertThat(all(label("SPRAY DRIFT", line), LabelKind.BOOM)).containsExactly(says);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Rainfall within 24 hours after application may cause unintended runoff. | NONE | ",
                "Avoid making applications when rainfall is expected before it has dried (minimum four hours). | RAIN_AHEAD | 4 h",
                "If rain falls within three hours of application, retreatment may be needed. | RAINFAST | 3 h",
            })
    void rainAheadIsNotRainfast(String line, String kind, String says) {
        LabelPaper label = label("DIRECTIONS FOR USE", line);
        for (LabelKind each : List.of(LabelKind.RAIN_AHEAD, LabelKind.RAINFAST)) {
            assertThat(all(label, each)).isEqualTo(each.name().equals(kind) ? List.of(says) : List.of());
        }
    }

    @Test
    void ratesByTheThousandSquareFeet() {
        LabelPaper label = label(
                "DIRECTIONS FOR USE",
                "Apply 2 lb 5 oz to 3 lb 7 oz of this product per 1,000 sq ft of turf grass (equivalent to 100 to 150 pounds of product per acre of turf grass).");
        assertThat(all(label, LabelKind.USE_RATE))
                .containsExactly("37–55 oz/1000 sq ft on turf grass", "100–150 lb/ac on turf grass");
    }

    @Test
    void aRangeWhoseLowerEndIsNotReadIsNoRate() {
        LabelPaper label = corn("Apply 1 pint (one level measure full) to 2 pints per acre preemergence.");
        assertThat(all(label, LabelKind.USE_RATE)).isEmpty();
        assertThat(label.unclear(LabelKind.USE_RATE)).isNotEmpty();
    }

    @Test
    void poundsOfSeveralInAGallon() {
        LabelPaper label = label(
                "Contains 0.3 lbs of fenpropathrin, 0.11 lbs of abamectin and 0.08 lbs of octanoic acid per gallon.");
        assertThat(all(label, LabelKind.STRENGTH))
                .containsExactly(
                        "0.3 lb/gal fenpropathrin (active ingredient)",
                        "0.11 lb/gal abamectin (active ingredient)",
                        "0.08 lb/gal octanoic acid (active ingredient)");
    }

    @Test
    void whoMayUseItWhereAndWhenPeopleComeBack() {
        LabelPaper label = label(
                "DIRECTIONS FOR USE",
                "For use only by certified applicators or persons under their direct supervision.",
                "Do not allow people or pets to enter the treated area until sprays have dried.",
                "Do not apply this product in a way that will contact workers or other persons, either directly or through drift.");
        assertThat(all(label, LabelKind.WHERE))
                .containsExactly("For use only by certified applicators or persons under their direct supervision");
        assertThat(all(label, LabelKind.KEEP_OUT))
                .containsExactly("Do not allow people or pets to enter the treated area until sprays have dried");
        assertThat(all(label, LabelKind.DRIFT)).isEmpty();
    }

    @Test
    void theSpanishHalfIsNotRead() {
        LabelPaper label = label(
                "DIRECTIONS FOR USE",
                "Do not apply by ground within 25 ft of lakes.",
                "No lo aplique por tierra a menos de 25 pies de lagos, embalses,",
                "y arroyos permanentes.");
        assertThat(all(label, LabelKind.SETBACK)).containsExactly("25 ft from lakes by ground");
    }

    @Test
    void usesOfACropMayFollowTheListOfRotationalCrops() {
        LabelPaper label = label(
                "ROTATIONAL CROPS",
                "Soybeans: 10 months",
                "All other crops: 18 months",
                "",
                "FIELD CORN",
                "Apply 2.4 to 3.0 qt/A preemergence.",
                "Do not apply more than 3.0 qt per acre per year.");
        assertThat(all(label, LabelKind.USE_RATE)).containsExactly("2.4–3 qt/ac on FIELD CORN preemergence");
        assertThat(all(label, LabelKind.SEASON_MAX)).containsExactly("FIELD CORN: ≤ 3 qt/ac per year");
        assertThat(all(label, LabelKind.PLANT_BACK))
                .containsExactly("Soybeans: 10 months", "All other crops: 18 months");
    }

    @Test
    void aSecondVolumeOfWaterIsNoRate() {
        LabelPaper label =
                corn("Apply in a minimum of 10 gallons of water per acre by ground and 5 gallons per acre by air.");
        assertThat(all(label, LabelKind.USE_RATE)).isEmpty();
        assertThat(all(label, LabelKind.CARRIER)).containsExactly("≥ 10 gal/ac by ground", "≥ 5 gal/ac by air");
    }

    @Test
    void adjuvantsAsPrinted() {
        LabelPaper label = corn(
                "Add nonionic surfactant (NIS) at 0.25% v/v (1 qt per 100 gallons of spray).",
                "Do not add crop oil concentrate after emergence.");
        assertThat(all(label, LabelKind.ADJUVANT))
                .containsExactly("Add nonionic surfactant (NIS) at 0.25% v/v (1 qt per 100 gallons of spray)");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Apply in 10 to 20 gallons per acre. | 10–20 gal/ac",
                "Apply in a minimum of 2 gallons per acre by air. | ≥ 2 gal/ac by air",
                "Apply with at least 15 gallons per acre. | ≥ 15 gal/ac",
            })
    void gallonsThatItGoesOutInAreNoRate(String line, String says) {
        LabelPaper label = corn(line);
        assertThat(all(label, LabelKind.USE_RATE)).isEmpty();
        assertThat(all(label, LabelKind.CARRIER)).containsExactly(says);
    }

    @Test
    void limitsStandAmongTheRemarksOfATable() {
        LabelPaper label = label(
                "DIRECTIONS FOR USE",
                "",
                "SOYBEANS",
                "Pests                       Rate (fl oz/A)       PHI (days)       Remarks",
                "Bean leaf beetle            2.1 - 6.4            18               Apply in a minimum of 2 gallons per acre by air.",
                "Soybean aphid               2.6 - 6.4            18               Do not apply more than 12.8 fl oz/A per season.");
        assertThat(all(label, LabelKind.USE_RATE))
                .containsExactly("2.1–6.4 fl oz/ac on SOYBEANS", "2.6–6.4 fl oz/ac on SOYBEANS");
        assertThat(all(label, LabelKind.SEASON_MAX)).containsExactly("SOYBEANS: ≤ 12.8 fl oz/ac per season");
        assertThat(all(label, LabelKind.CARRIER)).containsExactly("≥ 2 gal/ac by air");
    }
}
