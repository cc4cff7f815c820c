package plumbrow.documents.sheet.section;

import java.util.List;
import plumbrow.documents.paper.Quote;
import plumbrow.documents.paper.Row;
import plumbrow.documents.sheet.SheetSection;

/** A section with the rows under its heading, over all pages and columns it runs. */
public record SectionText(SheetSection section, Quote heading, List<Row> rows) {}
