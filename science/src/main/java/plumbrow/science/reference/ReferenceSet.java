package plumbrow.science.reference;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** The sets that come with Plumbrow: one file each. */
@SuppressWarnings("ImmutableEnumChecker") // fixed lists, and functions without state
public enum ReferenceSet {
    SUBSTANCES(
            "active ingredients",
            "active-ingredients.csv",
            SubstanceRows::read,
            "common_name",
            "cas",
            "class",
            "property",
            "value",
            "unit",
            "conditions",
            "source",
            "url",
            "status"),
    REPORTABLE(
            "reportable quantities",
            "reportable-quantities.csv",
            ReportableRows::read,
            "common_name",
            "cas",
            "law",
            "rq_lb",
            "tpq_lb",
            "conditions",
            "source",
            "url",
            "status"),
    DUTIES(
            "record duties",
            "record-duties.csv",
            RecordDutyRows::read,
            "state",
            "role",
            "scope",
            "from",
            "until",
            "items",
            "list",
            "write_by",
            "keep_years",
            "conditions",
            "source",
            "url",
            "status"),
    WEEDS("weeds", "weeds.csv", row -> PestRows.read(row, "weed", WeedMeasures.ALL), facts("weed")),
    INSECTS("insects and refuge", "insects.csv", row -> PestRows.read(row, "pest", InsectMeasures.ALL), facts("pest")),
    MOVEMENT(
            "movement in soil",
            "movement.csv",
            MovementRows::read,
            "common_name",
            "half_life_d",
            "solubility_mg_l",
            "koc_ml_g",
            "gus",
            "movement_rating",
            "four_class",
            "source",
            "url",
            "status"),
    EFFICACY(
            "efficacy on weeds",
            "efficacy.csv",
            RatingRows::read,
            "crop",
            "timing",
            "actives",
            "group",
            "weed",
            "scientific_name",
            "rating_as_printed",
            "scale",
            "control_pct_low",
            "control_pct_high",
            "max_weed_height_in",
            "source",
            "year",
            "url",
            "status"),
    TYPICAL(
            "typical values",
            "typical-values.csv",
            TypicalRows::read,
            "crop",
            "state",
            "quantity",
            "low",
            "likely",
            "high",
            "unit",
            "year",
            "conditions",
            "source",
            "url",
            "status");

    private final String title;
    private final String file;
    private final Function<Row, Optional<Entry>> reader;
    private final List<String> columns;

    ReferenceSet(String title, String file, Function<Row, Optional<Entry>> reader, String... columns) {
        this.title = title;
        this.file = file;
        this.reader = reader;
        this.columns = List.of(columns);
    }

    private static String[] facts(String subject) {
        return new String[] {subject, "crop", "property", "value", "unit", "conditions", "source", "url", "status"};
    }

    public String title() {
        return title;
    }

    public String file() {
        return file;
    }

    public List<String> columns() {
        return columns;
    }

    /** The sound rows of a text in the columns of this set; what is wrong with the others is added to the troubles. */
    List<Entry> read(String name, String text, List<Trouble> troubles) {
        List<Entry> entries = new ArrayList<>();
        for (Row row : Csv.rows(name, text, columns, troubles)) {
            reader.apply(row).ifPresent(entries::add);
        }
        return entries;
    }

    /** Every row of the set that comes with Plumbrow. */
    <T extends Entry> List<T> entries(Class<T> kind) {
        List<Trouble> troubles = new ArrayList<>();
        List<Entry> entries = read(file, Packed.text(file), troubles);
        if (!troubles.isEmpty()) {
            throw new IllegalStateException(troubles.get(0).sentence());
        }
        return entries.stream().map(kind::cast).toList();
    }
}
