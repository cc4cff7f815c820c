package plumbrow.documents.label.text;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import plumbrow.documents.label.grammar.CropWords;

/**
 * Headings of labels.
 *
 * Source of the parts a label has: 40 CFR 156.10; of their wordings: common practice, no source.
 */
public final class Topics {
    private static final int LONGEST = 90;
    private static final Pattern INTERVAL = Pattern.compile("(?i)interval|\\brate|\\bcrops?\\b");
    private static final Map<Topic, Pattern> HEADINGS = new EnumMap<>(Topic.class);

    static {
        heading(
                Topic.INGREDIENTS,
                "active ingredients?(?: ?\\(s\\))?|ingredient statement|ingredients|active ingredient\\(s\\)");
        heading(Topic.FIRST_AID, "first[- ]?aid(?: (?:statements?|measures))?|statement of practical treatment");
        heading(
                Topic.HUMANS,
                "precautionary statements?|hazards? to humans(?: (?:and|&) domestic animals)?|human hazards?");
        heading(
                Topic.GEAR,
                "personal protective equipment(?: ?\\(ppe\\))?(?: requirements)?|ppe(?: requirements)?|protective equipment");
        heading(
                Topic.SAFETY,
                "user safety (?:recommendations|requirements)|engineering controls?(?: statements?)?|safety recommendations");
        heading(
                Topic.ENVIRONMENT,
                "environmental (?:hazards?|protection|precautions)(?: statements?)?|endangered species(?: (?:protection|concerns?|statement))?(?: requirements)?"
                        + "|(?:ground|surface) ?water (?:advisory|protection)(?: statement)?|non-?target organism advisory(?: statement)?|pollinator (?:protection|advisory)(?: statement| box)?|protection of pollinators"
                        + "|buffer (?:zones?|requirements)|setbacks?(?: (?:requirements|and buffers))?");
        heading(Topic.PHYSICAL, "physical (?:or|and|&) chemical hazards?|physical/chemical hazards?");
        heading(
                Topic.DIRECTIONS,
                "directions for use|(?:general|product) (?:use )?(?:directions|instructions|information|restrictions|restrictions and limitations)"
                        + "|general use restrictions(?: and limitations)?|product use restrictions|use restrictions for all crops|use rates|application rates|rates? tables?|product information|use (?:restrictions|precautions|directions|instructions)|how to use|(?:where|when) to use|before you use");
        heading(Topic.AGRICULTURAL_USE, "agricultural use requirements");
        heading(Topic.OTHER_USE, "non-?agricultural use requirements");
        heading(
                Topic.STORAGE,
                "(?:pesticide |container )?(?:storage|disposal)(?:,? (?:and|&) (?:pesticide |container )?(?:storage|disposal|handling))*|pesticide (?:and|&) container handling|container handling(?: (?:and|&) disposal)?|storage, handling,? (?:and|&) disposal");
        heading(
                Topic.ROTATION,
                "rotational? crops?(?: restrictions| guidelines| intervals| instructions)?|rotation(?:al)?(?: crop)?(?: restrictions| guidelines)|crop rotation(?: restrictions| guidelines| intervals)?"
                        + "|plant-?back (?:intervals?|restrictions)|replant(?:ing)?(?: instructions| restrictions)?|rotational intervals?");
        heading(
                Topic.DRIFT,
                "(?:mandatory )?spray drift(?: (?:management|precautions|restrictions|requirements|advisor(?:y|ies)|mitigation))?|drift (?:management|reduction)|(?:wind(?: speed)?|droplet size|boom height|release height|application height)");
        heading(
                Topic.RESISTANCE,
                "(?:weed |insect |fungicide |herbicide |insecticide )?resistance management(?: recommendations)?|resistance");
        heading(
                Topic.MIXING,
                "mixing(?: (?:instructions|directions|procedures|and loading|order))?|tank mix(?:ing|ture|tures|es)?(?: (?:instructions|restrictions|partners|information))?|compatibility(?: test)?|adjuvants?|mixing and application(?: methods| instructions)?");
        heading(
                Topic.APPLICATION,
                "(?:ground|aerial|air|broadcast|band|chemigation|sprinkler)(?: \\w+)? applications?|application (?:methods?|instructions|information|directions|equipment|restrictions|procedures)|methods of application|chemigation|spray(?:er)? (?:volume|equipment)|carrier volume");
        heading(
                Topic.WARRANTY,
                "(?:limitation of |limited |conditions of sale and )?warranty(?: and (?:liability|disclaimer|limitation of (?:damages|liability)))?(?: disclaimer| statement)?|notice(?: to (?:user|buyer|purchaser)s?)?(?: ?[:-].*)?|conditions of (?:sale|use)(?: and .*)?|disclaimer|limitation of (?:liability|warranty).*");
    }

    private Topics() {}

    /** What a line is the heading of. */
    public static Optional<Topic> of(String line) {
        String text = line.strip().replaceAll("\\s+", " ");
        if (text.length() > LONGEST) {
            return Optional.empty();
        }
        for (Map.Entry<Topic, Pattern> each : HEADINGS.entrySet()) {
            if (each.getValue().matcher(text).matches()) {
                return Optional.of(each.getKey());
            }
        }
        return Optional.empty();
    }

    /** Whether a line can only begin matter of its own; the heads of tables don't. */
    public static boolean isLandmark(String line) {
        boolean loud = line.equals(line.toUpperCase(Locale.ROOT))
                && !INTERVAL.matcher(line).find();
        return loud && (of(line).isPresent() || CropWords.heading(line).isPresent());
    }

    private static void heading(Topic topic, String words) {
        HEADINGS.put(
                topic,
                Pattern.compile("(?i)\\W{0,3}(?:(?:section\\s+)?\\d{1,2}(?:\\.\\d{1,2})?[.):]?\\s+)?(?:" + words
                        + ")\\s?(?:\\(cont(?:inued|'d|\\.)?\\)|[-–—,]?\\s?cont(?:inued|'d))?\\s?[:.]?\\W{0,2}"));
    }
}
