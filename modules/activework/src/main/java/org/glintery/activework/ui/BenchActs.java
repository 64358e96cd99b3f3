package org.glintery.activework.ui;

import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.Optional;
import java.util.UUID;
import org.glintery.activework.SittingCheck;
import org.glintery.api.Refusal;
import org.glintery.api.Result;
import org.glintery.api.activework.ActiveWork;
import org.glintery.api.activework.Sitting;
import org.glintery.api.time.About;
import org.glintery.api.workshop.Stored;
import org.glintery.workbench.parts.Asking;
import org.glintery.workbench.spi.Desk;
import org.openide.util.NbBundle.Messages;

/** What can be done at one piece of the bench. Event thread. */
final class BenchActs implements RunningStrip.Acts {

    private final Desk desk;
    private final ActiveWork bench;
    private final UUID piece;
    private final BenchDialogs dialogs;
    private SittingDraft.Measure measure = SittingDraft.Measure.DRILLS;
    private boolean hasSymbols;

    BenchActs(Desk desk, UUID piece) {
        this.desk = desk;
        this.bench = BenchOfDesk.of(desk);
        this.piece = piece;
        this.dialogs = new BenchDialogs(desk);
    }

    /** What the forms begin with from now on. */
    void suggest(SittingsPage page) {
        measure = page.measure();
        hasSymbols = page.hasSymbols();
    }

    @Override
    public void begin() {
        desk.change(view -> bench.begin(view, piece, now()));
    }

    @Override
    public void pause() {
        desk.change(view -> bench.pause(view, piece, now()));
    }

    @Override
    public void goOn() {
        desk.change(view -> bench.resume(view, piece, now()));
    }

    @Override
    @Messages({"BenchActs.end=End the sitting", "BenchActs.endDo=End it"})
    public void end() {
        ZonedDateTime ended = now();
        SittingForm form = form(SittingDraft.blank(today(), measure), true, Optional.empty());
        if (Asking.ask(Bundle.BenchActs_end(), form, Bundle.BenchActs_endDo(), form::ready)) {
            SittingDraft draft = form.draft();
            desk.change(view -> draft.sitting(piece)
                    .then(told -> bench.end(view, piece, ended, told.laid(), told.where(), told.note())));
        }
    }

    @Messages({"BenchActs.add=Add a sitting", "BenchActs.addDo=Add it"})
    void addSitting() {
        SittingForm form = form(SittingDraft.blank(today(), measure), false, Optional.empty());
        if (Asking.ask(Bundle.BenchActs_add(), form, Bundle.BenchActs_addDo(), form::ready)) {
            SittingDraft draft = form.draft();
            UUID id = UUID.randomUUID();
            desk.change(view -> draft.sitting(piece).then(sitting -> bench.sit(view, id, sitting)));
        }
    }

    @Messages({"BenchActs.edit=Correct the sitting", "BenchActs.editDo=Keep it"})
    void correct(Stored<Sitting> sitting) {
        SittingForm form = form(SittingDraft.of(sitting.value()), false, Optional.of(sitting.value()));
        if (Asking.ask(Bundle.BenchActs_edit(), form, Bundle.BenchActs_editDo(), form::ready)) {
            SittingDraft draft = form.draft();
            desk.change(view -> {
                Result<Sitting> corrected = draft.corrected(sitting.value());
                return corrected.then(now -> bench.editSitting(view, sitting.id(), now));
            });
        }
    }

    /** At once: it can be undone. */
    @Messages("BenchActs.removed=The sitting was taken away. Undo brings it back.")
    void remove(Stored<Sitting> sitting) {
        desk.change(view -> bench.removeSitting(view, sitting.id()), applied -> desk.say(Bundle.BenchActs_removed()));
    }

    void putOnTheBench() {
        desk.change(view -> bench.start(view, piece, today()));
    }

    void letRest() {
        desk.change(view -> bench.rest(view, piece, today()));
    }

    void complete() {
        dialogs.completion(piece).ifPresent(told -> desk.change(view -> bench.complete(view, told)));
    }

    /** What the service would refuse is said while it can still be corrected. */
    private SittingForm form(SittingDraft begun, boolean timed, Optional<Sitting> before) {
        return new SittingForm(desk.clock(), piece, begun, hasSymbols, timed, sitting -> refusal(sitting, before));
    }

    private Optional<Refusal> refusal(Sitting sitting, Optional<Sitting> before) {
        return new SittingCheck(desk.view()).refusal(sitting, before);
    }

    private ZonedDateTime now() {
        return ZonedDateTime.now(desk.clock());
    }

    private About today() {
        return About.on(LocalDate.now(desk.clock()));
    }
}
