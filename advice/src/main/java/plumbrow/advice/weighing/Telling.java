package plumbrow.advice.weighing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plumbrow.advice.gates.Finding;
import plumbrow.advice.gates.Standing;
import plumbrow.science.figure.Numbers;

/** The advice in sentences: what to do and its odds, why, and what is in doubt. Never more certain than the draws. */
final class Telling {
    private static final String NO_DOUBT =
            "No doubt was entered: every input is a single value, so this is one case worked through, without odds.";

    private final FieldModel model;
    private final List<WeighedCourse> weighed;
    private final Choice choice;
    private final List<Comparison> comparisons;
    private final List<AdviceRange> ranges;
    private final List<Knowing> matters;
    private final boolean entered;

    /** @param entered whether any input was entered as more than a single value */
    Telling(
            FieldModel model,
            List<WeighedCourse> weighed,
            Choice choice,
            List<Comparison> comparisons,
            List<AdviceRange> ranges,
            List<Knowing> matters,
            boolean entered) {
        this.model = model;
        this.weighed = weighed;
        this.choice = choice;
        this.comparisons = comparisons;
        this.ranges = ranges;
        this.matters = matters;
        this.entered = entered;
    }

    String sentence() {
        if (choice.advised() < 0) {
            return choice.advisable().isEmpty()
                    ? "Nothing can be advised yet: " + nothingBecause() + "."
                    : allLose(course(choice.advisable().get(0)));
        }
        WeighedCourse advised = course(choice.advised());
        if (choice.equals().size() > 1) {
            return aboutEqual().orElseThrow().says();
        }
        if (!advised.baseline()) {
            return "Take " + advised.name() + ". Against " + baseline().name() + " it " + gain(advised) + ".";
        }
        if (choice.rival() < 0) {
            return "Stay with " + advised.name() + ": no other course on this field may be advised.";
        }
        WeighedCourse rival = course(choice.rival());
        return "Stay with " + advised.name() + ". The next best, " + rival.name() + ", earns "
                + more(rival.meanGainUsdPerAcre()) + " on average" + odds(", more", rival.chanceBeatsBaseline()) + "."
                + (entered ? "" : " " + NO_DOUBT);
    }

    /** "earns $48/ac more on average, more in 84 of 100 simulated seasons (10 of 100 below …)". */
    private String gain(WeighedCourse course) {
        return "earns " + more(course.meanGainUsdPerAcre())
                + (entered
                        ? " on average" + odds(", more", course.chanceBeatsBaseline()) + " (10 of 100 below "
                                + Quantities.dollarsPerAcre(course.gain().low()) + ", 10 of 100 above "
                                + Quantities.dollarsPerAcre(course.gain().high()) + ")"
                        : ". " + NO_DOUBT.substring(0, NO_DOUBT.length() - 1));
    }

    private String odds(String what, double chance) {
        return entered ? what + " in " + Odds.words(chance) + " simulated seasons" : "";
    }

    private boolean isBaselineAmong(List<Integer> places) {
        return places.stream().anyMatch(c -> course(c).baseline());
    }

    private String allLose(WeighedCourse least) {
        WeighedCourse baseline = baseline();
        return "Nothing is advised: all that may be used earns less on average than the baseline, " + baseline.name()
                + ", which is " + baseline.standing().word() + ". Least behind is " + least.name() + ", "
                + Quantities.dollarsPerAcre(-least.meanGainUsdPerAcre()) + " less.";
    }

    /** The courses about equal to the advised one, where there are any, with the cheapest, safest and most often best of them. */
    Optional<AboutEqual> aboutEqual() {
        if (choice.equals().size() < 2) {
            return Optional.empty();
        }
        List<WeighedCourse> equals = choice.equals().stream().map(this::course).toList();
        WeighedCourse cheapest = Collections.min(equals, Comparator.comparingDouble(WeighedCourse::costUsdPerAcre));
        WeighedCourse safest = Collections.max(equals, Comparator.comparingDouble(WeighedCourse::shortfallUsdPerAcre));
        WeighedCourse oftenest = Collections.max(equals, Comparator.comparingDouble(WeighedCourse::chanceBest));
        double highest = equals.stream()
                .mapToDouble(WeighedCourse::meanMarginUsdPerAcre)
                .max()
                .orElseThrow();
        double lowest = equals.stream()
                .mapToDouble(WeighedCourse::meanMarginUsdPerAcre)
                .min()
                .orElseThrow();
        List<String> names = equals.stream().map(WeighedCourse::name).toList();
        String says = inList(names) + " are about equal: " + (equals.size() > 2 ? "at most " : "")
                + Quantities.dollarsPerAcre(highest - lowest) + " apart on average"
                + (equals.size() == 2 ? leads(equals.get(0), equals.get(1)) : "") + ".";
        return Optional.of(new AboutEqual(
                names,
                highest - lowest,
                cheapest.name(),
                safest.name(),
                oftenest.name(),
                says,
                named(cheapest, safest, oftenest)));
    }

