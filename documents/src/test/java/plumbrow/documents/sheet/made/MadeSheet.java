package plumbrow.documents.sheet.made;

import java.util.List;

/** A made sheet as a file, with all that it says. */
@SuppressWarnings("ArrayRecordComponent") // made once, read once
record MadeSheet(String house, String fileName, byte[] file, List<Fact> truth) {}
