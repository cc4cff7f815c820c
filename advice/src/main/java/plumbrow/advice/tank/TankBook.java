package plumbrow.advice.tank;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What is on file of sprayers, nozzles, mixing, water and limits of the hour. What is not in it is unknown. */
public record TankBook(
        List<Sprayer> sprayers,
        List<Nozzle> nozzles,
        List<MixCare> mixing,
        List<WaterTest> water,
        List<Addition> additions,
        List<HourLimit> limits) {
    /** Nothing entered. */
    public static final TankBook NONE = new TankBook(List.of(), List.of(), List.of(), List.of(), List.of(), List.of());

    public TankBook {
        sprayers = List.copyOf(sprayers);
        nozzles = List.copyOf(nozzles);
        mixing = List.copyOf(mixing);
        water = List.copyOf(water);
        additions = List.copyOf(additions);
        limits = List.copyOf(limits);
    }

    public Optional<Sprayer> sprayer(String farm, String machine) {
        return sprayers.stream()
                .filter(one -> one.farm().equals(farm) && one.machine().equals(machine))
                .findFirst();
    }

    /** The lines of the charts of the nozzles that a farm has. */
    public List<Nozzle> nozzles(String farm) {
        return nozzles.stream().filter(one -> one.farm().equals(farm)).toList();
    }

    public Optional<MixCare> mixing(String product) {
        return mixing.stream().filter(one -> one.product().equals(product)).findFirst();
    }

    /** The latest test of a farm's water. */
    public Optional<WaterTest> water(String farm) {
        return water.stream().filter(one -> one.farm().equals(farm)).max(Comparator.comparing(WaterTest::tested));
    }

    /** What goes into the tank with a product on a field: its own lines before those for all fields. */
    public List<Addition> additions(String product, String field) {
        return additions.stream()
                .filter(one -> one.product().equals(product))
                .filter(one -> field.equals(one.field())
                        || (one.field() == null
                                && additions.stream()
                                        .noneMatch(own -> own.product().equals(product)
                                                && own.addition().equals(one.addition())
                                                && field.equals(own.field()))))
                .toList();
    }
}
