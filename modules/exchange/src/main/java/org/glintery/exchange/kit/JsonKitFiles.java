package org.glintery.exchange.kit;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Json;
import org.glintery.api.JsonCodec;
import org.glintery.api.MalformedException;
import org.glintery.api.OffTheEventThread;
import org.glintery.api.Result;
import org.glintery.api.disk.NewFile;
import org.glintery.api.exchange.KitFiles;
import org.glintery.api.ledger.Balance;
import org.glintery.api.stash.Kit;
import org.glintery.api.stash.NewKit;
import org.glintery.api.workshop.PictureIntake;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;
import org.glintery.api.workshop.Workshop;
import org.openide.util.NbBundle.Messages;

/** Reads and writes kits as JSON by the published schema. Any thread but the event thread. */
@Messages({
    "# {0} - file",
    "JsonKitFiles.unreadable=The file {0} can''t be read. Nothing was imported; look whether it is there and may be read.",
    "JsonKitFiles.tooLarge=This file is larger than 64 MiB. Nothing was imported; put its pictures beside it as files.",
    "JsonKitFiles.other=This file is not a kit: it is no text in UTF-8. Nothing was imported; 'glintery-do kit schema' prints the form of a kit.",
    "# {0} - what its format should be",
    "JsonKitFiles.unnamed=This file doesn''t say that it is a kit: \"format\": \"{0}\" is missing at its beginning. Nothing was imported; ''glintery-do kit schema'' prints the form of a kit.",
    "# {0} - what its format should be",
    "JsonKitFiles.otherFormat=This file is not a kit: its \"format\" should be \"{0}\". Nothing was imported; ''glintery-do kit schema'' prints the form of a kit.",
    "JsonKitFiles.newer=This kit was written by a newer Glintery. Nothing was imported; update Glintery.",
    "# {0} - what is wrong",
    "JsonKitFiles.malformed=This kit can''t be taken in: {0}. Nothing was imported.",
    "# {0} - how many",
    "JsonKitFiles.more=and {0} more",
    "JsonKitFiles.gone=This kit is not in the workshop any more. Nothing was written.",
    "# {0} - what is wrong",
    "JsonKitFiles.notWritable=This kit does not fit into a kit file: {0}. Nothing was written.",
    "JsonKitFiles.tooLargeToWrite=This kit's pictures are too large for one file of 64 MiB. Nothing was written; take some out."
})
final class JsonKitFiles implements KitFiles {
    private static final int MOST_BYTES = 64 << 20;
    private static final int MOST_PROBLEMS = 10;
    private static final String NOT_A_KIT = "not-a-kit";

    private final Workshop workshop;
    private final JsonCodec codec;

    JsonKitFiles(Workshop workshop, JsonCodec codec) {
        this.workshop = workshop;
        this.codec = codec;
    }

    @Override
    public Result<NewKit> read(Path file) {
        OffTheEventThread.check();
        try {
            Json json = codec.parse(text(file));
            List<String> problems = KitSchema.problems(ofThisVersion(json));
            if (!problems.isEmpty()) {
                throw new NotAKitException(NOT_A_KIT, Bundle.JsonKitFiles_malformed(listed(problems)));
            }
            KitInFile told = codec.fromJson(json, KitInFile.class);
            Path folder = file.toAbsolutePath().getParent();
            return Result.ok(new KitFromFile(told, new PicturesOfKit(folder, intake())).kit());
        } catch (NotAKitException e) {
            return Result.refused(e.refusal());
        } catch (MalformedException e) {
            return Result.refused(NOT_A_KIT, Bundle.JsonKitFiles_malformed(e.getMessage()));
        } catch (CharacterCodingException e) {
            return Result.refused(NOT_A_KIT, Bundle.JsonKitFiles_other());
        } catch (IOException e) {
            return Result.refused("unreadable", Bundle.JsonKitFiles_unreadable(file));
        }
    }

    private PictureIntake intake() {
        return workshop.find(PictureIntake.class).orElseThrow();
    }

    private static String text(Path file) throws IOException, NotAKitException {
        if (Files.size(file) > MOST_BYTES) {
            throw new NotAKitException("too-large", Bundle.JsonKitFiles_tooLarge());
        }
        String text = StandardCharsets.UTF_8
                .newDecoder()
                .decode(ByteBuffer.wrap(Files.readAllBytes(file)))
                .toString();
        return text.startsWith("\uFEFF") ? text.substring(1) : text;
    }

    /** What another version means by its words is not judged by this one's schema. */
    private static Json ofThisVersion(Json json) throws NotAKitException {
        if (!(json instanceof Json.Obj object) || object.get("format").isEmpty()) {
            throw new NotAKitException(NOT_A_KIT, Bundle.JsonKitFiles_unnamed(KitInFile.FORMAT));
        }
        if (!object.text("format").equals(Optional.of(KitInFile.FORMAT))) {
            throw new NotAKitException(NOT_A_KIT, Bundle.JsonKitFiles_otherFormat(KitInFile.FORMAT));
        }
        if (object.number("version")
                .filter(v -> v.compareTo(BigDecimal.valueOf(KitInFile.VERSION)) > 0)
                .isPresent()) {
            throw new NotAKitException("newer", Bundle.JsonKitFiles_newer());
        }
        return json;
    }

    private static String listed(List<String> problems) {
        String first = String.join("; ", problems.subList(0, Math.min(MOST_PROBLEMS, problems.size())));
        int more = problems.size() - MOST_PROBLEMS;
        return more > 0 ? first + "; " + Bundle.JsonKitFiles_more(Balance.grouped(more)) : first;
    }

    @Override
    public Result<Path> write(View view, UUID kit, Path file) {
        OffTheEventThread.check();
        Optional<Stored<Kit>> stored = view.find(Kit.TYPE, kit);
        if (stored.isEmpty()) {
            return Result.refused("unknown-kit", Bundle.JsonKitFiles_gone());
        }
        var telling = new KitToFile(view, workshop);
        Json json = codec.toJson(telling.tell(kit, stored.get().value()));
        List<String> problems = KitSchema.problems(json);
        if (!problems.isEmpty()) {
            return Result.refused("not-writable", Bundle.JsonKitFiles_notWritable(listed(problems)));
        }
        byte[] bytes = codec.pretty(json).getBytes(StandardCharsets.UTF_8);
        if (bytes.length > MOST_BYTES) {
            return Result.refused("too-large", Bundle.JsonKitFiles_tooLargeToWrite());
        }
        return NewFile.write(file, out -> {
            out.write(bytes);
            return Result.ok(file, telling.warnings());
        });
    }
}
