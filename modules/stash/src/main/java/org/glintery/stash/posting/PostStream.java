package org.glintery.stash.posting;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.glintery.api.Json;
import org.glintery.api.JsonCodec;
import org.glintery.api.MalformedException;
import org.glintery.api.Refusal;
import org.glintery.api.ledger.Balance;
import org.glintery.api.workshop.Workshop;
import org.openide.util.NbBundle.Messages;

/**
 * Reads movements line by line, books each line and answers it as soon as it is durable. An array on a line is one
 * batch. A line that can't be booked is answered as refused and the stream goes on. Verb thread only.
 */
public final class PostStream {

    private static final int MOST_IN_A_BATCH = 100_000;

    private final JsonCodec codec;
    private final MovementBooking booking;
    private final Consumer<PostAnswer> answers;
    private boolean refusedSome;

    public PostStream(Workshop workshop, JsonCodec codec, Consumer<PostAnswer> answers) {
        this.codec = codec;
        this.booking = new MovementBooking(workshop);
        this.answers = answers;
    }

    /** Reads to the end. @return whether any line was refused */
    public boolean run(InputStream in) throws IOException {
        LineInput lines = new LineInput(in);
        for (Optional<LineInput.Line> line = lines.next(); line.isPresent(); line = lines.next()) {
            if (!line.get().isBlank()) {
                take(line.get());
            }
        }
        return refusedSome;
    }

    @Messages({"# {0} - what is wrong", "PostStream.noJson=The line is not JSON: {0}"})
    private void take(LineInput.Line line) {
        if (!line.fault().isEmpty()) {
            refuse(line, Optional.empty(), "malformed", line.fault());
            return;
        }
        Json json;
        try {
            json = codec.parse(line.text());
        } catch (MalformedException e) {
            refuse(line, Optional.empty(), "malformed", Bundle.PostStream_noJson(e.getMessage()));
            return;
        }
        if (json instanceof Json.Arr batch) {
            takeBatch(line, batch);
        } else {
            takeOne(line, json);
        }
    }

    private void takeOne(LineInput.Line line, Json json) {
        try {
            PostedLine posted = PostedLine.read(json);
            MovementBooking.Outcome outcome = booking.book(List.of(posted));
            if (outcome.refusal().isPresent()) {
                refuse(
                        line,
                        Optional.of(posted.id().toString()),
                        outcome.refusal().get());
            } else {
                answers.accept(PostAnswer.booked(posted.id()));
            }
        } catch (MalformedException e) {
            refuse(line, PostedLine.idIn(json), "malformed", e.getMessage());
        }
    }

    @Messages({
        "# {0} - most",
        "PostStream.batch=A batch has from 1 to {0} movements.",
        "# {0} - number of the movement",
        "# {1} - what is wrong",
        "PostStream.inBatch=Movement {0} of the batch: {1}"
    })
    private void takeBatch(LineInput.Line line, Json.Arr batch) {
        if (batch.items().isEmpty() || batch.items().size() > MOST_IN_A_BATCH) {
            refuse(line, Optional.empty(), "malformed", Bundle.PostStream_batch(Balance.grouped(MOST_IN_A_BATCH)));
            return;
        }
        List<PostedLine> posted = new ArrayList<>(batch.items().size());
        for (Json item : batch.items()) {
            try {
                posted.add(PostedLine.read(item));
            } catch (MalformedException e) {
                String text = Bundle.PostStream_inBatch(String.valueOf(posted.size() + 1), e.getMessage());
                refuse(line, PostedLine.idIn(item), "malformed", text);
                return;
            }
        }
        MovementBooking.Outcome outcome = booking.book(posted);
        if (outcome.refusal().isPresent()) {
            refuse(
                    line,
                    outcome.blame().map(blamed -> blamed.id().toString()),
                    outcome.refusal().get());
        } else {
            answers.accept(PostAnswer.booked(posted.stream().map(PostedLine::id).toList()));
        }
    }

    private void refuse(LineInput.Line line, Optional<String> id, String code, String text) {
        refuse(line, id, new Refusal(code, text));
    }

    private void refuse(LineInput.Line line, Optional<String> id, Refusal refusal) {
        refusedSome = true;
        answers.accept(PostAnswer.refused(line.number(), id, refusal));
    }
}
