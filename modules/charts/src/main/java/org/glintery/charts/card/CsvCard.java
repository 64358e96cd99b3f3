package org.glintery.charts.card;

import java.util.ArrayList;
import java.util.List;
import org.glintery.api.MalformedException;

/** A card as a table with the headings code, name and hex in any order; other columns are passed over. */
final class CsvCard {

    static final List<String> CODE = List.of("code", "number");
    private static final List<String> NAME = List.of("name", "title");
    private static final List<String> HEX = List.of("hex", "colour", "color", "rgb");

    private CsvCard() {}

    /** @throws MalformedException when a quote never ends */
    static List<CardRow> rows(String text) {
        CsvTable table = CsvTable.of(text);
        int code = table.column(CODE);
        int name = table.column(NAME);
        int hex = table.column(HEX);
        List<CardRow> rows = new ArrayList<>();
        for (int line = 1; line < table.lines().size(); line++) {
            rows.add(new CardRow(line, table.cell(line, code), table.cell(line, name), table.cell(line, hex)));
        }
        return rows;
    }
}
