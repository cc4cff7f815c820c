package plumbrow.app.desk.mix;

import java.util.List;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Field;
import plumbrow.advice.loadcard.LoadCard;
import plumbrow.advice.trip.SprayTrip;

/**
 * The page of a load card.
 *
 * @param trips all trips of the program, to choose among
 * @param machines those that can do it
 * @param card null where what was asked can't be
 * @param fault why not, else empty
 */
public record MixView(
        Field field,
        List<SprayTrip> trips,
        List<String> machines,
        @Nullable SprayTrip trip,
        @Nullable LoadCard card,
        String fault) {
    public MixView {
        trips = List.copyOf(trips);
        machines = List.copyOf(machines);
    }
}
