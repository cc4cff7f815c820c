package plumbrow.advice.search;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.RefugePlan;

/**
 * What a program has beside herbicides and insecticides: seed, tillage, scouting, harvest, as one of the field's programs.
 *
 * @param from the first program that has it
 * @param seeds what it plants
 * @param planted the first day of that; empty where none is planned
 */
record Frame(String from, RefugePlan refuge, List<Pass> passes, Set<String> seeds, Optional<LocalDate> planted) {
    Frame {
        passes = List.copyOf(passes);
        seeds = Set.copyOf(seeds);
    }
}
