package plumbrow.documents.sheet;

import static plumbrow.documents.sheet.SheetSection.COMPOSITION;
import static plumbrow.documents.sheet.SheetSection.ECOLOGY;
import static plumbrow.documents.sheet.SheetSection.EXPOSURE;
import static plumbrow.documents.sheet.SheetSection.FIRE;
import static plumbrow.documents.sheet.SheetSection.HAZARDS;
import static plumbrow.documents.sheet.SheetSection.IDENTIFICATION;
import static plumbrow.documents.sheet.SheetSection.OTHER;
import static plumbrow.documents.sheet.SheetSection.PROPERTIES;
import static plumbrow.documents.sheet.SheetSection.REGULATION;
import static plumbrow.documents.sheet.SheetSection.RELEASE;
import static plumbrow.documents.sheet.SheetSection.TOXICOLOGY;
import static plumbrow.documents.sheet.SheetSection.TRANSPORT;

/**
 * What is read from a safety data sheet.
 *
 * A kind that is stated once is one where two differing statements contradict each other; of the others a sheet has as many
 * as it likes.
 */
public enum ValueKind {
    PRODUCT_NAME("Product name", IDENTIFICATION, true),
    REGISTRATION_NUMBER("EPA registration number", IDENTIFICATION, true),
    MAKER("Maker or supplier", IDENTIFICATION, false),
    ADDRESS("Address of the maker or supplier", IDENTIFICATION, false),
    EMERGENCY_PHONE("Emergency telephone", IDENTIFICATION, false),
    REVISION_DATE("Revision date", OTHER, true),
    ISSUE_DATE("Issue date", OTHER, true),
    SUPERSEDED_DATE("Supersedes the sheet of", OTHER, true),
    SIGNAL_WORD("Signal word (GHS)", HAZARDS, true),
    HAZARD_STATEMENT("Hazard statement", HAZARDS, false),
    PRECAUTION("Precaution", HAZARDS, false),
    INGREDIENT("Ingredient", COMPOSITION, false),
    FIRST_AID("First aid", SheetSection.FIRST_AID, false),
    EXTINGUISHING_MEDIA("Extinguishing media", FIRE, true),
    FIRE_FIGHTING("Advice for fire-fighters", FIRE, true),
    SPILL("Spill clean-up", RELEASE, true),
    REPORTABLE_QUANTITY("Reportable quantity", REGULATION, false),
    HANDLING("Handling", SheetSection.HANDLING, true),
    STORAGE("Storage", SheetSection.HANDLING, true),
    STORAGE_TEMPERATURE("Storage temperature", SheetSection.HANDLING, false),
    EXPOSURE_LIMIT("Exposure limit", EXPOSURE, false),
    PROTECTION("Protective equipment", EXPOSURE, false),
    VAPOUR_PRESSURE("Vapour pressure", PROPERTIES, true),
    BOILING_POINT("Boiling point", PROPERTIES, true),
    FLASH_POINT("Flash point", PROPERTIES, true),
    LOWER_EXPLOSIVE_LIMIT("Lower explosive limit", PROPERTIES, true),
    UPPER_EXPLOSIVE_LIMIT("Upper explosive limit", PROPERTIES, true),
    EVAPORATION_RATE("Evaporation rate", PROPERTIES, true),
    VOC("Volatile organic compounds", PROPERTIES, false),
    DENSITY("Density", PROPERTIES, true),
    PH("pH", PROPERTIES, true),
    SOLUBILITY("Solubility in water", PROPERTIES, true),
    PARTITION("Partition, octanol to water (log)", PROPERTIES, true),
    CHEMICAL_STABILITY("Stability", SheetSection.STABILITY, true),
    INCOMPATIBLES("Incompatible with", SheetSection.STABILITY, true),
    ACUTE_TOXICITY("Acute toxicity", TOXICOLOGY, false),
    ECOTOXICITY("Toxicity to wildlife", ECOLOGY, false),
    DISPOSAL("Disposal", SheetSection.DISPOSAL, true),
    UN_NUMBER("UN number", TRANSPORT, false),
    SHIPPING_NAME("Proper shipping name", TRANSPORT, false),
    TRANSPORT_CLASS("Transport class", TRANSPORT, false),
    PACKING_GROUP("Packing group", TRANSPORT, false),
    MARINE_POLLUTANT("Marine pollutant", TRANSPORT, false),
    REGULATORY_LIST("Regulatory list", REGULATION, false),
    LABEL_SIGNAL_WORD("Signal word of the label, as quoted", REGULATION, true);

    private final String title;
    private final SheetSection home;
    private final boolean statedOnce;

    ValueKind(String title, SheetSection home, boolean statedOnce) {
        this.title = title;
        this.home = home;
        this.statedOnce = statedOnce;
    }

    /** What a person calls it. */
    public String title() {
        return title;
    }

    /** The section it stands in on a sheet of today. */
    public SheetSection home() {
        return home;
    }

    /** Whether a sheet has one such value at most. */
    public boolean statedOnce() {
        return statedOnce;
    }
}
