package plumbrow.documents.label.grammar;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** What labels measure, with every way they write its units. US customary: an oz is a weight, a fl oz a volume. */
public enum Measure {
    TIME(
            new Form("h", "-?\\s?(?:hours?|hrs?\\.?|h)\\b"),
            new Form("d", "-?\\s?days?\\b"),
            new Form("months", "-?\\s?(?:months?|mos?\\.?)(?=\\W|$)"),
            new Form("weeks", "-?\\s?(?:weeks?|wks?\\.?)(?=\\W|$)"),
            new Form("years", "-?\\s?(?:years?|yrs?\\.?)(?=\\W|$)")),
    LENGTH(
            new Form("ft", "-?\\s?(?:feet|foot|ft\\.?(?=\\W|$)|['’′](?!\\p{L}))"),
            new Form("in", "-?\\s?(?:inch(?:es)?|in\\.(?=\\W|$)|[\"”″])"),
            new Form("mile", "-?\\s?miles?\\b(?!\\s+per)"),
            new Form("yd", "-?\\s?(?:yards?|yds?\\.?)(?=\\W|$)")),
    SPEED(new Form("mph", "(?:mph|m\\.p\\.h\\.|MPH|miles\\s+per\\s+hour|miles/hour)")),
    SHARE(new Form("%", "(?:%|percent)")),
    STRENGTH(
            new Form(
                    "lb/gal",
                    "(?:lbs?\\.?|pounds?)(?=\\W)(?:[^.;]|\\.(?=\\S)|(?<=a\\.[ieIE])\\.){0,90}?(?:\\bper\\s+(?:U\\.?S\\.?\\s+)?gallon|/\\s?gal(?:lon)?\\b\\.?)"));

    /** A unit and how it is written. */
    record Form(String unit, String written) {}

    @SuppressWarnings("ImmutableEnumChecker") // never changed
    private final List<Form> forms;

    Measure(Form... forms) {
        this.forms = List.of(forms);
    }

    String alternatives() {
        return forms.stream().map(Form::written).collect(Collectors.joining("|", "(?:", ")"));
    }

    String unit(String printed) {
        return forms.stream()
                .filter(form -> Pattern.matches(
                        "(?i)" + form.written.replace("(?=\\W|$)", "").replace("(?=\\W)", ""), printed))
                .map(Form::unit)
                .findFirst()
                .orElse(printed.strip());
    }
}
