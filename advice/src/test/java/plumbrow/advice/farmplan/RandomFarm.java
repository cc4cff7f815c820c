package plumbrow.advice.farmplan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.random.RandomGenerator;
import java.util.stream.IntStream;
import plumbrow.advice.farmplan.FarmProblem.Good;
import plumbrow.advice.farmplan.FarmProblem.Limit;
import plumbrow.advice.farmplan.FarmProblem.Option;
import plumbrow.advice.farmplan.FarmProblem.Place;
import plumbrow.advice.farmplan.FarmProblem.Tier;

/** Farms whose limits bind more often than not, from a seeded generator. */
final class RandomFarm {
    private RandomFarm() {}

    static FarmProblem of(RandomGenerator random, int fields, int programs, int scenarios) {
        double[] price = random.doubles(scenarios, 0.6, 1.4).toArray();
        List<Place> places = new ArrayList<>();
        for (int f = 0; f < fields; f++) {
            double acres = 40 + 120 * random.nextDouble();
            List<Option> options = new ArrayList<>();
            for (int c = 0; c < programs; c++) {
                options.add(option(random, acres, price, "program " + c));
            }
            places.add(new Place("field " + f, options));
        }
        List<Good> goods = List.of(good(random, fields, "G"), good(random, fields, "H"));
        List<Limit> limits = IntStream.range(0, 3)
                .mapToObj(l -> new Limit("hours " + l, fields * (4 + 2 * random.nextDouble())))
                .toList();
        double most = places.stream()
                .mapToDouble(place -> place.options().stream()
                        .mapToDouble(Option::cost)
                        .average()
                        .orElse(0))
                .sum();
        return new FarmProblem(
                places,
                limits,
                goods,
                random.nextBoolean() ? null : most * (0.9 + 0.2 * random.nextDouble()),
                random.nextInt(3) == 0 ? null : floor(random, places));
    }

    /** Between the worst tenth of the programs that bring most and that of the steadiest programs, a little below or above. */
    private static double floor(RandomGenerator random, List<Place> places) {
        double most = worstTenth(places, Comparator.comparingDouble(Option::mean));
        double steadiest = worstTenth(places, Comparator.comparingDouble(one -> worstTenth(one.scenarios())));
        return most + (0.9 * random.nextDouble() - 0.2) * (steadiest - most);
    }

    private static double worstTenth(List<Place> places, Comparator<Option> by) {
        double[] sums = new double[places.get(0).options().get(0).scenarios().length];
        for (Place place : places) {
            double[] margins = place.options().stream().max(by).orElseThrow().scenarios();
            Arrays.setAll(sums, k -> sums[k] + margins[k]);
        }
        return worstTenth(sums);
    }

    private static double worstTenth(double[] margins) {
        return Arrays.stream(margins)
                .sorted()
                .limit(margins.length / 10)
                .average()
                .orElseThrow();
    }

    private static Option option(RandomGenerator random, double acres, double[] price, String name) {
        double cost = 150 + 80 * random.nextDouble();
        double yield = 150 + 0.25 * cost + 20 * random.nextDouble();
        double steady = random.nextDouble();
        double[] margins = new double[price.length];
        for (int k = 0; k < margins.length; k++) {
            margins[k] = acres * (yield * (3 + price[k] * (0.5 + steady)) * (0.9 + 0.2 * random.nextDouble()) - cost);
        }
        return new Option(
                name,
                acres * cost,
                0,
                margins,
                new double[] {random.nextInt(2) * acres / 15, random.nextInt(3) * acres / 20, acres / 26},
                new double[] {random.nextInt(2) * acres * 0.2, random.nextInt(2) * acres * 0.1});
    }

    private static Good good(RandomGenerator random, int fields, String name) {
        double list = 20 + 20 * random.nextDouble();
        double from = fields * 6.0;
        return new Good(
                name,
                list,
                random.nextInt(3) * 5.0 * fields,
                fields * (10 + 10 * random.nextDouble()),
                List.of(new Tier(0, list), new Tier(from, list * 0.9), new Tier(from * 1.5, list * 0.8)));
    }
}
