package plumbrow.app.desk.door;

/** A page of a season was asked for, and the book is empty. */
public final class NoSeasonException extends RuntimeException {
    private static final long serialVersionUID = 1L;
}
