package plumbrow.app.desk.weighing;

/** A box holds what can't be used. The message goes on after the box's name. */
final class BoxFault extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final int box;

    BoxFault(int box, String says) {
        super(says);
        this.box = box;
    }

    /** Which of the line's boxes, from 0. */
    int box() {
        return box;
    }

    String says() {
        String message = getMessage();
        return message == null ? "" : message;
    }
}
