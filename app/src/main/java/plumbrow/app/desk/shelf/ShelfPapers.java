package plumbrow.app.desk.shelf;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.DisposableBean;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.season.Season;
import plumbrow.app.book.Book;
import plumbrow.app.book.StoredPaper;
import plumbrow.app.book.TypedSheet;
import plumbrow.app.desk.DeskBook;
import plumbrow.app.desk.door.NotHereException;
import plumbrow.app.papers.Cards;
import plumbrow.app.papers.Intake;
import plumbrow.app.papers.LabelWork;
import plumbrow.app.papers.PaperDesk;
import plumbrow.app.papers.PaperMends;
import plumbrow.app.papers.ReadPaper;
import plumbrow.documents.card.ProductCard;
import plumbrow.documents.confirm.ConfirmedSeason;
import plumbrow.documents.confirm.ReadOnLabel;
import plumbrow.documents.label.LabelPaper;
import plumbrow.documents.mend.Mend;
import plumbrow.documents.mend.MendedLabel;
import plumbrow.documents.mend.MendedPaper;
import plumbrow.documents.mend.MendedSheet;
import plumbrow.documents.ocr.Tesseract;
import plumbrow.documents.paper.PagePicture;
import plumbrow.documents.sheet.SafetySheet;
import plumbrow.documents.shelf.FiledPaper;
import plumbrow.documents.shelf.ShelfProduct;
import plumbrow.documents.shelf.Shelves;

/** The papers of the book as the desk shows them: read once, drawn once, and let go when there are many. */
public final class ShelfPapers implements DisposableBean {
    public static final int MOST_MB_A_FILE = 32;
    public static final int MOST_MB_AT_ONCE = 256;
    public static final int MOST_FILES = 300;

    private static final int READ_AT_HAND = 60;
    private static final long PICTURES_AT_HAND = 40L << 20;
    private static final int LONGEST_PX = 1500;

    private final DeskBook book;
    private final PaperDesk reader = new PaperDesk();
    private final Latest<Integer, ReadPaper> read = new Latest<>(READ_AT_HAND, paper -> 1);
    private final Latest<List<Integer>, PagePicture.Drawn> pictures =
            new Latest<>(PICTURES_AT_HAND, drawn -> drawn.png().length);

    private final Incoming incoming;

    public ShelfPapers(DeskBook book) {
        this.book = book;
        this.incoming = new Incoming(came -> add(came.content(), came.name(), Instant.now()));
    }

    List<StoredPaper> all() {
        return book.papers();
    }

    List<FiledPaper> filed() {
        return all().stream().map(StoredPaper::paper).toList();
    }

    StoredPaper stored(int number) {
        return all().stream()
                .filter(paper -> paper.number() == number)
                .findFirst()
                .orElseThrow(() -> new NotHereException("There is no paper number " + number + " in this book."));
    }

    byte[] file(int number) {
        return book.paperFile(number)
                .orElseThrow(() -> new NotHereException("There is no paper number " + number + " in this book."));
    }

    /** What a paper says; it was readable when it came, so the number of a paper that is there is enough. */
    ReadPaper read(int number) {
        return read.get(number, () -> {
            StoredPaper stored = stored(number);
            ReadPaper fresh = reader.read(file(number), stored.paper().fileName());
            if (fresh instanceof ReadPaper.Label label) {
                note(stored, label);
            }
            return fresh;
        });
    }

    /** A paper with what people put right on it. */
    PaperMends mends(int number) {
        StoredPaper stored = stored(number);
        return new PaperMends(stored, read(number), book.mends(stored.sha256()));
    }

    /** Writes down what somebody puts right. The paper itself is read beforehand. */
    void mend(int number, Function<PaperMends, Mend> deciding) {
        StoredPaper stored = stored(number);
        ReadPaper paper = read(number);
        book.mend(all -> deciding.apply(new PaperMends(
                stored,
                paper,
                all.stream()
                        .filter(mend -> mend.sha256().equals(stored.sha256()))
                        .toList())));
        if (paper instanceof ReadPaper.Label label) {
            note(stored, label);
        }
    }

    private void note(StoredPaper stored, ReadPaper.Label label) {
        book.note(
                stored.sha256(),
                ReadOnLabel.of(stored.sha256(), MendedLabel.proposing(label.label(), book.mends(stored.sha256()))));
    }

