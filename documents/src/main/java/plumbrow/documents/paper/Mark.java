package plumbrow.documents.paper;

/** A place to point at: a box on a page. */
public record Mark(int page, Box box) {}
