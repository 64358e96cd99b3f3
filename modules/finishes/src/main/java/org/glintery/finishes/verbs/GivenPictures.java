package org.glintery.finishes.verbs;

import java.util.ArrayList;
import java.util.List;
import org.glintery.api.Result;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.workshop.Blob;
import org.glintery.api.workshop.NewPicture;
import org.glintery.api.workshop.Picture;
import org.glintery.api.workshop.PictureIntake;

/**
 * The picture files that a verb was told of, checked to be pictures.
 *
 * @param blobs the bytes of both
 */
record GivenPictures(List<Picture> photos, List<Picture> sketches, List<Blob> blobs) {

    static Result<GivenPictures> of(VerbCall call) {
        return read(call, "photo")
                .then(photos -> read(call, "sketch").then(sketches -> {
                    List<Blob> blobs = new ArrayList<>();
                    photos.forEach(photo -> blobs.add(photo.blob()));
                    sketches.forEach(sketch -> blobs.add(sketch.blob()));
                    return Result.ok(new GivenPictures(pictures(photos), pictures(sketches), blobs));
                }));
    }

    private static List<Picture> pictures(List<NewPicture> read) {
        return read.stream().map(NewPicture::picture).toList();
    }

    private static Result<List<NewPicture>> read(VerbCall call, String option) {
        List<NewPicture> read = new ArrayList<>();
        PictureIntake intake = call.workshop().find(PictureIntake.class).orElseThrow();
        for (String written : call.values(option)) {
            Result<NewPicture> one = intake.read(call.path(written));
            if (one instanceof Result.Refused<NewPicture> no) {
                return Result.refused(no.refusal());
            }
            read.add(one.orThrow());
        }
        return Result.ok(read);
    }
}
