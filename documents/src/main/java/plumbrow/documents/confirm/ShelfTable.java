package plumbrow.documents.confirm;

import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plumbrow.documents.workbook.form.Attribute;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.form.Storage;
import plumbrow.documents.workbook.sheet.ActiveLimitSheet;
import plumbrow.documents.workbook.sheet.ActiveSheet;
import plumbrow.documents.workbook.sheet.CareSheet;
import plumbrow.documents.workbook.sheet.LabelUseSheet;
import plumbrow.documents.workbook.sheet.MixRuleSheet;
import plumbrow.documents.workbook.sheet.PlantBackSheet;
import plumbrow.documents.workbook.sheet.SetbackSheet;
import plumbrow.documents.workbook.sheet.SoilRateSheet;
import plumbrow.documents.workbook.sheet.TermsSheet;

/**
 * The tables of the shelf that a label fills. Which values their rows have, what these are called, their units and which of two is the
 * stricter, the declaration of each table says.
 */
public enum ShelfTable {
    USES(LabelUseSheet.SHEET, "Rates and limits", "crop"),
    TERMS(TermsSheet.SHEET, "How it is sprayed and when", "crop"),
    SOIL_RATES(
            SoilRateSheet.SHEET,
            "Rates by soil",
            "crop",
            "textures",
            "organic_matter_from_pct",
            "organic_matter_below_pct",
            "ph_from",
            "ph_below",
            "erodible",
            "residue_from_pct",
            "residue_below_pct",
            "earliest_stage",
            "latest_stage",
            "forbidden"),
    ACTIVES(ActiveSheet.SHEET, "Active ingredient in the product", "ingredient", "per"),
    LIMITS(ActiveLimitSheet.SHEET, "Most active ingredient in a season", "crop", "ingredient", "basis"),
    SETBACKS(SetbackSheet.SHEET, "Distances", "kind", "downwind_only"),
    PLANT_BACKS(PlantBackSheet.SHEET, "The next crop", "next_crop", "ph_from", "ph_below", "condition"),
    MIX_RULES(MixRuleSheet.SHEET, "In the same tank", "partner"),
    CARE(CareSheet.SHEET, "People, water and bees");

    private static final String PRODUCT = "product";
    private static final String SOURCE = "source";

    /** What older books and links call a value, where that is not its key of today. */
    private static final Map<String, String> FORMER = Map.ofEntries(
            Map.entry("lowRate", "low_rate"),
            Map.entry("highRate", "high_rate"),
            Map.entry("seasonMax", "season_max"),
            Map.entry("mostApplications", "most_applications"),
            Map.entry("preHarvestDays", "phi_days"),
            Map.entry("reentryHours", "rei_hours"),
            Map.entry("daysBetween", "days_between"),
            Map.entry("grazingDays", "grazing_days"),
            Map.entry("feedingForbidden", "feeding_forbidden"),
            Map.entry("earliestStage", "earliest_stage"),
            Map.entry("latestStage", "latest_stage"),
            Map.entry("highestCropIn", "highest_crop_in"),
            Map.entry("highestWeedIn", "highest_weed_in"),
            Map.entry("carrierLowGalPerAcre", "carrier_low_gal_ac"),
            Map.entry("boomHighestIn", "boom_highest_in"),
            Map.entry("windLowestMph", "wind_lowest_mph"),
            Map.entry("windHighestMph", "wind_highest_mph"),
            Map.entry("warmestF", "warmest_f"),
            Map.entry("rainFreeHours", "rain_free_hours"),
            Map.entry("organicMatterLowPct", "organic_matter_from_pct"),
            Map.entry("organicMatterHighPct", "organic_matter_below_pct"),
            Map.entry("residueLowPct", "residue_from_pct"),
            Map.entry("residueHighPct", "residue_below_pct"),
            Map.entry("phLow", "ph_from"),
            Map.entry("phHigh", "ph_below"),
            Map.entry("forPhFrom", "ph_from"),
            Map.entry("forPhBelow", "ph_below"),
            Map.entry("acidEquivalentRatio", "ae_ratio"),
            Map.entry("seasonMaxPounds", "season_max_lb_ac"),
            Map.entry("feet", "distance_ft"),
            Map.entry("downwindOnly", "downwind_only"),
            Map.entry("nextCrop", "next_crop"),
            Map.entry("restrictedUse", "restricted_use"),
            Map.entry("saturatedSoil", "saturated_soil"),
            Map.entry("rainAheadHours", "rain_ahead_hours"));

