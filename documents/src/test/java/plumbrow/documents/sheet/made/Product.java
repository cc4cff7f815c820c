package plumbrow.documents.sheet.made;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;

/**
 * An invented product. Its active ingredients are real substances by their ISO common names; every number is made up.
 *
 * @param percents low and high share of each ingredient; the same where it is one number
 * @param casNumbers as printed; one in twenty has a slip in it
 */
record Product(
        String name,
        String registration,
        String emergency,
        String poison,
        LocalDate revised,
        LocalDate superseded,
        boolean danger,
        List<String> hazards,
        List<String> precautions,
        List<String> ingredients,
        List<String> casNumbers,
        List<double[]> percents,
        double vapourPa,
        double boilingC,
        double flashC,
        double density,
        double ph,
        double solubilityMgL,
        double logKow,
        double oral,
        double dermal,
        double inhaled,
        double trout,
        double daphnia,
        double quail,
        double bee,
        @Nullable Integer reportableLb,
        boolean regulated,
        String group,
        boolean pollutant) {

    /** A substance and its CAS number. */
    private record Substance(String name, String cas) {}

    private static final List<Substance> ACTIVES = List.of(
            new Substance("Atrazine", "1912-24-9"),
            new Substance("Glyphosate, potassium salt", "70901-12-1"),
            new Substance("Dicamba", "1918-00-9"),
            new Substance("Chlorpyrifos", "2921-88-2"),
            new Substance("Paraquat dichloride", "1910-42-5"),
            new Substance("2,4-D, 2-ethylhexyl ester", "1928-43-4"),
            new Substance("Bifenthrin", "82657-04-3"),
            new Substance("S-metolachlor", "87392-12-9"),
            new Substance("Mesotrione", "104206-82-8"),
            new Substance("Acetochlor", "34256-82-1"),
            new Substance("Imidacloprid", "138261-41-3"),
            new Substance("Azoxystrobin", "131860-33-8"),
            new Substance("Tebuconazole", "107534-96-3"),
            new Substance("Pendimethalin", "40487-42-1"),
            new Substance("Trifluralin", "1582-09-8"),
            new Substance("Carbaryl", "63-25-2"),
            new Substance("Malathion", "121-75-5"),
            new Substance("lambda-Cyhalothrin", "91465-08-6"),
            new Substance("Metribuzin", "21087-64-9"));
    private static final List<Substance> OTHERS = List.of(
            new Substance("Ethylene glycol", "107-21-1"),
            new Substance("Naphthalene", "91-20-3"),
            new Substance("Propylene glycol", "57-55-6"),
            new Substance("Xylene", "1330-20-7"),
            new Substance("1,2-Benzisothiazolin-3-one", "2634-33-5"));
    private static final List<String> FIRST = List.of(
            "Meadow", "Barrow", "Hedge", "Quarry", "Willow", "Kestrel", "Ridge", "Furrow", "Lark", "Hollow", "Bramble",
            "Tansy");
    private static final List<String> SECOND =
            List.of("gate", "stone", "wick", "field", "brook", "spur", "mark", "fold", "wood", "run");
    private static final List<String> FORMS =
            List.of("4L", "4 EC", "480 SL", "75 WG", "2.5 CS", "Plus", "500 SC", "XTR");
    private static final List<String> HAZARDS = List.of(
            "H302", "H304", "H312", "H315", "H317", "H318", "H319", "H332", "H351", "H373", "H400", "H410", "H411",
            "H226", "H227");
    private static final List<String> PRECAUTIONS = List.of(
            "P201",
            "P261",
            "P264",
            "P270",
            "P273",
            "P280",
            "P301+P310",
            "P302+P352",
            "P305+P351+P338",
            "P391",
            "P405",
            "P501");
    private static final int[] REPORTABLE = {1, 10, 100, 500, 1000, 5000};

    static Product invent(Random random) {
        List<String> names = new ArrayList<>();
        List<String> numbers = new ArrayList<>();
        List<double[]> shares = new ArrayList<>();
        int actives = 1 + random.nextInt(3);
        double sum = 0;
        List<Substance> pool = new ArrayList<>(ACTIVES);
        for (int i = 0; i < actives; i++) {
            Substance active = pool.remove(random.nextInt(pool.size()));
            double share = Math.round((2 + random.nextDouble() * 25) * 10) / 10.0;
            sum += share;
            names.add(active.name);
            numbers.add(random.nextInt(20) == 0 ? slipped(active.cas) : active.cas);
            shares.add(new double[] {share, share});
        }
        List<Substance> solvents = new ArrayList<>(OTHERS);
        int others = random.nextInt(3);
        for (int i = 0; i < others; i++) {
            Substance other = solvents.remove(random.nextInt(solvents.size()));
            int low = 1 + random.nextInt(5);
            names.add(other.name);
            numbers.add(other.cas);
            shares.add(new double[] {low, low + 1 + random.nextInt(6)});
        }
        names.add("Other ingredients");
        numbers.add("");
        double rest = Math.round((100 - sum) * 10) / 10.0;
        shares.add(new double[] {rest, rest});
        LocalDate revised = LocalDate.of(2008 + random.nextInt(18), 1 + random.nextInt(12), 1 + random.nextInt(28));
        return new Product(
                pick(FIRST, random) + pick(SECOND, random) + " " + pick(FORMS, random),
                (90000 + random.nextInt(9999)) + "-" + (1 + random.nextInt(998))
                        + (random.nextInt(4) == 0 ? "-" + (90000 + random.nextInt(9999)) : ""),
                "1-800-555-0" + (100 + random.nextInt(99)),
                "1-800-222-1222",
                revised,
                revised.minusDays(400 + random.nextInt(800)),
                random.nextInt(3) == 0,
                some(HAZARDS, 1 + random.nextInt(4), random),
                some(PRECAUTIONS, 2 + random.nextInt(4), random),
                names,
                numbers,
                shares,
                Math.pow(10, -7 + random.nextDouble() * 10),
                95 + random.nextInt(90),
                40 + random.nextInt(110),
                Math.round((.9 + random.nextDouble() * .5) * 1000) / 1000.0,
                Math.round((4 + random.nextDouble() * 5) * 10) / 10.0,
                three(Math.pow(10, random.nextDouble() * 5)),
                Math.round((-3 + random.nextDouble() * 9) * 100) / 100.0,
                three(Math.pow(10, 1.5 + random.nextDouble() * 2.3)),
                three(Math.pow(10, 2 + random.nextDouble() * 1.8)),
                three(.05 + random.nextDouble() * 6),
                three(Math.pow(10, -3 + random.nextDouble() * 5)),
                three(Math.pow(10, -3 + random.nextDouble() * 5)),
                three(Math.pow(10, 1 + random.nextDouble() * 2.5)),
                three(Math.pow(10, -2 + random.nextDouble() * 4)),
                random.nextInt(3) > 0 ? REPORTABLE[random.nextInt(REPORTABLE.length)] : null,
                random.nextInt(3) > 0,
                random.nextBoolean() ? "III" : "II",
                random.nextBoolean());
    }

    private static double three(double value) {
        double scale = Math.pow(10, 2 - Math.floor(Math.log10(value)));
        return Math.round(value * scale) / scale;
    }

    private static String slipped(String cas) {
        int last = cas.charAt(cas.length() - 1) - '0';
        return cas.substring(0, cas.length() - 1) + (last + 3) % 10;
    }

    private static String pick(List<String> words, Random random) {
        return words.get(random.nextInt(words.size()));
    }

    private static List<String> some(List<String> words, int count, Random random) {
        List<String> pool = new ArrayList<>(words);
        List<String> some = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            some.add(pool.remove(random.nextInt(pool.size())));
        }
        some.sort(String::compareTo);
        return some;
    }
}
