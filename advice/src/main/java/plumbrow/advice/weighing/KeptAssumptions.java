package plumbrow.advice.weighing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import plumbrow.advice.assumptions.AssumptionLine;
import plumbrow.advice.assumptions.AssumptionQuantity;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.field.Field;
import plumbrow.advice.pests.InsectPressure;
import plumbrow.advice.pests.WeedPressure;
import plumbrow.advice.season.Season;

/**
 * Assumptions of a field that were changed beside its answer, put into the season. What holds for a crop becomes the field's own
 * line; pressure and loss of an insect or weed become those of the field's row. Others are rows that several fields share, such as
 * what a product does: they are not changed from one field's answer.
 *
 * @param season with what could be kept
 * @param left ids of inputs that could not
 */
public record KeptAssumptions(Season season, List<String> left) {
    public KeptAssumptions {
        left = List.copyOf(left);
    }

    /** Whether an input can be kept for one field. */
    public static boolean keepable(String id, Distribution to) {
        boolean entered = !(to instanceof Distribution.Factor || to instanceof Distribution.LogOdds);
        boolean three = to instanceof Distribution.Fixed || to instanceof Distribution.Pert;
        return quantity(id).isPresent()
                ? entered
                : three
                        && Stream.of("pressure: ", "loss: ", "density: ", "loss per plant: ")
                                .anyMatch(id::startsWith);
    }

    /**
     * Puts changes into a season.
     *
     * @param season as it was put in
     * @param changes by the id of {@link UncertainInput}
     * @param source who says so and when
     */
    public static KeptAssumptions into(Season season, Field field, Map<String, Distribution> changes, String source) {
        List<String> left = new ArrayList<>();
        Season kept = season;
        for (Map.Entry<String, Distribution> change : changes.entrySet()) {
            String id = change.getKey();
            Distribution to = change.getValue();
            if (!keepable(id, to)) {
                left.add(id);
            } else if (quantity(id).isPresent()) {
                kept = line(kept, field, quantity(id).orElseThrow(), to, source);
            } else {
                kept = pressure(kept, field, id, to, source);
            }
        }
        return new KeptAssumptions(kept, left);
    }

    private static Optional<AssumptionQuantity> quantity(String id) {
        return Stream.of(AssumptionQuantity.values())
                .filter(one -> one.word().equals(id))
                .findFirst();
    }

    private static Season line(
            Season season, Field field, AssumptionQuantity quantity, Distribution to, String source) {
        AssumptionLine own = new AssumptionLine(null, field.name(), quantity, to, source);
        List<AssumptionLine> lines = new ArrayList<>(season.assumptions());
        for (int i = 0; i < lines.size(); i++) {
            if (field.name().equals(lines.get(i).field()) && lines.get(i).quantity() == quantity) {
                lines.set(i, own);
                return season.withAssumptions(lines);
            }
        }
        lines.add(own);
        return season.withAssumptions(lines);
    }

    private static Season pressure(Season season, Field field, String id, Distribution to, String source) {
        String pest = id.substring(id.indexOf(": ") + 2);
        List<InsectPressure> insects = season.pests().insects().stream()
                .map(one -> one.field().equals(field.name()) && one.insect().equals(pest)
                        ? new InsectPressure(
                                one.field(),
                                one.insect(),
                                one.measure(),
                                id.startsWith("pressure: ") ? to : one.pressure(),
                                id.startsWith("loss: ") ? to : one.lossPerUnitPct(),
                                one.neighbourShare(),
                                one.sample(),
                                one.scouted(),
                                source)
                        : one)
                .toList();
        List<WeedPressure> weeds = season.pests().weeds().stream()
                .map(one -> one.field().equals(field.name()) && one.weed().equals(pest)
                        ? new WeedPressure(
                                one.field(),
                                one.weed(),
                                id.startsWith("density: ") ? to : one.densityPerSquareMetre(),
                                id.startsWith("loss per plant: ") ? to : one.lossPerPlantPct(),
                                one.mostLossPct(),
                                source)
                        : one)
                .toList();
        boolean insect = id.startsWith("pressure: ") || id.startsWith("loss: ");
        return season.withPests(season.pests()
                .withPressure(
                        insect ? insects : season.pests().insects(),
                        insect ? season.pests().weeds() : weeds));
    }
}
