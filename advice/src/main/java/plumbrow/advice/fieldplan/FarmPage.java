package plumbrow.advice.fieldplan;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The first page of a packet: one farm's fields, what they come to together, what is to be bought, and which day has which work.
 * One farm, one grower: no other's money is in it.
 *
 * @param rows fields in the order of the season
 * @param totals what they come to, in sentences
 * @param purchases what the passes that are not done yet take and is bought, by product
 * @param purchasesSay what the list leaves out, in sentences
 * @param weeks weeks with work that is not done, in order; work without a day last
 */
public record FarmPage(
        int year,
        LocalDate asOf,
        String adviser,
        String farm,
        String grower,
        List<Row> rows,
        List<String> totals,
        List<Purchase> purchases,
        List<String> purchasesSay,
        List<Week> weeks) {
    public FarmPage {
        rows = List.copyOf(rows);
        totals = List.copyOf(totals);
        purchases = List.copyOf(purchases);
        purchasesSay = List.copyOf(purchasesSay);
        weeks = List.copyOf(weeks);
    }

    /**
     * A field in a line.
     *
     * @param program what is done on it; null where nothing may be yet
     * @param costUsd the operator's [$]; null where not known, {@code gainUsd} over the baseline on average [$]
     * @param wants what it wants first; empty where nothing
     */
    public record Row(
            String field,
            double acres,
            String crop,
            @Nullable String program,
            FieldPlan.Basis basis,
            @Nullable Double costUsd,
            @Nullable Double gainUsd,
            String wants) {}

    /**
     * What is bought of one product.
     *
     * @param takes what the fields take, with its unit
     * @param shed what of it is in the shed; empty where none is on file
     * @param buy what is to be bought, in packages where their size is on file
     * @param priceUsd price of one unit at that quantity [$]; null where it has no price
     * @param costUsd what it costs [$]; null likewise
     * @param says what is to be known of it: a price break, a short supply; empty for nothing
     */
    public record Purchase(
            String product,
            String takes,
            String shed,
            String buy,
            @Nullable Double priceUsd,
            String pricedPer,
            @Nullable Double costUsd,
            String says) {}

    /**
     * The work of a week.
     *
     * @param monday its first day; null for work without a day
     * @param machines hours that each machine has to work in it, in words; empty where none is known
     */
    public record Week(@Nullable LocalDate monday, List<Job> jobs, String machines) {
        public Week {
            jobs = List.copyOf(jobs);
        }

        /** "Week of May 4", "no day planned". */
        public String name() {
            return monday == null ? "No day planned" : "Week of " + PlanWords.date(monday);
        }
    }

    /**
     * The same work on one day, on one field or several.
     *
     * @param acres of all of them
     * @param machine empty where none is known
     */
    public record Job(@Nullable LocalDate day, String what, List<String> fields, double acres, String machine) {
        public Job {
            fields = List.copyOf(fields);
        }

        /** "Fri, May 8". */
        public String when() {
            return day == null ? "–" : PlanWords.day(day);
        }
    }
}
