package plumbrow.app.desk;

import java.util.List;
import java.util.Optional;
import plumbrow.advice.season.Season;

/** What the desk asks of the book. Safe for several threads. */
public interface DeskBook {
    /** The latest season; the same instance for as long as the book has not changed. Empty in an empty book. */
    Optional<Season> season();

    /** The decisions recorded for a year, oldest first. */
    List<Chosen> choices(int year);

    /** Records a decision; nothing recorded is ever altered. */
    void choose(Chosen choice);
}
