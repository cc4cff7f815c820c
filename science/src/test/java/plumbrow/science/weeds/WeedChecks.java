package plumbrow.science.weeds;

import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.VERIFIED;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import plumbrow.science.Printed;
import plumbrow.science.checks.Check;
import plumbrow.science.checks.CheckList;
import plumbrow.science.figure.Subject;

/** Losses, critical times, emergence, seedbank and selection: values from outside. */
public final class WeedChecks {
    private WeedChecks() {}

    public static List<Check> all() {
        CheckList checks = CheckList.of(Subject.WEEDS);
        losses(checks);
        times(checks);
        emergence(checks);
        control(checks);
        seedbank(checks);
        selection(checks);
        return checks.all();
    }

    private static void losses(CheckList checks) {
        checks.from("independent arithmetic", COMPUTED)
                .figure("weed-loss", """
                        density_m2=10 i_pct=3.2 a_pct=56 | loss_pct=20.3636
                        density_m2=.17 i_pct=136 a_pct=90 | loss_pct=18.3946
                        density_m2=1.38 i_pct=136 a_pct=90 | loss_pct=60.8297
                        """)
                .value(
                        "volunteer soybeans/m² that cost 10 % of corn",
                        "3.8043", () -> HyperbolicLoss.densityForLossPct(10, 3.2, 56))
                .figure("weed-loss-late", """
                        density_m2=.1 i_pct=136 a_pct=90 c_per_day=.0932168 days_after_crop=28 | loss_pct=.9890
                        density_m2=.69 i_pct=136 a_pct=90 c_per_day=.0932168 days_after_crop=0 | loss_pct=45.9399
                        density_m2=.69 i_pct=136 a_pct=90 c_per_day=.0932168 days_after_crop=14 | loss_pct=19.8373
                        """)
                .from("[alms-corn-2016]: 10 % loss at 3 to 4 plants/m²", VERIFIED)
                .near(
                        "volunteer soybeans/m² that cost 10 % of corn",
                        "3.5", .5, () -> HyperbolicLoss.densityForLossPct(10, 3.2, 56))
                .from("[harrison-2001]: about 1 % for a plant in 10 m², four weeks after corn", VERIFIED)
                .near(
                        "giant ragweed, .1/m², four weeks late",
                        "1.0",
                        .05,
                        () -> HyperbolicLoss.ofLoad(HyperbolicLoss.load(.1, 136, .0932168, 28), 90));
    }

    private static void times(CheckList checks) {
        checks.from("independent arithmetic", COMPUTED)
                .value(
                        "yield where weeds are never removed",
                        "44.4444",
                        () -> CriticalCurves.weedyUntil(1e6, .01, 500, 1.8))
                .value("weeds must be gone by, for 95 %", "327.415", () -> CriticalCurves.removeBy(95, .01, 500, 1.8))
                .value(
                        "clean from the crop's start until, for 95 %",
                        "284.631", () -> CriticalCurves.cleanFor(95, 100, .5, .008));
        delays(checks, "corn-many", 2.0, "5:1 7:2.5 11:5 17:10 25:25 59:50");
        delays(checks, "corn-few", 0.5, "14:1 20:2.5 27:5 44:10");
        delays(checks, "soybean-many", 0.4, "8:2.5 10:5 14:10 23:25");
        delays(checks, "soybean-few", 0.2, "24:2.5 30:5 37:10 53:25");
    }

    /** Cells day:loss; the slack is how near our smooth curve is said to come. */
    private static void delays(CheckList checks, String field, double slack, String cells) {
        String paper = field.startsWith("soybean") ? "[soltani-soybean-2022], " : "[soltani-2022], ";
        checks.from(paper + field + ", smoothed", VERIFIED);
        for (String cell : cells.split(" ", -1)) {
            String[] pair = cell.split(":", -1);
            checks.near(
                    "loss with the post pass on day " + pair[0],
                    pair[1],
                    slack + .05,
                    () -> PostDelay.lossPct(field, Double.parseDouble(pair[0])));
        }
    }

