package org.glintery.workbench.words;

import com.formdev.flatlaf.util.UIScale;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import javax.swing.JComponent;
import org.openide.util.NbBundle.Messages;

/** Finds the words of the glossary in what stands on screen and explains them there. */
public final class Words {
    private static final int MOST_AT_ONCE = 3;
    private static final int LONG = 60;
    private static final int WIDTH_PX = 300;
    private static final Map<String, Word> BY_FORM = byForm();
    private static final Pattern IN_TEXT = pattern();

    private Words() {}

    /** The words that stand in a label, in its order; a word counts once. Any thread. */
    public static List<Word> in(String label) {
        String text = label.strip().toLowerCase(Locale.ROOT);
        Word whole = BY_FORM.get(text);
        if (whole != null) {
            return List.of(whole);
        }
        Set<Word> found = new LinkedHashSet<>();
        Matcher matcher = IN_TEXT.matcher(text);
        while (matcher.find()) {
            found.add(BY_FORM.get(matcher.group()));
        }
        return List.copyOf(found);
    }

    /** The words of a label with their meanings, for a tooltip. Any thread. */
    public static Optional<String> tip(String label) {
        return tip(in(label));
    }

    /** Explains a component by what stands on it, unless it says something of its own already. Event thread. */
    public static <C extends JComponent> C explain(C component, String label) {
        return explain(component, in(label));
    }

    public static <C extends JComponent> C explain(C component, Word word) {
        return explain(component, List.of(word));
    }

    private static <C extends JComponent> C explain(C component, List<Word> words) {
        if (component.getToolTipText() == null) {
            tip(words).ifPresent(tip -> {
                component.setToolTipText(tip);
                component.getAccessibleContext().setAccessibleDescription(plain(words));
            });
        }
        return component;
    }

    private static Optional<String> tip(List<Word> words) {
        if (words.isEmpty()) {
            return Optional.empty();
        }
        // a tooltip does not wrap by itself; a short one is left as narrow as it is
        boolean isLong = shown(words).stream().anyMatch(w -> line(w).length() > LONG);
        String width = isLong ? " style='width:" + UIScale.scale(WIDTH_PX) + "px'" : "";
        return Optional.of(shown(words).stream()
                .map(word -> "<div><b>" + word.term() + "</b>: " + word.meaning() + "</div>")
                .collect(Collectors.joining("", "<html><div" + width + ">", "</div></html>")));
    }

    private static String plain(List<Word> words) {
        return shown(words).stream().map(Words::line).collect(Collectors.joining(" "));
    }

    private static List<Word> shown(List<Word> words) {
        return words.subList(0, Math.min(MOST_AT_ONCE, words.size()));
    }

    @Messages({"# {0} - word", "# {1} - what it means", "Words.line={0}: {1}"})
    private static String line(Word word) {
        return Bundle.Words_line(word.term(), word.meaning());
    }

    private static Map<String, Word> byForm() {
        Map<String, Word> all = new HashMap<>();
        for (Word word : Word.values()) {
            word.forms().forEach(form -> all.put(form, word));
        }
        return Map.copyOf(all);
    }

    /** Longer forms first, so that "kit up" is not taken for a kit. */
    private static Pattern pattern() {
        List<String> forms = new ArrayList<>();
        Arrays.stream(Word.values()).filter(word -> !word.standsAlone()).forEach(word -> forms.addAll(word.forms()));
        forms.sort(Comparator.comparing(String::length).reversed());
        String any = forms.stream().map(Pattern::quote).collect(Collectors.joining("|"));
        return Pattern.compile("(?<![\\p{L}\\d-])(?:" + any + ")(?![\\p{L}\\d-])");
    }
}
