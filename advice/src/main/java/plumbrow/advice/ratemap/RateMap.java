package plumbrow.advice.ratemap;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Boundary;
import plumbrow.advice.land.CellCodes;
import plumbrow.advice.quantity.Amount;

/**
 * The rate of a pass on every part of a field, as a machine meters it.
 *
 * @param grower who farms it
 * @param year harvest year
 * @param passes numbers of the passes that go out together
 * @param products what goes out, each at its rate where the planned rate is metered
 * @param metering what the machine meters: spray, weight or seeds by area
 * @param outline the field
 * @param clear what is kept clear at rate zero, by what asks for it
 * @param parts parts of the field by rate: what is kept clear where there is any, what bears the planned rate, drawn zones
 * @param cells which part every cell belongs to
 * @param jobTotal what the parts take by their drawn acres, {@code fileTotal} what the cells of the file take; both in the
 *     metering's farm unit
 * @param notes what whoever loads it has to mind
 */
public record RateMap(
        String field,
        String farm,
        String grower,
        int year,
        String program,
        List<Integer> passes,
        @Nullable LocalDate date,
        List<Share> products,
        @Nullable String applicator,
        Metering metering,
        Boundary outline,
        double acres,
        List<Clear> clear,
        List<Part> parts,
        CellCodes cells,
        double cellFt,
        Amount jobTotal,
        Amount fileTotal,
        List<String> notes) {
    public RateMap {
        passes = List.copyOf(passes);
        products = List.copyOf(products);
        clear = List.copyOf(clear);
        parts = List.copyOf(parts);
        notes = List.copyOf(notes);
    }

    /**
     * One product of what goes out.
     *
     * @param perAcre its rate where the planned rate is metered
     */
    public record Share(String name, Amount perAcre) {}

    /**
     * Ground kept clear.
     *
     * @param from what distance is kept from: "ditch field ditch"
     * @param outline where it lies in the field
     */
    public record Clear(String from, String product, double feet, double acres, Boundary outline) {}

    /**
     * A part of the field with one rate.
     *
     * @param code of its cells
     * @param perAcre the rate as planned, {@code steps} as it stands in the file, a whole number of the metering's steps
     * @param acres as drawn, {@code cellAcres} under its cells [ac]
     * @param outline null where nothing of it is in the field
     */
    public record Part(
            int code,
            String name,
            Amount perAcre,
            int steps,
            double acres,
            double cellAcres,
            @Nullable Boundary outline) {}

    /** The value of every cell of a code, a whole number of the metering's steps; 0 outside. */
    public int steps(int code) {
        return parts.stream()
                .filter(part -> part.code() == code)
                .mapToInt(Part::steps)
                .findFirst()
                .orElse(0);
    }

    /** How far the cells are off the drawn parts [%]. */
    public double offPct() {
        return (fileTotal.inBase() / jobTotal.inBase() - 1) * 100;
    }
}
