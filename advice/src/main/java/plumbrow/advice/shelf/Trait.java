package plumbrow.advice.shelf;

import plumbrow.advice.assumptions.Distribution;

/**
 * A trait protein against one insect, where it works.
 *
 * @param name the protein, such as a seed row names it
 * @param group proteins that resistance crosses between share a group: one mode of action
 * @param insect the insect it is aimed at
 * @param control share of injury it prevents while it works [0 to 1]
 */
public record Trait(String name, String group, String insect, Distribution control, String source) {}
