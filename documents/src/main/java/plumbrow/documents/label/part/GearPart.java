package plumbrow.documents.label.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import plumbrow.documents.label.LabelContent;
import plumbrow.documents.label.LabelKind;
import plumbrow.documents.label.Task;
import plumbrow.documents.label.text.LabelText;
import plumbrow.documents.label.text.Sentence;
import plumbrow.documents.label.text.Topic;
import plumbrow.documents.paper.Passage;

/** What someone must wear, by what he does. */
final class GearPart implements Part {
    private static final String GEAR =
            "(?:long-?sleeved|short-?sleeved|coveralls?|chemical[- ]resistant|waterproof|shoes|socks|protective eyewear|goggles|face ?shield|safety glasses|eye protection|"
                    + "(?:a |an )?(?:niosh|dust|half|full|respirator|minimum of a niosh)|gloves|barrier laminate|apron|headgear|boots|long pants)";
    private static final Pattern MUST = Pattern.compile(
            "(?i)^(?<who>.{0,200}?)\\b(?:must|should|shall|are required to|need to)\\s+(?:also\\s+|all\\s+)?wear\\b\\s*(?<lead>(?:the following|at least)?\\s*(?:\\([^)]*\\))?)\\s*[:,]?\\s*(?<rest>.*)$",
            Pattern.DOTALL);
    private static final Pattern EARLY = Pattern.compile(
            "(?i)^.*\\bPPE required for early[- ]entry\\b.*(?:\\btreated,?|\\bwater,?)\\s+is\\b\\s*:?\\s*(?<rest>.*)$|^.*\\bfor early[- ]entry\\b.{0,160}?:\\s*(?<tail>.*)$",
            Pattern.DOTALL);
    private static final Pattern ITEM = Pattern.compile(
            "(?i)^(?:and\\s+|a\\s+)?" + GEAR + ".*|^(?:when|for)\\b.{0,80}\\b(?:wear|use)\\b.*", Pattern.DOTALL);
    /** Said to whoever uses the product. */
    private static final Pattern WEAR = Pattern.compile("(?i)^wear\\s+(?<rest>" + GEAR + ".*)$", Pattern.DOTALL);

    private static final Pattern BETWEEN = Pattern.compile(
            "(?i)[,;]\\s*(?:and\\s+|plus\\s+)?(?=" + GEAR
                    + ")|\\s[•·▪■●]\\s|\\band\\s+(?=(?:chemical|waterproof|shoes|protective|a niosh|a respirator|socks plus|goggles))");

    @Override
    public void read(LabelText label, Readings readings) {
        Task open = null;
        Topic topic = Topic.FRONT;
        for (Sentence sentence : label.sentences()) {
            boolean about = sentence.topic() == Topic.GEAR
                    || sentence.topic() == Topic.HUMANS
                    || sentence.topic() == Topic.AGRICULTURAL_USE
                    || sentence.topic() == Topic.DIRECTIONS;
            if (!about || sentence.topic() != topic) {
                open = null;
            }
            topic = sentence.topic();
            Optional<Found> found = about ? lead(sentence) : Optional.empty();
            if (found.isPresent()) {
                open = found.get().task;
                items(found.get().rest, open, readings);
            } else if (open != null && ITEM.matcher(sentence.text()).matches()) {
                items(sentence.passage(), open, readings);
            } else {
                open = null;
            }
        }
    }

    private record Found(Task task, Passage rest) {}

    private static Optional<Found> lead(Sentence sentence) {
        String text = sentence.text();
        Matcher early = EARLY.matcher(text);
        if (early.matches()) {
            String group = early.group("rest") == null ? "tail" : "rest";
            return Optional.of(new Found(Task.EARLY_ENTRY, sentence.passage().from(early.start(group))));
        }
        Matcher must = MUST.matcher(text);
        if (must.matches()) {
            return task(must.group("who"), sentence)
                    .map(task -> new Found(task, sentence.passage().from(must.start("rest"))));
        }
        Matcher wear = WEAR.matcher(text);
        if (wear.matches() && sentence.topic() != Topic.DIRECTIONS) {
            return Optional.of(new Found(Task.HANDLERS, sentence.passage().from(wear.start("rest"))));
        }
        return Optional.empty();
    }

    private static Optional<Task> task(String who, Sentence sentence) {
        String text = (who.length() < 3 ? sentence.under() : who).toLowerCase(java.util.Locale.ROOT);
        if (text.contains("early") || text.contains("enter")) {
            return Optional.of(Task.EARLY_ENTRY);
        }
        if (text.contains("clean")) {
            return Optional.of(text.contains("mix") ? Task.MIXERS : Task.CLEANERS);
        }
        if (text.contains("mixer") || text.contains("loader")) {
            boolean all = text.contains("handlers") || text.contains("applicator");
            return Optional.of(all ? Task.HANDLERS : Task.MIXERS);
        }
        if (text.contains("handler")) {
            return Optional.of(Task.HANDLERS);
        }
        return text.contains("applicator") ? Optional.of(Task.APPLICATORS) : Optional.empty();
    }

    private static void items(Passage passage, Task task, Readings readings) {
        for (Passage item : parts(passage)) {
            String words = item.text().replaceAll("\\s+", " ").replaceAll("(?i)^(?:and|plus)\\s+|[\\s.,;]+$", "");
            if (words.length() > 3) {
                readings.state(LabelKind.GEAR, new LabelContent.Gear(task, words), item.quote());
            }
        }
    }

    private static List<Passage> parts(Passage passage) {
        List<Passage> parts = new ArrayList<>();
        Matcher between = BETWEEN.matcher(passage.text());
        int from = 0;
        while (between.find()) {
            parts.add(passage.part(from, between.start()));
            from = between.end();
        }
        parts.add(passage.from(from));
        return parts.stream().filter(part -> !part.isEmpty()).toList();
    }
}
