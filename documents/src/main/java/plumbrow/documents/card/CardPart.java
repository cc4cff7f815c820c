package plumbrow.documents.card;

import java.util.Locale;

/** The parts of a card, in the order in which somebody at the jug asks. */
public enum CardPart {
    FIRST_AID("First aid and who to call"),
    WEAR("Protective equipment (PPE)"),
    SPILL("If it spills"),
    IDENTITY("What it is"),
    GROUPS("Site-of-action groups"),
    ACUTE("How poisonous at once"),
    STORAGE("Storing it"),
    SHIPPING("Hauling it"),
    VAPOUR("Lost as vapour"),
    WATER("Leaching and runoff"),
    WILDLIFE("Birds, fish, bees"),
    EVERYDAY("Beside everyday substances"),
    PAPERS("How good the papers are");

    private final String title;

    CardPart(String title) {
        this.title = title;
    }

    public String title() {
        return title;
    }

    /** A name for links: "first-aid". */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
