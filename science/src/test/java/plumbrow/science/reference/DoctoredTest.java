package plumbrow.science.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every check of the data fails on a copy that is doctored for it, and names the place. */
class DoctoredTest {
    private static final int COPIES = 12;

    /** One cell put wrong in rows drawn by a seed, and the column that must be named. */
    private record Wrong(ReferenceSet set, String column, String text, String expected) {}

    static Stream<Wrong> wrongs() {
        return Stream.of(
                new Wrong(ReferenceSet.SUBSTANCES, "cas", "1912-24-8", "check digit"),
                new Wrong(ReferenceSet.SUBSTANCES, "cas", "1912249", "check digit"),
                new Wrong(ReferenceSet.SUBSTANCES, "common_name", "", "ISO common name"),
                new Wrong(ReferenceSet.SUBSTANCES, "class", "weed killer", "herbicide"),
                new Wrong(ReferenceSet.SUBSTANCES, "property", "taste", "one of group_number"),
                new Wrong(ReferenceSet.SUBSTANCES, "unit", "MPa", " for "),
                new Wrong(ReferenceSet.SUBSTANCES, "source", "", "the source"),
                new Wrong(ReferenceSet.SUBSTANCES, "status", "sure", "verified, computed"),
                new Wrong(ReferenceSet.REPORTABLE, "cas", "2921-88-3", "check digit"),
                new Wrong(ReferenceSet.REPORTABLE, "rq_lb", "50", "1, 10, 100"),
                new Wrong(ReferenceSet.REPORTABLE, "rq_lb", "", "1, 10, 100"),
                new Wrong(ReferenceSet.REPORTABLE, "law", "CWA", "CERCLA"),
                new Wrong(ReferenceSet.REPORTABLE, "tpq_lb", "a lot", "pounds"),
                new Wrong(ReferenceSet.REPORTABLE, "url", "", "place"),
                new Wrong(ReferenceSet.WEEDS, "value", "-3", "a number"),
                new Wrong(ReferenceSet.WEEDS, "value", "10-2", "a number"),
                new Wrong(ReferenceSet.WEEDS, "value", "9e9", "possible"),
                new Wrong(ReferenceSet.WEEDS, "crop", "rice", "corn"),
                new Wrong(ReferenceSet.WEEDS, "source", "", "the source"),
                new Wrong(ReferenceSet.INSECTS, "value", "1e7", "possible"),
                new Wrong(ReferenceSet.INSECTS, "unit", "per field", " for "),
                new Wrong(ReferenceSet.INSECTS, "pest", "", "common name"),
                new Wrong(ReferenceSet.MOVEMENT, "half_life_d", "0", "above 0"),
                new Wrong(ReferenceSet.MOVEMENT, "koc_ml_g", "", "above 0"),
                new Wrong(ReferenceSet.MOVEMENT, "movement_rating", "Fast", "Extremely Low"),
                new Wrong(ReferenceSet.MOVEMENT, "four_class", "High", "extremely low"),
                new Wrong(ReferenceSet.EFFICACY, "control_pct_high", "101", "0 to 100"),
                new Wrong(ReferenceSet.EFFICACY, "control_pct_high", "", "0 to 100"),
                new Wrong(ReferenceSet.EFFICACY, "group", "5+5", "ascending"),
                new Wrong(ReferenceSet.EFFICACY, "actives", "mesotrione+atrazine", "alphabetical"),
                new Wrong(ReferenceSet.EFFICACY, "timing", "whenever", "pre-emergence"),
                new Wrong(ReferenceSet.EFFICACY, "status", "verified letter", "verified, computed"),
                new Wrong(ReferenceSet.EFFICACY, "url", "", "place"),
                new Wrong(ReferenceSet.EFFICACY, "year", "", "year"));
    }

    @ParameterizedTest
    @MethodSource("wrongs")
    void aWrongCellIsNamedWithItsRow(Wrong wrong) {
        Random random = new Random(11);
        List<String> lines = Packed.text(wrong.set().file()).lines().toList();
        for (int copy = 0; copy < COPIES; copy++) {
            int at = 1 + random.nextInt(lines.size() - 1);
            List<String> cells = Doctored.cells(lines.get(at));
            int column = wrong.set().columns().indexOf(wrong.column());
            if (cells.get(column).equals(wrong.text()) || skipped(wrong, cells)) {
                continue;
            }
            String text = Doctored.with(lines, at, Doctored.line(cells, column, wrong.text()));
            DataReport report = Doctored.check(wrong.set(), text);
            assertThat(report.troubles()).as(wrong + " in row " + (at + 1)).anySatisfy(trouble -> {
                assertThat(trouble.file()).isEqualTo(wrong.set().file());
                assertThat(trouble.row()).isEqualTo(at + 1);
                assertThat(trouble.column()).isEqualTo(wrong.column());
                assertThat(trouble.found()).isEqualTo(wrong.text());
                assertThat(trouble.expected()).contains(wrong.expected());
            });
        }
    }

