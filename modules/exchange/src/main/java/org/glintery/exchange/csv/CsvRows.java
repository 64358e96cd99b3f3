package org.glintery.exchange.csv;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.dataformat.csv.CsvFactory;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.Closeable;
import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads a file row by row, never more of it than is asked for. Not safe for use by several threads. */
public final class CsvRows implements Closeable {
    private final CsvParser parser;
    private final int mostCells;
    private int line = 1;

    /**
     * Closes the text at its own end.
     *
     * @param mostCells a row with more is broken
     * @param longestCell in characters; a row with a longer one is broken
     */
    public CsvRows(Reader text, char separator, int mostCells, int longestCell) throws IOException {
        this.mostCells = mostCells;
        var factory = CsvFactory.builder()
                .streamReadConstraints(StreamReadConstraints.builder()
                        .maxStringLength(longestCell)
                        .build())
                .build();
        parser = factory.createParser(text);
        parser.setSchema(CsvSchema.emptySchema().withColumnSeparator(separator));
    }

    /**
     * The next row, be it blank; empty at the end.
     *
     * @throws BrokenRowException when it can't be made out; there is no use in asking again
     */
    public Optional<CsvRow> next() throws IOException {
        try {
            if (parser.nextToken() != JsonToken.START_ARRAY) {
                return Optional.empty();
            }
            line = parser.currentLocation().getLineNr();
            return Optional.of(new CsvRow(line, cells()));
        } catch (JsonProcessingException e) {
            throw new BrokenRowException(line, e);
        }
    }

    private List<String> cells() throws IOException {
        List<String> cells = new ArrayList<>();
        while (parser.nextToken() == JsonToken.VALUE_STRING) {
            if (cells.size() >= mostCells) {
                throw new BrokenRowException(line, null);
            }
            cells.add(parser.getText());
        }
        return cells;
    }

    @Override
    public void close() throws IOException {
        parser.close();
    }
}
