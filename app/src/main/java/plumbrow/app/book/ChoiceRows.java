package plumbrow.app.book;

import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.springframework.jdbc.core.simple.JdbcClient;
import plumbrow.advice.lookback.Decided;
import plumbrow.advice.lookback.Expectation;
import plumbrow.advice.weighing.Band;

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

    /** Writes down what was expected of each program at the choice that was written last. */
    void expect(List<Expectation> expected) {
        if (expected.isEmpty()) {
            return;
        }
        int choice = client.sql("SELECT max(number) FROM choice")
                .query(Integer.class)
                .single();
        for (Expectation one : expected) {
            client.sql("INSERT INTO expectation (choice, " + EXPECTED
                            + ") VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?," + " ?, ?, ?)")
                    .params(new Cells("expectation")
                            .whole(choice)
                            .text(one.program())
                            .yes(one.baseline())
                            .yes(one.barred())
                            .real(one.meanMarginUsdPerAcre())
                            .real(one.margin().low())
                            .real(one.margin().middle())
                            .real(one.margin().high())
                            .real(one.chosenAhead())
                            .real(one.meanYieldBuPerAcre())
                            .real(one.yield().low())
                            .real(one.yield().middle())
                            .real(one.yield().high())
                            .real(one.meanPriceUsdPerBushel())
                            .real(one.price().low())
                            .real(one.price().middle())
                            .real(one.price().high())
                            .real(one.costUsdPerAcre())
                            .all())
                    .update();
            new ChainRows(client).addLast(RecordKind.EXPECTATION);
        }
    }

    private static final String EXPECTED =
            "program, baseline, barred, margin, margin_low, margin_middle, margin_high, chosen_ahead, yield, yield_low, yield_middle,"
                    + " yield_high, price, price_low, price_middle, price_high, cost";

    /** Every choice of every year with what was expected then, in the order of choosing. */
    List<Decided> decided() {
        Map<Integer, List<Expectation>> expected = new HashMap<>();
        client.sql("SELECT choice, " + EXPECTED + " FROM expectation ORDER BY number")
                .query((cells, nth) -> {
                    Row row = new Row(cells);
                    return expected.computeIfAbsent(row.whole(), first -> new ArrayList<>())
                            .add(new Expectation(
                                    row.text(),
                                    row.yes(),
                                    row.yes(),
                                    row.real(),
                                    band(row),
                                    row.real(),
                                    row.real(),
                                    band(row),
                                    row.real(),
                                    band(row),
                                    row.real()));
                })
                .list();
        return client.sql(
                        "SELECT number, season, field, course, who, chance_beats_baseline, mean_margin_usd_ac FROM choice"
                                + " ORDER BY number")
                .query((cells, nth) -> {
                    Row row = new Row(cells);
                    int number = row.whole();
                    return new Decided(
                            row.whole(),
                            row.text(),
                            row.text(),
                            row.text(),
                            row.maybeReal(),
                            row.maybeReal(),
                            expected.getOrDefault(number, List.of()));
                })
                .list();
    }

    private static Band band(Row row) throws SQLException {
        return new Band(row.real(), row.real(), row.real());
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
