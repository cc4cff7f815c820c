package plumbrow.documents.machine;

/** How the cells of a grid say their rate. */
public enum GridType {
    /** One byte a cell, the code of its treatment zone. */
    ZONES(1),
    /** A signed value of 32 bits a cell, in steps of the data dictionary. */
    VALUES(2);

    private final int number;

    GridType(int number) {
        this.number = number;
    }

    /** As the standard numbers it. */
    public int number() {
        return number;
    }
}
