package plumbrow.advice.gates;

import java.util.List;

/** One check that a program must pass. Pure: the same case gives the same findings. */
public interface Gate {
    /** Its name in findings and docs, such as "season-maximum". */
    String id();

    Protects protects();

    /** What it asks, as a person would. */
    String question();

    /** One finding for each thing it looked at; none where it has nothing to say of this case. */
    List<Finding> check(Case at);
}
