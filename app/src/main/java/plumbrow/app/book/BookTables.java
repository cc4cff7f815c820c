package plumbrow.app.book;

import static plumbrow.app.book.SeasonTable.of;

import java.util.List;
import java.util.stream.Stream;
import plumbrow.advice.pests.WeedPressure;
import plumbrow.documents.workbook.form.Storage.Type;
import plumbrow.documents.workbook.sheet.ActiveLimitSheet;
import plumbrow.documents.workbook.sheet.ActiveSheet;
import plumbrow.documents.workbook.sheet.AdditionSheet;
import plumbrow.documents.workbook.sheet.AlsoInSheet;
import plumbrow.documents.workbook.sheet.AssumptionSheet;
import plumbrow.documents.workbook.sheet.BulletinSheet;
import plumbrow.documents.workbook.sheet.CareSheet;
import plumbrow.documents.workbook.sheet.ClimateSheet;
import plumbrow.documents.workbook.sheet.ControlSheet;
import plumbrow.documents.workbook.sheet.CrewSheet;
import plumbrow.documents.workbook.sheet.CropDaySheet;
import plumbrow.documents.workbook.sheet.FarmLimitSheet;
import plumbrow.documents.workbook.sheet.FarmSheet;
import plumbrow.documents.workbook.sheet.FieldSheet;
import plumbrow.documents.workbook.sheet.FloorSheet;
import plumbrow.documents.workbook.sheet.HistorySheet;
import plumbrow.documents.workbook.sheet.HourLimitSheet;
import plumbrow.documents.workbook.sheet.InsectSheet;
import plumbrow.documents.workbook.sheet.LabelLimitSheet;
import plumbrow.documents.workbook.sheet.LabelUseSheet;
import plumbrow.documents.workbook.sheet.LandSheet;
import plumbrow.documents.workbook.sheet.LicenceSheet;
import plumbrow.documents.workbook.sheet.LikeWeedSheet;
import plumbrow.documents.workbook.sheet.MachineSheet;
import plumbrow.documents.workbook.sheet.MixRuleSheet;
import plumbrow.documents.workbook.sheet.MixingSheet;
import plumbrow.documents.workbook.sheet.NextCropSheet;
import plumbrow.documents.workbook.sheet.NozzleSheet;
import plumbrow.documents.workbook.sheet.PassSheet;
import plumbrow.documents.workbook.sheet.PeopleSheet;
import plumbrow.documents.workbook.sheet.PlantBackSheet;
import plumbrow.documents.workbook.sheet.PriceBreakSheet;
import plumbrow.documents.workbook.sheet.ProgramSheet;
import plumbrow.documents.workbook.sheet.RatingSheet;
import plumbrow.documents.workbook.sheet.ResistanceSheet;
import plumbrow.documents.workbook.sheet.SeedSheet;
import plumbrow.documents.workbook.sheet.SetbackSheet;
import plumbrow.documents.workbook.sheet.ShelfSheet;
import plumbrow.documents.workbook.sheet.SoilRateSheet;
import plumbrow.documents.workbook.sheet.SpecialLabelSheet;
import plumbrow.documents.workbook.sheet.SpraySheet;
import plumbrow.documents.workbook.sheet.SprayerSheet;
import plumbrow.documents.workbook.sheet.StandCountSheet;
import plumbrow.documents.workbook.sheet.SupplySheet;
import plumbrow.documents.workbook.sheet.SurroundingsSheet;
import plumbrow.documents.workbook.sheet.SurroundingsSheet.What;
import plumbrow.documents.workbook.sheet.TermsSheet;
import plumbrow.documents.workbook.sheet.TillageSheet;
import plumbrow.documents.workbook.sheet.ToleranceSheet;
import plumbrow.documents.workbook.sheet.TraitDoubtSheet;
import plumbrow.documents.workbook.sheet.TraitSheet;
import plumbrow.documents.workbook.sheet.WaterTestSheet;
import plumbrow.documents.workbook.sheet.WeatherDaySheet;
import plumbrow.documents.workbook.sheet.WeedSheet;
import plumbrow.documents.workbook.sheet.WorkWindowSheet;

/**
 * The tables of a season, and under which names the book has them. Columns are called as the keys of their values unless it is said
 * here: those are names of older books, which stay. A new column needs its declaration and a migration, and nothing here.
 */
