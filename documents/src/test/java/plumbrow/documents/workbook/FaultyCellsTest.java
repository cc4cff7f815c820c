package plumbrow.documents.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.tuple;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plumbrow.documents.workbook.form.RateUnitKind;

/** One wrong cell in a good workbook: every fault that follows from it, word for word, and no other. */
class FaultyCellsTest {
    @TempDir
    Path folder;

    /** A cell, what is put there, and the sentences that follow. */
    record Wrong(String sheet, int row, String column, String value, List<String> sentences) {
        @Override
        public String toString() {
            return sheet + " " + row + " " + column + " = " + value;
        }
    }

    @ParameterizedTest
    @MethodSource
    void cellsThatAreNotWhatTheirColumnAsks(Wrong wrong) {
        check(wrong);
    }

    static Stream<Wrong> cellsThatAreNotWhatTheirColumnAsks() {
        String acres = "expected a number above 0 and up to 50000";
        return Stream.of(
                wrong("fields", 4, "acres", "forty", at("fields", 4, "acres", "found \"forty\", " + acres)),
                wrong("fields", 4, "acres", "-40", at("fields", 4, "acres", "found \"-40\", " + acres)),
                wrong("fields", 4, "acres", "NaN", at("fields", 4, "acres", "found \"NaN\", " + acres)),
                wrong("fields", 4, "acres", "40 ac", at("fields", 4, "acres", "found \"40 ac\", " + acres)),
                wrong(
                        "fields",
                        4,
                        "acres",
                        "4,50",
                        at("fields", 4, "acres", "found \"4,50\", " + acres + ", with a point and not a comma: 4.50")),
                wrong(
                        "fields",
                        4,
                        "acres",
                        "1,040",
                        at("fields", 4, "acres", "found \"1,040\", " + acres + ", without a comma: 1040")),
                wrong(
                        "fields",
                        4,
                        "acres",
                        "",
                        at("fields", 4, "acres", "nothing there, expected the acres, since the field has no boundary")),
                wrong(
                        "fields",
                        2,
                        "acres",
                        "60",
                        at(
                                "fields",
                                2,
                                "acres",
                                "found \"60\", expected within 10 % of the 78.0 ac inside the boundary")),
                wrong(
                        "fields",
                        4,
                        "crop",
                        "sorghum",
                        at("fields", 4, "crop", "found \"sorghum\", expected one of: corn, soybean, wheat")),
                wrong(
                        "fields",
                        4,
                        "state",
                        "Ill",
                        at(
                                "fields",
                                4,
                                "state",
                                "found \"Ill\", expected one of the 50 words of the list, such as AL")),
                wrong(
                        "fields",
                        4,
                        "county",
                        "Pike County",
                        at(
                                "fields",
                                4,
                                "county",
                                "found \"Pike County\", expected the name alone, without the word County, "
                                        + "so that it can be compared with labels")),
                wrong(
                        "farms",
                        3,
                        "crop_share",
                        "1.5",
                        at("farms", 3, "crop_share", "found \"1.5\", expected a number above 0 and up to 1")),
                wrong(
                        "farms",
                        2,
                        "grower",
                        "=1+1",
                        at("farms", 2, "grower", "found \"=1+1\", expected text that does not begin with = + - or @")),
                wrong(
                        "insects",
                        2,
                        "sample_size",
                        "2.5",
                        at("insects", 2, "sample_size", "found \"2.5\", expected a whole number from 1 to 10000")),
                wrong(
                        "insects",
                        2,
                        "source",
                        "",
                        at("insects", 2, "source", "nothing there, expected text of up to 1000 characters")),
                wrong(
                        "seeds",
                        2,
                        "blend_refuge_pct",
                        "105",
                        at("seeds", 2, "blend_refuge_pct", "found \"105\", expected a number from 0 to 100")),
                wrong(
                        "shelf",
                        5,
                        "excluded_counties",
                        "Adams",
                        at(
                                "shelf",
                                5,
                                "excluded_counties",
                                "found \"Adams\", expected counties parted by semicolons, such as "
                                        + "IA: Adams; IL: Pike, or none; \"Adams\" is not a state and a county such as IA: Adams, "
                                        + "without the word County")),
                wrong(
                        "shelf",
                        5,
                        "states",
                        "IA; IA",
                        at(
                                "shelf",
                                5,
                                "states",
                                "found \"IA; IA\", expected postal codes parted by semicolons, such as "
                                        + "IA; IL, or none, each once; IA stands there twice")),
                wrong(
                        "passes",
                        2,
                        "date",
                        "05/04/2026",
                        at(
                                "passes",
                                2,
                                "date",
                                "found \"05/04/2026\", expected a date written year-month-day, such as "
                                        + "2026-05-04")),
                wrong(
                        "passes",
                        2,
                        "date",
                        "2026-02-30",
                        at("passes", 2, "date", "found \"2026-02-30\", expected a day that is in the calendar")),
                wrong(
                        "passes",
                        4,
                        "rate_unit",
                        "flagons",
                        at(
                                "passes",
                                4,
                                "rate_unit",
                                "found \"flagons\", expected a rate's unit: fl oz/ac, pt/ac, qt/ac, "
                                        + "gal/ac, mL/ac, L/ac, oz/ac, lb/ac, g/ac, kg/ac, seeds/ac, 1000 seeds/ac, unit/ac, bu/ac, "
                                        + "L/ha, mL/ha, kg/ha, g/ha")));
    }

