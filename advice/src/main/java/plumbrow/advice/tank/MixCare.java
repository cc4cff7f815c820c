package plumbrow.advice.tank;

import org.jspecify.annotations.Nullable;
import plumbrow.advice.quantity.Amount;

/**
 * What label and container say of mixing a product. Null is not read: unknown.
 *
 * @param formulation formulation code, such as EC, SC, WDG
 * @param container what one container holds
 * @param mark smallest amount that can be measured of it
 * @param order the label's own words on when it goes into the tank; they go before the usual order
 * @param cleanOut the label's words on cleaning the tank afterwards
 * @param ams whether the label asks for, allows or forbids ammonium sulfate
 * @param amsLowLb least ammonium sulfate of the label [lb/100 gal]
 * @param amsHighLb most of it [lb/100 gal]
 */
public record MixCare(
        String product,
        @Nullable String formulation,
        @Nullable Amount container,
        @Nullable Amount mark,
        @Nullable String order,
        @Nullable String cleanOut,
        @Nullable Conditioner ams,
        @Nullable Double amsLowLb,
        @Nullable Double amsHighLb,
        String source) {
    /** What a label says of ammonium sulfate in the tank. */
    public enum Conditioner {
        REQUIRED("required"),
        ALLOWED("allowed"),
        FORBIDDEN("forbidden");

        private final String word;

        Conditioner(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }
}
