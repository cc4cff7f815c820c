package plumbrow.advice.weedseason;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbrow.advice.field.Field;
import plumbrow.advice.planting.Planting;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.PassKind;
import plumbrow.advice.program.Program;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.Product;
import plumbrow.advice.shelf.ProductKind;
import plumbrow.advice.weeds.CropTiming;
import plumbrow.science.figure.Numbers;

/** What a program lacks for its weeds to be followed day by day. */
final class ProgramGaps {
    private static final double WHOLE = 99.99;
    private static final int MOST_TILLAGE = 5;

    private ProgramGaps() {}

    static List<String> of(Season season, Field field, Program program, Optional<FieldClimate> climate) {
        List<String> gaps = new ArrayList<>();
        for (Pass pass : program.passes()) {
            boolean weedWork = herbicide(season, pass) || pass.kind() == PassKind.TILLAGE;
            if (!weedWork && pass.kind() != PassKind.SEED) {
                continue;
            }
            if (pass.date() == null) {
                gaps.add("a date for pass " + pass.number() + " of program '" + program.name() + "'");
            }
            if (weedWork && pass.sharePct() < WHOLE) {
                gaps.add("pass " + pass.number() + " of program '" + program.name()
                        + "' over the whole field (it covers " + Numbers.plain(pass.sharePct()) + " %)");
            }
        }
        if (program.passes().stream()
                        .filter(pass -> pass.kind() == PassKind.TILLAGE)
                        .count()
                > MOST_TILLAGE) {
            gaps.add("no more than " + MOST_TILLAGE + " tillage passes in program '" + program.name() + "'");
        }
        if (gaps.isEmpty()
                && climate.isPresent()
                && climate.get().seasons().stream()
                        .anyMatch(days -> CropDays.of(days, field, typed(season, field), Planting.of(season, program))
                                .isEmpty())) {
            gaps.add("when the crop of program '" + program.name() + "' is up and closed (sheet crop_days)");
        }
        return gaps;
    }

    static Optional<CropTiming> typed(Season season, Field field) {
        return season.pests().weedBook().crops().stream()
                .filter(crop -> crop.field().equals(field.name()))
                .findFirst();
    }

    static boolean herbicide(Season season, Pass pass) {
        return (pass.kind() == PassKind.SPRAY || pass.kind() == PassKind.GRANULE)
                && pass.product() != null
                && pass.rate() != null
                && season.shelf()
                        .product(pass.product())
                        .map(Product::kind)
                        .filter(kind -> kind == ProductKind.HERBICIDE)
                        .isPresent();
    }
}
