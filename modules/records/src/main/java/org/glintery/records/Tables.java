package org.glintery.records;

import java.sql.Connection;
import java.sql.SQLException;

/** All tables over one connection. Writer thread. */
record Tables(
        NameTables names, DocumentTable documents, MovementTable movements, ChangeTable changes, BlobTable blobs) {
    static Tables over(Connection connection, Names names, JacksonCodec codec) throws SQLException {
        return new Tables(
                new NameTables(names, codec),
                new DocumentTable(connection, names.texts()),
                new MovementTable(connection),
                new ChangeTable(connection),
                new BlobTable(connection));
    }
}
