package plumbrow.advice.records;

import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.done.DoneWork;
import plumbrow.advice.field.Field;
import plumbrow.advice.gates.Finding;
import plumbrow.advice.gates.Gates;
import plumbrow.advice.gates.Standing;
import plumbrow.advice.land.Acres;
import plumbrow.advice.program.Done;
import plumbrow.advice.program.MeantPass;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.PassKind;
import plumbrow.advice.program.Program;
import plumbrow.advice.program.RefugePlan;
import plumbrow.advice.program.SprayPlan;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.Dimension;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.Ask;
import plumbrow.advice.shelf.Droplets;
import plumbrow.advice.shelf.Method;
import plumbrow.advice.shelf.Product;
import plumbrow.advice.shelf.UseTerms;
import plumbrow.science.figure.Numbers;

/**
 * What is asked back before a record is kept. What the labels bar is asked of the same checks that the plan was held to: the record is
 * held to them as a program of its own, together with what the log has of the season.
 */
public final class RecordQuestions {
    /** Checks of the law and of people that speak of what was put on; those of the plan and of the next crop don't. */
    private static final Set<String> ASKED = Set.of(
            "crop-on-label",
            "registered-in-state",
            "county",
            "label-rate",
            "soil-rate",
            "applications",
            "days-between",
            "product-season-maximum",
            "active-season-maximum",
            "growth-stage",
            "method",
            "carrier-volume",
            "droplet-class",
            "boom-height",
            "tank-mix",
            "chemigation",
            "restricted-use");

    private static final String AS_DONE = "as done";
    private static final double LABEL_SETS_NONE = 999;
    private static final double OFF_PCT = 5;
    private static final Duration LONGEST = Duration.ofHours(24);

    private final Season season;
    private final Field field;
    private final ApplicationRecord record;
    private final List<Done> before;
    private final List<Done> wrong;
    private final List<RecordQuestion> questions = new ArrayList<>();

    private RecordQuestions(Season season, Field field, ApplicationRecord record, List<Done> wrong) {
        this.season = season;
        this.field = field;
        this.record = record;
        this.wrong = wrong;
        List<Done> lines = new ArrayList<>(season.work().log(field.name()));
        wrong.forEach(line -> lines.stream()
                .filter(one -> one.meaning(null).equals(line.meaning(null)))
                .findFirst()
                .ifPresent(lines::remove));
        this.before = lines;
    }

    /**
     * What is asked back of a record.
     *
     * @param season with what the log has of the field
     * @param wrong lines of a record that this one corrects: they no longer count
     */
    public static List<RecordQuestion> of(Season season, Field field, ApplicationRecord record, List<Done> wrong) {
        RecordQuestions of = new RecordQuestions(season, field, record, wrong);
        of.amounts();
        of.times();
        of.labels();
        of.weather();
        of.twice();
        return List.copyOf(of.questions);
    }

    private void ask(String key, String says) {
        questions.add(new RecordQuestion(key, says));
    }

    private void amounts() {
        for (RecordedProduct one : record.products()) {
            double off = one.offPct(record.acres());
            if (Math.abs(off) > RecordedProduct.ROUNDING_PCT) {
                Amount reckoned = one.rate().comparableWith(one.total())
                        ? RecordedProduct.total(one.rate(), record.acres(), one.total())
                        : new Amount(
                                one.rate().value() * record.acres(), one.rate().unit());
                ask(
                        "total",
                        one.product() + ": " + one.total().text() + " in all were written down; "
                                + one.rate().text() + "/ac on " + acres(record.acres()) + " ac are "
                                + Numbers.read(reckoned.value(), reckoned.unit().symbol()) + ".");
            }
            Amount there = season.shelf()
                    .product(one.product())
                    .map(Product::onHand)
                    .map(left -> withBack(left, one.product()))
                    .orElse(null);
            if (there != null
                    && there.comparableWith(one.total())
                    && one.total().inBase() > there.inBase() * (1 + 1e-9)) {
                ask(
                        "stock",
                        one.product() + ": " + one.total().text() + " were used, and only " + there.text()
                                + " were on hand by the book. The stock then counts as empty.");
            }
        }
        if (record.acres() > field.acres() * (1 + 1e-9)) {
            ask(
                    "acres",
                    acres(record.acres()) + " ac were treated; " + field.name() + " has " + acres(field.acres())
                            + " ac.");
        }
        Double volume = number(RecordItem.CARRIER_GPA);
        Double spray = number(RecordItem.SPRAY_GAL);
        if (volume != null && spray != null && Math.abs(spray / (volume * record.acres()) - 1) * 100 > OFF_PCT) {
            ask(
                    "spray",
                    Numbers.read(spray) + " gal of spray were written down; " + Numbers.read(volume) + " gal/ac on "
                            + acres(record.acres()) + " ac are " + Numbers.read(volume * record.acres()) + " gal.");
        }
        record.item(RecordItem.OUTLINE)
                .flatMap(Corners::boundary)
                .map(Acres::inside)
                .filter(drawn -> Math.abs(record.acres() / drawn - 1) * 100 > OFF_PCT)
                .ifPresent(drawn -> ask(
                        "outline",
                        "The corners written down hold " + acres(drawn) + " ac; " + acres(record.acres())
                                + " ac were treated."));
    }

    /** What is on hand with what the record that is put right took. */
    private Amount withBack(Amount left, String product) {
        double back = wrong.stream()
                .filter(line -> line.product().equals(product) && line.rate().comparableWith(left))
                .mapToDouble(line -> line.rate().in(left.unit()).value() * field.acres() * line.sharePct() / 100)
                .sum();
        return new Amount(left.value() + back, left.unit());
    }

