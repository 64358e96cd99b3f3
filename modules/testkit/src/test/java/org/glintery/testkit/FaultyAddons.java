package org.glintery.testkit;

import java.util.List;
import java.util.UUID;
import java.util.logging.Logger;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import org.glintery.api.Json;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.DocumentType;
import org.glintery.api.workshop.View;
import org.glintery.api.workshop.Workshop;
import org.glintery.testkit.contract.DocumentTypeContract;
import org.glintery.testkit.contract.PieceTabContract;
import org.glintery.testkit.contract.VerbContract;
import org.glintery.testkit.guard.Guarded;
import org.glintery.workbench.spi.Desk;
import org.glintery.workbench.spi.PieceTab;
import org.glintery.workbench.spi.ScreenPart;
import org.junit.jupiter.api.Test;

/** Add-ons with one fault each, and one without. */
final class FaultyAddons {
    private FaultyAddons() {}

    private static Workshop onePiece() {
        Workshop workshop = new MemoryWorkshop();
        workshop.apply(ChangeSet.named("Shelve")
                        .create(Piece.TYPE, new UUID(1, 1), Piece.titled("Rope-walk", Standing.SHELVED))
                        .build())
                .orThrow();
        return workshop;
    }

    /** Nothing is wrong with it: each of the others differs in one thing. */
    static class SoundTab extends PieceTabContract implements PieceTab, ScreenPart<String> {
        final JLabel label = new JLabel();

        @Override
        protected Workshop create() {
            return onePiece();
        }

        @Override
        protected PieceTab tab() {
            return this;
        }

        @Override
        public String title() {
            return "Sound";
        }

        @Override
        public int position() {
            return 1;
        }

        @Override
        public ScreenPart<?> create(Desk desk, UUID piece) {
            return this;
        }

        @Override
        public String prepare(View view) {
            return "" + view.revision();
        }

        @Override
        public JComponent component() {
            return label;
        }

        @Override
        public void show(String model) {
            label.setText(model);
        }
    }

    static class PreparesOnTheScreen extends SoundTab {
        @Override
        public String prepare(View view) {
            label.setText("being prepared");
            return "";
        }
    }

    static class MakesItsComponentAnew extends SoundTab {
        @Override
        public JComponent component() {
            return new JPanel();
        }
    }

    static class WritesToDiskWhileShowing extends SoundTab {
        @Override
        public void show(String model) {
            workshop().undo();
        }
    }

    static class Warns extends SoundTab {
        @Override
        public void show(String model) {
            Logger.getLogger("org.glintery.faulty").warning("on purpose");
        }
    }

    static class IsNeverOffered extends SoundTab {
        @Override
        public boolean offered(View view, UUID piece) {
            return false;
        }
    }

    /** Nothing is wrong with it. */
    static class SoundVerb extends VerbContract implements Verb {
        record Said(String text) {}

        @Override
        protected Workshop create() {
            return onePiece();
        }

        @Override
        protected Verb verb() {
            return this;
        }

        @Override
        protected void rightly(FakeCall call) {
            call.with("words", "right");
        }

        @Override
        protected void wrongly(FakeCall call) {
            call.with("words", "wrong");
        }

        @Override
        public String name() {
            return "say this";
        }

        @Override
        public String summary() {
            return "Say something";
        }

        @Override
        public String feature() {
            return "sound";
        }

        @Override
        public List<Param> params() {
            return List.of(Param.positional("words", "WORDS", "what to say"));
        }

        @Override
        public Class<? extends Record> answers() {
            return Said.class;
        }

        @Override
        public VerbResult run(VerbCall call) {
            return call.need("words").equals("right")
                    ? VerbResult.said(new Said("said"), "Said.")
                    : VerbResult.refused("not-right", "That was not right. Nothing was said.");
        }
    }

    static class RefusesAfterChanging extends SoundVerb {
        @Override
        public VerbResult run(VerbCall call) {
            ChangeSet removal = ChangeSet.named("Remove")
                    .remove(Piece.TYPE.ref(new UUID(1, 1)))
                    .build();
            if (!call.need("words").equals("right")) {
                call.workshop().apply(removal).orThrow();
            }
            return super.run(call);
        }
    }

    static class AnswersSomethingElse extends SoundVerb {
        @Override
        public Class<? extends Record> answers() {
            return Param.class;
        }
    }

    static class TakesAHelpOfItsOwn extends SoundVerb {
        @Override
        public List<Param> params() {
            return List.of(Param.flag("help", "its own"));
        }
    }

    record Noted(String words) {}

    /** Its upcaster loses the words. */
    static class LosesAnEarlierVersion extends DocumentTypeContract<Noted> {
        @Override
        protected DocumentType<Noted> type() {
            return new DocumentType<>(
                    "faulty", "note", 2, Noted.class, List.of(body -> body.with("words", new Json.Text(""))));
        }

        @Override
        protected List<Earlier<Noted>> earlier() {
            return List.of(new Earlier<>(1, "{\"text\":\"Dusted\"}", new Noted("Dusted")));
        }
    }

    @Guarded
    static class LeavesAWorkshopOpen {
        static Workshop left;

        @Test
        void leavesIt() {
            left = new MemoryWorkshop();
        }
    }
}
