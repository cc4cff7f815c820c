package plumbrow.science.stand;

import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.VERIFIED;

import java.util.List;
import plumbrow.science.checks.Check;
import plumbrow.science.checks.CheckList;
import plumbrow.science.figure.Subject;
import plumbrow.science.spraying.CornStand;

/** Stand and replanting: the table that the fit was made of, the checks worked by hand, and what other sources print. */
public final class StandChecks {
    private StandChecks() {}

    public static List<Check> all() {
        CheckList checks = CheckList.of(Subject.STAND);
        table(checks);
        slopes(checks);
        ontario(checks);
        pennsylvania(checks);
        return checks.all();
    }

    /** All 182 cells of the table, each within 1 after rounding: the fit's own claim. */
    private static void table(CheckList checks) {
        checks.from("[nafziger-1994]: fit within 1", VERIFIED);
        for (int date = 0; date <= 12; date++) {
            for (int column = 0; column <= 13; column++) {
                int days = 5 * date;
                int plants = 10 + 2 * column;
                double printed = CornStand.yieldPct(days, 1000 * plants);
                checks.near(
                        "corn, " + plants + " thousand plants, " + (9 + days) + " days after 1 April, %",
                        String.valueOf((int) printed),
                        1,
                        () -> Math.rint(CornResponse.tablePct(plants, 9 + days)));
            }
        }
    }

    private static void slopes(CheckList checks) {
        checks.from("independent arithmetic", COMPUTED).figure("corn-stand-response", """
                        plants_ac=20000 | slope_pct=1.598
                        plants_ac=24000 | slope_pct=0.979
                        plants_ac=28000 | slope_pct=0.360
                        plants_ac=32000 | slope_pct=-0.259
                        """);
        checks.from("[purdue-2015-rate]: best rate 2000 plants or more below the highest yield's", VERIFIED)
                .figure(
                        "best-seeding-rate",
                        "crop=corn seed_usd_thousand=3.00 emerged_share=.95 price_usd_bu=4.00 yield_bu_ac=180"
                                + " | plants_k_ac=27.49");
    }

    private static void ontario(CheckList checks) {
        checks.from("[ontario-wheat], plants per foot of row at 7.5 in: 20, 10, 7, 6, 5", VERIFIED)
                .near("20 per foot, %", "100", 0.5, () -> WheatResponse.forgivingPct(32))
                .near("10 per foot, %", "95", 1.5, () -> WheatResponse.forgivingPct(16))
                .near("7 per foot, %", "90", 1.5, () -> WheatResponse.forgivingPct(11.2))
                .near("6 per foot, %", "85", 1.5, () -> WheatResponse.forgivingPct(9.6))
                .near("5 per foot, %", "80", 1.5, () -> WheatResponse.forgivingPct(8));
    }

    private static void pennsylvania(CheckList checks) {
        checks.from("[pennsylvania-soybean]: 70,000 soybean plants 90 to 95 %, 80,000 keep yield; dates", VERIFIED)
                .near("70 thousand plants, %", "92.5", 2.5, () -> SoybeanResponse.keptPct(70, 100.0766))
                .value("10 May, %", "100", () -> SoybeanResponse.datePct(39))
                .value("20 May, %", "98", () -> SoybeanResponse.datePct(49))
                .value("30 May, %", "95", () -> SoybeanResponse.datePct(59))
                .value("10 June, %", "88", () -> SoybeanResponse.datePct(70))
                .value("20 June, %", "76", () -> SoybeanResponse.datePct(80));
    }
}
