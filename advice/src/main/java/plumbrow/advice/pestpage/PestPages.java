package plumbrow.advice.pestpage;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import plumbrow.advice.field.Crop;
import plumbrow.advice.field.Field;
import plumbrow.advice.pests.InsectPressure;
import plumbrow.advice.pests.WeedPressure;
import plumbrow.advice.season.Season;

/** Puts together the page of a pest. The same season gives the same page. */
public final class PestPages {
    private static final String LAW =
            "The current label is the law: rates, sizes, crops and days stand there. Local code"
                    + " and licensed practice decide; in doubt call your extension office.";

    private final Season season;
    private final PestName pest;
    private final List<Field> fields;

    private PestPages(Season season, PestName pest) {
        this.season = season;
        this.pest = pest;
        this.fields = pest.fields().stream()
                .flatMap(name -> season.field(name).stream())
                .toList();
    }

    /** The page of a pest by its name, capitals ignored; empty where neither book nor reference data name it. */
    public static Optional<PestPage> of(Season season, String name) {
        return PestNames.find(season, name).map(found -> new PestPages(season, found).page());
    }

    private boolean weed() {
        return pest.kind() == PestKind.WEED;
    }

    private PestPage page() {
        String name = pest.name();
        List<Field> places = fields.isEmpty() ? season.fields() : fields;
        Set<Crop> crops = new TreeSet<>();
        places.forEach(field -> crops.add(field.crop()));
        List<Works> works = new ArrayList<>();
        crops.forEach(crop -> works.addAll(OnShelf.of(season, pest.kind(), name, crop)));
        List<FailedSite> failed = weed() ? Failures.weed(season, name) : Failures.insect(season, name);
        List<Coming> coming = places.stream()
                .map(field -> weed() ? ComingDays.weed(season, field, name) : ComingDays.insect(season, field, name))
                .toList();
        List<TwoPasses> plans = crops.stream()
                .map(crop -> Plans.of(
                        pest.kind(),
                        KnownInsect.find(name).filter(KnownInsect::below).isPresent(),
                        crop,
                        places.stream()
                                .filter(field -> field.crop() == crop)
                                .map(Field::name)
                                .toList(),
                        works,
                        failed))
                .toList();
        List<Pressing> pressing = weed() ? Harm.weed(season, name) : Harm.insect(season, name);
        return new PestPage(
                season.year(),
                season.asOf(),
                name,
                pest.kind(),
                PestSentence.of(name, fields.size(), coming, pressing, plans),
                coming,
                pressing,
                ScoutingLines.of(pest.kind(), name, coming, works),
                fields.stream().map(field -> threshold(field, works, failed)).toList(),
                works,
                failed,
                unasked(failed),
                plans,
                weed() ? Likenesses.of(season, name) : List.of(),
                cautions(failed));
    }

    private Threshold threshold(Field field, List<Works> works, List<FailedSite> failed) {
        if (weed()) {
            WeedPressure row = season.pests().weeds().stream()
                    .filter(one ->
                            one.field().equals(field.name()) && one.weed().equalsIgnoreCase(pest.name()))
                    .findFirst()
                    .orElseThrow();
            return Thresholds.weed(season, field, row, works, failed);
        }
        InsectPressure row = Harm.row(season, pest.name(), field.name()).orElseThrow();
        return Thresholds.insect(season, field, row, works);
    }

    private List<String> unasked(List<FailedSite> failed) {
        return fields.stream()
                .map(Field::name)
                .filter(name -> failed.stream().noneMatch(one -> one.field().equals(name)))
                .toList();
    }

    private List<String> cautions(List<FailedSite> failed) {
        Set<String> cautions = new LinkedHashSet<>();
        cautions.add(LAW);
        cautions.add("A plan from ratings is no program: put it into the season, where the checks look at label, field,"
                + " weather and neighbours.");
        if (weed()) {
            cautions.add(
                    "A threshold counts this season only. Seed that survivors shed and resistance are not in it: for"
                            + " weeds full of seed it is far too high.");
            cautions.add("Published ratings hold for susceptible plants at the labelled rate and size.");
        } else {
            cautions.add(
                    "A threshold published for the crop, stage and state goes before one calculated here; published ones"
                            + " are never averaged.");
        }
        if (!failed.isEmpty()) {
            cautions.add("Where one site of a mix fails, the rating of the mix may be too good.");
        }
        return List.copyOf(cautions);
    }
}
