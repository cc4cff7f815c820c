package plumbrow.documents.label;

import org.jspecify.annotations.Nullable;
import plumbrow.documents.sheet.Amount;

/**
 * The soil a rate is for.
 *
 * @param texture as printed; empty for any
 * @param organicMatter [%] with its sign, such as less than 3; null for any
 */
public record Soil(String texture, @Nullable Amount organicMatter) {
    public static final Soil ANY = new Soil("", null);

    public String words() {
        String matter = organicMatter == null ? "" : organicMatter.words() + " organic matter";
        return texture + (texture.isEmpty() || matter.isEmpty() ? "" : ", ") + matter;
    }
}
