package plumbrow.advice.gates;

import java.util.List;
import plumbrow.advice.course.Course;
import plumbrow.advice.field.Field;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.LabelUse;

/**
 * Whether a product goes on no more often than its label allows.
 *
 * <p>Protects the law. Each pass with the product counts, whatever share of the field it covers: some acre may get them
 * all. Unknown where the number was not read.
 *
 * <p>Source: the label. Needs: the most applications per season of each product on the crop.
 */
final class MostApplications implements Gate {

    @Override
    public String id() {
        return "applications";
    }

    @Override
    public Protects protects() {
        return Protects.LAW;
    }

    @Override
    public String question() {
        return "Does it go on no more often than the label allows?";
    }

    @Override
    public List<Finding> check(Season season, Field field, Course course) {
        return Application.byProduct(season, course).entrySet().stream()
                .flatMap(entry -> season.shelf().labelUse(entry.getKey(), field.crop()).stream()
                        .map(use -> judge(use, entry.getValue().size())))
                .toList();
    }

    private Finding judge(LabelUse use, int planned) {
        Integer most = use.mostApplications();
        String times = planned == 1 ? "1 application" : planned + " applications";
        if (most == null) {
            return Finding.of(
                            this,
                            Standing.UNKNOWN,
                            use.product(),
                            "The course has " + times + "; how many the label allows has not been read.")
                    .standingIn(use.source())
                    .clearedBy("Look up the most applications per season for "
                            + use.crop().word() + " on the label.");
        }
        Finding finding = planned > most
                ? Finding.of(this, Standing.BARRED, use.product(), times + ", but the label allows " + most + ".")
                        .clearedBy("Drop to " + most + ".")
                : Finding.of(this, Standing.CLEAR, use.product(), times + "; the label allows " + most + ".");
        return finding.against(planned, most, "applications").standingIn(use.source());
    }
}
