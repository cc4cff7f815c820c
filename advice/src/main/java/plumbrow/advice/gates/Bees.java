package plumbrow.advice.gates;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import plumbrow.advice.field.FeatureKind;
import plumbrow.advice.program.SprayPlan;
import plumbrow.advice.shelf.Ask;
import plumbrow.advice.shelf.Method;
import plumbrow.advice.shelf.ProductCare;
import plumbrow.science.fate.BeeExposure;
import plumbrow.science.fate.LevelOfConcern;
import plumbrow.science.figure.Numbers;
import plumbrow.science.reference.Property;

/**
 * Whether a spray may harm bees.
 *
 * <p>Protects wildlife. The label's bee words come first: where it forbids spraying on bloom, bloom bars it, and without
 * bloom it is a condition of the day. Then a screen, which never bars: contact with 2.7 µg/bee for each lb/ac against the
 * contact LD50; from 0.4 on, or where the reference data lack the LD50, bloom or a bee yard within 2 miles makes it
 * conditional. Unknown where the label was not read for bees, and where bloom is not planned and would decide. Growth
 * regulators that harm brood, and what is eaten with nectar, are not in the screen.
 *
 * <p>A treatment on the seed with a contact LD50 below 2 µg a bee, or one that the reference data lack, is a condition at
 * planting, for its dust; unknown where its content is not in the book.
 *
 * <p>Source: the label; EPA, PMRA and CDPR 2014 (2.7 and 0.4 from memory); 2 miles is common practice, no source. Needs:
 * the label's bee words, bloom on the day, bee yards with distance.
 */
final class Bees extends Question {
    private static final double LEVEL = 0.4;
    /** Below it a substance is highly toxic to bees (EPA, 40 CFR 158.630 tests; classes from memory). */
    private static final double HIGHLY_TOXIC_UG = 2;

    private static final String DUST_SOURCE =
            "EPA toxicity class of bees, under 2 µg a bee (from memory); common practice";
    private static final double FORAGE_FT = 2 * 5280;
    private static final String EVENING =
            "Tell the beekeepers two days ahead, spray after the bees are home, mow weeds in "
                    + "bloom first, and ask how long the residue stays toxic: past 8 h the evening is not enough.";

    Bees() {
        super("bees", Protects.WILDLIFE, "May the spray harm bees?");
    }

    @Override
    public List<Finding> check(Case at) {
        return Stream.concat(
                        at.planned().stream()
                                .filter(Application::throughAir)
                                .flatMap(application -> at.care(application.product()).stream()
                                        .flatMap(care -> judge(at, application, care))),
                        onSeed(at))
                .toList();
    }

    /** Dust of an insecticide on the seed, from the treatments that the seed comes with and from those put on as a pass. */
    private Stream<Finding> onSeed(Case at) {
        return Stream.concat(
                        TreatedSeed.of(at).stream(),
                        at.planned().stream().filter(application -> application.method() == Method.ON_SEED))
                .flatMap(application -> at.index()
                                .actives(application.product())
                                .isEmpty()
                        ? Stream.of(unknown(
                                application.product() + " on the seed",
                                "What is in " + application.product()
                                        + " is not in the book, so nobody knows whether its " + "dust harms bees.",
                                "Look up the active ingredients on the label of " + application.product() + "."))
                        : Dose.of(at, application).flatMap(dose -> dust(at, dose)))
                .distinct();
    }

    private Stream<Finding> dust(Case at, Dose dose) {
        String subject = dose.application().product() + " on the seed, "
                + dose.ingredient().name();
        Double lethal = dose.ingredient().number(Property.BEE_CONTACT);
        if (lethal != null && lethal >= HIGHLY_TOXIC_UG) {
            return Stream.of(
                    clear(subject, "Contact LD50 of " + Numbers.read(lethal) + " µg a bee: dust is not flagged.")
                            .standingIn(DUST_SOURCE));
        }
        Optional<Lying> yard = yard(at);
        String says = lethal == null
                ? "The reference data lack the contact LD50 of "
                        + dose.ingredient().name() + " for bees: unknown, and its dust counted as harmful."
                : "Contact LD50 of " + Numbers.read(lethal) + " µg a bee: dust from the planter can kill them"
                        + yard.map(one -> ", and bees of " + one.name() + " fly here.")
                                .orElse(".");
        return Stream.of(conditional(
                        subject,
                        says,
                        "Plant with a dust deflector and a lubricant other than talc, mow weeds in bloom first, tell the "
                                + "beekeepers, and mind the wind.")
                .lacking(dose.ingredient().name(), "contact LD50 for bees")
                .standingIn(DUST_SOURCE));
    }

