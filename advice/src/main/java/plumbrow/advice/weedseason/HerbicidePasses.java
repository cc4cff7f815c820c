package plumbrow.advice.weedseason;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.assumptions.DoubtKind;
import plumbrow.advice.field.Field;
import plumbrow.advice.program.Pass;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.ActiveName;
import plumbrow.advice.weeds.Timing;
import plumbrow.science.figure.Numbers;
import plumbrow.science.weedseason.Chemistry;
import plumbrow.science.weedseason.Emergence;
import plumbrow.science.weedseason.LeafResponse;
import plumbrow.science.weedseason.Post;
import plumbrow.science.weedseason.RatingOdds;
import plumbrow.science.weedseason.Residual;
import plumbrow.science.weedseason.SoilResponse;
import plumbrow.science.weedseason.SoilTrial;
import plumbrow.science.weedseason.Uncertain;

/**
 * A herbicide pass as the engine knows it: on soil, on leaves, or both, by the ratings that exist.
 *
 * A rating of the product, or published for its active ingredients together, is one pass. Where only single active
 * ingredients are rated, each is a pass of its own: that what they let through multiplies is independence, an assumption.
 *
 * A rating on soil counts all that came up by the day it was seen: the ED50 is fitted so that the season model gives it back in
 * the trial ({@link SoilTrial}), which was on the field's own days for an own rating and the usual trial for any other; slope 3 is
 * usual (common practice) where no second look tells it. On leaves slope 2.5 and
 * the power of height 1.2 (Sivesind et al. 2011: .93 to 1.59). A spray misses 2 plants in 100: common practice, no source.
 */
final class HerbicidePasses {
    private static final double SOIL_SLOPE = 3;
    private static final double LEAF_SLOPE = 2.5;
    private static final double HEIGHT_POWER = 1.2;
    private static final double MISSED = .02;
    private static final double HOURS_UNTIL_WORKED_IN = 2;

    /** Rain within days that puts all of it to work [mm], where the days have their rain (common practice). */
    private static final double RAIN_NEED_MM = 20;

    private final Season season;
    private final FieldClimate climate;
    private final SeasonInputs inputs;
    private final List<FieldWeed> weeds;
    private final List<EngineColumn> columns;
    private final List<String> notes;
    private final RatingBook ratings;
    private final Groups groups = new Groups();
    private final Map<Fitted, RatingOdds> odds = new HashMap<>();

    /** What the odds of drawn ratings hang on. */
    private record Fitted(FoundRating rating, Chemistry chemistry, Emergence emergence) {}

    HerbicidePasses(
            Season season,
            Field field,
            FieldClimate climate,
            SeasonInputs inputs,
            List<FieldWeed> weeds,
            List<EngineColumn> columns,
            List<String> notes) {
        this.season = season;
        this.climate = climate;
        this.inputs = inputs;
        this.weeds = weeds;
        this.columns = columns;
        this.notes = notes;
        this.ratings = new RatingBook(season, field.crop());
    }

    Groups groups() {
        return groups;
    }

    /** @param after days it must wait after tillage of its own day */
    List<MadePass> of(Pass pass, int day, int after, Uncertain daysLate) {
        String product = Objects.requireNonNull(pass.product());
        List<String> actives = season.shelf().actives(product).stream()
                .map(active -> ActiveName.plain(active.ingredient()))
                .toList();
        boolean[] rated = new boolean[weeds.size()];
        List<MadePass> made = new ArrayList<>();
        for (Timing timing : Timing.values()) {
            List<@Nullable FoundRating> whole = new ArrayList<>();
            for (FieldWeed weed : weeds) {
                whole.add(ratings.own(product, weed, timing, Objects.requireNonNull(pass.rate()))
                        .or(() -> ratings.published(product, actives, weed, timing))
                        .orElse(null));
            }
            add(made, pass, day, after, daysLate, timing, product, actives, whole, rated);
            if (actives.size() > 1) {
                for (String active : actives) {
                    List<@Nullable FoundRating> single = new ArrayList<>();
                    for (int j = 0; j < weeds.size(); j++) {
                        single.add(
                                whole.get(j) != null
                                        ? null
                                        : ratings.published(product, List.of(active), weeds.get(j), timing)
                                                .orElse(null));
                    }
                    add(
                            made,
                            pass,
                            day,
                            after,
                            daysLate,
                            timing,
                            product + " (" + active + ")",
                            List.of(active),
                            single,
                            rated);
                }
            }
        }
        for (int j = 0; j < rated.length; j++) {
            if (!rated[j]) {
                note("How " + product + " works on " + weeds.get(j).name()
                        + " is unknown: it is counted as not working. Enter a rating in the sheet ratings.");
            }
        }
        return made;
    }

    private void note(String sentence) {
        if (!notes.contains(sentence)) {
            notes.add(sentence);
        }
    }

