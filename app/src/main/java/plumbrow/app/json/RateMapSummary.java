package plumbrow.app.json;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.ratemap.RateMap;

/**
 * A machine file in figures, as command and desk answer it.
 *
 * @param unit of the rates, by the acre; {@code total_unit} that of the totals
 * @param ddi entry of the data dictionary, {@code standardUnit} its unit, {@code step} what one of its steps is
 * @param jobTotal by the drawn acres, {@code fileTotal} by the cells, {@code offPct} the difference
 */
public record RateMapSummary(
        String field,
        String farm,
        String program,
        List<Integer> passes,
        @Nullable LocalDate date,
        List<Product> products,
        String meters,
        String unit,
        String ddi,
        String standardUnit,
        double step,
        double acres,
        List<Part> parts,
        List<Clear> keptClear,
        int rows,
        int columns,
        double cellFt,
        double jobTotal,
        double fileTotal,
        String totalUnit,
        double offPct,
        List<String> notes) {
    public RateMapSummary {
        passes = List.copyOf(passes);
        products = List.copyOf(products);
        parts = List.copyOf(parts);
        keptClear = List.copyOf(keptClear);
        notes = List.copyOf(notes);
    }

    /** A product at its planned rate. */
    public record Product(String name, double rate, String unit) {}

    /** A part of the field at one rate; the value is in steps of the standard's unit. */
    public record Part(int code, String name, double rate, int value, double acres, double cellAcres) {}

    /** Ground kept clear. */
    public record Clear(String from, String product, double feet, double acres) {}

    public static RateMapSummary of(RateMap map) {
        String symbol = map.metering().farmUnit().symbol();
        return new RateMapSummary(
                map.field(),
                map.farm(),
                map.program(),
                map.passes(),
                map.date(),
                map.products().stream()
                        .map(share -> new Product(
                                share.name(),
                                share.perAcre().value(),
                                share.perAcre().unit().symbol() + "/ac"))
                        .toList(),
                map.metering().word(),
                symbol + "/ac",
                map.metering().setPointDdi(),
                map.metering().unit(),
                map.metering().step(),
                map.acres(),
                map.parts().stream()
                        .map(part -> new Part(
                                part.code(),
                                part.name(),
                                rate(map, part.perAcre()),
                                part.steps(),
                                part.acres(),
                                part.cellAcres()))
                        .toList(),
                map.clear().stream()
                        .map(clear -> new Clear(clear.from(), clear.product(), clear.feet(), clear.acres()))
                        .toList(),
                map.cells().grid().rows(),
                map.cells().grid().columns(),
                map.cellFt(),
                map.jobTotal().value(),
                map.fileTotal().value(),
                symbol,
                map.offPct(),
                map.notes());
    }

    private static double rate(RateMap map, Amount perAcre) {
        return perAcre.in(map.metering().farmUnit()).value();
    }
}
