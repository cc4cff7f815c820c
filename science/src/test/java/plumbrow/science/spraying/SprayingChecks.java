package plumbrow.science.spraying;

import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.VERIFIED;

import java.util.List;
import java.util.Map;
import plumbrow.science.checks.Check;
import plumbrow.science.checks.CheckList;
import plumbrow.science.figure.Subject;

/** Boom, nozzles, loads, rows and stands: values from outside. */
public final class SprayingChecks {
    private static final String ACRES = Double.toString(1000.0 / 15);
    private static final String LAST_ACRES = Double.toString(137 - 2 * 1000.0 / 15);

    private SprayingChecks() {}

    public static List<Check> all() {
        CheckList checks = CheckList.of(Subject.SPRAYING);
        boom(checks);
        nozzles(checks);
        loads(checks);
        rows(checks);
        stand(checks);
        return checks.all();
    }

    private static void boom(CheckList checks) {
        checks.from("[florida-marion-2017]", VERIFIED)
                .value("gallons a minute of 16 fl oz", "0.125", () -> 16 / NozzleFlow.OUNCES_PER_GALLON)
                .from("[lsu-ounces]: 40-in rows, 102 ft, 14 oz", VERIFIED)
                .value(
                        "gal/ac at 5 mph",
                        "14",
                        () -> BoomFlow.gpa(
                                14 / NozzleFlow.OUNCES_PER_GALLON / (CatchCourse.courseFeet(40) / (5 * 88)), 5, 40))
                .differs(
                        "feet of course at 14 in",
                        "291.0",
                        () -> CatchCourse.courseFeet(14),
                        "that table cuts off 291.7; others round to 292")
                .differs(
                        "feet of course at 22 in",
                        "185.0",
                        () -> CatchCourse.courseFeet(22),
                        "that table cuts off 185.6; others round to 186")
                .from("[oklahoma-sprayer], last example", VERIFIED)
                .differs(
                        "gal/ac of .79 gal/min, 3 mph, 18 in",
                        "88.0",
                        () -> BoomFlow.gpa(.79, 3, 18),
                        "a misprint: the page's own formula gives 86.9");
    }

    private static void nozzles(CheckList checks) {
        checks.from("[nebraska-solutions-2016]; 14 and 16 lb/gal [sumner-georgia]", VERIFIED)
                .figure("carrier-factor", """
                        gpa=20 density_lb_gal=6.6 | factor=.89
                        gpa=20 density_lb_gal=7.0 | factor=.92
                        gpa=20 density_lb_gal=8.0 | factor=.98
                        gpa=20 density_lb_gal=8.34 | factor=1.00
                        gpa=20 density_lb_gal=9.0 | factor=1.04
                        gpa=20 density_lb_gal=10.0 | factor=1.10
                        gpa=20 density_lb_gal=11.0 | factor=1.15
                        gpa=20 density_lb_gal=11.06 | factor=1.15
                        gpa=20 density_lb_gal=11.6 | factor=1.18
                        gpa=20 density_lb_gal=12.0 | factor=1.20
                        gpa=20 density_lb_gal=14.0 | factor=1.30
                        gpa=20 density_lb_gal=16.0 | factor=1.39
                        """)
                .from("another copy of the table of [nebraska-solutions-2016]", VERIFIED)
                .differs(
                        "factor at 8.0 lb/gal",
                        ".88",
                        () -> NozzlePressure.carrierFactor(8),
                        "a misprint of .98, the root of 8.0/8.34")
                .from("flow at 2 bar", COMPUTED)
                .figure("nozzle-size", """
                        size=01 psi=29.00755 | litres_min=.322
                        size=015 psi=29.00755 | litres_min=.484
                        size=02 psi=29.00755 | litres_min=.645
                        size=025 psi=29.00755 | litres_min=.806
                        size=03 psi=29.00755 | litres_min=.967
                        size=05 psi=29.00755 | litres_min=1.612
                        size=06 psi=29.00755 | litres_min=1.934
                        size=10 psi=29.00755 | litres_min=3.224
                        """)
                .from("[iso-10625]: flow at 2 bar, by 0.4 L/min a tenth of a gallon, to 2 %", VERIFIED)
                .near("size 015", ".49", .010, () -> twoBar("015"))
                .near("size 02", ".65", .013, () -> twoBar("02"))
                .near("size 03", ".98", .020, () -> twoBar("03"))
                .near("size 04", "1.31", .026, () -> twoBar("04"))
                .near("size 05", "1.63", .033, () -> twoBar("05"))
                .near("size 06", "1.96", .039, () -> twoBar("06"))
                .near("size 08", "2.61", .052, () -> twoBar("08"))
                .differs("size 025", ".98", () -> twoBar("025"), "a misprint: that is the flow of size 03");
    }

