package org.glintery.stopwatch;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import org.netbeans.api.sendopts.CommandException;
import org.netbeans.spi.sendopts.Env;
import org.netbeans.spi.sendopts.Option;
import org.netbeans.spi.sendopts.OptionProcessor;
import org.openide.LifecycleManager;
import org.openide.util.lookup.ServiceProvider;

/** The option {@code --stopwatch-nothing FILE}: takes the file away, as the launcher expects, and ends. */
@ServiceProvider(service = OptionProcessor.class)
public final class NothingOption extends OptionProcessor {

    private static final Option NOTHING = Option.requiredArgument(Option.NO_SHORT_NAME, "stopwatch-nothing");

    @Override
    protected Set<Option> getOptions() {
        return Set.of(NOTHING);
    }

    @Override
    protected void process(Env env, Map<Option, String[]> given) throws CommandException {
        try {
            Files.delete(Path.of(given.get(NOTHING)[0]));
        } catch (IOException e) {
            throw new CommandException(3, e.toString());
        }
        LifecycleManager.getDefault().exit(0);
    }
}
