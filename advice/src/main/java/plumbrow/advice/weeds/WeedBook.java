package plumbrow.advice.weeds;

import java.util.List;

/**
 * All that the season of weeds is reckoned from beyond their pressure.
 *
 * @param climate monthly normals of places
 * @param days measured days of places
 * @param crops crop days of fields
 * @param likes weeds for which another stands in
 * @param ratings the adviser's own ratings
 * @param tillage how tillage passes are run
 * @param floor floor checks
 */
public record WeedBook(
        List<MonthClimate> climate,
        List<WeatherDay> days,
        List<CropTiming> crops,
        List<LikeWeed> likes,
        List<WeedRating> ratings,
        List<TillageWork> tillage,
        List<FloorDepth> floor) {
    /** Nobody has written anything down. */
    public static final WeedBook BLANK =
            new WeedBook(List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of());

    public WeedBook {
        climate = List.copyOf(climate);
        days = List.copyOf(days);
        crops = List.copyOf(crops);
        likes = List.copyOf(likes);
        ratings = List.copyOf(ratings);
        tillage = List.copyOf(tillage);
        floor = List.copyOf(floor);
    }

    /** The same with other measured days. */
    public WeedBook withDays(List<WeatherDay> others) {
        return new WeedBook(climate, others, crops, likes, ratings, tillage, floor);
    }

    /** The same with other tillage. */
    public WeedBook withTillage(List<TillageWork> others) {
        return new WeedBook(climate, days, crops, likes, ratings, others, floor);
    }
}
