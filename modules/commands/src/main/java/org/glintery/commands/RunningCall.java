package org.glintery.commands;

import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import org.glintery.api.GlinteryException;
import org.glintery.api.JsonCodec;
import org.glintery.api.Refusal;
import org.glintery.api.Result;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.glintery.api.workshop.Workshop;
import org.glintery.api.workshop.Workshops;
import org.openide.util.NbBundle.Messages;

/** One call under way: opens the workshop when the verb first asks for it, closes it at the end. Verb thread only. */
final class RunningCall implements VerbCall, AutoCloseable {

    private final Arguments arguments;
    private final WorkshopChoice choice;
    private final Surroundings around;
    private final Terminal terminal;
    private Optional<Workshop> open = Optional.empty();
    private Optional<MadeWorkshop> made = Optional.empty();
    private boolean closed;
    private boolean untouched;
    private long answered;

    RunningCall(Arguments arguments, WorkshopChoice choice, Surroundings around, Terminal terminal) {
        this.arguments = arguments;
        this.choice = choice;
        this.around = around;
        this.terminal = terminal;
    }

    @Override
    public Optional<String> value(String name) {
        return arguments.value(name);
    }

    @Override
    public String need(String name) {
        return value(name)
                .orElseThrow(() -> new GlinteryException("the verb does not declare " + name + " as required"));
    }

    @Override
    public List<String> values(String name) {
        return arguments.values(name);
    }

    @Override
    public boolean flag(String name) {
        return arguments.flag(name);
    }

    @Override
    public boolean json() {
        return flag(CommonParams.JSON);
    }

    @Override
    public Path path(String text) {
        return around.path(text);
    }

    /** @throws VerbEnds with the refusal to open it */
    @Override
    public Workshop workshop() {
        if (open.isEmpty()) {
            Result<Workshop> result = opened();
            if (result instanceof Result.Refused<Workshop> no) {
                throw new VerbEnds(new VerbResult.Refused(said(no.refusal())));
            }
            Result.Ok<Workshop> ok = (Result.Ok<Workshop>) result;
            ok.warnings().forEach(this::say);
            open = Optional.of(ok.value());
        }
        return open.get();
    }

    @Messages({
        "# {0} - that there is none",
        "RunningCall.noWorkshopHere={0} ''workshop new'' makes one in the same folder."
    })
    private static Refusal said(Refusal refusal) {
        return refusal.code().equals("no-workshop")
                ? new Refusal(refusal.code(), Bundle.RunningCall_noWorkshopHere(refusal.text()))
                : refusal;
    }

    @Messages({"# {0} - folder", "RunningCall.made=There was no workshop yet. A new one was made in {0}."})
    private Result<Workshop> opened() {
        if (choice.named() || around.workshops().isWorkshop(choice.folder())) {
            return around.workshops().open(choice.folder());
        }
        boolean folderWasThere = Files.exists(choice.folder());
        Result<Workshop> created = around.workshops().create(choice.folder());
        if (created instanceof Result.Ok<Workshop> ok) {
            made = Optional.of(new MadeWorkshop(ok.value(), folderWasThere));
        }
        return created;
    }

    /** The folder of the workshop, when the verb has opened it. */
    Optional<Path> openFolder() {
        return open.map(Workshop::folder);
    }

    @Override
    public Workshops workshops() {
        return around.workshops();
    }

    @Override
    public Path workshopFolder() {
        return choice.folder();
    }

    @Override
    public JsonCodec codec() {
        return around.codec();
    }

    @Override
    public Clock clock() {
        return around.clock();
    }

    @Override
    public InputStream in() {
        return around.in();
    }

    @Override
    public void line(Object answer, String text) {
        answered++;
        terminal.answer(json() ? codec().compact(codec().toJson(answer)) : text);
    }

    /** How many of several answers were given, whether or not anybody read the last of them. */
    long answered() {
        return answered;
    }

    @Override
    public void list(String field, Consumer<BiConsumer<Object, String>> items) {
        try (AnswerList list = new AnswerList(terminal, json() ? Optional.of(field) : Optional.empty())) {
            items.accept((item, text) -> list.add(json() ? codec().compact(codec().toJson(item)) : text));
            list.end();
        }
    }

    @Override
    public void say(String text) {
        terminal.aside(text);
    }

    /**
     * Closes the workshop. One that was made for a call that then changed nothing in it goes again, whether the call was
     * refused or only looked; after a fault it stays, since the account of it lies there.
     */
    void ended(Ending ending) {
        close();
        if (made.isPresent() && untouched && ending != Ending.FAULT) {
            made.get().takeAway();
        } else if (made.isPresent()) {
            say(Bundle.RunningCall_made(choice.folder()));
        }
    }

    @Override
    public void close() {
        if (!closed) {
            closed = true;
            untouched = made.filter(MadeWorkshop::isUntouched).isPresent();
            open.ifPresent(Workshop::close);
        }
    }
}