    @ParameterizedTest
    @MethodSource
    void cellsThatDoNotFitTheirRow(Wrong wrong) {
        check(wrong);
    }

    static Stream<Wrong> cellsThatDoNotFitTheirRow() {
        return Stream.of(
                wrong(
                        "insects",
                        2,
                        "pressure_low",
                        "0.9",
                        at(
                                "insects",
                                2,
                                "pressure_low",
                                "found \"0.9\", expected no more than pressure_likely, which is " + "0.7")),
                wrong(
                        "insects",
                        2,
                        "loss_high_pct",
                        "10",
                        at(
                                "insects",
                                2,
                                "loss_high_pct",
                                "found \"10\", expected no less than loss_likely_pct, which is " + "15")),
                wrong(
                        "insects",
                        2,
                        "pressure_high",
                        "5",
                        at(
                                "insects",
                                2,
                                "pressure_high",
                                "found \"5\", expected no more than 3, the end of the node injury " + "scale")),
                wrong(
                        "insects",
                        2,
                        "sample_spread",
                        "",
                        at(
                                "insects",
                                2,
                                "sample_spread",
                                "nothing there, expected a number above 0 and up to 100000, since "
                                        + "sample_size, sample_spread, sample_cost_usd go together")),
                wrong(
                        "passes",
                        4,
                        "injury_likely_pct",
                        "",
                        at(
                                "passes",
                                4,
                                "injury_likely_pct",
                                "nothing there, expected a number: injury_low_pct, "
                                        + "injury_likely_pct and injury_high_pct go together, or only injury_likely_pct")),
                wrong(
                        "label_uses",
                        2,
                        "low_rate",
                        "9",
                        at("label_uses", 2, "low_rate", "found \"9\", expected no more than high_rate, which is 6")),
                wrong(
                        "label_uses",
                        2,
                        "season_max_unit",
                        "",
                        at(
                                "label_uses",
                                2,
                                "season_max_unit",
                                "nothing there, expected "
                                        + new RateUnitKind().words()
                                        + ", since season_max, season_max_unit go together")),
                wrong(
                        "seeds",
                        3,
                        "bin_price_usd_bu",
                        "",
                        at(
                                "seeds",
                                3,
                                "bin_price_usd_bu",
                                "nothing there, expected a number from 0 to 1000, since this is "
                                        + "saved seed: sale value of the grain, net of haul")),
                wrong(
                        "seeds",
                        2,
                        "tests_usd",
                        "60",
                        at(
                                "seeds",
                                2,
                                "tests_usd",
                                "found \"60\", expected nothing, since the column saved does not say " + "yes")),
                wrong(
                        "passes",
                        5,
                        "rate",
                        "3",
                        at(
                                "passes",
                                5,
                                "rate",
                                "found \"3\", expected nothing, since a tillage pass puts out no product")),
                wrong(
                        "assumptions",
                        2,
                        "b",
                        "",
                        at(
                                "assumptions",
                                2,
                                "b",
                                "nothing there, expected a number: the volatility in a year of the form " + "price")),
                wrong(
                        "assumptions",
                        3,
                        "a",
                        "13",
                        at(
                                "assumptions",
                                3,
                                "a",
                                "found \"13\", expected no more than b, the most likely, which is 10.4")),
                wrong(
                        "assumptions",
                        8,
                        "a",
                        "-2",
                        at(
                                "assumptions",
                                8,
                                "a",
                                "found \"-2\", expected a number from -0.95 to 0.95 for the number of "
                                        + "price-yield tie")),
                wrong(
                        "assumptions",
                        10,
                        "crop",
                        "corn",
                        at(
                                "assumptions",
                                10,
                                "field",
                                "found \"East 80\", expected nothing, since the line is for a crop")),
                wrong(
                        "assumptions",
                        10,
                        "values",
                        "170",
                        at(
                                "assumptions",
                                10,
                                "values",
                                "found \"170\", expected at least two past values parted by " + "semicolons")));
    }

