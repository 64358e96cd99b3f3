package org.glintery.commands;

import java.util.List;
import java.util.Optional;
import org.glintery.api.Result;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbResult;
import org.glintery.commands.Terminal.ReaderGone;
import org.openide.util.NbBundle.Messages;

/** Carries out one call: finds the verb, reads its arguments, runs it, prints how it ended. Verb thread only. */
final class VerbRun {

    private final VerbCatalogue verbs;
    private final Surroundings around;
    private final Terminal terminal;

    VerbRun(VerbCatalogue verbs, Surroundings around, Terminal terminal) {
        this.verbs = verbs;
        this.around = around;
        this.terminal = terminal;
    }

    /** Whatever goes wrong in a verb ends as a sentence and a code. */
    Ending run(CallWords call) {
        VerbWords words = VerbWords.split(call.words(), verbs);
        Outcomes outcomes = new Outcomes(terminal, around.codec(), words.wantsJson());
        return words.verb()
                .map(verb -> run(verb, words.rest(), outcomes))
                .orElseGet(() -> withoutVerb(words, outcomes));
    }

    @Messages({
        "# {0} - feature",
        "VerbRun.switchedOff=The {0} feature is switched off.",
        "VerbRun.whichVerb=Which verb? Nothing was done.",
        "# {0} - what was written",
        "VerbRun.verbFirst=A verb comes first, not {0}.",
        "# {0} - what was written",
        "VerbRun.noVerb=There is no verb ''{0}''."
    })
    private Ending withoutVerb(VerbWords words, Outcomes outcomes) {
        List<String> said = words.rest();
        if (said.isEmpty()) {
            VerbList all = VerbList.of(verbs);
            return words.wantsHelp() ? outcomes.help(all) : outcomes.nothingSaid(Bundle.VerbRun_whichVerb(), all);
        }
        Optional<String> off = verbs.switchedOff(said);
        if (off.isPresent()) {
            return outcomes.wrongUsage(Bundle.VerbRun_switchedOff(off.get()), List.of(), Optional.empty());
        }
        String unknown = said.get(0).startsWith("-")
                ? Bundle.VerbRun_verbFirst(said.get(0))
                : Bundle.VerbRun_noVerb(words.said());
        return outcomes.wrongUsage(unknown, verbs.near(said), Optional.empty());
    }

    private Ending run(Verb verb, List<String> rest, Outcomes outcomes) {
        Optional<RunningCall> call = Optional.empty();
        Ending ending = Ending.FAULT;
        try {
            Result<Arguments> read = ArgumentReading.of(verb).read(rest);
            if (read instanceof Result.Refused<Arguments> no) {
                return outcomes.wrongUsage(no.refusal().text(), List.of(), Optional.of(verb));
            }
            Arguments arguments = ((Result.Ok<Arguments>) read).value();
            if (arguments.flag(CommonParams.HELP)) {
                return outcomes.help(VerbHelp.of(verb));
            }
            WorkshopChoice choice = WorkshopChoice.of(arguments.value(CommonParams.WORKSHOP), around);
            call = Optional.of(new RunningCall(arguments, choice, around, terminal));
            VerbResult result = verb.run(call.get());
            // closed first: what is told is done
            call.get().close();
            ending = outcomes.tell(result, verb);
        } catch (VerbEnds e) {
            ending = outcomes.tell(e.result(), verb);
        } catch (ReaderGone e) {
            ending = outcomes.unread(call.map(RunningCall::answered).orElse(0L));
        } catch (Throwable e) { // the last border before the user: no stack trace passes it, an add-on's neither
            ending = outcomes.fault(e, call.flatMap(RunningCall::openFolder), verb.name());
        } finally {
            if (call.isPresent()) {
                call.get().ended(ending);
            }
        }
        return ending;
    }
}
