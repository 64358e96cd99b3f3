package org.glintery.commands;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.glintery.api.JsonCodec;
import org.glintery.api.Refusal;
import org.glintery.api.ledger.Balance;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbResult;
import org.openide.util.NbBundle.Messages;

/** Prints how a call ended: answers and, under {@code --json}, refusals on standard output, all else aside. */
final class Outcomes {

    private final Terminal terminal;
    private final JsonCodec codec;
    private final boolean json;

    Outcomes(Terminal terminal, JsonCodec codec, boolean json) {
        this.terminal = terminal;
        this.codec = codec;
        this.json = json;
    }

    Ending tell(VerbResult result, Verb verb) {
        if (result instanceof VerbResult.Said said) {
            terminal.lastAnswer(json ? compact(said.answer()) : said.text());
            return Ending.DONE;
        }
        if (result instanceof VerbResult.Streamed streamed) {
            return streamed.refusedSome() ? Ending.REFUSED : Ending.DONE;
        }
        if (result instanceof VerbResult.Refused refused) {
            refuse(refused.refusal());
            return Ending.REFUSED;
        }
        VerbResult.WrongUsage wrong = (VerbResult.WrongUsage) result;
        return wrongUsage(wrong.text(), wrong.candidates(), Optional.of(verb));
    }

    /** What was wrong, what may have been meant, and where more is told. */
    @Messages({
        "Outcomes.perhaps=Perhaps you mean:",
        "# {0} - verb",
        "Outcomes.verbHelp=''glintery-do {0} --help'' tells more.",
        "Outcomes.allVerbs='glintery-do --help' lists all verbs."
    })
    Ending wrongUsage(String text, List<String> candidates, Optional<Verb> verb) {
        List<String> lines = new ArrayList<>(List.of(text));
        if (!candidates.isEmpty()) {
            lines.add(Bundle.Outcomes_perhaps());
            candidates.forEach(candidate -> lines.add("  " + candidate));
        }
        lines.add(verb.map(v -> Bundle.Outcomes_verbHelp(v.name())).orElseGet(Bundle::Outcomes_allVerbs));
        terminal.aside(String.join("\n", lines));
        if (json) {
            terminal.lastAnswer(compact(new RefusedAnswer(new Told("wrong-usage", text, candidates))));
        }
        return Ending.WRONG_USAGE;
    }

    /** Help is an answer too. */
    Ending help(HelpPage page) {
        terminal.lastAnswer(json ? compact(page) : page.text());
        return Ending.DONE;
    }

    /** Nothing but common options was said: the verbs are listed beside the answers. */
    Ending nothingSaid(String text, VerbList all) {
        terminal.aside(text + "\n\n" + all.text());
        if (json) {
            List<String> names = all.features().stream()
                    .flatMap(feature -> feature.verbs().stream())
                    .map(VerbList.Line::name)
                    .toList();
            terminal.lastAnswer(compact(new RefusedAnswer(new Told("wrong-usage", text, names))));
        }
        return Ending.WRONG_USAGE;
    }

    /**
     * Nobody reads any more. Who only looked at something, as with {@code head}, misses nothing; who waited for one answer after
     * another is told that more was to be done.
     *
     * @param answered how many of several answers were given, the one that nobody took among them
     */
    @Messages({
        "# {0} - number of the answer",
        "Outcomes.unread=Stopped at answer {0}, because nobody reads the answers any more. What was done up to there is kept; "
                + "nothing after it was done."
    })
    Ending unread(long answered) {
        if (answered == 0) {
            return Ending.DONE;
        }
        terminal.aside(Bundle.Outcomes_unread(Balance.grouped(answered)));
        return Ending.REFUSED;
    }

    /** @param folder of the workshop that was open */
    Ending fault(Throwable fault, Optional<Path> folder, String what) {
        String text = new FaultLog(folder).keep(fault, what);
        refuse(new Refusal("fault", text));
        return Ending.FAULT;
    }

    private void refuse(Refusal refusal) {
        if (json) {
            terminal.lastAnswer(compact(new RefusedAnswer(new Told(refusal.code(), refusal.text(), List.of()))));
        } else {
            terminal.aside(refusal.text());
        }
    }

    private String compact(Object answer) {
        return codec.compact(codec.toJson(answer));
    }

    /** What {@code --json} prints instead of an answer. */
    private record RefusedAnswer(Told refused) {}

    /** @param candidates what may have been meant; with {@code wrong-usage} only */
    private record Told(String code, String text, List<String> candidates) {}
}
