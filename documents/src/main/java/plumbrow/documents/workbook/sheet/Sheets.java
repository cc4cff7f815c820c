package plumbrow.documents.workbook.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import plumbrow.advice.crew.Crew;
import plumbrow.advice.crew.Person;
import plumbrow.advice.means.Means;
import plumbrow.advice.pests.Pests;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.Program;
import plumbrow.advice.season.Ground;
import plumbrow.advice.season.Season;
import plumbrow.advice.season.Work;
import plumbrow.advice.shelf.Ask;
import plumbrow.advice.shelf.LabelBook;
import plumbrow.advice.shelf.Shelf;
import plumbrow.advice.tank.TankBook;
import plumbrow.advice.weeds.WeedBook;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.form.SheetValues;

/** All sheets of the workbook in order, and the season their rows make. */
public final class Sheets {
    /** The sheets in the order in which they stand in the workbook. */
    public static final List<Sheet<?>> ALL = List.of(
            SeasonSheet.SHEET,
            FarmSheet.SHEET,
            FieldSheet.SHEET,
            HistorySheet.SHEET,
            InsectSheet.SHEET,
            TraitDoubtSheet.SHEET,
            WeedSheet.SHEET,
            ShelfSheet.SHEET,
            SeedSheet.SHEET,
            TraitSheet.SHEET,
            ActiveSheet.SHEET,
            LabelUseSheet.SHEET,
            ActiveLimitSheet.SHEET,
            ControlSheet.SHEET,
            ProgramSheet.SHEET,
            PassSheet.SHEET,
            AssumptionSheet.SHEET,
            TermsSheet.SHEET,
            SoilRateSheet.SHEET,
            SetbackSheet.SHEET,
            PlantBackSheet.SHEET,
            MixRuleSheet.SHEET,
            SpecialLabelSheet.SHEET,
            CareSheet.SHEET,
            ToleranceSheet.SHEET,
            LabelLimitSheet.SHEET,
            BulletinSheet.SHEET,
            SurroundingsSheet.SHEET,
            AlsoInSheet.SHEET,
            LandSheet.SHEET,
            NextCropSheet.SHEET,
            ResistanceSheet.SHEET,
            SpraySheet.SHEET,
            PeopleSheet.SHEET,
            LicenceSheet.SHEET,
            CrewSheet.SHEET,
            LogSheet.SHEET,
            StandCountSheet.SHEET,
            ClimateSheet.SHEET,
            WeatherDaySheet.SHEET,
            CropDaySheet.SHEET,
            LikeWeedSheet.SHEET,
            RatingSheet.SHEET,
            TillageSheet.SHEET,
            FloorSheet.SHEET,
            MachineSheet.SHEET,
            WorkWindowSheet.SHEET,
            FarmLimitSheet.SHEET,
            PriceBreakSheet.SHEET,
            SupplySheet.SHEET,
            SprayerSheet.SHEET,
            NozzleSheet.SHEET,
            MixingSheet.SHEET,
            WaterTestSheet.SHEET,
            AdditionSheet.SHEET,
            HourLimitSheet.SHEET);

    private Sheets() {}

    /** The sheet of a name, whatever its case. */
    public static Optional<Sheet<?>> named(String name) {
        String tidy = name.strip().toLowerCase(Locale.ROOT);
        return ALL.stream().filter(sheet -> sheet.isCalled(tidy)).findFirst();
    }

    /** The season of rows in which nothing is wrong. */
    public static Season season(SheetValues tables) {
        SeasonSheet.Line line = tables.values(SeasonSheet.SHEET).get(0);
        return new Season(
                line.year(),
                line.asOf(),
                line.adviser(),
                tables.values(FarmSheet.SHEET),
                tables.values(FieldSheet.SHEET),
                tables.values(HistorySheet.SHEET),
                new Shelf(
                        tables.values(ShelfSheet.SHEET),
                        tables.values(SeedSheet.SHEET),
                        tables.values(TraitSheet.SHEET),
                        tables.values(ActiveSheet.SHEET),
                        tables.values(LabelUseSheet.SHEET),
                        tables.values(ActiveLimitSheet.SHEET),
                        tables.values(ControlSheet.SHEET),
                        labels(tables)),
                new Pests(
                        tables.values(InsectSheet.SHEET),
                        tables.values(TraitDoubtSheet.SHEET),
                        tables.values(WeedSheet.SHEET),
                        tables.values(ResistanceSheet.SHEET),
                        weedBook(tables)),
                programs(tables),
                tables.values(AssumptionSheet.SHEET),
                ground(tables),
                work(tables));
    }

