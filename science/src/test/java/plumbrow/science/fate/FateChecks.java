package plumbrow.science.fate;

import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.MEMORY;
import static plumbrow.science.figure.Status.VERIFIED;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import plumbrow.science.checks.Check;
import plumbrow.science.checks.CheckList;
import plumbrow.science.figure.Subject;
import plumbrow.science.reference.Movement;
import plumbrow.science.reference.MovementTable;

/** Units, vapour, breakdown, leaching, drift and wildlife: values from outside. */
public final class FateChecks {
    private static final DriftCurve FOCUS_ONE = DriftCurve.FOCUS.get(0);
    private static final DriftCurve FOCUS_TWO = DriftCurve.FOCUS.get(1);
    /** 100 g/ha [µg/m²]. */
    private static final double HUNDRED_GRAMS = 10_000;

    private FateChecks() {}

    public static List<Check> all() {
        CheckList checks = CheckList.of(Subject.FATE);
        unitsAndVapour(checks);
        breakdown(checks);
        leaching(checks);
        drift(checks);
        driftIntoWater(checks);
        wildlife(checks);
        movement(checks);
        return checks.all();
    }

    private static void unitsAndVapour(CheckList checks) {
        checks.from("independent arithmetic", COMPUTED)
                .value("1 lb/ac in kg/ha", "1.12085116", () -> FieldRate.KG_PER_HA)
                .value("1 lb/ac in µg/m²", "112085.116", () -> FieldRate.UG_PER_M2)
                .value("1 lb/ac in mg/ft²", "10.41305", () -> FieldRate.MG_PER_FT2)
                .from("independent arithmetic", COMPUTED)
                .value("H' of 1 atm m³/mol at 25 °C", "40.874", () -> HenryConstant.dimensionless(101_325))
                .from("[illinois-8-259]", VERIFIED)
                .value("H' of 1 atm m³/mol at 25 °C", "41", () -> HenryConstant.dimensionless(101_325))
                .from("[usgs-1291], within 15 %", VERIFIED)
                .near(
                        "Henry constant of metolachlor, Pa m³/mol × 1000",
                        "2.344",
                        .352,
                        () -> 1000 * HenryConstant.pascalM3PerMol(4.18e-3, 283.8, 530))
                .near(
                        "Henry constant of atrazine, Pa m³/mol × 10,000",
                        "2.884",
                        .433,
                        () -> 1e4 * HenryConstant.pascalM3PerMol(3.85e-5, 215.68, 33))
                .from("independent arithmetic", COMPUTED)
                .figure("henry", """
                        vapour_pressure_pa=.0061061644 molecular_weight=335.29 solubility_mg_l=.184 | pa_m3_mol=11.13 dimensionless=.00449
                        vapour_pressure_pa=3.853016e-5 molecular_weight=215.69 solubility_mg_l=34.7 | pa_m3_mol=.0002395
                        """);
    }

    private static void breakdown(CheckList checks) {
        checks.from("Q10 2.58", COMPUTED)
                .value("speed at 5 °C", ".241307", () -> Dissipation.temperatureFactor(5, 20, 2.58))
                .value("speed at 10 °C", ".387597", () -> Dissipation.temperatureFactor(10, 20, 2.58))
                .value("speed at 15 °C", ".622573", () -> Dissipation.temperatureFactor(15, 20, 2.58))
                .value("speed at 25 °C", "1.606238", () -> Dissipation.temperatureFactor(25, 20, 2.58))
                .value("speed at 30 °C", "2.58", () -> Dissipation.temperatureFactor(30, 20, 2.58))
                .value("speed at half of field capacity", ".615572", () -> Dissipation.moistureFactor(.5));
    }

