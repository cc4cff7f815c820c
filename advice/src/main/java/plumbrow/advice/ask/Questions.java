package plumbrow.advice.ask;

import java.util.List;
import java.util.Optional;

/** The questions that are answered in two minutes. */
public final class Questions {
    private static final List<Question> ALL = List.of(
            new InsecticideOverTrait(),
            new SavedOrBought(),
            new TraitAndRefuge(),
            new SeedTreatmentOrNone(),
            new SecondPassOrResidual(),
            new FullOrHalfRate(),
            new KeepOrReplant(),
            new SprayNowOrWait());

    private Questions() {}

    public static List<Question> all() {
        return ALL;
    }

    public static Optional<Question> find(String id) {
        return ALL.stream()
                .filter(question -> question.id().equalsIgnoreCase(id.strip()))
                .findFirst();
    }
}
