package plumbrow.advice.weighing;

import plumbrow.advice.outlook.Law;

/**
 * An uncertain input before it is drawn.
 *
 * @param id its name within the field, which a person can change it by
 * @param stream the name its draws come from: the same on every field that shares the quantity
 */
record Variable(String id, String label, String unit, Law law, String source, String stream) {}
