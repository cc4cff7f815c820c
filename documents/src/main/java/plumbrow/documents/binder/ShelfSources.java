package plumbrow.documents.binder;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.Product;
import plumbrow.documents.binder.Html.Column;

/** Where the values of the shelf and of the assumptions stand. */
final class ShelfSources {
    private ShelfSources() {}

    static void write(Html html, Season season) {
        html.element("h1", "Sources of the shelf");
        if (season.shelf().products().isEmpty()) {
            html.element("p", "No product stands on the shelf of this season.");
        } else {
            products(html, season);
        }
    }

    private static void products(Html html, Season season) {
        html.table(
                "plain",
                List.of(
                        Column.words("product", 24),
                        Column.words("kind", 12),
                        Column.words("registration", 14),
                        Column.words("label read is of", 14),
                        Column.words("where its values stand", 36)));
        for (Product product : season.shelf().products()) {
            html.open("tr").cell(product.name()).cell(product.kind().word());
            onLabel(html, product, product.registration());
            onLabel(html, product, product.labelDate());
            html.cell(sources(season, product)).close("tr");
        }
        html.endTable();
    }

    /** What the label tells; where it tells nothing, "look up" for what a label rules, and a dash for the rest. */
    private static void onLabel(Html html, Product product, @Nullable Object value) {
        if (value != null) {
            html.cell(value.toString());
        } else if (product.kind().underLabel()) {
            html.element("td", "unknown", "look up: label");
        } else {
            html.cell("—");
        }
    }

    private static String sources(Season season, Product product) {
        Stream<String> uses = season.shelf().labelUses().stream()
                .filter(use -> use.product().equals(product.name()))
                .map(use -> "on " + use.crop().word() + ": " + use.source());
        Stream<String> limits = season.shelf().activeLimits().stream()
                .filter(limit -> limit.product().equals(product.name()))
                .map(limit ->
                        "limit of " + limit.ingredient() + " on " + limit.crop().word() + ": " + limit.source());
        Stream<String> controls = season.shelf().controls().stream()
                .filter(control -> control.product().equals(product.name()))
                .map(control ->
                        "control of " + control.pest() + " at " + control.rate().text() + "/ac: " + control.source());
        return Stream.of(Stream.of(product.source()), uses, limits, controls)
                .flatMap(sources -> sources)
                .distinct()
                .collect(Collectors.joining("; "));
    }
}
