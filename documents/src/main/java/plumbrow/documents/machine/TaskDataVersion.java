package plumbrow.documents.machine;

/** Edition of the task data a machine reads. */
public enum TaskDataVersion {
    V3(3),
    V4(4);

    /** Both editions are written as their third minor version. */
    static final int MINOR = 3;

    private final int major;

    TaskDataVersion(int major) {
        this.major = major;
    }

    public int major() {
        return major;
    }
}
