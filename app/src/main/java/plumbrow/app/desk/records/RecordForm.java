package plumbrow.app.desk.records;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.crew.Person;
import plumbrow.advice.field.Field;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.records.KeptRecord;
import plumbrow.advice.records.RecordItem;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.Product;
import plumbrow.advice.shelf.ProductKind;
import plumbrow.app.records.RecordEntry;

/**
 * The form of a record.
 *
 * @param wrong the record that it corrects; null where it corrects none
 * @param who who corrects it, {@code why} what was wrong, as typed; {@code whoFault} what is wrong with that
 */
public record RecordForm(
        Season season, RecordEntry entry, @Nullable KeptRecord wrong, String who, String why, String whoFault) {
    /** Fields that are offered to choose from; of more the name is typed. */
    private static final int MOST_OFFERED = 300;

    /** Where it is sent to. */
    public String action() {
        return wrong == null ? "/records/new" : "/records/" + wrong.number() + "/correct";
    }

    public String title() {
        return wrong == null ? "Record an application" : "Correct record " + wrong.number();
    }

    public List<String> fields() {
        return season.fields().size() > MOST_OFFERED
                ? List.of()
                : season.fields().stream().map(Field::name).toList();
    }

    public List<String> products() {
        return season.shelf().products().stream()
                .filter(product -> product.kind() != ProductKind.SEED)
                .map(Product::name)
                .toList();
    }

    public List<String> people() {
        return season.work().crew().people().stream().map(Person::name).toList();
    }

    public List<String> rateUnits() {
        return Arrays.stream(FarmUnit.values())
                .map(unit -> unit.symbol() + "/ac")
                .toList();
    }

    public List<String> units() {
        return Arrays.stream(FarmUnit.values()).map(FarmUnit::symbol).toList();
    }

    /** Numbers of the products that have boxes: those that were typed, and one more. */
    public List<Integer> numbers() {
        int last = IntStream.rangeClosed(1, RecordEntry.MOST_PRODUCTS)
                .filter(number -> !entry.text(RecordEntry.PRODUCT + number).isBlank()
                        || !entry.text(RecordEntry.RATE + number).isBlank())
                .max()
                .orElse(0);
        return IntStream.rangeClosed(1, Math.min(RecordEntry.MOST_PRODUCTS, last + 1))
                .boxed()
                .toList();
    }

    /** Whether a product has nothing in its boxes and may stay folded; the first never does. */
    public boolean spare(int number) {
        return number > 1
                && entry.text(RecordEntry.PRODUCT + number).isBlank()
                && entry.faults().keySet().stream().noneMatch(key -> key.endsWith("_" + number));
    }

    /** The headings, what must be looked up at the field first. */
    public List<RecordItem.Group> groups() {
        return List.of(
                RecordItem.Group.WEATHER,
                RecordItem.Group.WHO,
                RecordItem.Group.TANK,
                RecordItem.Group.GEAR,
                RecordItem.Group.WHERE,
                RecordItem.Group.REST);
    }

    /** Whether a heading stands open: where something is wrong under it, or nothing stands there yet that is measured or done. */
    public boolean open(RecordItem.Group group) {
        boolean fault =
                group.items().stream().anyMatch(item -> !entry.fault(item.key()).isEmpty());
        boolean asksWho = group == RecordItem.Group.WHO
                && (entry.text(RecordItem.ROLE.key()).isBlank()
                        || entry.text(RecordItem.APPLICATOR.key()).isBlank());
        return fault || group == RecordItem.Group.WEATHER || asksWho;
    }

    /** What stands under a heading already, in few words. */
    public String filled(RecordItem.Group group) {
        long filled = group.items().stream()
                .filter(item -> !entry.text(item.key()).isBlank())
                .count();
        return filled == 0 ? "nothing yet" : filled + " of " + group.items().size() + " filled in";
    }
}
