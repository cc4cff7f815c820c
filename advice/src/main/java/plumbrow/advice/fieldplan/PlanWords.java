package plumbrow.advice.fieldplan;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import plumbrow.science.figure.Numbers;

/** A field plan in words, the same on screen, paper and terminal. */
final class PlanWords {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE, MMM d", Locale.US);
    private static final DateTimeFormatter SHORT = DateTimeFormatter.ofPattern("MMM d", Locale.US);
    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("EEE, MMM d, HH:mm", Locale.US);

    private PlanWords() {}

    static String day(LocalDate day) {
        return DAY.format(day);
    }

    static String date(LocalDate day) {
        return SHORT.format(day);
    }

    static String window(FieldPlan.Window window) {
        LocalDate from = window.from();
        LocalDate to = window.to();
        String days;
        if (from != null && from.equals(to)) {
            days = SHORT.format(from) + " only";
        } else if (from != null) {
            days = SHORT.format(from) + (to == null ? " or later" : " to " + SHORT.format(to));
        } else {
            days = to == null ? "" : "until " + SHORT.format(to);
        }
        String ends = window.ends();
        String first = days.isEmpty() ? ends : days + (ends.isEmpty() ? "" : ", " + ends);
        String other = window.other().isEmpty() ? "" : "on another day look first: " + window.other();
        return first + (first.isEmpty() || other.isEmpty() ? "" : "; ") + other;
    }

    static String entry(FieldPlan.Put put) {
        Integer hours = put.reentryHours();
        LocalDateTime until = put.entryFrom();
        if (hours == null) {
            return "unknown how long nobody may go in: read every label";
        }
        if (hours == 0) {
            return "no restricted-entry interval";
        }
        return "nobody in for " + hours + " h"
                + (until == null ? " after it" : ", until " + MOMENT.format(until) + " at the latest");
    }

    static String harvest(FieldPlan.Put put) {
        Integer days = put.preHarvestDays();
        LocalDate from = put.harvestFrom();
        if (days == null) {
            return "days before harvest unknown: read the label";
        }
        if (days == 0) {
            return "";
        }
        String asked = days == 1 ? "1 day" : days + " days";
        return from == null
                ? asked + " before harvest"
                : "harvest " + SHORT.format(from) + " or later (" + asked + " before harvest)";
    }

    static String spray(FieldPlan.Put put) {
        List<String> parts = new ArrayList<>();
        Double gallons = put.carrierGpa();
        if (gallons != null) {
            parts.add(Numbers.plain(gallons) + " gal/ac");
        } else if (put.sprayed()) {
            parts.add("gallons not planned");
        }
        if (!put.droplets().isEmpty()) {
            parts.add("droplets " + put.droplets());
        }
        String nozzle = put.nozzle();
        if (nozzle != null) {
            parts.add(nozzle);
        } else if (put.sprayed()) {
            parts.add("no nozzle on file is known to fit");
        }
        return String.join("; ", parts);
    }

    static String keep(FieldPlan.Keep keep) {
        Double acres = keep.acres();
        Double lies = keep.lies();
        String strip = lies == null
                ? "how far it lies is unknown, measure it"
                : lies > 0
                        ? "leave the outer " + Numbers.read(keep.feet() - lies) + " ft of the field on that side"
                        : "leave all that lies nearer";
        return Numbers.read(keep.feet()) + " ft from " + keep.from()
                + (keep.downwindOnly() ? " while the wind blows towards it" : "") + ": " + strip
                + (acres == null
                        ? ""
                        : ", " + Numbers.fixed(Math.max(0.1, Math.ceil(acres * 10 - 1e-9) / 10), 1) + " ac")
                + " (" + String.join(", ", keep.products()) + ")";
    }
}
