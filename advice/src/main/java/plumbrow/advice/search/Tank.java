package plumbrow.advice.search;

import java.util.List;
import java.util.stream.Collectors;

/** What goes out in one trip of a window. */
record Tank(int window, List<Dose> doses) {
    Tank {
        doses = List.copyOf(doses);
    }

    String text() {
        return doses.stream().map(Dose::text).collect(Collectors.joining(" + "));
    }
}
