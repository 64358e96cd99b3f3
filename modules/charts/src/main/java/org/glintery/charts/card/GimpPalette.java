package org.glintery.charts.card;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The palette file of GIMP: a first line, some settings, comments, then a colour a line as three numbers and a name. It
 * has no codes: a name that is the line's own is its code, else the colour's number.
 */
final class GimpPalette {

    static final String MARK = "GIMP Palette";

    private static final Pattern COLOUR = Pattern.compile("\\s*(\\d{1,3})\\s+(\\d{1,3})\\s+(\\d{1,3})(?:\\s+(.*))?");
    private static final String UNNAMED = "untitled";

    private GimpPalette() {}

    static List<CardRow> rows(String text) {
        List<CardRow> rows = new ArrayList<>();
        Set<String> names = new HashSet<>();
        for (String line : text.lines().toList()) {
            Matcher colour = COLOUR.matcher(line);
            if (colour.matches()) {
                int number = rows.size() + 1;
                String name = colour.group(4) == null ? "" : colour.group(4).strip();
                boolean own = !name.isEmpty() && !name.toLowerCase(Locale.ROOT).equals(UNNAMED) && names.add(name);
                String hex = hex(colour.group(1), colour.group(2), colour.group(3));
                rows.add(new CardRow(number, own ? name : String.valueOf(number), name, hex));
            }
        }
        return rows;
    }

    /** Values over 255 become something that is no colour, and are told so. */
    private static String hex(String red, String green, String blue) {
        return String.format(
                Locale.ROOT, "#%02x%02x%02x", Integer.parseInt(red), Integer.parseInt(green), Integer.parseInt(blue));
    }
}