    private static void emergence(CheckList checks) {
        for (String row : """
                Pennsylvania smartweed, 80, 96.1, 31, 146
                kochia, 155, 186.2, 60, 283
                wild buckwheat, 172, 206.6, 67, 313
                Russian thistle, 195, 234.2, 76, 355
                common lambsquarters, 200, 240.2, 78, 365
                velvetleaf, 250, 300.3, 97, 456
                giant foxtail, 265, 318.3, 103, 483
                tansymustard, 270, 324.3, 105, 492
                green foxtail, 340, 408.4, 133, 620
                prickly sida, 510, 612.6, 199, 930
                wild-proso millet, 535, 642.6, 209, 975
                pigweeds, 639, 767.5, 249, 1165
                tall morningglory, 725, 870.8, 283, 1321""".lines().toList()) {
            String[] cells = row.split(", ", -1);
            double scale = WeedEmergence.scaleOfHalf(Double.parseDouble(cells[1]), 2);
            checks.from("from the half emergence of [forcella-1997], shape 2", COMPUTED)
                    .value(cells[0] + ", half up at " + cells[1] + ": scale", cells[2], () -> scale)
                    .value(cells[0] + ": a tenth up at", cells[3], () -> WeedEmergence.weibullDegreeDays(10, scale, 2))
                    .value(
                            cells[0] + ": nine tenths up at",
                            cells[4],
                            () -> WeedEmergence.weibullDegreeDays(90, scale, 2));
        }
        checks.from("independent arithmetic", COMPUTED)
                .value("b where half is up at 250, k .01", "8.44426", () -> WeedEmergence.gompertzB(250, .01))
                .from("waterhemp fit to [schutte-davis-2014]", COMPUTED)
                .figure("weed-emergence", """
                        gdd=100 form=weibull scale=540 shape=2.49 | emerged_pct=1.5
                        gdd=300 form=weibull scale=540 shape=2.49 | emerged_pct=20.7
                        gdd=600 form=weibull scale=540 shape=2.49 | emerged_pct=72.7
                        gdd=900 form=weibull scale=540 shape=2.49 | emerged_pct=97.2
                        gdd=1200 form=weibull scale=540 shape=2.49 | emerged_pct=99.9
                        gdd=100 form=gompertz b=8.5 k=.00555 | emerged_pct=0.8
                        gdd=300 form=gompertz b=8.5 k=.00555 | emerged_pct=20.0
                        gdd=600 form=gompertz b=8.5 k=.00555 | emerged_pct=73.8
                        gdd=900 form=gompertz b=8.5 k=.00555 | emerged_pct=94.4
                        gdd=1200 form=gompertz b=8.5 k=.00555 | emerged_pct=98.9
                        """)
                .from("[schutte-davis-2014]", VERIFIED)
                .near("waterhemp up at 300", "18.5", 2.3, () -> WeedEmergence.weibullPct(300, 540, 2.49))
                .near("waterhemp up at 600", "73.7", 2.3, () -> WeedEmergence.weibullPct(600, 540, 2.49))
                .near("waterhemp up at 900", "96.6", 2.3, () -> WeedEmergence.weibullPct(900, 540, 2.49))
                .near("waterhemp up at 1200", "98.8", 2.3, () -> WeedEmergence.weibullPct(1200, 540, 2.49))
                .differs(
                        "waterhemp up at 100",
                        "10.9",
                        () -> WeedEmergence.weibullPct(100, 540, 2.49),
                        "early stragglers are real, and no smooth curve has them");
    }

    private static void control(CheckList checks) {
        checks.from("independent arithmetic", COMPUTED)
                .figure("herbicide-dose", """
                        rate=12.7 ed50=23.4513 slope=2.8282 | control_pct=15.00
                        rate=25.5 ed50=23.4513 slope=2.8282 | control_pct=55.89
                        rate=102 ed50=23.4513 slope=2.8282 | control_pct=98.46
                        """)
                .from("[alms-soybean-2016]: clethodim on volunteer corn, 12.7 g/ha", VERIFIED)
                .figure("herbicide-dose", "rate=12.7 ed50=23.4513 slope=2.8282 | control_pct=15");
    }

    private static void seedbank(CheckList checks) {
        years(checks, "6f, no seed return", 0, "627.0 393.13 246.49 154.55 96.90 60.76");
        years(checks, "6g, waterhemp at 90 %", .05, "56182.56 133822.52 183312.47 214502.40 234121.43 246453.60");
        years(checks, "6h, waterhemp at 99.9 %", .0005, "1861.57 3441.25 6281.82 11219.28 19333.73 31585.66");
        String[] published = {"52", "32", "21", "11"};
        String[] computed = {"52.04", "32.63", "20.46", "12.83"};
        for (int year = 1; year <= 4; year++) {
            int until = year;
            checks.from("independent arithmetic", COMPUTED)
                    .value(
                            "waterhemp from 83 %, no seed return, year " + year,
                            computed[year - 1],
                            () -> bank(83, 0, 0, 0, until))
                    .from("[buhler-hartzler-2001], Tables 1, 3, 4", VERIFIED)
                    .near(
                            "waterhemp from 83 %, no seed return, year " + year,
                            published[year - 1],
                            2,
                            () -> bank(83, 0, 0, 0, until));
        }
        rotation(checks, "corn, soybean", 0, 0, "99.0", "99.13");
        rotation(checks, "corn, soybean, rye", 1, 0, "97.9", "98.08");
        rotation(checks, "corn, soybean, rye, alfalfa", 1, 1, "95.6", "95.93");
    }

