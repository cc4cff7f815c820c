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
    private final List<WeighedProgram> weighed;
    private final Choice choice;
    private final List<Comparison> comparisons;
    private final List<AdviceRange> ranges;
    private final List<InformationValue> matters;
    private final boolean entered;

    /** @param entered whether any input was entered as more than a single value */
    Telling(
            FieldModel model,
            List<WeighedProgram> weighed,
            Choice choice,
            List<Comparison> comparisons,
            List<AdviceRange> ranges,
            List<InformationValue> matters,
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
                    : allLose(program(choice.advisable().get(0)));
        }
        WeighedProgram advised = program(choice.advised());
        if (choice.equals().size() > 1) {
            return aboutEqual().orElseThrow().says() + leadingWaits(advised);
        }
        if (!advised.baseline()) {
            return "Take " + advised.name() + waits(advised) + ". Against "
                    + baseline().name() + " it " + gain(advised) + ".";
        }
        if (choice.rival() < 0) {
            return "Stay with " + advised.name() + waits(advised)
                    + (advised.scouted().isEmpty() ? ": no" : ". No") + " other program on this field may be advised.";
        }
        WeighedProgram rival = program(choice.rival());
        return "Stay with " + advised.name() + waits(advised) + ". The next best, " + rival.name() + ", earns "
                + more(rival.meanGainUsdPerAcre()) + " on average" + odds(", more", ", ahead", rival, advised) + "."
                + (entered ? "" : " " + NO_DOUBT);
    }

    /** What of it is decided later: ": scout for soybean aphid, …"; empty where nothing is. */
    private static String waits(WeighedProgram program) {
        return program.scouted().isEmpty() ? "" : ": " + program.waits();
    }

    private static String leadingWaits(WeighedProgram leading) {
        return leading.scouted().isEmpty() ? "" : " Where " + leading.name() + " is taken: " + leading.waits() + ".";
    }

    /** "earns $48/ac more on average, more in 84 of 100 simulated seasons (10 of 100 below …)". */
    private String gain(WeighedProgram program) {
        return "earns " + more(program.meanGainUsdPerAcre())
                + (entered
                        ? " on average" + odds(", more", ", ahead", program, baseline()) + " (10 of 100 below "
                                + Quantities.dollarsPerAcre(program.gain().low()) + ", 10 of 100 above "
                                + Quantities.dollarsPerAcre(program.gain().high()) + ")"
                        : ". " + NO_DOUBT.substring(0, NO_DOUBT.length() - 1));
    }

    /** How often one program leads another, with the three counts where many seasons are level. */
    private String odds(String more, String ahead, WeighedProgram one, WeighedProgram other) {
        if (!entered) {
            return "";
        }
        Optional<Comparison> pair = pair(one, other);
        Optional<Leads> leads = pair.map(Comparison::leads)
                .or(() -> pair(other, one).map(back -> back.leads().reversed()));
        if (leads.isPresent() && leads.get().manyLevel()) {
            return ahead + " in " + leads.get().words() + " simulated seasons";
        }
        double chance = pair.map(Comparison::chanceBetter)
                .or(() -> pair(other, one).map(back -> 1 - back.chanceBetter()))
                .orElseGet(() -> one.chanceBeatsBaseline());
        return more + " in " + Odds.words(chance) + " simulated seasons";
    }

    private Optional<Comparison> pair(WeighedProgram one, WeighedProgram other) {
        return comparisons.stream()
                .filter(pair ->
                        pair.program().equals(one.name()) && pair.other().equals(other.name()))
                .findFirst();
    }

    private boolean isBaselineAmong(List<Integer> places) {
        return places.stream().anyMatch(c -> program(c).baseline());
    }

    private String allLose(WeighedProgram least) {
        WeighedProgram baseline = baseline();
        return "Nothing is advised: all that may be used earns less on average than the baseline, " + baseline.name()
                + ", which is " + baseline.standing().word() + ". Least behind is " + least.name() + ", "
                + Quantities.dollarsPerAcre(-least.meanGainUsdPerAcre()) + " less.";
    }

    /** The programs about equal to the advised one, where there are any, with the cheapest, safest and most often best of them. */
    Optional<AboutEqual> aboutEqual() {
        if (choice.equals().size() < 2) {
            return Optional.empty();
        }
        List<WeighedProgram> equals =
                choice.equals().stream().map(this::program).toList();
        WeighedProgram cheapest = Collections.min(equals, Comparator.comparingDouble(WeighedProgram::costUsdPerAcre));
        WeighedProgram safest =
                Collections.max(equals, Comparator.comparingDouble(WeighedProgram::shortfallUsdPerAcre));
        WeighedProgram oftenest = Collections.max(equals, Comparator.comparingDouble(WeighedProgram::chanceBest));
        double highest = equals.stream()
                .mapToDouble(WeighedProgram::meanMarginUsdPerAcre)
                .max()
                .orElseThrow();
        double lowest = equals.stream()
                .mapToDouble(WeighedProgram::meanMarginUsdPerAcre)
                .min()
                .orElseThrow();
        List<String> names = equals.stream().map(WeighedProgram::name).toList();
        String says = inList(names) + " are about equal: " + (equals.size() > 2 ? "at most " : "")
                + Quantities.dollarsPerAcre(highest - lowest) + " apart on average"
                + (equals.size() == 2
                        ? odds(
                                ", " + names.get(0) + " ahead",
                                ", " + names.get(0) + " ahead",
                                equals.get(0),
                                equals.get(1))
                        : "")
                + ".";
        return Optional.of(new AboutEqual(
                names,
                highest - lowest,
                cheapest.name(),
                safest.name(),
                oftenest.name(),
                says,
                named(cheapest, safest, oftenest)));
    }

    private String named(WeighedProgram cheapest, WeighedProgram safest, WeighedProgram oftenest) {
        Map<String, List<String>> said = new LinkedHashMap<>();
        role(said, cheapest, "cheapest (" + Quantities.dollarsPerAcre(cheapest.costUsdPerAcre()) + ")");
        if (entered) {
            role(
                    said,
                    safest,
                    "safest (" + Quantities.dollarsPerAcre(safest.shortfallUsdPerAcre())
                            + " on average in the worst 10 of 100)");
            role(said, oftenest, "most often best of all (in " + Odds.words(oftenest.chanceBest()) + ")");
        }
        List<String> parts = new ArrayList<>();
        said.forEach((name, roles) -> parts.add(name + " is the " + inList(roles)));
        return String.join("; ", parts) + ".";
    }

    private static void role(Map<String, List<String>> said, WeighedProgram program, String role) {
        said.computeIfAbsent(program.name(), none -> new ArrayList<>()).add(role);
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
        boolean allBarred = weighed.stream().allMatch(program -> program.standing() == Standing.BARRED);
        if (allBarred) {
            return "every program is barred. " + firstBar();
        }
        return weighed.stream()
                .filter(program -> program.standing() == Standing.UNKNOWN)
                .findFirst()
                .map(program -> "the best program not barred, " + program.name() + ", waits for an answer. "
                        + toLookUp(program))
                .orElse("no program is clear");
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
            return "A program that is barred or unknown is weighed and shown, and not advised.";
        }
        Optional<AboutEqual> equal = aboutEqual();
        if (equal.isPresent()) {
            WeighedProgram leading = program(choice.advised());
            return equal.get().named()
                    + (isBaselineAmong(choice.equals())
                            ? ""
                            : " Against " + baseline().name() + ", " + leading.name() + " " + gain(leading) + ".");
        }
        int other = program(choice.advised()).baseline()
                ? choice.rival()
                : place(baseline().name());
        if (other < 0) {
            return "It is the only program that may be advised.";
        }
        WeighedProgram advised = program(choice.advised());
        WeighedProgram against = program(other);
        double cost = advised.costUsdPerAcre() - against.costUsdPerAcre();
        double yield = advised.meanYieldBuPerAcre() - against.meanYieldBuPerAcre();
        String dollars = Quantities.dollarsPerAcre(Math.abs(cost));
        String paid = "It costs "
                + (dollars.equals("$0/ac") ? "as much as " : dollars + (cost >= 0 ? " more than " : " less than "))
                + against.name() + " and brings " + Numbers.fixed(Math.abs(yield), 1) + " bu/ac "
                + (yield >= 0 ? "more" : "less") + ".";
        return choice.tied()
                ? paid
                        + " The simulated seasons can't tell it from the program with the highest mean, and it costs less."
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
        return entered ? FieldAdvice.NOTHING_TURNS : NO_DOUBT;
    }

    /** A program that would earn more than the advised one, were its unknowns answered. */
    private Optional<String> unknownAndBetter() {
        if (choice.advised() < 0) {
            return Optional.empty();
        }
        WeighedProgram advised = program(choice.advised());
        return weighed.stream()
                .filter(program -> program.standing() == Standing.UNKNOWN
                        && program.meanMarginUsdPerAcre() > advised.meanMarginUsdPerAcre())
                .findFirst()
                .map(program -> program.name() + " would bring "
                        + Quantities.dollarsPerAcre(program.meanMarginUsdPerAcre() - advised.meanMarginUsdPerAcre())
                        + " more, but may not be advised until this is known. " + toLookUp(program) + ".");
    }

    private static String toLookUp(WeighedProgram program) {
        return program.findings().stream()
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
        if (model.programs().stream().anyMatch(program -> !program.insects().isEmpty())) {
            cautions.add("Trait and insecticide are counted as independent: an upper bound on what they do together."
                    + " Field trials often saw no gain from insecticide over a trait that works.");
        }
        cautions.addAll(model.cautions());
        return cautions;
    }

    private WeighedProgram baseline() {
        return weighed.stream().filter(WeighedProgram::baseline).findFirst().orElseThrow();
    }

    private WeighedProgram program(int place) {
        String name = model.programs().get(place).program().name();
        return weighed.stream()
                .filter(program -> program.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private int place(String name) {
        for (int place = 0; place < model.programs().size(); place++) {
            if (model.programs().get(place).program().name().equals(name)) {
                return place;
            }
        }
        return -1;
    }
}
