package plumbrow.app.book;

import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.crew.Crew;
import plumbrow.advice.crew.Person;
import plumbrow.advice.program.SprayPlan;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.Ask;
import plumbrow.advice.shelf.Droplets;
import plumbrow.advice.shelf.Method;
import plumbrow.advice.stand.StandCount;

/** Who sprays and how. */
final class WorkRows {
    static final RowKind<Person> PERSON = new RowKind<>(
            "person",
            "name licence state valid_until",
            season -> season.work().crew().people(),
            (person, cells) -> cells.text(person.name())
                    .text(person.licence())
                    .text(person.state())
                    .date(person.validUntil()),
            row -> new Person(row.text(), row.maybeText(), row.maybeText(), row.maybeDate()));

    /** One row, or none where nothing of it is known; the gear itself comes with {@link #GEAR}. */
    static final RowKind<Protection> CREW = new RowKind<>(
            "crew",
            "gear_read display",
            WorkRows::protection,
            (crew, cells) -> cells.yes(crew.gear() != null).word(crew.display()),
            row -> new Protection(row.looked(), row.word(Ask.class)));

    static final RowKind<Listed> GEAR =
            Listed.kind("crew_gear", "crew gear", WorkRows::protection, crew -> Listed.sorted(crew.gear()));

    static final RowKind<SprayPlan> SPRAY_PLAN = new RowKind<>(
            "spray_plan",
            "field program pass tank method carrier_gal_ac droplets boom_in drift_reduction_pct crop_stage crop_height_in "
                    + "weed_height_in bloom applicator",
            season -> season.work().sprayPlans(),
            (plan, cells) -> cells.text(plan.field())
                    .text(plan.program())
                    .whole(plan.pass())
                    .text(plan.tank())
                    .word(plan.method())
                    .real(plan.carrierGalPerAcre())
                    .word(plan.droplets())
                    .real(plan.boomIn())
                    .real(plan.driftReductionPct())
                    .text(plan.cropStage())
                    .real(plan.cropHeightIn())
                    .real(plan.weedHeightIn())
                    .word(plan.bloom())
                    .text(plan.applicator()),
            row -> new SprayPlan(
                    row.text(),
                    row.text(),
                    row.whole(),
                    row.maybeText(),
                    row.maybeWord(Method.class),
                    row.maybeReal(),
                    row.maybeWord(Droplets.class),
                    row.maybeReal(),
                    row.maybeReal(),
                    row.maybeText(),
                    row.maybeReal(),
                    row.maybeReal(),
                    row.word(Ask.class),
                    row.maybeText()));

    static final RowKind<StandCount> STAND_COUNT = new RowKind<>(
            "stand_count",
            "field planted counted plants_ac gaps_pct replant_payment_usd_ac source",
            season -> season.work().stands(),
            (count, cells) -> cells.text(count.field())
                    .date(count.planted())
                    .date(count.counted())
                    .distribution(count.plantsPerAcre())
                    .maybeDistribution(count.gapsLossPct())
                    .real(count.paymentUsdPerAcre())
                    .text(count.source()),
            row -> new StandCount(
                    row.text(),
                    row.date(),
                    row.date(),
                    row.distribution(),
                    row.maybeDistribution(),
                    row.maybeReal(),
                    row.text()));

    /** What protects those who work. */
    record Protection(@Nullable Set<String> gear, Ask display) {}

    private WorkRows() {}

    private static List<Protection> protection(Season season) {
        Crew crew = season.work().crew();
        return crew.gear() == null && crew.display() == Ask.UNKNOWN
                ? List.of()
                : List.of(new Protection(crew.gear(), crew.display()));
    }

    /** Who works, and what protects them. */
    static Crew crew(List<Person> people, List<Protection> rows, List<Listed> gear) {
        return Listed.joined(
                        rows,
                        gear,
                        (row, listed) -> new Protection(row.gear() == null ? null : Set.copyOf(listed), row.display()))
                .stream()
                .map(row -> new Crew(people, row.gear(), row.display()))
                .findFirst()
                .orElse(new Crew(people, null, Ask.UNKNOWN));
    }
}
