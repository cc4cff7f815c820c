package plumbrow.science.safety;

import static plumbrow.science.figure.Input.word;
import static plumbrow.science.figure.Status.VERIFIED;

import java.util.List;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * What a handler wears at the least, by the categories of the product.
 *
 * Coveralls and chemical-resistant footwear from category II on the skin, gloves from III, respirator and eyewear from II.
 *
 * Source: 40 CFR 156.212(e), table of the edition of 2015.
 */
public final class HandlerEquipment {
    private static final List<String> CATEGORIES = List.of("I", "II", "III", "IV");

    public static final Figure FIGURE = Figure.declare("handler-equipment", Subject.SAFETY)
            .question("What must a handler wear at the least, by the product's categories?")
            .alsoAsked("Which protective equipment (PPE) does a handler need?")
            .input(word("skin", "Category on the skin, the more severe of dermal and irritation", CATEGORIES, "II"))
            .input(word("inhalation", "Category in the lungs", CATEGORIES, "III"))
            .input(word("eye", "Category of eye irritation", CATEGORIES, "II"))
            .output("body", "Body", "")
            .output("feet", "Feet", "")
            .output("hands", "Hands", "")
            .output("lungs", "Lungs", "")
            .output("eyes", "Eyes", "")
            .output("items", "Items beyond shirt, trousers, shoes and socks", "")
            .formula("table of 40 CFR 156.212(e) by category")
            .source("[40-cfr-156.212], (e)", VERIFIED)
            .validity("The federal least for a new label, table of the edition of 2015.")
            .caution(
                    "The label's own list is the law: wear the more protective of each item, for mixtures of all products.")
            .example(
                    "skin=II inhalation=III eye=II",
                    "body=coveralls over short sleeves and short trousers feet=chemical-resistant footwear and socks hands=chemical-resistant gloves lungs=none eyes=protective eyewear items=4",
                    "[40-cfr-156.212], (e)",
                    VERIFIED)
            .example(
                    "skin=IV inhalation=I eye=IV",
                    "body=long sleeves and long trousers feet=shoes and socks hands=no minimum lungs=respirator eyes=none items=1",
                    "[40-cfr-156.212], (e)",
                    VERIFIED)
            .model(HandlerEquipment::solve);

    private HandlerEquipment() {}

    private static Outputs solve(Given given, Working working) {
        int skin = CATEGORIES.indexOf(given.word("skin"));
        boolean breathes = CATEGORIES.indexOf(given.word("inhalation")) <= 1;
        boolean sees = CATEGORIES.indexOf(given.word("eye")) <= 1;
        double coveralls = skin <= 1 ? 1 : 0;
        double footwear = skin <= 1 ? 1 : 0;
        double gloves = skin <= 2 ? 1 : 0;
        double lungs = breathes ? 1 : 0;
        double eyes = sees ? 1 : 0;
        double items = working.line(
                "items: coveralls, footwear, gloves, respirator, eyewear",
                coveralls + footwear + gloves + lungs + eyes,
                "",
                "{} + {} + {} + {} + {}",
                coveralls,
                footwear,
                gloves,
                lungs,
                eyes);
        return new Outputs()
                .put(
                        "body",
                        switch (skin) {
                            case 0 -> "coveralls over long sleeves and long trousers";
                            case 1 -> "coveralls over short sleeves and short trousers";
                            default -> "long sleeves and long trousers";
                        })
                .put("feet", skin <= 1 ? "chemical-resistant footwear and socks" : "shoes and socks")
                .put("hands", skin <= 2 ? "chemical-resistant gloves" : "no minimum")
                .put("lungs", breathes ? "respirator" : "none")
                .put("eyes", sees ? "protective eyewear" : "none")
                .put("items", items);
    }
}
