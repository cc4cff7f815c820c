package plumbrow.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import plumbrow.science.weedseason.Biotype;
import plumbrow.science.weedseason.Chemistry;
import plumbrow.science.weedseason.Crop;
import plumbrow.science.weedseason.Days;
import plumbrow.science.weedseason.KnownWeeds;
import plumbrow.science.weedseason.LeafResponse;
import plumbrow.science.weedseason.Pass;
import plumbrow.science.weedseason.Post;
import plumbrow.science.weedseason.Residual;
import plumbrow.science.weedseason.SoilResponse;
import plumbrow.science.weedseason.Species;
import plumbrow.science.weedseason.Uncertain;
import plumbrow.science.weedseason.WeedSeason;

/**
 * One corn field with four weeds and six programs, all that can be uncertain drawn: density and shift of each weed, one number
 * of days late for the sprayer, days to rain of each residual, and the doubt of each rating.
 */
final class SeasonField {
    static final int FIRST_DAY = 60;
    static final int LATE = 8;
    static final int RAIN = 9;
    static final int SOIL_DOUBT = 11;
    static final int LEAF_DOUBT = 15;
    static final int COLUMNS = 19;
    private static final Chemistry CHEMISTRY = new Chemistry(20, 200, 530, 4.18e-3);
    private static final Uncertain SPRAYER = Uncertain.drawn(LATE);

    private SeasonField() {}

    /** Soil and air alike, a warm season's curve [°C]; no rain, as it is drawn. */
    static double[] celsius() {
        double[] celsius = new double[221];
        Arrays.setAll(celsius, i -> 4 + 20 * Math.sin(Math.PI * i / 260));
        return celsius;
    }

    /** The field under each of its programs, with the first so many weeds. */
    static List<WeedSeason> programs(int weeds) {
        List<Species> species = new ArrayList<>();
        List<Species> known = List.of(
                KnownWeeds.burcucumber(),
                KnownWeeds.waterhemp().withBiotypes(List.of(new Biotype(.7, Set.of()), new Biotype(.3, Set.of(9)))),
                KnownWeeds.giantFoxtail(),
                KnownWeeds.lambsquarters());
        for (int j = 0; j < weeds; j++) {
            species.add(known.get(j).withDensity(Uncertain.drawn(j)).withShift(Uncertain.drawn(4 + j)));
        }
        Days days = Days.measured(FIRST_DAY, celsius(), celsius(), new double[celsius().length]);
        Pass burndown = post(115, 9, weeds);
        Pass pre = residual(121, 5, RAIN, weeds);
        Pass post = post(150, 27, weeds);
        Pass layered = residual(150, 15, RAIN + 1, weeds);
        Pass rescue = post(170, 9, weeds);
        return Stream.of(
                        List.of(burndown),
                        List.of(burndown, pre),
                        List.of(burndown, post),
                        List.of(burndown, pre, post),
                        List.of(burndown, pre, post, layered),
                        List.of(burndown, pre, post, layered, rescue))
                .map(passes -> new WeedSeason(days, new Crop(132, 182), species, passes))
                .toList();
    }

    private static Residual residual(int day, int group, int rain, int weeds) {
        List<SoilResponse> responses = new ArrayList<>();
        for (int j = 0; j < weeds; j++) {
            responses.add(new SoilResponse(200, 3, Uncertain.drawn(SOIL_DOUBT + j)));
        }
        Optional<Uncertain> rainAfter = Optional.of(Uncertain.drawn(rain));
        return new Residual("residual", day, SPRAYER, group, 1400, CHEMISTRY, 20, rainAfter, 0, responses);
    }

    private static Post post(int day, int group, int weeds) {
        double half = LeafResponse.seen(97, 840, 2.5, 10, 1.2).ed50();
        List<LeafResponse> responses = new ArrayList<>();
        for (int j = 0; j < weeds; j++) {
            responses.add(new LeafResponse(half, 2.5, 10, 1.2, Uncertain.drawn(LEAF_DOUBT + j)));
        }
        return new Post("post", day, SPRAYER, group, 840, .02, responses);
    }

    static double[][] columns(int draws) {
        SplittableRandom random = new SplittableRandom(6);
        double[][] columns = new double[COLUMNS][draws];
        for (int c = 0; c < COLUMNS; c++) {
            for (int i = 0; i < draws; i++) {
                columns[c][i] = draw(random, c);
            }
        }
        return columns;
    }

    private static double draw(SplittableRandom random, int column) {
        if (column < 4) {
            return random.nextDouble(1, 60);
        }
        if (column < LATE) {
            return random.nextDouble(-12, 12);
        }
        double wait = -Math.log(1 - random.nextDouble());
        if (column < SOIL_DOUBT) {
            return Math.min(40, Math.floor((column == LATE ? 4 : 6) * wait));
        }
        return Math.exp(random.nextDouble(-1, 1));
    }
}
