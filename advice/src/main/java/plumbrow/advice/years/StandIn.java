package plumbrow.advice.years;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.assumptions.AssumptionLine;
import plumbrow.advice.field.Crop;
import plumbrow.advice.field.Field;
import plumbrow.advice.field.NextCrop;
import plumbrow.advice.pests.InsectPressure;
import plumbrow.advice.pests.Pests;
import plumbrow.advice.pests.WeedPressure;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.PassKind;
import plumbrow.advice.program.Program;
import plumbrow.advice.season.Ground;
import plumbrow.advice.season.Season;

/**
 * A season as a field would see it in a year of its rotation.
 *
 * <p>A program of another field brings its crop, its assumptions and the insects of that crop with it; the ground, the weeds and
 * what they resist stay this field's. Where the other field has the same weed, what a plant of it costs in that crop is taken
 * from there.
 */
final class StandIn {
    private StandIn() {}

    /** The season in which {@code field} is grown under the step. */
    static Season season(Season season, Field field, Rotation.Step step) {
        if (step.from().equals(field.name())) {
            return season;
        }
        Field other = season.field(step.from()).orElseThrow();
        Field grown = field.growing(other.crop());
        Program program = season.programs(other.name()).stream()
                .filter(one -> one.name().equals(step.program()))
                .map(one -> new Program(field.name(), one.name(), true, one.refuge(), one.note(), one.passes()))
                .findFirst()
                .orElseThrow();
        List<Program> programs = Stream.concat(
                        season.programs().stream().filter(one -> !one.field().equals(field.name())), Stream.of(program))
                .toList();
        return season.withFields(season.fields().stream()
                        .map(one -> one.name().equals(field.name()) ? grown : one)
                        .toList())
                .withPests(pests(season.pests(), field.name(), other.name()))
                .withPrograms(programs)
                .withAssumptions(assumptions(season.assumptions(), field.name(), other.name()));
    }

    private static Pests pests(Pests pests, String field, String other) {
        List<InsectPressure> insects = Stream.concat(
                        pests.insects().stream().filter(one -> !one.field().equals(field)),
                        pests.insects().stream()
                                .filter(one -> one.field().equals(other))
                                .map(one -> new InsectPressure(
                                        field,
                                        one.insect(),
                                        one.measure(),
                                        one.pressure(),
                                        one.lossPerUnitPct(),
                                        one.neighbourShare(),
                                        one.sample(),
                                        one.scouted(),
                                        one.source() + "; as on " + other)))
                .toList();
        List<WeedPressure> weeds = pests.weeds().stream()
                .map(one -> one.field().equals(field) ? inOtherCrop(pests, one, other) : one)
                .toList();
        return pests.withPressure(insects, weeds);
    }

    private static WeedPressure inOtherCrop(Pests pests, WeedPressure weed, String other) {
        return pests.weeds().stream()
                .filter(one -> one.field().equals(other) && one.weed().equals(weed.weed()))
                .findFirst()
                .map(one -> new WeedPressure(
                        weed.field(),
                        weed.weed(),
                        weed.densityPerSquareMetre(),
                        one.lossPerPlantPct(),
                        one.mostLossPct(),
                        weed.source()))
                .orElse(weed);
    }

    private static List<AssumptionLine> assumptions(List<AssumptionLine> lines, String field, String other) {
        return Stream.concat(
                        lines.stream()
                                .filter(line -> other.equals(line.field()))
                                .map(line -> new AssumptionLine(
                                        null, field, line.quantity(), line.distribution(), line.source())),
                        lines.stream().filter(line -> !field.equals(line.field())))
                .toList();
    }

    /** The same season with one crop to follow, planted a year after the day on which its program plants it. */
    static Season followedBy(Season season, Field field, Crop crop, Program next) {
        @Nullable
        LocalDate planted = next.passes().stream()
                .filter(pass -> pass.kind() == PassKind.SEED)
                .map(Pass::date)
                .filter(Objects::nonNull)
                .min(LocalDate::compareTo)
                .map(day -> day.plusYears(1))
                .orElse(null);
        Ground ground = season.ground();
        List<NextCrop> nextCrops = Stream.concat(
                        ground.nextCrops().stream().filter(one -> !one.field().equals(field.name())),
                        Stream.of(new NextCrop(field.name(), crop.word(), planted, NextCrop.Use.NEXT, null)))
                .toList();
        return season.withGround(ground.withNextCrops(nextCrops));
    }
}
