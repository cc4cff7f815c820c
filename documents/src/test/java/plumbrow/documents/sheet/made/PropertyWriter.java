package plumbrow.documents.sheet.made;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import plumbrow.documents.sheet.Amount;
import plumbrow.documents.sheet.Amount.Conditions;
import plumbrow.documents.sheet.Amount.Qualifier;
import plumbrow.documents.sheet.Content;
import plumbrow.documents.sheet.ValueKind;

/** Section 9, its properties in any order and among others that are not asked for. */
final class PropertyWriter {
    private PropertyWriter() {}

    static void write(Draft draft) {
        List<Runnable> lines = new ArrayList<>(List.of(
                () -> vapour(draft),
                () -> temperature(
                        draft,
                        ValueKind.BOILING_POINT,
                        draft.pick(
                                "Boiling point",
                                "Initial boiling point and boiling range",
                                "Boiling point/boiling range"),
                        draft.product.boilingC(),
                        false),
                () -> temperature(
                        draft,
                        ValueKind.FLASH_POINT,
                        draft.pick("Flash point", "Flashpoint", "Flash Point"),
                        draft.product.flashC(),
                        true),
                () -> density(draft),
                () -> ph(draft),
                () -> solubility(draft),
                () -> partition(draft),
                () -> draft.pair(
                        "Appearance", draft.pick("Tan liquid", "White to off-white suspension", "Clear amber liquid")),
                () -> draft.pair("Odor", "Faint, aromatic"),
                () -> draft.pair(
                        draft.pick("Melting point", "Freezing point", "Melting/freezing point"),
                        draft.house.digits().of(-12) + " °C"),
                () -> evaporation(draft),
                () -> limits(draft),
                () -> volatiles(draft),
                () -> draft.pair(
                        draft.pick("Vapour density", "Vapor density (air = 1)"),
                        draft.pick("> 1", "Not available", "heavier than air")),
                () -> draft.pair("Viscosity", draft.house.digits().of(312) + " mPa·s at 20 °C"),
                () -> draft.pair(draft.pick("Auto-ignition temperature", "Autoignition temperature"), "> 400 °C")));
        Collections.shuffle(lines, draft.random);
        lines.forEach(Runnable::run);
    }

    private static void evaporation(Draft draft) {
        if (draft.chance(2)) {
            draft.pair("Evaporation rate", draft.nothing());
            draft.noData(ValueKind.EVAPORATION_RATE);
        } else {
            String words = draft.pick("Slower than ether", "Slow", "Faster than butyl acetate");
            draft.pair(draft.pick("Evaporation rate", "Relative evaporation rate (butyl acetate = 1)"), words);
            draft.truth(ValueKind.EVAPORATION_RATE, new Content.Text(words));
        }
    }

    private static void limits(Draft draft) {
        if (draft.chance(2)) {
            return;
        }
        double low = 1 + draft.random.nextInt(20) / 10.0;
        double high = low + 5 + draft.random.nextInt(40) / 10.0;
        limit(
                draft,
                ValueKind.LOWER_EXPLOSIVE_LIMIT,
                draft.pick("Lower explosive limit", "Lower flammability limit"),
                low);
        limit(
                draft,
                ValueKind.UPPER_EXPLOSIVE_LIMIT,
                draft.pick("Upper explosive limit", "Upper flammability limit"),
                high);
    }

    private static void limit(Draft draft, ValueKind kind, String label, double percent) {
        double rounded = Math.round(percent * 10) / 10.0;
        draft.pair(label, draft.house.digits().of(rounded) + draft.pick(" %", "%", " % (v)"));
        draft.truth(kind, new Content.Measured(Draft.amount(Qualifier.EXACTLY, rounded, "%", null, null)));
    }

    private static void volatiles(Draft draft) {
        if (!draft.house.american() || draft.chance(2)) {
            return;
        }
        int percent = 1 + draft.random.nextInt(60);
        draft.pair(draft.pick("VOC content", "Volatile organic compounds (VOC)", "VOC"), "< " + percent + " %");
        draft.truth(ValueKind.VOC, new Content.Measured(Draft.amount(Qualifier.LESS_THAN, percent, "%", null, null)));
    }

