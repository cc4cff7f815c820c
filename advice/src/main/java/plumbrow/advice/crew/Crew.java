package plumbrow.advice.crew;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.shelf.Ask;

/**
 * Who works on the fields, and what is at hand to protect them.
 *
 * @param gear protective equipment at hand, in the words labels use; null where nobody has looked
 * @param display whether application information is shown where workers can see it
 */
public record Crew(List<Person> people, @Nullable Set<String> gear, Ask display) {
    /** Nothing known of them. */
    public static final Crew UNKNOWN = new Crew(List.of(), null, Ask.UNKNOWN);

    public Crew {
        people = List.copyOf(people);
        gear = gear == null ? null : Set.copyOf(gear);
    }

    public Optional<Person> person(String name) {
        return people.stream().filter(person -> person.name().equals(name)).findFirst();
    }
}
