package plumbrow.science.reference;

import java.util.Arrays;
import java.util.Optional;
import plumbrow.science.safety.VapourPressure;

/** What is kept of an active ingredient, with its units and what is physically possible (bounds: our own, generous). */
@SuppressWarnings("ImmutableEnumChecker") // a measure is a record of fixed lists
public enum Property {
    GROUP_NUMBER(Measure.code("group_number", "group of action", "WSSA/HRAC", "IRAC", "FRAC")),
    MOLECULAR_WEIGHT(Measure.of("molecular_weight", "molar mass", 50, 2000, "g/mol")),
    VAPOUR_PRESSURE(Measure.of("vapour_pressure", "vapour pressure", 1e-15, 1e7, "mPa", "mmHg")),
    WATER_SOLUBILITY(Measure.of("water_solubility", "solubility in water", 1e-7, 5e6, "mg/L")),
    KOC(Measure.of("koc", "sorption to organic carbon, Koc", .01, 1e8, "mL/g")),
    FIELD_HALF_LIFE(Measure.of("field_half_life", "half-life in the field", .01, 10_000, "d")),
    SOIL_HALF_LIFE(Measure.of("soil_half_life_lab_aerobic", "half-life in soil, laboratory", .01, 10_000, "d")),
    RAT_ORAL(toxicity("rat_oral_ld50", "half-lethal dose by mouth, rat", "mg/kg")),
    RAT_DERMAL(toxicity("rat_dermal_ld50", "half-lethal dose on the skin, rat", "mg/kg")),
    RABBIT_DERMAL(toxicity("rabbit_dermal_ld50", "half-lethal dose on the skin, rabbit", "mg/kg")),
    INHALATION(toxicity("inhalation_lc50", "half-lethal concentration in air", "mg/L")),
    BOBWHITE_ORAL(toxicity("bobwhite_oral_ld50", "half-lethal dose by mouth, bobwhite quail", "mg/kg")),
    MALLARD_ORAL(toxicity("mallard_oral_ld50", "half-lethal dose by mouth, mallard", "mg/kg")),
    QUAIL_ORAL(toxicity("japanese_quail_oral_ld50", "half-lethal dose by mouth, Japanese quail", "mg/kg")),
    TROUT(toxicity("rainbow_trout_lc50_96h", "half-lethal concentration, rainbow trout, 96 h", "mg/L")),
    DAPHNIA(toxicity("daphnia_ec50_48h", "half-effect concentration, Daphnia, 48 h", "mg/L")),
    BEE_CONTACT(toxicity("honeybee_contact_ld50", "half-lethal dose by contact, honey bee", "ug/bee")),
    BEE_ORAL(toxicity("honeybee_oral_ld50", "half-lethal dose by mouth, honey bee", "ug/bee"));

    private static final double PA_PER_MILLIPASCAL = .001;

    private final Measure measure;

    Property(Measure measure) {
        this.measure = measure;
    }

    private static Measure toxicity(String key, String words, String unit) {
        return Measure.of(key, words, 1e-7, 1e6, unit);
    }

    public static Optional<Property> find(String key) {
        return Arrays.stream(values())
                .filter(property -> property.measure.key().equals(key))
                .findFirst();
    }

    public Measure measure() {
        return measure;
    }

    /** Whether a lower number is the more poisonous. */
    public boolean toxicity() {
        return compareTo(RAT_ORAL) >= 0;
    }

    /** The unit in which values of this are compared and shown together. */
    public String unit() {
        return measure.units().get(0);
    }

    /** A value of this in {@link #unit()}; only vapour pressures come in two. */
    static Bound inFirstUnit(Measure measure, Bound value, String unit) {
        return measure.equals(VAPOUR_PRESSURE.measure)
                        && !unit.equals(measure.units().get(0))
                ? value.times(VapourPressure.pascalsPer(unit) / PA_PER_MILLIPASCAL)
                : value;
    }
}
