package org.glintery.club.swaps;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.glintery.api.Json;
import org.glintery.api.MalformedException;
import org.openide.util.NbBundle.Messages;

/**
 * A value in a JSON file, and where it stands, such as {@code members[2].offers[0].packets}. What is not as it should be is
 * thrown as a {@link MalformedException} that names the place in words fit to be shown; numbers stand in them as JSON writes them.
 */
record FilePlace(String path, Json value) {

    /** The longest name that a refusal repeats. */
    private static final int LONGEST = 60;

    static FilePlace whole(Json file) {
        return new FilePlace("", file);
    }

    @Messages({
        "FilePlace.whole=the file",
        "# {0} - path",
        "FilePlace.noObject={0} should be an object in curly brackets.",
        "# {0} - path",
        "FilePlace.noList={0} should be a list in square brackets.",
        "# {0} - path",
        "FilePlace.noText={0} should be a text that is not empty and at most 200 characters long.",
        "# {0} - path",
        "# {1} - what stands there",
        "FilePlace.noFlag={0} should be true or false, not {1}.",
        "# {0} - path",
        "FilePlace.missing={0} is missing.",
        "# {0} - path",
        "# {1} - what stands there",
        "FilePlace.noNumber={0} should be a number, not {1}.",
        "# {0} - path",
        "# {1} - what stands there",
        "FilePlace.noWhole={0} should be a whole number, not {1}.",
        "# {0} - path",
        "# {1} - what stands there",
        "# {2} - least",
        "# {3} - most",
        "FilePlace.outside={0} is {1}. From {2} to {3} is possible."
    })
    Optional<FilePlace> field(String name) {
        if (!(value instanceof Json.Obj object)) {
            throw new MalformedException(Bundle.FilePlace_noObject(shown()));
        }
        return object.get(name)
                .filter(field -> !(field instanceof Json.Null))
                .map(field -> new FilePlace(path.isEmpty() ? name : path + "." + name, field));
    }

    FilePlace need(String name) {
        return field(name)
                .orElseThrow(() ->
                        new MalformedException(Bundle.FilePlace_missing(path.isEmpty() ? name : path + "." + name)));
    }

    List<FilePlace> items() {
        if (!(value instanceof Json.Arr list)) {
            throw new MalformedException(Bundle.FilePlace_noList(shown()));
        }
        List<FilePlace> items = new ArrayList<>();
        for (Json item : list.items()) {
            items.add(new FilePlace(path + "[" + items.size() + "]", item));
        }
        return items;
    }

    /** The items of a list that may be left out. */
    List<FilePlace> items(String name) {
        return field(name).map(FilePlace::items).orElse(List.of());
    }

    String text() {
        if (value instanceof Json.Text text
                && !text.value().isBlank()
                && text.value().length() <= 200) {
            return text.value();
        }
        throw new MalformedException(Bundle.FilePlace_noText(shown()));
    }

    boolean flag() {
        if (value instanceof Json.Flag flag) {
            return flag.value();
        }
        throw new MalformedException(Bundle.FilePlace_noFlag(shown(), told()));
    }

    /** A number within bounds. */
    BigDecimal number(BigDecimal least, BigDecimal most) {
        if (!(value instanceof Json.Num number)) {
            throw new MalformedException(Bundle.FilePlace_noNumber(shown(), told()));
        }
        if (number.value().compareTo(least) < 0 || number.value().compareTo(most) > 0) {
            throw new MalformedException(
                    Bundle.FilePlace_outside(shown(), told(), least.toPlainString(), most.toPlainString()));
        }
        return number.value();
    }

    /** A whole number within bounds. */
    int whole(int least, int most) {
        BigDecimal number = number(BigDecimal.valueOf(least), BigDecimal.valueOf(most));
        if (number.stripTrailingZeros().scale() > 0) {
            throw new MalformedException(Bundle.FilePlace_noWhole(shown(), told()));
        }
        return number.intValueExact();
    }

    String shown() {
        return path.isEmpty() ? Bundle.FilePlace_whole() : path;
    }

    /** What stands here, short enough to be shown. */
    private String told() {
        String all = words();
        return all.length() <= LONGEST ? all : all.substring(0, LONGEST) + "…";
    }

    @Messages({
        "FilePlace.anObject=an object in curly brackets",
        "FilePlace.aList=a list in square brackets",
        "FilePlace.nothing=nothing",
        "FilePlace.true=true",
        "FilePlace.false=false"
    })
    private String words() {
        if (value instanceof Json.Num number) {
            return number.value().toString();
        }
        if (value instanceof Json.Text text) {
            return "\"" + text.value() + "\"";
        }
        if (value instanceof Json.Flag flag) {
            return flag.value() ? Bundle.FilePlace_true() : Bundle.FilePlace_false();
        }
        if (value instanceof Json.Obj) {
            return Bundle.FilePlace_anObject();
        }
        return value instanceof Json.Arr ? Bundle.FilePlace_aList() : Bundle.FilePlace_nothing();
    }
}
