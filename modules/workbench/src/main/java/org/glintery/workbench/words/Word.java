package org.glintery.workbench.words;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.stream.Stream;
import org.glintery.api.stash.Standing;
import org.openide.util.NbBundle;

/** One entry of the glossary. Its texts stand in {@code Words.properties}. Any thread. */
public enum Word {
    DRILL,
    ROUND(Stands.ALONE),
    SQUARE(Stands.ALONE),
    SPECIAL_SHAPE,
    SHAPE(Stands.ALONE),
    BODY(Stands.ALONE),
    RESIN(Stands.ALONE),
    CRYSTAL(Stands.ALONE),
    TRANSLUCENT(Stands.ALONE),
    GLOW(Stands.ALONE),
    COATING,
    AB,
    METALLIC,
    PEARL(Stands.ALONE),
    GLITTER(Stands.ALONE),
    COLOUR_CARD(Stands.ALONE),
    CODE(Stands.ALONE),
    LOT(Stands.ALONE),
    KIT,
    PIECE,
    CANVAS,
    DRILLED_SIZE,
    POURED_GLUE,
    DOUBLE_SIDED,
    COVER_FILM,
    RELEASE_PAPER,
    COVERAGE,
    LEGEND,
    SYMBOL,
    NEEDED(Stands.ALONE),
    SUPPLIED(Stands.ALONE),
    LAID(Stands.ALONE),
    AT_HAND,
    RESERVED,
    MISSING(Stands.ALONE),
    AMOUNT(Stands.ALONE),
    COUNTED(Stands.ALONE),
    ROUGH(Stands.ALONE),
    NOT_KNOWN,
    CONFETTI,
    COLOUR_BLOCK,
    MULTI_PLACER,
    HOLDER,
    POCKET,
    BAG,
    SPOT,
    KIT_UP,
    KIT_DOWN,
    LEFTOVERS,
    REPAIR_PACKET,
    SITTING,
    SECTION,
    OPEN_QUESTION,
    ALTERATION,
    STANDING,
    HOPED_FOR(Stands.ALONE),
    ORDERED(Stands.ALONE),
    SHELVED(Stands.ALONE),
    ON_THE_BENCH,
    RESTING(Stands.ALONE),
    MADE(Stands.ALONE),
    LET_GO(Stands.ALONE),
    FINISH(Stands.ALONE),
    SCORE(Stands.ALONE),
    POPPING,
    SEALING,
    KEEPING_PLACE,
    FRAME_PLAN,
    MOULDING,
    FACE(Stands.ALONE),
    LIP,
    REBATE,
    SIGHT_SIZE,
    MOUNT,
    GLAZING,
    MITRE,
    KERF,
    RAIL,
    STRETCHER_BARS,
    WORKSHOP,
    BACKUP(Stands.ALONE);

    private enum Stands {
        ALONE,
        ANYWHERE
    }

    private final Stands stands;

    Word() {
        this(Stands.ANYWHERE);
    }

    /** @param stands {@code ALONE} for an everyday word that is one of ours only where nothing else stands beside it */
    Word(Stands stands) {
        this.stands = stands;
    }

    /** What a standing is. */
    public static Word of(Standing standing) {
        return valueOf(standing.name());
    }

    /** As it is written at the head of its entry. */
    public String term() {
        return texts().getString(name() + ".term");
    }

    /** What it is, in one sentence. */
    public String meaning() {
        return texts().getString(name() + ".means");
    }

    /** The term and its other forms, in lower case. */
    List<String> forms() {
        String also = name() + ".also";
        Stream<String> others = texts().containsKey(also)
                ? Arrays.stream(texts().getString(also).split("\\s*,\\s*"))
                : Stream.empty();
        return Stream.concat(Stream.of(term()), others)
                .map(form -> form.toLowerCase(Locale.ROOT))
                .toList();
    }

    boolean standsAlone() {
        return stands == Stands.ALONE;
    }

    static ResourceBundle texts() {
        return NbBundle.getBundle(
                "org.glintery.workbench.words.Words", Locale.getDefault(), Word.class.getClassLoader());
    }
}
