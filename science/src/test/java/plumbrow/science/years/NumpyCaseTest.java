package plumbrow.science.years;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;
import static plumbrow.science.years.Stands.ENDLESS;
import static plumbrow.science.years.Stands.random;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("Two genes, two programs in turn, selfing, cost, mutation and inflow, against bench/numpy/years.py")
class NumpyCaseTest {
    private static final double SEEDS = 400;
    private static final WeedResponse FIRST = response(.004, .05, .08, .9);
    private static final WeedResponse SECOND = response(.05, .9, .05, .9);

    /** Plants left of a seedling: susceptible, resists the first, the second, both. */
    private static WeedResponse response(double none, double first, double second, double both) {
        double[][] left = {{none}, {first}, {second}, {both}};
        double[][] seeds = {{SEEDS * none}, {SEEDS * first}, {SEEDS * second}, {SEEDS * both}};
        return new WeedResponse(left, seeds, left, .05);
    }

    @ParameterizedTest(name = "year {0}: {1} seeds/m²")
    @CsvSource({
        "1, 516.4606639, 0.000324177621, 0.001941145288, 0.5811783969",
        "2, 1020.456874, 0.003910580982, 0.002062110646, 4.693187811",
        "3, 668.6035169, 0.01250048739, 0.004036064522, 0.8051094423",
        "4, 1485.700521, 0.1175411746, 0.005353581469, 8.237808787",
        "5, 1339.866718, 0.2534839733, 0.01814032435, 3.674805262",
        "6, 3756.790491, 0.515016296, 0.02501170513, 90.77318971",
        "7, 4064.900563, 0.6042181794, 0.0732457493, 29.23220552",
        "8, 5597.942614, 0.682447377, 0.07402891536, 525.0871464",
        "9, 5528.844167, 0.7271748794, 0.1748434463, 67.79728315",
        "10, 6314.689048, 0.7629857248, 0.1697954331, 795.3919151",
        "11, 6032.696517, 0.7933080187, 0.3257307484, 127.778662",
        "12, 6471.065594, 0.8129538123, 0.3115962401, 905.2122832",
        "13, 6104.679173, 0.835537363, 0.4875539012, 228.4898945",
        "14, 6368.158567, 0.846861388, 0.4651511151, 936.3283336",
        "15, 6006.168358, 0.8638328485, 0.6241872806, 353.6748926",
        "16, 6180.871381, 0.8704249913, 0.5981083567, 933.0659942",
        "17, 5871.62862, 0.8833621381, 0.7267144403, 469.6459599",
        "18, 5997.998259, 0.8870849974, 0.7008870924, 919.4689079",
        "19, 5750.805159, 0.8972643915, 0.8000028624, 561.8307566",
        "20, 5847.247885, 0.8991226759, 0.7764131679, 905.3056519"
    })
    void year(int year, double seeds, double first, double second, double plants) {
        WeedBank bank = new WeedBank(
                List.of(
                        new ResistanceGene(1e-4, 300, 9e4, .1, .5, 1e-6, 0),
                        new ResistanceGene(1e-3, 4, 1e3, .25, 0, 1e-5, .02)),
                new WeedLife(.2, .3, .1, .5, .25),
                new Inflow(.03, .4),
                ENDLESS);
        bank.start(800, random());
        for (int y = 1; y <= year; y++) {
            bank.year(y % 2 == 1 ? FIRST : SECOND, 0, random());
        }
        assertThat(bank.seedsM2()).isCloseTo(seeds, withPercentage(1e-7));
        assertThat(bank.frequency(0)).isCloseTo(first, withPercentage(1e-7));
        assertThat(bank.frequency(1)).isCloseTo(second, withPercentage(1e-7));
        assertThat(bank.plantsM2()).isCloseTo(plants, withPercentage(1e-7));
    }
}
