package plumbrow.advice.pestpage;

/** A pest whose numbers stand in, or could. */
public record Alike(String name, String says, String source) {}
