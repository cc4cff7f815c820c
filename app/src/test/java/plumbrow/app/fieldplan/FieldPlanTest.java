package plumbrow.app.fieldplan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import plumbrow.advice.check.MatterKind;
import plumbrow.advice.field.Field;
import plumbrow.advice.fieldplan.Decision;
import plumbrow.advice.fieldplan.FieldPlan;
import plumbrow.advice.fieldplan.FieldPlans;
import plumbrow.advice.gates.Gates;
import plumbrow.advice.gates.Standing;
import plumbrow.advice.program.PassKind;
import plumbrow.advice.program.Program;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.Adviser;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.advice.weighing.WeighingOptions;
import plumbrow.app.command.said.FieldPlanWords;
import plumbrow.app.demo.DemoBook;
import plumbrow.app.json.Json;
import plumbrow.documents.binder.FieldPlanPaper;

/** The plans of the demo's fields: what stands on them, and that paper, terminal and JSON say the same. */
@SuppressWarnings("NullAway.Init")
class FieldPlanTest {
    private static final Season DEMO = DemoBook.season();
    private static final Map<String, FieldAdvice> WEIGHED = new TreeMap<>();
    private static FieldPlans plans;

    @BeforeAll
    static void weigh() {
        Adviser.advise(DEMO, WeighingOptions.DEFAULT.withDraws(500), (done, all) -> {})
                .fields()
                .forEach(advice -> WEIGHED.put(advice.field().name(), advice));
        plans = new FieldPlans(DEMO);
    }

    private static FieldPlan plan(String name, @Nullable Decision decision) {
        Field field = DEMO.field(name).orElseThrow();
        return plans.of(field, decision, WEIGHED.get(name), "", Optional.empty());
    }

    private static Decision chose(String program) {
        return new Decision(program, "L. Brandvold", LocalDate.of(2026, 3, 5));
    }

    @Test
    void each_is_one_tagged_page_with_its_title_and_the_cautions() throws IOException {
        for (Field field : DEMO.fields()) {
            FieldPlan plan = plan(field.name(), null);
            try (PDDocument pdf = Loader.loadPDF(FieldPlanPaper.pdf(plan))) {
                String text = new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
                assertThat(pdf.getNumberOfPages()).as(field.name()).isEqualTo(1);
                assertThat(pdf.getDocumentCatalog().getLanguage()).isEqualTo("en-US");
                assertThat(pdf.getDocumentCatalog().getStructureTreeRoot()).isNotNull();
                assertThat(pdf.getDocumentCatalog().getDocumentOutline().children())
                        .hasSize(1);
                assertThat(pdf.getDocumentInformation().getTitle()).isEqualTo("Plan of " + field.name());
                assertThat(text).contains("The current label is the law", "911", "1-800-222-1222", "page 1 of 1");
            }
        }
    }

    @Test
    void steps_stand_in_the_order_of_their_days_and_each_pass_once() {
        for (Field field : DEMO.fields()) {
            FieldPlan plan = plan(field.name(), null);
            List<LocalDate> days = plan.steps().stream()
                    .flatMap(step -> Optional.ofNullable(step.date()).stream())
                    .toList();
            assertThat(days).as(field.name()).isSorted();
            if (plan.program() != null) {
                assertThat(plan.steps().stream().flatMap(step -> step.passes().stream()))
                        .containsExactlyInAnyOrderElementsOf(DEMO.programs(field.name()).stream()
                                .filter(program -> program.name().equals(plan.program()))
                                .flatMap(program -> program.passes().stream())
                                .map(pass -> pass.number())
                                .toList());
            }
        }
    }

    /** Ironweir 4L: 12 h and 60 days before harvest on its label; planned for May 30 (demo workbook, sheets terms and label_uses). */
    @Test
    void a_trip_says_its_tank_its_gear_and_who_stays_out_until_when() {
        FieldPlan plan = plan("Vine Bottom", chose("Before and after"));
        assertThat(plan.basis()).isEqualTo(FieldPlan.Basis.CHOSEN);
        assertThat(plan.sentence()).contains("chosen by L. Brandvold on Mar 5, 2026");
        FieldPlan.Step spray = plan.steps().get(3);
        assertThat(spray.passes()).containsExactly(4, 5);
        assertThat(spray.lines())
                .contains(
                        new FieldPlan.Line("Stillmeadow K", "40 fl oz/ac"),
                        new FieldPlan.Line("Saltmere AMS", "8.5 lb/100 gal"));
        FieldPlan.Put put = Objects.requireNonNull(spray.put());
        assertThat(put.spray()).contains("15 gal/ac", "coarse (C)", "Broadvane 06 at 41 psi");
        assertThat(put.entry()).isEqualTo("nobody in for 12 h, until Sun, May 31, 12:00 at the latest");
        assertThat(put.harvest()).isEqualTo("harvest Jul 29 or later (60 days before harvest)");
        assertThat(put.gear()).contains("chemical-resistant apron");
        assertThat(spray.window()).startsWith("until Jun 5, then barred: corn at V7");
        String terminal = FieldPlanWords.of(plan).replaceAll("\\s+", " ");
        assertThat(terminal)
                .contains(put.entry(), put.spray(), put.gear(), plan.moneySays().get(0));
        assertThat(Json.of(plan)).contains("\"reentry_hours\" : 12", "\"carrier_gpa\" : 15.0");
    }

