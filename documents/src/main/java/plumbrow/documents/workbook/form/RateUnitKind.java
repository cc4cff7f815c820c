package plumbrow.documents.workbook.form;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import plumbrow.advice.quantity.FarmUnit;

/** A rate's unit: "fl oz/ac" or, short for it, "fl oz"; "L/ha" and the like from metric labels. */
public record RateUnitKind() implements Kind<RateUnit> {
    private static final Pattern PER_AREA =
            Pattern.compile("(.*?)\\s*(?:/|\\bper\\b)\\s*(ac|acre|ha|hectare)", Pattern.CASE_INSENSITIVE);
    private static final List<FarmUnit> METRIC = List.of(FarmUnit.L, FarmUnit.ML, FarmUnit.KG, FarmUnit.G);

    @Override
    public List<String> choices() {
        return Stream.concat(
                        Arrays.stream(FarmUnit.values()).map(RateUnit::perAcre),
                        METRIC.stream().map(unit -> new RateUnit(unit, true)))
                .map(RateUnit::text)
                .toList();
    }

    @Override
    public String words() {
        return "a rate's unit: " + String.join(", ", choices());
    }

    @Override
    public RateUnit read(Cell cell) throws Misread {
        if (cell instanceof Cell.Broken broken) {
            throw new Misread(broken.expected());
        }
        return parsed(cell.found()).orElseThrow(() -> new Misread(words()));
    }

    @Override
    public Cell show(RateUnit value) {
        return new Cell.Text(value.text());
    }

    @Override
    public Storage<RateUnit> storage() {
        return new Storage.Plain<>(
                Storage.Type.TEXT,
                RateUnit::text,
                text -> parsed(String.class.cast(text)).orElseThrow(),
                null);
    }

    private static Optional<RateUnit> parsed(String text) {
        Matcher perArea = PER_AREA.matcher(text);
        boolean area = perArea.matches();
        boolean hectare = area && perArea.group(2).toLowerCase(Locale.ROOT).startsWith("h");
        return FarmUnit.parse(area ? perArea.group(1) : text)
                .map(unit -> new RateUnit(unit, hectare))
                .filter(unit -> !hectare || METRIC.contains(unit.unit()));
    }
}
