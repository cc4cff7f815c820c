package plumbrow.advice.weedseason;

/** Whether the season of weeds can be reckoned on a field day by day. */
public sealed interface SeasonAnswer permits FieldSeason, SeasonLacks {}
