package plumbrow.advice.pests;

/**
 * The doubt that a trait group still works against an insect on a field.
 *
 * @param group protein group, as in the traits sheet
 * @param chance chance that it fails here this season [0 to 1]
 * @param controlIfFailed share of injury it still prevents if it fails [0 to 1]
 */
public record TraitDoubt(
        String field, String group, String insect, double chance, double controlIfFailed, String source) {}
