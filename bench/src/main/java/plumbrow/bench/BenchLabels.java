package plumbrow.bench;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import plumbrow.advice.crew.Crew;
import plumbrow.advice.crew.LicenceKind;
import plumbrow.advice.crew.Person;
import plumbrow.advice.field.Crop;
import plumbrow.advice.field.Feature;
import plumbrow.advice.field.FeatureKind;
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
import plumbrow.advice.shelf.Setback;
import plumbrow.advice.shelf.ToleranceRule;
import plumbrow.advice.shelf.UseTerms;

/** What labels ask beyond rates, a creek and a house beside every field, and sprays planned to keep it all. */
final class BenchLabels {
    private static final String SOURCE = "invented for the benchmark";

    private BenchLabels() {}

    static LabelBook book(List<String> products) {
        return new LabelBook(
                products.stream().map(BenchLabels::terms).toList(),
                List.of(),
                products.stream()
                        .flatMap(product -> Arrays.stream(FeatureKind.values())
                                .map(kind -> new Setback(product, kind, 66.0, false, SOURCE)))
                        .toList(),
                products.stream()
                        .map(product -> new PlantBack(product, PlantBack.ANY_OTHER, 120, null, null, "", SOURCE))
                        .toList(),
                List.of(),
                List.of(),
                products.stream().map(BenchLabels::care).toList(),
                products.stream()
                        .map(product -> new ToleranceRule(product, Crop.CORN, null, null, null, SOURCE))
                        .toList(),
                List.of());
    }

    static Ground around(List<Field> fields) {
        return new Ground(
                fields.stream().map(field -> new Looked(field.name(), null)).toList(),
                fields.stream().flatMap(field -> features(field.name())).toList(),
                List.of(),
                fields.stream()
                        .map(field -> new NextCrop(
                                field.name(), "soybean", LocalDate.of(2027, 5, 5), NextCrop.Use.NEXT, false))
                        .toList());
    }

    static Work work(List<Program> programs) {
        return new Work(
                programs.stream().flatMap(BenchLabels::sprays).toList(),
                new Crew(
                        List.of(new Person(
                                "A. Sprayer",
                                "C-1",
                                "IA",
                                LocalDate.of(2026, 12, 31),
                                LicenceKind.PRIVATE,
                                Set.of(),
                                Ask.NO)),
                        Set.of("gloves"),
                        Ask.YES),
                List.of());
    }

    private static Stream<Feature> features(String field) {
        return Stream.of(
                new Feature(field, FeatureKind.STREAM, "the creek", null, 40.0, SOURCE),
                new Feature(field, FeatureKind.DWELLING, "the house", null, 90.0, SOURCE));
    }

    private static UseTerms terms(String product) {
        return new UseTerms(
                product,
                Crop.CORN,
                12,
                14,
                60,
                Ask.NO,
                "",
                "V8",
                30.0,
                6.0,
                Set.of(Method.GROUND_BROADCAST),
                10.0,
                Droplets.MEDIUM,
                Droplets.ULTRA_COARSE,
                24.0,
                3.0,
                10.0,
                90.0,
                4.0,
                SOURCE);
    }

    private static ProductCare care(String product) {
        return new ProductCare(
                product,
                LocalDate.of(2026, 1, 5),
                Ask.YES,
                Ask.NO,
                Ask.NO,
                Ask.NO,
                Ask.NO,
                24,
                Set.of("gloves"),
                SOURCE);
    }

    private static Stream<SprayPlan> sprays(Program program) {
        return program.passes().stream()
                .filter(pass -> pass.kind() == PassKind.SPRAY)
                .map(pass -> new SprayPlan(
                        program.field(),
                        program.name(),
                        pass.number(),
                        null,
                        Method.GROUND_BROADCAST,
                        15.0,
                        Droplets.COARSE,
                        20.0,
                        50.0,
                        "V3",
                        8.0,
                        3.0,
                        Ask.NO,
                        "A. Sprayer"));
    }
}
