package plumbrow.science.safety;

import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.MEMORY;
import static plumbrow.science.figure.Status.VERIFIED;

import java.util.List;
import java.util.Map;
import plumbrow.science.checks.Check;
import plumbrow.science.checks.CheckList;
import plumbrow.science.figure.Subject;

/** Limits of categories, acids of salts, spills and strengths: values from outside. */
public final class SafetyChecks {
    private SafetyChecks() {}

    public static List<Check> all() {
        CheckList checks = CheckList.of(Subject.SAFETY);
        categories(checks);
        acids(checks);
        spills(checks);
        worth(checks);
        return checks.all();
    }

    private static void categories(CheckList checks) {
        checks.from("[40-cfr-156.62]", VERIFIED)
                .figure("epa-toxicity", """
                        oral_ld50_mg_kg=50 | oral=I
                        oral_ld50_mg_kg=50.1 | oral=II
                        oral_ld50_mg_kg=500 | oral=II
                        oral_ld50_mg_kg=5000 | oral=III
                        oral_ld50_mg_kg=5001 | oral=IV
                        dermal_ld50_mg_kg=200 | dermal=I
                        dermal_ld50_mg_kg=2000 | dermal=II
                        dermal_ld50_mg_kg=20000 | dermal=III
                        dermal_ld50_mg_kg=20001 | dermal=IV
                        inhalation_lc50_mg_l=.2 | inhalation=I
                        inhalation_lc50_mg_l=2 | inhalation=II
                        inhalation_lc50_mg_l=20 | inhalation=III
                        inhalation_lc50_mg_l=20.1 | inhalation=IV
                        """)
                .from("[epa-label-manual-7], the other table in use", MEMORY)
                .figure("epa-toxicity", """
                        inhalation_lc50_mg_l=.05 limits=manual | inhalation=I
                        inhalation_lc50_mg_l=.5 limits=manual | inhalation=II
                        inhalation_lc50_mg_l=2 limits=manual | inhalation=III
                        inhalation_lc50_mg_l=2.1 limits=manual | inhalation=IV
                        dermal_ld50_mg_kg=5000 limits=manual | dermal=III
                        dermal_ld50_mg_kg=5001 limits=manual | dermal=IV
                        """)
                .from("[clp-annex-1], Table 3.1.1", VERIFIED)
                .figure("ghs-acute", """
                        route=oral value=5 | category=1 hazard_code=H300
                        route=oral value=50 | category=2 hazard_code=H300
                        route=oral value=2000 | category=4 hazard_code=H302
                        route=oral value=2001 | category=not classified
                        route=dermal value=50 | category=1 hazard_code=H310
                        route=dermal value=200 | category=2 hazard_code=H310
                        route=dermal value=1000 | category=3 hazard_code=H311
                        route=dermal value=2000 | category=4 hazard_code=H312
                        route=gas value=100 | category=1 hazard_code=H330
                        route=gas value=500 | category=2 hazard_code=H330
                        route=gas value=2500 | category=3 hazard_code=H331
                        route=gas value=20000 | category=4 hazard_code=H332
                        route=vapour value=.5 | category=1 hazard_code=H330
                        route=vapour value=2 | category=2 hazard_code=H330
                        route=vapour value=10 | category=3 hazard_code=H331
                        route=vapour value=20 | category=4 hazard_code=H332
                        route=dust-mist value=.05 | category=1 hazard_code=H330
                        route=dust-mist value=.5 | category=2 hazard_code=H330
                        route=dust-mist value=5 | category=4 hazard_code=H332
                        """)
                .from("[ghs], Table 3.1.2, doses that stand for a category", MEMORY)
                .figure("category-estimate", """
                        route=oral category=1 | ate=.5
                        route=oral category=3 | ate=100
                        route=oral category=4 | ate=500
                        route=dermal category=1 | ate=5
                        route=dermal category=2 | ate=50
                        route=dermal category=3 | ate=300
                        route=gas category=1 | ate=10
                        route=gas category=2 | ate=100
                        route=gas category=3 | ate=700
                        route=gas category=4 | ate=4500
                        route=vapour category=1 | ate=.05
                        route=vapour category=2 | ate=.5
                        route=vapour category=3 | ate=3
                        route=vapour category=4 | ate=11
                        route=dust-mist category=1 | ate=.005
                        route=dust-mist category=3 | ate=.5
                        route=dust-mist category=4 | ate=1.5
                        """);
    }

