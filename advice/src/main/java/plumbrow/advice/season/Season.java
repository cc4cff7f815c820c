package plumbrow.advice.season;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import plumbrow.advice.assumptions.AssumptionLine;
import plumbrow.advice.assumptions.AssumptionQuantity;
import plumbrow.advice.field.CropYear;
import plumbrow.advice.field.Farm;
import plumbrow.advice.field.Field;
import plumbrow.advice.pests.Pests;
import plumbrow.advice.program.Program;
import plumbrow.advice.shelf.Shelf;

/**
 * All that an evaluation needs to know, and nothing that changes while it runs.
 *
 * @param year harvest year
 * @param asOf the day the assumptions were drawn up; advice is as of this day
 * @param adviser who gives the advice
 */
public record Season(
        int year,
        LocalDate asOf,
        String adviser,
        List<Farm> farms,
        List<Field> fields,
        List<CropYear> history,
        Shelf shelf,
        Pests pests,
        List<Program> programs,
        List<AssumptionLine> assumptions,
        Ground ground,
        Work work) {
    public Season {
        farms = List.copyOf(farms);
        fields = List.copyOf(fields);
        history = List.copyOf(history);
        programs = List.copyOf(programs);
        assumptions = List.copyOf(assumptions);
    }

    /** A season of which nobody has said what lies around its fields, nor how it is sprayed. */
    public Season(
            int year,
            LocalDate asOf,
            String adviser,
            List<Farm> farms,
            List<Field> fields,
            List<CropYear> history,
            Shelf shelf,
            Pests pests,
            List<Program> programs,
            List<AssumptionLine> assumptions) {
        this(
                year,
                asOf,
                adviser,
                farms,
                fields,
                history,
                shelf,
                pests,
                programs,
                assumptions,
                Ground.UNKNOWN,
                Work.NONE);
    }

    /** The same season with other programs. */
    public Season withPrograms(List<Program> others) {
        return withPrograms(others, work);
    }

    /** The same season with other programs and spray plans in the place of its own. */
    public Season withPrograms(List<Program> others, Work work) {
        return new Season(year, asOf, adviser, farms, fields, history, shelf, pests, others, assumptions, ground, work);
    }

    /** The same season with other fields in the place of its own. */
    public Season withFields(List<Field> others) {
        return new Season(
                year, asOf, adviser, farms, others, history, shelf, pests, programs, assumptions, ground, work);
    }

    /** The same season with another shelf. */
    public Season withShelf(Shelf other) {
        return new Season(
                year, asOf, adviser, farms, fields, history, other, pests, programs, assumptions, ground, work);
    }

    /** The same season with another assumptions. */
    public Season withAssumptions(List<AssumptionLine> others) {
        return new Season(year, asOf, adviser, farms, fields, history, shelf, pests, programs, others, ground, work);
    }

    /** The same season with something else around its fields and after them. */
    public Season withGround(Ground other) {
        return new Season(
                year, asOf, adviser, farms, fields, history, shelf, pests, programs, assumptions, other, work);
    }

    /** The same season with something else that presses on its fields. */
    public Season withPests(Pests others) {
        return new Season(
                year, asOf, adviser, farms, fields, history, shelf, others, programs, assumptions, ground, work);
    }

    public Optional<Field> field(String name) {
        return fields.stream().filter(field -> field.name().equals(name)).findFirst();
    }

    public Optional<Farm> farm(String name) {
        return farms.stream().filter(farm -> farm.name().equals(name)).findFirst();
    }

    /** The programs of a field, in the order they were entered. */
    public List<Program> programs(String field) {
        return programs.stream()
                .filter(program -> program.field().equals(field))
                .toList();
    }

    /** The assumptions line that holds for a field: its own before its crop's. */
    public Optional<AssumptionLine> assumptions(Field field, AssumptionQuantity quantity) {
        return assumptions.stream()
                .filter(line -> line.quantity() == quantity && field.name().equals(line.field()))
                .findFirst()
                .or(() -> assumptions.stream()
                        .filter(line -> line.quantity() == quantity && field.crop() == line.crop())
                        .findFirst());
    }
}
