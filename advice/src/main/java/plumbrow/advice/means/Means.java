package plumbrow.advice.means;

import java.util.List;

/** What the farms of a season have to work with. What is not in it is no limit. */
public record Means(
        List<Machine> machines,
        List<WorkWindow> windows,
        List<FarmLimit> limits,
        List<PriceBreak> breaks,
        List<Supply> supplies) {
    /** Nothing entered. */
    public static final Means NONE = new Means(List.of(), List.of(), List.of(), List.of(), List.of());

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
