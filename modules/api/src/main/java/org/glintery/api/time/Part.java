package org.glintery.api.time;

import java.util.List;

/**
 * A year, month, day or season as written, with the doubt on it.
 *
 * @param digits such as {@code 2004}, {@code -19XX} or {@code 0X}
 */
record Part(String digits, Doubt doubt) {

    Part doubted(Doubt more) {
        return new Part(digits, doubt.and(more));
    }

    boolean open() {
        return digits.indexOf('X') >= 0;
    }

    boolean allOpen() {
        return digits.chars().allMatch(c -> c == 'X');
    }

    /**
     * The canonical text. A mark after a part covers all to its left, one before it only that part: so the doubt that the
     * first parts share stands after them, any other before its own part.
     */
    static String text(List<Part> parts) {
        Doubt shared = parts.get(0).doubt();
        int sharing = 1;
        while (sharing < parts.size() && parts.get(sharing).doubt() == shared) {
            sharing++;
        }
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < parts.size(); i++) {
            Part part = parts.get(i);
            text.append(i == 0 ? "" : "-");
            if (i >= sharing) {
                text.append(part.doubt().mark());
            }
            text.append(part.digits());
            if (i == sharing - 1) {
                text.append(shared.mark());
            }
        }
        return text.toString();
    }

    static List<Part> doubted(List<Part> parts, Doubt more) {
        return parts.stream().map(part -> part.doubted(more)).toList();
    }
}
