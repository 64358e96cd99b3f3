package org.glintery.commands;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.glintery.api.GlinteryException;
import org.glintery.api.JsonCodec;
import org.glintery.api.verb.Verb;
import org.glintery.api.workshop.Workshops;
import org.netbeans.spi.sendopts.Env;
import org.netbeans.spi.sendopts.Option;
import org.netbeans.spi.sendopts.OptionProcessor;
import org.openide.LifecycleManager;
import org.openide.util.Lookup;
import org.openide.util.lookup.ServiceProvider;

/**
 * The platform's option {@code --glintery-verb FILE}, given by {@code glintery-do} alone: the file holds the words of one
 * call, each ended by a NUL. Ends the application with the verb's exit code.
 */
@ServiceProvider(service = OptionProcessor.class)
public final class VerbOption extends OptionProcessor {

    private static final Option WORDS = Option.requiredArgument(Option.NO_SHORT_NAME, "glintery-verb");

    @Override
    protected Set<Option> getOptions() {
        return Set.of(WORDS);
    }

    @Override
    protected void process(Env env, Map<Option, String[]> given) {
        Terminal terminal = new Terminal(env.getOutputStream(), env.getErrorStream());
        // standard output is for answers only: what a library prints by itself goes the other way
        PrintStream aside = env.getErrorStream();
        System.setOut(aside);
        LifecycleManager.getDefault()
                .exit(run(given.get(WORDS)[0], env, terminal).code());
    }

    private static Ending run(String file, Env env, Terminal terminal) {
        try {
            Lookup installed = Lookup.getDefault();
            Surroundings around = new Surroundings(
                    only(installed, Workshops.class),
                    only(installed, JsonCodec.class),
                    Clock.systemDefaultZone(),
                    env.getCurrentDirectory().toPath().toAbsolutePath(),
                    home(),
                    System.getenv(),
                    env.getInputStream());
            VerbCatalogue verbs = new VerbCatalogue(installed.lookupAll(Verb.class), KnownVerbs.ours());
            return new VerbRun(verbs, around, terminal).run(words(file));
        } catch (IOException | RuntimeException | LinkageError e) { // the application must end and say so
            terminal.aside(new FaultLog(Optional.empty()).keep(e, "glintery-do"));
            return Ending.FAULT;
        }
    }

    /** As the shell has it; Java asks the list of users instead, which a caller can't change. */
    private static Path home() {
        return Path.of(Optional.ofNullable(System.getenv("HOME")).orElseGet(() -> System.getProperty("user.home")));
    }

    /** Takes the file away: it is private to this call, and by its absence the launcher knows that a verb began. */
    private static CallWords words(String file) throws IOException {
        Path path = Path.of(file);
        CallWords words = CallWords.read(Files.readAllBytes(path));
        Files.delete(path);
        return words;
    }

    private static <S> S only(Lookup installed, Class<S> service) {
        S found = installed.lookup(service);
        if (found == null) {
            throw new GlinteryException("no module brings " + service.getName());
        }
        return found;
    }
}
