package org.glintery.finishes.verbs;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.glintery.api.finishes.Finish;
import org.glintery.api.finishes.Finish.Field;
import org.glintery.api.finishes.Finishes;
import org.glintery.api.stash.Piece;
import org.glintery.api.time.About;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.TextTable;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;

/** {@code finish list}: all finishes, latest first, or those still to be written. */
@ServiceProvider(service = Verb.class)
public final class FinishListVerb implements Verb {

    /** The finishes, latest first; those without a date last. */
    public record FinishList(List<Line> finishes) {}

    /** A finish in the list. @param later fields that are still to be written */
    public record Line(
            UUID piece, String title, Optional<About> finishedOn, Optional<Integer> score, Set<Field> later) {

        static Line of(Stored<Finish> stored) {
            Finish finish = stored.value();
            return new Line(stored.id(), finish.title(), finish.finishedOn(), finish.score(), finish.later());
        }

        /** What is still to be written may not be begun yet. */
        static Line of(View view, Finishes.ToWrite one) {
            return view.find(Finish.TYPE, one.piece())
                    .map(Line::of)
                    .orElseGet(() -> new Line(
                            one.piece(),
                            one.title(),
                            view.find(Piece.TYPE, one.piece())
                                    .flatMap(piece -> piece.value().standingSince()),
                            Optional.empty(),
                            one.fields()));
        }
    }

    @Override
    public String name() {
        return "finish list";
    }

    @Override
    @Messages("FinishListVerb.summary=List the finishes, latest first")
    public String summary() {
        return Bundle.FinishListVerb_summary();
    }

    @Override
    public String feature() {
        return "finishes";
    }

    @Override
    @Messages("FinishListVerb.toWrite=only those with something left for later")
    public List<Param> params() {
        return List.of(Param.flag("to-write", Bundle.FinishListVerb_toWrite()));
    }

    @Override
    public Class<? extends Record> answers() {
        return FinishList.class;
    }

    @Override
    @Messages({
        "FinishListVerb.title=Title",
        "FinishListVerb.finished=Finished",
        "FinishListVerb.score=Score",
        "FinishListVerb.later=Still to be written",
        "FinishListVerb.id=Id"
    })
    public VerbResult run(VerbCall call) {
        boolean onlyToWrite = call.flag("to-write");
        View view = call.workshop().view();
        Finishes finishes = FinishesOfCall.of(call);
        List<Line> lines = onlyToWrite
                ? finishes.stillToWrite(view).stream()
                        .map(one -> Line.of(view, one))
                        .toList()
                : finishes.all(view).stream().map(Line::of).toList();
        TextTable table = new TextTable(
                Bundle.FinishListVerb_title(),
                Bundle.FinishListVerb_finished(),
                Bundle.FinishListVerb_score(),
                Bundle.FinishListVerb_later(),
                Bundle.FinishListVerb_id());
        lines.forEach(line -> table.row(
                line.title(),
                FinishWords.date(line.finishedOn()),
                line.score().map(String::valueOf).orElse(""),
                FinishWords.fields(line.later()),
                line.piece()));
        return VerbResult.said(new FinishList(lines), table.isEmpty() ? none(onlyToWrite) : table.toString());
    }

    @Messages({"FinishListVerb.nothingLeft=Nothing is left to be written.", "FinishListVerb.none=No finishes."})
    private static String none(boolean onlyToWrite) {
        return onlyToWrite ? Bundle.FinishListVerb_nothingLeft() : Bundle.FinishListVerb_none();
    }
}
