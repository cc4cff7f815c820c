package plumbrow.app.desk.build;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Field;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.Program;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.advice.weighing.WeighedProgram;
import plumbrow.app.desk.shown.Shown;
import plumbrow.documents.workbook.Fault;
import plumbrow.documents.workbook.edit.EditFaults;
import plumbrow.documents.workbook.edit.ProgramDraft;
import plumbrow.documents.workbook.edit.RowChange;

/**
 * The programs of a field and the one that is being put together.
 *
 * @param programs those the field has
 * @param gap why they can't be compared yet; empty where they can
 * @param form the boxes
 * @param as "new", "copy" or "change"
 * @param from the program it is made from; empty for none
 * @param seen that program as it was when the page was made, as it travels with the form
 * @param faults what is wrong with a box, by its name
 * @param other what is wrong that has no box
 */
public record BuildView(
        Season season,
        Field field,
        List<Row> programs,
        String gap,
        BuildForm form,
        String as,
        String from,
        String seen,
        Choices choices,
        Map<String, List<String>> faults,
        List<String> other,
        String told,
        int change,
        @Nullable Trial trial) {

    /** A program of the field in short. */
    public record Row(
            Program program, List<String> passes, @Nullable WeighedProgram weighed, String odds) {}

    static List<Row> rows(Season season, Field field, @Nullable FieldAdvice advice) {
        List<Row> rows = new ArrayList<>();
        for (Program program : season.programs(field.name())) {
            WeighedProgram weighed =
                    advice == null ? null : advice.program(program.name()).orElse(null);
            rows.add(new Row(
                    program,
                    program.passes().stream().map(BuildView::words).toList(),
                    weighed,
                    advice == null || weighed == null ? "" : advice.odds(weighed.chanceBeatsBaseline())));
        }
        return rows;
    }

    /** "Stonefly 3G 6 lb/ac, May 4, 2026". */
    public static String words(Pass pass) {
        return (pass.product() == null ? pass.kind().word() : pass.product())
                + (pass.rate() == null ? "" : " " + rate(pass.rate()))
                + (pass.date() == null ? "" : ", " + Shown.day(pass.date()));
    }

    private static String rate(Amount rate) {
        return rate.unit() == FarmUnit.THOUSAND_SEEDS
                ? Shown.number(rate.value() * 1000) + " seeds/ac"
                : Choices.plain(rate.value()) + " " + rate.unit().symbol() + "/ac";
    }

    /** The faults of an edit by the boxes of the builder; those of no box under "". */
    static Map<String, List<String>> faults(EditFaults faults, List<RowChange> changes, BuildForm.Made made) {
        Map<String, List<String>> byBox = new LinkedHashMap<>();
        for (EditFaults.Place place : faults.places()) {
            String box = "";
            if (place.change() >= 0) {
                int line = ProgramDraft.trip(changes.get(place.change()))
                        .map(made.lines()::get)
                        .orElse(-1);
                box = box(place.fault(), line);
            }
            String words =
                    box.isEmpty() ? place.fault().sentence() : place.fault().words();
            List<String> there = byBox.computeIfAbsent(box, none -> new ArrayList<>());
            if (!there.contains(words)) {
                there.add(words);
            }
        }
        return byBox;
    }

    private static String box(Fault fault, int line) {
        if (line < 0) {
            return switch (fault.column()) {
                case "program" -> "name";
                case "baseline" -> "baseline";
                case "note" -> "note";
                default -> "";
            };
        }
        String at = "t" + line + ".";
        return switch (fault.column()) {
            case "product", "kind" -> at + "what";
            case "rate" -> at + "rate";
            case "rate_unit" -> at + "unit";
            case "date" -> at + "date";
            case "method" -> at + "method";
            case "charge_usd_ac" -> at + "charge";
            case "tank" -> at + "with";
            default -> "";
        };
    }

    public String fault(String box) {
        return String.join(" Also ", faults.getOrDefault(box, List.of()));
    }

    /** The other fields of the same crop. */
    public List<Field> alike() {
        return season.fields().stream()
                .filter(one -> one.crop() == field.crop() && !one.name().equals(field.name()))
                .toList();
    }

    /** The trips of the program that the series is made of that put out a product, by number from 0. */
    public Map<Integer, String> trips() {
        Map<Integer, String> trips = new LinkedHashMap<>();
        season.programs(field.name()).stream()
                .filter(program -> program.name().equals(from))
                .findFirst()
                .ifPresent(program -> {
                    for (int i = 0; i < program.passes().size(); i++) {
                        if (program.passes().get(i).product() != null) {
                            trips.put(i, words(program.passes().get(i)));
                        }
                    }
                });
        return trips;
    }

    /** The trip in which a series most likely differs: the last that puts out a product. */
    public Integer lastTrip() {
        return trips().keySet().stream().reduce((one, next) -> next).orElse(-1);
    }

    /** What the label of a product allows, in words. */
    public String range(String product) {
        return choices.find(product).map(Choices.Choice::range).orElse("");
    }

    public boolean changing() {
        return as.equals("change");
    }
}
