package org.glintery.activework.ui;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.activework.Question;
import org.glintery.api.finishes.Finish;
import org.glintery.api.stash.Kit;
import org.glintery.api.stash.Piece;
import org.glintery.api.workshop.Picture;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;

/**
 * What the Questions tab shows. Made without Swing; immutable.
 *
 * @param lines open ones first, then answered ones, each newest first
 * @param pictures of the piece, its finish and its kit, on which a question can be pinned
 */
record QuestionsPage(List<Line> lines, List<Picture> pictures) {

    /** @param number by which a pin on a picture and its question are told to belong together, from 1 */
    record Line(int number, Stored<Question> question) {
        boolean isOpen() {
            return question.value().answer().isEmpty();
        }

        Optional<Question.Pin> pinOn(Picture picture) {
            return question.value().pin().filter(pin -> pin.picture().equals(picture.hash()));
        }
    }

    QuestionsPage {
        lines = List.copyOf(lines);
        pictures = List.copyOf(pictures);
    }

    static QuestionsPage of(View view, UUID piece) {
        return new QuestionsPage(lines(view, piece), pictures(view, piece));
    }

    private static List<Line> lines(View view, UUID piece) {
        List<Stored<Question>> oldestFirst = view.all(Question.TYPE).stream()
                .filter(question -> question.value().piece().equals(piece))
                .sorted(Comparator.comparing(question -> question.value().askedOn()))
                .toList();
        List<Line> lines = new ArrayList<>();
        for (int i = oldestFirst.size(); i > 0; i--) {
            lines.add(new Line(i, oldestFirst.get(i - 1)));
        }
        lines.sort(Comparator.comparing(line -> !line.isOpen()));
        return lines;
    }

    private static List<Picture> pictures(View view, UUID id) {
        Map<String, Picture> byHash = new LinkedHashMap<>();
        Optional<Piece> piece = view.find(Piece.TYPE, id).map(Stored::value);
        piece.ifPresent(p -> p.pictures().forEach(picture -> byHash.putIfAbsent(picture.hash(), picture)));
        view.find(Finish.TYPE, id)
                .ifPresent(finish ->
                        finish.value().photos().forEach(picture -> byHash.putIfAbsent(picture.hash(), picture)));
        piece.flatMap(Piece::kit)
                .flatMap(kit -> view.find(Kit.TYPE, kit))
                .ifPresent(
                        kit -> kit.value().pictures().forEach(picture -> byHash.putIfAbsent(picture.hash(), picture)));
        return List.copyOf(byHash.values());
    }
}
