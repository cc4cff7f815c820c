package plumbrow.science.insects;

import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.MEMORY;
import static plumbrow.science.figure.Status.VERIFIED;

import java.util.List;
import java.util.Map;
import plumbrow.science.checks.Check;
import plumbrow.science.checks.CheckList;
import plumbrow.science.figure.Subject;

/** Losses, degree days and resistance to traits: values from outside. */
public final class InsectChecks {
    private InsectChecks() {}

    public static List<Check> all() {
        CheckList checks = CheckList.of(Subject.INSECTS);
        losses(checks);
        degreeDays(checks);
        highDose(checks);
        otherDoses(checks);
        blendsAndPyramids(checks);
        return checks.all();
    }

    private static void losses(CheckList checks) {
        checks.from("[ragsdale-2007], threshold for a lead of 7 days", MEMORY)
                .differs(
                        "soybean aphids a plant, doubling in 6.8 days",
                        "273.0",
                        () -> AphidThreshold.FIGURE
                                .answer(Map.of("lead_days", "7", "doubling_days", "6.8"))
                                .number("reckoned"),
                        "simple doubling gives 330, the paper 273, the field rule 250; the field rule is the floor")
                .from("borers at $15, $4, 180 bu", COMPUTED)
                .figure("economic-injury-level", """
                        cost=15 value=4 injury=.0501 damage=180 control_share=1 | density=.416
                        cost=15 value=4 injury=.0313 damage=180 control_share=1 | density=.666
                        cost=15 value=4 injury=.0241 damage=180 control_share=1 | density=.864
                        cost=15 value=4 injury=.0501 damage=180 control_share=.75 | density=.554
                        cost=15 value=4 injury=.0313 damage=180 control_share=.75 | density=.887
                        cost=15 value=4 injury=.0241 damage=180 control_share=.75 | density=1.153
                        """)
                .value(
                        "share lost to five borers a plant at V10, further ones at .035",
                        ".250",
                        () -> BorerLoss.crowdedShare(5, .06))
                .from("Iowa 2008 with other costs and prices", COMPUTED)
                .figure("borer-first-generation", """
                        larvae_per_plant=1 survival_share=.4 loss_per_larva_pct=5.9 yield_bu_ac=150 price_usd_bu=6 control_share=.8 cost_usd_ac=18 | injury_level_counted=1.06
                        larvae_per_plant=1 survival_share=.4 loss_per_larva_pct=5.9 yield_bu_ac=150 price_usd_bu=7 control_share=.8 cost_usd_ac=15 | injury_level_counted=.757
                        """)
                .from("independent arithmetic", COMPUTED)
                .value("bushels lost to .25 node, 200 bu", "7.50", () -> RootwormLoss.share(.25, .15) * 200)
                .value("bushels lost to .5 node, 200 bu", "15.00", () -> RootwormLoss.share(.5, .15) * 200)
                .value("dollars lost to 1 node, 200 bu at $5", "150.00", () -> RootwormLoss.share(1, .15) * 200 * 5)
                .value(
                        "dollars lost to 1.68 nodes, 180 bu at $4.50",
                        "204.12",
                        () -> RootwormLoss.share(1.68, .15) * 180 * 4.5)
                .from("independent arithmetic", COMPUTED)
                .figure(
                        "blend-insecticide",
                        "refuge_share=.20 unprotected_loss_bu_ac=40 made_up_share=.25 price_usd_bu=6 efficacy=1 cost_usd_ac=0"
                                + " | loss_bu_ac=6.00 loss_usd_ac=36.00")
                .value("$/ac in a 5 % blend at .5 node, 200 bu, $5", "3.75", () -> refugePlants(.5))
                .value("$/ac in a 5 % blend at 1 node", "7.50", () -> refugePlants(1))
                .value("$/ac in a 5 % blend at 2 nodes", "15.00", () -> refugePlants(2))
                .value(
                        "nodes from which a 5 % blend alone pays $18, $6, .75, 200 bu",
                        "2.67",
                        () -> BlendInsecticide.FIGURE
                                        .answer(BlendInsecticide.FIGURE
                                                .examples()
                                                .get(3)
                                                .inputs())
                                        .number("break_even_unprotected_loss_bu_ac")
                                / (RootwormLoss.share(1, .15) * 200));
    }