    @ParameterizedTest
    @MethodSource
    void cellsThatDoNotFitOtherSheets(Wrong wrong) {
        check(wrong);
    }

    static Stream<Wrong> cellsThatDoNotFitOtherSheets() {
        return Stream.of(
                wrong(
                        "fields",
                        4,
                        "farm",
                        "Hume place",
                        at(
                                "fields",
                                4,
                                "farm",
                                "found \"Hume place\", expected a farm of the sheet farms; did you mean Home "
                                        + "place?")),
                wrong(
                        "farms",
                        3,
                        "farm",
                        "home place",
                        at("farms", 3, "farm", "found \"home place\", expected each farm once; row 2 has the same"),
                        at("fields", 4, "farm", "found \"Müller \"river\", 40\", expected a farm of the sheet farms")),
                wrong(
                        "shelf",
                        6,
                        "product",
                        "Ridge 12",
                        at("shelf", 6, "product", "found \"Ridge 12\", expected each product once; row 5 has the same"),
                        at("actives", 3, "product", "found \"Clear Row\", expected a product of the sheet shelf"),
                        at("label_uses", 3, "product", "found \"Clear Row\", expected a product of the sheet shelf"),
                        at("label_uses", 4, "product", "found \"Clear Row\", expected a product of the sheet shelf"),
                        at("active_limits", 3, "product", "found \"Clear Row\", expected a product of the sheet shelf"),
                        at("control", 4, "product", "found \"Clear Row\", expected a product of the sheet shelf"),
                        at("terms", 3, "product", "found \"Clear Row\", expected a product of the sheet shelf"),
                        at("terms", 4, "product", "found \"Clear Row\", expected a product of the sheet shelf"),
                        at("soil_rates", 4, "product", "found \"Clear Row\", expected a product of the sheet shelf"),
                        at("soil_rates", 5, "product", "found \"Clear Row\", expected a product of the sheet shelf"),
                        at("setbacks", 4, "product", "found \"Clear Row\", expected a product of the sheet shelf"),
                        at("mix_rules", 3, "product", "found \"Clear Row\", expected a product of the sheet shelf"),
                        at("mix_rules", 4, "product", "found \"Clear Row\", expected a product of the sheet shelf"),
                        at(
                                "special_labels",
                                3,
                                "product",
                                "found \"Clear Row\", expected a product of the sheet shelf"),
                        at("care", 3, "product", "found \"Clear Row\", expected a product of the sheet shelf"),
                        at("label_limits", 6, "product", "found \"Clear Row\", expected a product of the sheet shelf"),
                        at("additions", 2, "addition", "found \"Clear Row\", expected a product of the sheet shelf"),
                        at("additions", 3, "addition", "found \"Clear Row\", expected a product of the sheet shelf"),
                        at("log", 2, "product", "found \"Clear Row\", expected a product of the sheet shelf")),
                wrong(
                        "programs",
                        4,
                        "program",
                        "Trait alone",
                        at(
                                "programs",
                                4,
                                "program",
                                "found \"Trait alone\", expected each field, program once; row 2 has the " + "same")),
                wrong(
                        "programs",
                        3,
                        "baseline",
                        "yes",
                        at(
                                "programs",
                                3,
                                "baseline",
                                "found \"yes\", expected one baseline for East 80; row 2 is one " + "already")),
                wrong(
                        "programs",
                        2,
                        "baseline",
                        "no",
                        at(
                                "programs",
                                2,
                                "baseline",
                                "found \"no\", expected yes for one program of East 80, the baseline")),
                wrong(
                        "passes",
                        2,
                        "program",
                        "Trait alon",
                        at(
                                "passes",
                                2,
                                "program",
                                "found \"Trait alon\", expected a program of East 80 on the sheet programs; "
                                        + "did you mean Trait alone?")),
                wrong(
                        "passes",
                        2,
                        "product",
                        "Hybrid A108",
                        at(
                                "passes",
                                2,
                                "product",
                                "found \"Hybrid A108\", expected a product of the sheet shelf; did you "
                                        + "mean Hybrid A 108?")),
                wrong(
                        "passes",
                        4,
                        "rate",
                        "7",
                        at(
                                "passes",
                                4,
                                "rate",
                                "found \"7\", expected no more than the label's 6 fl oz/ac on corn; the label "
                                        + "is the law")),
                wrong(
                        "passes",
                        4,
                        "rate_unit",
                        "lb/ac",
                        at(
                                "passes",
                                4,
                                "rate_unit",
                                "found \"lb/ac\", expected a liquid volume, since Ridge 12 is priced per " + "gal")),
                wrong(
                        "passes",
                        2,
                        "rate_unit",
                        "gal/ac",
                        at(
                                "passes",
                                2,
                                "rate_unit",
                                "found \"gal/ac\", expected seeds, units, a weight or bushels, since "
                                        + "Hybrid A 108 is seed")),
                wrong(
                        "actives",
                        2,
                        "per",
                        "lb",
                        at(
                                "actives",
                                2,
                                "per",
                                "found \"lb\", expected a liquid volume, since Ridge 12 is priced per gal")),
                wrong(
                        "passes",
                        5,
                        "date",
                        "2026-05-01",
                        at(
                                "passes",
                                5,
                                "date",
                                "found \"2026-05-01\", expected a day not before 2026-05-04, the day of pass " + "2")),
                wrong(
                        "passes",
                        2,
                        "date",
                        "2027-05-04",
                        at(
                                "passes",
                                2,
                                "date",
                                "found \"2027-05-04\", expected a day of the season of 2026, between "
                                        + "2025-07-01 and 2026-12-31")),
                wrong(
                        "passes",
                        2,
                        "kind",
                        "spray",
                        at(
                                "passes",
                                2,
                                "product",
                                "found \"Hybrid A 108\", expected another product for a spray pass; this "
                                        + "is seed")),
                wrong(
                        "insects",
                        2,
                        "scouted",
                        "2026-08-04",
                        at(
                                "insects",
                                2,
                                "scouted",
                                "found \"2026-08-04\", expected a day not after 2026-02-16, the day of "
                                        + "the assumptions")),
                wrong(
                        "history",
                        2,
                        "year",
                        "2026",
                        at(
                                "history",
                                2,
                                "year",
                                "found \"2026\", expected a year before 2026, the year of this season")),
                wrong(
                        "control",
                        4,
                        "pest",
                        "water hemp",
                        at(
                                "control",
                                4,
                                "pest",
                                "found \"water hemp\", expected an insect of the sheet insects or a weed of the sheet "
                                        + "weeds; did you mean waterhemp?")),
                wrong(
                        "seeds",
                        2,
                        "traits",
                        "Cry3Bb1; Cry9",
                        at("seeds", 2, "traits", "found \"Cry9\", expected a trait of the sheet traits")),
                wrong(
                        "seeds",
                        2,
                        "seeds_per_unit",
                        "",
                        at(
                                "seeds",
                                2,
                                "seeds_per_unit",
                                "nothing there, expected a number above 0 and up to 10000000, since "
                                        + "it is priced per unit")),
                wrong(
                        "seeds",
                        4,
                        "seeds_per_lb",
                        "",
                        at(
                                "seeds",
                                4,
                                "seeds_per_lb",
                                "nothing there, expected a number above 0 and up to 1000000, since it "
                                        + "is priced per lb")),
                wrong(
                        "seeds",
                        3,
                        "crop",
                        "corn",
                        at(
                                "passes",
                                6,
                                "product",
                                "found \"Bin run wheat\", expected a wheat seed on this field; this is " + "corn")),
                wrong(
                        "shelf",
                        3,
                        "price_usd",
                        "7",
                        at(
                                "shelf",
                                3,
                                "price_usd",
                                "found \"7\", expected 0, since this is saved seed: its cost is worked "
                                        + "out from the grain")),
                wrong(
                        "shelf",
                        4,
                        "kind",
                        "adjuvant",
                        at("seeds", 4, "product", "found \"Bean 24\", expected a seed; the shelf calls it adjuvant")),
                wrong(
                        "active_limits",
                        2,
                        "ingredient",
                        "bifentrin",
                        at(
                                "active_limits",
                                2,
                                "ingredient",
                                "found \"bifentrin\", expected an ingredient of this product on "
                                        + "the sheet actives: bifenthrin")));
    }