    private void times() {
        if (record.start() != null && record.end() != null) {
            Duration took = Duration.between(record.start(), record.end());
            if (took.compareTo(LONGEST) > 0) {
                ask("long", "It took " + took.toHours() + " h. A job over several days is a record for each day.");
            }
        }
    }

    private void labels() {
        Map<String, List<String>> barred = new LinkedHashMap<>();
        for (Finding finding : Gates.check(asDone(), field, program())) {
            if (finding.standing() == Standing.BARRED && ASKED.contains(finding.gate())) {
                barred.computeIfAbsent(finding.gate(), gate -> new ArrayList<>())
                        .add(subject(finding) + ": " + finding.says()
                                + (finding.source().isEmpty() ? "" : " (" + finding.source() + ")"));
            }
        }
        barred.forEach((gate, says) -> ask(gate, says.stream().distinct().collect(Collectors.joining(" "))));
    }

    /** "Ironweir 4L" of "pass 1, Ironweir 4L": the record has no passes. */
    private static String subject(Finding finding) {
        return finding.subject().replaceFirst("^pass \\d+, ", "");
    }

    /** The season with what went on before taken for applications of their own: none of them is this one. */
    private Season asDone() {
        List<Done> log = new ArrayList<>(season.work().log().stream()
                .filter(line -> !line.field().equals(field.name()))
                .toList());
        before.forEach(line -> log.add(line.meaning(MeantPass.NONE)));
        List<SprayPlan> plans = new ArrayList<>();
        for (int number = 1; number <= record.products().size(); number++) {
            plans.add(plan(number));
        }
        return season.withPrograms(
                season.programs(), season.work().withSprayPlans(plans).withLog(log));
    }

    private Program program() {
        List<Pass> passes = new ArrayList<>();
        for (RecordedProduct one : record.products()) {
            passes.add(new Pass(
                    passes.size() + 1,
                    kind(one),
                    record.date(),
                    one.product(),
                    one.rate(),
                    record.sharePct(),
                    0,
                    new Distribution.Fixed(0),
                    0));
        }
        return new Program(field.name(), AS_DONE, false, new RefugePlan(null, null), "", passes);
    }

    private PassKind kind(RecordedProduct one) {
        return DoneWork.meantPass(season, record.lines().get(record.products().indexOf(one)))
                .map(Pass::kind)
                .orElse(
                        one.rate().unit().dimension() == Dimension.MASS
                                        && record.item(RecordItem.CARRIER_GPA).isEmpty()
                                ? PassKind.GRANULE
                                : PassKind.SPRAY);
    }

    private SprayPlan plan(int number) {
        return new SprayPlan(
                field.name(),
                AS_DONE,
                number,
                record.products().size() > 1 ? "one tank" : null,
                word(RecordItem.METHOD, Method.values(), Method::word),
                number(RecordItem.CARRIER_GPA),
                word(RecordItem.DROPLETS, Droplets.values(), Droplets::word),
                number(RecordItem.BOOM),
                null,
                record.items().get(RecordItem.STAGE),
                null,
                null,
                Ask.UNKNOWN,
                record.items().get(RecordItem.APPLICATOR));
    }

    private <T> @Nullable T word(RecordItem item, T[] all, Function<T, String> word) {
        Optional<String> said = record.item(item);
        for (T one : all) {
            if (said.filter(word.apply(one)::equals).isPresent()) {
                return one;
            }
        }
        return null;
    }

    private @Nullable Double number(RecordItem item) {
        return record.item(item).map(Double::valueOf).orElse(null);
    }

    private void weather() {
        for (RecordedProduct one : record.products()) {
            UseTerms terms =
                    season.shelf().labels().terms(one.product(), field.crop()).orElse(null);
            if (terms == null) {
                continue;
            }
            over("wind", one, RecordItem.WIND_START, terms.windHighestMph(), "mph of wind at most");
            over("wind", one, RecordItem.WIND_END, terms.windHighestMph(), "mph of wind at most");
            under("wind", one, RecordItem.WIND_START, terms.windLowestMph(), "mph of wind at least");
            under("wind", one, RecordItem.WIND_END, terms.windLowestMph(), "mph of wind at least");
            over("heat", one, RecordItem.TEMPERATURE_START, terms.warmestF(), "°F at most");
            over("heat", one, RecordItem.TEMPERATURE_END, terms.warmestF(), "°F at most");
        }
    }

    private void over(String key, RecordedProduct one, RecordItem item, @Nullable Double limit, String words) {
        Double found = number(item);
        if (found != null && limit != null && limit < LABEL_SETS_NONE && found > limit) {
            ask(key, against(one, item, found, limit, words));
        }
    }

    private void under(String key, RecordedProduct one, RecordItem item, @Nullable Double limit, String words) {
        Double found = number(item);
        if (found != null && limit != null && found < limit) {
            ask(key, against(one, item, found, limit, words));
        }
    }

    private static String against(RecordedProduct one, RecordItem item, double found, double limit, String words) {
        return item.label() + ": " + Numbers.read(found) + " " + item.form().unit() + "; the label of " + one.product()
                + " says " + Numbers.read(limit) + " " + words + ".";
    }

    private void twice() {
        LocalDate day = record.date();
        for (RecordedProduct one : record.products()) {
            boolean there = before.stream()
                    .anyMatch(line -> line.date().equals(day)
                            && line.product().equals(one.product())
                            && line.rate().equals(one.rate()));
            if (there) {
                ask(
                        "twice",
                        "The log has " + one.product() + ", " + one.rate().text() + "/ac on " + field.name() + " on "
                                + day + " already. Written down again it counts as a second application.");
            }
        }
    }

    private static String acres(double acres) {
        return Numbers.fixed(acres, 1);
    }
}
