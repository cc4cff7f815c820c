package plumbrow.app.json;

import java.util.Locale;
import plumbrow.advice.assumptions.AssumptionQuantity;
import plumbrow.advice.field.Crop;
import plumbrow.advice.field.Texture;
import plumbrow.advice.gates.Protects;
import plumbrow.advice.gates.Standing;
import plumbrow.advice.means.MachineKind;
import plumbrow.advice.program.PassKind;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.shelf.ActiveLimit;
import plumbrow.advice.shelf.Ask;
import plumbrow.advice.shelf.ProductKind;
import plumbrow.advice.shelf.RefugeRule;
import plumbrow.science.figure.Status;
import plumbrow.science.figure.Subject;

/** The word by which one of a fixed list is known to a person. */
final class JsonWords {
    private JsonWords() {}

    /** Its own word; where it has none, its name in small letters with blanks: "node injury". */
    static String of(Enum<?> constant) {
        if (constant instanceof Standing standing) {
            return standing.word();
        } else if (constant instanceof Protects protects) {
            return protects.words();
        } else if (constant instanceof Crop crop) {
            return crop.word();
        } else if (constant instanceof Texture texture) {
            return texture.word();
        } else if (constant instanceof FarmUnit unit) {
            return unit.symbol();
        } else if (constant instanceof PassKind kind) {
            return kind.word();
        } else if (constant instanceof ProductKind kind) {
            return kind.word();
        } else if (constant instanceof AssumptionQuantity quantity) {
            return quantity.word();
        } else if (constant instanceof Ask ask) {
            return ask.word();
        } else if (constant instanceof RefugeRule.Form form) {
            return form.word();
        } else if (constant instanceof ActiveLimit.Basis basis) {
            return basis.word();
        } else if (constant instanceof Status status) {
            return status.words();
        } else if (constant instanceof MachineKind kind) {
            return kind.word();
        } else if (constant instanceof Subject subject) {
            return subject.title();
        }
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
