package plumbrow.app.command;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import plumbrow.advice.quantity.Amount;
import plumbrow.app.command.said.CardWords;
import plumbrow.app.json.CardSummary;
import plumbrow.app.json.Json;
import plumbrow.app.papers.Cards;
import plumbrow.app.papers.PaperDesk;
import plumbrow.app.papers.ReadPaper;
import plumbrow.documents.binder.CardPaper;
import plumbrow.documents.card.ContainerText;
import plumbrow.documents.card.ProductCard;
import plumbrow.documents.label.LabelPaper;
import plumbrow.documents.mend.MendedLabel;
import plumbrow.documents.mend.MendedSheet;

/** Makes the product card of a safety sheet. */
@Command(
        name = "card",
        description =
                "The product card of a safety sheet: protective equipment (PPE), whom to call, how bad a broken jug is.",
        footer = {
            "",
            "The label is a second paper and gives what the law asks: name it with --label.",
            "Exit: 0 good, 2 bad input."
        })
final class CardCommand implements Callable<Integer> {
    private final Screen screen;

    @Parameters(index = "0", paramLabel = "FILE", description = "The safety sheet: PDF, text or web page.")
    private Path file = Path.of("");

    @Parameters(index = "1", arity = "0..1", paramLabel = "OUT.pdf", description = "Where to print it, on one page.")
    private @Nullable Path out;

    @Option(names = "--label", paramLabel = "FILE", description = "The product's label.")
    private @Nullable Path label;

    @Option(
            names = "--container",
            paramLabel = "SIZE",
            description = "What one jug or bag holds: \"2.5 gal\", \"25 lb\".")
    private @Nullable String container;

    @Option(names = "--as-of", paramLabel = "DATE", description = "The day from which age is counted; else today.")
    private @Nullable LocalDate asOf;

    @Option(names = "--json", description = "Answer as JSON.")
    private boolean json;

    CardCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        Path printed = out;
        if (printed != null && !printed.toString().toLowerCase(Locale.ROOT).endsWith(".pdf")) {
            throw new BadInputException("The card's name is '" + printed + "'; expected one that ends in .pdf.");
        }
        Amount size = size(container);
        LocalDate today = asOf == null ? LocalDate.now(java.time.ZoneId.systemDefault()) : asOf;
        ProductCard card;
        try (PaperDesk desk = new PaperDesk()) {
            if (!(desk.read(file) instanceof ReadPaper.Sheet sheet)) {
                throw new BadInputException(file + " does not read as a safety sheet; a label is named with --label.");
            }
            card = Cards.of(
                    MendedSheet.of(sheet.sheet(), sheet.byOcr(), List.of()), label(desk), size, null, null, today);
        }
        if (printed != null) {
            CardPaper.write(card, printed);
        }
        if (json) {
            screen.say(Json.of(CardSummary.of(card)));
        } else {
            screen.say(
                    printed == null ? CardWords.of(card) : "The card of " + card.product() + " is in " + printed + ".");
        }
        return Exit.GOOD;
    }

    private @Nullable LabelPaper label(PaperDesk desk) {
        Path named = label;
        if (named == null) {
            return null;
        }
        if (desk.read(named) instanceof ReadPaper.Label read) {
            return MendedLabel.of(read.label(), read.byOcr(), List.of());
        }
        throw new BadInputException(named + " does not read as a label.");
    }

    static @Nullable Amount size(@Nullable String typed) {
        return typed == null
                ? null
                : ContainerText.read(typed)
                        .orElseThrow(() -> new BadInputException(
                                "The container is '" + typed + "'; expected " + ContainerText.EXPECTED + "."));
    }
}
