package plumbrow.documents.sheet.made;

import plumbrow.documents.sheet.BodyPart;
import plumbrow.documents.sheet.Content;
import plumbrow.documents.sheet.Route;
import plumbrow.documents.sheet.ValueKind;

/** Sections of running text: 4, 5, 6, 7, 10 and 13. */
final class AdviceWriter {
    private AdviceWriter() {}

    static void firstAid(Draft draft) {
        boolean european = draft.house.wording() == Wording.EU;
        if (european) {
            draft.subheading("4.1 Description of first aid measures");
        }
        aid(
                draft,
                Route.SWALLOWED,
                european ? "Ingestion" : draft.pick("If swallowed", "Ingestion"),
                Sentences.swallowed(draft));
        aid(
                draft,
                Route.SKIN,
                european ? "Skin contact" : draft.pick("If on skin or clothing", "Skin contact", "Skin"),
                Sentences.skin(draft));
        aid(
                draft,
                Route.EYES,
                european ? "Eye contact" : draft.pick("If in eyes", "Eye contact", "Eyes"),
                Sentences.eyes(draft));
        aid(
                draft,
                Route.INHALED,
                european ? "Inhalation" : draft.pick("If inhaled", "Inhalation"),
                Sentences.inhaled(draft));
        if (european) {
            draft.subheading("4.2 Most important symptoms and effects, both acute and delayed");
            draft.paragraph("No information available.");
        }
        draft.pair(
                draft.pick("Note to physician", "Notes to physician"),
                "Treat according to the symptoms; there is no specific antidote.");
    }

    private static void aid(Draft draft, Route route, String label, String text) {
        draft.pair(label, text);
        draft.truth(ValueKind.FIRST_AID, new Content.FirstAid(route, text));
    }

    static void fire(Draft draft) {
        text(
                draft,
                ValueKind.EXTINGUISHING_MEDIA,
                draft.pick("Extinguishing media", "Suitable extinguishing media"),
                Sentences.media(draft));
        draft.pair(
                draft.pick("Unusual fire and explosion hazards", "Specific hazards"), "Fire may give off toxic fumes.");
        text(
                draft,
                ValueKind.FIRE_FIGHTING,
                draft.pick(
                        "Advice for firefighters",
                        "Fire fighting procedures",
                        "Special protective equipment for firefighters"),
                Sentences.fire(draft));
    }

    static void release(Draft draft) {
        if (draft.house.wording() == Wording.EU) {
            draft.pair(
                    "6.1 Personal precautions, protective equipment and emergency procedures",
                    "Use personal protective equipment.");
            text(
                    draft,
                    ValueKind.SPILL,
                    "6.3 Methods and material for containment and cleaning up",
                    Sentences.spill(draft));
            draft.pair("6.4 Reference to other sections", "See also sections 8 and 13.");
            return;
        }
        if (draft.chance(2)) {
            text(
                    draft,
                    ValueKind.SPILL,
                    draft.pick("Methods for clean-up", "Spill clean-up", "In case of spill or leak"),
                    Sentences.spill(draft));
        } else {
            String text = Sentences.spill(draft);
            draft.paragraph(text);
            draft.truth(ValueKind.SPILL, new Content.Text(text));
        }
    }

    static void handling(Draft draft) {
        boolean european = draft.house.wording() == Wording.EU;
        text(
                draft,
                ValueKind.HANDLING,
                european ? "7.1 Precautions for safe handling" : draft.pick("Handling", "Safe handling advice"),
                Sentences.handling(draft));
        text(
                draft,
                ValueKind.STORAGE,
                european
                        ? "7.2 Conditions for safe storage, including any incompatibilities"
                        : draft.pick("Storage", "Storage conditions"),
                Sentences.storage(draft));
    }

    static void protection(Draft draft) {
        protect(draft, BodyPart.EYES, draft.pick("Eye protection", "Eye/face protection"), Sentences.eyewear(draft));
        protect(
                draft,
                BodyPart.HANDS,
                draft.pick("Hand protection", "Gloves", "Protective gloves"),
                Sentences.gloves(draft));
        protect(
                draft,
                BodyPart.SKIN,
                draft.pick("Skin and body protection", "Protective clothing", "Body protection"),
                Sentences.clothes(draft));
        protect(draft, BodyPart.BREATHING, draft.pick("Respiratory protection", "Respirator"), Sentences.mask(draft));
    }

    private static void protect(Draft draft, BodyPart part, String label, String text) {
        draft.pair(label, text);
        draft.truth(ValueKind.PROTECTION, new Content.Protection(part, text));
    }

    static void stability(Draft draft) {
        boolean european = draft.house.wording() == Wording.EU;
        if (european) {
            draft.pair("10.1 Reactivity", "No hazardous reactions when stored and handled as told.");
        }
        text(
                draft,
                ValueKind.CHEMICAL_STABILITY,
                european ? "10.2 Chemical stability" : draft.pick("Stability", "Chemical stability"),
                Sentences.stable(draft));
        draft.pair(european ? "10.4 Conditions to avoid" : "Conditions to avoid", "Heat, flames and sparks.");
        text(
                draft,
                ValueKind.INCOMPATIBLES,
                european
                        ? "10.5 Incompatible materials"
                        : draft.pick("Incompatible materials", "Incompatibility", "Materials to avoid"),
                Sentences.avoid(draft));
        draft.pair(
                european ? "10.6 Hazardous decomposition products" : "Hazardous decomposition products",
                "Oxides of carbon and nitrogen.");
    }

    static void disposal(Draft draft) {
        String text = Sentences.disposal(draft);
        if (draft.house.wording() == Wording.EU || draft.chance(2)) {
            text(draft, ValueKind.DISPOSAL, draft.pick("Waste disposal", "Waste treatment methods", "Disposal"), text);
        } else {
            draft.paragraph(text);
            draft.truth(ValueKind.DISPOSAL, new Content.Text(text));
        }
    }

    private static void text(Draft draft, ValueKind kind, String label, String text) {
        draft.pair(label, text);
        draft.truth(kind, new Content.Text(text));
    }
}
