package plumbrow.documents.label.part;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import plumbrow.documents.label.LabelKind;
import plumbrow.documents.label.text.LabelText;
import plumbrow.documents.label.text.Sentence;
import plumbrow.documents.label.text.Topic;

/** What a label forbids in the same tank. */
final class MixPart implements Part {
    private static final Pattern BAN = Pattern.compile(
            "(?i)\\b(?:do not|must not be|never|cannot be)\\s+(?:be\\s+)?(?:tank[- ]?)?(?:mix(?:ed)?|combined?|apply in (?:a )?tank[- ]?mix(?:ture)?|use(?= this product with| it with| with))(?:\\s+(?:or apply|this product|product|it))?(?:\\s+(?:in the (?:same )?tank|in tank mixtures?))?\\s+with\\s+(?:products? containing\\s+|any\\s+(?:product containing\\s+)?)?(?<partners>[^.;]{3,160})");
    private static final Pattern CLAUSE = Pattern.compile(
            "(?i)\\s+(?:because|since|as (?:this|it|crop)|or (?:crop|severe|injury)|if|when|unless|on|in|within|for)\\b.*");
    private static final Pattern LIST = Pattern.compile("\\s*(?:,\\s*(?:and|or)\\s+|,\\s+|\\s+or\\s+|\\s+and\\s+)");

    @Override
    public void read(LabelText label, Readings readings) {
        for (Sentence sentence : label.sentences()) {
            Matcher ban = BAN.matcher(sentence.text());
            if (sentence.topic() == Topic.STORAGE || !ban.find()) {
                continue;
            }
            String partners = CLAUSE.matcher(ban.group("partners").replaceAll("\\s+", " "))
                    .replaceFirst("");
            for (String partner : LIST.split(partners, -1)) {
                String plain = partner.replaceAll(
                                "(?i)^(?:(?:any|other|products? containing|and|or)\\s+)+|[\\s,:]+$", "")
                        .strip();
                if (plain.length() > 2) {
                    readings.text(LabelKind.MIX_BAN, plain, sentence.passage().quote(ban.start(), ban.end()));
                }
            }
        }
    }
}
