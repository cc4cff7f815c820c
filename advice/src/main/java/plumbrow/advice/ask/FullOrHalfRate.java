package plumbrow.advice.ask;

import java.time.LocalDate;
import java.util.Map;
import plumbrow.advice.field.Crop;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.shelf.Ask;
import plumbrow.advice.shelf.ProductKind;

/** The full rate of a post herbicide, or half of it? */
final class FullOrHalfRate extends FieldQuestion {
    private static final String POST = "Post herbicide";
    private static final int DAYS = 24;

    FullOrHalfRate() {
        super(
                "rate",
                "Full or half rate?",
                "a post herbicide on one weed",
                Weeds.CROP,
                STATE,
                PRICE,
                YIELD,
                Weeds.WEED,
                Weeds.DENSITY,
                Box.number("post", "Post herbicide, full rate", "$/ac", "product only", 0, 200),
                Box.choice(
                        "less",
                        "Does the label forbid less than its lowest rate?",
                        "read it: half of the full rate may lie below",
                        "no",
                        "no, it allows less",
                        "yes",
                        "yes, it forbids less"),
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
                "density",
                "density before scouting: " + Weeds.name(answers),
                "post",
                "post herbicide price",
                "trip",
                "custom rate: spraying now");
    }

    @Override
    public AskedSeason season(Answers answers, LocalDate asOf) {
        Crop crop = crop(answers);
        Draft draft = new Draft(answers, crop, asOf);
        Weeds.into(draft);
        Weeds.seed(draft, crop);
        String weed = Weeds.name(answers);
        draft.byTheAcre(POST, ProductKind.HERBICIDE, "post", "post herbicide price");
        draft.control(POST, weed, 0.5, "control by a post spray, half rate");
        draft.control(POST, weed, 1, "control by a post spray, full rate");
        Ask less = switch (answers.choice("less")) {
            case "yes" -> Ask.YES;
            case "no" -> Ask.NO;
            default -> Ask.UNKNOWN;
        };
        if (less != Ask.UNKNOWN) {
            Amount full = Draft.rate(1);
            draft.labelUse(POST, full, full, less);
        }
        Weeds.program(draft, "Full rate", true, "", draft.spray(POST, 1, Weeds.after(draft, DAYS), Weeds.burn(draft)));
        Weeds.program(
                draft,
                "Half rate",
                false,
                "what half a rate leaves alive breeds resistance, which this season’s money does not show",
                draft.spray(POST, 0.5, Weeds.after(draft, DAYS), Weeds.burn(draft)));
        return draft.done();
    }
}
