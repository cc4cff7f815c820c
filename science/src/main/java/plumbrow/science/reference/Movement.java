package plumbrow.science.reference;

import plumbrow.science.figure.Numbers;

/**
 * How an active ingredient moves in soil, from one selected half-life and Koc.
 *
 * @param halfLifeDays half-life in the field [d]
 * @param solubilityMgPerLitre [mg/L]
 * @param kocMlPerGram sorption to organic carbon [mL/g]
 * @param gus leaching score as printed, worked from the two by independent arithmetic
 * @param rating one of six, from the bands of the Oregon State database, which are from memory
 * @param fourClass one of four, from the bands at npic.orst.edu/envir/gus.html
 */
public record Movement(
        String name,
        double halfLifeDays,
        double solubilityMgPerLitre,
        double kocMlPerGram,
        String gus,
        String rating,
        String fourClass,
        Origin origin,
        Backing backing,
        int row)
        implements Entry {
    @Override
    public String about() {
        return name;
    }

    @Override
    public String says() {
        return "half-life " + Numbers.plain(halfLifeDays) + " d, Koc " + Numbers.plain(kocMlPerGram)
                + " mL/g, solubility " + Numbers.plain(solubilityMgPerLitre) + " mg/L";
    }
}
