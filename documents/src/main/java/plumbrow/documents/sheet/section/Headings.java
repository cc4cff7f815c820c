package plumbrow.documents.sheet.section;

import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import plumbrow.documents.sheet.SheetSection;

/**
 * Headings of sections, by their words and not by their numbers.
 *
 * The numbers don't tell: sections 2 and 3 stand the other way round on older sheets, and some sheets have none.
 *
 * Source of the English wordings: 29 CFR 1910.1200 App. D and REACH Annex II; of the Spanish, French and German ones: REACH Annex II in these
 * languages (from memory).
 */
public final class Headings {
    private static final Map<SheetSection, Pattern> ENGLISH = new EnumMap<>(SheetSection.class);
    private static final Map<SheetSection, Pattern> OTHER = new EnumMap<>(SheetSection.class);

    /** "SECTION 2:", "Section 02 -", "2.", "2)", "II.", or nothing; never 2.1. */
    private static final Pattern NUMBER = Pattern.compile(
            "(?iu)^\\W{0,3}(?:(?<word>section|sección|seccion|rubrique|abschnitt|sezione|part)\\s*(?:no\\.?\\s*)?"
                    + "(?<after>\\d{1,2}|[ivx]{1,5}\\b)|(?<alone>\\d{1,2}(?!\\d)|[ivx]{1,5}(?=\\s*[.):])))"
                    + "(?!\\.\\d)\\s*[.:)\\-–—]*\\s*");

    /** What may follow a heading's words. */
    private static final Pattern TAIL = Pattern.compile(
            "(?i)^\\s*(?:[:.]\\s*)?(?:\\(?\\s*cont(?:inued|'d|\\.|d)?\\.?\\s*\\)?)?\\s*[-–—]*\\s*$|^\\s*(?:[/|–—-]|\\s{2})\\s*\\p{L}.{0,90}$");

    /** Where the English half of "SECCIÓN 1 / SECTION 1" begins. */
    private static final Pattern SECOND = Pattern.compile("\\s[/|]\\s(?=(?i:section)\\b)");

    /** Stars and rules that set a heading off: "* * * Section 4 - First Aid * * *". */
    private static final Pattern FRAME = Pattern.compile("^(?:[*=_~-]{1,3} ?){2,}(?=\\p{L})|(?: ?[*=_~-]{1,3}){2,}$");

    /** Words that are a heading only behind a section's number. */
    private static final Pattern EVERYDAY = Pattern.compile("(?i)other|components?|ingredient");

    private static final int LONGEST = 220;
    private static final Pattern CONTINUED = Pattern.compile("(?i)\\bcont(?:inued|'d|\\.|d)");

