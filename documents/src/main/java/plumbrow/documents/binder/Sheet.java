package plumbrow.documents.binder;

/**
 * A part of a printed packet that begins on a page of its own. One that must stand on one page can be set smaller, size by size, until
 * it does.
 */
interface Sheet {
    /** Its bookmark. */
    String name();

    /** In how many sizes it can be set; 1 for one that may run over pages. */
    default int sizes() {
        return 1;
    }

    /** The size in which it is set where no size brings it onto one page. */
    default int sizeOver() {
        return sizes() - 1;
    }

    /**
     * Writes it within its division.
     *
     * @param size 0 for the largest
     */
    void write(Html html, int size);

    /** The style of its pages: "plan", "loadcard", "productcard", "annex". */
    String style();
}
