package plumbrow.advice.names;

/** What the text in a column of a season refers to. */
public enum Refers {
    /** Nothing: words for people, such as a remark, a source or the number of a licence. */
    NOTHING,
    /** Nothing yet: it gives its row the name by which others refer to it. */
    ITSELF,
    /** A row of the sheet farms. */
    FARM,
    FIELD,
    /** A program of the field of its row. */
    PROGRAM,
    /** A row of the sheet shelf. */
    PRODUCT,
    TRAIT,
    TRAIT_GROUP,
    /** An insect at which a trait of the group of its row is aimed. */
    TRAIT_INSECT,
    PERSON,
    /** A machine of the farm of its row. */
    MACHINE,
    /** Who did it: one of the sheet people, or somebody who no longer stands there and is not spelled like one who does. */
    FORMER_PERSON,
    /** Gives an insect its name on a field, unless it is a slip for a known one. */
    NAMES_INSECT,
    NAMES_WEED,
    /** An insect of a field, or a known one that no field has. */
    INSECT,
    WEED,
    /** An insect that presses on the field of its row. */
    FIELD_INSECT,
    /** An insect or weed of a field, or a known one that no field has. */
    PEST,
    /** An active ingredient; the reference data need not know it, but it is no slip for one that they know. */
    ACTIVE,
    /** An active ingredient of the product of its row, where its ingredients are written down. */
    ACTIVE_OF_PRODUCT,
    /** A product of the shelf, an active ingredient, or a kind of product. */
    PARTNER,
    /** A site-of-action group by its number. */
    SITE_GROUP,
    CROP,
    /** A crop in the words of a label, which may be the only one to use them. */
    LABEL_CROP,
    /** A county of the state of its row, or of the state that it names itself: "IA: Adams". */
    COUNTY,
    /** A field, or a county as "IA: Adams". */
    PLACE,
    /** A piece of protective equipment in the words of the labels. */
    GEAR
}
