package plumbrow.science.spraying;

import static plumbrow.science.figure.Input.text;
import static plumbrow.science.figure.Status.VERIFIED;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * In which order formulations go into the tank, one step dissolved before the next.
 *
 *   conditioner, dry, suspended, dissolved, emulsified, oils and surfactants (Oklahoma State, extension.okstate.edu)
 *
 * Published orders disagree: South Dakota State puts microcapsules after emulsifiable concentrates, North Dakota puts
 * solutions after them. A label's own order goes before all of them. Codes not in the Oklahoma list: values from memory.
 */
public final class MixingOrder {
    private static final List<Step> STEPS = List.of(
            new Step("water conditioner, compatibility agent, defoamer", List.of("AMS", "COMPAT", "DEFOAMER")),
            new Step("dry products, slurried", List.of("WSP", "WP", "WDG", "WG", "DF", "SG", "SP", "DG")),
            new Step("suspensions and capsules", List.of("SC", "F", "CS", "ME", "SE", "AS", "ZC")),
            new Step("solutions", List.of("SL", "S", "L")),
            new Step("emulsions", List.of("EC", "EW", "OD")),
            new Step("oils, surfactants, drift agents", List.of("COC", "MSO", "NIS", "OIL", "DRA")));

    public static final Figure FIGURE = Figure.declare("mixing-order", Subject.SPRAYING)
            .question("In which order do these go into the tank?")
            .input(text("formulations", "Formulation codes with commas between", "EC,WDG,AMS,SL,NIS"))
            .output("order", "First to last", "")
            .output("disagreement", "Where published orders differ for this mix", "")
            .formula("conditioner, dry, suspended, dissolved, emulsified, oils and surfactants")
            .source("[oklahoma-mixing]", VERIFIED)
            .validity("Tank half to three quarters full of carrier, agitation on, each step finished before the next.")
            .caution("The label's own order goes first. Do a jar test with a mix that is new to you.")
            .example(
                    "formulations=EC,WDG,AMS,SL,NIS",
                    "order=[AMS, WDG, SL, EC, NIS] disagreement=yes",
                    "[oklahoma-mixing]; North Dakota puts SL after EC",
                    VERIFIED)
            .example("formulations=SC,WP", "order=[WP, SC] disagreement=no", "[oklahoma-mixing]", VERIFIED)
            .model(MixingOrder::solve);

    /** One step of filling and the formulation codes that belong to it. */
    private record Step(String words, List<String> codes) {}

    private MixingOrder() {}

    /** The step of a formulation code, from 0, or −1 where the code is not known. */
    public static int step(String code) {
        for (int i = 0; i < STEPS.size(); i++) {
            if (STEPS.get(i).codes().contains(code)) {
                return i;
            }
        }
        return -1;
    }

    /** What belongs to a step, in words. */
    public static String words(int step) {
        return STEPS.get(step).words();
    }

    /** Whether published orders differ for these codes: solutions and microcapsules against emulsifiable concentrates. */
    public static boolean disputed(List<String> codes) {
        return codes.contains("EC")
                && codes.stream()
                        .anyMatch(code -> List.of("SL", "S", "CS", "ME").contains(code));
    }

    private static Outputs solve(Given given, Working working) {
        List<String> codes = Arrays.stream(given.word("formulations").split(",", -1))
                .map(code -> code.strip().toUpperCase(Locale.ROOT))
                .toList();
        for (String code : codes) {
            if (step(code) < 0) {
                throw given.refuse(
                        "formulations",
                        "codes out of "
                                + STEPS.stream()
                                        .flatMap(step -> step.codes().stream())
                                        .collect(Collectors.joining(", ")));
            }
        }
        List<String> order = codes.stream()
                .sorted(Comparator.comparingInt(MixingOrder::step))
                .toList();
        for (String code : order) {
            working.line(code + ", with " + STEPS.get(step(code)).words(), step(code) + 1.0, "", "step of the order");
        }
        boolean disputed = disputed(codes);
        if (disputed) {
            working.caution(
                    "Published orders disagree on solutions and microcapsules against EC: before it here, after it elsewhere.");
        }
        return new Outputs().put("order", order).put("disagreement", disputed ? "yes" : "no");
    }
}
