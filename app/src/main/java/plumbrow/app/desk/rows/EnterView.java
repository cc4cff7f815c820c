package plumbrow.app.desk.rows;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.assumptions.AssumptionQuantity;
import plumbrow.advice.field.Field;
import plumbrow.advice.program.Program;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.ProductKind;
import plumbrow.app.desk.shown.Distributions;
import plumbrow.app.desk.shown.Shown;
import plumbrow.app.rows.EntryForms;
import plumbrow.app.rows.JointForm;
import plumbrow.documents.workbook.edit.EditFaults;

/**
 * A field entered step by step.
 *
 * @param steps the steps in order, each with what is there and the forms by which more comes
 * @param told what was just done; empty for nothing
 * @param change number of the change just made; 0 for none
 */
public record EnterView(Season season, Field field, List<Step> steps, String source, String told, int change) {

    /**
     * One step.
     *
     * @param id its name on the page
     * @param title what is entered
     * @param there what is entered already, a line each
     * @param wanted what is still wanted before the field can be weighed; empty where the step is done or may be left out
     * @param forms forms by which more comes
     * @param open whether its first form is open
     */
    public record Step(
            String id, String title, List<There> there, String wanted, List<JointView> forms, boolean open) {}

    /** A line that is entered, and where it is changed; the address is empty where it is looked at only. */
    public record There(String words, String address) {}

    static EnterView of(
            Season season,
            Field field,
            String failed,
            Map<String, String> typed,
            @Nullable EditFaults faults,
            String source,
            String told,
            int change) {
        List<Step> steps = new ArrayList<>();
        boolean priced = season.assumptions(field, AssumptionQuantity.PRICE).isPresent()
                && season.assumptions(field, AssumptionQuantity.YIELD).isPresent()
                && season.assumptions(field, AssumptionQuantity.HANDLING).isPresent();
        boolean pests = !pests(season, field).isEmpty();
        boolean seeds = !seeds(season, field).isEmpty();
        boolean products = !products(season).isEmpty();
        boolean programs = season.programs(field.name()).size() >= 2;
        steps.add(step(
                season,
                "money",
                "What it brings",
                money(season, field),
                priced ? "" : "price, yield and handling",
                priced ? List.of() : List.of(EntryForms.money(season, field)),
                !priced,
                failed,
                typed,
                faults));
        steps.add(step(
                season,
                "pests",
                "What presses on it",
                pests(season, field),
                pests ? "" : "an insect or a weed, if any",
                List.of(EntryForms.insect(field), EntryForms.weed(field)),
                priced && !pests,
                failed,
                typed,
                faults));
        steps.add(step(
                season,
                "seeds",
                "Seed",
                seeds(season, field),
                seeds ? "" : "a " + field.crop().word() + " seed",
                List.of(EntryForms.seed(field)),
                priced && pests && !seeds,
                failed,
                typed,
                faults));
        steps.add(step(
                season,
                "products",
                "What is on the shelf",
                products(season),
                products ? "" : "a product, if any",
                List.of(EntryForms.product(field)),
                priced && pests && seeds && !products,
                failed,
                typed,
                faults));
        steps.add(new Step(
                "programs",
                "Programs",
                programs(season, field),
                programs ? "" : "a baseline and another program",
                List.of(),
                false));
        return new EnterView(season, field, steps, source, told, change);
    }

    private static Step step(
            Season season,
            String id,
            String title,
            List<There> there,
            String wanted,
            List<JointForm> forms,
            boolean open,
            String failed,
            Map<String, String> typed,
            @Nullable EditFaults faults) {
        List<JointView> views = forms.stream()
                .map(form -> form.id().equals(failed)
                        ? JointView.of(season, form, typed, faults)
                        : JointView.of(season, form, preset(form), null))
                .toList();
        return new Step(
                id,
                title,
                there,
                wanted,
                views,
                open || forms.stream().anyMatch(form -> form.id().equals(failed)));
    }

    /** What most often stands in a box, to be typed over. */
    private static Map<String, String> preset(JointForm form) {
        return form.id().equals("seed") ? Map.of("tag.priced_per", "unit", "seeds.germination_pct", "95") : Map.of();
    }

    /** Whether nothing that the weighing must know is wanted any more. */
    public boolean ready() {
        return steps.stream()
                .filter(step -> !step.id().equals("pests") && !step.id().equals("products"))
                .allMatch(step -> step.wanted().isEmpty());
    }

    private static List<There> money(Season season, Field field) {
        List<There> there = new ArrayList<>();
        for (AssumptionQuantity quantity :
                List.of(AssumptionQuantity.PRICE, AssumptionQuantity.YIELD, AssumptionQuantity.HANDLING)) {
            season.assumptions(field, quantity)
                    .ifPresent(line -> there.add(new There(
                            Shown.capital(quantity.word()) + " "
                                    + Distributions.words(line.distribution(), quantity.unit()),
                            "/season/assumptions/row/" + (season.assumptions().indexOf(line) + 2))));
        }
        return there;
    }

    private static List<There> pests(Season season, Field field) {
        List<There> there = new ArrayList<>();
        for (int i = 0; i < season.pests().insects().size(); i++) {
            var insect = season.pests().insects().get(i);
            if (insect.field().equals(field.name())) {
                there.add(new There(
                        Shown.capital(insect.insect()) + ": "
                                + Distributions.words(
                                        insect.pressure(), insect.measure().unit()),
                        "/season/insects/row/" + (i + 2)));
            }
        }
        for (int i = 0; i < season.pests().weeds().size(); i++) {
            var weed = season.pests().weeds().get(i);
            if (weed.field().equals(field.name())) {
                there.add(new There(
                        Shown.capital(weed.weed()) + ": "
                                + Distributions.words(weed.densityPerSquareMetre(), "plants/m²"),
                        "/season/weeds/row/" + (i + 2)));
            }
        }
        return there;
    }

    private static List<There> seeds(Season season, Field field) {
        List<There> there = new ArrayList<>();
        for (int i = 0; i < season.shelf().seeds().size(); i++) {
            var seed = season.shelf().seeds().get(i);
            if (seed.crop() == field.crop()) {
                there.add(new There(seed.product(), "/season/seeds/row/" + (i + 2)));
            }
        }
        return there;
    }

    private static List<There> products(Season season) {
        List<There> there = new ArrayList<>();
        for (int i = 0; i < season.shelf().products().size(); i++) {
            var product = season.shelf().products().get(i);
            if (product.kind() != ProductKind.SEED) {
                there.add(new There(product.name() + ", " + product.kind().word(), "/season/shelf/row/" + (i + 2)));
            }
        }
        return there;
    }

    private static List<There> programs(Season season, Field field) {
        return season.programs(field.name()).stream()
                .map((Program program) -> new There(program.name() + (program.baseline() ? ", the baseline" : ""), ""))
                .toList();
    }
}
