package plumbrow.app.serving;

import java.nio.file.Path;
import java.time.Clock;
import java.util.Map;
import org.springframework.boot.Banner;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.SpringBootConfiguration;
import org.springframework.boot.WebApplicationType;
import org.springframework.boot.autoconfigure.ImportAutoConfiguration;
import org.springframework.boot.autoconfigure.context.ConfigurationPropertiesAutoConfiguration;
import org.springframework.boot.autoconfigure.context.PropertyPlaceholderAutoConfiguration;
import org.springframework.boot.http.converter.autoconfigure.HttpMessageConvertersAutoConfiguration;
import org.springframework.boot.security.autoconfigure.SecurityAutoConfiguration;
import org.springframework.boot.security.autoconfigure.web.servlet.SecurityFilterAutoConfiguration;
import org.springframework.boot.security.autoconfigure.web.servlet.ServletWebSecurityAutoConfiguration;
import org.springframework.boot.servlet.autoconfigure.HttpEncodingAutoConfiguration;
import org.springframework.boot.servlet.autoconfigure.MultipartAutoConfiguration;
import org.springframework.boot.tomcat.autoconfigure.servlet.TomcatServletWebServerAutoConfiguration;
import org.springframework.boot.webmvc.autoconfigure.DispatcherServletAutoConfiguration;
import org.springframework.boot.webmvc.autoconfigure.WebMvcAutoConfiguration;
import org.springframework.boot.webmvc.autoconfigure.error.ErrorMvcAutoConfiguration;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Import;
import org.springframework.context.support.GenericApplicationContext;
import org.springframework.core.env.ConfigurableEnvironment;
import org.springframework.core.env.MapPropertySource;
import org.springframework.web.context.support.StandardServletEnvironment;
import plumbrow.app.book.Book;
import plumbrow.app.desk.DeskBook;
import plumbrow.app.desk.Weigher;
import plumbrow.app.desk.Weighings;
import plumbrow.app.desk.api.ApiPages;
import plumbrow.app.desk.api.OpenApiPage;
import plumbrow.app.desk.ask.AskApi;
import plumbrow.app.desk.ask.AskPage;
import plumbrow.app.desk.ask.DemoDesk;
import plumbrow.app.desk.ask.DoorsPage;
import plumbrow.app.desk.build.BuildPage;
import plumbrow.app.desk.calendar.CalendarApi;
import plumbrow.app.desk.calendar.CalendarPage;
import plumbrow.app.desk.calendar.Trials;
import plumbrow.app.desk.check.CheckPage;
import plumbrow.app.desk.check.FarmChecks;
import plumbrow.app.desk.door.Doors;
import plumbrow.app.desk.door.Pages;
import plumbrow.app.desk.door.TileAddress;
import plumbrow.app.desk.door.TroublePages;
import plumbrow.app.desk.field.FieldPage;
import plumbrow.app.desk.fieldplan.FieldPlanPage;
import plumbrow.app.desk.fieldplan.PlansOfFields;
import plumbrow.app.desk.figures.FiguresPage;
import plumbrow.app.desk.hours.HoursPage;
import plumbrow.app.desk.ingredients.IngredientsPage;
import plumbrow.app.desk.log.LogApi;
import plumbrow.app.desk.log.LogPage;
import plumbrow.app.desk.lookback.LookBackApi;
import plumbrow.app.desk.lookback.LookBackPage;
import plumbrow.app.desk.machine.MachineApi;
import plumbrow.app.desk.machine.MachinePage;
import plumbrow.app.desk.map.MapApi;
import plumbrow.app.desk.map.MapPage;
import plumbrow.app.desk.mix.MixPage;
import plumbrow.app.desk.nextseason.NextSeasonPage;
import plumbrow.app.desk.nextseason.OldPricesPage;
import plumbrow.app.desk.nextseason.SeasonsApi;
import plumbrow.app.desk.papers.PapersPage;
import plumbrow.app.desk.pests.PestsPage;
import plumbrow.app.desk.plan.PlanPage;
import plumbrow.app.desk.plan.Plans;
import plumbrow.app.desk.records.RecordsApi;
import plumbrow.app.desk.records.RecordsPage;
import plumbrow.app.desk.rows.EffectPage;
import plumbrow.app.desk.rows.EnterPage;
import plumbrow.app.desk.rows.HistoryPage;
import plumbrow.app.desk.rows.ImportPage;
import plumbrow.app.desk.rows.IncomingWorkbooks;
import plumbrow.app.desk.rows.RowsApi;
import plumbrow.app.desk.rows.RowsPage;
import plumbrow.app.desk.rows.StartPage;
import plumbrow.app.desk.search.SearchPage;
import plumbrow.app.desk.season.SeasonPage;
import plumbrow.app.desk.shelf.CardPage;
import plumbrow.app.desk.shelf.ComparePage;
import plumbrow.app.desk.shelf.ConfirmPage;
import plumbrow.app.desk.shelf.PaperApi;
import plumbrow.app.desk.shelf.ReadingPage;
import plumbrow.app.desk.shelf.ShelfPage;
import plumbrow.app.desk.shelf.ShelfPapers;
import plumbrow.app.desk.today.TodayPage;
import plumbrow.app.desk.weighing.WeighingPage;
import plumbrow.app.desk.years.YearsPage;

/**
 * Opens the desk over one book.
 *
 * <p>The parts are named one by one instead of searched for: it starts faster, and what runs is what stands here.
 */
