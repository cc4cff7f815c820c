package plumbrow.advice.weighing;

import static plumbrow.science.figure.Numbers.plain;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import plumbrow.advice.assumptions.AssumptionLine;
import plumbrow.advice.assumptions.AssumptionQuantity;
import plumbrow.advice.assumptions.Chances;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.assumptions.DoubtKind;
import plumbrow.advice.field.Crop;
import plumbrow.advice.field.Field;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.Program;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.Seed;
import plumbrow.advice.stand.StandCount;
import plumbrow.advice.stand.TypicalStand;
import plumbrow.science.stand.CornResponse;
import plumbrow.science.stand.FieldEmergence;
import plumbrow.science.stand.PlantedOn;
import plumbrow.science.stand.SoybeanResponse;

/**
 * Boils the stands of a field's lots down for the kernel, and says what was taken where nobody has entered it.
 *
 * <p>Emergence of all seeds of a field is drawn from one stream: a bad week after planting is bad for each of them, and seeds
 * of the same emergence come up alike. Where a stand was counted, planting dates count too, of the crop that stands as of what
 * replants it; elsewhere the attainable yield is that of the planned date.
 */
final class StandReader {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM", Locale.ENGLISH);

    private final Season season;
    private final Field field;
    private final Variables variables;
    private final List<String> cautions;
    private final Optional<StandCount> count;

    StandReader(Season season, Field field, Variables variables, List<String> cautions) {
        this.season = season;
        this.field = field;
        this.variables = variables;
        this.cautions = cautions;
        this.count = season.work().stand(field.name());
    }

    /**
     * The stand of what a pass plants.
     *
     * @throws SeasonGapException where plants or date can't be reckoned
     */
    LotStand of(Program program, Pass pass, Seed seed, boolean replanted) {
        FieldEmergence crop = emergenceOf(field.crop());
        int best = field.crop() == Crop.WHEAT ? strict() : best();
        int sharpness = field.crop() == Crop.CORN ? sharpness() : -1;
        int late = count.isPresent() && field.crop() != Crop.WHEAT ? late() : -1;
        boolean counted = count.isPresent() && !replanted;
        if (counted) {
            double loss = late < 0 ? 0 : dateLoss(program, count.get().planted(), "the stand that was counted");
            LotStand stand = new LotStand(crop, 0, 1, -1, plants(), best, sharpness, late, loss, gaps());
            cautionOutside(stand, seed);
            return stand;
        }
        double seeds = seeds(program, pass, seed) / 1000;
        LotStand stand = new LotStand(
                crop,
                seeds,
                seed.germinationPct() / 100,
                emergence(seed),
                -1,
                best,
                sharpness,
                late,
                replanted ? replantLoss(program, pass) : 0,
                -1);
        cautionOutside(stand, seed);
        return stand;
    }

    /** What a typed share of yield kept by the stand now means, where it is not all of it. */
    void cautionAboutKept(Seed seed) {
        double kept = Chances.of(seed.standPct()).mean();
        if (kept < 100) {
            say("The seeds sheet says that the stand of " + seed.product() + " keeps "
                    + plain(Math.round(kept * 10) / 10.0)
                    + " % of the yield. That counts besides what too few plants cost: clear it if it meant plants, and"
                    + " enter emergence instead.");
        }
    }

    private static FieldEmergence emergenceOf(Crop crop) {
        return switch (crop) {
            case CORN -> FieldEmergence.CORN;
            case SOYBEAN -> FieldEmergence.SOYBEAN;
            case WHEAT -> FieldEmergence.WHEAT;
        };
    }

    private double seeds(Program program, Pass pass, Seed seed) {
        Amount rate = pass.rate();
        try {
            if (rate == null) {
                throw new IllegalArgumentException("pass " + pass.number() + " gives no rate");
            }
            return SeedCosts.dropped(seed, rate);
        } catch (IllegalArgumentException unknown) {
            throw gap(
                    program,
                    "the plants of " + seed.product() + " can't be calculated: " + unknown.getMessage()
                            + ", so that its seeding rate can't act on the yield");
        }
    }

    private int emergence(Seed seed) {
        String crop = field.crop().word();
        String stream = "emergence of " + crop + " on " + field.name();
        Distribution own = seed.emergencePct();
        if (own != null) {
            return variables.place(
                    "emergence: " + seed.product(),
                    "share of live seeds of " + seed.product() + " that come up",
                    "%",
                    own,
                    "seeds sheet",
                    stream,
                    DoubtKind.YEAR);
        }
        TypicalStand typical = TypicalStand.emergence(field.crop());
        return variables.place(
                "emergence",
                "share of live " + crop + " seeds that come up",
                "%",
                typical.distribution(),
                typical.source(),
                stream,
                DoubtKind.YEAR);
    }

    private int best() {
        Optional<AssumptionLine> line = season.assumptions(field, AssumptionQuantity.BEST_STAND);
        double yield = season.assumptions(field, AssumptionQuantity.YIELD)
                .map(found -> Chances.of(found.distribution()).mean())
                .orElse(0.0);
        TypicalStand typical = line.map(found -> new TypicalStand(found.distribution(), found.source()))
                .orElseGet(() -> TypicalStand.best(field, yield));
        return variables.place(
                "best stand",
                field.crop() == Crop.CORN
                        ? "stand of the highest corn yield"
                        : "stand that brings 98 % of the full soybean yield",
                "plants/ac",
                typical.distribution(),
                typical.source(),
                "best stand of " + field.name(),
                DoubtKind.FIELD);
    }