final class BookTables {
    /** Every table of the season's rows; one comes after those it refers to. */
    static final List<SeasonTable<?>> ALL = List.of(
            of("farm", FarmSheet.SHEET).as("farm", "name").make(),
            of("field", FieldSheet.SHEET)
                    .as("field", "name")
                    .in("boundary", Slot.Points.outline(Outlines.table("boundary_point", "field", Type.TEXT)))
                    .make(),
            of("crop_year", HistorySheet.SHEET).make(),
            of("product", ShelfSheet.SHEET)
                    .as("product", "name")
                    .listed("states", "states_read", 1, "product_state", "product", Type.TEXT, "state")
                    .listed(
                            "excluded_counties",
                            "counties_read",
                            1,
                            "product_excluded_county",
                            "product",
                            Type.TEXT,
                            "county")
                    .make(),
            of("seed", SeedSheet.SHEET)
                    .listed("traits", "", 1, "seed_trait", "seed", Type.TEXT, "trait")
                    .make(),
            of("trait", TraitSheet.SHEET)
                    .as("trait", "name")
                    .as("group", "trait_group")
                    .make(),
            of("active_content", ActiveSheet.SHEET).make(),
            of("label_use", LabelUseSheet.SHEET).make(),
            of("active_limit", ActiveLimitSheet.SHEET).make(),
            of("control", ControlSheet.SHEET).as("control", "share").make(),
            of("insect_pressure", InsectSheet.SHEET).make(),
            of("trait_doubt", TraitDoubtSheet.SHEET).make(),
            of("weed_pressure", WeedSheet.SHEET)
                    .as("density", "density_m2")
                    .in(
                            "first_plant_loss_pct",
                            new Slot.NumberOrSpread(
                                    "first_plant_loss_pct",
                                    "first_plant_loss_distribution",
                                    WeedPressure::likelyLossPct))
                    .make(),
            of("program", ProgramSheet.SHEET).as("program", "name").make(),
            of("pass", PassSheet.SHEET)
                    .as("pass", "number")
                    .as("scout_insect", "trigger_insect")
                    .as("scout_threshold", "trigger_threshold")
                    .as("scout_unit", "trigger_unit")
                    .as("scout_per_pressure", "trigger_count_per_pressure")
                    .as("scout_within_times", "trigger_within_times")
                    .as("scout_usd_ac", "trigger_scouting_usd_ac")
                    .make(),
            of("assumptions", AssumptionSheet.SHEET).make(),
            of("use_terms", TermsSheet.SHEET)
                    .listed("methods", "methods_read", 1, "use_method", "use_terms", Type.INTEGER, "method")
                    .make(),
            of("soil_rate", SoilRateSheet.SHEET)
                    .listed("textures", "", 1, "soil_rate_texture", "soil_rate", Type.INTEGER, "texture")
                    .make(),
            of("setback", SetbackSheet.SHEET).make(),
            of("plant_back", PlantBackSheet.SHEET).make(),
            of("mix_rule", MixRuleSheet.SHEET).make(),
            of("special_label", SpecialLabelSheet.SHEET)
                    .listed(
                            "counties",
                            "whole_state",
                            0,
                            "special_label_county",
                            "special_label",
                            Type.INTEGER,
                            "county")
                    .as("from", "first_day")
                    .as("until", "last_day")
                    .make(),
            of("product_care", CareSheet.SHEET)
                    .listed("wear", "wear_read", 1, "product_wear", "product_care", Type.INTEGER, "gear")
                    .make(),
            of("tolerance", ToleranceSheet.SHEET).make(),
            of("label_limit", LabelLimitSheet.SHEET).make(),
            of("bulletin", BulletinSheet.SHEET).as("by", "looked_up_by").make(),
            of("looked_for", SurroundingsSheet.SHEET)
                    .only(line -> line.looked() != null, "name", "shape", "nearest_ft", "source")
                    .in("kind", new Slot.One<>("kind", What.LOOKED_FOR))
                    .make(),
            of("feature", SurroundingsSheet.SHEET)
                    .only(line -> line.feature() != null)
                    .in("kind", new Slot.One<>("kind", What.FOUND))
                    .in("shape", Slot.Points.place("shape", Outlines.table("feature_point", "feature", Type.INTEGER)))
                    .make(),
            of("also_in", AlsoInSheet.SHEET).make(),
            of("field_land", LandSheet.SHEET).make(),
            of("next_crop", NextCropSheet.SHEET).as("use", "planted_as").make(),
            of("known_resistance", ResistanceSheet.SHEET)
                    .as("group", "action_group")
                    .make(),
            of("person", PeopleSheet.SHEET).as("person", "name").make(),
            of("licence", LicenceSheet.SHEET).make(),
            of("crew", CrewSheet.SHEET)
                    .listed("gear", "gear_read", 1, "crew_gear", "crew", Type.INTEGER, "gear")
                    .make(),
            of("spray_plan", SpraySheet.SHEET).make(),
            of("stand_count", StandCountSheet.SHEET).make(),
            of("month_climate", ClimateSheet.SHEET).make(),
            of("weather_day", WeatherDaySheet.SHEET).as("date", "day").make(),
            of("crop_timing", CropDaySheet.SHEET).as("late_days", "days_late").make(),
            of("like_weed", LikeWeedSheet.SHEET).as("as", "like_weed").make(),
            of("weed_rating", RatingSheet.SHEET).make(),
            of("tillage_work", TillageSheet.SHEET).make(),
            of("floor_depth", FloorSheet.SHEET).make(),
            of("machine", MachineSheet.SHEET).as("machine", "name").make(),
            of("work_window", WorkWindowSheet.SHEET)
                    .as("window", "name")
                    .as("from", "from_date")
                    .as("until", "until_date")
                    .make(),
            of("farm_limit", FarmLimitSheet.SHEET).make(),
            of("price_break", PriceBreakSheet.SHEET).make(),
            of("supply", SupplySheet.SHEET).make(),
            of("sprayer", SprayerSheet.SHEET).make(),
            of("nozzle", NozzleSheet.SHEET).make(),
            of("mixing", MixingSheet.SHEET)
                    .as("order", "mix_order")
                    .as("ams_low_lb_100gal", "ams_low_lb")
                    .as("ams_high_lb_100gal", "ams_high_lb")
                    .make(),
            of("water_test", WaterTestSheet.SHEET).make(),
            of("addition", AdditionSheet.SHEET).make(),
            of("hour_limit", HourLimitSheet.SHEET).make());

    private BookTables() {}

    /** Every table that holds rows of seasons, in the order in which they are filled. */
    static List<StoredTable> stored() {
        return Stream.concat(
                        Stream.of(Distributions.TABLE, Distributions.PAST),
                        ALL.stream().flatMap(table -> table.tables().stream()))
                .toList();
    }
}
