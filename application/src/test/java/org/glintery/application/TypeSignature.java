package org.glintery.application;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * What others see of one public type.
 *
 * @param status {@code stable}, or {@code preview} and the version that brought it
 * @param extension whether add-ons implement it
 * @param shape its kind, modifiers, supertype and, of a record, its components
 * @param members one a line, without those that a supertype has already
 */
record TypeSignature(String name, String status, boolean extension, String shape, SortedSet<String> members) {
    private static final String EXTENSION = "extension point ";
    private static final String INDENT = "  ";
    private static final String STABLE = "stable";

    /** What was promised and is not kept, in words; nothing of what was a preview. @param now null when it is gone */
    List<String> broken(TypeSignature now) {
        if (!status.equals(STABLE)) {
            return List.of();
        }
        if (now == null) {
            return List.of(name + " is gone");
        }
        List<String> broken = new ArrayList<>();
        if (!now.header().equals(header())) {
            broken.add(name + " was '" + header() + "' and is '" + now.header() + "'");
        }
        without(members, now.members).forEach(member -> broken.add(name + " lost '" + member + "'"));
        for (String member : without(now.members, members)) {
            if (extension || member.startsWith("abstract ")) {
                broken.add(name + " is implemented by add-ons and gained '" + member + "'");
            }
        }
        return broken;
    }

    private static SortedSet<String> without(SortedSet<String> some, SortedSet<String> others) {
        SortedSet<String> left = new TreeSet<>(some);
        left.removeAll(others);
        return left;
    }

    private String header() {
        return status + " " + (extension ? EXTENSION : "") + shape;
    }

    /** The type in the signature file. */
    List<String> lines() {
        List<String> lines = new ArrayList<>(List.of(name, INDENT + header()));
        members.forEach(member -> lines.add(INDENT + INDENT + member));
        return lines;
    }

    /** Reads what {@link #lines} wrote. */
    static TypeSignature of(List<String> lines) {
        String header = lines.get(1).strip();
        String status = header.startsWith(STABLE) ? STABLE : header.replaceAll("^(preview \\S+) .*", "$1");
        String rest = header.substring(status.length() + 1);
        boolean extension = rest.startsWith(EXTENSION);
        SortedSet<String> members = new TreeSet<>();
        lines.subList(2, lines.size()).forEach(line -> members.add(line.strip()));
        return new TypeSignature(
                lines.get(0), status, extension, extension ? rest.substring(EXTENSION.length()) : rest, members);
    }
}
