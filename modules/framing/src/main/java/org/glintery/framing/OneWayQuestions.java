package org.glintery.framing;

import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.glintery.api.activework.Question;
import org.glintery.api.framing.FramePlan.Decision;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;

/** The open questions that have to be settled before a step that can not be taken back. Pure; any thread. */
public final class OneWayQuestions {

    /** Trimming, stretching or gluing: what these rule out stays ruled out. A sleeve or a bare wall rule out nothing. */
    private static final Set<Decision> ONE_WAY =
            Set.of(Decision.FRAMED, Decision.STRETCHED, Decision.ON_BOARD, Decision.HANGER);

    private OneWayQuestions() {}

    public static boolean isOneWay(Decision decision) {
        return ONE_WAY.contains(decision);
    }

    /** The texts of a piece's questions that wait for an answer first, oldest first. */
    public static List<String> of(View view, UUID piece) {
        return view.all(Question.TYPE).stream()
                .map(Stored::value)
                .filter(question -> question.piece().equals(piece))
                .filter(question -> question.settleFirst() && question.answer().isEmpty())
                .sorted((a, b) -> a.askedOn().compareTo(b.askedOn()))
                .map(Question::text)
                .toList();
    }
}
