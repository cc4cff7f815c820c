package plumbrow.science.reference;

/** What a source prints: a number with its limit sign or range, or a code such as a group of action. */
public sealed interface Value permits Bound, Code {
    /** As it stands in the set. */
    String printed();
}
