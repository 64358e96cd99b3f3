package org.glintery.api.ledger;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.glintery.api.Preview;

/**
 * Reads amounts as people write them: 1 234, "about 200", "200-250", "2 bags", "2 x 200", "400 (2 bags)", "some".
 * Immutable; any thread.
 */
@Preview(since = "1.0")
public final class AmountWords {
    /** What "about 200" leaves open, in parts of the number. Our own choice: people round to tens and hundreds. */
    private static final double ROUGHNESS = 0.1;

    private static final int LONGEST = 80;
    private static final String BAG = PartOfBag.BAG;
    private static final String UNIT = "(?:\\s*(?:pcs|pieces|drills?|diamonds?|gems?|beads?|stones?)\\.?)?";
    private static final String EACH = "(?<each>\\s*(?:each|per bag|a bag|/\\s*bag))?";
    private static final String NUMBER = "\\d(?:[\\d.,'\u2019 ]*\\d)?";
    private static final String FEW = NUMBER + "|an?|one|two|three|four|five|six|seven|eight|nine|ten";

    private static final Pattern SILENT =
            Pattern.compile("[-–—?.]*|n/?a|unknown|not known|not counted(?: yet)?|tb[ca]", Pattern.DOTALL);
    private static final String SOME =
            "(?:a )?(?:few|pinch|handful|little|lot|some|several|plenty|lots|enough|leftovers?)";
    private static final String WEIGHT = NUMBER + "\\s*(?:k?g|grams?|grammes?|oz|ounces?)\\.?";
    private static final Pattern UNCOUNTABLE =
            Pattern.compile("(?:" + SOME + "|" + PartOfBag.WORDS + "|" + WEIGHT + ")(?: left)?");
    private static final Pattern NEGATIVE = Pattern.compile("[-–−]\\s*" + NUMBER + UNIT + "(?:\\s*" + BAG + ")?");
    private static final Pattern ABOUT = Pattern.compile(
            "(?:about|approx\\.?|approximately|around|roughly|circa|ca\\.?|c\\.|~|≈)\\s*(?<number>.+)|(?<least>"
                    + NUMBER + ")" + UNIT + "\\s*\\+");
    private static final Pattern SPREAD =
            Pattern.compile("(?<number>" + NUMBER + ")\\s*(?:±|\\+\\s*/?\\s*[-−])\\s*(?<spread>" + NUMBER + ")" + UNIT);
    private static final Pattern RANGE =
            Pattern.compile("(?<from>" + NUMBER + ")\\s*(?:[-–—]|to|\\.\\.)\\s*(?<to>" + NUMBER + ")" + UNIT);
    private static final Pattern BAGS = Pattern.compile("(?<bags>" + FEW + ")\\s*" + BAG);
    private static final Pattern BAGS_OF = Pattern.compile("(?<bags>" + FEW + ")\\s*" + BAG
            + "\\s*(?:of|with|at|à|@|x|×|\\*)\\s*(?<drills>" + NUMBER + ")" + UNIT + EACH);
    private static final Pattern TIMES = Pattern.compile("(?<one>" + NUMBER + ")" + UNIT + "\\s*[x×*]\\s*(?<other>"
            + NUMBER + ")" + UNIT + "(?:\\s*" + BAG + ")?" + EACH);
    private static final Pattern IN_BAGS = Pattern.compile("(?<drills>" + NUMBER + ")" + UNIT
            + "\\s*(?:[(\\[,;:/=]|in)\\s*(?<bags>" + FEW + ")\\s*" + BAG + "\\s*[)\\]]?");
    private static final Pattern BAGS_HOLDING = Pattern.compile("(?<bags>" + FEW + ")\\s*" + BAG
            + "\\s*[(\\[,;:/=]\\s*(?<drills>" + NUMBER + ")" + UNIT + EACH + "\\s*[)\\]]?");

    private final WholeNumbers numbers;
    private final OptionalInt drillsPerBag;

