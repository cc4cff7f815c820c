package plumbrow.documents.sheet.grammar;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Units that measure the same thing, with every way that sheets write them.
 *
 * Source: forms in common use; definitions of the units.
 */
public enum Family {
    PRESSURE(
            false,
            new Form("mmHg", "mm\\.?\\s?(?:of\\s)?(?:Hg|HG|mercury)"),
            new Form("psi", "psi[ag]?"),
            new Form("torr", "[Tt]orr|TORR"),
            new Form("hPa", "h[Pp]a"),
            new Form("kPa", "[kK][Pp]a"),
            new Form("mPa", "mPa"),
            new Form("MPa", "MPa"),
            new Form("µPa", "[µμu]Pa"),
            new Form("Pa", "Pa"),
            new Form("mbar", "m[bB]ars?"),
            new Form("bar", "bars?"),
            new Form("atm", "atm")),
    TEMPERATURE(
            false,
            new Form("°C", "(?:°|º|˚|o\\s?|deg\\.?(?:rees)?)\\s?C(?:elsius)?|C"),
            new Form("°F", "(?:°|º|˚|o\\s?|deg\\.?(?:rees)?)\\s?F(?:ahrenheit)?|F"),
            new Form("K", "K")),
    DENSITY(
            false,
            new Form("g/mL", "g\\s?/\\s?(?:m[lL]|cm\\s?[3³]|cc3?)|g\\s?[.·]?\\s?cm\\s?(?:-3|⁻³)|gm?/cc"),
            new Form("kg/L", "kg\\s?/\\s?(?:[lL]|dm\\s?[3³])"),
            new Form("kg/m³", "kg\\s?/\\s?m\\s?[3³]"),
            new Form("g/L", "g\\s?/\\s?[lL]"),
            new Form("lb/gal", "(?:lbs?\\.?|pounds|#)\\s?(?:/|per)\\s?(?:US\\s)?gal(?:lon)?s?\\.?"),
            new Form(
                    "lb/ft³",
                    "(?:lbs?\\.?|pounds|#)\\s?(?:/|per)\\s?(?:cu\\.?\\s?ft\\.?|(?i:ft)\\.?\\s?[3³]|cubic foot)")),
    PERCENT(false, new Form("%", "%(?:\\s?\\(?w/w\\)?)?|(?:weight|wt\\.?)\\s?%|percent|pct\\.?")),
    DOSE(
            true,
            new Form("mg/kg", "mg\\s?/\\s?kg|milligrams per kilogram|mg\\s?(?:[.·]\\s?)?kg\\s?(?:-1|⁻¹)"),
            new Form("g/kg", "g\\s?/\\s?kg"),
            new Form("µg/kg", "[µμu]g\\s?/\\s?kg"),
            new Form("mL/kg", "m[lL]\\s?/\\s?kg"),
            new Form("µL/kg", "[µμu][lL]\\s?/\\s?kg"),
            new Form("mg/kg diet", "mg\\s?/\\s?kg\\s(?:diet|feed|food)"),
            new Form("ppm", "ppm|PPM")),
    AIR(
            false,
            new Form("mg/L", "mg\\s?/\\s?[lL](?:it(?:er|re))?|mg per lit(?:er|re)"),
            new Form("mg/m³", "mg\\s?/\\s?(?:m\\s?[3³]|cu\\.?\\s?m\\.?)|mg\\s?[.·]?\\s?m\\s?(?:-3|⁻³)"),
            new Form("µg/m³", "[µμu]g\\s?/\\s?m\\s?[3³]"),
            new Form("g/m³", "g\\s?/\\s?m\\s?[3³]"),
            new Form("ppm", "ppm|PPM"),
            new Form("ppb", "ppb"),
            new Form("µg/L", "[µμu]g\\s?/\\s?[lL]")),
    WATER(
            false,
            new Form("mg/L", "mg\\s?/\\s?[lL](?:it(?:er|re))?|mg per lit(?:er|re)"),
            new Form("µg/L", "[µμu]g\\s?/\\s?[lL](?:it(?:er|re))?"),
            new Form("ng/L", "ng\\s?/\\s?[lL]"),
            new Form("g/L", "g\\s?/\\s?[lL](?:it(?:er|re))?"),
            new Form("mL/L", "m[lL]\\s?/\\s?[lL]"),
            new Form("ppm", "ppm|PPM"),
            new Form("ppb", "ppb"),
            new Form("%", "%"),
            new Form("g/100 mL", "g\\s?/\\s?100\\s?(?:m[lL]|g)")),
    PER_BEE(false, new Form("µg/bee", "[µμu]g(?:\\s?a\\.?[is]\\.?)?\\s?/\\s?bee|micrograms per bee")),
    WEIGHT(false, new Form("lb", "lbs?\\b\\.?|pounds?"), new Form("kg", "kg|kilograms?")),
    /** A bare number, as pH, log Kow and specific gravity. */
    BARE(false);

    /** A unit and how it is written. */
    record Form(String unit, String written) {}

    private final boolean strict;

    @SuppressWarnings("ImmutableEnumChecker") // lists and patterns never change
    private final List<Form> forms;

    @SuppressWarnings("ImmutableEnumChecker")
    private final List<Pattern> patterns;

    Family(boolean strict, Form... forms) {
        this.strict = strict;
        this.forms = List.of(forms);
        this.patterns = this.forms.stream()
                .map(form -> Pattern.compile("(?:" + form.written + ")"))
                .toList();
    }

    /** Whether a point before three digits may part thousands even where decimals have points: doses run from 1 to 10,000. */
    boolean strict() {
        return strict;
    }

    /** All ways to write its units, longer ones first where one begins another. */
    String alternatives() {
        return forms.stream().map(Form::written).collect(Collectors.joining("|", "(?:", ")"));
    }

    /** The one spelling of a unit as printed. */
    String unit(String printed) {
        for (int i = 0; i < forms.size(); i++) {
            if (patterns.get(i).matcher(printed.strip()).matches()) {
                return forms.get(i).unit();
            }
        }
        return printed.strip();
    }
}