    private static double refugePlants(double nodes) {
        return BlendInsecticide.lossBuPerAcre(.05, RootwormLoss.share(nodes, .15) * 200, 0, 0, 0) * 5;
    }

    private static void degreeDays(CheckList checks) {
        checks.from("independent arithmetic", COMPUTED);
        for (String row : """
                45 70 7.5 10.0 8.00 8.47
                40 60 0.0 5.0 2.50 3.18
                60 95 27.5 23.0 26.34 25.51
                55 80 17.5 17.5 17.50 17.50
                38 55 0.0 2.5 0.74 1.19
                30 48 0.0 0.0 0.00 0.00""".lines().toList()) {
            String[] cells = row.split(" ", -1);
            String day = "tmin_f=" + cells[0] + " tmax_f=" + cells[1] + " lower_f=50";
            checks.figure("degree-days", "method=average " + day + " | degree_days=" + cells[2])
                    .figure("degree-days", "method=modified " + day + " upper_f=86 | degree_days=" + cells[3])
                    .figure("degree-days", "method=triangle " + day + " upper_f=86 | degree_days=" + cells[4])
                    .figure("degree-days", "method=sine " + day + " upper_f=86 | degree_days=" + cells[5]);
        }
        checks.from("[trenchr], its tests, 12 to 33 °C", VERIFIED)
                .value("sine, 7 to 14 °C", ".47", () -> DegreeDays.of("sine", 7, 14, 12, 33))
                .value("sine, 7 to 10 °C", ".00", () -> DegreeDays.of("sine", 7, 10, 12, 33))
                .value("sine, 13 to 14 °C", "1.5", () -> DegreeDays.of("sine", 13, 14, 12, 33))
                .value("sine, 13 to 40 °C", "12.94", () -> DegreeDays.of("sine", 13, 40, 12, 33))
                .value("sine, 7 to 40 °C", "10.94", () -> DegreeDays.of("sine", 7, 40, 12, 33))
                .value("sine, 7 to 20 °C", "2.87", () -> DegreeDays.of("sine", 7, 20, 12, 33))
                .value("triangle, 7 to 14 °C", ".29", () -> DegreeDays.of("triangle", 7, 14, 12, 33))
                .value("sine, 35 to 40 °C, by its double sine", "21", () -> DegreeDays.of("sine", 35, 40, 12, 33))
                .differs(
                        "sine, 35 to 40 °C, by its single sine",
                        "5",
                        () -> DegreeDays.of("sine", 35, 40, 12, 33),
                        "the package contradicts its own double sine of 21, which a horizontal cutoff gives")
                .from("[corn-tassels]", VERIFIED)
                .differs(
                        "a day of 55 to 90 °F",
                        "17.5",
                        () -> DegreeDays.modified(55, 90, 50, 86),
                        "the page does not follow the rule it states: (86 + 55)/2 − 50 = 20.5");
    }

