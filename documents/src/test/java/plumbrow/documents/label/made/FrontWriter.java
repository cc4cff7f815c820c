package plumbrow.documents.label.made;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import plumbrow.documents.label.LabelContent;
import plumbrow.documents.label.LabelKind;
import plumbrow.documents.label.Of;

/** Front of a label: name, numbers, group, ingredients, signal word. */
final class FrontWriter {
    private FrontWriter() {}

    static void write(Draft draft, Pesticide product) {
        if (draft.chance(3)) {
            draft.paragraph("RESTRICTED USE PESTICIDE");
            String why = draft.pick(
                    "Due to ground and surface water concerns. For retail sale to and use only by certified applicators or persons under their direct supervision.",
                    "Due to toxicity to fish and aquatic organisms. For retail sale to and use only by certified applicators.");
            draft.paragraph(why);
            draft.text(LabelKind.WHERE, why.substring(why.indexOf("For retail")).replaceAll("\\.$", ""));
            draft.text(LabelKind.RESTRICTED_USE, "Restricted use pesticide");
        }
        group(draft, product);
        draft.blocks.add(new Block.Name(product.name()));
        boolean sized = draft.layout.press() != Layout.Press.TEXT && draft.layout.press() != Layout.Press.WEB_PAGE;
        if (sized) {
            draft.text(LabelKind.PRODUCT_NAME, product.name());
            formulation(draft, product);
        }
        draft.paragraph("For control of listed pests in listed crops.");
        ingredients(draft, product);
        numbers(draft, product);
        String signal = draft.pick("CAUTION", "WARNING", "DANGER", "DANGER - POISON");
        draft.paragraph("KEEP OUT OF REACH OF CHILDREN" + draft.pick("", "."));
        draft.text(LabelKind.CHILD_STATEMENT, "Keep out of reach of children");
        draft.paragraph(
                switch (signal) {
                    case "CAUTION" -> draft.pick("CAUTION", "CAUTION / PRECAUCIÓN");
                    case "WARNING" -> draft.pick("WARNING", "WARNING / AVISO");
                    case "DANGER" -> draft.pick("DANGER", "DANGER / PELIGRO");
                    default -> draft.pick("DANGER – POISON", "DANGER-POISON");
                });
        draft.text(LabelKind.SIGNAL_WORD, signal);
        draft.paragraph(
                "Si usted no entiende la etiqueta, busque a alguien para que se la explique a usted en detalle.");
    }

    /** By the code at the end of the name. */
    private static void formulation(Draft draft, Pesticide product) {
        if (product.name().endsWith(" EC")) {
            draft.text(LabelKind.FORMULATION, "emulsifiable concentrate");
        } else if (product.name().endsWith(" SC")) {
            draft.text(LabelKind.FORMULATION, "suspension concentrate");
        } else if (product.name().endsWith(" SL")) {
            draft.text(LabelKind.FORMULATION, "soluble concentrate");
        }
    }

    private static void group(Draft draft, Pesticide product) {
        List<String> groups =
                product.actives().stream().map(Pesticide.Active::group).toList();
        String kind = product.kind().toUpperCase(Locale.ROOT);
        if (groups.size() > 1 && draft.chance(2)) {
            groups.forEach(group -> draft.blocks.add(new Block.Boxed(List.of("GROUP", group, kind))));
        } else {
            draft.blocks.add(new Block.Boxed(
                    List.of("GROUP", String.join("  ", groups).strip(), kind + (groups.size() > 1 ? "S" : ""))));
        }
        groups.forEach(group -> draft.truth(LabelKind.GROUP, new LabelContent.Group(group, product.kind())));
    }

