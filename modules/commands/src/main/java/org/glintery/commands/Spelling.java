package org.glintery.commands;

/** Whether one word may be a slip of the pen for another. Pure. */
final class Spelling {

    private Spelling() {}

    /** At most one slip in three letters. */
    static boolean near(String wanted, String written) {
        int longer = Math.max(wanted.length(), written.length());
        return distance(wanted, written) <= Math.max(1, longer / 3);
    }

    /** Letters to add, drop or exchange: Levenshtein, Soviet Physics Doklady 10(8):707-710, 1966. */
    static int distance(String a, String b) {
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int exchange = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(exchange, Math.min(row[j], row[j - 1]) + 1);
            }
        }
        return row[b.length()];
    }
}
