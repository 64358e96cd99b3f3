package org.glintery.records;

import java.io.IOException;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;

/** Writes into the database what the journal holds beyond it. Writer thread, or before there is one. */
final class Replay implements Journal.Reader {
    private final Database database;
    private final Tables tables;
    private long last;
    private Documents documents;
    private boolean wrote;

    /** @param tables with the names of the database loaded */
    Replay(Database database, Tables tables) throws SQLException {
        this.database = database;
        this.tables = tables;
        last = tables.changes().last();
    }

    @Override
    public void record(byte[] bytes) throws IOException {
        JournalEntry entry = JournalReading.entry(bytes);
        if (entry.change().number() <= last) {
            return;
        }
        if (entry.change().number() != last + 1) {
            throw new IOException("change " + (last + 1) + " is missing from the journal");
        }
        try {
            write(entry);
        } catch (SQLException e) {
            throw new IOException(e);
        }
        last = entry.change().number();
    }

    private void write(JournalEntry entry) throws SQLException, IOException {
        if (documents == null) {
            documents = tables.documents().load();
        }
        List<Draft.DocumentStep> steps = new ArrayList<>();
        for (Document document : entry.documents()) {
            steps.add(new Draft.DocumentStep(documents.trace(document.ref()).orElse(null), document));
            documents = documents.with(document);
        }
        List<Draft.BlobStep> blobs = entry.blobs().stream()
                .map(change -> new Draft.BlobStep(change.blob(), change.added(), null))
                .toList();
        tables.names().take(entry.names());
        tables.write(entry.change(), entry.movements(), steps, blobs, database.connection());
        tables.names().committed();
        wrote = true;
    }

    /** Makes what was written part of the database. */
    void finish() throws SQLException {
        if (wrote) {
            database.commit();
        }
    }
}
