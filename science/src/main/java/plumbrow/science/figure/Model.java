package plumbrow.science.figure;

/** The function behind a figure: checked inputs in, answers out, its arithmetic written into the working. */
@FunctionalInterface
public interface Model {
    Outputs solve(Given given, Working working);
}