    private static void acids(CheckList checks) {
        checks.from("IUPAC masses", COMPUTED);
        for (String row : """
                glyphosate ammonium, 169.07, 186.10, .9085, .9031
                glyphosate dimethylamine, 169.07, 214.16, .7895, .7848
                glyphosate isopropylamine, 169.07, 228.19, .7409, .7365
                glyphosate potassium, 169.07, 207.16, .8161, .8113
                2.4-D 2-ethylhexyl ester, 221.04, 333.26, .6633, .6602
                2.4-D butoxyethyl ester, 221.04, 321.20, .6882, .6850
                2.4-D or dicamba dimethylamine, 221.04, 266.12, .8306, .8268
                2.4-D choline, 221.04, 324.20, .6818, .6787
                dicamba diglycolamine, 221.04, 326.18, .6777, .6746
                dicamba sodium, 221.04, 243.02, .9095, .9054
                dicamba BAPMA, 221.04, 364.27, .6068, .6040
                glufosinate ammonium, 181.13, 198.16, .9141, -
                paraquat ion of the dichloride, 186.26, 257.16, .7243, -""".lines().toList()) {
            String[] cells = row.split(", ", -1);
            double acid = Double.parseDouble(cells[1]);
            double salt = Double.parseDouble(cells[2]);
            String name = cells[0].replace("2.4-D", "2,4-D");
            checks.value(name + ": acid in the salt", cells[3], () -> AcidEquivalent.factor(salt, acid, 1));
            if (!cells[4].equals("-")) {
                checks.value(
                        name + ": the same less one hydrogen",
                        cells[4],
                        () -> AcidEquivalent.factor(salt, acid - 1.008, 1));
            }
        }
    }

    private static void spills(CheckList checks) {
        checks.from("independent arithmetic", COMPUTED)
                .value(
                        "Q8: gallons of 4.142 lb in solution that reach a TPQ of 10",
                        "12.1",
                        () -> Haul.STORED
                                        .answer(Map.of("stored_lb", "124.3", "tpq_lb", "10", "form", "solution"))
                                        .number("lb_to_tpq")
                                / 4.142)
                .figure("spill", "volume_gal=2.5 ai_lb_gal=4 rq_lb=1000 | containers_to_rq=100 reaches_rq=no")
                .from("independent arithmetic", COMPUTED)
                .value(
                        "E1: acid pounds a gallon, 48.7 % potassium glyphosate at 1.357 g/mL",
                        "4.50", () -> acid("48.7", "11.3247", 207.16))
                .value(
                        "E2: acid pounds a gallon, 41.0 % isopropylamine glyphosate at 1.17 g/mL",
                        "2.97", () -> acid("41.0", "9.7641", 228.19));
    }

    private static double acid(String weightPct, String densityLbGal, double saltMass) {
        return IngredientPerGallon.FIGURE
                        .answer(Map.of("weight_pct", weightPct, "density_lb_gal", densityLbGal))
                        .number("lb_gal")
                * AcidEquivalent.factor(saltMass, 169.07, 1);
    }

    private static void worth(CheckList checks) {
        checks.from("independent arithmetic", COMPUTED)
                .figure("cas-check", "cas=1912-24-8 | valid=no check_digit=9 weighted_sum=69")
                .figure("vapour-pressure", """
                        value=4.58e-5 unit=mmHg | mpa=6.106
                        value=2.1e-3 unit=mPa | mmhg=.00000001575
                        """)
                .figure("epa-toxicity", "oral_ld50_mg_kg=53.8 | oral=II")
                .from("[npic-glyphosate], isopropylamine salt, mmHg", VERIFIED)
                .figure("vapour-pressure", "value=2.1e-3 unit=mPa | mmhg=.0000000158");
    }
}
