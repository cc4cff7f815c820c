package plumbrow.app.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.LongStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.field.Farm;
import plumbrow.advice.program.Done;
import plumbrow.advice.program.MeantPass;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.PassKind;
import plumbrow.advice.program.Program;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.season.Season;
import plumbrow.advice.season.Work;
import plumbrow.app.RandomSeason;
import plumbrow.app.SmallSeason;

/** What every book keeps to, whatever database it stands in. A database passes by extending this. */
@SuppressWarnings("NullAway.Init")
abstract class BookContract {
    @TempDir
    Path folder;

    private Book book;

    /** A new, empty book. */
    abstract Book fresh();

    /** The same book, opened once more. */
    abstract Book again();

    @BeforeEach
    void open() {
        book = fresh();
    }

    @AfterEach
    void close() {
        book.close();
    }

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 60);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void anySeasonComesOutAsItWentIn(long seed) {
        Season season = RandomSeason.of(2027, seed);
        book.put(season);
        try (Book other = again()) {
            assertThat(other.season(2027)).as("seed %d", seed).contains(season);
            assertThat(other.check()).as("seed %d", seed).isEmpty();
        }
    }

    @Test
    void everyFormOfDistributionIsKept() {
        List<Distribution> distributions = List.of(
                new Distribution.Fixed(0.1),
                new Distribution.Pert(1, 2, 3),
                new Distribution.Triangular(1, 2, 3),
                new Distribution.Even(1, 2),
                new Distribution.Normal(5, 0.1),
                new Distribution.Weibull(190, 0.15),
                new Distribution.Lognormal(4.4, 0.25, 0.7),
                new Distribution.Factor(5, 0.8),
                new Distribution.LogOdds(0.85, 0.95),
                new Distribution.Past(List.of(170.0, 182.0, 182.0)),
                new Distribution.Chance(0.3));
        assertThat(distributions.stream().map(Object::getClass))
                .containsExactlyInAnyOrder(Distribution.class.getPermittedSubclasses());
        Distributions numbered = new Distributions();
        distributions.forEach(numbered::number);
        Distributions read = Distributions.of(numbered.shapes(), numbered.pastValues());
        for (int number = 1; number <= distributions.size(); number++) {
            assertThat(read.distribution(number)).isEqualTo(distributions.get(number - 1));
        }
    }

    @Test
    void anEmptyBookHasNoSeason() {
        assertThat(book.seasons()).isEmpty();
        assertThat(book.season(2027)).isEmpty();
        assertThat(book.latestSeason()).isEmpty();
        assertThat(book.check()).isEmpty();
    }

    @Test
    void seasonsStandByYear() {
        book.put(SmallSeason.of(2028));
        book.put(SmallSeason.of(2026));
        assertThat(book.seasons()).containsExactly(2026, 2028);
        assertThat(book.latestSeason()).contains(SmallSeason.of(2028));
        assertThat(book.season(2026)).contains(SmallSeason.of(2026));
        assertThat(book.season(2027)).isEmpty();
    }

    @Test
    void puttingReplacesThatYearAlone() {
        Season other = RandomSeason.of(2026, 7);
        book.put(other);
        book.put(RandomSeason.of(2027, 8));
        book.put(SmallSeason.of(2027));
        assertThat(book.season(2027)).contains(SmallSeason.of(2027));
        assertThat(book.season(2026)).contains(other);
    }

    @Test
    void aSeasonThatDoesNotHoldTogetherLeavesTheBookAsItWas() {
        Season good = SmallSeason.of(2027);
        book.put(good);
        Season twoFarmsOfOneName =
                with(good, List.of(good.farms().get(0), good.farms().get(0)));
        Season withoutItsFarm = with(good, List.of(new Farm("Elsewhere", "R. Alder", 1, 1)));
        Season notANumber = with(good, List.of(new Farm("Alder Home", "R. Alder", Double.NaN, 1)));
        assertThatThrownBy(() -> book.put(twoFarmsOfOneName))
                .isInstanceOf(BookException.class)
                .hasMessageContaining("twice");
        assertThatThrownBy(() -> book.put(withoutItsFarm))
                .isInstanceOf(BookException.class)
                .hasMessageContaining("names a farm, field, product, program, pass or person");
        assertThatThrownBy(() -> book.put(notANumber))
                .isInstanceOf(BookException.class)
                .hasMessageContaining("farm is NaN");
        assertThat(book.season(2027)).contains(good);
        assertThat(book.check()).isEmpty();
    }

    @Test
    void choicesAreAddedAndOutliveTheirSeason() {
        book.put(SmallSeason.of(2027));
        Choice first = choice("half rate", 0.7, 512.25);
        Choice second = choice("seed alone", null, null);
        book.choose(first);
        book.choose(second);
        book.put(RandomSeason.of(2027, 3));
        assertThat(book.choices(2027)).containsExactly(first, second);
        assertThat(book.choices(2026)).isEmpty();
    }

    @Test
    void aChoiceNamesAProgramOfTheSeason() {
        book.put(SmallSeason.of(2027));
        assertThatThrownBy(() -> book.choose(choice("no such program", null, null)))
                .isInstanceOf(BookException.class)
                .hasMessage("The season 2027 has no program 'no such program' for the field 'North 80'.");
        assertThat(book.choices(2027)).isEmpty();
    }

    @Test
    void twoWritersLoseNothing() throws Exception {
        book.put(SmallSeason.of(2027));
        int each = 25;
        try (Book other = again()) {
            ExecutorService desks = Executors.newFixedThreadPool(4);
            List<Callable<Integer>> writers = List.of(
                    () -> chooseOften(book, "a", each),
                    () -> chooseOften(other, "b", each),
                    () -> putOften(book, 2030, each),
                    () -> putOften(other, 2031, each));
            for (Future<Integer> done : desks.invokeAll(writers)) {
                assertThat(done.get()).isEqualTo(each);
            }
            desks.shutdown();
        }
        for (String who : List.of("a", "b")) {
            assertThat(book.choices(2027).stream()
                            .filter(choice -> choice.who().equals(who))
                            .map(Choice::why))
                    .containsExactlyElementsOf(counted(each));
        }
        for (int year : List.of(2030, 2031)) {
            Season last = RandomSeason.of(year, each - 1);
            Season kept = book.season(year).orElseThrow();
            assertThat(kept.programs()).isEqualTo(last.programs());
            assertThat(kept.work().log()).containsAll(last.work().log());
        }
        assertThat(book.check()).isEmpty();
    }

    @Test
    void aBackupIsTheBookOfThatMoment() {
        book.put(SmallSeason.of(2027));
        book.choose(choice("half rate", 0.7, 512.25));
        Path copy = folder.resolve("copy.book");
        book.backup(copy);
        book.put(SmallSeason.of(2028));
        try (Book kept = Book.open(copy)) {
            assertThat(kept.seasons()).containsExactly(2027);
            assertThat(kept.season(2027)).contains(SmallSeason.of(2027));
            assertThat(kept.choices(2027)).isEqualTo(book.choices(2027));
            assertThat(kept.check()).isEmpty();
        }
    }

    /** Somebody changes a season that somebody else has written out and brings in again. */
    @Test
    void aSeasonDoesNotGoOverWhatWasChangedInTheBookSince() {
        Season out = SmallSeason.of(2027);
        book.put(out);
        book.change(held -> held.withPrograms(
                held.programs().stream()
                        .filter(program -> !program.name().equals("half rate"))
                        .toList(),
                held.work()));
        Season changed = book.season(2027).orElseThrow();
        assertThatThrownBy(() -> book.bring(out, null, false))
                .isInstanceOf(MeanwhileException.class)
                .hasMessageContaining(
                        "this one has it otherwise: the program 'half rate' of North 80. Nothing was changed.");
        assertThat(book.season(2027)).contains(changed);
        assertThat(book.bring(changed, null, false).gone()).isEmpty();
        assertThat(book.bring(out, null, false).replaced()).isTrue();

        // A workbook written out between a change and its undoing would bring the change in again.
        book.change(held -> changed);
        book.change(held -> out);
        assertThatThrownBy(() -> book.bring(changed, null, false)).isInstanceOf(MeanwhileException.class);
        assertThat(book.bring(out, null, false).gone()).isEmpty();
        assertThat(book.bring(changed, null, false).gone()).isEmpty();
        book.change(held -> out);
        assertThat(book.bring(changed, null, true).gone()).containsExactly("the program 'half rate' of North 80");
        assertThat(book.season(2027)).contains(changed);
        assertThat(book.check()).isEmpty();
    }

    @Test
    void aChoiceRestsOnTheSeasonThatWasWeighed() {
        Season weighed = SmallSeason.of(2027);
        book.put(weighed);
        book.choose(choice("half rate", 0.7, 512.25), weighed);
        book.change(held -> held.withPrograms(List.of(), held.work()));
        assertThatThrownBy(() -> book.choose(choice("half rate", 0.7, 512.25), weighed))
                .isInstanceOf(MeanwhileException.class)
                .hasMessageContaining("nothing was recorded");
        assertThat(book.choices(2027)).hasSize(1);
    }

    @Test
    void aRefusalOfOnesOwnComesOutAsItIs() {
        book.put(SmallSeason.of(2027));
        IllegalStateException own = new IllegalStateException("not so");
        assertThatThrownBy(() -> book.changeHeld(held -> {
                    throw own;
                }))
                .isSameAs(own);
        assertThatThrownBy(() -> book.decide(labels -> {
                    throw own;
                }))
                .isSameAs(own);
        assertThat(book.season(2027)).contains(SmallSeason.of(2027));
    }

    @Test
    void theLogStaysWhenASeasonWithoutItComesIn() {
        Season logged = logged(2027, done(1), done(2));
        assertThat(book.put(logged)).isEqualTo(new LogLine.Merged(2, 0, 0));
        assertThat(book.put(SmallSeason.of(2027))).isEqualTo(new LogLine.Merged(0, 0, 2));
        assertThat(book.season(2027)).contains(logged);
        assertThat(book.put(logged)).isEqualTo(new LogLine.Merged(0, 2, 0));
        assertThat(book.put(logged(2027, done(1), done(1), done(2)))).isEqualTo(new LogLine.Merged(1, 2, 0));
        assertThat(book.log()).hasSize(3);
        assertThat(book.check()).isEmpty();
    }

    /** Answers are only added; the last counts, one that speaks of a pass that is no more says nothing, and all hang in the chain. */
    @Test
    void whichPassALineWasIsSaidAndStays() {
        Season season = SmallSeason.of(2027);
        Program program = season.programs("North 80").stream()
                .filter(one -> one.passes().stream().anyMatch(pass -> pass.kind() == PassKind.GRANULE))
                .findFirst()
                .orElseThrow();
        Pass pass = program.passes().stream()
                .filter(one -> one.kind() == PassKind.GRANULE)
                .findFirst()
                .orElseThrow();
        Done line = new Done(
                "North 80",
                LocalDate.of(2027, 5, 1),
                String.valueOf(pass.product()),
                new Amount(4, FarmUnit.LB),
                100,
                null,
                "log book");
        book.put(season);
        book.log(line.meaning(MeantPass.NONE), Instant.EPOCH);
        assertThat(book.season(2027).orElseThrow().work().log()).containsExactly(line.meaning(MeantPass.NONE));
        MeantPass meant = new MeantPass(program.name(), pass.number());
        String before = book.head().hash();
        assertThat(book.sayPass(1, meant, "R. Alder", Instant.EPOCH).done().meant())
                .isEqualTo(meant);
        assertThat(book.head().hash()).isNotEqualTo(before);
        Season said = book.season(2027).orElseThrow();
        assertThat(said.work().log()).containsExactly(line.meaning(meant));
        assertThat(book.put(said)).isEqualTo(new LogLine.Merged(0, 1, 0));
        assertThat(book.put(season)).isEqualTo(new LogLine.Merged(0, 0, 1));
        assertThat(book.season(2027).orElseThrow().work().log()).containsExactly(line.meaning(meant));
        book.change(held -> held.withPrograms(List.of(), held.work().withLog(List.of(line))));
        assertThat(book.season(2027).orElseThrow().work().log()).containsExactly(line);
        assertThatThrownBy(() -> book.sayPass(9, meant, "R. Alder", Instant.EPOCH))
                .hasMessage("The log has no line 9.");
        assertThat(book.check()).isEmpty();
    }

    @Test
    void aStruckLineStaysAndNoLongerCounts() {
        book.put(logged(2027, done(1), done(2)));
        LogLine.Strike strike = new LogLine.Strike("R. Alder", "wrong field", Instant.EPOCH);
        book.strike(1, strike);
        assertThat(book.season(2027)).contains(logged(2027, done(2)));
        assertThat(book.log()).extracting(LogLine::strike).containsExactly(strike, null);
        assertThat(book.put(logged(2027, done(1)))).isEqualTo(new LogLine.Merged(0, 1, 1));
        assertThat(book.season(2027)).contains(logged(2027, done(2)));
        assertThatThrownBy(() -> book.strike(1, strike))
                .hasMessage("Line 1 of the log is voided already, by R. Alder: wrong field");
        assertThatThrownBy(() -> book.strike(9, strike)).hasMessage("The log has no line 9.");
    }

    @Test
    void aSeasonHearsOfItsFieldsUpToItsYear() {
        book.put(SmallSeason.of(2027));
        for (int year : List.of(2020, 2021, 2022, 2027, 2028)) {
            book.log(done(LocalDate.of(year, 5, 1), 1), Instant.EPOCH);
        }
        book.log(
                new Done(
                        "Elsewhere", LocalDate.of(2027, 5, 1), "Granule", new Amount(1, FarmUnit.LB), 100, null, "log"),
                Instant.EPOCH);
        assertThat(book.season(2027).orElseThrow().work().log())
                .extracting(line -> line.date().getYear())
                .containsExactly(2022, 2027);
    }

    @Test
    void aBackupNeverOverwrites() {
        Path copy = folder.resolve("copy.book");
        book.backup(copy);
        assertThatThrownBy(() -> book.backup(copy))
                .isInstanceOf(BookException.class)
                .hasMessageContaining("is there already");
    }

    private static int chooseOften(Book book, String who, int times) {
        for (String why : counted(times)) {
            book.choose(new Choice(2027, "North 80", "half rate", who, Instant.EPOCH, why, null, null));
        }
        return times;
    }

    private static int putOften(Book book, int year, int times) {
        for (int i = 0; i < times; i++) {
            book.put(RandomSeason.of(year, i));
        }
        return times;
    }

    private static List<String> counted(int times) {
        List<String> numbers = new ArrayList<>();
        for (int i = 0; i < times; i++) {
            numbers.add("reason " + i);
        }
        return numbers;
    }

    private static Done done(double pounds) {
        return done(LocalDate.of(2027, 5, 1), pounds);
    }

    private static Done done(LocalDate day, double pounds) {
        return new Done("North 80", day, "Granule", new Amount(pounds, FarmUnit.LB), 100, null, "log book");
    }

    private static Season logged(int year, Done... lines) {
        Season season = SmallSeason.of(year);
        return new Season(
                season.year(),
                season.asOf(),
                season.adviser(),
                season.farms(),
                season.fields(),
                season.history(),
                season.shelf(),
                season.pests(),
                season.programs(),
                season.assumptions(),
                season.ground(),
                new Work(season.work().sprayPlans(), season.work().crew(), List.of(lines)));
    }

    private static Choice choice(String program, @Nullable Double chance, @Nullable Double margin) {
        Instant when = Instant.parse("2027-04-02T06:31:07.123456Z");
        return new Choice(2027, "North 80", program, "R. Alder", when, "corn after corn", chance, margin);
    }

    private static Season with(Season season, List<Farm> farms) {
        return new Season(
                season.year(),
                season.asOf(),
                season.adviser(),
                farms,
                season.fields(),
                season.history(),
                season.shelf(),
                season.pests(),
                season.programs(),
                season.assumptions());
    }
}
