package plumbrow.app.command;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import plumbrow.app.book.Book;
import plumbrow.app.book.StoredPaper;
import plumbrow.app.command.said.LabelValueWords;
import plumbrow.app.json.Json;
import plumbrow.app.json.LabelValuesSummary;
import plumbrow.app.papers.LabelWork;
import plumbrow.app.papers.PaperDesk;
import plumbrow.app.papers.ReadPaper;
import plumbrow.documents.confirm.NotSoException;
import plumbrow.documents.label.LabelPaper;
import plumbrow.documents.mend.Mend;
import plumbrow.documents.mend.MendedLabel;

/** Lists what a label of the book proposes for the shelf, and writes down what a person decides about it. */
@Command(
        name = "confirm",
        description =
                "Lists the values that a label proposes for the shelf; with --at and --do decides about one of them.",
        footer = {
            "",
            "  plumbrow papers confirm 2",
            "  plumbrow papers confirm 2 --at label-uses.corn --do row --by \"R. Voss\"",
            "  plumbrow papers confirm 2 --at terms.corn.rei-hours --do correct --value 24 --by \"R. Voss\"",
            "",
            "Look at the page before you confirm: the desk shows it beside each value. Exit: 0 good, 2 bad input."
        })
final class LabelConfirm implements Callable<Integer> {
    private final Screen screen;

    @Parameters(paramLabel = "PAPER", description = "Number of the label in the book, as papers list shows it.")
    private int number;

    @Option(
            names = "--at",
            paramLabel = "VALUE",
            description = "The value, or with --do row the row, by its name in the list.")
    private @Nullable String at;

    @Option(
            names = "--do",
            paramLabel = "WORD",
            description =
                    "confirm: the page says so. correct: it says --value instead. reject: it doesn't say. workbook: the"
                            + " workbook's value stays. take-back: the last word is taken back. row: every clear value of the row is"
                            + " right.")
    private @Nullable String does;

    @Option(names = "--value", paramLabel = "TEXT", description = "What the page says, to correct.")
    private @Nullable String value;

    @Option(names = "--by", paramLabel = "NAME", description = "Who looked at the page.")
    private String who = "";

    @Option(
            names = "--book",
            paramLabel = "FILE",
            defaultValue = FromBook.DEFAULT,
            description = "The book; else the one that PLUMBROW_BOOK names, else ./plumbrow.book.")
    private Path file = Path.of("");

    @Option(names = "--json", description = "Answer as JSON.")
    private boolean json;

    LabelConfirm(Screen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        if ((at == null) != (does == null)) {
            throw new BadInputException(
                    "To decide, say both --at VALUE and --do WORD; without them the values are listed.");
        }
        try (Book book = Book.open(file);
                PaperDesk desk = new PaperDesk()) {
            StoredPaper stored = book.papers().stream()
                    .filter(paper -> paper.number() == number)
                    .findFirst()
                    .orElseThrow(() -> new BadInputException("The book " + file + " has no paper " + number + "."));
            ReadPaper.Label read = label(desk, stored, book);
            List<Mend> mends = book.mends().stream()
                    .filter(mend -> mend.sha256().equals(stored.sha256()))
                    .toList();
            LabelPaper label = MendedLabel.proposing(read.label(), mends);
            if (at != null && does != null) {
                decide(book, held -> LabelWork.of(stored, label, read.byOcr(), held), at, does);
            }
            LabelWork work = LabelWork.of(
                    stored,
                    label,
                    read.byOcr(),
                    new Book.Labels(book.papers(), book.latestWritten(), book.decisions()));
            screen.say(json ? Json.of(LabelValuesSummary.of(work)) : LabelValueWords.of(work));
        }
        return Exit.GOOD;
    }

    private void decide(Book book, Function<Book.Labels, LabelWork> label, String id, String word) {
        LabelWork.Deed deed = LabelWork.Deed.of(word)
                .orElseThrow(() -> new BadInputException(
                        "--do is '" + word + "'; expected one of " + LabelWork.Deed.words() + "."));
        try {
            book.decide(held -> label.apply(held).decide(id, deed, value, who, null, Instant.now()));
        } catch (NotSoException wrong) {
            throw new BadInputException(String.valueOf(wrong.getMessage()));
        }
    }

    private static ReadPaper.Label label(PaperDesk desk, StoredPaper stored, Book book) {
        byte[] content = book.paperFile(stored.number()).orElseThrow();
        if (desk.read(content, stored.paper().fileName()) instanceof ReadPaper.Label label) {
            return label;
        }
        throw new BadInputException("Paper " + stored.number() + " ("
                + stored.paper().fileName() + ") is not a label; only labels have values to confirm.");
    }
}