    private static void years(CheckList checks, String id, double survival, String seeds) {
        double[] printed = Printed.numbers(seeds);
        String[] cells = seeds.split(" ", -1);
        checks.from("balance of one year worked apart, case " + id, COMPUTED);
        for (int year = 1; year <= printed.length; year++) {
            int until = year;
            checks.near(
                    "seeds/m² from 1000, year " + year,
                    cells[year - 1],
                    .01,
                    () -> bank(1000, survival, 50_000, .5, until));
        }
    }

    private static double bank(double from, double survival, double fecundity, double crowding, int years) {
        return IntStream.range(0, years)
                .boxed()
                .reduce(
                        from,
                        (seeds, year) -> Seedbank.next(seeds, .05, survival, fecundity, .34, crowding),
                        (first, second) -> second);
    }

    private static void rotation(
            CheckList checks, String crops, int rye, int alfalfa, String published, String computed) {
        String what = "giant ragweed, " + crops + ": least control that holds the bank, %";
        checks.from("[liebman-nichols-2020], to .4 points", VERIFIED)
                .near(what, published, .4, () -> leastControl(rye, alfalfa))
                .from("independent arithmetic", COMPUTED)
                .value(what, computed, () -> leastControl(rye, alfalfa));
    }

    private static double leastControl(int rye, int alfalfa) {
        double bank = Math.pow(.75, 4);
        DoubleUnaryOperator growth = control -> Seedbank.growth(.18, bank, 1 - control, 985, .4)
                * Seedbank.growth(.18, bank, 1 - control, 1400, .4)
                * Math.pow(Seedbank.growth(.18, bank, .1, 3, .4), rye)
                * Math.pow(Seedbank.growth(.18, bank, 0, 0, .4), alfalfa);
        double low = 0;
        double high = 1;
        while (high - low > 1e-12) {
            double middle = (low + high) / 2;
            if (growth.applyAsDouble(middle) > 1) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return 100 * high;
    }

    private static void selection(CheckList checks) {
        double[] control = {.5, .9, .9, .95, .99, .99, .99, .9};
        double[] life = {1, 1, 4, 4, 1, 4, 10, 4};
        double[] fitness = {1, 1, 1, 1, 1, 1, 1, .5};
        checks.from("[gressel-segel-1990], equation worked apart", COMPUTED);
        for (String row : """
                1e-6: 11.11 5.09 9.74 6.81 2.64 3.75 5.09 15.05
                1e-8: 15.30 7.01 13.42 9.38 3.64 5.16 7.01 20.73
                1e-10: 19.49 8.93 17.10 11.95 4.64 6.57 8.93 26.41""".lines().toList()) {
            String[] sides = row.split(": ", -1);
            String[] cells = sides[1].split(" ", -1);
            for (int i = 0; i < cells.length; i++) {
                checks.figure(
                        "resistance-selection",
                        "initial_share=%s control_pct=%.0f seed_life_yr=%.0f fitness=%s | exact_years=%s"
                                .formatted(sides[0], 100 * control[i], life[i], fitness[i], cells[i]));
            }
        }
        checks.from("share in that year", COMPUTED)
                .value("case 7c, year 9", ".2625", () -> shareAfter(1e-6, .95, .8, 9))
                .value("case 7d, year 4", ".3409", () -> shareAfter(1e-6, .99, .627, 4))
                .value("case 7e, year 9", ".3573", () -> shareAfter(1e-8, .95, .627, 9))
                .value("case 7f, year 14", ".2144", () -> shareAfter(1e-6, .80, .627, 14))
                .value("case 7g, year 6", ".5000", () -> shareAfter(1e-6, .90, 0, 6))
                .from("a recessive allele in plants that cross", COMPUTED)
                .value("years from 1e-6, control 95 %", "52645.0", WeedChecks::yearsOfRecessive)
                .from("no delay by a mixture where fields are endless, a rotation doubles the years", COMPUTED)
                .value("years to more than 20 %, one herbicide", "5.0", () -> yearsTo(1e-6, .05))
                .value("years to more than 20 %, both in a mixture", "5.0", () -> yearsTo(1e-12, .05 * .05));
    }

    private static double shareAfter(double start, double control, double dormant, int years) {
        double share = start;
        for (int year = 0; year < years; year++) {
            share = HerbicideSelection.nextShare(share, 1 - control, dormant);
        }
        return share;
    }

    private static double yearsTo(double start, double left) {
        int years = 0;
        for (double share = start; share <= .2; share = HerbicideSelection.nextShare(share, left, 0)) {
            years++;
        }
        return years;
    }

    private static double yearsOfRecessive() {
        int years = 0;
        for (double q = 1e-6; q * q <= .2; q = HerbicideSelection.nextFrequency(q, .05, 0, 0)) {
            years++;
        }
        return years;
    }
}
