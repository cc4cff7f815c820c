package plumbrow.documents.workbook.form;

import java.util.Arrays;
import java.util.List;
import plumbrow.advice.quantity.FarmUnit;

/** A unit in which a product is sold or kept. */
public record UnitKind(List<FarmUnit> allowed) implements Kind<FarmUnit> {
    public static UnitKind any() {
        return new UnitKind(List.of(FarmUnit.values()));
    }

    public static UnitKind of(FarmUnit... allowed) {
        return new UnitKind(Arrays.asList(allowed));
    }

    @Override
    public List<String> choices() {
        return allowed.stream().map(FarmUnit::symbol).toList();
    }

    @Override
    public String words() {
        return "a unit: " + String.join(", ", choices());
    }

    @Override
    public FarmUnit read(Cell cell) throws Misread {
        if (cell instanceof Cell.Broken broken) {
            throw new Misread(broken.expected());
        }
        return FarmUnit.parse(cell.found()).filter(allowed::contains).orElseThrow(() -> new Misread(words()));
    }

    @Override
    public Cell show(FarmUnit value) {
        return new Cell.Text(value.symbol());
    }

    @Override
    public Storage<FarmUnit> storage() {
        return Storage.word(FarmUnit.class);
    }
}
