package org.glintery.demo;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.glintery.api.finishes.Finish.Sealing;

/**
 * What the maker wrote of a finish. Invented.
 *
 * @param score 1 to 5, or none
 * @param altered what was changed from the design, or nothing
 * @param tools by commas
 */
record FinishNote(
        Optional<Integer> score,
        String making,
        String altered,
        String tools,
        String where,
        Sealing sealing,
        String comments) {

    private static final Map<String, FinishNote> BY_TITLE = Map.of(
            "Signal board 2",
            scored(
                    3,
                    "Quick and restful: large blocks of one colour.",
                    "",
                    "pen, roller",
                    "club room",
                    Sealing.NOT_SEALED,
                    "The first of the pair."),
            "Signal board 3",
            scored(
                    4,
                    "Quicker than its fellow, now that I knew how.",
                    "Two reds exchanged in the second row.",
                    "pen, multi-placer 7 wide",
                    "club room",
                    Sealing.NOT_SEALED,
                    "They hang side by side."),
            "Cable ferry, early",
            scored(
                    5,
                    "The mist was slow, the trees went by themselves.",
                    "",
                    "pen, tweezers",
                    "kitchen table",
                    Sealing.SEALED,
                    "Looks best from across the room."),
            "Rowing boats from the quay",
            scored(
                    2,
                    "A lot of confetti in the water, and the glue gave out in one corner.",
                    "Left the outermost row away.",
                    "pen, glue pen",
                    "kitchen table",
                    Sealing.SEALED,
                    "Some drills popped off within a week. The repair packet came in handy."),
            "The long pier in winter",
            scored(
                    4,
                    "Whites and greys are hard to tell apart by lamplight. Laid by day only.",
                    "",
                    "pen, light pad",
                    "by the window",
                    Sealing.NOT_SEALED,
                    "Would make it again, larger."),
            "Pilot boat in a swell",
            scored(
                    5,
                    "Laid wave by wave, from the bottom up.",
                    "Made the flag a brighter red.",
                    "pen, multi-placer 5 wide",
                    "kitchen table",
                    Sealing.SEALED,
                    "A present for the pilot, so it left the house the same week."),
            "Lock gates at noon",
            unscored(
                    "The stones are nearly one colour; without the chart I would have been lost.",
                    "",
                    "pen",
                    "club room",
                    Sealing.NOT_SEALED,
                    ""),
            Plot.FUNNEL,
            scored(
                    5,
                    "A long one. The figures on the board were a trial.",
                    "One red for the whole funnel.",
                    "pen, multi-placer 7 wide, roller",
                    "ferry saloon",
                    Sealing.SEALED,
                    "It hung in the saloon for a week, and two people asked where to buy it."),
            "Biscuit tin, red band",
            scored(
                    4,
                    "Small, but it has to meet itself behind the tin: counted twice.",
                    "Left one column away.",
                    "pen, craft knife",
                    "kitchen table",
                    Sealing.SEALED,
                    ""),
            "Evening behind the breakwater",
            scored(
                    3,
                    "A sky of single drills. Worked from the middle outwards, and I would not again.",
                    "",
                    "pen, multi-placer 3 wide",
                    "by the window",
                    Sealing.NOT_SEALED,
                    "From two steps back it comes together."));

    private static FinishNote scored(
            int score, String making, String altered, String tools, String where, Sealing sealing, String comments) {
        return new FinishNote(Optional.of(score), making, altered, tools, where, sealing, comments);
    }

    private static FinishNote unscored(
            String making, String altered, String tools, String where, Sealing sealing, String comments) {
        return new FinishNote(Optional.empty(), making, altered, tools, where, sealing, comments);
    }

    static Optional<FinishNote> of(String title) {
        return Optional.ofNullable(BY_TITLE.get(title));
    }

    List<String> toolList() {
        return List.of(tools.split(", "));
    }
}