    private static WeedBook weedBook(SheetValues tables) {
        return new WeedBook(
                tables.values(ClimateSheet.SHEET),
                tables.values(WeatherDaySheet.SHEET),
                tables.values(CropDaySheet.SHEET),
                tables.values(LikeWeedSheet.SHEET),
                tables.values(RatingSheet.SHEET),
                tables.values(TillageSheet.SHEET),
                tables.values(FloorSheet.SHEET));
    }

    private static LabelBook labels(SheetValues tables) {
        return new LabelBook(
                tables.values(TermsSheet.SHEET),
                tables.values(SoilRateSheet.SHEET),
                tables.values(SetbackSheet.SHEET),
                tables.values(PlantBackSheet.SHEET),
                tables.values(MixRuleSheet.SHEET),
                tables.values(SpecialLabelSheet.SHEET),
                tables.values(CareSheet.SHEET),
                tables.values(ToleranceSheet.SHEET),
                tables.values(LabelLimitSheet.SHEET),
                tables.values(BulletinSheet.SHEET),
                List.of());
    }

    private static Ground ground(SheetValues tables) {
        List<SurroundingsSheet.Line> lines = tables.values(SurroundingsSheet.SHEET);
        return new Ground(
                SurroundingsSheet.looked(lines),
                SurroundingsSheet.features(lines),
                tables.values(AlsoInSheet.SHEET),
                tables.values(NextCropSheet.SHEET),
                tables.values(LandSheet.SHEET));
    }

    private static Work work(SheetValues tables) {
        List<Person> people = tables.values(PeopleSheet.SHEET);
        Crew crew = tables.values(CrewSheet.SHEET).stream()
                .findFirst()
                .map(line -> new Crew(people, line.gear(), line.display(), tables.values(LicenceSheet.SHEET)))
                .orElse(new Crew(people, null, Ask.UNKNOWN, tables.values(LicenceSheet.SHEET)));
        return new Work(
                tables.values(SpraySheet.SHEET),
                crew,
                tables.values(LogSheet.SHEET),
                new Means(
                        tables.values(MachineSheet.SHEET),
                        tables.values(WorkWindowSheet.SHEET),
                        tables.values(FarmLimitSheet.SHEET),
                        tables.values(PriceBreakSheet.SHEET),
                        tables.values(SupplySheet.SHEET),
                        tank(tables)),
                tables.values(StandCountSheet.SHEET));
    }

    private static TankBook tank(SheetValues tables) {
        return new TankBook(
                tables.values(SprayerSheet.SHEET),
                tables.values(NozzleSheet.SHEET),
                tables.values(MixingSheet.SHEET),
                tables.values(WaterTestSheet.SHEET),
                tables.values(AdditionSheet.SHEET),
                tables.values(HourLimitSheet.SHEET));
    }

    /** Programs with their passes in the order of their numbers, in whatever order the rows stand. */
    private static List<Program> programs(SheetValues tables) {
        Map<List<String>, List<Pass>> passes = new LinkedHashMap<>();
        for (PassSheet.Line line : tables.values(PassSheet.SHEET)) {
            passes.computeIfAbsent(List.of(line.field(), line.program()), program -> new ArrayList<>())
                    .add(line.pass());
        }
        passes.values().forEach(each -> each.sort(Comparator.comparingInt(Pass::number)));
        return tables.values(ProgramSheet.SHEET).stream()
                .map(program -> new Program(
                        program.field(),
                        program.name(),
                        program.baseline(),
                        program.refuge(),
                        program.note(),
                        passes.getOrDefault(List.of(program.field(), program.name()), List.of())))
                .toList();
    }
}
