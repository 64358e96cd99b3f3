package org.glintery.charts.card;

import java.util.List;
import org.glintery.api.JsonCodec;
import org.glintery.api.MalformedException;
import org.glintery.api.Result;
import org.glintery.api.stash.ColourCard;
import org.openide.util.NbBundle.Messages;

/**
 * Reads a colour card from a file: a table with the columns code, name and hex, a JSON list of such entries, or a GIMP
 * palette. What it is shows in its first characters; the file's name says nothing. Any thread.
 */
@Messages({
    "# {0} - most megabytes",
    "CardFile.tooLarge=The card''s file is larger than {0} megabytes. Nothing was read; give a list of codes, names and "
            + "colours.",
    "CardFile.withoutColours=No line of the card's file holds a code. It needs the columns code, name and hex with a "
            + "heading, a JSON list of such entries, or a GIMP palette.",
    "# {0} - card",
    "# {1} - what is wrong",
    "CardFile.malformed=The file of the card {0} can''t be read: {1}. Nothing was taken from it."
})
public final class CardFile {

    private static final int MOST_MEGABYTES = 8;

    private final JsonCodec codec;

    public CardFile(JsonCodec codec) {
        this.codec = codec;
    }

    /**
     * The card; what was left out or not understood is told as warnings.
     *
     * @param name the card's short name, as drills will refer to it
     */
    public Result<ColourCard> read(String name, byte[] file) {
        if (file.length > MOST_MEGABYTES << 20) {
            return Result.refused("card-too-large", Bundle.CardFile_tooLarge(String.valueOf(MOST_MEGABYTES)));
        }
        String text = CardText.of(file);
        CardEntries entries = new CardEntries();
        try {
            rows(text).forEach(entries::add);
        } catch (MalformedException e) {
            return Result.refused("card-malformed", Bundle.CardFile_malformed(name, e.getMessage()));
        }
        if (entries.isEmpty()) {
            return Result.refused("card-without-colours", Bundle.CardFile_withoutColours());
        }
        return Result.ok(new ColourCard(name, name, entries.byCode(), List.of()), entries.warnings());
    }

    private List<CardRow> rows(String text) {
        String start = text.stripLeading();
        if (start.regionMatches(true, 0, GimpPalette.MARK, 0, GimpPalette.MARK.length())) {
            return GimpPalette.rows(text);
        }
        return start.startsWith("[") || start.startsWith("{") ? JsonCard.rows(codec.parse(start)) : CsvCard.rows(text);
    }
}
