package plumbrow.app.book;

import plumbrow.advice.weeds.Basis;
import plumbrow.advice.weeds.CropTiming;
import plumbrow.advice.weeds.FloorDepth;
import plumbrow.advice.weeds.LikeWeed;
import plumbrow.advice.weeds.MonthClimate;
import plumbrow.advice.weeds.TillageWork;
import plumbrow.advice.weeds.Timing;
import plumbrow.advice.weeds.Tool;
import plumbrow.advice.weeds.WeatherDay;
import plumbrow.advice.weeds.WeedRating;

/** What the season of weeds is reckoned from: climate, the crop's days, ratings, tillage. */
final class WeedRows {
    static final RowKind<MonthClimate> CLIMATE = new RowKind<>(
            "month_climate",
            "place month mean_f low_f high_f rain_in rain_days source",
            season -> season.pests().weedBook().climate(),
            (month, cells) -> cells.text(month.place())
                    .whole(month.month())
                    .real(month.meanF())
                    .real(month.lowF())
                    .real(month.highF())
                    .real(month.rainIn())
                    .real(month.rainDays())
                    .text(month.source()),
            row -> new MonthClimate(
                    row.text(),
                    row.whole(),
                    row.real(),
                    row.maybeReal(),
                    row.maybeReal(),
                    row.real(),
                    row.real(),
                    row.text()));

    static final RowKind<WeatherDay> DAY = new RowKind<>(
            "weather_day",
            "place day low_f high_f rain_in source",
            season -> season.pests().weedBook().days(),
            (day, cells) -> cells.text(day.place())
                    .date(day.date())
                    .real(day.lowF())
                    .real(day.highF())
                    .real(day.rainIn())
                    .text(day.source()),
            row -> new WeatherDay(row.text(), row.date(), row.real(), row.real(), row.real(), row.text()));

    static final RowKind<CropTiming> CROP = new RowKind<>(
            "crop_timing",
            "field up closed days_late source",
            season -> season.pests().weedBook().crops(),
            (crop, cells) -> cells.text(crop.field())
                    .date(crop.up())
                    .date(crop.closed())
                    .distribution(crop.daysLate())
                    .text(crop.source()),
            row -> new CropTiming(row.text(), row.maybeDate(), row.maybeDate(), row.distribution(), row.text()));

    static final RowKind<LikeWeed> LIKE = new RowKind<>(
            "like_weed",
            "weed like_weed source",
            season -> season.pests().weedBook().likes(),
            (like, cells) -> cells.text(like.weed()).text(like.as()).text(like.source()),
            row -> new LikeWeed(row.text(), row.text(), row.text()));

    static final RowKind<WeedRating> RATING = new RowKind<>(
            "weed_rating",
            "product weed timing rate rate_unit height_in seen_days control basis as_for source",
            season -> season.pests().weedBook().ratings(),
            (rating, cells) -> cells.text(rating.product())
                    .text(rating.weed())
                    .word(rating.timing())
                    .amount(rating.rate())
                    .real(rating.heightIn())
                    .whole(rating.seenDays())
                    .distribution(rating.control())
                    .word(rating.basis())
                    .text(rating.asFor())
                    .text(rating.source()),
            row -> new WeedRating(
                    row.text(),
                    row.text(),
                    row.word(Timing.class),
                    row.amount(),
                    row.maybeReal(),
                    row.maybeWhole(),
                    row.distribution(),
                    row.word(Basis.class),
                    row.maybeText(),
                    row.text()));

    static final RowKind<TillageWork> TILLAGE = new RowKind<>(
            "tillage_work",
            "field program pass tool depth_in source",
            season -> season.pests().weedBook().tillage(),
            (work, cells) -> cells.text(work.field())
                    .text(work.program())
                    .whole(work.pass())
                    .word(work.tool())
                    .real(work.depthIn())
                    .text(work.source()),
            row -> new TillageWork(row.text(), row.text(), row.whole(), row.word(Tool.class), row.real(), row.text()));

    static final RowKind<FloorDepth> FLOOR = new RowKind<>(
            "floor_depth",
            "field tool place depth_in source",
            season -> season.pests().weedBook().floor(),
            (hole, cells) -> cells.text(hole.field())
                    .word(hole.tool())
                    .text(hole.place())
                    .real(hole.depthIn())
                    .text(hole.source()),
            row -> new FloorDepth(row.text(), row.word(Tool.class), row.text(), row.real(), row.text()));

    private WeedRows() {}
}
