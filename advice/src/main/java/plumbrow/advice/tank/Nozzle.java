package plumbrow.advice.tank;

import plumbrow.advice.shelf.Droplets;

/**
 * A line of the maker's chart of a nozzle at hand: the droplet class between two pressures. The class is the maker's, by
 * comparison with reference nozzles (ASABE S572.3), and never worked out.
 *
 * @param nozzle what it is called
 * @param size ISO 10625 size, such as 04: its flow at 40 psi in tenths of a gallon a minute
 * @param lowPsi lowest pressure of the line [psi], {@code highPsi} highest
 */
public record Nozzle(
        String farm, String nozzle, String size, double lowPsi, double highPsi, Droplets droplets, String source) {}
