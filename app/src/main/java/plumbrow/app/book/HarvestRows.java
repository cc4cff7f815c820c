package plumbrow.app.book;

import java.time.Instant;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import plumbrow.advice.lookback.Harvest;

/** What was harvested: only ever added to. */
final class HarvestRows {
    private static final String COLUMNS =
            "season, field, program, strip, yield_bu_ac, moisture_pct, price_usd_bu, cost_usd_ac, who, at, source";

    private final JdbcClient client;

    HarvestRows(JdbcClient client) {
        this.client = client;
    }

    void add(Harvest harvest) {
        client.sql("INSERT INTO harvest (" + COLUMNS + ") VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)")
                .params(new Cells("harvest")
                        .whole(harvest.year())
                        .text(harvest.field())
                        .text(harvest.program())
                        .yes(harvest.strip())
                        .real(harvest.yieldBuPerAcre())
                        .real(harvest.moisturePct())
                        .real(harvest.priceUsdPerBushel())
                        .real(harvest.costUsdPerAcre())
                        .text(harvest.who())
                        .text(harvest.at().toString())
                        .text(harvest.source())
                        .all())
                .update();
        new ChainRows(client).addLast(RecordKind.HARVEST);
    }

    List<Harvest> all() {
        return client.sql("SELECT " + COLUMNS + " FROM harvest ORDER BY number")
                .query((cells, number) -> {
                    Row row = new Row(cells);
                    return new Harvest(
                            row.whole(),
                            row.text(),
                            row.text(),
                            row.yes(),
                            row.real(),
                            row.maybeReal(),
                            row.maybeReal(),
                            row.maybeReal(),
                            row.text(),
                            Instant.parse(row.text()),
                            row.text());
                })
                .list();
    }
}
