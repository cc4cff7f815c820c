package plumbrow.bench;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.course.Course;
import plumbrow.advice.course.Pass;
import plumbrow.advice.course.PassKind;
import plumbrow.advice.course.RefugePlan;
import plumbrow.advice.outlook.Law;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.FarmUnit;

/** The candidate courses of a field, from bare to everything at once. */
final class BenchCourses {
    static final int MOST = 6;
    private static final LocalDate PLANTING = LocalDate.of(2026, 5, 1);
    private static final Law NO_INJURY = new Law.Fixed(0);

    private final List<Pass> passes = new ArrayList<>();

    private BenchCourses() {}

    /** All of them; the first is the baseline. */
    static List<Course> of(String field) {
        return List.of(
                course(
                        field,
                        "plain",
                        true,
                        new BenchCourses().plant(BenchShelf.PLAIN, 100).early()),
                course(
                        field,
                        "plain and insecticide",
                        false,
                        new BenchCourses()
                                .plant(BenchShelf.PLAIN, 100)
                                .insecticide(6, 100)
                                .early()),
                course(
                        field,
                        "one trait",
                        false,
                        new BenchCourses().plant(BenchShelf.SINGLE, 100).early().late()),
                course(
                        field,
                        "two traits",
                        false,
                        new BenchCourses()
                                .plant(BenchShelf.PYRAMID, 100)
                                .early()
                                .late()),
                course(
                        field,
                        "two lots and half a spray",
                        false,
                        new BenchCourses()
                                .plant(BenchShelf.PYRAMID, 80)
                                .plant(BenchShelf.PLAIN, 20)
                                .insecticide(4.5, 60)
                                .early()
                                .late()),
                course(
                        field,
                        "everything",
                        false,
                        new BenchCourses()
                                .plant(BenchShelf.SINGLE, 100)
                                .insecticide(6, 100)
                                .tillage()
                                .early()
                                .late()));
    }

    /** One course of ten passes, seven of them with a labelled product. */
    static Course ofTenPasses(String field) {
        BenchCourses passes = new BenchCourses().tillage().plant(BenchShelf.PYRAMID, 100);
        for (int i = 0; i < 3; i++) {
            passes.early().late();
        }
        return course(field, "ten passes", true, passes.insecticide(6, 100));
    }

    private static Course course(String field, String name, boolean baseline, BenchCourses passes) {
        return new Course(field, name, baseline, new RefugePlan(null, null), "", passes.harvested());
    }

    private BenchCourses plant(String seed, double sharePct) {
        return pass(PassKind.SEED, PLANTING, seed, new Amount(34_000, FarmUnit.SEEDS), sharePct, NO_INJURY, 0);
    }

    private BenchCourses insecticide(double flOz, double sharePct) {
        Amount rate = new Amount(flOz, FarmUnit.FL_OZ);
        return pass(PassKind.SPRAY, PLANTING, BenchShelf.INSECTICIDE, rate, sharePct, NO_INJURY, 0);
    }

    private BenchCourses early() {
        Amount rate = new Amount(20, FarmUnit.FL_OZ);
        return pass(PassKind.SPRAY, PLANTING.plusDays(1), BenchShelf.EARLY, rate, 100, new Law.Pert(0, 0.2, 1), 0);
    }

    private BenchCourses late() {
        Amount rate = new Amount(3, FarmUnit.FL_OZ);
        return pass(PassKind.SPRAY, PLANTING.plusDays(35), BenchShelf.LATE, rate, 100, new Law.Pert(0, 0.5, 3), 0);
    }

    private BenchCourses tillage() {
        return pass(PassKind.TILLAGE, PLANTING.minusDays(3), null, null, 100, NO_INJURY, 2);
    }

    private BenchCourses pass(
            PassKind kind,
            LocalDate date,
            @Nullable String product,
            @Nullable Amount rate,
            double sharePct,
            Law injury,
            double delayDays) {
        passes.add(new Pass(passes.size() + 1, kind, date, product, rate, sharePct, 8, injury, delayDays));
        return this;
    }

    private List<Pass> harvested() {
        return pass(PassKind.HARVEST, LocalDate.of(2026, 10, 10), null, null, 100, NO_INJURY, 0).passes;
    }
}
