package plumbrow.documents.label.made;

import java.util.List;

/** A made label as a file, with all that it says. */
@SuppressWarnings("ArrayRecordComponent") // made once, read once
record MadeLabel(String layout, String fileName, byte[] file, List<Fact> truth) {}
