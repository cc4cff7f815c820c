package plumbrow.app.book;

import java.time.Instant;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The log of choices. */
final class ChoiceRows {
    private final JdbcClient client;

    ChoiceRows(JdbcClient client) {
        this.client = client;
    }

    void demandProgram(Choice choice) {
        boolean known = client.sql("SELECT count(*) FROM program WHERE season = ? AND field = ? AND name = ?")
                        .params(choice.year(), choice.field(), choice.program())
                        .query(Integer.class)
                        .single()
                > 0;
        if (!known) {
            throw new BookException("The season " + choice.year() + " has no program '" + choice.program()
                    + "' for the field '" + choice.field() + "'.");
        }
    }

    void add(Choice choice) {
        client.sql("INSERT INTO choice (season, field, course, who, chosen_at, why, chance_beats_baseline, "
                        + "mean_margin_usd_ac) VALUES (?, ?, ?, ?, ?, ?, ?, ?)")
                .params(new Cells("choice")
                        .whole(choice.year())
                        .text(choice.field())
                        .text(choice.program())
                        .text(choice.who())
                        .text(choice.when().toString())
                        .text(choice.why())
                        .real(choice.chanceBeatsBaseline())
                        .real(choice.meanMarginUsdPerAcre())
                        .all())
                .update();
        new ChainRows(client).addLast(RecordKind.CHOICE);
    }

    List<Choice> all(int year) {
        return client.sql("SELECT season, field, course, who, chosen_at, why, chance_beats_baseline, "
                        + "mean_margin_usd_ac FROM choice WHERE season = ? ORDER BY number")
                .param(year)
                .query((cells, number) -> {
                    Row row = new Row(cells);
                    return new Choice(
                            row.whole(),
                            row.text(),
                            row.text(),
                            row.text(),
                            Instant.parse(row.text()),
                            row.text(),
                            row.maybeReal(),
                            row.maybeReal());
                })
                .list();
    }
}
