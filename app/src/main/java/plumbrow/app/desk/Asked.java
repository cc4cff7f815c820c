package plumbrow.app.desk;

import java.util.List;
import plumbrow.advice.field.Field;
import plumbrow.advice.gates.GatePage;
import plumbrow.advice.pestpage.PestPage;
import plumbrow.advice.pestpage.PestPages;
import plumbrow.advice.season.Season;
import plumbrow.app.desk.door.NoSeasonException;
import plumbrow.app.desk.door.NotHereException;
import plumbrow.app.desk.door.TooManyException;
import plumbrow.science.Figures;
import plumbrow.science.figure.Figure;
import plumbrow.science.reference.Substance;
import plumbrow.science.reference.Substances;

/** What a page is about, or why it is not here. */
public final class Asked {
    private Asked() {}

    public static Season season(DeskBook book) {
        return book.season().orElseThrow(NoSeasonException::new);
    }

    public static Field field(Season season, String name) {
        return season.field(name)
                .orElseThrow(() -> new NotHereException(
                        "There is no field called “" + shortened(name) + "” in " + season.year() + "."));
    }

    /** Refuses the name of a farm that is not here; an empty one means all of them. */
    public static void farm(Season season, String name) {
        if (!name.isEmpty() && season.farm(name).isEmpty()) {
            throw new NotHereException("There is no farm called “" + shortened(name) + "” in " + season.year() + ".");
        }
    }

    /** Fields that are answered in one go, each with all that is behind its answer. */
    private static final int MOST_FIELDS = 400;

    /**
     * The fields of a farm, all of the season where none is named.
     *
     * @throws TooManyException where they are more than are answered in one go
     */
    public static List<Field> fields(Season season, String farm) {
        farm(season, farm);
        List<Field> fields = season.fields().stream()
                .filter(field -> farm.isEmpty() || field.farm().equals(farm))
                .toList();
        if (fields.size() > MOST_FIELDS) {
            throw new TooManyException("These are " + fields.size() + " fields; at most " + MOST_FIELDS
                    + " come in one go. Name a farm (?farm=…), or ask for one field at a time.");
        }
        return fields;
    }

    public static Figure figure(String id) {
        return Figures.find(id)
                .orElseThrow(() -> new NotHereException("There is no figure called “" + shortened(id) + "”."));
    }

    public static PestPage pest(Season season, String name) {
        return PestPages.of(season, name)
                .orElseThrow(() -> new NotHereException("Nothing is kept of “" + shortened(name)
                        + "”, neither in the book nor in the reference data, which does not say that it is absent."));
    }

    public static GatePage gate(String id) {
        return GatePage.find(id)
                .orElseThrow(() -> new NotHereException("There is no check called “" + shortened(id) + "”."));
    }

    public static Substance substance(String nameOrCas) {
        return Substances.find(nameOrCas)
                .orElseThrow(() -> new NotHereException("Nothing is kept of “" + shortened(nameOrCas)
                        + "”, which says nothing about it: look at its label and safety sheet."));
    }

    private static String shortened(String name) {
        return name.length() > 60 ? name.substring(0, 57) + "…" : name;
    }
}
