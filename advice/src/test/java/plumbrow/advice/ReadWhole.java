package plumbrow.advice;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import plumbrow.advice.crew.Crew;
import plumbrow.advice.field.Crop;
import plumbrow.advice.field.Field;
import plumbrow.advice.field.Looked;
import plumbrow.advice.field.NextCrop;
import plumbrow.advice.program.PassKind;
import plumbrow.advice.program.Program;
import plumbrow.advice.program.SprayPlan;
import plumbrow.advice.season.Ground;
import plumbrow.advice.season.Season;
import plumbrow.advice.season.Work;
import plumbrow.advice.shelf.Ask;
import plumbrow.advice.shelf.Droplets;
import plumbrow.advice.shelf.LabelBook;
import plumbrow.advice.shelf.Method;
import plumbrow.advice.shelf.PlantBack;
import plumbrow.advice.shelf.Product;
import plumbrow.advice.shelf.ProductCare;
import plumbrow.advice.shelf.Shelf;
import plumbrow.advice.shelf.ToleranceRule;
import plumbrow.advice.shelf.UseTerms;

/** A season whose labels were read whole and set no limit beyond their rates, with nothing around its fields. */
public final class ReadWhole {
    private static final double NONE = 999;

    private ReadWhole() {}

    /** The same season with all that gates ask beyond rates, said in the freest words. */
    public static Season season(Season season) {
        Shelf shelf = season.shelf();
        Shelf read = new Shelf(
                shelf.products(),
                shelf.seeds(),
                shelf.traits(),
                shelf.actives(),
                shelf.labelUses(),
                shelf.activeLimits(),
                shelf.controls(),
                labels(shelf));
        List<String> fields = season.fields().stream().map(Field::name).toList();
        List<NextCrop> next = fields.stream()
                .map(field -> new NextCrop(
                        field, "clover", season.asOf().plusYears(1).plusMonths(2), NextCrop.Use.NEXT, false))
                .toList();
        return new Season(
                season.year(),
                season.asOf(),
                season.adviser(),
                season.farms(),
                season.fields(),
                season.history(),
                read,
                season.pests(),
                season.programs(),
                season.assumptions(),
                new Ground(fields.stream().map(field -> new Looked(field, null)).toList(), List.of(), List.of(), next),
                new Work(
                        season.programs().stream().flatMap(ReadWhole::plans).toList(),
                        new Crew(List.of(), Set.of(), Ask.YES),
                        List.of()));
    }

    private static LabelBook labels(Shelf shelf) {
        List<Product> products = shelf.products().stream()
                .filter(product -> product.kind().underLabel())
                .toList();
        return new LabelBook(
                products.stream()
                        .flatMap(product -> Arrays.stream(Crop.values()).map(crop -> terms(product.name(), crop)))
                        .toList(),
                List.of(),
                List.of(),
                products.stream()
                        .map(product ->
                                new PlantBack(product.name(), PlantBack.ANY_OTHER, 0, null, null, "", product.source()))
                        .toList(),
                List.of(),
                List.of(),
                products.stream()
                        .map(product -> new ProductCare(
                                product.name(),
                                LocalDate.of(2026, 1, 5),
                                Ask.NO,
                                Ask.NO,
                                Ask.NO,
                                Ask.NO,
                                Ask.NO,
                                0,
                                Set.of(),
                                product.source()))
                        .toList(),
                products.stream()
                        .flatMap(product -> Arrays.stream(Crop.values())
                                .map(crop ->
                                        new ToleranceRule(product.name(), crop, null, null, null, product.source())))
                        .toList(),
                List.of());
    }

    private static UseTerms terms(String product, Crop crop) {
        return new UseTerms(
                product,
                crop,
                0,
                0,
                0,
                Ask.NO,
                "",
                "",
                NONE,
                NONE,
                Set.of(Method.values()),
                0.0,
                Droplets.EXTREMELY_FINE,
                Droplets.ULTRA_COARSE,
                NONE,
                0.0,
                NONE,
                NONE,
                0.0,
                "invented label p. 4");
    }

    private static Stream<SprayPlan> plans(Program program) {
        return program.passes().stream()
                .filter(pass -> pass.kind() == PassKind.SPRAY || pass.kind() == PassKind.GRANULE)
                .map(pass -> new SprayPlan(
                        program.field(),
                        program.name(),
                        pass.number(),
                        null,
                        Method.GROUND_BROADCAST,
                        15.0,
                        Droplets.COARSE,
                        20.0,
                        0.0,
                        null,
                        null,
                        null,
                        Ask.NO,
                        null));
    }
}
