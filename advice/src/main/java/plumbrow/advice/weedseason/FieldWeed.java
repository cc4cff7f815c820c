package plumbrow.advice.weedseason;

import java.util.List;
import java.util.Set;
import plumbrow.advice.pests.WeedPressure;
import plumbrow.science.weedseason.Species;

/**
 * A weed of a field.
 *
 * @param pressure as the season says it
 * @param species how it comes up, grows and sheds seed, with the field's own losses per plant; density and shift unset
 * @param as the weed whose numbers these are, its own name where they are not borrowed
 * @param density place of its density [plants/m² that would stand if nothing were done]
 * @param shift place of its lateness [d]
 * @param loss place of its loss per plant [% per plant/m²]; the species has 1
 * @param biotypes its plants by the groups they resist; shares sum to 1
 */
record FieldWeed(
        WeedPressure pressure,
        Species species,
        String as,
        int density,
        int shift,
        int loss,
        List<ResistantPlants> biotypes) {
    /**
     * @param share of the plants [-], where no drawn share stands in it
     * @param drawn the drawn shares in it; empty where it is known
     * @param groups site-of-action groups that do not kill them; empty for susceptible plants
     */
    record ResistantPlants(double share, List<EngineColumn.Plants.OfGroup> drawn, Set<String> groups) {
        ResistantPlants {
            drawn = List.copyOf(drawn);
            groups = Set.copyOf(groups);
        }
    }

    String name() {
        return pressure.weed();
    }

    boolean borrowed() {
        return !as.equalsIgnoreCase(name());
    }
}
