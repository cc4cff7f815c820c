package plumbrow.advice.gates;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.stream.LongStream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import plumbrow.advice.shelf.LabelBook;
import plumbrow.advice.shelf.LabelDifference;
import plumbrow.advice.shelf.UseTerms;

/** What must hold of any season would not be worth much if a faulty gate passed: each kind of fault is found. */
class PlantedFaultTest {
    private static final int SCENES = 60;

    /** A gate with a fault: it says barred where told so, else clear. */
    private static final class Faulty extends Question {
        private final Function<Case, Standing> says;

        private Faulty(String id, Function<Case, Standing> says) {
            super(id, Protects.LAW, "Is it faulty?");
            this.says = says;
        }

        @Override
        public List<Finding> check(Case at) {
            return List.of(Finding.of(this, says.apply(at), "all", "Said so."));
        }
    }

    @TestFactory
    List<DynamicTest> eachFaultIsFound() {
        return List.of(
                found(
                        "a blank re-entry interval lets pass",
                        Held::forgettingNeverPermitsMore,
                        at -> anyTerms(at, terms -> terms.reentryHours() != null)),
                found(
                        "a blank last day of a special label lets pass",
                        Held::forgettingNeverPermitsMore,
                        at -> barred(at.index().season().shelf().labels().specialLabels().stream()
                                .anyMatch(label -> label.until() != null))),
                found(
                        "a longer interval lets pass",
                        Held::tighteningNeverBetters,
                        at -> anyTerms(at, terms -> terms.reentryHours() != null && terms.reentryHours() < 40)),
                found(
                        "a lower most rate lets pass",
                        Held::tighteningNeverBetters,
                        at -> barred(at.index().season().shelf().labelUses().stream()
                                .anyMatch(use ->
                                        use.highRate() != null && use.highRate().value() > 12))),
                found(
                        "the last pass entered decides",
                        Held::orderOfPassesDoesNotMatter,
                        at -> barred(at.program().passes().get(0).number() == 1)),
                found(
                        "small fields are let off",
                        Held::splittingNeverLetsThrough,
                        at -> barred(at.field().acres() > 150)),
                found(
                        "one county alone is let off",
                        Held::splittingNeverLetsThrough,
                        at -> barred(at.places().size() > 1)));
    }

    private static DynamicTest found(String fault, BiConsumer<Long, List<Gate>> held, Function<Case, Standing> says) {
        Gate gate = new Faulty("faulty", says);
        return DynamicTest.dynamicTest(
                fault,
                () -> assertThatThrownBy(
                                () -> LongStream.range(0, SCENES).forEach(seed -> held.accept(seed, List.of(gate))))
                        .isInstanceOf(AssertionError.class));
    }

    /** Every kind of row of a label is forgotten value by value. */
    @Test
    void noLabelValueIsLeftOut() {
        Set<Class<?>> kinds = new HashSet<>();
        for (RecordComponent rows : LabelBook.class.getRecordComponents()) {
            kinds.add((Class<?>) ((ParameterizedType) rows.getGenericType()).getActualTypeArguments()[0]);
        }
        // What differs between label and book is no value of a label: it makes one unknown.
        kinds.remove(LabelDifference.class);
        assertThat(LabelValues.ROWS.keySet())
                .isSubsetOf(LabelValues.ROWS.keySet())
                .containsAll(cast(kinds));
        assertThat(LabelValues.SAYS_SOMETHING.keySet())
                .isSubsetOf(LabelValues.ROWS.keySet().stream()
                        .flatMap(kind -> Arrays.stream(kind.getRecordComponents()))
                        .filter(LabelValues::mayBeUnread)
                        .map(LabelValues::name)
                        .toList());
        assertThat(LabelValues.of(UseTerms.class)).hasSize(17);
        Set<String> seen = new HashSet<>();
        for (long seed = 0; seed < SCENES; seed++) {
            LabelEdits.forgetting(RandomScene.of(seed), edit -> seen.add(edit.replaceAll(" of row \\d+", "")));
        }
        assertThat(seen)
                .containsAll(LabelValues.ROWS.keySet().stream()
                        .flatMap(kind -> LabelValues.of(kind).stream())
                        .map(LabelValues::name)
                        .toList());
    }

    @SuppressWarnings("unchecked")
    private static Set<Class<? extends Record>> cast(Set<Class<?>> kinds) {
        return (Set<Class<? extends Record>>) (Set<?>) kinds;
    }

    private static Standing barred(boolean yes) {
        return yes ? Standing.BARRED : Standing.CLEAR;
    }

    private static Standing anyTerms(Case at, Function<UseTerms, Boolean> which) {
        return barred(at.index().season().shelf().labels().terms().stream().anyMatch(which::apply));
    }
}
