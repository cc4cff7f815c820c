package plumbrow.science.years;

import java.util.List;
import java.util.SplittableRandom;

/** What the tests of several seasons share. */
final class Stands {
    static final double ENDLESS = Double.POSITIVE_INFINITY;
    static final double HECTARE = 10_000;

    private Stands() {}

    static SplittableRandom random() {
        return new SplittableRandom(20_260_401L);
    }

    static WeedBank bank(WeedLife life, ResistanceGene... genes) {
        return new WeedBank(List.of(genes), life, Inflow.NONE, ENDLESS);
    }

    /** One herbicide that leaves so much of susceptible plants and all of resistant ones. */
    static WeedResponse one(double left, double seedsPerPlant, double crowding) {
        double[][] survive = {{left}, {1}};
        return new WeedResponse(survive, new double[][] {{left * seedsPerPlant}, {seedsPerPlant}}, survive, crowding);
    }

    /** The same to a weed of which no gene is followed. */
    static WeedResponse plain(double left, double seedsPerPlant, double crowding) {
        double[][] survive = {{left}};
        return new WeedResponse(survive, new double[][] {{left * seedsPerPlant}}, survive, crowding);
    }
}