    private int strict() {
        TypicalStand typical = TypicalStand.strictWheat();
        return variables.place(
                "strict wheat table",
                "chance that thin wheat yields as little as the strict table says",
                "chance",
                typical.distribution(),
                typical.source(),
                "strict wheat table on " + field.name(),
                DoubtKind.FIELD);
    }

    private int sharpness() {
        TypicalStand typical = TypicalStand.sharpness();
        return variables.place(
                "stand sharpness",
                "yield cost by a wrong stand, times the table's",
                "times",
                typical.distribution(),
                typical.source(),
                "stand sharpness on " + field.name(),
                DoubtKind.FIELD);
    }

    private int late() {
        TypicalStand typical = TypicalStand.late();
        return variables.place(
                "late planting",
                "yield cost by a planting date, times the table's",
                "times",
                typical.distribution(),
                typical.source(),
                "late planting on " + field.name(),
                DoubtKind.YEAR);
    }

    private int plants() {
        StandCount known = count.orElseThrow();
        return variables.place(
                "plants counted",
                "plants that live of the stand counted on " + DAY.format(known.counted()),
                "plants/ac",
                known.plantsPerAcre(),
                known.source(),
                "plants counted on " + field.name(),
                DoubtKind.FIELD);
    }

    private int gaps() {
        StandCount known = count.orElseThrow();
        Distribution judged = known.gapsLossPct();
        TypicalStand taken = judged == null ? TypicalStand.gaps() : new TypicalStand(judged, known.source());
        if (judged == null) {
            say("Nobody judged the gaps of the stand on " + field.name()
                    + ": they are drawn from none to 6 % of the yield. Walk the rows and enter it.");
        }
        return variables.place(
                "gaps",
                "yield lost to gaps and uneven plants of the counted stand",
                "% of yield",
                taken.distribution(),
                taken.source(),
                "gaps on " + field.name(),
                DoubtKind.FIELD);
    }

    private double replantLoss(Program program, Pass pass) {
        if (field.crop() == Crop.WHEAT) {
            throw gap(program, "no published answer of wheat to a second planting is known here");
        }
        if (count.orElseThrow().paymentUsdPerAcre() == null) {
            say("Whether the insurance pays for replanting " + field.name()
                    + " is not entered and counted as nothing: ask the agent before tearing up the stand.");
        }
        say(
                "Replanting counts plants, date and cost. Be sure that the cause of the loss is gone, that seed and days are there,"
                        + " and that the residual herbicide's label allows it.");
        LocalDate day = pass.date();
        if (day == null) {
            throw new IllegalStateException("a pass that replants has a date");
        }
        return dateLoss(program, day, "pass " + pass.number());
    }

    /** What a date costs by the table of the crop [% of the best yield]. */
    private double dateLoss(Program program, LocalDate day, String whose) {
        int days = PlantedOn.daysAfterFirstOfApril(day);
        boolean corn = field.crop() == Crop.CORN;
        int last = corn ? CornResponse.LAST_DAY : SoybeanResponse.LAST_DAY;
        if (days > last) {
            throw gap(
                    program,
                    whose + " was or is planted on " + DAY.format(day) + "; the table of "
                            + field.crop().word() + " and" + " planting dates ends on "
                            + (corn ? "9 June" : "20 June"));
        }
        if (corn && days < CornResponse.FIRST_DAY) {
            say("The table of corn and planting dates begins on 10 April: " + DAY.format(day)
                    + " is taken as that day.");
        }
        return corn
                ? CornResponse.dateLossPct(Math.max(CornResponse.FIRST_DAY, days))
                : 100 - SoybeanResponse.datePct(days);
    }

    /** Plants at the means that lie outside what the crop's response was made of. */
    private void cautionOutside(LotStand stand, Seed seed) {
        double plants =
                stand.counted() < 0 ? stand.plantsThousand(mean(stand.emergence())) : mean(stand.counted()) / 1000;
        double best = mean(stand.best()) / 1000;
        String says = "About " + plain(Math.rint(plants) * 1000) + " plants/ac of " + seed.product() + " are ";
        if (field.crop() == Crop.CORN && plants < CornResponse.FEWEST_THOUSAND) {
            say(says + "fewer than any table of corn has: below 10,000 the yield falls in proportion.");
        } else if (field.crop() == Crop.CORN && plants > CornResponse.MOST_OF_BEST * best) {
            say(says + "more than the response of corn holds for: beyond "
                    + plain(Math.rint(CornResponse.MOST_OF_BEST * best) * 1000) + " it is taken as there.");
        } else if (field.crop() == Crop.SOYBEAN && (plants < 25 || plants > 275)) {
            say(says + "outside the 25,000 to 275,000 that the response of soybeans holds for.");
        }
    }

    private double mean(int place) {
        return Chances.of(variables.all().get(place).distribution()).mean();
    }

    private void say(String sentence) {
        if (!cautions.contains(sentence)) {
            cautions.add(sentence);
        }
    }

    private SeasonGapException gap(Program program, String what) {
        return new SeasonGapException(
                field.name() + ", program '" + program.name() + "' can't be weighed: " + what + ".");
    }
}