    private void add(
            List<MadePass> made,
            Pass pass,
            int day,
            int after,
            Uncertain daysLate,
            Timing timing,
            String name,
            List<String> actives,
            List<@Nullable FoundRating> found,
            boolean[] rated) {
        if (found.stream().allMatch(Objects::isNull)) {
            return;
        }
        Amount rate = Objects.requireNonNull(pass.rate());
        int group = groups.number(sites(actives));
        if (timing == Timing.SOIL) {
            Chemistries.Known known = Chemistries.ofLongest(actives);
            known.says().forEach(this::note);
            Chemistry chemistry = known.chemistry();
            List<SoilResponse> responses = new ArrayList<>();
            for (int j = 0; j < found.size(); j++) {
                FoundRating one = found.get(j);
                rated[j] |= one != null;
                responses.add(one == null ? SoilResponse.none() : soil(one, rate, chemistry, name, j));
            }
            made.add(new MadePass(
                    pass.number(),
                    new Residual(
                            name,
                            day + after,
                            daysLate,
                            group,
                            rate.inBase(),
                            chemistry,
                            RAIN_NEED_MM,
                            Optional.empty(),
                            HOURS_UNTIL_WORKED_IN,
                            responses),
                    after));
            return;
        }
        List<LeafResponse> responses = new ArrayList<>();
        for (int j = 0; j < found.size(); j++) {
            FoundRating one = found.get(j);
            rated[j] |= one != null;
            responses.add(one == null ? LeafResponse.none() : leaf(one, rate, name, j));
        }
        made.add(new MadePass(
                pass.number(), new Post(name, day + after, daysLate, group, rate.inBase(), MISSED, responses), after));
    }

    private static Set<String> sites(List<String> actives) {
        Set<String> sites = new TreeSet<>();
        for (String active : actives) {
            List<String> known = Chemistries.groups(active);
            if (known.isEmpty()) {
                return Set.of();
            }
            sites.addAll(known);
        }
        return sites;
    }

    private SoilResponse soil(FoundRating rating, Amount rate, Chemistry chemistry, String name, int weed) {
        double likely = held(rating.likely());
        if (likely == 0) {
            return SoilResponse.none();
        }
        Emergence emergence = weeds.get(weed).species().emergence();
        SoilTrial trial = rating.onOwnGround()
                ? SoilTrial.on(climate.days(), emergence, rating.seenDays())
                : SoilTrial.usual(emergence, rating.seenDays());
        double slope = slope(rating, likely, trial, chemistry, name, weed);
        int place = doubt(rating, name, weed, Timing.SOIL);
        return trial.response(
                likely,
                rated(rating, rate, name),
                slope,
                chemistry,
                ProgramPasses.drawn(
                        columns,
                        new EngineColumn.Rated(
                                place,
                                odds.computeIfAbsent(
                                        new Fitted(rating, chemistry, emergence),
                                        key -> trial.odds(likely, slope, chemistry)))));
    }

    /** The slope that a second look gives, where there is one that can be; else the usual one. */
    private double slope(
            FoundRating rating, double likely, SoilTrial trial, Chemistry chemistry, String name, int weed) {
        FoundRating.Later later = rating.later();
        if (later == null) {
            return SOIL_SLOPE;
        }
        OptionalDouble slope = trial.slope(likely, held(later.control()), later.seenDays(), chemistry);
        if (slope.isEmpty()) {
            note("The ratings of " + name + " on " + weeds.get(weed).name() + " after " + rating.seenDays() + " and "
                    + later.seenDays()
                    + " days can't both come of one residual that fades: the later one must be below "
                    + percent(likely) + " % and above " + percent(trial.leastLater(likely, later.seenDays()))
                    + " %, as what was controlled does not come back. Only the first is counted; look at what"
                    + " day and how (plants or size) they were rated.");
            return SOIL_SLOPE;
        }
        return slope.getAsDouble();
    }

    private static String percent(double share) {
        return Numbers.fixed(100 * share, 0);
    }

    private LeafResponse leaf(FoundRating rating, Amount rate, String name, int weed) {
        double likely = held(rating.likely());
        if (likely == 0) {
            return LeafResponse.none();
        }
        LeafResponse seen =
                LeafResponse.seen(likely * 100, rated(rating, rate, name), LEAF_SLOPE, rating.heightCm(), HEIGHT_POWER);
        return new LeafResponse(
                seen.ed50(),
                seen.slope(),
                seen.referenceCm(),
                seen.heightPower(),
                ProgramPasses.drawn(columns, new EngineColumn.Odds(doubt(rating, name, weed, Timing.LEAF), likely)));
    }

    /** The rate a rating holds for; where the label's rate isn't on file, that of the pass is taken as the labelled one. */
    private double rated(FoundRating rating, Amount rate, String name) {
        Amount known = rating.rate();
        if (known != null && known.comparableWith(rate)) {
            return known.inBase();
        }
        note("The labelled rate of " + name + " is not on file: the rate of the pass is taken as it.");
        return rate.inBase();
    }

    private static double held(double likely) {
        return Math.min(EngineColumn.MOST_CONTROL, Math.max(0, likely));
    }

    /** The place of a rating's doubt. */
    private int doubt(FoundRating rating, String name, int weed, Timing timing) {
        String on = weeds.get(weed).name() + ", " + timing.word();
        Amount rate = rating.rate();
        String at = rate == null ? "" : " at " + rate.text() + "/ac";
        return inputs.place(
                "rating: " + name + " on " + on + (rate == null ? "" : " at " + rate.text()),
                "control of " + weeds.get(weed).name() + " by " + name + at
                        + (timing == Timing.SOIL ? " in the soil" : " on leaves"),
                "share",
                rating.distribution(),
                rating.source(),
                "rating " + name + " on " + on + (rate == null ? "" : " at " + rate.text()),
                DoubtKind.YEAR);
    }
}
