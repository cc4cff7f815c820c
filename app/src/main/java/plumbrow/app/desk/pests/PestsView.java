package plumbrow.app.desk.pests;

import java.util.List;
import plumbrow.advice.pestpage.PestKind;
import plumbrow.advice.pestpage.PestName;
import plumbrow.advice.season.Season;

/** The list of pests, those of the fields apart from those that are only known. */
public record PestsView(Season season, List<PestName> names) {
    /** On fields of the season. */
    public List<PestName> here(PestKind kind) {
        return names.stream()
                .filter(one -> one.kind() == kind && !one.fields().isEmpty())
                .toList();
    }

    /** On none of them, as far as the book says. */
    public List<PestName> elsewhere() {
        return names.stream().filter(one -> one.fields().isEmpty()).toList();
    }
}
