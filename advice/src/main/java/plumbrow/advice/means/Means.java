package plumbrow.advice.means;

import java.util.List;
import plumbrow.advice.tank.TankBook;

/** What the farms of a season have to work with. What is not in it is no limit. */
public record Means(
        List<Machine> machines,
        List<WorkWindow> windows,
        List<FarmLimit> limits,
        List<PriceBreak> breaks,
        List<Supply> supplies,
        TankBook tank) {
    /** Nothing entered. */
    public static final Means NONE = new Means(List.of(), List.of(), List.of(), List.of(), List.of());

    /** Of farms of whose tanks and nozzles nothing is on file. */
    public Means(
            List<Machine> machines,
            List<WorkWindow> windows,
            List<FarmLimit> limits,
            List<PriceBreak> breaks,
            List<Supply> supplies) {
        this(machines, windows, limits, breaks, supplies, TankBook.NONE);
    }

    public Means {
        machines = List.copyOf(machines);
        windows = List.copyOf(windows);
        limits = List.copyOf(limits);
        breaks = List.copyOf(breaks);
        supplies = List.copyOf(supplies);
    }

    public FarmLimit limit(String farm) {
        return limits.stream()
                .filter(limit -> limit.farm().equals(farm))
                .findFirst()
                .orElseGet(() -> FarmLimit.none(farm));
    }
}
