package org.glintery.stash.verbs;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.glintery.stash.posting.PostAnswer;
import org.glintery.stash.posting.PostStream;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;

/** {@code drills post}: books movements that another program writes, one a line. */
@ServiceProvider(service = Verb.class)
public final class DrillsPostVerb implements Verb {

    @Override
    public String name() {
        return "drills post";
    }

    @Override
    @Messages(
            "DrillsPostVerb.summary=Book movements from standard input, one a line as JSON; prints each id once it is safe on disk")
    public String summary() {
        return Bundle.DrillsPostVerb_summary();
    }

    @Override
    public String feature() {
        return "stash";
    }

    @Override
    @Messages("DrillsPostVerb.file=- for standard input, or a file with one movement a line")
    public List<Param> params() {
        return List.of(Param.positional("file", "-", Bundle.DrillsPostVerb_file()));
    }

    @Override
    public Class<? extends Record> answers() {
        return PostAnswer.class;
    }

    @Override
    @Messages({"# {0} - file", "DrillsPostVerb.unreadable={0} can''t be read. Nothing was booked."})
    public VerbResult run(VerbCall call) throws IOException {
        String file = call.need("file");
        if (file.equals("-")) {
            return post(call, call.in());
        }
        Path path = call.path(file);
        if (!Files.isReadable(path) || Files.isDirectory(path)) {
            return VerbResult.refused("unreadable", Bundle.DrillsPostVerb_unreadable(path));
        }
        try (InputStream in = Files.newInputStream(path)) {
            return post(call, in);
        }
    }

    private static VerbResult post(VerbCall call, InputStream in) throws IOException {
        PostStream stream =
                new PostStream(call.workshop(), call.codec(), answer -> call.line(answer, text(call, answer)));
        return new VerbResult.Streamed(stream.run(in));
    }

    /** One id is printed bare; batches and refused lines are JSON, also for people: scripts read them. */
    private static String text(VerbCall call, PostAnswer answer) {
        boolean booked = answer.refused().isEmpty() && answer.ids().isEmpty();
        return booked
                ? answer.id().orElseThrow()
                : call.codec().compact(call.codec().toJson(answer));
    }
}
