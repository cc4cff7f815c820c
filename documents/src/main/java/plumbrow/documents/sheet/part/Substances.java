package plumbrow.documents.sheet.part;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import plumbrow.documents.sheet.Content;
import plumbrow.documents.sheet.ValueKind;

/** Whose value it is: one of the sheet's ingredients, or the product's own. */
final class Substances {
    private static final Pattern PRODUCT =
            Pattern.compile("(?i)\\b(?:product|formulation|formulated|mixture|similar formulation|preparation)\\b");
    private static final int SHORTEST = 4;

    private final List<String> names = new ArrayList<>();
    private final Pattern pattern;

    Substances(Readings readings) {
        readings.stated(ValueKind.INGREDIENT).forEach(stated -> {
            String name = ((Content.Ingredient) stated.content()).name();
            if (name.length() >= SHORTEST
                    && !name.toLowerCase(java.util.Locale.ROOT).matches(".*\\b(?:other|inert|water|total).*")) {
                names.add(name);
            }
        });
        names.sort(Comparator.comparingInt(String::length).reversed());
        pattern = names.isEmpty()
                ? Pattern.compile("(?!)")
                : Pattern.compile(names.stream()
                        .map(name ->
                                Pattern.quote(name).replace(" ", "\\E\\s+\\Q").replace("-", "-\\E\\s?\\Q"))
                        .collect(Collectors.joining("|", "(?i)(?<![\\p{L}])(?:", ")(?![\\p{L}])")));
    }

    /** The ingredient named last in a text, "" for the product named last, or what was before. */
    String in(String text, String before) {
        String found = before;
        int at = -1;
        Matcher substance = pattern.matcher(text);
        while (substance.find()) {
            found = named(substance.group());
            at = substance.start();
        }
        Matcher product = PRODUCT.matcher(text);
        while (product.find()) {
            if (product.start() > at) {
                found = "";
            }
        }
        return found;
    }

    private String named(String printed) {
        String plain = printed.replaceAll("\\s+", " ").replaceAll("-\\s", "-");
        return names.stream()
                .filter(name -> name.equalsIgnoreCase(plain))
                .findFirst()
                .orElse(plain);
    }
}
