package plumbrow.app.json;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plumbrow.science.figure.Numbers;
import plumbrow.science.reference.Backing;
import plumbrow.science.reference.Choice;
import plumbrow.science.reference.Fact;
import plumbrow.science.reference.HazardWords;
import plumbrow.science.reference.Movement;
import plumbrow.science.reference.MovementTable;
import plumbrow.science.reference.Origin;
import plumbrow.science.reference.Property;
import plumbrow.science.reference.ReportableQuantities;
import plumbrow.science.reference.ReportableQuantity;
import plumbrow.science.reference.Substance;

/**
 * All that is kept of one active ingredient, for the command, the page and programs alike.
 *
 * @param unknown properties of which nothing is kept
 */
public record SubstanceSummary(
        String name,
        String cas,
        String kind,
        List<PropertySummary> properties,
        List<String> unknown,
        List<Kept> reportable,
        List<Kept> movement) {

    /**
     * One property with every value of it, the chosen one first.
     *
     * @param low smallest number of any source, in the unit; null for codes
     * @param category what the chosen value is called; null where there are no categories
     */
    public record PropertySummary(
            String property,
            String words,
            String unit,
            @Nullable Double low,
            @Nullable Double high,
            @Nullable String category,
            List<Kept> values) {

        /** "to work with: 3090 mg/kg (III); 7 values from 672 to 3,090 mg/kg". */
        public String toWorkWith() {
            Kept first = values.get(0);
            StringBuilder words = new StringBuilder("to work with: ")
                    .append(Numbers.printed(first.value()))
                    .append(' ')
                    .append(first.unit());
            if (category != null) {
                words.append(" (").append(category).append(')');
            }
            if (values.size() > 1 && low != null && high != null) {
                String from = Numbers.read(low);
                String to = Numbers.read(high);
                words.append("; ")
                        .append(values.size())
                        .append(from.equals(to) ? " values agree" : " values from " + from + " to " + to + ' ' + unit);
            }
            return first.verified()
                    ? words.toString()
                    : words.append("; ").append(first.status()).toString();
        }
    }

    /** One value with all that belongs to it. */
    public record Kept(
            String value,
            String unit,
            String conditions,
            String source,
            String seenAt,
            String status,
            String mark,
            boolean verified) {
        private static Kept of(String value, String unit, String conditions, Origin origin, Backing backing) {
            return new Kept(
                    value,
                    unit,
                    conditions,
                    origin.source(),
                    origin.seenAt(),
                    backing.words(),
                    backing.mark(),
                    backing.sure());
        }
    }

    public static SubstanceSummary of(Substance substance) {
        return new SubstanceSummary(
                substance.name(),
                substance.cas(),
                substance.kind(),
                Arrays.stream(Property.values())
                        .flatMap(property ->
                                substance.choose(property).stream().map(choice -> summary(property, choice)))
                        .toList(),
                Arrays.stream(Property.values())
                        .filter(property -> substance.values(property).isEmpty())
                        .map(property -> property.measure().words())
                        .toList(),
                ReportableQuantities.find(substance.cas()).stream()
                        .map(SubstanceSummary::kept)
                        .toList(),
                MovementTable.forms(substance.name()).stream()
                        .map(SubstanceSummary::kept)
                        .toList());
    }

    private static PropertySummary summary(Property property, Choice choice) {
        boolean number = choice.fact().number().isPresent();
        Optional<String> category = choice.fact().number().flatMap(bound -> HazardWords.of(property, bound));
        return new PropertySummary(
                property.measure().key(),
                property.measure().words(),
                number ? choice.unit() : choice.fact().unit(),
                number ? choice.low() : null,
                number ? choice.high() : null,
                category.orElse(null),
                choice.all().stream().map(SubstanceSummary::kept).toList());
    }

    private static Kept kept(Fact fact) {
        return Kept.of(fact.value().printed(), fact.unit(), fact.conditions(), fact.origin(), fact.backing());
    }

    private static Kept kept(ReportableQuantity listed) {
        String planning = listed.tpqLb().isEmpty() ? "" : "threshold planning quantity " + listed.tpqLb() + " lb";
        String conditions = listed.conditions().isEmpty() || planning.isEmpty()
                ? listed.conditions() + planning
                : listed.conditions() + "; " + planning;
        return Kept.of(
                Long.toString(Math.round(listed.rqLb())),
                "lb",
                listed.law() + (conditions.isEmpty() ? "" : "; " + conditions),
                listed.origin(),
                listed.backing());
    }

    private static Kept kept(Movement row) {
        return Kept.of(
                row.rating(),
                "",
                row.name() + "; leaching score " + row.gus() + "; " + row.says(),
                row.origin(),
                row.backing());
    }
}