    private static Optional<Lying> yard(Case at) {
        return at.features().stream()
                .filter(feature -> feature.kind() == FeatureKind.BEE_YARD)
                .filter(feature -> feature.nearestFt() == null || feature.nearestFt() < FORAGE_FT)
                .findFirst();
    }

    private Stream<Finding> judge(Case at, Application application, ProductCare care) {
        SprayPlan plan = application.plan();
        Ask bloom = plan == null ? Ask.UNKNOWN : plan.bloom();
        Finding label = label(application, care, bloom).standingIn(care.source());
        return Stream.concat(
                Stream.of(label),
                Dose.of(at, application)
                        .map(dose -> screen(at, dose, bloom)
                                .standingIn(
                                        "EPA, PMRA and CDPR 2014, Guidance for Assessing Pesticide Risks to Bees")));
    }

    private Finding label(Application application, ProductCare care, Ask bloom) {
        String subject = application.subject();
        return switch (care.bees()) {
            case UNKNOWN ->
                unknown(
                        subject,
                        "What the label says of bees has not been read.",
                        "Look for bees and bloom on the label.");
            case NO -> clear(subject, "The label does not forbid spraying on bloom.");
            case YES ->
                switch (bloom) {
                    case YES ->
                        barred(
                                subject,
                                "The label forbids spraying on bloom, and crop or weeds are in bloom.",
                                "Go before or after bloom, or choose a product that may go on bloom.");
                    case NO ->
                        conditional(
                                subject,
                                "The label forbids spraying on bloom or where bees forage; none is planned for.",
                                "Look on the day: no bloom in crop or weeds, and no bees at work.");
                    case UNKNOWN ->
                        unknown(
                                subject,
                                "The label forbids spraying on bloom, and whether anything blooms is not planned.",
                                "Say whether crop or weeds are in bloom on that day.");
                };
        };
    }

    private Finding screen(Case at, Dose dose, Ask bloom) {
        Double lethal = dose.ingredient().number(Property.BEE_CONTACT);
        Double pounds = dose.poundsPerAcre();
        if (pounds == null) {
            return unknown(
                    dose.subject(),
                    "How much goes on an acre is not known.",
                    "Write the rate in the unit of the product's content.");
        }
        if (lethal == null) {
            return flagged(
                            at,
                            dose,
                            bloom,
                            "The reference data lack the contact LD50 of "
                                    + dose.ingredient().name() + " for bees: unknown, and counted as harmful")
                    .lacking(dose.ingredient().name(), "contact LD50 for bees");
        }
        double quotient = BeeExposure.contactUg(pounds) / lethal;
        String says = "Contact is " + Numbers.read(quotient) + " of what kills half the bees";
        Finding finding = LevelOfConcern.reached(quotient, "bee", "acute").isEmpty()
                ? clear(dose.subject(), says + ": not flagged by this screen.")
                : flagged(at, dose, bloom, says);
        return finding.against(quotient, LEVEL, "of the LD50");
    }

    private Finding flagged(Case at, Dose dose, Ask bloom, String says) {
        Optional<Lying> yard = yard(at);
        return switch (bloom) {
            case YES -> conditional(dose.subject(), says + ", and crop or weeds are in bloom.", EVENING);
            case UNKNOWN ->
                unknown(
                        dose.subject(),
                        says + ", and whether anything blooms is not planned.",
                        "Say whether crop or weeds are in bloom on that day.");
            case NO ->
                yard.map(feature -> conditional(
                                dose.subject(), says + ", and bees of " + feature.name() + " fly here.", EVENING))
                        .orElseGet(() -> clear(dose.subject(), says + "; nothing blooms and no bee yard is near."));
        };
    }
}
