package plumbrow.advice.weedseason;

import java.util.List;

/**
 * It can't, for want of this.
 *
 * @param missing what must be entered, each a part of a sentence; at least one
 */
public record SeasonLacks(List<String> missing) implements SeasonAnswer {
    public SeasonLacks {
        missing = List.copyOf(missing);
    }
}
