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
import plumbrow.advice.course.Course;
import plumbrow.advice.course.Pass;
import plumbrow.advice.course.PassKind;
import plumbrow.advice.course.SprayPlan;
import plumbrow.advice.outlook.Law;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.season.Season;

/**
 * Every course that can be made on a {@link RandomShelf}, put together from its sheets alone as the page on the search says it:
 * on each day on which a course sprays, one trip at that day's price, whatever is in its tank, or none. It shares nothing
 * with the search.
 */
final class EveryProgram {
    private static final List<Amount> RATES =
            List.of(new Amount(3, FarmUnit.FL_OZ), new Amount(6, FarmUnit.FL_OZ)); // both ends of every label there

    private final Season season;
    private final List<Course> own;
    private final List<LocalDate> days;

    /** A course with its plans; {@code key} is the same for two of the same frame and doses only. */
    record Program(String key, Course course, List<SprayPlan> plans) {}

    private record Put(String product, Amount rate) {}

    EveryProgram(Season season) {
        this.season = season;
        this.own = season.courses(RandomShelf.FIELD);
        this.days = own.stream()
                .flatMap(course -> course.passes().stream())
                .filter(EveryProgram::sprays)
                .map(Pass::date)
                .distinct()
                .sorted()
                .toList();
    }

    List<Program> all() {
        Map<String, Program> all = new LinkedHashMap<>();
        Set<List<Pass>> frames = new LinkedHashSet<>();
        own.forEach(course -> frames.add(frame(course)));
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
                Program program = program(frame, tanks, "by hand " + all.size());
                if (all.putIfAbsent(program.key(), program) != null) {
                    throw new IllegalStateException("twice: " + program.key());
                }
            });
        }
        return List.copyOf(all.values());
    }

    private static List<Pass> frame(Course course) {
        return course.passes().stream()
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

    /** Nothing is tried at a side of emergence, or over a seed that is up, where no course does so. */
    private List<List<Put>> tanks(LocalDate day, String seed) {
        boolean up = up(day);
        Set<String> products = new TreeSet<>();
        for (Course course : own) {
            for (Pass pass : course.passes()) {
                if (sprays(pass)
                        && up(pass.date()) == up
                        && (!up || seed(frame(course)).equals(seed))) {
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
                .flatMap(course -> course.passes().stream()
                        .filter(pass -> sprays(pass)
                                && pass.date() != null
                                && pass.date().equals(day))
                        .filter(pass -> product.isEmpty() || product.equals(pass.product()))
                        .map(pass -> season.work().sprayPlan(course, pass).orElseThrow()))
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

    private Program program(List<Pass> frame, List<List<Put>> tanks, String name) {
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
                        number, PassKind.SPRAY, day, put.product(), put.rate(), 100, charge, new Law.Fixed(0), 0));
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
        return new Program(
                key.toString(),
                new Course(RandomShelf.FIELD, name, false, own.get(0).refuge(), "", passes),
                plans);
    }
}