    private AmountWords(WholeNumbers numbers, OptionalInt drillsPerBag) {
        this.numbers = numbers;
        this.drillsPerBag = drillsPerBag;
    }

    /** Where nothing else is known, 1.234 and 1,234 are one thousand and more. */
    public static AmountWords alone() {
        return new AmountWords(WholeNumbers.alone(), OptionalInt.empty());
    }

    /**
     * Where other cells of a table show that a point or comma begins its decimals, 1.234 is no whole number.
     *
     * @param cells the number cells of the table
     */
    public static AmountWords asIn(Collection<String> cells) {
        return new AmountWords(
                WholeNumbers.asIn(cells.stream().map(AmountWords::plain).toList()), OptionalInt.empty());
    }

    /** The same where it is known what a bag holds: half a bag then is a number, if a rough one. */
    public AmountWords inBagsOf(int drills) {
        return new AmountWords(numbers, OptionalInt.of(drills));
    }

    /** Whether such words tell a part of a bag, as "half a bag" does. */
    public static boolean tellPartOfBag(String written) {
        return PartOfBag.read(plain(written)).isPresent();
    }

    /** What can be wrong with an amount. */
    public enum Fault {
        BELOW_ZERO,
        NOT_WHOLE,
        TOO_LARGE
    }

    /**
     * What was read.
     *
     * @param amount unknown where the words do not say, or count bags only
     * @param bags where the words count bags
     * @param uncountable whether there is some, as "a pinch" says, but no number of it; so does "half a bag" where nobody knows what a
     *     bag holds
     * @param fault the rest says nothing then
     */
    public record Said(Amount amount, Optional<Integer> bags, boolean uncountable, Optional<Fault> fault) {
        private static final Said NOTHING = of(Amount.unknown());

        private static Said of(Amount amount) {
            return new Said(amount, Optional.empty(), false, Optional.empty());
        }

        private static Said wrong(Fault fault) {
            return new Said(Amount.unknown(), Optional.empty(), false, Optional.of(fault));
        }
    }

    /** @param largest what is larger is a typing error, as everything beyond {@link Amount#MOST} is */
    public Said read(String written, long largest) {
        long most = Math.min(largest, Amount.MOST);
        String text = plain(written);
        if (SILENT.matcher(text).matches()) {
            return Said.NOTHING;
        }
        if (text.length() > LONGEST) {
            return Said.wrong(Fault.NOT_WHOLE);
        }
        if (NEGATIVE.matcher(text).matches()) {
            return Said.wrong(Fault.BELOW_ZERO);
        }
        try {
            return inWords(text, most);
        } catch (WholeNumbers.NotOneException e) {
            return Said.wrong(e.fault());
        }
    }

    private Said inWords(String text, long most) throws WholeNumbers.NotOneException {
        Optional<PartOfBag> part = drillsPerBag.isPresent() ? PartOfBag.read(text) : Optional.empty();
        if (part.isPresent()) {
            return Said.of(part.get().of(drillsPerBag.getAsInt()));
        }
        if (UNCOUNTABLE.matcher(text).matches()) {
            return new Said(Amount.unknown(), Optional.empty(), true, Optional.empty());
        }
        Matcher about = ABOUT.matcher(text);
        if (about.matches()) {
            String number = about.group("number");
            return roughly(inWords(number == null ? about.group("least") : number, most));
        }
        Matcher spread = SPREAD.matcher(text);
        if (spread.matches()) {
            return Said.of(Amount.rough(
                    numbers.read(spread.group("number"), most), numbers.read(spread.group("spread"), most)));
        }
        Matcher range = RANGE.matcher(text);
        if (range.matches()) {
            return Said.of(between(numbers.read(range.group("from"), most), numbers.read(range.group("to"), most)));
        }
        Optional<Said> bags = inBags(text, most);
        return bags.isPresent() ? bags.get() : Said.of(Amount.counted(numbers.read(withoutUnit(text), most)));
    }

