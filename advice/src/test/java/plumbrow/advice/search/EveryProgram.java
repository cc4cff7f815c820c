package plumbrow.advice.search;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.PassKind;
import plumbrow.advice.program.Program;
import plumbrow.advice.program.SprayPlan;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.season.Season;

/**
 * Every program that can be made on a {@link RandomShelf}, put together from its sheets alone as the page on the search says it:
 * on each day on which a program sprays, one trip at that day's price, whatever is in its tank, or none. It shares nothing
 * with the search.
 */
final class EveryProgram {
    private static final List<Amount> RATES =
            List.of(new Amount(3, FarmUnit.FL_OZ), new Amount(6, FarmUnit.FL_OZ)); // both ends of every label there

    private final Season season;
    private final List<Program> own;
    private final List<LocalDate> days;

    /** A program with its plans; {@code key} is the same for two of the same frame and doses only. */
    record Candidate(String key, Program program, List<SprayPlan> plans) {}

    private record Put(String product, Amount rate) {}

    EveryProgram(Season season) {
        this.season = season;
        this.own = season.programs(RandomShelf.FIELD);
        this.days = own.stream()
                .flatMap(program -> program.passes().stream())
                .filter(EveryProgram::sprays)
                .map(Pass::date)
                .distinct()
                .sorted()
                .toList();
    }

    List<Candidate> all() {
        Map<String, Candidate> all = new LinkedHashMap<>();
        Set<List<Pass>> frames = new LinkedHashSet<>();
        own.forEach(program -> frames.add(frame(program)));
        for (List<Pass> frame : frames) {
            List<List<List<Put>>> made = List.of(List.of());
            for (LocalDate day : days) {
                List<List<Put>> tanks = tanks(day, seed(frame));
                made = made.stream()
                        .flatMap(before -> Stream.concat(Stream.of(List.<Put>of()), tanks.stream())
                                .map(tank -> Stream.concat(before.stream(), Stream.of(tank))
                                        .toList()))
                        .toList();
            }
            made.forEach(tanks -> {
                Candidate candidate = candidate(frame, tanks, "by hand " + all.size());
                if (all.putIfAbsent(candidate.key(), candidate) != null) {
                    throw new IllegalStateException("twice: " + candidate.key());
                }
            });
        }
        return List.copyOf(all.values());
    }

    private static List<Pass> frame(Program program) {
        return program.passes().stream()
                .filter(pass -> !sprays(pass))
                .map(pass -> pass.numbered(0))
                .toList();
    }

    private static boolean sprays(Pass pass) {
        return pass.kind() == PassKind.SPRAY;
    }

    private static String seed(List<Pass> frame) {
        return String.valueOf(frame.stream()
                .filter(pass -> pass.kind() == PassKind.SEED)
                .findFirst()
                .orElseThrow()
                .product());
    }

    /** Nothing is tried at a side of emergence, or over a seed that is up, where no program does so. */
    private List<List<Put>> tanks(LocalDate day, String seed) {
        boolean up = up(day);
        Set<String> products = new TreeSet<>();
        for (Program program : own) {
            for (Pass pass : program.passes()) {
                if (sprays(pass)
                        && up(pass.date()) == up
                        && (!up || seed(frame(program)).equals(seed))) {
                    products.add(String.valueOf(pass.product()));
                }
            }
        }
        List<Put> puts = products.stream()
                .flatMap(product -> RATES.stream().map(rate -> new Put(product, rate)))
                .toList();
        List<List<Put>> tanks = new ArrayList<>();
        for (int i = 0; i < puts.size(); i++) {
            tanks.add(List.of(puts.get(i)));
            for (int j = i + 1; j < puts.size(); j++) {
                if (!puts.get(i).product().equals(puts.get(j).product())) {
                    tanks.add(List.of(puts.get(i), puts.get(j)));
                }
            }
        }
        return tanks;
    }

    private boolean up(@Nullable LocalDate day) {
        return plans(day, "").stream().noneMatch(plan -> "PRE".equals(plan.cropStage()));
    }

    /** Plans of a day, of one product or of all. */
    private List<SprayPlan> plans(@Nullable LocalDate day, String product) {
        return own.stream()
                .flatMap(program -> program.passes().stream()
                        .filter(pass -> sprays(pass)
                                && pass.date() != null
                                && pass.date().equals(day))
                        .filter(pass -> product.isEmpty() || product.equals(pass.product()))
                        .map(pass -> season.work().sprayPlan(program, pass).orElseThrow()))
                .toList();
    }

    private @Nullable Double height(LocalDate day, String product) {
        List<SprayPlan> planned = plans(day, product).isEmpty() ? plans(day, "") : plans(day, product);
        return planned.stream()
                .map(SprayPlan::weedHeightIn)
                .filter(height -> height != null)
                .max(Double::compare)
                .orElse(null);
    }

    private Candidate candidate(List<Pass> frame, List<List<Put>> tanks, String name) {
        List<Pass> passes = new ArrayList<>();
        List<SprayPlan> plans = new ArrayList<>();
        StringBuilder key = new StringBuilder(frame.toString());
        frame.stream()
                .filter(pass -> pass.kind() == PassKind.SEED)
                .forEach(pass -> passes.add(pass.numbered(passes.size() + 1)));
        for (int d = 0; d < days.size(); d++) {
            LocalDate day = days.get(d);
            double charge = RandomShelf.tripUsdPerAcre(day);
            for (Put put : tanks.get(d)) {
                int number = passes.size() + 1;
                passes.add(new Pass(
                        number,
                        PassKind.SPRAY,
                        day,
                        put.product(),
                        put.rate(),
                        100,
                        charge,
                        new Distribution.Fixed(0),
                        0));
                charge = 0;
                plans.add(plans(day, "")
                        .get(0)
                        .overWeeds(height(day, put.product()))
                        .forPass(RandomShelf.FIELD, name, number, tanks.get(d).size() > 1 ? "day " + d : null));
                key.append(' ').append(day).append(put);
            }
        }
        frame.stream()
                .filter(pass -> pass.kind() == PassKind.HARVEST)
                .forEach(pass -> passes.add(pass.numbered(passes.size() + 1)));
        return new Candidate(
                key.toString(),
                new Program(RandomShelf.FIELD, name, false, own.get(0).refuge(), "", passes),
                plans);
    }
}
