package plumbrow.advice.pestpage;

import java.util.List;
import java.util.Optional;
import plumbrow.advice.assumptions.Chances;
import plumbrow.advice.field.Field;
import plumbrow.advice.pests.InsectPressure;
import plumbrow.advice.pests.WeedPressure;
import plumbrow.advice.season.Season;
import plumbrow.advice.weedseason.WeedSeasons;
import plumbrow.science.figure.Numbers;
import plumbrow.science.insects.RootwormLoss;
import plumbrow.science.weeds.HyperbolicLoss;
import plumbrow.science.weeds.WeedLoss;
import plumbrow.science.weedseason.Competition;

/** What a pest costs on the fields where it presses. */
final class Harm {
    private static final int[] LATE_DAYS = {10, 20};

    private Harm() {}

    static List<Pressing> weed(Season season, String weed) {
        return season.pests().weeds().stream()
                .filter(row -> row.weed().equalsIgnoreCase(weed))
                .flatMap(row -> season.field(row.field()).map(field -> of(season, field, row)).stream())
                .toList();
    }

    private static Pressing of(Season season, Field field, WeedPressure row) {
        double density = Chances.of(row.densityPerSquareMetre()).mean();
        String late = WeedSeasons.species(season, row.weed())
                .map(known -> lateness(known.competition(), row, known.name()))
                .orElse("What lateness takes off is unknown: no competition by days is kept for it.");
        return new Pressing(
                field.name(),
                field.crop(),
                density,
                "plants/m²",
                HyperbolicLoss.lossPct(density, row.firstPlantLossPct(), row.mostLossPct()),
                "The first plant per m² that comes with the crop costs I = " + Numbers.plain(row.firstPlantLossPct())
                        + " %, the densest stand A = " + Numbers.plain(row.mostLossPct()) + " % of the yield. " + late,
                WeedLoss.FIGURE.id(),
                row.source());
    }

    private static String lateness(Competition known, WeedPressure row, String as) {
        StringBuilder says = new StringBuilder("A plant that comes ");
        for (int i = 0; i < LATE_DAYS.length; i++) {
            double share = known.load(LATE_DAYS[i]) / known.load(0);
            says.append(i == 0 ? "" : ", one that comes ")
                    .append(LATE_DAYS[i])
                    .append(" days after the crop costs ")
                    .append(Numbers.fixed(100 * share, 0))
                    .append(" % of that");
        }
        return says + (as.equalsIgnoreCase(row.weed()) ? "" : ", as " + as) + ".";
    }

    static List<Pressing> insect(Season season, String insect) {
        return rows(season, insect).stream()
                .flatMap(row -> season.field(row.field()).map(field -> of(field, row)).stream())
                .toList();
    }

    static List<InsectPressure> rows(Season season, String insect) {
        return season.pests().insects().stream()
                .filter(row -> row.insect().equalsIgnoreCase(insect))
                .toList();
    }

    static Optional<InsectPressure> row(Season season, String insect, String field) {
        return rows(season, insect).stream()
                .filter(row -> row.field().equals(field))
                .findFirst();
    }

    private static Pressing of(Field field, InsectPressure row) {
        double pressure = Chances.of(row.pressure()).mean();
        double each = Chances.of(row.lossPerUnitPct()).mean();
        boolean nodes = row.measure() == InsectPressure.Measure.NODE_INJURY;
        return new Pressing(
                field.name(),
                field.crop(),
                pressure,
                row.measure().unit(),
                Math.min(100, pressure * each),
                "Each " + row.measure().one() + " costs " + Numbers.fixed(each, 2)
                        + " % of the yield, in a straight line. "
                        + (row.scouted() == null ? "Not scouted on this field yet." : "Scouted " + row.scouted() + "."),
                nodes ? RootwormLoss.FIGURE.id() : plumbrow.science.insects.EconomicInjuryLevel.FIGURE.id(),
                row.source());
    }
}
