package plumbrow.science.insects;

import static plumbrow.science.figure.Input.text;
import static plumbrow.science.figure.Input.word;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.MEMORY;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * How many independent ways of killing a pest a trait hybrid really has on this field.
 *
 *   effective modes = distinct groups active on the pest, less those with confirmed local resistance; pyramid = 2 or more
 *
 * A pyramid with one failed group is a single toxin with too small a refuge.
 *
 * Source: insects reference 5.1; rootworm resistance to all available Bt traits: St. Clair 2020 (bioone toaa106).
 */
public final class EffectiveModes {
    public static final Figure FIGURE = Figure.declare("effective-modes", Subject.INSECTS)
            .question("How many ways of killing the pest does the trait have on this field?")
            .input(word("pest", "Pest", List.of("rootworm", "caterpillars"), "rootworm"))
            .input(text(
                    "proteins",
                    "Proteins of the hybrid, from its trait description, commas between",
                    "Cry3Bb1,Cry34/35Ab1"))
            .input(text("failed", "Proteins with confirmed resistance here, commas between", "Cry3Bb1")
                    .optional())
            .output("modes", "Effective modes", "")
            .output("groups", "Groups that work", "")
            .output("verdict", "In words", "")
            .formula("distinct groups active on the pest, less those with confirmed resistance")
            .source("Cross-resistance within Cry1 likely; Cry3 proteins taken as one group", MEMORY)
            .validity("Known proteins only; others are refused. Proteins against the other pest are not counted.")
            .caution("Resistance to every Bt rootworm trait has been reported somewhere: ask locally, dig roots.")
            .example(
                    "pest=rootworm proteins=Cry3Bb1,mCry3A",
                    "modes=1.0 verdict=single toxin",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "pest=rootworm proteins=Cry3Bb1,Cry34/35",
                    "modes=2.0 verdict=pyramid",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "pest=rootworm proteins=Cry3Bb1,Cry34/35 failed=Cry3Bb1",
                    "modes=1.0 groups=[Cry34/35] verdict=single toxin: a pyramid that has lost a mode",
                    "independent arithmetic",
                    COMPUTED)
            .model(EffectiveModes::solve);

    private EffectiveModes() {}

    private static Outputs solve(Given given, Working working) {
        ModeGroup.Pest pest =
                given.word("pest").equals("rootworm") ? ModeGroup.Pest.ROOTWORM : ModeGroup.Pest.CATERPILLARS;
        Set<ModeGroup> held = groups(given, "proteins", pest);
        Set<ModeGroup> effective = EnumSet.copyOf(held);
        if (given.has("failed")) {
            effective.removeAll(groups(given, "failed", pest));
        }
        working.line("groups active on the pest", held.size(), "", "distinct groups among the proteins");
        int modes = effective.size();
        working.line(
                "effective modes", modes, "", "{} less {} with confirmed resistance", held.size(), held.size() - modes);
        boolean lost = modes < held.size();
        if (lost) {
            working.caution(
                    "A mode has failed here: refuge and protection meant for all modes are too small for what is left.");
        }
        return new Outputs()
                .put("modes", modes)
                .put("groups", effective.stream().map(ModeGroup::title).toList())
                .put("verdict", verdict(modes, lost));
    }

    private static String verdict(int modes, boolean lost) {
        if (modes == 0) {
            return "no protection";
        }
        if (modes > 1) {
            return "pyramid";
        }
        return lost ? "single toxin: a pyramid that has lost a mode" : "single toxin";
    }

    private static Set<ModeGroup> groups(Given given, String key, ModeGroup.Pest pest) {
        Set<ModeGroup> groups = EnumSet.noneOf(ModeGroup.class);
        for (String name : given.word(key).split(",", -1)) {
            ModeGroup group = ModeGroup.of(name.strip())
                    .orElseThrow(() -> given.refuse(key, "proteins such as " + ModeGroup.known()));
            if (group.pest() == pest) {
                groups.add(group);
            }
        }
        return groups;
    }
}
