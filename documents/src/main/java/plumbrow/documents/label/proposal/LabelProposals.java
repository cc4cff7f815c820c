package plumbrow.documents.label.proposal;

import java.util.ArrayList;
import java.util.List;
import plumbrow.advice.field.Crop;
import plumbrow.advice.shelf.ActiveContent;
import plumbrow.advice.shelf.ActiveLimit;
import plumbrow.advice.shelf.LabelUse;
import plumbrow.advice.shelf.MixRule;
import plumbrow.advice.shelf.PlantBack;
import plumbrow.advice.shelf.ProductCare;
import plumbrow.advice.shelf.Setback;
import plumbrow.advice.shelf.SoilRate;
import plumbrow.advice.shelf.UseTerms;
import plumbrow.documents.label.LabelPaper;

/**
 * The rows of the shelf that a label proposes for a product.
 *
 * A label's silence is never turned into a freest value: what it doesn't state stays null, which is unknown to the gates.
 */
public record LabelProposals(
        List<Proposal<LabelUse>> uses,
        List<Proposal<UseTerms>> terms,
        List<Proposal<SoilRate>> soilRates,
        List<Proposal<ActiveContent>> actives,
        List<Proposal<ActiveLimit>> limits,
        List<Proposal<Setback>> setbacks,
        List<Proposal<PlantBack>> plantBacks,
        List<Proposal<MixRule>> mixRules,
        Proposal<ProductCare> care) {

    /**
     * What a label proposes.
     *
     * @param product the name under which the product stands on the shelf
     */
    public static LabelProposals of(LabelPaper label, String product) {
        List<Proposal<LabelUse>> uses = new ArrayList<>();
        List<Proposal<UseTerms>> terms = new ArrayList<>();
        List<Proposal<SoilRate>> soils = new ArrayList<>();
        for (Crop crop : Crop.values()) {
            CropReadings readings = new CropReadings(label, crop);
            if (readings.named()) {
                uses.add(UseRows.use(readings, product));
                terms.add(UseRows.terms(readings, product));
                soils.addAll(UseRows.soils(readings, product));
            }
        }
        return new LabelProposals(
                uses,
                terms,
                soils,
                ActiveRows.contents(label, product),
                ActiveRows.limits(label, product),
                GroundRows.setbacks(label, product),
                GroundRows.plantBacks(label, product),
                GroundRows.mixRules(label, product),
                GroundRows.care(label, product));
    }

    public LabelProposals {
        uses = List.copyOf(uses);
        terms = List.copyOf(terms);
        soilRates = List.copyOf(soilRates);
        actives = List.copyOf(actives);
        limits = List.copyOf(limits);
        setbacks = List.copyOf(setbacks);
        plantBacks = List.copyOf(plantBacks);
        mixRules = List.copyOf(mixRules);
    }
}
