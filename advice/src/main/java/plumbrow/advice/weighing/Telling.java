package plumbrow.advice.weighing;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import plumbrow.advice.gates.Finding;
import plumbrow.advice.gates.Standing;
import plumbrow.science.figure.Numbers;

/** The advice in sentences: what to do and its odds, why, and what is in doubt. Never more certain than the draws. */
final class Telling {
    private final FieldModel model;
    private final List<WeighedCourse> weighed;
    private final Choice choice;
    private final List<Comparison> comparisons;
    private final List<BreakEven> breakEvens;
    private final List<Knowing> matters;

    Telling(
            FieldModel model,
            List<WeighedCourse> weighed,
            Choice choice,
            List<Comparison> comparisons,
            List<BreakEven> breakEvens,
            List<Knowing> matters) {
        this.model = model;
        this.weighed = weighed;
        this.choice = choice;
        this.comparisons = comparisons;
        this.breakEvens = breakEvens;
        this.matters = matters;
    }

    String sentence() {
        if (choice.advised() < 0) {
            return "Nothing can be advised yet: " + nothingBecause() + ".";
        }
        WeighedCourse advised = course(choice.advised());
        if (!advised.baseline()) {
            return "Take " + advised.name() + ". Against " + baseline().name() + " it pays in "
                    + Odds.words(advised.chanceBeatsBaseline()) + " seasons, on average "
                    + more(advised.meanGainUsdPerAcre()) + " (one season in ten below "
                    + Quantities.dollarsPerAcre(advised.gain().low()) + ", one in ten above "
                    + Quantities.dollarsPerAcre(advised.gain().high()) + ").";
        }
        if (choice.rival() < 0) {
            return "Stay with " + advised.name() + ": no other course on this field may be advised.";
        }
        WeighedCourse rival = course(choice.rival());
        return "Stay with " + advised.name() + ". The next best, " + rival.name() + ", pays more in "
                + Odds.words(rival.chanceBeatsBaseline()) + " seasons and on average brings "
                + more(rival.meanGainUsdPerAcre()) + ".";
    }

    private static String more(double gain) {
        return gain >= 0 ? Quantities.dollarsPerAcre(gain) + " more" : Quantities.dollarsPerAcre(-gain) + " less";
    }

    private String nothingBecause() {
        boolean allBarred = weighed.stream().allMatch(course -> course.standing() == Standing.BARRED);
        if (allBarred) {
            return "every course is barred. " + firstBar();
        }
        return weighed.stream()
                .filter(course -> course.standing() == Standing.UNKNOWN)
                .findFirst()
                .map(course ->
                        "the best course not barred, " + course.name() + ", waits for an answer. " + toLookUp(course))
                .orElse("no course is clear");
    }

    private String firstBar() {
        return weighed.get(0).findings().stream()
                .filter(finding -> finding.standing() == Standing.BARRED)
                .findFirst()
                .map(finding -> bare(finding.says()))
                .orElse("");
    }

    String reason() {
        if (choice.advised() < 0) {
            return "A course that is barred or unknown is weighed and shown, and not advised.";
        }
        int other = course(choice.advised()).baseline()
                ? choice.rival()
                : place(baseline().name());
        if (other < 0) {
            return "It is the only course that may be advised.";
        }
        WeighedCourse advised = course(choice.advised());
        WeighedCourse against = course(other);
        double cost = advised.costUsdPerAcre() - against.costUsdPerAcre();
        double yield = advised.meanYieldBuPerAcre() - against.meanYieldBuPerAcre();
        String paid = "It costs " + Quantities.dollarsPerAcre(Math.abs(cost)) + (cost >= 0 ? " more" : " less")
                + " than " + against.name() + " and brings " + Numbers.fixed(Math.abs(yield), 1) + " bu/ac "
                + (yield >= 0 ? "more" : "less") + ".";
        return choice.tied()
                ? paid + " The draws can't tell it from the course with the highest mean, and it costs less."
                : paid;
    }

