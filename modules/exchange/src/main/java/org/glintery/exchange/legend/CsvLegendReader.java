package org.glintery.exchange.legend;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.StringReader;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.glintery.api.OffTheEventThread;
import org.glintery.api.Result;
import org.glintery.api.exchange.LegendReader;
import org.openide.util.NbBundle.Messages;

/** Reads legends from CSV, no more of a file than a legend can hold. Any thread; files not on the event thread. */
@Messages({
    "# {0} - file",
    "CsvLegendReader.unreadable=The file {0} can''t be read. Nothing was imported; look whether it is there and may be read.",
    "CsvLegendReader.tooLarge=This file is larger than 64 MiB. Nothing was imported; a legend has at most a thousand lines.",
    "CsvLegendReader.notText=This file is not a table of text. Nothing was imported; save the legend as CSV and try again.",
    "CsvLegendReader.pasted=text"
})
final class CsvLegendReader implements LegendReader {
    private static final long MOST_BYTES = 64L << 20;
    private static final int HEAD_BYTES = 4096;

    @Override
    public Result<Reading> read(Path file, Assumed assumed) {
        OffTheEventThread.check();
        try {
            if (Files.size(file) > MOST_BYTES) {
                return Result.refused("too-large", Bundle.CsvLegendReader_tooLarge());
            }
            return read(file, encodings(file), assumed);
        } catch (IOException e) {
            return Result.refused("unreadable", Bundle.CsvLegendReader_unreadable(file));
        }
    }

    private static List<Encoding> encodings(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return Encoding.of(in.readNBytes(HEAD_BYTES));
        }
    }

    private static Result<Reading> read(Path file, List<Encoding> encodings, Assumed assumed) throws IOException {
        for (Encoding encoding : encodings) {
            try (Reader reader = reader(file, encoding)) {
                return LegendRows.read(new LegendText(reader), encoding.words(), assumed);
            } catch (CharacterCodingException e) {
                // Not this encoding, then: the next is tried.
                continue;
            }
        }
        return Result.refused("not-a-legend", Bundle.CsvLegendReader_notText());
    }

    private static Reader reader(Path file, Encoding encoding) throws IOException {
        InputStream in = new BufferedInputStream(Files.newInputStream(file));
        in.skipNBytes(encoding.mark());
        return new InputStreamReader(
                in,
                encoding.charset()
                        .newDecoder()
                        .onMalformedInput(CodingErrorAction.REPORT)
                        .onUnmappableCharacter(CodingErrorAction.REPORT));
    }

    @Override
    public Result<Reading> readText(String text, Assumed assumed) {
        try {
            return LegendRows.read(new LegendText(new StringReader(text)), Bundle.CsvLegendReader_pasted(), assumed);
        } catch (IOException e) {
            throw new IllegalStateException("text in memory can always be read", e);
        }
    }
}
