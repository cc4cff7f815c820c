package plumbrow.advice.planting;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.PassKind;
import plumbrow.advice.program.Program;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.ProductKind;
import plumbrow.advice.stand.StandCount;

/**
 * Which seed of a program stands on which acres in the end. Where a stand was counted, a seed pass after that day replants its
 * share of the acres, and the seed that stood there is gone from them; the rest keeps the stand that was counted.
 *
 * @param standing the crop planted first, each lot with its share of the field [0 to 1]
 * @param replanted what was planted over it
 */
public record Planting(List<Lot> standing, List<Lot> replanted) {
    public Planting {
        standing = List.copyOf(standing);
        replanted = List.copyOf(replanted);
    }

    /**
     * One seed lot.
     *
     * @param pass the pass that plants it
     * @param share of the field's acres on which it stands in the end [0 to 1]
     */
    public record Lot(Pass pass, double share) {}

    /** The seed lots of a program, in the order of its passes. Shares may sum to anything: the weighing refuses what isn't whole. */
    public static Planting of(Season season, Program program) {
        Optional<StandCount> count = season.work().stand(program.field());
        List<Pass> first = new ArrayList<>();
        List<Pass> again = new ArrayList<>();
        program.passes().stream()
                .sorted(Comparator.comparingInt(Pass::number))
                .filter(pass -> plants(season, pass))
                .forEach(pass -> (replants(pass, count) ? again : first).add(pass));
        double gone = again.stream().mapToDouble(Pass::sharePct).sum() / 100;
        return new Planting(lots(first, Math.max(0, 1 - gone)), lots(again, 1));
    }

    /** All lots that stand on some acres in the end. */
    public List<Lot> lots() {
        List<Lot> lots = new ArrayList<>(standing);
        lots.addAll(replanted);
        return lots.stream().filter(lot -> lot.share() > 0).toList();
    }

    /** Share of the field that is replanted [0 to 1]. */
    public double replantedShare() {
        return replanted.stream().mapToDouble(Lot::share).sum();
    }

    /** The day on which most of the crop that stands in the end was planted; empty where no pass says. */
    public Optional<LocalDate> day() {
        return (replantedShare() > 0.5 ? replanted : standing)
                .stream()
                        .flatMap(lot -> Optional.ofNullable(lot.pass().date()).stream())
                        .min(LocalDate::compareTo);
    }

    private static List<Lot> lots(List<Pass> passes, double left) {
        return passes.stream()
                .map(pass -> new Lot(pass, pass.sharePct() / 100 * left))
                .toList();
    }

    private static boolean replants(Pass pass, Optional<StandCount> count) {
        LocalDate day = pass.date();
        return day != null && count.isPresent() && day.isAfter(count.get().counted());
    }

    /** Whether a pass puts seed in the ground; a treatment that rides on the seed does not. */
    private static boolean plants(Season season, Pass pass) {
        return pass.kind() == PassKind.SEED
                && (pass.product() == null
                        || season.shelf()
                                .product(pass.product())
                                .map(product -> product.kind() != ProductKind.SEED_TREATMENT)
                                .orElse(true));
    }
}
