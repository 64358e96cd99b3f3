package org.glintery.records;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;

/**
 * The one schema. Writer thread.
 *
 * @param migrations element {@code i} brings version {@code i} to {@code i + 1}
 */
record Schema(List<List<String>> migrations) {
    static final Schema OURS = new Schema(List.of(first()));

    /** The version this program writes. */
    int version() {
        return migrations.size();
    }

    private static List<String> first() {
        return List.of(
                "create table meta(name varchar primary key, content varchar not null)",
                "create table drill(no int primary key, body varchar not null)",
                "create table spot(no int primary key, body varchar not null)",
                "create table text(no int primary key, body varchar not null)",
                "create table document(no int primary key, owner int not null, type int not null,"
                        + " id_high bigint not null, id_low bigint not null, type_version int not null,"
                        + " version int not null, body varbinary)",
                "create table document_log(change bigint not null, place int not null, no int not null,"
                        + " type_version int not null, body varbinary, after_hash binary(32),"
                        + " primary key(change, place))",
                "create table movement(seq bigint primary key, id_high bigint not null, id_low bigint not null,"
                        + " kind tinyint not null, drill int not null, from_spot int not null, to_spot int not null,"
                        + " quantity bigint not null, from_variance bigint not null, from_uncounted int not null,"
                        + " to_variance bigint not null, to_uncounted int not null, lot int not null,"
                        + " basis tinyint not null, said bigint not null, uncertainty bigint not null,"
                        + " reason int not null, happened int not null, recorded bigint not null,"
                        + " reverses bigint not null, change bigint not null)",
                "create table change(seq bigint primary key, id_high bigint not null, id_low bigint not null,"
                        + " sentence varchar not null, recorded bigint not null, kind tinyint not null,"
                        + " undoes bigint not null, first_movement bigint not null, movements int not null)",
                "create table blob(hash varchar primary key, media_type varchar not null, size bigint not null)",
                "create table blob_log(change bigint not null, place int not null, hash varchar not null,"
                        + " media_type varchar not null, size bigint not null, added boolean not null,"
                        + " primary key(change, place))");
    }

    /**
     * Whether a database holds plain tables only. Views, routines and triggers could run code of whoever made the file,
     * such as a backup that came from elsewhere: ask before the first table is read.
     */
    static boolean isOurs(Connection connection) throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet others = statement.executeQuery("select (select count(*) from information_schema.tables"
                        + " where table_schema <> 'INFORMATION_SCHEMA' and table_type <> 'BASE TABLE')"
                        + " + (select count(*) from information_schema.routines)"
                        + " + (select count(*) from information_schema.triggers)"
                        + " + (select count(*) from information_schema.columns where table_schema = 'PUBLIC'"
                        + " and (is_generated = 'ALWAYS' or domain_name is not null))"
                        + " + (select count(*) from information_schema.constants)")) {
            others.next();
            return others.getLong(1) == 0;
        }
    }

    /** The version a database holds, 0 for an empty one. */
    static int version(Connection connection) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            try (ResultSet tables = statement.executeQuery(
                    "select count(*) from information_schema.tables where table_name = 'META'")) {
                tables.next();
                if (tables.getInt(1) == 0) {
                    return 0;
                }
            }
            try (ResultSet rows = statement.executeQuery("select content from meta where name = 'schema'")) {
                return rows.next() ? Integer.parseInt(rows.getString(1)) : 0;
            }
        }
    }

    /** Brings a database up to {@link #version}. H2 commits each table on its own: of a used one, migrate a copy. */
    void migrate(Connection connection, int from) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            for (List<String> step : migrations.subList(from, version())) {
                for (String sql : step) {
                    statement.execute(sql);
                }
            }
            statement.execute("merge into meta key(name) values('schema', '" + version() + "')");
        }
        connection.commit();
    }
}
