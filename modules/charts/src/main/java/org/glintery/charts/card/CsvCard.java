package org.glintery.charts.card;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.glintery.api.GlinteryException;
import org.glintery.api.MalformedException;
import org.openide.util.NbBundle.Messages;

/** A card as a table with the headings code, name and hex in any order; other columns are passed over. */
final class CsvCard {

    private static final Map<String, List<String>> HEADINGS = Map.of(
            "code", List.of("code", "number"),
            "name", List.of("name", "title"),
            "hex", List.of("hex", "colour", "color", "rgb"));

    private CsvCard() {}

    /** @throws MalformedException when a quote never ends */
    static List<CardRow> rows(String text) {
        List<String[]> table = table(text);
        if (table.isEmpty()) {
            return List.of();
        }
        String[] headings = table.get(0);
        int code = column(headings, "code");
        int name = column(headings, "name");
        int hex = column(headings, "hex");
        List<CardRow> rows = new ArrayList<>();
        for (int line = 1; line < table.size(); line++) {
            String[] cells = table.get(line);
            rows.add(new CardRow(line, cell(cells, code), cell(cells, name), cell(cells, hex)));
        }
        return rows;
    }

    @Messages({"# {0} - line", "CsvCard.quote=a quotation mark is missing or one too many, from line {0} on"})
    private static List<String[]> table(String text) {
        CsvMapper mapper = new CsvMapper();
        mapper.enable(CsvParser.Feature.WRAP_AS_ARRAY);
        mapper.enable(CsvParser.Feature.SKIP_EMPTY_LINES);
        CsvSchema schema = CsvSchema.emptySchema().withColumnSeparator(separator(text));
        try (MappingIterator<String[]> rows =
                mapper.readerFor(String[].class).with(schema).readValues(text)) {
            return rows.readAll();
        } catch (JsonProcessingException e) {
            throw new MalformedException(Bundle.CsvCard_quote(String.valueOf(line(e))), e);
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

    private static int column(String[] headings, String wanted) {
        for (int column = 0; column < headings.length; column++) {
            if (HEADINGS.get(wanted).contains(headings[column].strip().toLowerCase(Locale.ROOT))) {
                return column;
            }
        }
        return -1;
    }

    private static String cell(String[] cells, int column) {
        return column < 0 || column >= cells.length ? "" : cells[column];
    }
}
