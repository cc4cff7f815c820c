package plumbrow.app.loadcard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.SplittableRandom;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import plumbrow.advice.field.Field;
import plumbrow.advice.loadcard.LoadCard;
import plumbrow.advice.loadcard.LoadCards;
import plumbrow.advice.means.Means;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.Program;
import plumbrow.advice.program.SprayPlan;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.season.Season;
import plumbrow.advice.season.Work;
import plumbrow.advice.shelf.LabelUse;
import plumbrow.advice.tank.Addition;
import plumbrow.advice.tank.Sprayer;
import plumbrow.advice.tank.TankBook;
import plumbrow.advice.trip.SprayTrip;
import plumbrow.app.demo.DemoBook;
import plumbrow.documents.binder.LoadCardPaper;

/** Load cards of the demo's fields, with acres, volume, tank and rates changed, and what must hold of any. */
class LoadCardTest {
    private static final Season DEMO = DemoBook.season();
    private static final String FIELD = "South Slough";
    private static final String PROGRAM = "Before, then mesotrione and glyphosate";

    /** The demo's tank mix on other acres, with another volume, tank and rate of glyphosate [fl oz/ac]. */
    private static LoadCard card(double acres, double gpa, double tankGal, double rate) {
        return card(acres, gpa, tankGal, rate, List.of());
    }

    private static LoadCard card(double acres, double gpa, double tankGal, double rate, List<Addition> additions) {
        Field old = DEMO.field(FIELD).orElseThrow();
        Field field = new Field(
                old.name(),
                old.farm(),
                acres,
                null,
                old.state(),
                old.county(),
                old.crop(),
                old.texture(),
                old.organicMatterPct(),
                old.ph(),
                old.slopePct());
        Program program = DEMO.programs(FIELD).stream()
                .filter(one -> one.name().equals(PROGRAM))
                .findFirst()
                .orElseThrow();
        List<Pass> passes = new ArrayList<>();
        for (Pass pass : program.passes()) {
            passes.add(
                    "Stillmeadow K".equals(pass.product())
                            ? new Pass(
                                    pass.number(),
                                    pass.kind(),
                                    pass.date(),
                                    pass.product(),
                                    new Amount(rate, FarmUnit.FL_OZ),
                                    pass.sharePct(),
                                    pass.chargeUsdPerAcre(),
                                    pass.injuryPct(),
                                    pass.delayDays())
                            : pass);
        }
        Program changed = new Program(FIELD, PROGRAM, program.baseline(), program.refuge(), program.note(), passes);
        List<SprayPlan> plans = DEMO.work().sprayPlans().stream()
                .map(plan -> plan.carrierGalPerAcre() == null ? plan : plan.carrying(gpa))
                .toList();
        TankBook tank = DEMO.work().means().tank();
        List<Addition> all = new ArrayList<>(tank.additions());
        all.addAll(additions);
        TankBook other = new TankBook(
                List.of(new Sprayer("Millrace", "60-ft sprayer", tankGal, 20.0, 90.0, 30.0, 20.0, 8.0, "test")),
                tank.nozzles(),
                tank.mixing(),
                tank.water(),
                all,
                tank.limits());
        Means means = DEMO.work().means();
        Work work = new Work(
                plans,
                DEMO.work().crew(),
                DEMO.work().log(),
                new Means(means.machines(), means.windows(), means.limits(), means.breaks(), means.supplies(), other));
        Season season = DEMO.withFields(List.of(field)).withPrograms(List.of(changed), work);
        SprayTrip trip = SprayTrip.of(season, field, changed).stream()
                .filter(one -> one.products().contains("Stillmeadow K"))
                .findFirst()
                .orElseThrow();
        return LoadCards.of(season, trip, null);
    }

    private static LoadCard.Line line(LoadCard card, String product) {
        return card.lines().stream()
                .filter(line -> line.product().equals(product))
                .findFirst()
                .orElseThrow();
    }

    private static LoadCard.Measured there(LoadCard.@Nullable Measured measured) {
        return Objects.requireNonNull(measured);
    }