    private static void leaching(CheckList checks) {
        checks.from("independent arithmetic", COMPUTED)
                .figure("leaching-score", """
                        half_life_d=60 koc_ml_g=100 | score=3.56
                        half_life_d=146 koc_ml_g=100 | score=4.33
                        half_life_d=30 koc_ml_g=180000 | score=-1.85
                        """)
                .from("independent arithmetic", COMPUTED)
                .near(
                        "atrazine through 1 m, share × 100,000",
                        "4.07361",
                        .00005,
                        () -> 1e5 * Attenuation.factor(Attenuation.travelDays(1, 7.0, .25, .002), 60))
                .near(
                        "metolachlor through half a metre, share × 1000",
                        "1.91588",
                        .00005,
                        () -> 1e3 * Attenuation.factor(Attenuation.travelDays(.5, 13.0, .25, .002), 90))
                .value("atrazine, days to 1 m", "875", () -> Attenuation.travelDays(1, 7.0, .25, .002))
                .from("EPA, imidacloprid, from its own inputs", MEMORY)
                .differs(
                        "groundwater screen of half-life 520, Koc 178, .5 lb/ac",
                        "2.09",
                        () -> GroundwaterScreen.FIGURE
                                .answer(Map.of("half_life_d", "520", "koc_ml_g", "178", "rate_lb_ac", ".5"))
                                .number("concentration_ug_l"),
                        "EPA had other inputs; these give 2.149 by the same equation");
        matrix(
                checks,
                "leaching",
                "high: high high intermediate low; intermediate: high intermediate low very-low;"
                        + " low: intermediate low low very-low; very-low: low low very-low very-low");
        matrix(
                checks,
                "runoff",
                "high: high high intermediate; intermediate: high intermediate low;" + " low: intermediate low low");
    }

    /** Half-life and Koc of the federal table; score and ratings were worked from them by its bands. */
    private static void movement(CheckList checks) {
        for (Movement active : MovementTable.all()) {
            checks.from("movement.csv, " + active.name(), COMPUTED)
                    .figure(
                            "leaching-score",
                            "half_life_d=%s koc_ml_g=%s | score=%s movement_rating=%s class=%s"
                                    .formatted(
                                            plain(active.halfLifeDays()),
                                            plain(active.kocMlPerGram()),
                                            active.gus(),
                                            active.rating(),
                                            active.fourClass()));
        }
    }

    private static String plain(double value) {
        return new BigDecimal(Double.toString(value)).stripTrailingZeros().toPlainString();
    }

    /** Rows by soil; the columns are products from high down. */
    private static void matrix(CheckList checks, String path, String rows) {
        String[] products = {"high", "intermediate", "low", "very low"};
        checks.from("soil by product, [goss-wauchope-1990]", MEMORY);
        for (String row : rows.split("; ", -1)) {
            String[] sides = row.split(": ", -1);
            String[] cells = sides[1].split(" ", -1);
            for (int i = 0; i < cells.length; i++) {
                checks.figure(
                        "soil-product-rating",
                        "path=%s soil=%s product=%s | rating=%s"
                                .formatted(path, sides[0].replace('-', ' '), products[i], cells[i].replace('-', ' ')));
            }
        }
    }

    private static void drift(CheckList checks) {
        for (String row : """
                1 2.77 2.7705
                3 .95 .945365
                5 .57 .573424
                10 .29 .290977
                15 .20 .195667
                20 .15 .147652
                30 .10 .099289
                40 .07 .074924
                50 .06 .060225""".lines().toList()) {
            String[] cells = row.split(" ", -1);
            checks.from("[pfm], drift_data_JKI: nine printed values for field crops", VERIFIED)
                    .figure("drift-deposit", "distance_m=" + cells[0] + " | deposit_pct=" + cells[1])
                    .from("independent arithmetic", COMPUTED)
                    .figure("drift-deposit", "distance_m=" + cells[0] + " | deposit_pct=" + cells[2]);
        }
        checks.from("[pfm], drift percentages of FOCUS", VERIFIED)
                .value("FOCUS, one application, 1 m", "2.7593000", () -> FOCUS_ONE.pointPct(1))
                .value("FOCUS, one application, 3 m", ".9424748", () -> FOCUS_ONE.pointPct(3))
                .value("FOCUS, one application, 5 m", ".5719342", () -> FOCUS_ONE.pointPct(5))
                .value("FOCUS, two applications, 1 m", "2.4376000", () -> FOCUS_TWO.pointPct(1))
                .value("FOCUS, two applications, 3 m", ".8036556", () -> FOCUS_TWO.pointPct(3))
                .value("FOCUS, two applications, 5 m", ".4797365", () -> FOCUS_TWO.pointPct(5))
                .value("FOCUS, mean over 1 m of water, 1 m away", "1.9273922", () -> FOCUS_ONE.meanPct(1, 1))
                .value("FOCUS, mean over 1 m of water, 3 m away", ".8160023", () -> FOCUS_ONE.meanPct(3, 1))
                .value("FOCUS, mean over 1 m of water, 5 m away", ".5224362", () -> FOCUS_ONE.meanPct(5, 1));
    }

