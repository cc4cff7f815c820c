package plumbrow.app.book;

import java.util.List;
import java.util.stream.Stream;
import plumbrow.advice.pests.WeedPressure;
import plumbrow.documents.workbook.form.Storage;
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
            SeasonTable.of("farm", FarmSheet.SHEET).as("farm", "name").make(),
            SeasonTable.of("field", FieldSheet.SHEET)
                    .as("field", "name")
                    .in("boundary", Slot.Points.outline(Outlines.table("boundary_point", "field", Storage.Type.TEXT)))
                    .make(),
            SeasonTable.of("crop_year", HistorySheet.SHEET).make(),
            SeasonTable.of("product", ShelfSheet.SHEET)
                    .as("product", "name")
                    .listed("states", "states_read", 1, "product_state", "product", Storage.Type.TEXT, "state")
                    .listed(
                            "excluded_counties",
                            "counties_read",
                            1,
                            "product_excluded_county",
                            "product",
                            Storage.Type.TEXT,
                            "county")
                    .make(),
            SeasonTable.of("seed", SeedSheet.SHEET)
                    .listed("traits", "", 1, "seed_trait", "seed", Storage.Type.TEXT, "trait")
                    .make(),
            SeasonTable.of("trait", TraitSheet.SHEET)
                    .as("trait", "name")
                    .as("group", "trait_group")
                    .make(),
            SeasonTable.of("active_content", ActiveSheet.SHEET).make(),
            SeasonTable.of("label_use", LabelUseSheet.SHEET).make(),
            SeasonTable.of("active_limit", ActiveLimitSheet.SHEET).make(),
            SeasonTable.of("control", ControlSheet.SHEET).as("control", "share").make(),
            SeasonTable.of("insect_pressure", InsectSheet.SHEET).make(),
            SeasonTable.of("trait_doubt", TraitDoubtSheet.SHEET).make(),
            SeasonTable.of("weed_pressure", WeedSheet.SHEET)
                    .as("density", "density_m2")
                    .in(
                            "first_plant_loss_pct",
                            new Slot.NumberOrSpread(
                                    "first_plant_loss_pct",
                                    "first_plant_loss_distribution",
                                    WeedPressure::likelyLossPct))
                    .make(),
            SeasonTable.of("program", ProgramSheet.SHEET).as("program", "name").make(),
            SeasonTable.of("pass", PassSheet.SHEET)
                    .as("pass", "number")
                    .as("scout_insect", "trigger_insect")
                    .as("scout_threshold", "trigger_threshold")
                    .as("scout_unit", "trigger_unit")
                    .as("scout_per_pressure", "trigger_count_per_pressure")
                    .as("scout_within_times", "trigger_within_times")
                    .as("scout_usd_ac", "trigger_scouting_usd_ac")
                    .make(),
            SeasonTable.of("assumptions", AssumptionSheet.SHEET).make(),
            SeasonTable.of("use_terms", TermsSheet.SHEET)
                    .listed("methods", "methods_read", 1, "use_method", "use_terms", Storage.Type.INTEGER, "method")
                    .make(),
            SeasonTable.of("soil_rate", SoilRateSheet.SHEET)
                    .listed("textures", "", 1, "soil_rate_texture", "soil_rate", Storage.Type.INTEGER, "texture")
                    .make(),
            SeasonTable.of("setback", SetbackSheet.SHEET).make(),
            SeasonTable.of("plant_back", PlantBackSheet.SHEET).make(),
            SeasonTable.of("mix_rule", MixRuleSheet.SHEET).make(),
            SeasonTable.of("special_label", SpecialLabelSheet.SHEET)
                    .listed(
                            "counties",
                            "whole_state",
                            0,
                            "special_label_county",
                            "special_label",
                            Storage.Type.INTEGER,
                            "county")
                    .as("from", "first_day")
                    .as("until", "last_day")
                    .make(),
            SeasonTable.of("product_care", CareSheet.SHEET)
                    .listed("wear", "wear_read", 1, "product_wear", "product_care", Storage.Type.INTEGER, "gear")
                    .make(),
            SeasonTable.of("tolerance", ToleranceSheet.SHEET).make(),
            SeasonTable.of("label_limit", LabelLimitSheet.SHEET).make(),
            SeasonTable.of("bulletin", BulletinSheet.SHEET)
                    .as("by", "looked_up_by")
                    .make(),
            SeasonTable.of("looked_for", SurroundingsSheet.SHEET)
                    .only(line -> line.looked() != null, "name", "shape", "nearest_ft", "source")
                    .in("kind", new Slot.One<>("kind", What.LOOKED_FOR))
                    .make(),
            SeasonTable.of("feature", SurroundingsSheet.SHEET)
                    .only(line -> line.feature() != null)
                    .in("kind", new Slot.One<>("kind", What.FOUND))
                    .in(
                            "shape",
                            Slot.Points.place(
                                    "shape", Outlines.table("feature_point", "feature", Storage.Type.INTEGER)))
                    .make(),
            SeasonTable.of("also_in", AlsoInSheet.SHEET).make(),
            SeasonTable.of("field_land", LandSheet.SHEET).make(),
            SeasonTable.of("next_crop", NextCropSheet.SHEET)
                    .as("use", "planted_as")
                    .make(),
            SeasonTable.of("known_resistance", ResistanceSheet.SHEET)
                    .as("group", "action_group")
                    .make(),
            SeasonTable.of("person", PeopleSheet.SHEET).as("person", "name").make(),
            SeasonTable.of("licence", LicenceSheet.SHEET).make(),
            SeasonTable.of("crew", CrewSheet.SHEET)
                    .listed("gear", "gear_read", 1, "crew_gear", "crew", Storage.Type.INTEGER, "gear")
                    .make(),
            SeasonTable.of("spray_plan", SpraySheet.SHEET).make(),
            SeasonTable.of("stand_count", StandCountSheet.SHEET).make(),
            SeasonTable.of("month_climate", ClimateSheet.SHEET).make(),
            SeasonTable.of("weather_day", WeatherDaySheet.SHEET)
                    .as("date", "day")
                    .make(),
            SeasonTable.of("crop_timing", CropDaySheet.SHEET)
                    .as("late_days", "days_late")
                    .make(),
            SeasonTable.of("like_weed", LikeWeedSheet.SHEET)
                    .as("as", "like_weed")
                    .make(),
            SeasonTable.of("weed_rating", RatingSheet.SHEET).make(),
            SeasonTable.of("tillage_work", TillageSheet.SHEET).make(),
            SeasonTable.of("floor_depth", FloorSheet.SHEET).make(),
            SeasonTable.of("machine", MachineSheet.SHEET).as("machine", "name").make(),
            SeasonTable.of("work_window", WorkWindowSheet.SHEET)
                    .as("window", "name")
                    .as("from", "from_date")
                    .as("until", "until_date")
                    .make(),
            SeasonTable.of("farm_limit", FarmLimitSheet.SHEET).make(),
            SeasonTable.of("price_break", PriceBreakSheet.SHEET).make(),
            SeasonTable.of("supply", SupplySheet.SHEET).make(),
            SeasonTable.of("sprayer", SprayerSheet.SHEET).make(),
            SeasonTable.of("nozzle", NozzleSheet.SHEET).make(),
            SeasonTable.of("mixing", MixingSheet.SHEET)
                    .as("order", "mix_order")
                    .as("ams_low_lb_100gal", "ams_low_lb")
                    .as("ams_high_lb_100gal", "ams_high_lb")
                    .make(),
            SeasonTable.of("water_test", WaterTestSheet.SHEET).make(),
            SeasonTable.of("addition", AdditionSheet.SHEET).make(),
            SeasonTable.of("hour_limit", HourLimitSheet.SHEET).make());

    private BookTables() {}

    /** Every table that holds rows of seasons, in the order in which they are filled. */
    static List<StoredTable> stored() {
        return Stream.concat(
                        Stream.of(Distributions.TABLE, Distributions.PAST),
                        ALL.stream().flatMap(table -> table.tables().stream()))
                .toList();
    }
}
