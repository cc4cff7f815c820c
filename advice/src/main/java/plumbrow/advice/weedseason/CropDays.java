package plumbrow.advice.weedseason;

import java.time.LocalDate;
import java.util.Optional;
import java.util.stream.Stream;
import plumbrow.advice.field.Field;
import plumbrow.advice.planting.Planting;
import plumbrow.advice.program.PassKind;
import plumbrow.advice.program.Program;
import plumbrow.advice.weeds.CropTiming;
import plumbrow.science.weedseason.Crop;

/**
 * When a crop is up and closed: as typed, else by degree days (86/50, °F) from planting.
 *
 * Corn is up at 115 (value from memory) and closes about stage V14, at 840 (High Plains table); soybean at 130 and 900, in
 * 30-inch rows. That they close then: common practice, no source.
 */
final class CropDays {
    private static final double[] CORN = {115, 840};
    private static final double[] SOYBEAN = {130, 900};

    private CropDays() {}

    /** In one season, planted on the first fit day from the planned one on; empty where its days are neither typed nor to be reckoned. */
    static Optional<Crop> of(SeasonDays climate, Field field, Optional<CropTiming> typed, Planting planting) {
        boolean again = planting.replantedShare() > 0.5;
        Optional<Integer> up = typed.filter(crop -> !again)
                .flatMap(crop -> Optional.ofNullable(crop.up()))
                .map(DayOfYear::of);
        Optional<Integer> closed = typed.filter(crop -> !again)
                .flatMap(crop -> Optional.ofNullable(crop.closed()))
                .map(DayOfYear::of);
        Optional<Integer> planted =
                planting.day().map(DayOfYear::of).filter(climate.days()::has).map(climate::fitFrom);
        double[] needs = needs(field);
        if (up.isEmpty() && planted.isPresent() && needs.length > 0) {
            up = planted.map(day -> climate.dayAfter(day, needs[0]));
        }
        if (closed.isEmpty() && planted.isPresent() && needs.length > 0) {
            closed = planted.map(day -> climate.dayAfter(day, needs[1]));
        }
        if (up.isEmpty() || closed.isEmpty() || !climate.days().has(up.get()) || closed.get() <= up.get()) {
            return Optional.empty();
        }
        return Optional.of(new Crop(up.get(), closed.get()));
    }

    static Optional<LocalDate> planted(Program program) {
        return program.passes().stream()
                .filter(pass -> pass.kind() == PassKind.SEED)
                .flatMap(pass -> Stream.ofNullable(pass.date()))
                .min(LocalDate::compareTo);
    }

    private static double[] needs(Field field) {
        return switch (field.crop()) {
            case CORN -> CORN;
            case SOYBEAN -> SOYBEAN;
            case WHEAT -> new double[0];
        };
    }
}