    private static double twoBar(String size) {
        return NozzleSize.FIGURE.answer(Map.of("size", size, "psi", "29.00755")).number("litres_min");
    }

    private static void loads(CheckList checks) {
        checks.from("137 ac at 15 gal/ac in 1000 gal", COMPUTED);
        for (String row : """
                32 acre 2133.3 117.3
                1.33 acre 88.67 4.877
                3 acre 200.0 11.0
                .25 percent 2.50 .1375
                8.5 100-gal 85.0 4.68""".lines().toList()) {
            String[] cells = row.split(" ", -1);
            String rate = "rate=" + cells[0] + " basis=" + cells[1];
            checks.figure("product-per-load", rate + " acres_per_load=" + ACRES + " tank_gal=1000 | amount=" + cells[2])
                    .figure(
                            "product-per-load",
                            rate + " acres_per_load=" + LAST_ACRES + " tank_gal=55 | amount=" + cells[3]);
        }
        checks.from("one rinse of 150 gal against three of 50", COMPUTED)
                .value("times as much left", "43", () -> left("150", "1") / left("50", "3"));
    }

    private static void rows(CheckList checks) {
        checks.from("independent arithmetic", COMPUTED)
                .figure("granules-per-row", "lb_ac=6 row_spacing_in=20 | oz_per_1000_row_ft=3.67")
                .value(
                        "fl oz/ac of 2.4 fl oz a 1000 ft in 30-in rows",
                        "41.8",
                        () -> 2.4
                                * RowLength.FIGURE
                                        .answer(Map.of("row_spacing_in", "30"))
                                        .number("row_ft_ac")
                                / 1000);
    }

    private static double left(String gallons, String rinses) {
        return JarTest.RINSE
                .answer(Map.of("residue_gal", "5", "rinse_gal", gallons, "rinses", rinses))
                .number("left_share");
    }

    private static void stand(CheckList checks) {
        checks.from("[nafziger-1994]", VERIFIED);
        String[] dates = {
            "04-10", "04-15", "04-20", "04-25", "04-30", "05-05", "05-10", "05-15", "05-20", "05-25", "05-30", "06-04",
            "06-09"
        };
        String[] rows = """
                62 68 73 78 82 85 88 91 92 93 94 94 93 91
                65 71 76 81 85 88 91 94 95 96 97 96 96 94
                67 73 78 83 87 90 93 96 97 98 99 98 98 96
                68 74 79 84 88 92 94 97 98 99 100 100 99 97
                68 74 79 84 88 92 95 97 99 100 100 100 99 97
                67 73 79 83 87 91 94 96 98 99 99 99 98 97
                65 71 77 82 86 89 92 94 96 97 97 97 96 95
                63 69 74 79 83 87 89 92 93 94 95 95 94 92
                59 65 71 75 80 83 86 88 90 91 91 91 90 89
                55 61 66 71 75 79 81 84 85 86 87 87 86 84
                49 55 61 65 70 73 76 78 80 81 81 81 80 79
                43 49 54 59 63 67 70 72 74 75 75 75 74 73
                36 42 47 52 56 60 62 65 66 67 68 68 67 65""".lines().toArray(String[]::new);
        for (int row = 0; row < rows.length; row++) {
            String[] cells = rows[row].split(" ", -1);
            for (int column = 0; column < cells.length; column++) {
                checks.figure(
                        "corn-stand-yield",
                        "planted=2024-%s plants_ac=%d000 | yield_pct=%s.00"
                                .formatted(dates[row], 10 + 2 * column, cells[column]));
            }
        }
    }
}
