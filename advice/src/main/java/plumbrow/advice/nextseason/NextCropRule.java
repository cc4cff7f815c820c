package plumbrow.advice.nextseason;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import plumbrow.advice.field.Crop;
import plumbrow.advice.field.CropYear;
import plumbrow.advice.field.Field;
import plumbrow.advice.field.NextCrop;
import plumbrow.advice.season.Season;

/**
 * Which crop a field carries next, where nobody says: the one that the season says follows; else the one that last followed this
 * season's crop on this field, by its history; else soybeans after corn, corn after soybeans, and soybeans after wheat (common
 * practice, no source).
 *
 * @param crop what it is to carry
 * @param why by which of these
 */
public record NextCropRule(Crop crop, String why) {
    /** The crop that a field's season leads to. */
    public static NextCropRule of(Season season, Field field) {
        return planned(season, field)
                .or(() -> asBefore(season, field))
                .orElseGet(() -> new NextCropRule(
                        usual(field.crop()), "usual after " + field.crop().word()));
    }

    private static Optional<NextCropRule> planned(Season season, Field field) {
        return season.ground().nextCrops(field.name()).stream()
                .filter(next -> next.use() == NextCrop.Use.NEXT)
                .flatMap(next -> called(next.crop()))
                .findFirst()
                .map(crop -> new NextCropRule(crop, "planned to follow"));
    }

    private static Optional<NextCropRule> asBefore(Season season, Field field) {
        List<CropYear> past = season.history().stream()
                .filter(year -> year.field().equals(field.name()))
                .sorted(Comparator.comparingInt(CropYear::year).reversed())
                .toList();
        for (CropYear before : past) {
            Optional<Crop> followed =
                    before.crop().equalsIgnoreCase(field.crop().word())
                            ? after(season, field, past, before.year() + 1)
                            : Optional.empty();
            if (followed.isPresent()) {
                String why = "followed " + field.crop().word() + " in " + (before.year() + 1);
                return Optional.of(new NextCropRule(followed.get(), why));
            }
        }
        return Optional.empty();
    }

    private static Optional<Crop> after(Season season, Field field, List<CropYear> past, int year) {
        return year == season.year()
                ? Optional.of(field.crop())
                : past.stream()
                        .filter(one -> one.year() == year)
                        .flatMap(one -> called(one.crop()))
                        .findFirst();
    }

    private static Crop usual(Crop crop) {
        return crop == Crop.SOYBEAN ? Crop.CORN : Crop.SOYBEAN;
    }

    /** The crop of a word, in the singular or plural; none for a crop that nobody is advised on. */
    public static Stream<Crop> called(String word) {
        String plain = word.strip();
        return Stream.of(Crop.values())
                .filter(crop -> crop.word().equalsIgnoreCase(plain) || (crop.word() + "s").equalsIgnoreCase(plain));
    }
}
