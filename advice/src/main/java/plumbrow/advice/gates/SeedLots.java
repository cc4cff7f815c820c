package plumbrow.advice.gates;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import plumbrow.advice.planting.Planting;
import plumbrow.advice.program.Program;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.Seed;

/** The seed lots of a program that stand in the end, each with its share of the field. */
record SeedLots(List<Lot> lots) {

    /** @param sharePct share of the field's acres [%] */
    record Lot(Seed seed, double sharePct) {
        boolean hasTraits() {
            return !seed.traits().isEmpty();
        }
    }

    static SeedLots of(Season season, Program program) {
        return new SeedLots(Planting.of(season, program).lots().stream()
                .flatMap(lot -> Optional.ofNullable(lot.pass().product()).flatMap(season.shelf()::seed).stream()
                        .map(seed -> new Lot(seed, lot.share() * 100)))
                .toList());
    }

    /** The different seeds with traits. */
    List<Seed> withTraits() {
        return lots.stream().filter(Lot::hasTraits).map(Lot::seed).distinct().toList();
    }

    /** Share of the field that is planted [%]. */
    double plantedPct() {
        return share(lot -> true);
    }

    /** Refuge planted as its own rows, as a share of all that is planted [%]. */
    double blockPct() {
        return plantedPct() == 0 ? 0 : 100 * share(lot -> !lot.hasTraits()) / plantedPct();
    }

    /** All refuge, in the bags and in rows of its own, as a share of all that is planted [%]. */
    double refugePct() {
        double inBags = lots.stream()
                .filter(Lot::hasTraits)
                .mapToDouble(lot -> lot.sharePct() * lot.seed().blendRefugePct())
                .sum();
        return plantedPct() == 0 ? 0 : blockPct() + inBags / plantedPct();
    }

    private double share(Predicate<Lot> which) {
        return lots.stream().filter(which).mapToDouble(Lot::sharePct).sum();
    }
}
