package org.glintery.api.time;

import java.util.List;
import java.util.stream.Collectors;

/**
 * Several dates: one of them meant, or all.
 *
 * @param all whether all are meant: {a,b}, not [a,b]
 * @param members at least one
 */
record EdtfSet(boolean all, List<Edtf> members) implements Edtf {

    EdtfSet {
        members = List.copyOf(members);
    }

    static EdtfSet oneOf(Edtf... members) {
        return new EdtfSet(false, List.of(members));
    }

    @Override
    public Span span() {
        return members.stream().map(Edtf::span).reduce(Span::coveringAlso).orElseThrow();
    }

    @Override
    public boolean overlaps(Span other) {
        return members.stream().anyMatch(member -> member.overlaps(other));
    }

    @Override
    public Edtf doubted(Doubt doubt) {
        return new EdtfSet(all, members.stream().map(m -> m.doubted(doubt)).toList());
    }

    @Override
    public String text() {
        String inside = members.stream().map(Edtf::text).collect(Collectors.joining(","));
        return all ? "{" + inside + "}" : "[" + inside + "]";
    }

    @Override
    public String words() {
        List<String> words = members.stream()
                .map(m -> all && m instanceof EdtfRange range ? RangeWords.allOf(range) : m.words())
                .toList();
        int last = words.size() - 1;
        return last == 0
                ? words.get(0)
                : String.join(", ", words.subList(0, last)) + (all ? " and " : " or ") + words.get(last);
    }
}
