package plumbrow.app;

/** Where every run of Plumbrow begins. */
public final class Main {
    private Main() {}

    public static void main(String[] arguments) {}
}
