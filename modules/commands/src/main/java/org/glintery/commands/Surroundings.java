package org.glintery.commands;

import java.io.InputStream;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Map;
import org.glintery.api.JsonCodec;
import org.glintery.api.verb.VerbResult;
import org.glintery.api.workshop.Workshops;
import org.openide.util.NbBundle.Messages;

/**
 * What a call finds around itself.
 *
 * @param folder the caller's, absolute
 * @param home of the user
 * @param environment variables
 * @param in standard input, untouched
 */
record Surroundings(
        Workshops workshops,
        JsonCodec codec,
        Clock clock,
        Path folder,
        Path home,
        Map<String, String> environment,
        InputStream in) {

    /** A path as the caller meant it. @throws VerbEnds as wrong usage for what can't be one */
    @Messages({"# {0} - what was written", "Surroundings.noPath=''{0}'' can''t be the name of a file here."})
    Path path(String text) {
        try {
            return folder.resolve(text).normalize();
        } catch (InvalidPathException e) {
            throw new VerbEnds(VerbResult.wrongUsage(Bundle.Surroundings_noPath(text)));
        }
    }
}
