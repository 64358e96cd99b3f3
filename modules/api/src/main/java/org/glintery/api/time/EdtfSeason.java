package org.glintery.api.time;

import java.util.List;
import java.util.Optional;

/** A season, quarter, third or half of a year. */
record EdtfSeason(int year, SeasonOfYear season, Doubt yearDoubt, Doubt seasonDoubt) implements Edtf {

    /** Empty when the two parts are not a year and a number of a season. */
    static Optional<EdtfSeason> of(List<Part> parts) {
        if (parts.size() != 2 || parts.get(0).open() || parts.get(1).open()) {
            return Optional.empty();
        }
        int number = Integer.parseInt(parts.get(1).digits());
        if (!SeasonOfYear.exists(number) || parts.get(0).digits().equals("-0000")) {
            return Optional.empty();
        }
        return Optional.of(new EdtfSeason(
                Integer.parseInt(parts.get(0).digits()),
                SeasonOfYear.numbered(number),
                parts.get(0).doubt(),
                parts.get(1).doubt()));
    }

    static EdtfSeason of(int year, SeasonOfYear season) {
        return new EdtfSeason(year, season, Doubt.NONE, Doubt.NONE);
    }

    @Override
    public Span span() {
        return season.in(year);
    }

    @Override
    public EdtfSeason doubted(Doubt doubt) {
        return new EdtfSeason(year, season, yearDoubt.and(doubt), seasonDoubt.and(doubt));
    }

    @Override
    public String text() {
        return Part.text(List.of(
                new Part(EdtfText.year(year), yearDoubt), new Part(EdtfText.two(season.number()), seasonDoubt)));
    }

    @Override
    public String words() {
        return yearDoubt == seasonDoubt
                ? yearDoubt.lead() + season.words(year)
                : season.words(year)
                        + DateWords.differingDoubts(List.of("year", "season"), List.of(yearDoubt, seasonDoubt));
    }
}
