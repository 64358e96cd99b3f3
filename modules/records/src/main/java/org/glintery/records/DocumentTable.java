package org.glintery.records;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.workshop.DocRef;

/** Documents as they stand, and what each change found in their place. Writer thread. */
final class DocumentTable {
    /** H2 holds a whole result; a longer one it puts into a file of its own first. */
    private static final int READ_AT_ONCE = 10_000;

    private final Connection connection;
    private final NumberedNames<String> texts;
    private final PreparedStatement put;
    private final PreparedStatement log;

    /** What a change found. @param packed null when there was no document; @param afterHash empty when it removed it */
    record Found(DocRef ref, int typeVersion, byte[] packed, Optional<byte[]> afterHash) {}

    DocumentTable(Connection connection, NumberedNames<String> texts) throws SQLException {
        this.connection = connection;
        this.texts = texts;
        put = connection.prepareStatement("merge into document key(no) values(?,?,?,?,?,?,?,?)");
        log = connection.prepareStatement("insert into document_log values(?,?,?,?,?,?)");
    }

    Documents load() throws SQLException {
        List<Document> documents = new ArrayList<>();
        try (PreparedStatement select = connection.prepareStatement(
                "select no, owner, type, id_high, id_low, type_version, version, body from document where no > ?"
                        + " order by no limit " + READ_AT_ONCE)) {
            int last;
            do {
                last = documents.size();
                select.setInt(1, last == 0 ? 0 : documents.get(last - 1).number());
                try (ResultSet rows = select.executeQuery()) {
                    while (rows.next()) {
                        documents.add(document(rows));
                    }
                }
            } while (documents.size() == last + READ_AT_ONCE);
        }
        return Documents.opened(documents);
    }

    private Document document(ResultSet row) throws SQLException {
        return new Document(row.getInt(1), ref(row, 2), row.getInt(6), row.getInt(7), row.getBytes(8));
    }

    /** The key in four columns from the given one on. */
    private DocRef ref(ResultSet rows, int column) throws SQLException {
        return new DocRef(
                texts.value(rows.getInt(column)),
                texts.value(rows.getInt(column + 1)),
                new UUID(rows.getLong(column + 2), rows.getLong(column + 3)));
    }

    /** Gives owners and types their numbers, before the names are written. */
    void number(List<Draft.DocumentStep> steps) {
        for (Draft.DocumentStep step : steps) {
            texts.number(step.after().ref().owner());
            texts.number(step.after().ref().type());
        }
    }

    void write(long change, List<Draft.DocumentStep> steps) throws SQLException {
        if (steps.isEmpty()) {
            return;
        }
        Map<Integer, Document> last = new LinkedHashMap<>();
        int place = 0;
        for (Draft.DocumentStep step : steps) {
            last.put(step.after().number(), step.after());
            logged(change, place++, step);
            log.addBatch();
        }
        log.executeBatch();
        for (Document document : last.values()) {
            put.setInt(1, document.number());
            put.setInt(2, texts.number(document.ref().owner()));
            put.setInt(3, texts.number(document.ref().type()));
            put.setLong(4, document.ref().id().getMostSignificantBits());
            put.setLong(5, document.ref().id().getLeastSignificantBits());
            put.setInt(6, document.typeVersion());
            put.setInt(7, document.version());
            put.setBytes(8, document.packed());
            put.addBatch();
        }
        put.executeBatch();
    }

    private void logged(long change, int place, Draft.DocumentStep step) throws SQLException {
        boolean was = step.before() != null && step.before().present();
        log.setLong(1, change);
        log.setInt(2, place);
        log.setInt(3, step.after().number());
        log.setInt(4, was ? step.before().typeVersion() : 0);
        log.setBytes(5, was ? step.before().packed() : null);
        log.setBytes(6, step.after().hash().orElse(null));
    }

    /** What a change found, in the order it went about it. */
    List<Found> foundBy(long change) throws SQLException {
        try (PreparedStatement select = connection.prepareStatement(
                "select d.owner, d.type, d.id_high, d.id_low, l.type_version, l.body, l.after_hash from document_log l"
                        + " join document d on d.no = l.no where l.change = ? order by l.place")) {
            select.setLong(1, change);
            try (ResultSet rows = select.executeQuery()) {
                var found = new ArrayList<Found>();
                while (rows.next()) {
                    found.add(new Found(
                            ref(rows, 1), rows.getInt(5), rows.getBytes(6), Optional.ofNullable(rows.getBytes(7))));
                }
                return found;
            }
        }
    }
}
