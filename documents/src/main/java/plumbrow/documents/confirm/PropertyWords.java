package plumbrow.documents.confirm;

import java.util.Map;

/** What a property of a row is called, and its unit. */
record PropertyWords(String title, String unit) {
    private static final Map<String, PropertyWords> KNOWN = Map.ofEntries(
            one("lowRate", "Lowest rate", "/ac"),
            one("highRate", "Highest rate", "/ac"),
            one("seasonMax", "Most in a season", "/ac"),
            one("mostApplications", "Most applications in a season", ""),
            one("preHarvestDays", "Days before harvest", "days"),
            one("reentryHours", "Restricted-entry interval (REI)", "h"),
            one("daysBetween", "Days between applications", "days"),
            one("grazingDays", "Days before grazing", "days"),
            one("feedingForbidden", "Must not be grazed or fed", ""),
            one("earliestStage", "Earliest growth stage", ""),
            one("latestStage", "Latest growth stage", ""),
            one("highestCropIn", "Tallest crop", "in"),
            one("highestWeedIn", "Tallest weed", "in"),
            one("methods", "Ways of application", ""),
            one("carrierLowGalPerAcre", "Least carrier volume", "gal/ac"),
            one("finest", "Finest droplets", ""),
            one("coarsest", "Coarsest droplets", ""),
            one("boomHighestIn", "Highest boom", "in"),
            one("windLowestMph", "Least wind", "mph"),
            one("windHighestMph", "Most wind", "mph"),
            one("warmestF", "Warmest air", "°F"),
            one("rainFreeHours", "Hours without rain after", "h"),
            one("pounds", "Active ingredient", "lb"),
            one("acidEquivalentRatio", "Acid in a pound of active", "lb/lb"),
            one("seasonMaxPounds", "Most in a season", "lb/ac"),
            one("feet", "Distance", "ft"),
            one("days", "Plant-back interval", "days"),
            one("word", "In the same tank", ""),
            one("restrictedUse", "Restricted use", ""),
            one("bulletin", "Endangered-species bulletin", ""),
            one("groundwater", "Ground-water warning", ""),
            one("bees", "Forbidden on bloom", ""),
            one("saturatedSoil", "Forbidden on saturated or frozen ground", ""),
            one("rainAheadHours", "Hours of rain ahead", "h"),
            one("wear", "What handlers wear", ""));

    private static Map.Entry<String, PropertyWords> one(String property, String title, String unit) {
        return Map.entry(property, new PropertyWords(title, unit));
    }

    static PropertyWords of(String property) {
        return KNOWN.getOrDefault(property, new PropertyWords(property, ""));
    }

    /** A value with its unit; empty stays empty. */
    String with(String value) {
        if (value.isEmpty() || unit.isEmpty() || value.equals("none")) {
            return value;
        }
        return unit.startsWith("/") ? value + unit : value + " " + unit;
    }
}