    /** 137 ac at 15 gal/ac from 1,000 gal, computed apart from this code. */
    @Test
    void loads_and_amounts_are_those_of_the_published_table() {
        LoadCard card = card(137, 15, 1000, 32);
        LoadCard.Loads loads = Objects.requireNonNull(card.loads());
        assertThat(loads.full()).isEqualTo(2);
        assertThat(loads.fullAcres()).isCloseTo(66.67, within(.005));
        assertThat(loads.lastAcres()).isCloseTo(3.67, within(.005));
        assertThat(loads.lastGal()).isEqualTo(55);
        LoadCard.Line glyphosate = line(card, "Stillmeadow K");
        assertThat(there(glyphosate.full()).exact() / 128).isCloseTo(16.67, within(.005));
        assertThat(there(glyphosate.last()).exact()).isCloseTo(117.3, within(.05));
        assertThat(there(glyphosate.last()).measured()).isEqualTo(117);
        assertThat(there(glyphosate.full()).words()).isEqualTo("6 × 2.5 gal + 213 fl oz");
        LoadCard.Line sulfate = line(card, "Saltmere AMS");
        assertThat(there(sulfate.full()).exact()).isCloseTo(85.0, within(.05));
        assertThat(there(sulfate.last()).exact()).isCloseTo(4.68, within(.006));
        LoadCard.Line surfactant = line(card, "Steadfall NIS");
        assertThat(there(surfactant.full()).exact() / 128).isCloseTo(2.50, within(.005));
        assertThat(there(surfactant.last()).exact()).isCloseTo(17.6, within(.05));
        assertThat(card.lines().stream().map(LoadCard.Line::product))
                .as("conditioner, suspension, solution, surfactant (Oklahoma State)")
                .containsExactly("Saltmere AMS", "Palemere 4", "Stillmeadow K", "Steadfall NIS");
    }

    @Test
    void of_any_job_loads_add_up_none_is_over_the_tank_and_no_amount_leaves_the_label() {
        SplittableRandom random = new SplittableRandom(20_261_130L);
        for (int round = 0; round < 400; round++) {
            double acres = Math.rint(random.nextDouble(.4, 700) * 10) / 10;
            double gpa = random.nextInt(10, 31);
            double tank = random.nextInt(150, 1400) + random.nextDouble();
            double rate = random.nextInt(4) == 0 ? (random.nextBoolean() ? 20 : 44) : random.nextInt(20, 45);
            LoadCard card = card(acres, gpa, tank, rate);
            LoadCard.Loads loads = Objects.requireNonNull(card.loads());
            assertThat(loads.full() * loads.fullAcres() + loads.lastAcres()).isCloseTo(acres, within(1e-6));
            assertThat(loads.mixedGal() - loads.leftGal()).isCloseTo(acres * gpa, within(1e-6));
            assertThat(loads.leftGal()).isBetween(-1e-6, 1.0);
            assertThat(loads.fullGal()).isLessThanOrEqualTo(tank);
            assertThat(loads.lastGal()).isLessThanOrEqualTo(tank);
            double mixed = 0;
            for (String product : List.of("Stillmeadow K", "Palemere 4")) {
                LabelUse use = DEMO.shelf()
                        .labelUse(product, DEMO.field(FIELD).orElseThrow().crop())
                        .orElseThrow();
                LoadCard.Line line = line(card, product);
                for (LoadCard.Measured measured : Arrays.asList(line.full(), line.last())) {
                    if (measured != null) {
                        assertThat(measured.rateGiven())
                                .isLessThanOrEqualTo(
                                        Objects.requireNonNull(use.highRate()).value() * (1 + 1e-9))
                                .isGreaterThanOrEqualTo(
                                        Objects.requireNonNull(use.lowRate()).value() * (1 - 1e-9));
                        assertThat(Math.abs(measured.measured() - measured.exact()))
                                .isLessThanOrEqualTo(1.0 + 1e-9);
                    }
                }
                if (product.equals("Stillmeadow K")) {
                    mixed = (line.full() == null
                                    ? 0
                                    : loads.full() * line.full().measured())
                            + (line.last() == null ? 0 : line.last().measured());
                }
            }
            assertThat(mixed).as("within a mark a load").isCloseTo(acres * rate, within(1.0 * loads.count() + 1e-6));
        }
    }

    @Test
    void a_rate_at_the_most_of_the_label_is_never_rounded_up() {
        LoadCard.Measured last =
                there(line(card(10.03, 15, 1000, 44), "Stillmeadow K").last());
        assertThat(last.exact()).isCloseTo(441.32, within(1e-6));
        assertThat(last.measured()).isEqualTo(441);
        LoadCard.Measured up =
                there(line(card(10.06, 15, 1000, 44), "Stillmeadow K").last());
        assertThat(up.exact()).isCloseTo(442.64, within(1e-6));
        assertThat(up.measured()).as("443 would be above the label").isEqualTo(442);
        LoadCard.Measured least =
                there(line(card(10.01, 15, 1000, 20), "Stillmeadow K").last());
        assertThat(least.measured()).as("200 would be below the label").isEqualTo(201);
    }

