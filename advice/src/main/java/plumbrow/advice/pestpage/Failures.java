package plumbrow.advice.pestpage;

import java.util.ArrayList;
import java.util.List;
import plumbrow.advice.gates.Ingredient;
import plumbrow.advice.gates.ProductGroups;
import plumbrow.advice.program.Done;
import plumbrow.advice.season.Season;
import plumbrow.science.figure.Numbers;

/** What fails against a pest on the fields of the book, and where it went on all the same. */
final class Failures {
    private Failures() {}

    static List<FailedSite> weed(Season season, String weed) {
        List<FailedSite> failed = new ArrayList<>();
        season.pests().resistance().stream()
                .filter(row -> row.weed().equalsIgnoreCase(weed))
                .forEach(row -> {
                    Double share = row.sharePct();
                    String group = Ingredient.sameSite(row.group());
                    failed.add(new FailedSite(
                            row.field(),
                            group,
                            share,
                            share == null
                                    ? "Group " + group
                                            + " fails; nobody has counted, so all plants are taken to resist."
                                    : Numbers.plain(share) + " % of the plants resist group " + group + ".",
                            log(season, row.field(), group),
                            row.source()));
                });
        return failed;
    }

    private static List<String> log(Season season, String field, String group) {
        return season.work().log(field).stream()
                .filter(line -> ProductGroups.of(season.shelf(), line.product())
                        .filter(groups -> groups.contains(group))
                        .isPresent())
                .map(Failures::says)
                .toList();
    }

    private static String says(Done line) {
        return line.date() + ": " + line.product() + ", " + line.rate().text() + "/ac";
    }

    static List<FailedSite> insect(Season season, String insect) {
        return season.pests().traitDoubts().stream()
                .filter(doubt -> doubt.insect().equalsIgnoreCase(insect))
                .map(doubt -> new FailedSite(
                        doubt.field(),
                        doubt.group(),
                        100 * doubt.chance(),
                        "Trait group " + doubt.group() + " may fail in " + Numbers.fixed(100 * doubt.chance(), 0)
                                + " of 100 seasons; it then still prevents "
                                + Numbers.fixed(100 * doubt.controlIfFailed(), 0) + " % of the injury.",
                        List.of(),
                        doubt.source()))
                .toList();
    }
}