    @SuppressWarnings("ImmutableEnumChecker") // a declaration is never changed
    private final Sheet<? extends Record> sheet;

    private final String title;

    @SuppressWarnings("ImmutableEnumChecker") // made by List.of
    private final List<String> key;

    ShelfTable(Sheet<? extends Record> sheet, String title, String... key) {
        this.sheet = sheet;
        this.title = title;
        this.key = List.of(key);
    }

    /** The name of its sheet in the workbook. */
    public String word() {
        return sheet.name();
    }

    /** What it is about, in a person's words. */
    public String title() {
        return title;
    }

    /** The keys of the values by which a row of a product is told from its others. */
    List<String> key() {
        return key;
    }

    public static Optional<ShelfTable> of(String word) {
        return Arrays.stream(values())
                .filter(table -> table.word().equals(word))
                .findFirst();
    }

    /** Today's key of a value, which an older book may call otherwise. */
    public static String keyOf(String kept) {
        return FORMER.getOrDefault(kept, kept);
    }

    /** What older links call a value; its key where it was always called so. */
    static String formerly(String key, ShelfTable table) {
        return FORMER.entrySet().stream()
                .filter(former -> former.getValue().equals(key)
                        && !(table == SOIL_RATES && former.getKey().startsWith("for")))
                .map(Map.Entry::getKey)
                .findFirst()
                .orElse(key);
    }

    Attribute<?, ?> attribute(String of) {
        return sheet.attribute(of);
    }

    /** What a value is called. */
    String title(String of) {
        String called = attribute(of).column().title();
        String words = of.replace('_', ' ');
        return called.isEmpty() ? Character.toUpperCase(words.charAt(0)) + words.substring(1) : called;
    }

    /** The unit of a value; {@code /ac} where the value carries its own and is for an acre. */
    String unit(String of) {
        return attribute(of).storage() instanceof Storage.AmountAndUnit
                ? "/ac"
                : attribute(of).column().unit();
    }

    /** A value with its unit; empty stays empty. */
    String shown(String of, String value) {
        String unit = unit(of);
        if (value.isEmpty() || unit.isEmpty() || value.equals("none")) {
            return value;
        }
        return unit.startsWith("/") ? value + unit : value + " " + unit;
    }

    /** A value of a row as a person writes it; empty where it is unknown. */
    String text(Record row, String of) {
        return ValueText.show(attribute(of), value(sheet, row, of));
    }

    String product(Record row) {
        return String.valueOf(value(sheet, row, PRODUCT));
    }

    /** Where the values of a row stand; empty where its table has no such column. */
    String source(Record row) {
        return hasSource() ? String.valueOf(value(sheet, row, SOURCE)) : "";
    }

    private boolean hasSource() {
        return sheet.attributes().stream().anyMatch(each -> each.key().equals(SOURCE));
    }

    /** A row of which nothing is known but its name and some values; empty where it lacks what every row has. */
    Optional<Record> row(RowName name, String product, Map<String, Object> values, String source) {
        Map<String, Object> known = new HashMap<>(values);
        known.put(PRODUCT, product);
        name.key().forEach((of, text) -> known.putIfAbsent(of, ValueText.kept(attribute(of), text)));
        if (hasSource()) {
            known.put(SOURCE, source);
        }
        boolean whole = sheet.attributes().stream()
                .allMatch(each -> !each.column().required() || known.get(each.key()) != null);
        return whole ? Optional.of(sheet.made(known::get)) : Optional.empty();
    }

    /** The row with other values; the others stay. */
    Record with(Record row, Map<String, Object> changed, String source) {
        Map<String, Object> values = new LinkedHashMap<>(changed);
        if (hasSource()) {
            values.put(SOURCE, source);
        }
        return with(sheet, row, values);
    }

    @SuppressWarnings("unchecked") // a row of this table
    private static <R extends Record> Record with(Sheet<R> sheet, Record row, Map<String, Object> values) {
        return sheet.with((R) row, values);
    }

    @SuppressWarnings("unchecked") // a row of this table
    private static <R extends Record> @Nullable Object value(Sheet<R> sheet, Record row, String of) {
        return sheet.attribute(of).getter().of((R) row);
    }
}
