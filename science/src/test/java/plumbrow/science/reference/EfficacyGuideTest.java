package plumbrow.science.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Ratings as docs/reference-data.md says they are to be used. */
class EfficacyGuideTest {
    private static final String PRE = "pre-emergence";

    private static Ratings ask(String weed, String timing, String crop, String... actives) {
        return EfficacyGuide.packed().ratings(List.of(actives), weed, timing, crop);
    }

    /** The guide: acetochlor pre on common lambsquarters 83, 78, 77, and 12 on loamy sand. */
    @Test
    void theSpreadIsShownAndNotTheAverage() {
        Ratings corn = ask("common lambsquarters", PRE, "corn", "acetochlor");
        Ratings soybean = ask("common lambsquarters", PRE, "soybean", "acetochlor");
        List<String> printed = new ArrayList<>();
        corn.onSusceptible().forEach(row -> printed.add(row.printed()));
        soybean.onSusceptible().forEach(row -> printed.add(row.printed()));
        assertThat(printed).contains("83", "78", "12");
        assertThat(corn.spread()).contains(" to ").endsWith(" ratings");
    }

    @Test
    void noRowIsUnknownAndNotZero() {
        Ratings none = ask("common cocklebur", PRE, "wheat", "acetochlor");
        assertThat(none.unknown()).isTrue();
        assertThat(none.lowestPercent()).isEmpty();
        assertThat(none.spread()).isEqualTo("unknown: no rating is kept, which is not a rating of zero");
    }

    @Test
    void theOrderOfActivesAndCapitalsDoNotMatterButTheMixDoes() {
        assertThat(ask("Palmer amaranth", PRE, "corn", "Atrazine", "Acetochlor").onSusceptible())
                .isEqualTo(ask("palmer amaranth", PRE, "corn", "acetochlor", "atrazine")
                        .onSusceptible())
                .isNotEmpty()
                .allSatisfy(row -> assertThat(row.actives()).hasSize(2));
    }

    @Test
    void resistantPlantsAreKeptApart() {
        assertThat(EfficacyGuide.packed().all().stream().filter(Rating::onResistantPlants))
                .hasSizeGreaterThan(30);
        for (Rating row : EfficacyGuide.packed().all()) {
            Ratings found =
                    ask(row.weed(), row.timing(), row.crop(), row.actives().toArray(String[]::new));
            assertThat(row.onResistantPlants() ? found.onResistant() : found.onSusceptible())
                    .contains(row);
            assertThat(found.onSusceptible()).noneMatch(Rating::onResistantPlants);
            if (found.onSusceptible().isEmpty()) {
                assertThat(found.spread()).isEqualTo("on resistant plants only");
            }
        }
    }

    /** "Up to 90" is a best mean: there is no low end to plan with. */
    @Test
    void aBestMeanHasNoLowEnd() {
        Rating best = EfficacyGuide.packed().all().stream()
                .filter(row -> row.printed().startsWith("up to"))
                .findFirst()
                .orElseThrow();
        assertThat(best.lowPercent()).isEmpty();
        assertThat(new Ratings(List.of(best), List.of(), List.of()).spread()).startsWith("no low end to ");
        assertThat(new Ratings(List.of(best), List.of(), List.of()).cautions())
                .anyMatch(caution -> caution.contains("not to be expected"));
    }

    @Test
    void whatIsNotFullySeenIsSaid() {
        Rating letter = EfficacyGuide.packed().all().stream()
                .filter(row -> row.printed().equals("G"))
                .findFirst()
                .orElseThrow();
        assertThat(letter.backing().words()).isEqualTo("verified: letter seen, per cent band assumed");
        assertThat(letter.backing().mark()).isEqualTo("◐");
        assertThat(new Ratings(List.of(letter), List.of(), List.of()).cautions())
                .anyMatch(caution -> caution.contains("Not every row is fully verified"));
    }

    @Test
    void anAdvisersRowsStandBesideOurs() {
        String own = String.join(",", ReferenceSet.EFFICACY.columns())
                + "\ncorn,pre-emergence,acetochlor,15,common lambsquarters,,F,F 60-79,60,79,,county guide,2026,,practice\n";
        List<Trouble> troubles = new ArrayList<>();
        EfficacyGuide guide = EfficacyGuide.packed().with(EfficacyGuide.read("own.csv", own, troubles));
        assertThat(troubles).isEmpty();
        int before = ask("common lambsquarters", PRE, "corn", "acetochlor")
                .onSusceptible()
                .size();
        assertThat(guide.ratings(List.of("acetochlor"), "common lambsquarters", PRE, "corn")
                        .onSusceptible())
                .hasSize(before + 1)
                .anyMatch(row -> row.origin().source().equals("county guide"));
    }
}