    @Test
    void allFaultsOfAWorkbookComeAtOnce() {
        WorkbookWriter.write(Fixture.season(), folder.resolve("season"));
        CsvCells.put(folder.resolve("season"), "fields", 4, "acres", "forty");
        CsvCells.put(folder.resolve("season"), "fields", 4, "ph", "70");
        CsvCells.put(folder.resolve("season"), "passes", 4, "rate", "7");
        CsvCells.put(folder.resolve("season"), "passes", 5, "date", "2026-05-01");
        assertThat(faults().faults())
                .extracting(Fault::sheet, Fault::row, Fault::column)
                .containsExactly(
                        tuple("fields.csv", 4, "acres"),
                        tuple("fields.csv", 4, "ph"),
                        tuple("passes.csv", 4, "rate"),
                        tuple("passes.csv", 5, "date"));
    }

    private void check(Wrong wrong) {
        WorkbookWriter.write(Fixture.season(), folder.resolve("season"));
        CsvCells.put(folder.resolve("season"), wrong.sheet(), wrong.row(), wrong.column(), wrong.value());
        assertThat(faults().faults()).extracting(Fault::sentence).containsExactlyElementsOf(wrong.sentences());
    }

    private WorkbookFaults faults() {
        return catchThrowableOfType(WorkbookFaults.class, () -> WorkbookReader.read(folder.resolve("season")));
    }

    private static Wrong wrong(String sheet, int row, String column, String value, String... sentences) {
        return new Wrong(sheet, row, column, value, List.of(sentences));
    }

    private static String at(String sheet, int row, String column, String rest) {
        return sheet + ".csv, row " + row + ", column " + column + ": " + rest + (rest.endsWith("?") ? "" : ".");
    }
}
