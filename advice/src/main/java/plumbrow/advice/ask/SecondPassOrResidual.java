package plumbrow.advice.ask;

import java.time.LocalDate;
import java.util.Map;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.field.Crop;
import plumbrow.advice.shelf.ProductKind;

/** One post spray, a residual before it, or a second one after it? */
final class SecondPassOrResidual extends FieldQuestion {
    private static final String RESIDUAL = "Residual herbicide";
    private static final String POST = "Post herbicide";
    private static final String SECOND = "Second post herbicide";
    private static final int FIRST_DAYS = 24;
    private static final int SECOND_DAYS = 38;

    SecondPassOrResidual() {
        super(
                "weeds",
                "A second weed pass, or a residual?",
                "one post spray, a residual first, two post sprays",
                Weeds.CROP,
                STATE,
                PRICE,
                YIELD,
                Weeds.WEED,
                Weeds.DENSITY,
                Box.number("residual", "Residual herbicide", "$/ac", "product only", 0, 200),
                Box.number("post", "Post herbicide", "$/ac", "product only", 0, 200),
                Box.number("trip", "One spraying trip", "$/ac", "hired, or your own marginal cost", 0, 60),
                ACRES);
    }

    @Override
    public Crop crop(Answers answers) {
        return cropOf(answers, Crop.SOYBEAN);
    }

    @Override
    Map<String, String> quantities(Answers answers) {
        return Map.of(
                "density", "density before scouting: " + Weeds.name(answers),
                "residual", "residual herbicide price",
                "post", "post herbicide price",
                "trip", "custom rate: spraying now");
    }

    @Override
    public AskedSeason season(Answers answers, LocalDate asOf) {
        Crop crop = crop(answers);
        Draft draft = new Draft(answers, crop, asOf);
        Weeds.into(draft);
        Weeds.seed(draft, crop);
        String weed = Weeds.name(answers);
        draft.byTheAcre(RESIDUAL, ProductKind.HERBICIDE, "residual", "residual herbicide price");
        draft.byTheAcre(POST, ProductKind.HERBICIDE, "post", "post herbicide price");
        draft.byTheAcre(SECOND, ProductKind.HERBICIDE, "post", "post herbicide price");
        draft.control(RESIDUAL, weed, 1, "control by a residual");
        draft.control(POST, weed, 1, "control by a post spray, full rate");
        draft.control(SECOND, weed, 1, "control by a second post spray");
        Distribution none = new Distribution.Fixed(0);
        Distribution burn = Weeds.burn(draft);
        Weeds.program(draft, "One post spray", true, "", draft.spray(POST, 1, Weeds.after(draft, FIRST_DAYS), burn));
        Weeds.program(
                draft,
                "Residual, then post",
                false,
                "",
                draft.spray(RESIDUAL, 1, Weeds.after(draft, 0), none),
                draft.spray(POST, 1, Weeds.after(draft, FIRST_DAYS), burn));
        Weeds.program(
                draft,
                "Two post sprays",
                false,
                "",
                draft.spray(POST, 1, Weeds.after(draft, FIRST_DAYS), burn),
                draft.spray(SECOND, 1, Weeds.after(draft, SECOND_DAYS), burn));
        return draft.done();
    }
}
