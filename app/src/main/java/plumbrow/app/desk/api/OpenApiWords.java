package plumbrow.app.desk.api;

import java.util.LinkedHashMap;
import java.util.Map;

/** What each operation under {@code /api} answers, in a sentence. A test asks for one of every handler. */
final class OpenApiWords {
    private static final Map<String, String> WORDS = new LinkedHashMap<>();

    static {
        say("GET /api/openapi.json", "This description.");
        say("GET /api/advice", "The advice for every field, or those of a farm.");
        say("GET /api/ask", "The questions that can be asked with typical values.");
        say("GET /api/ask/{id}", "The answer to a question with what is told, and what to tell next.");
        say("GET /api/check", "Every program of every field against the gates.");
        say("GET /api/fields/{name}/advice", "The advice for a field.");
        say("GET /api/fields/{name}/check", "The programs of a field against the gates.");
        say("GET /api/fields/{name}/hours", "Hours fit for a pass.");
        say("GET /api/fields/{name}/machine-file", "Rates and setbacks of a pass for a machine.");
        say("POST /api/fields/{name}/machine-file", "Reads a machine's file back against a pass.");
        say("GET /api/fields/{name}/map", "What lies around a field and how far.");
        say("GET /api/fields/{name}/map.geojson", "Outline, features and zones of a field.");
        say("GET /api/fields/{name}/mix", "The load card of a pass: what goes into each tank, in which order.");
        say("GET /api/fields/{name}/next", "What to tell or look up next, by what it is worth.");
        say("GET /api/fields/{name}/plan", "The field's plan on one page.");
        say("GET /api/fields/{name}/rate-map", "Rates of a pass over the ground of a field.");
        say("GET /api/fields/{name}/search", "Programs found by a search over passes, rates and days.");
        say("GET /api/fields/{name}/season", "The season of a field's weeds under a program.");
        say("GET /api/fields/{name}/years", "What the best rotation earns over the next years.");
        say("GET /api/fields/{name}/zones", "Parts of a field that a program may not treat.");
        say("GET /api/figures", "Every figure with its question.");
        say("GET /api/figures/{id}", "The answer of a figure for the inputs given.");
        say("GET /api/gates", "Every gate with its question.");
        say("GET /api/gates/{id}", "A gate: what it asks, protects and needs.");
        say("GET /api/harvests", "Every harvest in the order of writing.");
        say(
                "POST /api/harvests/{year}",
                "Writes a harvest down: field, yield_bu_ac, who, source, and what else is known.");
        say("GET /api/history", "Every change of the season.");
        say("POST /api/history/{number}/undo", "Takes a change back.");
        say("GET /api/ingredients", "Active ingredients of the reference data.");
        say("GET /api/ingredients/{name}", "What is kept of an active ingredient.");
        say("GET /api/log", "Lines of the log.");
        say("POST /api/log", "Writes a line of the log down.");
        say("POST /api/log/{number}/pass", "Says which planned pass a line was.");
        say("POST /api/log/{number}/strike", "Strikes a line of the log; it stays.");
        say(
                "GET /api/lookback",
                "What harvests earned beside what was expected; how honest odds and assumptions were.");
        say("GET /api/map", "What lies around every field.");
        say("POST /api/map", "Shows what a map file would bring.");
        say("GET /api/papers", "Papers that the book keeps.");
        say("GET /api/papers/{id}", "A paper with what was read on it.");
        say("GET /api/papers/{id}/card", "The card of a paper's product.");
        say("GET /api/papers/{id}/values", "Values of a label, with what was decided.");
        say("POST /api/papers/{id}/values", "Decides about values of a label.");
        say("POST /api/papers/{id}/mends", "Puts a value right that was read on a paper.");
        say("GET /api/pests", "Weeds and insects of the season and of the reference data.");
        say("GET /api/pests/{name}", "The page of a pest.");
        say("GET /api/plan", "The plan of a farm: programs that fit machines, hours and money together.");
        say("GET /api/records", "Application records.");
        say("POST /api/records", "Writes an application record down.");
        say("GET /api/records/check", "What records lack by the rules that hold for them.");
        say("GET /api/records/start", "A record as far as plan, label and weather fill it in.");
        say("GET /api/records/{number}", "An application record.");
        say("POST /api/records/{number}/correct", "Writes a corrected record in the place of one; both stay.");
        say("POST /api/records/{number}/void", "Voids a record; it stays.");
        say("GET /api/season", "Every table of the season with the number of its rows.");
        say("POST /api/season", "Adds a row to each of several tables at once.");
        say("GET /api/season/{table}", "Columns and rows of a table.");
        say("POST /api/season/{table}", "Adds a row.");
        say("GET /api/season/{table}/{row}", "A row with every column.");
        say("POST /api/season/{table}/{row}", "Changes cells of a row.");
        say("POST /api/season/{table}/{row}/remove", "Removes a row that no other refers to.");
        say("GET /api/seasons", "The harvest years in the book.");
        say("POST /api/seasons/next", "Begins the next season, or says what it would take over.");
        say("GET /api/today", "Fit hours of today and the days after, field by field.");
    }

    private OpenApiWords() {}

    private static void say(String operation, String sentence) {
        WORDS.put(operation, sentence);
    }

    /** What an operation answers; empty where nobody has written it. */
    static String of(String operation) {
        return WORDS.getOrDefault(operation, "");
    }
}
