package plumbrow.advice.shelf;

import java.util.List;
import java.util.Optional;
import plumbrow.advice.field.Crop;

/** The products at hand with all that is known of them. */
public record Shelf(
        List<Product> products,
        List<Seed> seeds,
        List<Trait> traits,
        List<ActiveContent> actives,
        List<LabelUse> labelUses,
        List<ActiveLimit> activeLimits,
        List<Control> controls,
        LabelBook labels) {
    public Shelf {
        products = List.copyOf(products);
        seeds = List.copyOf(seeds);
        traits = List.copyOf(traits);
        actives = List.copyOf(actives);
        labelUses = List.copyOf(labelUses);
        activeLimits = List.copyOf(activeLimits);
        controls = List.copyOf(controls);
    }

    /** A shelf whose labels were read for crops, rates and active ingredients only. */
    public Shelf(
            List<Product> products,
            List<Seed> seeds,
            List<Trait> traits,
            List<ActiveContent> actives,
            List<LabelUse> labelUses,
            List<ActiveLimit> activeLimits,
            List<Control> controls) {
        this(products, seeds, traits, actives, labelUses, activeLimits, controls, LabelBook.UNREAD);
    }

    /** The same shelf with other products on it. */
    public Shelf withProducts(List<Product> others) {
        return new Shelf(others, seeds, traits, actives, labelUses, activeLimits, controls, labels);
    }

    /** The same shelf with other labels read. */
    public Shelf withLabels(LabelBook others) {
        return new Shelf(products, seeds, traits, actives, labelUses, activeLimits, controls, others);
    }

    public Optional<Product> product(String name) {
        return products.stream().filter(product -> product.name().equals(name)).findFirst();
    }

    public Optional<Seed> seed(String product) {
        return seeds.stream().filter(seed -> seed.product().equals(product)).findFirst();
    }

    public Optional<LabelUse> labelUse(String product, Crop crop) {
        return labelUses.stream()
                .filter(use -> use.product().equals(product) && use.crop() == crop)
                .findFirst();
    }

    public List<ActiveContent> actives(String product) {
        return actives.stream()
                .filter(active -> active.product().equals(product))
                .toList();
    }

    public List<Control> controls(String product, String pest) {
        return controls.stream()
                .filter(control ->
                        control.product().equals(product) && control.pest().equals(pest))
                .toList();
    }
}