    static {
        english(
                SheetSection.IDENTIFICATION,
                "(?:chemical |material |product |substance )?(?:product )?(?:and|&)? ?(?:company |supplier )?identification"
                        + "(?: of (?:the )?(?:substance|product|preparation|mixture|material|chemical).{0,60})?"
                        + "|(?:chemical )?product (?:and|&) company (?:identification|information)"
                        + "|(?:chemical )?product (?:and|&|/) ?(?:company|supplier|manufacturer) ?(?:identification|information)"
                        + "|product (?:information|identifier|identity)|company information|identity");
        english(
                SheetSection.HAZARDS,
                "hazards?(?:\\(s\\))? (?:identification|information|summary|overview)(?: of (?:the )?(?:product|substance|mixture|preparation))?|hazardous identification"
                        + "|identification of (?:the )?hazards?|potential health hazards?");
        english(
                SheetSection.COMPOSITION,
                "composition(?: ?(?:/|,|and|&|-|–)? ?(?:information|data) (?:on|about)(?: the)? (?:hazardous )?(?:ingredients?|components?))?"
                        + "(?: ?/ ?ingredients?)?|(?:information on|hazardous) (?:ingredients|components)(?: ?/ ?identity information)?"
                        + "|composition information|ingredients?(?: (?:information|data))?|chemical composition|(?:hazardous )?components?(?: (?:data|information))?");
        english(
                SheetSection.FIRST_AID,
                "(?:emergency (?:and|&) )?first[- ]?aid(?: (?:measures|procedures|information|treatment))?");
        english(
                SheetSection.FIRE,
                "fire[- ]?fighting(?: (?:measures|procedures))?|fire (?:and|&) explosion(?: (?:hazard data|hazards?|data|measures))?|fire hazards?(?: data| information)?|fire measures");
        english(
                SheetSection.RELEASE,
                "accidental release(?: measures)?|spill(?:s|age)?(?: (?:or|and|&|/) ?(?:leak|release))?(?: (?:procedures|measures|response))?"
                        + "|(?:measures in case of )?accidental release measures");
        english(
                SheetSection.HANDLING,
                "(?:safe )?(?:handling|storage) ?(?:and|&|/) ?(?:storage|handling)(?: (?:information|precautions|procedures))?");
        english(
                SheetSection.EXPOSURE,
                "exposure controls?(?: ?(?:/|,|and|&|-|–) ?(?:personal )?protect(?:ion|ive equipment))?|personal protection(?: (?:information|equipment))?"
                        + "|control measures|exposure controls? (?:measures|information)|special protection information");
        english(
                SheetSection.PROPERTIES,
                "physical ?(?:and|&|/|,) ?(?:the )?chemical (?:properties|characteristics|data)|physico-?chemical (?:properties|data)|physical(?:[/ ]chemical)? (?:data|properties|characteristics)");
        english(
                SheetSection.STABILITY,
                "(?:chemical )?stability ?(?:and|&|/) ?reactivity(?: (?:data|information))?|reactivity(?: (?:data|hazards?|information))?|reactivity and stability");
        english(
                SheetSection.TOXICOLOGY,
                "toxicolog(?:ical|y)(?: (?:information|data|properties))?|toxicity(?: (?:data|information))|health hazard (?:data|information)|toxicological \\(?health\\)? information");
        english(
                SheetSection.ECOLOGY,
                "ecolog(?:ical|y)(?: (?:information|data))|eco-?toxicolog(?:ical|y) (?:information|data)|environmental (?:information|data|fate|effects|hazards)");
        english(
                SheetSection.DISPOSAL,
                "(?:waste )?disposal(?: (?:considerations?|information|instructions|methods?|procedures))|waste disposal|disposal");
        english(
                SheetSection.TRANSPORT,
                "transport(?:ation)?(?: (?:informations?|data|requirements))|shipping (?:information|data)|transport(?:ation)?");
        english(
                SheetSection.REGULATION,
                "regulatory(?: (?:information|status|data))?|regulations?|information on regulation");
        english(
                SheetSection.OTHER,
                "(?:other|additional|further|supplemental|miscellaneous)(?: (?:information|data))(?:, including .{0,60})?|other|preparation information|disclaimer and other information");

        other(
                SheetSection.IDENTIFICATION,
                "identificaci[oó]n(?! de(?: los)? (?:peligros?|riesgos?)).*|identification de la substance.*|bezeichnung de[sr].*|identification du produit.*");
        other(
                SheetSection.HAZARDS,
                "identificaci[oó]n de(?: los?)? (?:peligros?|riesgos?).*|identification des dangers|m[oö]gliche gefahren");
        other(
                SheetSection.COMPOSITION,
                "composici[oó]n.*|composition ?/ ?informations? sur les (?:composants|ingr[eé]dients)|zusammensetzung.*");
        other(
                SheetSection.FIRST_AID,
                "(?:medidas de )?primeros auxilios|premiers (?:secours|soins)|mesures de premiers secours|erste[- ]hilfe.*");
        other(
                SheetSection.FIRE,
                "medidas (?:de lucha contra|para combatir) (?:el )?(?:incendios?|fuego)|medidas contra incendios|mesures de lutte contre l['’]incendie|ma[sß]+nahmen zur brandbek[aä]mpfung");
        other(
                SheetSection.RELEASE,
                "medidas en caso de (?:vertido|liberaci[oó]n|derrame).*|mesures [aà] prendre en cas de (?:dispersion|d[eé]versement|rejet).*|ma[sß]+nahmen bei unbeabsichtigter.*");
        other(
                SheetSection.HANDLING,
                "manipulaci[oó]n y almacenamiento|manipulation et (?:stockage|entreposage)|handhabung und lagerung");
        other(
                SheetSection.EXPOSURE,
                "controles? de (?:la )?exposici[oó]n.*|contr[oô]les? de l['’]exposition.*|begrenzung und [uü]berwachung.*");
        other(
                SheetSection.PROPERTIES,
                "propiedades f[ií]sicas y qu[ií]micas|propri[eé]t[eé]s physiques et chimiques|physikalische und chemische eigenschaften");
        other(
                SheetSection.STABILITY,
                "estabilidad y reactividad|stabilit[eé] et r[eé]activit[eé]|stabilit[aä]t und reaktivit[aä]t");
        other(
                SheetSection.TOXICOLOGY,
                "informaci[oó]n toxicol[oó]gica|informations toxicologiques|donn[eé]es toxicologiques|toxikologische angaben");
        other(
                SheetSection.ECOLOGY,
                "informaci[oó]n ecol[oó]gica|informations [eé]cologiques|donn[eé]es [eé]cologiques|umweltbezogene angaben");
        other(
                SheetSection.DISPOSAL,
                "consideraciones (?:relativas a|sobre) la eliminaci[oó]n|informaci[oó]n relativa a la eliminaci[oó]n.*|consid[eé]rations relatives [aà] l['’][eé]limination|donn[eé]es sur l['’][eé]limination|hinweise zur entsorgung");
        other(
                SheetSection.TRANSPORT,
                "informaci[oó]n (?:relativa al|sobre el) transporte|informations relatives au transport|angaben zum transport");
        other(
                SheetSection.REGULATION,
                "informaci[oó]n (?:reglamentaria|regulatoria|sobre la reglamentaci[oó]n)|informations (?:relatives [aà] la r[eé]glementation|r[eé]glementaires)|informations sur la r[eé]glementation|rechtsvorschriften");
        other(SheetSection.OTHER, "otra informaci[oó]n|otras informaciones|autres informations|sonstige angaben");
    }

