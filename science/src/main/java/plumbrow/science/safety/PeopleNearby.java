package plumbrow.science.safety;

import static plumbrow.science.figure.Input.list;
import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Input.text;
import static plumbrow.science.figure.Input.word;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.MEMORY;
import static plumbrow.science.figure.Status.VERIFIED;

import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Arrays;
import java.util.List;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Numbers;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * When people may be in a sprayed field, and how far from a sprayer.
 *
 *   re-entry: end of the application + longest interval of the mix, in elapsed hours, not by the clock on the wall
 *   display: 30 days after the interval ends; records: two years after it
 *   exclusion zone: 100 ft by air, air blast, fog or finer than medium; 25 ft for medium or coarser from more than 12 in;
 *   else none
 *
 * The interval comes from the label and from nothing else. The zone moves with the sprayer and exists while it sprays.
 *
 * Source: 40 CFR 170.405(a) (lexfed.com copy; 2024 rule 89 FR 80767); 40 CFR 156.208(c); display from memory.
 */
public final class PeopleNearby {
    private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("yyyy-MM-dd'T'HH:mm");
    /** The exclusion zone from the air, of fog, and of droplets finer than medium or unknown [ft]. */
    public static final int WIDE_FEET = 100;

    private static final int DISPLAY_DAYS = 30;
    private static final int RECORD_YEARS = 2;

    public static final Figure REENTRY = Figure.declare("reentry-end", Subject.SAFETY)
            .question("From when on may people enter the field?")
            .alsoAsked("When may my crew go back into the field?")
            .alsoAsked("When does the restricted-entry interval (REI) end?")
            .input(text("ended", "End of the application, local time", "2026-05-03T14:30"))
            .input(list(
                    "rei_h",
                    "Restricted-entry interval (REI) on the label of each product of the mix",
                    "h",
                    Range.closed(0, 8760),
                    "12"))
            .input(text("zone", "Time zone of the field", "America/Chicago").optional())
            .output("enter_from", "Entry from", "")
            .output("longest_h", "Interval that counts", "h")
            .output("display_until", "Display and information until", "")
            .output("keep_until", "Records until", "")
            .formula("entry = end of application + longest interval; display 30 days, records 2 years after that")
            .source("[40-cfr-170], 170.309 and 170.311; longest interval of a mix", MEMORY)
            .validity(
                    "Hours are counted as they pass: a night that changes the clock has 23 or 25. Central time unless a zone is given.")
            .caution("The interval is that of the label; early entry has rules and clothing of its own.")
            .example(
                    "ended=2026-05-03T14:30 rei_h=12",
                    "enter_from=2026-05-04T02:30",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "ended=2024-03-09T23:00 rei_h=24 zone=America/Chicago",
                    "enter_from=2024-03-11T00:00",
                    "the night loses an hour",
                    COMPUTED)
            .example(
                    "ended=2026-05-03T14:30 rei_h=4,12,24",
                    "longest_h=24.0 enter_from=2026-05-04T14:30",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "ended=2026-06-10T16:00 rei_h=48",
                    "enter_from=2026-06-12T16:00 display_until=2026-07-12T16:00 keep_until=2028-06-12T16:00",
                    "independent arithmetic",
                    COMPUTED)
            .model(PeopleNearby::solveReentry);

    public static final Figure DEFAULT_INTERVAL = Figure.declare("reentry-check", Subject.SAFETY)
            .question("Is the restricted-entry interval (REI) typed in shorter than the default for its category?")
            .input(number("label_h", "Interval typed from the label", "h", Range.closed(0, 8760), "12"))
            .input(word(
                    "category",
                    "Most severe of skin, eye and skin irritation of the active ingredients",
                    List.of("I", "II", "III", "IV"),
                    "II"))
            .output("default_h", "Default interval", "h")
            .output("verdict", "In words", "")
            .formula("default I 48 h, II 24 h, III and IV 12 h")
            .source("[40-cfr-156.208], (c); [epa-label-training]", VERIFIED)
            .validity(
                    "A check of plausibility only. Some low-risk products have 4 h, some organophosphates in dry country 72 h.")
            .caution("The label's interval holds, whatever this says.")
            .example(
                    "label_h=12 category=II",
                    "default_h=24 verdict=shorter than the default: read the label again",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "label_h=48 category=I",
                    "default_h=48 verdict=not shorter than the default",
                    "independent arithmetic",
                    COMPUTED)
            .model(PeopleNearby::solveDefault);

