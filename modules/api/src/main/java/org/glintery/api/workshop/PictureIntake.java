package org.glintery.api.workshop;

import java.nio.file.Path;
import org.glintery.api.Preview;
import org.glintery.api.Result;

/**
 * Service: takes in what a maker gives as a picture, once it was seen that the application can show it. Imports of a whole
 * workshop don't go this way: what was kept comes back as it was. Any thread but the event thread.
 */
@Preview(since = "1.0")
public interface PictureIntake {

    /**
     * Reads a file, with its name as caption. Refused with {@code unreadable}, {@code not-a-picture} or
     * {@code picture-too-large}; the text names the file.
     *
     * @throws IllegalStateException on the event thread
     */
    Result<NewPicture> read(Path file);

    /**
     * Refused with {@code not-a-picture}, as is one that can't be unpacked, or {@code picture-too-large}.
     *
     * @throws IllegalStateException on the event thread
     */
    Result<NewPicture> of(byte[] bytes, String caption);
}
