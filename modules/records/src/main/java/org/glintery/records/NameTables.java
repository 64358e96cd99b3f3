package org.glintery.records;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Spot;

/** Keeps the numbered names: drills as JSON, spots and texts as they are. Writer thread. */
final class NameTables {
    private final Names names;
    private final JacksonCodec codec;

    NameTables(Names names, JacksonCodec codec) {
        this.names = names;
        this.codec = codec;
    }

    void load(Connection connection) throws SQLException {
        load(connection, "drill", names.drills(), text -> codec.decode(text.getBytes(UTF_8), Drill.class));
        load(connection, "spot", names.spots(), Spot::parse);
        load(connection, "text", names.texts(), Function.identity());
    }

    /** Writes the names that are not on disk yet. Says nothing of them being saved: the commit may fail. */
    void write(Connection connection) throws SQLException {
        write(connection, "drill", names.drills(), drill -> codec.compact(codec.toJson(drill)));
        write(connection, "spot", names.spots(), Spot::toString);
        write(connection, "text", names.texts(), Function.identity());
    }

    /** The names that the next {@link #write} will put on disk, for the journal. */
    JournalEntry.NewNames unsaved() {
        return new JournalEntry.NewNames(
                unsaved(names.drills(), drill -> codec.compact(codec.toJson(drill))),
                unsaved(names.spots(), Spot::toString),
                unsaved(names.texts(), Function.identity()));
    }

    private static <T> JournalEntry.Some unsaved(NumberedNames<T> from, Function<T, String> text) {
        int first = from.firstUnsaved();
        return new JournalEntry.Some(
                first,
                IntStream.range(first, from.size())
                        .mapToObj(from::value)
                        .map(text)
                        .toList());
    }

    /** Takes over names from the journal. @throws IOException when their numbers do not follow */
    void take(JournalEntry.NewNames taken) throws IOException {
        take(taken.drills(), names.drills(), text -> codec.fromJson(codec.parse(text), Drill.class));
        take(taken.spots(), names.spots(), Spot::parse);
        take(taken.texts(), names.texts(), Function.identity());
    }

    private static <T> void take(JournalEntry.Some some, NumberedNames<T> into, Function<String, T> read)
            throws IOException {
        int number = some.first();
        for (String text : some.values()) {
            if (into.number(read.apply(text)) != number++) {
                throw new IOException("the journal does not follow the database");
            }
        }
    }

    void committed() {
        names.drills().savedUpTo(names.drills().size());
        names.spots().savedUpTo(names.spots().size());
        names.texts().savedUpTo(names.texts().size());
    }

    private static <T> void load(Connection connection, String table, NumberedNames<T> into, Function<String, T> read)
            throws SQLException {
        try (PreparedStatement select = connection.prepareStatement("select body from " + table + " order by no");
                ResultSet rows = select.executeQuery()) {
            while (rows.next()) {
                into.number(read.apply(rows.getString(1)));
            }
        }
        into.savedUpTo(into.size());
    }

    private static <T> void write(Connection connection, String table, NumberedNames<T> from, Function<T, String> text)
            throws SQLException {
        if (from.firstUnsaved() == from.size()) {
            return;
        }
        try (PreparedStatement insert = connection.prepareStatement("insert into " + table + " values(?, ?)")) {
            for (int number = from.firstUnsaved(); number < from.size(); number++) {
                insert.setInt(1, number);
                insert.setString(2, text.apply(from.value(number)));
                insert.addBatch();
            }
            insert.executeBatch();
        }
    }
}