@SpringBootConfiguration(proxyBeanMethods = false)
@ImportAutoConfiguration({
    ConfigurationPropertiesAutoConfiguration.class,
    DispatcherServletAutoConfiguration.class,
    ErrorMvcAutoConfiguration.class,
    HttpEncodingAutoConfiguration.class,
    HttpMessageConvertersAutoConfiguration.class,
    MultipartAutoConfiguration.class,
    PropertyPlaceholderAutoConfiguration.class,
    SecurityAutoConfiguration.class,
    SecurityFilterAutoConfiguration.class,
    ServletWebSecurityAutoConfiguration.class,
    TomcatServletWebServerAutoConfiguration.class,
    WebMvcAutoConfiguration.class
})
@Import({
    ApiPages.class,
    AskApi.class,
    AskPage.class,
    BuildPage.class,
    CalendarApi.class,
    CalendarPage.class,
    CardPage.class,
    CheckPage.class,
    ComparePage.class,
    ConfirmPage.class,
    DoorsPage.class,
    Doors.class,
    EffectPage.class,
    EnterPage.class,
    FieldPage.class,
    FieldPlanPage.class,
    FiguresPage.class,
    HoursPage.class,
    HistoryPage.class,
    ImportPage.class,
    IngredientsPage.class,
    LogApi.class,
    LogPage.class,
    LookBackApi.class,
    LookBackPage.class,
    RecordsPage.class,
    RecordsApi.class,
    MapApi.class,
    MapPage.class,
    MixPage.class,
    OpenApiPage.class,
    NextSeasonPage.class,
    OldPricesPage.class,
    MachinePage.class,
    MachineApi.class,
    Pages.class,
    PaperApi.class,
    PapersPage.class,
    PestsPage.class,
    PlanPage.class,
    PlansOfFields.class,
    ReadingPage.class,
    RowsApi.class,
    RowsPage.class,
    SearchPage.class,
    SeasonPage.class,
    SeasonsApi.class,
    ShelfPage.class,
    StartPage.class,
    TodayPage.class,
    TroublePages.class,
    WeighingPage.class,
    YearsPage.class
})
public class Desk {
    @Bean
    FarmChecks checks() {
        return new FarmChecks();
    }

    @Bean
    Plans plans() {
        return new Plans();
    }

    @Bean
    Trials trials(DeskBook book) {
        return new Trials(book);
    }

    @Bean
    DemoDesk demo() {
        return new DemoDesk(book -> open(book, 0));
    }

    @Bean
    IncomingWorkbooks incomingWorkbooks() {
        return new IncomingWorkbooks();
    }

    @Bean
    Clock clock() {
        return Clock.systemUTC();
    }

    @Bean
    TileAddress tiles() {
        return TileAddress.of(System.getenv(TileAddress.SETTING));
    }

    /**
     * Opens the desk, for this machine only.
     *
     * @param book the book's file
     * @param port where to listen; 0 takes a free one
     */
    public static ConfigurableApplicationContext open(Path book, int port) {
        return open(new DeskBook(Book.open(book)), Weigher.adviser(), port);
    }

    /** The same over a book already open, with a weigher of one's own. */
    public static ConfigurableApplicationContext open(DeskBook book, Weigher weigher, int port) {
        DeskLog.quiet();
        SpringApplication application = new SpringApplication(Desk.class);
        application.setWebApplicationType(WebApplicationType.SERVLET);
        application.setBannerMode(Banner.Mode.OFF);
        application.setLogStartupInfo(false);
        application.setRegisterShutdownHook(true);
        application.setAddCommandLineProperties(false);
        application.setEnvironment(pinned(port));
        application.addInitializers(context -> {
            GenericApplicationContext beans = (GenericApplicationContext) context;
            beans.registerBean(DeskBook.class, () -> book);
            beans.registerBean(Weighings.class, () -> new Weighings(weigher));
            beans.registerBean(ShelfPapers.class, () -> new ShelfPapers(book));
        });
        ConfigurableApplicationContext desk = application.run();
        desk.getBean(Weighings.class).prepare(book);
        return desk;
    }

    /** Our settings stand first in line, so that nothing in the surroundings can open the desk to the network. */
    private static ConfigurableEnvironment pinned(int port) {
        ConfigurableEnvironment environment = new StandardServletEnvironment();
        environment.getPropertySources().addFirst(new MapPropertySource("desk", settings(port)));
        return environment;
    }

    private static Map<String, Object> settings(int port) {
        return Map.ofEntries(
                Map.entry("server.address", "127.0.0.1"),
                Map.entry("server.port", port),
                Map.entry("server.shutdown", "immediate"),
                Map.entry("server.server-header", ""),
                Map.entry("server.servlet.session.persistent", "false"),
                Map.entry("spring.web.resources.cache.cachecontrol.no-cache", "true"),
                Map.entry("spring.mvc.formcontent.filter.enabled", "false"),
                Map.entry("spring.main.log-startup-info", "false"),
                Map.entry("spring.servlet.multipart.max-file-size", ShelfPapers.MOST_MB_A_FILE + "MB"),
                Map.entry("spring.servlet.multipart.max-request-size", ShelfPapers.MOST_MB_AT_ONCE + "MB"),
                Map.entry("server.tomcat.threads.max", Doors.THREADS),
                Map.entry("server.tomcat.connection-timeout", Doors.patience()),
                Map.entry("server.tomcat.max-part-count", ShelfPapers.MOST_FILES + 10),
                Map.entry("spring.jmx.enabled", "false"));
    }
}