    @Test
    void the_planned_day_lies_in_its_window_wherever_it_is_not_barred() {
        for (Field field : DEMO.fields()) {
            for (FieldPlan.Step step : plan(field.name(), null).steps()) {
                LocalDate day = step.date();
                FieldPlan.Window may = step.may();
                if (day != null && may != null) {
                    assertThat(may.from() == null || !may.from().isAfter(day)).isTrue();
                    assertThat(may.to() == null || !may.to().isBefore(day)).isTrue();
                }
            }
        }
    }

    @Test
    void where_none_may_be_advised_no_pass_is_listed_and_what_to_look_up_comes_first() {
        Gates gates = Gates.of(DEMO);
        for (Standing standing : List.of(Standing.BARRED, Standing.UNKNOWN)) {
            Program only = DEMO.programs().stream()
                    .filter(program -> Gates.standing(
                                    gates.check(DEMO.field(program.field()).orElseThrow(), program))
                            == standing)
                    .map(one -> new Program(one.field(), one.name(), true, one.refuge(), one.note(), one.passes()))
                    .findFirst()
                    .orElseThrow();
            Season season = DEMO.withPrograms(List.of(only));
            Field field = season.field(only.field()).orElseThrow();
            FieldAdvice advice = Adviser.adviseField(season, field, WeighingOptions.DEFAULT.withDraws(200));
            FieldPlan plan = new FieldPlans(season).of(field, null, advice, "", Optional.empty());
            assertThat(plan.program()).isNull();
            assertThat(plan.steps()).isEmpty();
            assertThat(plan.money()).isNull();
            assertThat(plan.sentence()).startsWith("Nothing to do yet.");
            assertThat(plan.first().get(0).kind())
                    .isEqualTo(standing == Standing.BARRED ? MatterKind.BARRED : MatterKind.LOOK_UP);
        }
        FieldPlan empty = new FieldPlans(DEMO.withPrograms(List.of()))
                .of(DEMO.fields().get(0), null, null, "nothing to weigh", Optional.empty());
        assertThat(empty.sentence()).contains("No program has been entered for");
    }

    @Test
    void a_chosen_program_that_is_barred_says_so_before_anything_else() {
        Gates gates = Gates.of(DEMO);
        var barred = DEMO.programs().stream()
                .filter(program ->
                        Gates.standing(gates.check(DEMO.field(program.field()).orElseThrow(), program))
                                == Standing.BARRED)
                .findFirst()
                .orElseThrow();
        FieldPlan plan = plan(barred.field(), chose(barred.name()));
        assertThat(plan.sentence()).contains("It is barred as planned: do not put it on");
        assertThat(plan.first().get(0).kind()).isEqualTo(MatterKind.BARRED);
    }

    @Test
    void what_is_clear_is_not_listed() {
        for (Field field : DEMO.fields()) {
            FieldPlan plan = plan(field.name(), null);
            assertThat(plan.keeps())
                    .allSatisfy(keep ->
                            assertThat(keep.acres() == null || keep.acres() > 0).isTrue());
            assertThat(plan.first()).noneMatch(first -> first.kind().folded());
            assertThat(plan.moneySays()).hasSizeLessThanOrEqualTo(3);
        }
    }

    @Test
    void a_field_that_cannot_be_weighed_still_has_its_chosen_passes_and_says_what_lacks() {
        Field field = DEMO.field("Vine Bottom").orElseThrow();
        FieldPlan plan =
                plans.of(field, chose("Before and after"), null, "No price of corn is entered.", Optional.empty());
        assertThat(plan.steps()).hasSize(5).anyMatch(step -> step.kind() == PassKind.HARVEST);
        assertThat(plan.moneySays()).containsExactly("What it brings is unknown: No price of corn is entered.");
        FieldPlan nothing = plans.of(field, null, null, "No price of corn is entered.", Optional.empty());
        assertThat(nothing.sentence()).isEqualTo("Nothing to do yet. No price of corn is entered.");
        FieldPlan gone = plan("Vine Bottom", chose("A program that left the season"));
        assertThat(gone.basis()).isEqualTo(FieldPlan.Basis.ADVISED);
    }
}
