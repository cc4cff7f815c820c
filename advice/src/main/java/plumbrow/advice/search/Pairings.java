package plumbrow.advice.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.field.Field;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.PassKind;
import plumbrow.advice.program.Program;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.Ask;
import plumbrow.advice.shelf.Control;
import plumbrow.advice.shelf.LabelUse;
import plumbrow.advice.shelf.Product;
import plumbrow.advice.shelf.ProductKind;

/**
 * Which products the season's programs put on at which side of emergence over which seed.
 *
 * <p>Control rows do not say at which time they hold, and the book does not say which hybrid stands which herbicide. So a
 * product is tried at a side of emergence, and after emergence over a seed, only where a program of the season already
 * plans it so: the adviser has then judged both.
 */
final class Pairings {
    private final Season season;
    private final Field field;
    private final Set<Use> seen;
    private final Map<Side, Distribution> injuries = new LinkedHashMap<>();
    private final Map<String, List<Amount>> planned = new TreeMap<>();

    private record Side(PassKind kind, boolean after, String product) {}

    private record Use(Side side, String seed) {}

    Pairings(Season season, Field field) {
        this.season = season;
        this.field = field;
        this.seen = seen();
    }

    /** Whether a pass puts on what the search may choose. */
    static boolean searched(Season season, Pass pass) {
        return pass.product() != null
                && season.shelf()
                        .product(pass.product())
                        .map(Product::kind)
                        .filter(kind -> kind == ProductKind.HERBICIDE || kind == ProductKind.INSECTICIDE)
                        .isPresent();
    }

    private Set<Use> seen() {
        Set<Use> uses = new HashSet<>();
        Set<String> alike = season.fields().stream()
                .filter(other -> other.crop() == field.crop())
                .map(Field::name)
                .collect(Collectors.toSet());
        for (Program program : season.programs()) {
            if (alike.contains(program.field())) {
                for (Pass pass : program.passes()) {
                    if (searched(season, pass) && pass.trigger() == null) {
                        add(program, pass, uses);
                    }
                }
            }
        }
        return uses;
    }

    private void add(Program program, Pass pass, Set<Use> uses) {
        String product = String.valueOf(pass.product());
        Side side = new Side(
                pass.kind(),
                Way.afterEmergence(season.work().sprayPlan(program, pass).orElse(null)),
                product);
        injuries.putIfAbsent(side, pass.injuryPct());
        if (pass.rate() != null) {
            planned.computeIfAbsent(product, name -> new ArrayList<>()).add(pass.rate());
        }
        seeds(program.passes()).forEach(seed -> uses.add(new Use(side, seed)));
    }

    static Set<String> seeds(List<Pass> passes) {
        return passes.stream()
                .filter(pass -> pass.kind() == PassKind.SEED && pass.product() != null)
                .map(pass -> String.valueOf(pass.product()))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** Products that may go into a window, sprayed in one of its ways, over a frame's seed, by name. */
    List<String> products(Window window, Way way, Frame frame) {
        return seen.stream()
                .filter(use -> use.side().kind() == window.kind() && use.side().after() == way.afterEmergence())
                .filter(use -> !way.afterEmergence() || frame.seeds().contains(use.seed()))
                .map(use -> use.side().product())
                .filter(this::worksHere)
                .distinct()
                .sorted()
                .toList();
    }

    /** Products that some program puts into such a window, but none over this frame's seed. */
    List<String> notOver(Window window, Way way, Frame frame) {
        List<String> over = products(window, way, frame);
        return seen.stream()
                .filter(use -> use.side().kind() == window.kind() && use.side().after() == way.afterEmergence())
                .map(use -> use.side().product())
                .filter(this::worksHere)
                .filter(product -> !over.contains(product))
                .distinct()
                .sorted()
                .toList();
    }

    /** Whether the book says that it works on anything that presses on the field. */
    private boolean worksHere(String product) {
        Set<String> pests = season.pests().weeds().stream()
                .filter(weed -> weed.field().equals(field.name()))
                .map(weed -> weed.weed())
                .collect(Collectors.toCollection(TreeSet::new));
        season.pests().insects().stream()
                .filter(insect -> insect.field().equals(field.name()))
                .forEach(insect -> pests.add(insect.insect()));
        return season.shelf().controls().stream()
                .anyMatch(row -> row.product().equals(product) && pests.contains(row.pest()));
    }

    /**
     * The rates tried: both ends of the label, and between them (below the lower end where the label does not forbid it)
     * each rate that the control rows know or a program plans.
     */
    List<Amount> rates(String product) {
        Optional<LabelUse> use = season.shelf().labelUse(product, field.crop());
        Amount low = use.map(LabelUse::lowRate).orElse(null);
        Amount high = use.map(LabelUse::highRate).orElse(null);
        if (low == null || high == null) {
            return List.of();
        }
        double least = use.get().lessForbidden() == Ask.NO ? 0 : low.inBase();
        Map<Long, Amount> rates = new TreeMap<>();
        List<Amount> asked = new ArrayList<>(List.of(low, high));
        season.shelf().controls().stream()
                .filter(row -> row.product().equals(product))
                .map(Control::rate)
                .forEach(asked::add);
        asked.addAll(planned.getOrDefault(product, List.of()));
        asked.stream()
                .filter(rate -> rate.comparableWith(low))
                .filter(rate -> rate.inBase() >= least * (1 - 1e-9) && rate.inBase() <= high.inBase() * (1 + 1e-9))
                .forEach(rate -> rates.putIfAbsent(Math.round(rate.inBase() * 1e9), rate));
        return rates.values().stream()
                .sorted(Comparator.comparingDouble(Amount::inBase))
                .toList();
    }

    Distribution injury(Window window, Way way, String product) {
        return injuries.getOrDefault(new Side(window.kind(), way.afterEmergence(), product), new Distribution.Fixed(0));
    }
}
