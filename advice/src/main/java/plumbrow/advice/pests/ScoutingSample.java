package plumbrow.advice.pests;

/**
 * A scouting sample that could be taken before deciding.
 *
 * @param size number of plants, roots or sample units looked at, at least 1
 * @param spread standard deviation from one to the next, in the pressure's measure, more than 0
 * @param costUsd what taking it costs [$], for the field
 */
public record ScoutingSample(int size, double spread, double costUsd) {}
