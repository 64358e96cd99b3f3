package org.glintery.records;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import org.pcollections.HashPMap;
import org.pcollections.HashTreePMap;

/** Which blobs there are, and which change brought or took them. Writer thread. */
final class BlobTable {
    private final Connection connection;

    BlobTable(Connection connection) {
        this.connection = connection;
    }

    HashPMap<String, KeptBlob> load() throws SQLException {
        HashPMap<String, KeptBlob> blobs = HashTreePMap.empty();
        try (PreparedStatement select = connection.prepareStatement("select hash, media_type, size from blob");
                ResultSet rows = select.executeQuery()) {
            while (rows.next()) {
                var blob = new KeptBlob(rows.getString(1), rows.getString(2), rows.getLong(3));
                blobs = blobs.plus(blob.hash(), blob);
            }
        }
        return blobs;
    }

    void write(long change, List<Draft.BlobStep> steps) throws SQLException {
        int place = 0;
        for (Draft.BlobStep step : steps) {
            KeptBlob blob = step.blob();
            run(
                    "insert into blob_log values(?,?,?,?,?,?)",
                    change,
                    place++,
                    blob.hash(),
                    blob.mediaType(),
                    blob.size(),
                    step.added());
            if (step.added()) {
                run("insert into blob values(?,?,?)", blob.hash(), blob.mediaType(), blob.size());
            } else {
                run("delete from blob where hash = ?", blob.hash());
            }
        }
    }

    List<Draft.BlobStep> stepsOf(long change) throws SQLException {
        try (PreparedStatement select = connection.prepareStatement(
                "select hash, media_type, size, added from blob_log where change = ? order by place")) {
            select.setLong(1, change);
            try (ResultSet rows = select.executeQuery()) {
                var steps = new ArrayList<Draft.BlobStep>();
                while (rows.next()) {
                    var blob = new KeptBlob(rows.getString(1), rows.getString(2), rows.getLong(3));
                    steps.add(new Draft.BlobStep(blob, rows.getBoolean(4), null));
                }
                return steps;
            }
        }
    }

    private void run(String sql, Object... values) throws SQLException {
        try (PreparedStatement statement = connection.prepareStatement(sql)) {
            for (int i = 0; i < values.length; i++) {
                statement.setObject(i + 1, values[i]);
            }
            statement.executeUpdate();
        }
    }
}