    private static void highDose(CheckList checks) {
        checks.from("independent arithmetic", COMPUTED)
                .value("one generation from .001, refuge .05, recessive", ".001018981", () -> step(.05))
                .value("one generation, refuge .10", ".001008991", () -> step(.10))
                .value("one generation, refuge .20", ".001003996", () -> step(.20))
                .value("one generation, refuge .50", ".001000999", () -> step(.50))
                .from("trait kills all susceptible", COMPUTED);
        double[] dominance = {0, .05, .5, 1};
        for (String row : """
                .001 .05: 59 .853, 8 .584, 4 .652, 3 .523
                .001 .10: 118 .736, 13 .515, 5 .606, 4 .560
                .001 .20: 258 .688, 25 .587, 7 .535, 6 .614
                .001 .50: 1012 .571, 87 .569, 18 .530, 12 .532
                .01 .05: 9 .744, 5 .736, 3 .649, 3 .643
                .01 .10: 15 .560, 8 .823, 4 .675, 3 .562
                .01 .20: 30 .654, 13 .588, 5 .554, 4 .548""".lines().toList()) {
            String[] sides = row.split(": ", -1);
            String[] start = sides[0].split(" ", -1);
            String[] cells = sides[1].split(", ", -1);
            for (int i = 0; i < cells.length; i++) {
                String[] cell = cells[i].split(" ", -1);
                double h = dominance[i];
                int steps = Integer.parseInt(cell[0]);
                checks.figure(
                                "insect-resistance",
                                "refuge_share=%s initial_frequency=%s dominance_h=%s | generations_to_half=%s.0"
                                        .formatted(start[1], start[0], h, cell[0]))
                        .value(
                                "frequency in generation %s, refuge %s, from %s, dominance %s"
                                        .formatted(cell[0], start[1], start[0], h),
                                cell[1],
                                () -> after(Double.parseDouble(start[0]), Double.parseDouble(start[1]), h, steps));
            }
        }
    }

    private static double step(double refuge) {
        return InsectResistance.next(.001, 1, refuge, refuge);
    }

    private static double after(double from, double refuge, double dominance, int steps) {
        double frequency = from;
        for (int i = 0; i < steps; i++) {
            frequency = InsectResistance.next(frequency, 1, InsectResistance.fitness(refuge, 1, dominance), refuge);
        }
        return frequency;
    }

    private static void otherDoses(CheckList checks) {
        checks.from("moderate dose", COMPUTED);
        String[] refuges = {".05", ".10", ".20"};
        for (String row : """
                0: 115 177 324
                .25: 6 8 12
                .5: 5 6 8
                1: 4 5 6""".lines().toList()) {
            String[] sides = row.split(": ", -1);
            String[] cells = sides[1].split(" ", -1);
            for (int i = 0; i < cells.length; i++) {
                checks.figure(
                        "insect-resistance",
                        "refuge_share=%s initial_frequency=.001 dominance_h=%s survival_ss=.05 | generations_to_half=%s.0"
                                .formatted(refuges[i], sides[0], cells[i]));
            }
        }
        checks.figure("insect-resistance", """
                        refuge_share=.20 initial_frequency=.01 dominance_h=.3 survival_ss=.01 | generations_to_half=6.0
                        refuge_share=.05 initial_frequency=.01 dominance_h=.3 survival_ss=.01 | generations_to_half=3.0
                        """)
                .figure(
                        "resistance-cost",
                        "survival_rr=.2 cost_rr=.5 refuge_share=.30 initial_frequency=.05 | generations_to_half=never: resistance declines");
    }

    private static void blendsAndPyramids(CheckList checks) {
        checks.from("independent arithmetic", COMPUTED)
                .figure("blend-resistance", """
                        refuge_share=.05 initial_frequency=.001 survival_ss=.01 survival_rs=.10 moving_share=0 | fitness_ss=.0595 generations_to_half=7.0
                        refuge_share=.05 initial_frequency=.001 survival_ss=.01 survival_rs=.10 moving_share=.3 | fitness_ss=.0442 generations_to_half=7.0
                        refuge_share=.20 initial_frequency=.001 survival_ss=.01 survival_rs=.10 moving_share=0 | fitness_ss=.208 generations_to_half=18.0
                        refuge_share=.20 initial_frequency=.001 survival_ss=.01 survival_rs=.10 moving_share=.1 | fitness_ss=.193 generations_to_half=17.0
                        refuge_share=.20 initial_frequency=.001 survival_ss=.01 survival_rs=.10 moving_share=.5 | fitness_ss=.133 generations_to_half=13.0
                        """)
                .from("independent arithmetic", COMPUTED)
                .figure("pyramid-resistance", """
                        refuge_share=.20 initial_frequency=.01 survival_ss=.05 survival_rs=.30 | generations_to_half=42.0 single_generations=8.0
                        refuge_share=.05 initial_frequency=.01 survival_ss=.20 survival_rs=.40 | generations_to_half=11.0 single_generations=8.0
                        """);
    }
}