    /** A sheet as it counts, with what people put right on it. */
    SafetySheet sheet(int number) {
        if (read(number) instanceof ReadPaper.Sheet sheet) {
            return MendedSheet.of(
                    sheet.sheet(), sheet.byOcr(), book.mends(stored(number).sha256()));
        }
        if (stored(number).paper().needsTyping() && stored(number).paper().kind() == FiledPaper.Kind.SAFETY_SHEET) {
            return TypedSheet.of(book.typed(number)).sheet();
        }
        throw new NotHereException(
                read(number) instanceof ReadPaper.Scan
                        ? "Paper number " + number + " is a picture that can't be read here. "
                                + new Tesseract().lacking()
                        : "Paper number " + number + " is not a safety sheet, and a card is made from one.");
    }

    /** A label with its values on their way to the shelf. */
    LabelWork label(int number) {
        return work(number).apply(new Book.Labels(all(), book.written(), book.decisions()));
    }

    /** How a label's values stand with what the book holds at a moment. The label itself is read beforehand. */
    Function<Book.Labels, LabelWork> work(int number) {
        StoredPaper stored = stored(number);
        if (read(number) instanceof ReadPaper.Label label) {
            return held -> LabelWork.of(
                    stored, MendedLabel.proposing(label.label(), book.mends(stored.sha256())), label.byOcr(), held);
        }
        throw new NotHereException("Paper number " + number + " is not a label; only labels have values to confirm.");
    }

    /** Whether pictures can be made of a paper. */
    boolean drawable(int number) {
        byte[] file = file(number);
        String start = new String(file, 0, Math.min(1024, file.length), java.nio.charset.StandardCharsets.ISO_8859_1);
        return start.contains("%PDF-");
    }

    PagePicture.Drawn picture(int number, int page) {
        return pictures.get(
                List.of(number, page),
                () -> reader.picture(file(number), stored(number).paper().fileName(), page, LONGEST_PX));
    }

    /** The product that a paper belongs to. */
    ShelfProduct product(int number) {
        return Shelves.holding(filed(), number)
                .orElseThrow(() -> new NotHereException("There is no paper number " + number + " in this book."));
    }

    /** The card of a safety sheet, with the label that belongs to it. */
    ProductCard card(int sheet, @Nullable Amount container, LocalDate today) {
        ProductCard card = Cards.of(
                sheet(sheet),
                labelBeside(sheet).orElse(null),
                container,
                book.season().orElse(null),
                book.season()
                        .flatMap(season -> ConfirmedSeason.onShelf(season.shelf(), product(sheet)))
                        .orElse(null),
                today);
        if (read(sheet) instanceof ReadPaper.Scan) {
            return card.from(TypedSheet.of(book.typed(sheet)).origins());
        }
        return card.from(MendedPaper.origins(
                book.mends(stored(sheet).sha256()),
                labelOf(sheet)
                        .map(filed -> book.mends(stored(filed.number()).sha256()))
                        .orElse(List.of())));
    }

    /** The cards of those products of the season's shelf that have a safety sheet here, in the order of their names. */
    public List<ProductCard> cards(Season season, List<String> products, LocalDate today) {
        List<ProductCard> cards = new ArrayList<>();
        for (String name : products) {
            Shelves.of(filed()).stream()
                    .filter(papers -> ConfirmedSeason.onShelf(season.shelf(), papers)
                            .filter(product -> product.name().equals(name))
                            .isPresent())
                    .flatMap(papers -> papers.sheet().stream())
                    .findFirst()
                    .flatMap(sheet -> ready(sheet, today))
                    .ifPresent(cards::add);
        }
        return cards;
    }

    /** The card of a sheet; empty where it is a picture that nobody has typed yet. */
    private Optional<ProductCard> ready(FiledPaper sheet, LocalDate today) {
        try {
            return Optional.of(card(sheet.number(), null, today));
        } catch (NotHereException unread) {
            return Optional.empty();
        }
    }

    Optional<FiledPaper> labelOf(int sheet) {
        return product(sheet).label();
    }

    private Optional<LabelPaper> labelBeside(int sheet) {
        return labelOf(sheet)
                .flatMap(filed -> read(filed.number()) instanceof ReadPaper.Label label
                        ? Optional.of(MendedLabel.of(
                                label.label(),
                                label.byOcr(),
                                book.mends(stored(filed.number()).sha256())))
                        : Optional.empty());
    }

    Intake.Outcome add(byte[] content, String name, Instant at) {
        return Intake.add(new Intake.Into(book::keep, book::note), reader, content, name, at);
    }

    /** Where several files wait to be read. */
    Incoming incoming() {
        return incoming;
    }

    @Override
    public void destroy() {
        incoming.stop();
        reader.close();
    }
}
