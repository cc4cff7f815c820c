package plumbrow.app.desk.papers;

import java.util.List;
import java.util.stream.Collectors;
import plumbrow.advice.field.Farm;
import plumbrow.advice.field.Field;
import plumbrow.advice.season.Season;

/** Which binders can be printed: by grower, farm and field. */
public record BinderView(int year, List<OfGrower> growers) {
    public BinderView {
        growers = List.copyOf(growers);
    }

    /** One grower's farms; his name may be empty. */
    public record OfGrower(String grower, List<OfFarm> farms) {
        public OfGrower {
            farms = List.copyOf(farms);
        }

        public int fields() {
            return farms.stream().mapToInt(farm -> farm.fields().size()).sum();
        }
    }

    /** A farm and its fields. */
    public record OfFarm(String farm, List<String> fields) {
        public OfFarm {
            fields = List.copyOf(fields);
        }
    }

    static BinderView of(Season season) {
        List<String> growers =
                season.farms().stream().map(Farm::grower).distinct().toList();
        var byFarm = season.fields().stream()
                .collect(Collectors.groupingBy(Field::farm, Collectors.mapping(Field::name, Collectors.toList())));
        return new BinderView(
                season.year(),
                growers.stream()
                        .map(grower -> new OfGrower(
                                grower,
                                season.farms().stream()
                                        .filter(farm -> farm.grower().equals(grower) && byFarm.containsKey(farm.name()))
                                        .map(farm ->
                                                new OfFarm(farm.name(), byFarm.getOrDefault(farm.name(), List.of())))
                                        .toList()))
                        .filter(one -> !one.farms().isEmpty())
                        .toList());
    }
}
