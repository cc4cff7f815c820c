package plumbrow.documents.sheet.made;

import java.util.Arrays;
import java.util.List;
import plumbrow.documents.sheet.SheetSection;

/** The words of a house for sections. */
enum Wording {
    OSHA(
            false,
            "Identification",
            "Hazard(s) identification",
            "Composition/information on ingredients",
            "First-aid measures",
            "Fire-fighting measures",
            "Accidental release measures",
            "Handling and storage",
            "Exposure controls/personal protection",
            "Physical and chemical properties",
            "Stability and reactivity",
            "Toxicological information",
            "Ecological information",
            "Disposal considerations",
            "Transport information",
            "Regulatory information",
            "Other information"),
    OLD(
            true,
            "Chemical Product and Company Identification",
            "Hazards Identification",
            "Composition / Information on Ingredients",
            "First Aid Measures",
            "Fire Fighting Measures",
            "Accidental Release Measures",
            "Handling and Storage",
            "Exposure Controls, Personal Protection",
            "Physical & Chemical Properties",
            "Stability & Reactivity",
            "Toxicology Information",
            "Ecological Information",
            "Disposal Considerations",
            "Transportation Information",
            "Regulatory Information",
            "Other Information"),
    EU(
            false,
            "Identification of the substance/mixture and of the company/undertaking",
            "Hazards identification",
            "Composition/information on ingredients",
            "First aid measures",
            "Firefighting measures",
            "Accidental release measures",
            "Handling and storage",
            "Exposure controls/personal protection",
            "Physical and chemical properties",
            "Stability and reactivity",
            "Toxicological information",
            "Ecological information",
            "Disposal considerations",
            "Transport information",
            "Regulatory information",
            "Other information"),
    FARM(
            true,
            "Product and Company Information",
            "Hazard Summary",
            "Ingredients",
            "First Aid",
            "Fire and Explosion Data",
            "Spill or Leak Procedures",
            "Storage and Handling",
            "Exposure Controls and Personal Protective Equipment",
            "Physical Data",
            "Reactivity Data",
            "Toxicity Data",
            "Environmental Information",
            "Waste Disposal",
            "Shipping Information",
            "Regulations",
            "Additional Information");

    private static final List<String> SPANISH = List.of(
            "Identificación",
            "Identificación de los peligros",
            "Composición/información sobre los componentes",
            "Primeros auxilios",
            "Medidas de lucha contra incendios",
            "Medidas en caso de vertido accidental",
            "Manipulación y almacenamiento",
            "Controles de exposición/protección individual",
            "Propiedades físicas y químicas",
            "Estabilidad y reactividad",
            "Información toxicológica",
            "Información ecológica",
            "Consideraciones relativas a la eliminación",
            "Información relativa al transporte",
            "Información reglamentaria",
            "Otra información");
    private static final List<String> FRENCH = List.of(
            "Identification du produit",
            "Identification des dangers",
            "Composition/informations sur les composants",
            "Premiers secours",
            "Mesures de lutte contre l'incendie",
            "Mesures à prendre en cas de dispersion accidentelle",
            "Manipulation et stockage",
            "Contrôles de l'exposition/protection individuelle",
            "Propriétés physiques et chimiques",
            "Stabilité et réactivité",
            "Informations toxicologiques",
            "Informations écologiques",
            "Considérations relatives à l'élimination",
            "Informations relatives au transport",
            "Informations réglementaires",
            "Autres informations");

    private final boolean compositionSecond;

    @SuppressWarnings("ImmutableEnumChecker") // never changed
    private final List<String> titles;

    Wording(boolean compositionSecond, String... titles) {
        this.compositionSecond = compositionSecond;
        this.titles = List.of(titles);
    }

    String title(SheetSection section) {
        return titles.get(section.number() - 1);
    }

    static String spanish(SheetSection section) {
        return SPANISH.get(section.number() - 1);
    }

    static String french(SheetSection section) {
        return FRENCH.get(section.number() - 1);
    }

    /** The section at a place from 1 to 16; older sheets have the ingredients second. */
    SheetSection at(int place) {
        int number = compositionSecond && (place == 2 || place == 3) ? 5 - place : place;
        return Arrays.stream(SheetSection.values())
                .filter(each -> each.number() == number)
                .findFirst()
                .orElseThrow();
    }
}