    private static boolean missing(Draft draft, ValueKind kind, String label) {
        if (draft.chance(12)) {
            return true;
        }
        if (draft.chance(6)) {
            draft.pair(label, draft.nothing());
            draft.noData(kind);
            return true;
        }
        return false;
    }

    private static void vapour(Draft draft) {
        String label = draft.pick("Vapour pressure", "Vapor pressure", "Vapor Pressure");
        if (missing(draft, ValueKind.VAPOUR_PRESSURE, label)) {
            return;
        }
        String unit = draft.house.pressure();
        double per = switch (unit) {
            case "mm Hg", "mmHg", "torr" -> 133.322;
            case "hPa", "mbar" -> 100;
            case "kPa" -> 1000;
            case "mPa" -> .001;
            default -> 1;
        };
        double value = draft.product.vapourPa() / per;
        int exponent = (int) Math.floor(Math.log10(value));
        double mantissa = Math.round(value / Math.pow(10, exponent) * 10) / 10.0;
        boolean power = exponent < -2 && draft.house.power() != Digits.Power.NONE;
        String number = power
                ? draft.house.digits().power(mantissa, exponent, draft.house.power())
                : draft.house.digits().of(mantissa * Math.pow(10, exponent));
        Qualifier qualifier = draft.chance(4) ? Qualifier.LESS_THAN : Qualifier.EXACTLY;
        int celsius = draft.chance(2) ? 20 : 25;
        String text = draft.sign(qualifier) + number + " " + unit;
        if (!power && draft.house.digits().doubtful(mantissa * Math.pow(10, exponent))) {
            draft.pair(label, draft.sign(qualifier) + number + " " + unit);
            draft.unclear(ValueKind.VAPOUR_PRESSURE);
            return;
        }
        boolean ahead = draft.chance(4);
        String at = draft.pick(" at " + celsius + " °C", " @ " + celsius + "°C", " (" + celsius + " °C)");
        draft.pair(ahead ? label + " (" + celsius + " °C)" : label, ahead ? text : text + at);
        String canonical = unit.equals("mm Hg") ? "mmHg" : unit;
        draft.truth(
                ValueKind.VAPOUR_PRESSURE,
                new Content.Measured(
                        Draft.amount(qualifier, mantissa * Math.pow(10, exponent), canonical, (double) celsius, null)));
    }

    private static void temperature(Draft draft, ValueKind kind, String label, double celsius, boolean flash) {
        if (missing(draft, kind, label)) {
            return;
        }
        boolean fahrenheit = draft.house.fahrenheit();
        double value = fahrenheit ? Math.round(celsius * 1.8 + 32) : celsius;
        double other = fahrenheit ? celsius : Math.round((celsius * 1.8 + 32) * 10) / 10.0;
        Qualifier qualifier = draft.chance(4) ? Qualifier.MORE_THAN : Qualifier.EXACTLY;
        String unit = fahrenheit ? "°F" : "°C";
        String text = draft.sign(qualifier) + draft.house.digits().of(value) + draft.pick(" ", "") + unit;
        if (draft.chance(2)) {
            text += " (" + draft.sign(qualifier) + draft.house.digits().of(other) + " " + (fahrenheit ? "°C" : "°F")
                    + ")";
        }
        String method = "";
        if (flash && draft.chance(2)) {
            text += draft.pick(" closed cup", " (TCC)", ", Pensky-Martens closed cup", " Method: closed cup");
            method = "closed cup";
        }
        draft.pair(label, text);
        draft.truth(
                kind,
                new Content.Measured(new Amount(qualifier, value, value, unit, new Conditions(null, null, method))));
    }

