package plumbrow.documents.sheet.made;

import java.io.InputStream;
import java.util.Objects;

/** The faces that made sheets are set in. */
public final class Faces {
    private Faces() {}

    public static InputStream open(String family, String cut) {
        String name = "/liberation/Liberation" + family + "-" + cut + ".ttf";
        return Objects.requireNonNull(Faces.class.getResourceAsStream(name), name);
    }
}
