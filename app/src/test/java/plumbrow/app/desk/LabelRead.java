package plumbrow.app.desk;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import plumbrow.advice.crew.Crew;
import plumbrow.advice.field.Crop;
import plumbrow.advice.field.Field;
import plumbrow.advice.field.Looked;
import plumbrow.advice.field.NextCrop;
import plumbrow.advice.program.PassKind;
import plumbrow.advice.program.Program;
import plumbrow.advice.program.SprayPlan;
import plumbrow.advice.season.Ground;
import plumbrow.advice.season.Work;
import plumbrow.advice.shelf.Ask;
import plumbrow.advice.shelf.Droplets;
import plumbrow.advice.shelf.LabelBook;
import plumbrow.advice.shelf.Method;
import plumbrow.advice.shelf.PlantBack;
import plumbrow.advice.shelf.ProductCare;
import plumbrow.advice.shelf.UseTerms;

/** A granule's label read to its end, with no limit beyond its rates, nothing around the fields, clover next. */
final class LabelRead {
    private static final double NO_LIMIT = 999;

    private LabelRead() {}

    static LabelBook of(String product, int year, String source) {
        UseTerms terms = new UseTerms(
                product,
                Crop.CORN,
                0,
                0,
                0,
                Ask.NO,
                "",
                "",
                NO_LIMIT,
                NO_LIMIT,
                Set.of(Method.IN_FURROW),
                0.0,
                Droplets.EXTREMELY_FINE,
                Droplets.ULTRA_COARSE,
                NO_LIMIT,
                0.0,
                NO_LIMIT,
                NO_LIMIT,
                0.0,
                source);
        ProductCare care = new ProductCare(
                product, LocalDate.of(year, 1, 5), Ask.NO, Ask.NO, Ask.NO, Ask.NO, Ask.NO, 0, Set.of(), source);
        return new LabelBook(
                List.of(terms),
                List.of(),
                List.of(),
                List.of(new PlantBack(product, PlantBack.ANY_OTHER, 0, null, null, "", source)),
                List.of(),
                List.of(),
                List.of(care),
                List.of(),
                List.of());
    }

    static Ground ground(List<Field> fields, int year) {
        List<String> names = fields.stream().map(Field::name).toList();
        return new Ground(
                names.stream().map(name -> new Looked(name, null)).toList(),
                List.of(),
                List.of(),
                names.stream()
                        .map(name ->
                                new NextCrop(name, "clover", LocalDate.of(year + 1, 5, 1), NextCrop.Use.NEXT, false))
                        .toList());
    }

    static Work work(List<Program> programs) {
        List<SprayPlan> plans = programs.stream()
                .flatMap(program -> program.passes().stream()
                        .filter(pass -> pass.kind() == PassKind.GRANULE)
                        .map(pass -> new SprayPlan(
                                program.field(),
                                program.name(),
                                pass.number(),
                                null,
                                Method.IN_FURROW,
                                null,
                                null,
                                null,
                                null,
                                null,
                                null,
                                null,
                                Ask.NO,
                                null)))
                .toList();
        return new Work(plans, new Crew(List.of(), Set.of(), Ask.YES), List.of());
    }
}