    private static void driftIntoWater(CheckList checks) {
        checks.from("[pfm], 100 g/ha into 30 cm of water [µg/L]", VERIFIED);
        for (String row : """
                1 .92333 .91976667 .64246407
                5 .19000 .19064473 .17414541
                10 .096667 .09680051 .09235842
                20 .05000 .04915079 .04798749""".lines().toList()) {
            String[] cells = row.split(" ", -1);
            double metres = Double.parseDouble(cells[0]);
            checks.value(
                            cells[0] + " m, by the table",
                            cells[1],
                            () -> water(Math.round(100 * DriftCurve.FIELD_CROPS.pointPct(metres)) / 100.0))
                    .value(cells[0] + " m, FOCUS at a point", cells[2], () -> water(FOCUS_ONE.pointPct(metres)))
                    .value(cells[0] + " m, FOCUS mean over 1 m", cells[3], () -> water(FOCUS_ONE.meanPct(metres, 1)));
        }
        for (String row : """
                1 1 .91780582
                1 5 .24877916
                2 1 .60169999
                2 5 .18937304""".lines().toList()) {
            String[] cells = row.split(" ", -1);
            double width = Double.parseDouble(cells[0]);
            checks.value(
                    "banks at 45°, " + cells[0] + " m wide, " + cells[1] + " m away",
                    cells[2],
                    () -> water(FOCUS_ONE.meanPct(Double.parseDouble(cells[1]), width))
                            / DriftIntoWater.bankShare(width, .3, 45));
        }
        checks.from("[urban-cook-1986], nomograph, within .3 %", MEMORY)
                .near("1 lb/ac into 6 in of water", "734", 2.2, () -> StandingWater.ugPerLitre(1, 6, 1));
    }

    private static double water(double pct) {
        return DriftIntoWater.ugPerLitre(HUNDRED_GRAMS, pct, .3);
    }

    private static void wildlife(CheckList checks) {
        checks.from("independent arithmetic", COMPUTED)
                .value(
                        "residue of 2 applications 14 d apart, half-life 35 d",
                        "1.757858",
                        () -> FoodResidue.pileUp(2, 14, 35))
                .value(
                        "residue of 3 applications 7 d apart, half-life 35 d",
                        "2.628409",
                        () -> FoodResidue.pileUp(3, 7, 35))
                .from("[epa-terrestrial]: daily food, birds of 20, 100, 1000 g, mammals of 15, 35, 1000 g", MEMORY)
                .figure("wildlife-dose", """
                        animal=bird weight_g=20 food=fresh residue_ppm=1 | intake_pct=114
                        animal=bird weight_g=100 food=fresh residue_ppm=1 | intake_pct=65
                        animal=bird weight_g=1000 food=fresh residue_ppm=1 | intake_pct=29
                        animal=mammal weight_g=15 food=fresh residue_ppm=1 | intake_pct=95
                        animal=mammal weight_g=35 food=fresh residue_ppm=1 | intake_pct=66
                        animal=mammal weight_g=1000 food=fresh residue_ppm=1 | intake_pct=15
                        """)
                .from("independent arithmetic", COMPUTED)
                .figure("risk-quotient", "exposure=228.822 toxicity=1098.915 group=mammal | rq=.208225")
                .from("independent arithmetic", COMPUTED)
                .figure("wildlife-toxicity", "route=water value=.0254 | word=very highly toxic")
                .from("[epa-bees-2014], daily food of a bee", MEMORY)
                .near("µg a bee eats of 110 ppm at .292 g", "32", .2, () -> Food.TALL_GRASS.upperPpm() * .292)
                .near("µg a larva eats of 110 ppm at .124 g", "13.6", .1, () -> Food.TALL_GRASS.upperPpm() * .124);
    }
}
