package plumbrow.documents.label.text;

/** What a part of a label is about. */
public enum Topic {
    /** Before the first heading that is known. */
    FRONT,
    INGREDIENTS,
    FIRST_AID,
    HUMANS,
    GEAR,
    SAFETY,
    ENVIRONMENT,
    PHYSICAL,
    DIRECTIONS,
    AGRICULTURAL_USE,
    OTHER_USE,
    STORAGE,
    ROTATION,
    DRIFT,
    RESISTANCE,
    MIXING,
    APPLICATION,
    CROP,
    WARRANTY
}
