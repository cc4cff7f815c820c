package plumbrow.advice.shelf;

import java.util.List;
import java.util.Optional;
import plumbrow.advice.field.Crop;

/**
 * What has been read from labels beyond crops, rates and active ingredients. What is not in it is unknown.
 *
 * @param bulletins what endangered-species bulletins said when they were looked up
 * @param differences what labels and workbook say differently and nobody has settled
 */
public record LabelBook(
        List<UseTerms> terms,
        List<SoilRate> soilRates,
        List<Setback> setbacks,
        List<PlantBack> plantBacks,
        List<MixRule> mixRules,
        List<SpecialLabel> specialLabels,
        List<ProductCare> cares,
        List<ToleranceRule> tolerances,
        List<LabelLimit> limits,
        List<BulletinLook> bulletins,
        List<LabelDifference> differences) {
    /** Nothing read yet. */
    public static final LabelBook UNREAD = new LabelBook(
            List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of());

    public LabelBook {
        terms = List.copyOf(terms);
        soilRates = List.copyOf(soilRates);
        setbacks = List.copyOf(setbacks);
        plantBacks = List.copyOf(plantBacks);
        mixRules = List.copyOf(mixRules);
        specialLabels = List.copyOf(specialLabels);
        cares = List.copyOf(cares);
        tolerances = List.copyOf(tolerances);
        limits = List.copyOf(limits);
        bulletins = List.copyOf(bulletins);
        differences = List.copyOf(differences);
    }

    /** One that nothing speaks against. */
    public LabelBook(
            List<UseTerms> terms,
            List<SoilRate> soilRates,
            List<Setback> setbacks,
            List<PlantBack> plantBacks,
            List<MixRule> mixRules,
            List<SpecialLabel> specialLabels,
            List<ProductCare> cares,
            List<ToleranceRule> tolerances,
            List<LabelLimit> limits) {
        this(
                terms,
                soilRates,
                setbacks,
                plantBacks,
                mixRules,
                specialLabels,
                cares,
                tolerances,
                limits,
                List.of(),
                List.of());
    }

    public Optional<UseTerms> terms(String product, Crop crop) {
        return terms.stream()
                .filter(one -> one.product().equals(product) && one.crop() == crop)
                .findFirst();
    }

    public List<SoilRate> soilRates(String product, Crop crop) {
        return soilRates.stream()
                .filter(one -> one.product().equals(product) && one.crop() == crop)
                .toList();
    }

    public Optional<ProductCare> care(String product) {
        return cares.stream().filter(one -> one.product().equals(product)).findFirst();
    }
}
