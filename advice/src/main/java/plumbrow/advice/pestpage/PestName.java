package plumbrow.advice.pestpage;

import java.util.List;

/**
 * A pest that has a page.
 *
 * @param fields fields of the season on which it presses; empty where it is only rated or known
 */
public record PestName(String name, PestKind kind, List<String> fields) {
    public PestName {
        fields = List.copyOf(fields);
    }
}
