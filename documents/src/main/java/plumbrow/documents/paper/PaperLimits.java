package plumbrow.documents.paper;

import java.time.Duration;

/**
 * How much of a file is read before it is refused: far above any safety sheet or label, far below what would hurt.
 *
 * @param fileBytes largest file [bytes]
 * @param pages most pages
 * @param glyphs most letters on all pages
 * @param time longest time for one file; kept where reading runs apart
 */
public record PaperLimits(long fileBytes, int pages, int glyphs, Duration time) {

    /** A sheet has 5 to 20 pages and 10,000 to 60,000 letters; a label of many crops 100 pages and 500,000. */
    public static final PaperLimits USUAL = new PaperLimits(32L << 20, 300, 1_500_000, Duration.ofSeconds(30));
}
