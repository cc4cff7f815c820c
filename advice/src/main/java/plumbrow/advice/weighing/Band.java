package plumbrow.advice.weighing;

/** One in ten is below {@code low}, half are below {@code middle}, one in ten is above {@code high}. */
public record Band(double low, double middle, double high) {}
