package plumbrow.app.book;

import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.springframework.jdbc.core.JdbcOperations;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The form of the tables, as numbered steps from an empty file to today's. */
final class Schema {
    /** The step that Plumbrow knows last: the highest V number in the folder of migrations. */
    static final int VERSION = 25;

    private Schema() {}

    /** The step a database stands at. */
    static int version(JdbcOperations sql) {
        return JdbcClient.create(sql)
                .sql("SELECT max(CAST(version AS INTEGER)) FROM flyway_schema_history WHERE success = 1")
                .query(Integer.class)
                .single();
    }

    /** Takes the steps that are missing, each whole or not at all. */
    static void bringUpToDate(DataSource source, String vendor) {
        Flyway.configure(Schema.class.getClassLoader())
                .dataSource(source)
                .locations("classpath:db/migration/" + vendor)
                .load()
                .migrate();
    }
}