    String doubt() {
        List<String> doubts = new ArrayList<>();
        unknownAndBetter().ifPresent(doubts::add);
        closestTurn().ifPresent(turn -> doubts.add(turn.says()));
        matters.stream()
                .filter(knowing -> knowing.usdPerAcre() >= 0.05)
                .findFirst()
                .ifPresent(knowing -> doubts.add(knowing.says()));
        return doubts.isEmpty()
                ? "No single input turns the choice within its plausible range."
                : String.join(" ", doubts);
    }

    /** A course that would earn more than the advised one, were its unknowns answered. */
    private Optional<String> unknownAndBetter() {
        if (choice.advised() < 0) {
            return Optional.empty();
        }
        WeighedCourse advised = course(choice.advised());
        return weighed.stream()
                .filter(course -> course.standing() == Standing.UNKNOWN
                        && course.meanMarginUsdPerAcre() > advised.meanMarginUsdPerAcre())
                .findFirst()
                .map(course -> course.name() + " would bring "
                        + Quantities.dollarsPerAcre(course.meanMarginUsdPerAcre() - advised.meanMarginUsdPerAcre())
                        + " more, but may not be advised until this is known. " + toLookUp(course) + ".");
    }

    private static String toLookUp(WeighedCourse course) {
        return course.findings().stream()
                .filter(finding -> finding.standing() == Standing.UNKNOWN)
                .findFirst()
                .map(Telling::lookUp)
                .orElse("");
    }

    private static String lookUp(Finding finding) {
        return finding.subject() + ": " + bare(finding.clears().isEmpty() ? finding.says() : finding.clears());
    }

    private static String bare(String sentence) {
        return sentence.endsWith(".") ? sentence.substring(0, sentence.length() - 1) : sentence;
    }

    /** The break-even nearest to what is taken as likely, in widths of its plausible range. */
    private Optional<BreakEven> closestTurn() {
        BreakEven closest = null;
        double nearest = Double.POSITIVE_INFINITY;
        for (BreakEven turn : breakEvens) {
            if (turn.value() != null) {
                double distance = Math.abs(Objects.requireNonNull(turn.value()) - turn.likely())
                        / (turn.plausibleHigh() - turn.plausibleLow());
                if (distance < nearest) {
                    nearest = distance;
                    closest = turn;
                }
            }
        }
        return Optional.ofNullable(closest);
    }

    List<String> cautions() {
        List<String> cautions = new ArrayList<>();
        cautions.add("The current label is the law. Local code and licensed practice decide; this is arithmetic, not a"
                + " permit.");
        comparisons.stream()
                .filter(comparison ->
                        Math.abs(comparison.meanDifferenceUsdPerAcre()) < 1 && advisable(comparison.other()))
                .findFirst()
                .ifPresent(comparison -> cautions.add("The mean margins of " + comparison.course() + " and "
                        + comparison.other() + " lie within $1/ac: choose between them on other grounds."));
        if (model.courses().stream().anyMatch(course -> !course.insects().isEmpty())) {
            cautions.add("Trait and insecticide are counted as independent: an upper bound on what they do together."
                    + " Field trials often saw no gain from insecticide over a trait that works.");
        }
        cautions.addAll(model.cautions());
        return cautions;
    }

    private boolean advisable(String course) {
        return weighed.stream()
                .anyMatch(each -> each.name().equals(course) && each.standing().advisable());
    }

    private WeighedCourse baseline() {
        return weighed.stream().filter(WeighedCourse::baseline).findFirst().orElseThrow();
    }

    private WeighedCourse course(int place) {
        String name = model.courses().get(place).course().name();
        return weighed.stream()
                .filter(course -> course.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private int place(String name) {
        for (int place = 0; place < model.courses().size(); place++) {
            if (model.courses().get(place).course().name().equals(name)) {
                return place;
            }
        }
        return -1;
    }
}
