package plumbrow.documents.card;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import plumbrow.documents.sheet.Content;
import plumbrow.documents.sheet.Reading;
import plumbrow.documents.sheet.Route;
import plumbrow.documents.sheet.ValueKind;
import plumbrow.science.figure.Answer;
import plumbrow.science.reference.Bound;
import plumbrow.science.reference.Sources;
import plumbrow.science.safety.EverydayDose;
import plumbrow.science.safety.HalfLethalRatio;

/** The product among substances that everybody knows, by mouth and for the rat only. */
final class EverydayPart {
    private EverydayPart() {}

    static EverydayScale scale(CardInput input) {
        Optional<OwnDose> own = OwnDose.of(input.sheet(), Route.SWALLOWED)
                .filter(dose -> rat(dose.stated()) && dose.bound().low() > 0);
        if (own.isEmpty()) {
            return new EverydayScale(List.of());
        }
        Bound bound = own.get().bound();
        List<EverydayScale.Entry> entries = new ArrayList<>();
        entries.add(new EverydayScale.Entry(
                name(input),
                bound.number(),
                bound.limit(),
                true,
                "",
                Said.origin(own.get().stated().quote()).words()));
        for (EverydayDose each : EverydayDose.ALL) {
            entries.add(new EverydayScale.Entry(
                    each.name(),
                    each.ld50MgPerKg(),
                    false,
                    false,
                    ratio(bound, each).word("in_words"),
                    Sources.full(each.cited()) + " (prints " + each.printed() + ")"));
        }
        entries.sort(Comparator.comparingDouble(EverydayScale.Entry::ld50MgPerKg));
        return new EverydayScale(entries);
    }

    static CardSection of(EverydayScale scale) {
        List<CardLine> lines = new ArrayList<>();
        Optional<EverydayScale.Entry> own =
                scale.entries().stream().filter(EverydayScale.Entry::own).findFirst();
        if (own.isEmpty()) {
            lines.add(CardLine.unknown(
                    "Comparison", "a half-lethal dose by mouth of the product itself, for the rat, section 11"));
            return new CardSection(CardPart.EVERYDAY, lines, List.of(EverydayScale.CAUTION));
        }
        for (EverydayScale.Entry each : scale.entries()) {
            if (!each.own()) {
                lines.add(new CardLine(
                        "Beside " + each.name(),
                        each.says(),
                        Known.WORKED,
                        List.of(new Origin.Source(each.source())),
                        answer(own.get(), each)));
            }
        }
        return new CardSection(CardPart.EVERYDAY, lines, List.of(EverydayScale.CAUTION));
    }

    private static Answer answer(EverydayScale.Entry own, EverydayScale.Entry each) {
        return answer(own.ld50MgPerKg(), own.atLeast(), each.ld50MgPerKg());
    }

    private static Answer ratio(Bound bound, EverydayDose each) {
        return answer(bound.number(), bound.limit(), each.ld50MgPerKg());
    }

    private static Answer answer(double own, boolean limit, double reference) {
        return Worked.out(HalfLethalRatio.FIGURE)
                .with("ld50_mg_kg", own)
                .with("reference_ld50_mg_kg", reference)
                .with("limit_test", limit ? "yes" : "no")
                .answer();
    }

    /** A sheet that names no animal means the rat, by the test guidelines; other animals are not compared. */
    private static boolean rat(Reading.Stated stated) {
        String species = ((Content.Acute) stated.content()).species();
        return species.isEmpty() || species.equals("rat");
    }

    private static String name(CardInput input) {
        return input.sheet().of(ValueKind.PRODUCT_NAME) instanceof Reading.Stated stated
                ? stated.words()
                : "this product";
    }
}
