package plumbrow.documents.label.text;

import java.util.Optional;
import java.util.regex.Pattern;

/** What a column of a label's table holds, told from its head. */
public enum Column {
    PRE_HARVEST(true, "pre-?harvest|\\bPHI\\b|before harvest|days to harvest"),
    GRAZING(true, "graz|feeding|forage|hay interval"),
    REENTRY(true, "re-?(?:stricted[- ])?entry|restricted.entry|\\bREI\\b"),
    PLANT_BACK(
            true,
            "plant-?back|rotation(?:al)? interval|interval (?:after|from|before) |replant|months after|before planting|^intervals? \\(?(?:in )?months\\)?$"),
    APPLICATIONS(true, "(?:number|no\\.|#|maximum) of app|max\\.? (?:no\\.? )?app|applications (?:per|/)"),
    REAPPLICATION(
            true,
            "(?:re-?treatment|re-?application|application|spray|minimum|min\\.?) interval|days between|between applications"),
    SEASON_MAX(
            true,
            "(?:max\\S*|total|annual|season\\S*).*(?:per|/|year|season|annual|crop)|annual|per (?:crop )?(?:year|season)"),
    SINGLE_MAX(true, "max\\S*.*(?:single|per app|each app)"),
    ORGANIC_RATE(true, "organic matter|\\bO\\.?M\\.?\\b"),
    ORGANIC_MATTER(false, "organic matter|\\bO\\.?M\\.?\\b"),
    TEXTURE(false, "soil(?: texture| type| group)?|texture"),
    RATE(true, "\\brate|product per|amount|use rate|dosage"),
    TIMING(false, "timing|when to|stage|time of|application time"),
    METHOD(false, "method|type of app|placement"),
    CROP(false, "crops?\\b|use sites?|\\bsites?\\b|commodity|\\bhabitats?\\b|areas? (?:to be )?treated"),
    OTHER(false, "(?!)");

    private final boolean value;
    private final Pattern head;

    Column(boolean value, String head) {
        this.value = value;
        this.head = Pattern.compile("(?i)" + head);
    }

    /** Whether its cells are amounts. */
    public boolean isValue() {
        return value;
    }

    /** What a head names; the single maximum before the season's. Organic matter with a number heads the rates for it. */
    static Optional<Column> of(String head) {
        if (SINGLE_MAX.head.matcher(head).find()) {
            return Optional.of(SINGLE_MAX);
        }
        for (Column column : values()) {
            boolean fits = column != ORGANIC_RATE || head.matches(".*\\d.*");
            if (fits && column.head.matcher(head).find()) {
                return Optional.of(column);
            }
        }
        return Optional.empty();
    }
}
