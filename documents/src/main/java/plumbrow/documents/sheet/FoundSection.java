package plumbrow.documents.sheet;

import plumbrow.documents.paper.Quote;

/** A section that the sheet has, with its heading as printed. */
public record FoundSection(SheetSection section, Quote heading) {}
