package plumbrow.documents.label.made;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** An invented product of real active ingredients by their ISO common names; every number is made up. */
record Pesticide(
        String name,
        String registration,
        String establishment,
        String kind,
        boolean dry,
        List<Active> actives,
        List<Use> uses) {

    /**
     * @param percent share [%]
     * @param pounds in a gallon [lb/gal]
     */
    record Active(String name, String group, double percent, double pounds, boolean acid) {}

    /** A crop with its rates. */
    record Use(
            String crop,
            String unit,
            double low,
            double high,
            double season,
            int times,
            int apart,
            int harvest,
            int feed) {}

    private record Known(String name, String group, String kind, boolean acid) {}

    private static final List<Known> KNOWN = List.of(
            new Known("Atrazine", "5", "herbicide", false),
            new Known("S-metolachlor", "15", "herbicide", false),
            new Known("Mesotrione", "27", "herbicide", false),
            new Known("Glyphosate", "9", "herbicide", true),
            new Known("Dicamba", "4", "herbicide", true),
            new Known("2,4-D", "4", "herbicide", true),
            new Known("Pendimethalin", "3", "herbicide", false),
            new Known("Bifenthrin", "3A", "insecticide", false),
            new Known("Chlorantraniliprole", "28", "insecticide", false),
            new Known("Imidacloprid", "4A", "insecticide", false),
            new Known("Azoxystrobin", "11", "fungicide", false),
            new Known("Tebuconazole", "3", "fungicide", false));
    private static final List<String> FIRST =
            List.of("Meadow", "Barrow", "Quarry", "Willow", "Kestrel", "Ridge", "Hollow", "Bramble", "Tansy", "Heron");
    private static final List<String> SECOND = List.of("gate", "stone", "wick", "brook", "spur", "mark", "fold", "run");
    private static final List<String> FORMS = List.of("4L", "4 EC", "480 SL", "Plus", "500 SC", "XTR");
    private static final List<String> CROPS = List.of(
            "Corn", "Field corn", "Soybeans", "Wheat", "Grain sorghum", "Winter wheat", "Field corn and seed corn");

    static Pesticide invent(Random random) {
        Known lead = KNOWN.get(random.nextInt(KNOWN.size()));
        List<Active> actives = new ArrayList<>();
        actives.add(active(lead, random));
        for (Known other : KNOWN) {
            boolean fits =
                    other.kind.equals(lead.kind) && !other.group.equals(lead.group) && !other.name.equals(lead.name);
            if (fits && actives.size() < 2 && random.nextInt(5) == 0) {
                actives.add(active(other, random));
            }
        }
        boolean dry = random.nextInt(4) == 0;
        List<Use> uses = new ArrayList<>();
        List<String> pool = new ArrayList<>(CROPS);
        String unit = dry ? "oz" : List.of("fl oz", "fl oz", "pt", "qt").get(random.nextInt(4));
        int count = 2 + random.nextInt(2);
        while (uses.size() < count) {
            String crop = pool.remove(random.nextInt(pool.size()));
            pool.removeIf(other -> other.toLowerCase(java.util.Locale.ROOT)
                            .contains(crop.toLowerCase(java.util.Locale.ROOT).replaceAll(".*\\s", ""))
                    || (crop.contains("orn") && other.contains("orn")));
            uses.add(use(crop, unit, random));
        }
        String name = FIRST.get(random.nextInt(FIRST.size())) + SECOND.get(random.nextInt(SECOND.size())) + " "
                + FORMS.get(random.nextInt(FORMS.size()));
        return new Pesticide(
                name,
                (10000 + random.nextInt(80000)) + "-" + (1 + random.nextInt(900)),
                (10000 + random.nextInt(80000)) + "-"
                        + List.of("IA", "IL", "NE", "MO").get(random.nextInt(4)) + "-" + (1 + random.nextInt(9)),
                lead.kind,
                dry,
                actives,
                uses);
    }

    private static Active active(Known known, Random random) {
        double percent = Math.round((3 + random.nextDouble() * 40) * 10) / 10.0;
        double pounds = Math.round((.5 + random.nextDouble() * 4) * 100) / 100.0;
        return new Active(known.name, known.group, percent, pounds, known.acid);
    }

    private static Use use(String crop, String unit, Random random) {
        boolean large = unit.equals("fl oz") || unit.equals("oz");
        double step = large ? 1 : .25;
        double low = large ? 4 + random.nextInt(28) : .5 + random.nextInt(6) * .25;
        double high = low + step * random.nextInt(6);
        int times = 1 + random.nextInt(3);
        return new Use(
                crop,
                unit,
                low,
                high,
                Math.round(high * (times + random.nextInt(2)) * 4) / 4.0,
                times,
                List.of(7, 10, 14, 21).get(random.nextInt(4)),
                List.of(7, 14, 21, 30, 45, 60, 70).get(random.nextInt(7)),
                List.of(0, 14, 21, 30, 45).get(random.nextInt(5)));
    }
}
