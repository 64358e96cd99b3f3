package org.glintery.workbench.piece;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Proxy;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Result;
import org.glintery.api.stash.Canvas;
import org.glintery.api.stash.Kit;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.stash.Stash;
import org.glintery.api.storage.KeepingPlace;
import org.glintery.api.time.About;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Operation;
import org.glintery.api.workshop.View;
import org.glintery.workbench.TestView;
import org.junit.jupiter.api.Test;

class PieceEditTest {
    private static final UUID PIECE = new UUID(1, 1);
    private static final UUID KIT = new UUID(1, 2);
    private final TestView view =
            new TestView(1).with(Kit.TYPE, KIT, Kit.titled("Harbour set")).with(Piece.TYPE, PIECE, piece());

    private static Piece piece() {
        Piece plain = Piece.titled("Rope-walk", Standing.ORDERED);
        return new Piece(
                plain.title(),
                Optional.of(KIT),
                plain.madeAgainFrom(),
                plain.standing(),
                plain.standingSince(),
                plain.coverage(),
                plain.drillShape(),
                Canvas.drilled(350, 455),
                plain.sections(),
                plain.pictures(),
                plain.keptAt(),
                "Told already");
    }

    private PieceEdit now() {
        return PieceEdit.of(view, PIECE).orElseThrow();
    }

    private Result<ChangeSet> change(PieceEdit edit) {
        return edit.change(view, PIECE, stash());
    }

    @Test
    void isNoChange_whenNothingWasTypedAnew() {
        assertThat(now().drilled()).isEqualTo("35 x 45.5");
        assertThat(refusal(change(now()))).isEqualTo("nothing-to-change");
    }

    @Test
    void changesPieceAndKitTogether_andLeavesWhatIsNotOnTheForm() {
        PieceEdit typed = with(now(), "Rope-walk at low water", "30,5 x 40", "9", "34,50");

        ChangeSet change = change(typed).orThrow();

        Piece piece = put(change, Piece.class);
        assertThat(piece.title()).isEqualTo("Rope-walk at low water");
        assertThat(piece.canvas().drilledWidthMm()).contains(305.0);
        assertThat(piece.sections()).contains(9);
        assertThat(piece.story()).isEqualTo("Told already");
        Kit kit = put(change, Kit.class);
        assertThat(kit.title()).isEqualTo("Harbour set");
        assertThat(kit.price().orElseThrow().amount()).isEqualByComparingTo("34.50");
        assertThat(kit.arrivedOn()).contains(About.edtf("2025-05").orElseThrow());
    }

    @Test
    void makesAKeepingPlaceOfANewName_andUsesOneThatIsThere() {
        PieceEdit typed = keptAt(now(), " Tall shelf ");
        ChangeSet change = change(typed).orThrow();
        assertThat(put(change, KeepingPlace.class).name()).isEqualTo("Tall shelf");
        UUID made = put(change, Piece.class).keptAt().orElseThrow();

        TestView later = view.with(KeepingPlace.TYPE, made, put(change, KeepingPlace.class));
        ChangeSet again = keptAt(PieceEdit.of(later, PIECE).orElseThrow(), "tall SHELF")
                .change(later, PIECE, stash())
                .orThrow();
        assertThat(again.operations()).hasSize(1);
        assertThat(put(again, Piece.class).keptAt()).contains(made);
    }

    private static PieceEdit keptAt(PieceEdit old, String place) {
        return new PieceEdit(
                old.title(),
                old.standing(),
                old.since(),
                old.shape(),
                old.coverage(),
                old.drilled(),
                old.cloth(),
                old.sections(),
                place,
                old.kit());
    }

    @Test
    void refusesWhatIsNotUnderstood_byWhatItIs() {
        assertThat(refusal(change(with(now(), " ", "", "", "")))).isEqualTo("no-title");
        assertThat(refusal(change(with(now(), "A", "large", "", "")))).isEqualTo("size");
        assertThat(refusal(change(with(now(), "A", "", "nine", "")))).isEqualTo("sections");
        assertThat(refusal(change(with(now(), "A", "", "", "cheap")))).isEqualTo("price");
    }

    @Test
    void refusesAPieceThatIsGone() {
        assertThat(refusal(now().change(new TestView(2), PIECE, stash()))).isEqualTo("gone");
        assertThat(PieceEdit.of(new TestView(2), PIECE)).isEmpty();
    }

    private static PieceEdit with(PieceEdit old, String title, String drilled, String sections, String price) {
        return new PieceEdit(
                title,
                old.standing(),
                old.since(),
                old.shape(),
                old.coverage(),
                drilled,
                old.cloth(),
                sections,
                old.keptAt(),
                Optional.of(new PieceEdit.KitEdit(
                        "", Optional.empty(), Optional.of(About.edtf("2025-05").orElseThrow()), price, "")));
    }

    private static String refusal(Result<?> result) {
        return ((Result.Refused<?>) result).refusal().code();
    }

    private static <T> T put(ChangeSet change, Class<T> type) {
        return change.operations().stream()
                .map(operation -> ((Operation.Put<?>) operation).value())
                .filter(type::isInstance)
                .map(type::cast)
                .findFirst()
                .orElseThrow();
    }

    /** Replaces what it is told to, and can do nothing else. */
    private static Stash stash() {
        return (Stash) Proxy.newProxyInstance(
                Stash.class.getClassLoader(), new Class<?>[] {Stash.class}, (proxy, method, told) -> {
                    View view = (View) told[0];
                    UUID id = (UUID) told[1];
                    ChangeSet.Builder change = ChangeSet.named("Edit");
                    return switch (method.getName()) {
                        case "editPiece" ->
                            Result.ok(change.replace(
                                            Piece.TYPE,
                                            view.find(Piece.TYPE, id).orElseThrow(),
                                            (Piece) told[2])
                                    .build());
                        case "editKit" ->
                            Result.ok(change.replace(
                                            Kit.TYPE, view.find(Kit.TYPE, id).orElseThrow(), (Kit) told[2])
                                    .build());
                        default -> throw new UnsupportedOperationException(method.getName());
                    };
                });
    }
}
