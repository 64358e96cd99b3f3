package org.glintery.charts.card;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import org.glintery.api.GlinteryException;
import org.glintery.api.MalformedException;
import org.openide.util.NbBundle.Messages;

/** A table of a file, its first line the headings. @param lines with the headings */
record CsvTable(List<String[]> lines) {

    /** @throws MalformedException when a quote never ends */
    @Messages({"# {0} - line", "CsvTable.quote=a quotation mark is missing or one too many, from line {0} on"})
    static CsvTable of(String text) {
        String plain = text.toLowerCase(Locale.ROOT).startsWith("sep=") ? text.substring(5) : text;
        CsvMapper mapper = new CsvMapper();
        mapper.enable(CsvParser.Feature.WRAP_AS_ARRAY);
        mapper.enable(CsvParser.Feature.SKIP_EMPTY_LINES);
        CsvSchema schema = CsvSchema.emptySchema().withColumnSeparator(separator(plain));
        try (MappingIterator<String[]> rows =
                mapper.readerFor(String[].class).with(schema).readValues(plain)) {
            return new CsvTable(rows.readAll());
        } catch (JsonProcessingException e) {
            throw new MalformedException(Bundle.CsvTable_quote(String.valueOf(line(e))), e);
        } catch (IOException e) {
            throw new GlinteryException("text in memory can always be read", e);
        }
    }

    private static int line(JsonProcessingException fault) {
        return fault.getLocation() == null ? 1 : Math.max(1, fault.getLocation().getLineNr());
    }

    /** What stands oftenest in the heading; a comma where nothing does. */
    private static char separator(String text) {
        String heading =
                text.lines().filter(line -> !line.isBlank()).findFirst().orElse("");
        char separator = ',';
        for (char candidate : new char[] {';', '\t'}) {
            separator = count(heading, candidate) > count(heading, separator) ? candidate : separator;
        }
        return separator;
    }

    private static long count(String text, char sign) {
        return text.chars().filter(c -> c == sign).count();
    }

    /** The first column with one of these headings, in lower case; -1 when there is none. */
    int column(List<String> names) {
        String[] headings = lines.isEmpty() ? new String[0] : lines.get(0);
        for (int column = 0; column < headings.length; column++) {
            if (names.contains(headings[column].strip().toLowerCase(Locale.ROOT))) {
                return column;
            }
        }
        return -1;
    }

    /** Blank where the line has no such column. */
    String cell(int line, int column) {
        String[] cells = lines.get(line);
        return column < 0 || column >= cells.length ? "" : cells[column];
    }
}
