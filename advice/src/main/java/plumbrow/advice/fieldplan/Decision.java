package plumbrow.advice.fieldplan;

import java.time.LocalDate;

/** The program that somebody chose for a field, who and on which day. */
public record Decision(String program, String who, LocalDate day) {}