    private static void ingredients(Draft draft, Pesticide product) {
        boolean pounds = !product.dry();
        draft.paragraph(draft.pick("ACTIVE INGREDIENTS:", "Active Ingredient(s):", "ACTIVE INGREDIENT:   By Wt."));
        double rest = 100;
        for (Pesticide.Active active : product.actives()) {
            String mark = active.acid() ? "*" : "";
            String name = active.name() + (active.acid() ? ", potassium salt" : "");
            draft.blocks.add(new Block.Dotted(name + mark, percent(active.percent())));
            draft.truth(LabelKind.ACTIVE, new LabelContent.Active(name, Draft.exactly(active.percent(), "%")));
            rest -= active.percent();
        }
        draft.blocks.add(new Block.Dotted(
                draft.pick("OTHER INGREDIENTS:", "INERT INGREDIENTS:", "Other ingredients"), percent(rest)));
        draft.blocks.add(new Block.Dotted(draft.pick("TOTAL:", "TOTAL"), "100.0%"));
        for (Pesticide.Active active : product.actives()) {
            if (pounds) {
                strength(draft, active);
            } else if (active.acid()) {
                double share = Math.round(active.percent() * 7) / 10.0;
                draft.paragraph(
                        "*Equivalent to " + percent(share) + " " + active.name().toLowerCase(Locale.ROOT) + " acid.");
                draft.truth(
                        LabelKind.STRENGTH,
                        new LabelContent.Strength(active.name(), Draft.exactly(share, "%"), Of.ACID));
            }
        }
    }

    private static void strength(Draft draft, Pesticide.Active active) {
        String name = active.name().toLowerCase(Locale.ROOT);
        String size = number(active.pounds());
        if (active.acid()) {
            draft.paragraph(draft.pick(
                    "*Contains " + size + " pounds " + name + " acid equivalent per gallon.",
                    "*This product contains " + size + " lb a.e. of " + name + " per gallon.",
                    "*Equivalent to " + size + " pounds per gallon of " + name + " acid."));
            draft.truth(
                    LabelKind.STRENGTH,
                    new LabelContent.Strength(active.name(), Draft.exactly(active.pounds(), "lb/gal"), Of.ACID));
        } else {
            draft.paragraph(draft.pick(
                    "Contains " + size + " pounds of " + name + " per gallon.",
                    "This product contains " + size + " lb a.i. of " + name + " per gallon.",
                    "Contains " + size + " pounds per gallon of the active ingredient " + name + ".",
                    "Contains " + size + " lbs. active ingredient " + name + " per gallon."));
            draft.truth(
                    LabelKind.STRENGTH,
                    new LabelContent.Strength(active.name(), Draft.exactly(active.pounds(), "lb/gal"), Of.ACTIVE));
        }
    }

    private static void numbers(Draft draft, Pesticide product) {
        draft.paragraph(draft.pick("EPA Reg. No. ", "EPA Registration No.: ", "EPA REG. NO. ", "EPA Reg. Number ")
                + product.registration());
        draft.text(LabelKind.REGISTRATION, product.registration());
        if (draft.chance(2)) {
            draft.paragraph(
                    draft.pick("EPA Est. No. ", "EPA Est. ", "EPA Establishment No.: ") + product.establishment());
            draft.text(LabelKind.ESTABLISHMENT, product.establishment());
        }
        if (draft.chance(2)) {
            LocalDate date = LocalDate.of(
                    2019 + draft.random.nextInt(7), 1 + draft.random.nextInt(12), 1 + draft.random.nextInt(28));
            String printed = date.format(
                    DateTimeFormatter.ofPattern(draft.pick("MMMM d, yyyy", "MM/dd/yyyy", "dd-MMM-yyyy"), Locale.US));
            draft.paragraph(draft.pick("Label date: ", "Revised ", "Accepted ") + printed);
            draft.truth(LabelKind.LABEL_DATE, new LabelContent.Day(date));
        }
    }

    private static String percent(double value) {
        return String.format(Locale.ROOT, "%.1f%%", value);
    }

    static String number(double value) {
        return value == Math.rint(value) ? String.format(Locale.ROOT, "%.0f", value) : String.valueOf(value);
    }
}
