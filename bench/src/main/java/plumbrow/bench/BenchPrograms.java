package plumbrow.bench;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.PassKind;
import plumbrow.advice.program.Program;
import plumbrow.advice.program.RefugePlan;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.FarmUnit;

/** The candidate programs of a field, from bare to everything at once. */
final class BenchPrograms {
    static final int MOST = 6;
    private static final LocalDate PLANTING = LocalDate.of(2026, 5, 1);
    private static final Distribution NO_INJURY = new Distribution.Fixed(0);

    private final List<Pass> passes = new ArrayList<>();

    private BenchPrograms() {}

    /** All of them; the first is the baseline. */
    static List<Program> of(String field) {
        return List.of(
                program(
                        field,
                        "plain",
                        true,
                        new BenchPrograms().plant(BenchShelf.PLAIN, 100).early()),
                program(
                        field,
                        "plain and insecticide",
                        false,
                        new BenchPrograms()
                                .plant(BenchShelf.PLAIN, 100)
                                .insecticide(6, 100)
                                .early()),
                program(
                        field,
                        "one trait",
                        false,
                        new BenchPrograms()
                                .plant(BenchShelf.SINGLE, 100)
                                .early()
                                .late()),
                program(
                        field,
                        "two traits",
                        false,
                        new BenchPrograms()
                                .plant(BenchShelf.PYRAMID, 100)
                                .early()
                                .late()),
                program(
                        field,
                        "two lots and half a spray",
                        false,
                        new BenchPrograms()
                                .plant(BenchShelf.PYRAMID, 80)
                                .plant(BenchShelf.PLAIN, 20)
                                .insecticide(4.5, 60)
                                .early()
                                .late()),
                program(
                        field,
                        "everything",
                        false,
                        new BenchPrograms()
                                .plant(BenchShelf.SINGLE, 100)
                                .insecticide(6, 100)
                                .tillage()
                                .early()
                                .late()));
    }

    /** One program of ten passes, seven of them with a labelled product. */
    static Program ofTenPasses(String field) {
        BenchPrograms passes = new BenchPrograms().tillage().plant(BenchShelf.PYRAMID, 100);
        for (int i = 0; i < 3; i++) {
            passes.early().late();
        }
        return program(field, "ten passes", true, passes.insecticide(6, 100));
    }

    private static Program program(String field, String name, boolean baseline, BenchPrograms passes) {
        return new Program(field, name, baseline, new RefugePlan(null, null), "", passes.harvested());
    }

    private BenchPrograms plant(String seed, double sharePct) {
        return pass(PassKind.SEED, PLANTING, seed, new Amount(34_000, FarmUnit.SEEDS), sharePct, NO_INJURY, 0);
    }

    private BenchPrograms insecticide(double flOz, double sharePct) {
        Amount rate = new Amount(flOz, FarmUnit.FL_OZ);
        return pass(PassKind.SPRAY, PLANTING, BenchShelf.INSECTICIDE, rate, sharePct, NO_INJURY, 0);
    }

    private BenchPrograms early() {
        Amount rate = new Amount(20, FarmUnit.FL_OZ);
        return pass(
                PassKind.SPRAY, PLANTING.plusDays(1), BenchShelf.EARLY, rate, 100, new Distribution.Pert(0, 0.2, 1), 0);
    }

    private BenchPrograms late() {
        Amount rate = new Amount(3, FarmUnit.FL_OZ);
        return pass(
                PassKind.SPRAY, PLANTING.plusDays(35), BenchShelf.LATE, rate, 100, new Distribution.Pert(0, 0.5, 3), 0);
    }

    private BenchPrograms tillage() {
        return pass(PassKind.TILLAGE, PLANTING.minusDays(3), null, null, 100, NO_INJURY, 2);
    }

    private BenchPrograms pass(
            PassKind kind,
            LocalDate date,
            @Nullable String product,
            @Nullable Amount rate,
            double sharePct,
            Distribution injury,
            double delayDays) {
        passes.add(new Pass(passes.size() + 1, kind, date, product, rate, sharePct, 8, injury, delayDays));
        return this;
    }

    private List<Pass> harvested() {
        return pass(PassKind.HARVEST, LocalDate.of(2026, 10, 10), null, null, 100, NO_INJURY, 0).passes;
    }
}
