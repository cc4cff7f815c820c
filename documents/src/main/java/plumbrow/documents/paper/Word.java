package plumbrow.documents.paper;

/** A word as printed, without blanks. */
public record Word(String text, Box box) {}