    /** A place is asked only of what is verified. */
    private static boolean skipped(Wrong wrong, List<String> cells) {
        return wrong.column().equals("url") && !cells.get(cells.size() - 1).startsWith("verified");
    }

    @Test
    void anyByteThatIsChangedChangesTheSum() {
        for (ReferenceSet set : ReferenceSet.values()) {
            String text = Packed.text(set.file());
            int at = new Random(5).nextInt(text.length() - 1);
            char other = text.charAt(at) == 'x' ? 'y' : 'x';
            DataReport report = Doctored.check(set, text.substring(0, at) + other + text.substring(at + 1));
            assertThat(report.troubles())
                    .anySatisfy(trouble -> assertThat(trouble.sentence())
                            .startsWith(set.file() + ": found 'SHA-256 ")
                            .contains("the sum of the reviewed file"));
        }
    }

    @Test
    void aRowThatStandsTwiceIsNamed() {
        for (ReferenceSet set : ReferenceSet.values()) {
            List<String> lines = Packed.text(set.file()).lines().toList();
            String text = String.join("\n", lines) + "\n" + lines.get(lines.size() / 2) + "\n";
            assertThat(Doctored.check(set, text).troubles()).as(set.file()).anySatisfy(trouble -> {
                assertThat(trouble.row()).isEqualTo(lines.size() + 1);
                assertThat(trouble.expected()).isEqualTo("the row once; it stands in row " + (lines.size() / 2 + 1));
            });
        }
    }

    @Test
    void oneSourceMayNotSayTwoThings() {
        List<String> lines = Packed.text(ReferenceSet.WEEDS.file()).lines().toList();
        List<String> cells = Doctored.cells(lines.get(1));
        int value = ReferenceSet.WEEDS.columns().indexOf("value");
        String text = String.join("\n", lines) + "\n" + Doctored.line(cells, value, "77") + "\n";
        DataReport report = Doctored.check(ReferenceSet.WEEDS, text);
        assertThat(report.troubles())
                .anySatisfy(trouble -> assertThat(trouble.expected())
                        .contains("what row 2 says from the same source, " + cells.get(value)));
        assertThat(report.contested())
                .anySatisfy(thing -> assertThat(thing.values()).contains("77"));
    }

    @Test
    void oneNumberHasOneName() {
        List<String> lines = Packed.text(ReferenceSet.SUBSTANCES.file()).lines().toList();
        List<String> cells = Doctored.cells(lines.get(2));
        DataReport name =
                Doctored.check(ReferenceSet.SUBSTANCES, Doctored.with(lines, 2, Doctored.line(cells, 0, "glyphosat")));
        assertThat(name.troubles())
                .anySatisfy(
                        trouble -> assertThat(trouble.sentence())
                                .contains(
                                        "row 3, common_name: found 'glyphosat, herbicide'; expected glyphosate, herbicide for 1071-83-6"));
        DataReport cas =
                Doctored.check(ReferenceSet.SUBSTANCES, Doctored.with(lines, 2, Doctored.line(cells, 1, "1912-24-9")));
        assertThat(cas.troubles())
                .anySatisfy(trouble -> assertThat(trouble.sentence()).contains("expected 1071-83-6 for glyphosate"));
    }

    @Test
    void letterAndPercentsBelongTogether() {
        String head = String.join(",", ReferenceSet.EFFICACY.columns()) + "\n";
        for (String[] pair : new String[][] {
            {"E", "80,100"},
            {"G", "80,90"},
            {"F", ",79"},
            {"at least 90", "90,95"},
            {"90 or more", "80,100"},
            {"no more than 54", "10,54"},
            {"up to 90", "0,90"},
            {"78-83", "78,84"},
            {"95 (3)", "80,90"}
        }) {
            String row = "corn,pre-emergence,atrazine,5,velvetleaf,,%s,visual %% control,%s,,guide,2020,,practice\n"
                    .formatted(pair[0], pair[1]);
            assertThat(DataCheck.guide("own.csv", head + row).troubles())
                    .as(Arrays.toString(pair))
                    .hasSize(1)
                    .allSatisfy(trouble -> assertThat(trouble.column()).isEqualTo("control_pct_low"));
        }
    }
}