    @Test
    void what_no_label_may_hold_is_barred_and_what_is_not_on_file_is_looked_up() {
        assertThat(card(100, 15, 1000, 60).barred()).as("44 is the most").isTrue();
        assertThat(card(100, 5, 1000, 32).findings())
                .anySatisfy(finding -> assertThat(finding.says()).contains("5 gal/ac is less than the 10 gal/ac"));
        Field field = DEMO.field("Airport").orElseThrow();
        Program program = DEMO.programs("Airport").stream()
                .filter(one -> one.name().equals("Sweepline at R3"))
                .findFirst()
                .orElseThrow();
        TankBook tank = DEMO.work().means().tank();
        List<Addition> with =
                List.of(new Addition("Sweepline 1", null, "Saltmere AMS", 8.5, Addition.Basis.LB_PER_100_GAL, "test"));
        Means means = DEMO.work().means();
        TankBook other =
                new TankBook(tank.sprayers(), tank.nozzles(), tank.mixing(), tank.water(), with, tank.limits());
        Season season = DEMO.withPrograms(
                DEMO.programs(),
                new Work(
                        DEMO.work().sprayPlans(),
                        DEMO.work().crew(),
                        DEMO.work().log(),
                        new Means(
                                means.machines(),
                                means.windows(),
                                means.limits(),
                                means.breaks(),
                                means.supplies(),
                                other)));
        LoadCard forbidden =
                LoadCards.of(season, SprayTrip.of(season, field, program).get(0), null);
        assertThat(forbidden.barred()).isTrue();
        assertThat(forbidden.findings())
                .anySatisfy(finding -> assertThat(finding.says()).contains("forbids ammonium sulfate"));
        assertThat(forbidden.steps())
                .anySatisfy(
                        step -> assertThat(step).contains("The label says: add when the tank is three quarters full"));
        Field levee = DEMO.field("Dry Bench").orElseThrow();
        LoadCard bare = LoadCards.of(
                DEMO,
                DEMO.programs("Dry Bench").stream()
                        .flatMap(one -> SprayTrip.of(DEMO, levee, one).stream())
                        .findFirst()
                        .orElseThrow(),
                null);
        assertThat(bare.loads()).isNull();
        assertThat(bare.sentence()).contains("Loads are unknown: No sprayer of the farm is on file");
    }

    @Test
    void only_a_nozzle_that_meets_every_partner_fits() {
        LoadCard card = card(120, 15, 500, 32);
        assertThat(card.nozzles()).anySatisfy(choice -> {
            assertThat(choice.nozzle()).isEqualTo("Broadvane 05");
            // 15 gal/ac, 10 mph, 20 in: 0.505 gal/min, so 40.8 psi of size 05 (orifice law).
            assertThat(choice.psi()).isCloseTo(40.8, within(.05));
            assertThat(choice.fits()).isTrue();
        });
        assertThat(Objects.requireNonNull(card.catching()).courseFt()).isCloseTo(204, within(.5));
        LoadCard fast = card(120, 30, 500, 32);
        assertThat(fast.nozzles()).noneMatch(LoadCard.NozzleChoice::fits);
        assertThat(fast.findings())
                .anySatisfy(finding -> assertThat(finding.says()).contains("No nozzle on file gives 30 gal/ac"));
    }

    /** 6 lb/ac in 30-in rows is 5.51 oz on 1,000 ft (arithmetic); the demo puts 4.8 lb. */
    @Test
    void granules_are_told_along_the_row() {
        Field field = DEMO.field("Church Quarter").orElseThrow();
        Program program = DEMO.programs("Church Quarter").stream()
                .filter(one -> one.name().equals("Single trait, full rate"))
                .findFirst()
                .orElseThrow();
        SprayTrip trip = SprayTrip.of(DEMO, field, program).get(0);
        LoadCard card = LoadCards.of(DEMO, trip, null);
        double rate = Objects.requireNonNull(trip.passes().get(0).rate()).value();
        assertThat(card.granules().get(0).ozPer1000Feet()).isCloseTo(5.51 * rate / 6, within(.005));
        assertThat(card.loads()).isNull();
        assertThat(card.findings()).noneMatch(finding -> finding.says().contains("carrier"));
    }

    @Test
    void every_card_of_the_demo_is_one_page() throws Exception {
        for (Field field : DEMO.fields()) {
            Program program =
                    DEMO.programs(field.name()).get(DEMO.programs(field.name()).size() - 1);
            for (SprayTrip trip : SprayTrip.of(DEMO, field, program)) {
                byte[] pdf = LoadCardPaper.pdf(LoadCards.of(DEMO, trip, null), LocalDate.of(2026, 3, 2));
                try (PDDocument document = Loader.loadPDF(pdf)) {
                    assertThat(document.getNumberOfPages())
                            .as(field.name() + ", " + trip.words())
                            .isEqualTo(1);
                }
            }
        }
    }
}
