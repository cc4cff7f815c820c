package plumbrow.documents.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Boundary;
import plumbrow.advice.field.Boundary.Point;
import plumbrow.advice.field.Boundary.Polygon;
import plumbrow.advice.field.Crop;
import plumbrow.advice.field.Field;
import plumbrow.advice.land.CountyFit;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.PassKind;
import plumbrow.advice.program.Program;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.Dimension;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.ActiveContent;
import plumbrow.advice.shelf.UseTerms;
import plumbrow.science.figure.Numbers;

/**
 * Values that may be true and hardly are: a person is asked, and nothing is refused. Where a typing error of a decimal point, a unit
 * or an order would give them, that is said.
 *
 * <p>What is usual: seeds planted to the acre, common practice, no source; the longest interval in hours, value from memory; what a
 * gallon weighs, by 8.345404 lb/gal for 1 g/mL and liquids of no more than 1.4 g/mL, common practice, no source.
 */
final class Plausible {
    /** A week; labels print 0 to 168 h, a few more. */
    private static final int LONGEST_REI_HOURS = 168;

    /** 1.4 g/mL [lb/gal]: what holds more than it weighs is no liquid. */
    private static final double HEAVIEST_LB_GAL = 1.4 * 8.345404;

    private Plausible() {}

    /** What to ask of a season that has just been read, a sentence each, one cause once. */
    static List<String> questions(Season season) {
        return Stream.of(seeds(season), intervals(season), contents(season), outlines(season))
                .flatMap(questions -> questions)
                .distinct()
                .toList();
    }

    private static Stream<String> seeds(Season season) {
        List<String> asked = new ArrayList<>();
        int more = 0;
        for (Program program : season.programs()) {
            Crop crop = season.field(program.field()).map(Field::crop).orElse(null);
            for (Pass pass : program.passes()) {
                Amount rate = pass.rate();
                if (crop == null || pass.kind() != PassKind.SEED || rate == null || !thousands(rate)) {
                    continue;
                }
                double thousand = rate.in(FarmUnit.THOUSAND_SEEDS).value();
                if (thousand > most(crop)) {
                    if (asked.isEmpty()) {
                        asked.add("Question: pass " + pass.number() + " of " + program.name() + " on " + program.field()
                                + " plants " + Numbers.read(thousand) + " thousand seeds on each acre; " + crop.word()
                                + " is planted at no more than " + Numbers.read(most(crop))
                                + " thousand. Are these seeds, not thousands of seeds, or is a point missing?");
                    } else {
                        more++;
                    }
                }
            }
        }
        return more == 0 ? asked.stream() : Stream.of(asked.get(0) + " So " + count(more, "pass", "passes") + " more.");
    }

    private static boolean thousands(Amount rate) {
        return rate.comparableWith(new Amount(1, FarmUnit.THOUSAND_SEEDS));
    }

    private static double most(Crop crop) {
        return switch (crop) {
            case CORN -> 60;
            case SOYBEAN -> 400;
            case WHEAT -> 3_000;
        };
    }

    private static Stream<String> intervals(Season season) {
        return season.shelf().labels().terms().stream().flatMap(terms -> interval(terms, terms.reentryHours()));
    }

    private static Stream<String> interval(UseTerms terms, @Nullable Integer hours) {
        return hours == null || hours <= LONGEST_REI_HOURS
                ? Stream.of()
                : Stream.of("Question: the restricted-entry interval (REI) of " + terms.product() + " on "
                        + terms.crop().word() + " is " + Numbers.read(hours) + " h, which is "
                        + Numbers.read((double) Math.round(hours / 24.0)) + " days; labels print 0 to "
                        + LONGEST_REI_HOURS
                        + " h. Look at the label again.");
    }

    private static Stream<String> contents(Season season) {
        return season.shelf().actives().stream().flatMap(Plausible::content);
    }

    private static Stream<String> content(ActiveContent active) {
        FarmUnit per = active.per();
        boolean liquid = per.dimension() == Dimension.VOLUME;
        if (!liquid && per.dimension() != Dimension.MASS) {
            return Stream.of();
        }
        double pounds = active.pounds()
                / new Amount(1, per).in(liquid ? FarmUnit.GAL : FarmUnit.LB).value();
        String has =
                "Question: " + active.product() + " holds " + Numbers.read(pounds) + " lb of " + active.ingredient();
        if (liquid) {
            return pounds <= HEAVIEST_LB_GAL
                    ? Stream.of()
                    : Stream.of(has + " in a gallon; a gallon of water weighs 8.3 lb, and few liquids more than "
                            + Numbers.read((double) Math.round(HEAVIEST_LB_GAL))
                            + " lb. Is a point missing, or is it the percent?");
        }
        return pounds <= 1
                ? Stream.of()
                : Stream.of(has + " in a pound, which is more than all of it. Is it the percent?");
    }

    private static Stream<String> outlines(Season season) {
        return season.fields().stream().flatMap(field -> {
            Boundary outline = field.boundary();
            return outline == null || known(outline) ? Stream.of() : Stream.of(outside(field, outline));
        });
    }

    private static boolean known(Boundary outline) {
        CountyFit fit = CountyFit.of(outline);
        return !fit.in().isEmpty() || !fit.near().isEmpty();
    }

    private static String outside(Field field, Boundary outline) {
        Point first = outline.polygons().get(0).shell().get(0);
        String lies = "Question: the outline of " + field.name() + " lies outside the United States, at longitude "
                + Numbers.read(first.longitude()) + " and latitude " + Numbers.read(first.latitude())
                + ", and the field in "
                + field.county() + ", " + field.state() + ".";
        Boundary turned = turned(outline);
        return turned != null && known(turned)
                ? lies + " With the two exchanged it would lie in "
                        + CountyFit.of(turned).in().stream()
                                .map(part -> part.county().words())
                                .findFirst()
                                .orElse("the country")
                        + ": outlines give the longitude first."
                : lies + " Was it drawn on the right place?";
    }

    /** The outline with longitude and latitude exchanged; null where that lies on no map. */
    private static @Nullable Boundary turned(Boundary outline) {
        boolean onTheMap = outline.polygons().stream()
                .flatMap(polygon -> polygon.shell().stream())
                .allMatch(point -> Math.abs(point.longitude()) <= 90 && Math.abs(point.latitude()) <= 180);
        return !onTheMap
                ? null
                : new Boundary(outline.polygons().stream()
                        .map(polygon -> new Polygon(
                                turned(polygon.shell()),
                                polygon.holes().stream().map(Plausible::turned).toList()))
                        .toList());
    }

    private static List<Point> turned(List<Point> ring) {
        return ring.stream()
                .map(point -> new Point(/* longitude= */ point.latitude(), /* latitude= */ point.longitude()))
                .toList();
    }

    private static String count(int number, String one, String several) {
        return number + " " + (number == 1 ? one : several);
    }
}
