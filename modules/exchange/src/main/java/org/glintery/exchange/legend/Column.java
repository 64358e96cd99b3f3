package org.glintery.exchange.legend;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.openide.util.NbBundle.Messages;

/**
 * What a column of a legend can mean. The headers are general words only, English, German, French, Dutch and Spanish, without
 * blanks and punctuation. A perhaps counts
 * where no column is surely meant: "no" is the code of some legends and the row number of others.
 */
@Messages({
    "Column.symbol=symbol",
    "Column.code=code",
    "Column.name=name",
    "Column.hex=colour value",
    "Column.shape=shape",
    "Column.size=size in mm",
    "Column.body=body",
    "Column.coating=coating",
    "Column.needed=needed",
    "Column.supplied=supplied",
    "Column.bags=bags"
})
enum Column {
    SYMBOL(
            Bundle.Column_symbol(),
            "symbol symbols sym symb sign chartsymbol legendsymbol symbole symbool símbolo simbolo",
            "mark icon key letter zeichen"),
    CODE(
            Bundle.Column_code(),
            "code codes colourcode colorcode colournumber colornumber colourno colorno colournr colornr drillcode drillno "
                    + "drillnumber codeno codenumber farbnummer farbnr farbcode codecouleur kleurnummer kleurcode código codigo",
            "colour color reference ref number no nr id farbe couleur kleur nummer numéro numero número"),
    NAME(
            Bundle.Column_name(),
            "name colourname colorname drillname farbname nomdecouleur kleurnaam",
            "description title colour color bezeichnung nom naam farbe couleur kleur"),
    HEX(
            Bundle.Column_hex(),
            "hex hexcode rgb colourhex colorhex hexcolour hexcolor hexvalue rgbvalue colourrgb colorrgb colourvalue colorvalue html htmlcolour htmlcolor webcolour "
                    + "webcolor rgbhex",
            ""),
    SHAPE(Bundle.Column_shape(), "shape drillshape shapes forme vorm", "form drilltype forma"),
    SIZE(Bundle.Column_size(), "sizemm drillsize drillsizemm sizeinmm", "size mm"),
    BODY(Bundle.Column_body(), "body drillbody", "material"),
    COATING(Bundle.Column_coating(), "coating coatings", "finish effect surface"),
    NEEDED(
            Bundle.Column_needed(),
            "needed need neededdrills drillsneeded drillcount drillscount numberofdrills noofdrills nrofdrills diamondsneeded "
                    + "diamondcount numberofdiamonds required drillsrequired requireddrills gemsneeded beadsneeded "
                    + "amountneeded quantityneeded qtyneeded countneeded totalneeded neededtotal drillqty drillquantity "
                    + "quantityofdrills qtyofdrills countofdrills totaldrills drillstotal benötigt benoetigt bedarf nécessaire nodig "
                    + "necesario",
            "anzahl menge stück stueck quantité quantite aantal hoeveelheid cantidad count counts qty quantity drills diamonds gems beads amount total cells pieces pcs"),
    SUPPLIED(
            Bundle.Column_supplied(),
            "supplied drillssupplied supplieddrills diamondssupplied included drillsincluded inthekit inkit provided "
                    + "received amountsupplied quantitysupplied qtysupplied drillsinkit drillsinthekit quantityinkit qtyinkit",
            "supply got have geliefert enthalten fourni meegeleverd incluido"),
    BAGS(
            Bundle.Column_bags(),
            "bags numberofbags noofbags nrofbags bagcount bagsneeded bagssupplied packets numberofpackets",
            "bag packs packet pack beutel tüten sachets zakjes bolsas");

    private static final Pattern BAG_SIZE = Pattern.compile(
            "(?<bags>(?:n(?:o|r|umber)\\.? of )?(?:bags?|packets?|packs?))\\s*(?:of|[x×@à(\\[,])\\s*(?<size>[1-9]\\d{0,4})"
                    + "\\s*(?:pcs|pieces|drills|diamonds|gems|beads|each)?\\.?\\s*[)\\]]?");

    private final String words;
    private final Set<String> surely;
    private final Set<String> perhaps;

    Column(String words, String surely, String perhaps) {
        this.words = words;
        this.surely = Set.of(surely.split(" "));
        this.perhaps = Set.of(perhaps.split(" "));
    }

    String words() {
        return words;
    }

    /** The columns that a header surely means. */
    static List<Column> surelyMeantBy(String header) {
        return Arrays.stream(values())
                .filter(column -> readings(header).stream().anyMatch(column.surely::contains))
                .toList();
    }

    /** The columns that a header may mean, the likelier first. */
    static List<Column> perhapsMeantBy(String header) {
        return Arrays.stream(values())
                .filter(column -> readings(header).stream().anyMatch(column.perhaps::contains))
                .toList();
    }

    /** What one bag holds, where the heading of the bags says so: "bags of 200", "bags (250 pcs)". */
    static Optional<Integer> bagSize(String header) {
        Matcher sized = BAG_SIZE.matcher(header.toLowerCase(Locale.ROOT).strip());
        return sized.matches() ? Optional.of(Integer.valueOf(sized.group("size"))) : Optional.empty();
    }

    /**
     * Without case, blanks, punctuation and a plural in brackets; then also without what stands in brackets or says what a
     * bag holds. The sign # is a number.
     */
    private static List<String> readings(String header) {
        if (header.length() > 60) {
            return List.of();
        }
        String lower = header.toLowerCase(Locale.ROOT)
                .replace("(s)", "s")
                .replace("(es)", "es")
                .replaceAll("[#№]", "no");
        Matcher sized = BAG_SIZE.matcher(lower.strip());
        List<String> readings = List.of(
                lettersOf(lower),
                lettersOf(lower.replaceAll("\\(.*?\\)|\\[.*?\\]", "")),
                sized.matches() ? lettersOf(sized.group("bags")) : "");
        return readings.stream().filter(reading -> !reading.isEmpty()).toList();
    }

    private static String lettersOf(String text) {
        return text.replaceAll("[^\\p{L}\\p{N}]", "");
    }
}
