package plumbrow.advice.ask;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import plumbrow.advice.assumptions.AssumptionLine;
import plumbrow.advice.assumptions.AssumptionQuantity;
import plumbrow.advice.field.Field;
import plumbrow.advice.season.Season;

/** Puts typical assumptions where a season has none, so that it can be weighed; each says that it is typical. */
public final class TypicalAssumptions {
    private TypicalAssumptions() {}

    /** What fields lack that the weighing needs, as "price of corn"; empty where nothing is lacking. */
    public static List<String> lacking(Season season) {
        Set<String> lacking = new LinkedHashSet<>();
        for (Field field : season.fields()) {
            missing(season, field).forEach(line -> lacking.add(line.quantity().word() + " of " + field.name()));
        }
        return List.copyOf(lacking);
    }

    /** The season with the typical price, yield, handling and tie of each field that has none of its own nor of its crop. */
    public static Season filled(Season season) {
        List<AssumptionLine> lines = new ArrayList<>(season.assumptions());
        season.fields().forEach(field -> lines.addAll(missing(season, field)));
        return season.withAssumptions(lines);
    }

    /** Only where price or yield is lacking: without these a field can't be weighed, and what else is lacking is the adviser's choice. */
    private static List<AssumptionLine> missing(Season season, Field field) {
        boolean weighable = season.assumptions(field, AssumptionQuantity.PRICE).isPresent()
                && season.assumptions(field, AssumptionQuantity.YIELD).isPresent();
        if (weighable) {
            return List.of();
        }
        return typical(field, season.asOf()).stream()
                .filter(line -> season.assumptions(field, line.quantity()).isEmpty())
                .toList();
    }

    private static List<AssumptionLine> typical(Field field, LocalDate asOf) {
        Map<String, String> place = Map.of("state", field.state());
        Answers answers = Answers.read(List.of(FieldQuestion.STATE), place, asOf.getYear());
        return new Draft(answers, field.crop(), asOf)
                .done().season().assumptions().stream()
                        .map(line -> new AssumptionLine(
                                null, field.name(), line.quantity(), line.distribution(), line.source()))
                        .toList();
    }
}
