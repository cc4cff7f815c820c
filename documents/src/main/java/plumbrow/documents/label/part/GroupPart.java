package plumbrow.documents.label.part;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import plumbrow.documents.label.LabelContent;
import plumbrow.documents.label.LabelKind;
import plumbrow.documents.label.text.LabelText;
import plumbrow.documents.label.text.Sentence;
import plumbrow.documents.paper.Passage;

/** The box that names the site of action, or the sentence that does where there is no box. */
final class GroupPart implements Part {
    private static final String CODE = "(?:[A-Z]?\\d{1,2}[A-D]?|UN|NC)";
    private static final String WORD = "(herbicide|insecticide|fungicide|miticide|nematicide)s?";
    private static final Pattern BOX = Pattern.compile("(?i)\\W{0,2}groups?\\s+(" + CODE
            + "(?:\\s?(?:,|&|\\+|/|and|\\s)\\s?" + CODE + "){0,3})\\s+" + WORD + "\\W{0,2}");
    private static final Pattern PROSE = Pattern.compile("(?i)\\bgroups?\\s+(" + CODE
            + "(?:\\s?(?:,|&|/|and|,\\s?and)\\s?(?:group\\s+)?" + CODE + "){0,3})\\s+" + WORD + "\\b");
    private static final Pattern ONE = Pattern.compile("(?i)(?<![\\p{L}\\d])" + CODE + "(?![\\p{L}\\d])");
    private static final Pattern OTHERS =
            Pattern.compile("(?i)\\b(?:other|different|rotate|alternat|mix with|another|resistan(?:t|ce) to)");

    @Override
    public void read(LabelText label, Readings readings) {
        List<LabelText.Line> lines = label.lines();
        for (int i = 0; i < lines.size(); i++) {
            Passage.Builder box = new Passage.Builder();
            for (int depth = 0; depth < 3 && i + depth < lines.size(); depth++) {
                box.line(Passage.of(lines.get(i + depth).row()));
                Passage passage = box.build();
                Matcher found = BOX.matcher(passage.text());
                if (found.matches()) {
                    state(found, passage, readings);
                    break;
                }
                if (!passage.text().matches("(?is)\\W{0,2}group.{0,20}")) {
                    break;
                }
            }
        }
        if (!readings.has(LabelKind.GROUP)) {
            for (Sentence sentence : label.sentences()) {
                Matcher found = PROSE.matcher(sentence.text());
                boolean own = sentence.text().matches("(?is).*\\b(?:contains?|is a|this product|classified)\\b.*");
                if (own && !OTHERS.matcher(sentence.text()).find() && found.find()) {
                    state(found, sentence.passage().part(found.start(), found.end()), readings);
                }
            }
        }
    }

    private static void state(Matcher found, Passage words, Readings readings) {
        String kind = found.group(2).toLowerCase(Locale.ROOT);
        Matcher one = ONE.matcher(found.group(1));
        while (one.find()) {
            readings.state(
                    LabelKind.GROUP, new LabelContent.Group(one.group().toUpperCase(Locale.ROOT), kind), words.quote());
        }
    }
}
