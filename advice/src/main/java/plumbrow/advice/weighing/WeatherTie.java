package plumbrow.advice.weighing;

import java.util.Comparator;
import java.util.stream.IntStream;
import plumbrow.advice.assumptions.Column;
import plumbrow.advice.weedseason.SeasonWeather;

/**
 * How the attainable yield of a field hangs on the weather of its season: by a rank correlation with how wet and cool the month
 * was that decides the crop.
 *
 * Illinois' corn departed from its trend with July's mean temperature by r = −0.63 over the 40 years to 2012; Nebraska's dryland
 * counties, 1947 to 2010, go with July's warmth in all and with its rain in 93 of 100. One field follows its state loosely: 0.4
 * is ours, common practice, no source.
 *
 * @param place of the input that is the season
 * @param seasons what a draw of it stands for
 * @param summer what each season has for the yield, low to high; empty where it has no say
 * @param rankCorrelation −0.95 to 0.95
 */
@SuppressWarnings("ArrayRecordComponent") // One number a season; read only.
record WeatherTie(int place, SeasonWeather seasons, double[] summer, double rankCorrelation) {
    static final double USUAL = .4;
    static final String SOURCE = "common practice, after Illinois and Nebraska yields against July weather";

    boolean ties() {
        return summer.length > 0 && rankCorrelation != 0;
    }

    /** For each draw, how many draws have less for the yield; draws of one season keep the order of the season's own draws. */
    int[] ranks(Column weather) {
        int draws = weather.values().length;
        double[] score = new double[draws];
        for (int i = 0; i < draws; i++) {
            score[i] = summer[seasons.at(weather.values()[i])];
        }
        int[] order = IntStream.range(0, draws)
                .boxed()
                .sorted(Comparator.comparingDouble((Integer i) -> score[i]).thenComparingInt(i -> weather.ranks()[i]))
                .mapToInt(Integer::intValue)
                .toArray();
        int[] ranks = new int[draws];
        for (int rank = 0; rank < draws; rank++) {
            ranks[order[rank]] = rank;
        }
        return ranks;
    }
}