    private Headings() {}

    /**
     * A line read as a heading.
     *
     * @param section null where the line has a number and no words that are known
     * @param numbered whether "Section 4" or "4." stands before the words
     * @param number 0 where none
     * @param english false for a heading in another language only
     * @param continued whether the sheet says that the section goes on
     */
    public record Heading(
            @Nullable SheetSection section, boolean numbered, int number, boolean english, boolean continued) {}

    /** The heading that a line is, if it is one. */
    public static Optional<Heading> read(String line) {
        if (line.length() > LONGEST) {
            return Optional.empty();
        }
        String text =
                FRAME.matcher(line.strip().replaceAll("[\\s\u00a0]+", " ")).replaceAll("");
        Optional<Heading> whole = plain(text);
        Matcher second = SECOND.matcher(text);
        if ((whole.isEmpty() || !whole.get().english()) && second.find()) {
            return plain(text.substring(second.end())).or(() -> whole);
        }
        return whole;
    }

    private static Optional<Heading> plain(String text) {
        Matcher number = NUMBER.matcher(text);
        boolean numbered = number.find();
        int value = numbered ? value(number) : 0;
        String words = numbered ? text.substring(number.end()) : text;
        if (numbered && (value < 1 || value > SheetSection.values().length)) {
            return Optional.empty();
        }
        for (SheetSection section : SheetSection.values()) {
            if (matches(ENGLISH, section, words, numbered)) {
                return Optional.of(new Heading(
                        section, numbered, value, true, CONTINUED.matcher(words).find()));
            }
        }
        for (SheetSection section : SheetSection.values()) {
            if (matches(OTHER, section, words, numbered)) {
                return Optional.of(new Heading(section, numbered, value, secondHalf(words, section), false));
            }
        }
        boolean alone = numbered && number.group("word") != null && words.isEmpty();
        return alone ? Optional.of(new Heading(null, true, value, true, false)) : Optional.empty();
    }

    /** "Identificación / Identification": the English words stand behind the others. */
    private static boolean secondHalf(String words, SheetSection section) {
        int slash = words.lastIndexOf(" / ");
        return slash > 0 && matches(ENGLISH, section, words.substring(slash + 3), true);
    }

    private static boolean matches(
            Map<SheetSection, Pattern> wordings, SheetSection section, String words, boolean numbered) {
        Matcher matcher = Objects.requireNonNull(wordings.get(section)).matcher(words);
        if (!matcher.lookingAt()) {
            return false;
        }
        String rest = words.substring(matcher.end());
        if (!numbered && EVERYDAY.matcher(words).matches()) {
            return false;
        }
        return rest.isEmpty()
                || (TAIL.matcher(rest).matches()
                        && (numbered
                                || rest.length() < 3
                                || CONTINUED.matcher(rest).find()
                                || rest.contains("/")));
    }

    private static int value(Matcher number) {
        String printed = number.group("after") == null ? number.group("alone") : number.group("after");
        if (Character.isDigit(printed.charAt(0))) {
            return Integer.parseInt(printed);
        }
        int sum = 0;
        int before = 0;
        for (int i = printed.length() - 1; i >= 0; i--) {
            int each = switch (Character.toLowerCase(printed.charAt(i))) {
                case 'i' -> 1;
                case 'v' -> 5;
                default -> 10;
            };
            sum += each < before ? -each : each;
            before = Math.max(before, each);
        }
        return sum;
    }

    private static void english(SheetSection section, String words) {
        ENGLISH.put(section, Pattern.compile("(?:" + words + ")(?![\\p{L}])", Pattern.CASE_INSENSITIVE));
    }

    private static void other(SheetSection section, String words) {
        OTHER.put(section, Pattern.compile("(?:" + words + ")", Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE));
    }
}