    private static void density(Draft draft) {
        String unit = draft.house.density();
        boolean gravity = unit.equals("specific gravity");
        String label = gravity
                ? draft.pick("Specific gravity (water = 1)", "Specific gravity")
                : draft.pick("Density", "Relative density", "Liquid density");
        if (missing(draft, ValueKind.DENSITY, label)) {
            return;
        }
        double value = switch (unit) {
            case "lb/gal" -> Math.round(draft.product.density() * 834.5404) / 100.0;
            case "kg/m³" -> Math.rint(draft.product.density() * 1000);
            default -> draft.product.density();
        };
        Double celsius = draft.chance(2) ? 20.0 : null;
        String printed = unit.equals("lb/gal") ? draft.pick("lb/gal", "lbs/gal", "lbs./gallon", "lb per gal") : unit;
        String text = draft.house.digits().of(value)
                + (gravity ? "" : " " + printed)
                + (celsius == null ? "" : draft.pick(" at 20 °C", " (20 °C)", " @ 20°C"));
        draft.pair(label, text);
        String canonical = gravity ? "" : unit.startsWith("g/cm") ? "g/mL" : unit;
        draft.truth(
                ValueKind.DENSITY,
                new Content.Measured(Draft.amount(Qualifier.EXACTLY, value, canonical, celsius, null)));
    }

    private static void ph(Draft draft) {
        String label = draft.pick("pH", "pH value");
        if (missing(draft, ValueKind.PH, label)) {
            return;
        }
        double low = draft.product.ph();
        boolean range = draft.chance(2);
        double high = range ? low + 1 : low;
        high = Math.round(high * 10) / 10.0;
        String text = draft.house.digits().of(low)
                + (range
                        ? draft.pick(" - ", "-", " to ", "–")
                                + draft.house.digits().of(high)
                        : "");
        if (draft.chance(3)) {
            text += draft.pick(" (1% dispersion in water)", " (1 % solution)", " (10 g/L)");
        }
        draft.pair(label, text);
        draft.truth(
                ValueKind.PH,
                new Content.Measured(
                        new Amount(range ? Qualifier.RANGE : Qualifier.EXACTLY, low, high, "", Conditions.NONE)));
    }

    private static void solubility(Draft draft) {
        String label = draft.pick("Solubility in water", "Water solubility", "Solubility (water)");
        if (missing(draft, ValueKind.SOLUBILITY, label)) {
            return;
        }
        if (draft.chance(3)) {
            String words = draft.pick("Dispersible", "Miscible", "Soluble", "Emulsifies");
            draft.pair(label, words);
            draft.truth(ValueKind.SOLUBILITY, new Content.Text(words));
            return;
        }
        double value = draft.product.solubilityMgL();
        String unit = draft.pick("mg/L", "mg/l", "ppm");
        draft.pair(label, draft.house.digits().of(value) + " " + unit + draft.pick(" at 20 °C", " @ 20°C", " (20 °C)"));
        if (draft.house.digits().doubtful(value)) {
            draft.unclear(ValueKind.SOLUBILITY);
        } else {
            draft.truth(
                    ValueKind.SOLUBILITY,
                    new Content.Measured(
                            Draft.amount(Qualifier.EXACTLY, value, unit.equals("mg/l") ? "mg/L" : unit, 20.0, null)));
        }
    }

    private static void partition(Draft draft) {
        boolean inLabel = draft.chance(2);
        String label = inLabel
                ? draft.pick("Log Pow", "log Kow", "Partition coefficient (log Pow)")
                : draft.pick(
                        "Partition coefficient (n-octanol/water)",
                        "Partition coefficient: n-octanol/water",
                        "Octanol/water partition coefficient");
        if (missing(draft, ValueKind.PARTITION, label)) {
            return;
        }
        String number = draft.house.digits().of(draft.product.logKow());
        draft.pair(label, inLabel ? number : draft.pick("log Kow ", "log Pow: ", "log Pow = ") + number);
        draft.truth(
                ValueKind.PARTITION,
                new Content.Measured(Draft.amount(Qualifier.EXACTLY, draft.product.logKow(), "", null, null)));
    }
}