    private static Said roughly(Said said) {
        long count = said.amount().count().orElse(0L);
        boolean counted = said.amount().basis() == Amount.Basis.COUNTED;
        return counted ? Said.of(Amount.rough(count, Math.round(count * ROUGHNESS))) : said;
    }

    /**
     * Anything from one number to the other is as likely: its standard uncertainty is the half-width over the square root
     * of 3. Source: JCGM 100:2008 (GUM), 4.3.7.
     */
    private static Amount between(long from, long to) throws WholeNumbers.NotOneException {
        if (to < from) {
            throw new WholeNumbers.NotOneException(Fault.NOT_WHOLE);
        }
        return Amount.rough(from + (to - from) / 2, Math.round((to - from) / 2.0 / Math.sqrt(3)));
    }

    private Optional<Said> inBags(String text, long most) throws WholeNumbers.NotOneException {
        Matcher alone = BAGS.matcher(text);
        if (alone.matches()) {
            return Optional.of(
                    new Said(Amount.unknown(), Optional.of(bags(alone.group("bags"))), false, Optional.empty()));
        }
        Matcher of = BAGS_OF.matcher(text);
        if (of.matches()) {
            int bags = bags(of.group("bags"));
            return Optional.of(bagged(bags, bags * numbers.read(of.group("drills"), most), most));
        }
        Matcher times = TIMES.matcher(text);
        if (times.matches()) {
            // common practice, no published source: a bag holds more drills than a line has bags
            long one = numbers.read(times.group("one"), most);
            long other = numbers.read(times.group("other"), most);
            int bags = bags(String.valueOf(Math.min(one, other)));
            return Optional.of(bagged(bags, bags * Math.max(one, other), most));
        }
        Matcher holding = BAGS_HOLDING.matcher(text);
        if (holding.matches()) {
            int bags = bags(holding.group("bags"));
            long drills = numbers.read(holding.group("drills"), most);
            return Optional.of(bagged(bags, holding.group("each") == null ? drills : bags * drills, most));
        }
        Matcher inBags = IN_BAGS.matcher(text);
        return inBags.matches()
                ? Optional.of(bagged(bags(inBags.group("bags")), numbers.read(inBags.group("drills"), most), most))
                : Optional.empty();
    }

    private static Said bagged(int bags, long drills, long most) throws WholeNumbers.NotOneException {
        if (drills > most) {
            throw new WholeNumbers.NotOneException(Fault.TOO_LARGE);
        }
        return new Said(Amount.inBags(drills, bags), Optional.of(bags), false, Optional.empty());
    }

    private int bags(String written) throws WholeNumbers.NotOneException {
        return switch (written) {
            case "a", "an", "one" -> 1;
            case "two" -> 2;
            case "three" -> 3;
            case "four" -> 4;
            case "five" -> 5;
            case "six" -> 6;
            case "seven" -> 7;
            case "eight" -> 8;
            case "nine" -> 9;
            case "ten" -> 10;
            default -> (int) numbers.read(written, Amount.MOST_BAGS);
        };
    }

    private static String withoutUnit(String text) {
        return text.replaceFirst(UNIT + "$", "");
    }

    /** In lower case; blanks of any width are one kind, digits of any script are ours. */
    private static String plain(String written) {
        String text = written.length() > 10 * LONGEST ? written.substring(0, 10 * LONGEST) : written;
        return text.codePoints()
                .map(c -> Character.isDigit(c) ? '0' + Character.digit(c, 10) : c)
                .map(c -> Character.isSpaceChar(c) || Character.isWhitespace(c) ? ' ' : c)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString()
                .strip()
                .toLowerCase(Locale.ROOT);
    }

    /**
     * What a number in these words would be if its last three zeros were decimals: 120 for "120.000", which is read as 120
     * thousand. Empty where there is none, or where other cells of the table tell which is meant.
     */
    public OptionalLong smallerReading(String written) {
        return numbers.smallerReading(plain(written));
    }

    /** Whether such words say nothing, as a dash or "n/a" does. */
    public static boolean areSilent(String written) {
        return SILENT.matcher(plain(written)).matches();
    }
}
