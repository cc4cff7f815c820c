package plumbrow.advice.crew;

import java.time.LocalDate;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.shelf.Ask;

/**
 * Someone who applies, with the first licence; further ones stand in the crew.
 *
 * @param name unique in the book
 * @param licence number of the applicator licence; null for none on file
 * @param state the state that gave it, two-letter code
 * @param validUntil last day it is valid
 * @param kind for whom it lets apply; null where that is not on file
 * @param covers what its categories cover; null where that is not on file
 * @param forHire whether this person applies for pay on ground that is neither his own nor his employer's
 */
public record Person(
        String name,
        @Nullable String licence,
        @Nullable String state,
        @Nullable LocalDate validUntil,
        @Nullable LicenceKind kind,
        @Nullable Set<Licence.Cover> covers,
        Ask forHire) {
    public Person {
        covers = covers == null ? null : Set.copyOf(covers);
    }

    /** The licence that stands with the name. */
    public Licence first() {
        return new Licence(name, licence, state, validUntil, kind, covers);
    }
}
