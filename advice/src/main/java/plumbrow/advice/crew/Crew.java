package plumbrow.advice.crew;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.shelf.Ask;

/**
 * Who works on the fields, and what is at hand to protect them.
 *
 * @param gear protective equipment at hand, in the words labels use; null where nobody has looked
 * @param display whether application information is shown where workers can see it
 * @param licences further licences of people who have more than one, as of a second state
 */
public record Crew(List<Person> people, @Nullable Set<String> gear, Ask display, List<Licence> licences) {
    /** Nothing known of them. */
    public static final Crew UNKNOWN = new Crew(List.of(), null, Ask.UNKNOWN);

    public Crew {
        people = List.copyOf(people);
        gear = gear == null ? null : Set.copyOf(gear);
        licences = List.copyOf(licences);
    }

    /** People of whom none has a second licence. */
    public Crew(List<Person> people, @Nullable Set<String> gear, Ask display) {
        this(people, gear, display, List.of());
    }

    /** Every licence of a person. */
    public List<Licence> licences(Person person) {
        return Stream.concat(
                        Stream.of(person.first()),
                        licences.stream().filter(licence -> licence.person().equals(person.name())))
                .toList();
    }

    public Optional<Person> person(String name) {
        return people.stream().filter(person -> person.name().equals(name)).findFirst();
    }
}