    public static final Figure ZONE = Figure.declare("exclusion-zone", Subject.SAFETY)
            .question("How far must people stay from the sprayer while it works?")
            .alsoAsked("How close may people come while I spray?")
            .input(word(
                    "method",
                    "Way of applying",
                    List.of("aerial", "air-blast", "fog", "spray", "granules", "injection"),
                    "spray"))
            .input(word(
                            "droplets",
                            "Droplet class of the spray",
                            List.of("finer", "medium-or-coarser", "unknown"),
                            "medium-or-coarser")
                    .orElse("unknown"))
            .input(number("height_in", "Height of the nozzles over soil or crop", "in", Range.closed(0, 1000), "20")
                    .optional())
            .output("distance_ft", "Exclusion zone", "ft")
            .formula("aerial, air blast, fog or finer than medium 100 ft; medium or coarser above 12 in 25 ft; else 0")
            .source("[40-cfr-170.405], (a)", VERIFIED)
            .validity(
                    "Droplets unknown count as fine; height unknown counts as above 12 in. Exactly 12 in is not above.")
            .caution(
                    "Stop while anyone but trained handlers is inside, beyond the fence too. Label buffers are separate: the larger holds.")
            .example("method=aerial droplets=medium-or-coarser", "distance_ft=100", "independent arithmetic", COMPUTED)
            .example(
                    "method=spray droplets=medium-or-coarser height_in=20",
                    "distance_ft=25",
                    "independent arithmetic",
                    COMPUTED)
            .example("method=spray droplets=finer height_in=20", "distance_ft=100", "independent arithmetic", COMPUTED)
            .example(
                    "method=spray droplets=medium-or-coarser height_in=12",
                    "distance_ft=0.0",
                    "independent arithmetic",
                    COMPUTED)
            .example("method=spray droplets=finer height_in=10", "distance_ft=100", "independent arithmetic", COMPUTED)
            .example("method=granules", "distance_ft=0.0", "independent arithmetic", COMPUTED)
            .example(
                    "method=spray droplets=unknown height_in=18", "distance_ft=100", "independent arithmetic", COMPUTED)
            .model(PeopleNearby::solveZone);

    private PeopleNearby() {}

    /**
     * The exclusion zone of spraying from the ground [ft].
     *
     * @param mediumOrCoarser whether the droplets are known to be medium or coarser
     * @param atMostTwelveInches whether the nozzles are known to run no more than 12 in over soil or crop
     */
    public static int sprayZoneFeet(boolean mediumOrCoarser, boolean atMostTwelveInches) {
        if (!mediumOrCoarser) {
            return WIDE_FEET;
        }
        return atMostTwelveInches ? 0 : 25;
    }

    private static Outputs solveReentry(Given given, Working working) {
        double[] intervals = given.list("rei_h");
        double longest = working.step(
                "longest interval",
                intervals.length == 1
                        ? Numbers.plain(intervals[0])
                        : "longest of " + Numbers.terms(intervals).replace(" + ", ", "),
                Arrays.stream(intervals).max().orElse(0),
                "h");
        ZonedDateTime enter = ended(given).plusMinutes(Math.round(longest * 60));
        return new Outputs()
                .put("enter_from", MINUTE.format(enter))
                .put("longest_h", longest)
                .put("display_until", MINUTE.format(enter.plusDays(DISPLAY_DAYS)))
                .put("keep_until", MINUTE.format(enter.plusYears(RECORD_YEARS)));
    }

    private static ZonedDateTime ended(Given given) {
        ZoneId zone;
        try {
            zone = ZoneId.of(given.has("zone") ? given.word("zone") : "America/Chicago");
        } catch (DateTimeException unknown) {
            throw given.refuse("zone", "a time zone such as America/Chicago");
        }
        try {
            return LocalDateTime.parse(given.word("ended")).atZone(zone);
        } catch (DateTimeException unreadable) {
            throw given.refuse("ended", "a day and time such as 2026-05-03T14:30");
        }
    }

    private static Outputs solveDefault(Given given, Working working) {
        String category = given.word("category");
        int hours = switch (category) {
            case "I" -> 48;
            case "II" -> 24;
            default -> 12;
        };
        double label = given.number("label_h");
        double over = working.line("label over default", label - hours, "h", "{} − {}", label, hours);
        return new Outputs()
                .put("default_h", hours)
                .put(
                        "verdict",
                        over < 0 ? "shorter than the default: read the label again" : "not shorter than the default");
    }

    private static Outputs solveZone(Given given, Working working) {
        boolean low = given.has("height_in") && given.number("height_in") <= 12;
        int feet = switch (given.word("method")) {
            case "aerial", "air-blast", "fog" -> WIDE_FEET;
            case "spray" -> sprayZoneFeet(given.word("droplets").equals("medium-or-coarser"), low);
            default -> 0;
        };
        if (given.word("method").equals("spray") && given.word("droplets").equals("unknown")) {
            working.caution("Droplet class unknown: taken as finer than medium.");
        }
        if (feet == 25 && !given.has("height_in")) {
            working.caution("Nozzle height unknown: taken as more than 12 in.");
        }
        return new Outputs().put("distance_ft", working.line("exclusion zone", feet, "ft", "table of the rule"));
    }
}
