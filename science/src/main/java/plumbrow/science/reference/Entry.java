package plumbrow.science.reference;

/** One row of a set. */
public interface Entry {
    /** What the row speaks of, unit and conditions included: two rows of this that differ are in conflict. */
    String about();

    /** What it says of that. */
    String says();

    Origin origin();

    Backing backing();

    /** Row of the file, the header being 1. */
    int row();
}
