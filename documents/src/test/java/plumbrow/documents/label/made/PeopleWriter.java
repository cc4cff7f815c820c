package plumbrow.documents.label.made;

import java.util.ArrayList;
import java.util.List;
import plumbrow.documents.label.LabelContent;
import plumbrow.documents.label.LabelKind;
import plumbrow.documents.label.Task;
import plumbrow.documents.sheet.Route;

/** First aid and protective equipment. */
final class PeopleWriter {
    private static final List<String> GEAR = List.of(
            "Long-sleeved shirt and long pants",
            "Shoes plus socks",
            "Chemical-resistant gloves made of barrier laminate or nitrile rubber",
            "Protective eyewear",
            "Chemical-resistant apron",
            "Coveralls over short-sleeved shirt and short pants",
            "Waterproof gloves",
            "A NIOSH-approved respirator with an organic vapor cartridge");

    private PeopleWriter() {}

    static void write(Draft draft) {
        aid(draft);
        draft.heading("Precautionary Statements");
        draft.blocks.add(new Block.Subheading("Hazards to Humans and Domestic Animals"));
        draft.paragraph(
                "Harmful if swallowed. Causes moderate eye irritation. Avoid contact with skin, eyes or clothing."
                        + " Wash hands before eating, drinking, chewing gum or using tobacco.");
        draft.heading(draft.pick("Personal Protective Equipment (PPE)", "Personal Protective Equipment"));
        gear(draft, Task.HANDLERS, "Applicators and other handlers must wear:", 3);
        if (draft.chance(2)) {
            gear(
                    draft,
                    Task.MIXERS,
                    draft.pick("Mixers and loaders must also wear:", "In addition, all mixers and loaders must wear:"),
                    2);
        }
        draft.heading("User Safety Recommendations");
        draft.paragraph(
                "Users should wash hands before eating and remove clothing at once if the product gets inside.");
    }

    static void gear(Draft draft, Task task, String lead, int most) {
        List<String> items = new ArrayList<>();
        int count = 1 + draft.random.nextInt(most);
        while (items.size() < count) {
            String item = GEAR.get(draft.random.nextInt(GEAR.size()));
            if (!items.contains(item)) {
                items.add(item);
            }
        }
        items.forEach(item -> draft.truth(LabelKind.GEAR, new LabelContent.Gear(task, item)));
        if (draft.layout.gear() == Layout.Gear.BULLETS) {
            draft.paragraph(lead);
            draft.bullets(items);
        } else {
            StringBuilder list = new StringBuilder(lead.replaceAll(":$", ""));
            for (int i = 0; i < items.size(); i++) {
                String small = items.get(i).substring(0, 1).toLowerCase(java.util.Locale.ROOT)
                        + items.get(i).substring(1);
                small = small.startsWith("a NIOSH") ? "a NIOSH" + small.substring(7) : small;
                list.append(i == 0 ? " " : i == items.size() - 1 ? ", and " : ", ")
                        .append(small);
            }
            draft.paragraph(list + ".");
        }
    }

    private static void aid(Draft draft) {
        draft.heading("First Aid");
        List<List<String>> rows = new ArrayList<>();
        add(
                draft,
                rows,
                Route.SWALLOWED,
                "If swallowed",
                "Call a poison control center or doctor immediately for treatment advice. Do not induce vomiting unless told to do so.");
        add(
                draft,
                rows,
                Route.EYES,
                draft.pick("If in eyes", "If in the eyes"),
                "Hold eye open and rinse slowly and gently with water for 15 to 20 minutes. Remove contact lenses, if present, after the first 5 minutes.");
        add(
                draft,
                rows,
                Route.SKIN,
                "If on skin or clothing",
                "Take off contaminated clothing. Rinse skin immediately with plenty of water for 15 to 20 minutes.");
        if (draft.chance(2)) {
            add(
                    draft,
                    rows,
                    Route.INHALED,
                    "If inhaled",
                    "Move person to fresh air. If person is not breathing, call 911, then give artificial respiration.");
        }
        if (draft.layout.aid() == Layout.Aid.TABLE) {
            draft.blocks.add(new Block.Table(List.of(26, 74), List.of(), rows));
        } else {
            rows.forEach(row -> draft.paragraph(row.get(0) + row.get(1)));
        }
        draft.paragraph(
                "HOT LINE NUMBER: For emergencies call 1-800-555-0147. Have the product container or label with you.");
        draft.text(LabelKind.TELEPHONE, "1-800-555-0147");
    }

    private static void add(Draft draft, List<List<String>> rows, Route route, String lead, String text) {
        rows.add(List.of(lead + (draft.layout.aid() == Layout.Aid.TABLE ? draft.pick(":", "") : ": "), text));
        draft.truth(LabelKind.FIRST_AID, new LabelContent.FirstAid(route, text));
    }
}
