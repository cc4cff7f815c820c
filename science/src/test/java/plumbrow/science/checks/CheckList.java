package plumbrow.science.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleSupplier;
import plumbrow.science.Figures;
import plumbrow.science.figure.Example;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Status;
import plumbrow.science.figure.Subject;

/** The checks of a subject while they are being written down: a source, and under it the values it prints. */
public final class CheckList {
    private final Subject subject;
    private final List<Check> checks = new ArrayList<>();
    private String source = "";
    private Status status = Status.COMPUTED;

    private CheckList(Subject subject) {
        this.subject = subject;
    }

    public static CheckList of(Subject subject) {
        return new CheckList(subject);
    }

    /** Where the values that follow come from, and how well they are backed. */
    public CheckList from(String citation, Status backing) {
        source = citation;
        status = backing;
        return this;
    }

    /** Rows of one figure's table: {@code key=value … | key=answer …}, one a line. */
    public CheckList figure(String id, String rows) {
        Figure figure = Figures.find(id).orElseThrow(() -> new IllegalArgumentException("no figure " + id));
        for (String row : rows.strip().split("\n", -1)) {
            String[] sides = row.split("\\|", -1);
            checks.add(Check.of(figure, Example.of(sides[0], sides[1], source, status)));
        }
        return this;
    }

    /** A value met within one in its last printed digit. */
    public CheckList value(String what, String printed, DoubleSupplier got) {
        return add(what, printed, got, 0, "");
    }

    /** A value met within a slack that the source allows or that is said in its citation. */
    public CheckList near(String what, String printed, double slack, DoubleSupplier got) {
        return add(what, printed, got, slack, "");
    }

    /** A value printed there that is not met, and why. */
    public CheckList differs(String what, String printed, DoubleSupplier got, String why) {
        return add(what, printed, got, 0, why);
    }

    public List<Check> all() {
        return List.copyOf(checks);
    }

    private CheckList add(String what, String printed, DoubleSupplier got, double slack, String why) {
        checks.add(new Check(
                subject, what, source, status, Map.of("", printed), () -> Map.of("", got.getAsDouble()), slack, why));
        return this;
    }
}
