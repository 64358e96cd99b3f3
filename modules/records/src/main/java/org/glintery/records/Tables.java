package org.glintery.records;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;

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

    /** Writes the rows of one change, and the names that are not on disk yet. */
    void write(
            ChangeRow change,
            List<MovementRow> moved,
            List<Draft.DocumentStep> documentSteps,
            List<Draft.BlobStep> blobSteps,
            Connection connection)
            throws SQLException {
        names.write(connection);
        movements.insert(moved);
        documents.write(change.number(), documentSteps);
        blobs.write(change.number(), blobSteps);
        changes.insert(change);
    }
}
