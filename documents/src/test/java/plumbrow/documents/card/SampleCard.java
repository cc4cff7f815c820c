package plumbrow.documents.card;

import java.time.LocalDate;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.FarmUnit;

/** A card to print and draw. */
public final class SampleCard {
    private SampleCard() {}

    public static ProductCard card() {
        return of(TypedSheet.furrowgate());
    }

    /** With advice as long as real sheets give it. */
    public static ProductCard wordy() {
        String much = "Keep the container tightly closed in a cool dry place that is well ventilated and locked. ";
        return of(TypedSheet.furrowgate()
                .change(7, "Storage: Keep locked up", "Storage: " + much.repeat(14) + "Keep locked up")
                .change(4, "Call a poison", "If the person is awake, rinse the mouth. ".repeat(5) + "Call a poison"));
    }

    private static ProductCard of(TypedSheet sheet) {
        return CardMaker.make(
                CardInput.of(sheet.read(), LocalDate.of(2026, 11, 25)).holding(new Amount(2.5, FarmUnit.GAL)));
    }
}