    private String leads(WeighedCourse one, WeighedCourse other) {
        return comparisons.stream()
                .filter(pair -> pair.course().equals(one.name()) && pair.other().equals(other.name()))
                .findFirst()
                .map(pair -> odds(", " + one.name() + " ahead", pair.chanceBetter()))
                .orElse("");
    }

    private String named(WeighedCourse cheapest, WeighedCourse safest, WeighedCourse oftenest) {
        Map<String, List<String>> said = new LinkedHashMap<>();
        role(said, cheapest, "cheapest (" + Quantities.dollarsPerAcre(cheapest.costUsdPerAcre()) + ")");
        if (entered) {
            role(
                    said,
                    safest,
                    "safest (" + Quantities.dollarsPerAcre(safest.shortfallUsdPerAcre()) + " in the worst tenth)");
            role(said, oftenest, "most often best of all (in " + Odds.words(oftenest.chanceBest()) + ")");
        }
        List<String> parts = new ArrayList<>();
        said.forEach((name, roles) -> parts.add(name + " is the " + inList(roles)));
        return String.join("; ", parts) + ".";
    }

    private static void role(Map<String, List<String>> said, WeighedCourse course, String role) {
        said.computeIfAbsent(course.name(), none -> new ArrayList<>()).add(role);
    }

    /** "a", "a and b", "a, b and c". */
    private static String inList(List<String> names) {
        int last = names.size() - 1;
        return last < 1
                ? String.join("", names)
                : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
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
        Optional<AboutEqual> equal = aboutEqual();
        if (equal.isPresent()) {
            WeighedCourse leading = course(choice.advised());
            return equal.get().named()
                    + (isBaselineAmong(choice.equals())
                            ? ""
                            : " Against " + baseline().name() + ", " + leading.name() + " " + gain(leading) + ".");
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
        String dollars = Quantities.dollarsPerAcre(Math.abs(cost));
        String paid = "It costs "
                + (dollars.equals("$0/ac") ? "as much as " : dollars + (cost >= 0 ? " more than " : " less than "))
                + against.name() + " and brings " + Numbers.fixed(Math.abs(yield), 1) + " bu/ac "
                + (yield >= 0 ? "more" : "less") + ".";
        return choice.tied()
                ? paid + " The draws can't tell it from the course with the highest mean, and it costs less."
                : paid;
    }

    String doubt() {
        List<String> doubts = new ArrayList<>();
        unknownAndBetter().ifPresent(doubts::add);
        ranges.stream().filter(AdviceRange::turns).findFirst().ifPresent(range -> doubts.add(range.says()));
        matters.stream()
                .filter(knowing -> knowing.usdPerAcre() >= 0.05)
                .findFirst()
                .ifPresent(knowing -> doubts.add(knowing.says()));
        if (!doubts.isEmpty()) {
            return String.join(" ", doubts);
        }
        return entered ? "No single input turns the choice within its plausible range." : NO_DOUBT;
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

    List<String> cautions() {
        List<String> cautions = new ArrayList<>();
        cautions.add("The current label is the law. Local code and licensed practice decide; this is arithmetic, not a"
                + " permit.");
        if (model.courses().stream().anyMatch(course -> !course.insects().isEmpty())) {
            cautions.add("Trait and insecticide are counted as independent: an upper bound on what they do together."
                    + " Field trials often saw no gain from insecticide over a trait that works.");
        }
        cautions.addAll(model.cautions());
        return cautions;
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
