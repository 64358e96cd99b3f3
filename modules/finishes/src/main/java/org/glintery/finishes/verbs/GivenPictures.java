package org.glintery.finishes.verbs;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.glintery.api.Result;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.workshop.Blob;
import org.glintery.api.workshop.Picture;
import org.glintery.workbench.parts.PictureBytes;

/**
 * The picture files that a verb was told of, checked to be pictures.
 *
 * @param blobs the bytes of both
 */
record GivenPictures(List<Picture> photos, List<Picture> sketches, List<Blob> blobs) {

    private static final long MOST_BYTES = 64L << 20;

    /** A checked file. */
    private record Read(Picture picture, Blob blob) {}

    static Result<GivenPictures> of(VerbCall call) {
        return read(call, "photo")
                .then(photos -> read(call, "sketch").then(sketches -> {
                    List<Blob> blobs = new ArrayList<>();
                    photos.forEach(photo -> blobs.add(photo.blob()));
                    sketches.forEach(sketch -> blobs.add(sketch.blob()));
                    return Result.ok(new GivenPictures(pictures(photos), pictures(sketches), blobs));
                }));
    }

    private static List<Picture> pictures(List<Read> read) {
        return read.stream().map(Read::picture).toList();
    }

    private static Result<List<Read>> read(VerbCall call, String option) {
        List<Read> read = new ArrayList<>();
        for (String written : call.values(option)) {
            Result<Read> one = read(call.path(written));
            if (one instanceof Result.Refused<Read> no) {
                return Result.refused(no.refusal());
            }
            read.add(one.orThrow());
        }
        return Result.ok(read);
    }

    private static Result<Read> read(Path file) {
        String name = String.valueOf(file.getFileName());
        try {
            if (Files.size(file) > MOST_BYTES) {
                return Result.refused("picture-too-large", name + " is larger than 64 megabytes. Nothing was changed.");
            }
            byte[] bytes = Files.readAllBytes(file);
            return PictureBytes.facts(bytes).then(facts -> {
                Blob blob = Blob.of(facts.mediaType(), bytes);
                return Result.ok(new Read(new Picture(blob.hash(), facts.mediaType(), name), blob));
            });
        } catch (IOException e) {
            return Result.refused("unreadable", name + " can't be read. Nothing was changed.");
        }
    }
}
