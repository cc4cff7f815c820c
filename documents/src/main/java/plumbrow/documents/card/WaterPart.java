package plumbrow.documents.card;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import plumbrow.science.fate.LeachingScore;
import plumbrow.science.fate.RunoffRating;
import plumbrow.science.figure.Answer;
import plumbrow.science.figure.Numbers;
import plumbrow.science.reference.Movement;
import plumbrow.science.reference.MovementTable;

/** How the active ingredients leave a field with water. Sheets seldom give what this needs: it is kept by ingredient. */
final class WaterPart {
    private WaterPart() {}

    static CardSection of(Ingredients ingredients) {
        List<CardLine> lines = new ArrayList<>();
        for (Ingredients.One one : ingredients.actives()) {
            List<Movement> forms = MovementTable.find(one.name())
                    .map(List::of)
                    .orElseGet(() -> MovementTable.forms(
                            Objects.requireNonNull(one.kept()).name()));
            forms.forEach(row -> write(row, lines));
            if (forms.isEmpty()) {
                lines.add(CardLine.unknown(
                        one.name(), "half-life, Koc and solubility of the ingredient; the label on ground water"));
            }
        }
        if (lines.isEmpty()) {
            lines.add(CardLine.unknown("Leaching and runoff", "the label on ground water and runoff"));
        }
        return new CardSection(
                CardPart.WATER,
                lines,
                List.of("Of the ingredient alone: soil, slope and rain decide with it. The label’s setbacks rule."));
    }

    private static void write(Movement row, List<CardLine> lines) {
        Origin origin = new Origin.Reference(row.name(), row.origin(), row.backing());
        Answer leaching = Worked.out(LeachingScore.FIGURE)
                .with("half_life_d", row.halfLifeDays())
                .with("koc_ml_g", row.kocMlPerGram())
                .answer();
        lines.add(new CardLine(
                row.name() + ", leaching",
                "score " + Numbers.fixed(leaching.number("score"), 2) + ", " + leaching.word("class") + " ("
                        + row.says() + ")",
                Known.KEPT,
                List.of(origin),
                leaching));
        if (row.solubilityMgPerLitre() <= 0) {
            return;
        }
        Answer runoff = Worked.out(RunoffRating.FIGURE)
                .with("half_life_d", row.halfLifeDays())
                .with("solubility_mg_l", row.solubilityMgPerLitre())
                .with("koc_ml_g", row.kocMlPerGram())
                .answer();
        lines.add(new CardLine(
                row.name() + ", runoff",
                "dissolved " + runoff.word("solution") + ", on soil that washes off " + runoff.word("adsorbed"),
                Known.KEPT,
                List.of(origin),
                runoff));
    }
}
