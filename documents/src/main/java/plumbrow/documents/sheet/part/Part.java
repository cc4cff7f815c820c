package plumbrow.documents.sheet.part;

/** Reads one subject from a sheet. */
@FunctionalInterface
interface Part {
    void read(SheetText sheet, Readings readings);
}
