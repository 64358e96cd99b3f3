package org.glintery.api.ledger;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What part of a bag such words as "half a bag" mean, judged by eye.
 *
 * @param share of a bag
 * @param halfWidth anything so far from it, in bags, is as likely: our own choice
 */
record PartOfBag(double share, double halfWidth) {
    /** Half a bag is more than a quarter and less than three. */
    private static final double BY_EYE = 0.25;

    private static final PartOfBag ANY = new PartOfBag(0.5, 0.5);

    static final String BAG = "(?:bags?|bgs?|b|packets?|packs?|pkts?)\\.?";
    static final String WORDS = "(?:about |ca\\.? )?(?:an? |the )?"
            + "(?:half|part|most|quarter|third|rest|½|¼|¾|\\d/[1-9]|\\d*[.,](?!0+\\D)\\d{1,2})(?: of)?(?: an?| the)?\\s*"
            + BAG + "(?: left)?";
    private static final Pattern ALL = Pattern.compile(WORDS);
    private static final Pattern SHARE =
            Pattern.compile("half|part|most|quarter|third|rest|[½¼¾]|\\d/\\d|\\d*[.,]\\d{1,2}");

    /** @param text in lower case */
    static Optional<PartOfBag> read(String text) {
        Matcher share = SHARE.matcher(text);
        return ALL.matcher(text).matches() && share.find() ? Optional.of(of(share.group())) : Optional.empty();
    }

    private static PartOfBag of(String word) {
        return switch (word) {
            case "half", "½" -> byEye(0.5);
            case "quarter", "¼" -> byEye(0.25);
            case "most", "¾" -> byEye(0.75);
            case "third" -> byEye(1.0 / 3);
            case "part", "rest" -> ANY;
            default ->
                byEye(
                        word.contains("/")
                                ? (word.charAt(0) - '0') / (double) (word.charAt(2) - '0')
                                : Double.parseDouble("0" + word.replace(',', '.')));
        };
    }

    private static PartOfBag byEye(double share) {
        return new PartOfBag(share, BY_EYE);
    }

    /**
     * The standard uncertainty is the half-width over the square root of 3. Source: JCGM 100:2008 (GUM), 4.3.7.
     */
    Amount of(int drillsPerBag) {
        return Amount.rough(Math.round(share * drillsPerBag), Math.round(halfWidth * drillsPerBag / Math.sqrt(3)));
    }
}
