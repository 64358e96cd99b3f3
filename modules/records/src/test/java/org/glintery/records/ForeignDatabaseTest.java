package org.glintery.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.concurrent.atomic.AtomicInteger;
import org.glintery.api.Result;
import org.glintery.api.workshop.Workshop;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A database that somebody else made may hold code: it is not read. */
class ForeignDatabaseTest {
    private static final AtomicInteger RUN = new AtomicInteger();

    @TempDir
    Path temp;

    private final H2Workshops workshops = new H2Workshops();

    /** Called by the planted database, if it can. */
    public static String planted() {
        RUN.incrementAndGet();
        return "{}";
    }

    private Path workshopWith(String... statements) throws SQLException {
        Path folder = temp.resolve("w");
        workshops.create(folder).orThrow().close();
        try (Connection connection =
                        DriverManager.getConnection("jdbc:h2:file:" + folder.resolve("glintery"), "sa", "");
                Statement statement = connection.createStatement()) {
            for (String one : statements) {
                statement.execute(one);
            }
        }
        return folder;
    }

    @Test
    void runsNothing_whenATableIsAViewOverCode() throws SQLException {
        Path folder = workshopWith(
                "create alias planted for '" + ForeignDatabaseTest.class.getName() + ".planted'",
                "drop table text",
                "create view text as select 1 as no, planted() as body");
        int before = RUN.get();
        assertThat(code(workshops.open(folder))).isEqualTo("unreadable");
        assertThat(RUN).hasValue(before);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "create alias planted for 'org.glintery.records.ForeignDatabaseTest.planted'",
                "create view seen as select 1 as one",
                "create alias planted as 'String planted() { return \"\"; }'"
            })
    void isNotOpened_whenItHoldsMoreThanTables(String statement) throws SQLException {
        assertThat(code(workshops.open(workshopWith(statement)))).isEqualTo("unreadable");
    }

    @Test
    void isRefusedInWords_whenTheFolderHasASemicolon() {
        Result<Workshop> made = workshops.create(temp.resolve("kits;2024"));
        assertThat(code(made)).isEqualTo("folder-name");
        assertThat(temp.resolve("kits;2024")).doesNotExist();
    }

    private static String code(Result<Workshop> result) {
        if (result instanceof Result.Refused<Workshop> refused) {
            return refused.refusal().code();
        }
        ((Result.Ok<Workshop>) result).value().close();
        return "ok";
    }
}
