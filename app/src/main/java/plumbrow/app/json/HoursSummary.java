package plumbrow.app.json;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.hours.FinishOdds;
import plumbrow.advice.hours.HourRule;
import plumbrow.advice.hours.JobHours;
import plumbrow.advice.hours.SprayHour;
import plumbrow.advice.hours.TripHours;

/** The hours of a trip as JSON. Times carry the offset of the clock there. */
public record HoursSummary(
        String field,
        String program,
        List<String> products,
        @Nullable LocalDate planned,
        LocalDate first,
        LocalDate last,
        String sentence,
        double acres,
        @Nullable String machine,
        @Nullable Double acresPerHour,
        @Nullable Double neededHours,
        long fitHours,
        long unknownHours,
        List<Run> runs,
        @Nullable Odds odds,
        List<Rule> rules,
        List<Hour> hours,
        List<String> cautions,
        String weather) {

    record Run(String from, int hours) {}

    record Odds(LocalDate windowFrom, LocalDate windowUntil, int years, long finished, long unknown, String says) {}

    record Rule(
            String on,
            String whose,
            String owner,
            @Nullable Double least,
            @Nullable Double most,
            @Nullable String unread,
            String source) {}

    record Why(String on, String whose, String owner, String says, String source) {}

    record Hour(
            String begin,
            String standing,
            boolean forecast,
            @Nullable Double temperatureC,
            @Nullable Double humidityPct,
            @Nullable Double windStationMph,
            @Nullable Double windBoomMph,
            @Nullable Double gustBoomMph,
            @Nullable Double windFromDeg,
            @Nullable Double rainIn,
            @Nullable Double rainChancePct,
            @Nullable Double deltaTC,
            String mind,
            String inversion,
            List<Why> ruledOutBy,
            List<Why> unknown) {}

    public static HoursSummary of(TripHours trip) {
        JobHours job = trip.job();
        FinishOdds odds = trip.odds();
        return new HoursSummary(
                trip.field(),
                trip.program(),
                trip.products(),
                trip.planned(),
                trip.first(),
                trip.last(),
                trip.sentence(),
                trip.acres(),
                trip.machine(),
                trip.acresPerHour(),
                trip.neededHours(),
                job.fit(),
                job.count(SprayHour.Standing.UNKNOWN),
                job.runs().stream()
                        .map(run -> new Run(
                                run.from()
                                        .atZone(trip.zone())
                                        .toOffsetDateTime()
                                        .toString(),
                                run.hours()))
                        .toList(),
                odds == null
                        ? null
                        : new Odds(
                                odds.from(),
                                odds.until(),
                                odds.years().size(),
                                odds.finished(),
                                odds.unknown(),
                                odds.words()),
                trip.rules().stream().map(HoursSummary::rule).toList(),
                trip.hours().stream().map(hour -> hour(trip, hour)).toList(),
                trip.cautions(),
                trip.source());
    }

    private static Rule rule(HourRule rule) {
        return new Rule(
                rule.kind().word(),
                rule.whose().word(),
                rule.owner(),
                rule.least(),
                rule.most(),
                rule.unread().isEmpty() ? null : rule.unread(),
                rule.source());
    }

    private static Hour hour(TripHours trip, SprayHour hour) {
        var air = hour.weather();
        return new Hour(
                hour.begin().atZone(trip.zone()).toOffsetDateTime().toString(),
                hour.standing().word(),
                air.forecast(),
                air.temperatureC(),
                air.humidityPct(),
                air.windMph(),
                hour.windBoomMph(),
                hour.gustBoomMph(),
                air.windFromDeg(),
                air.rainIn(),
                air.rainChancePct(),
                hour.deltaTC(),
                hour.mind(),
                hour.inversion(),
                hour.out().stream().map(HoursSummary::why).toList(),
                hour.unknown().stream().map(HoursSummary::why).toList());
    }

    private static Why why(SprayHour.Said said) {
        HourRule rule = said.rule();
        return new Why(rule.kind().word(), rule.whose().word(), rule.owner(), said.says(), rule.source());
    }
}
