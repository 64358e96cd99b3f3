package org.glintery.exchange.legend;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.openide.util.NbBundle.Messages;

/**
 * How a file's bytes may stand for text.
 *
 * @param mark how many bytes of the file are only a mark
 * @param words for people
 */
@Messages({
    "Encoding.utf8=UTF-8",
    "Encoding.utf8Mark=UTF-8 with a mark",
    "Encoding.utf16=UTF-16",
    "Encoding.windows=Western (Windows-1252)",
    "Encoding.latin=Western (Latin-1)"
})
record Encoding(Charset charset, int mark, String words) {

    /**
     * Those to try in turn: by the mark; without one by where the zero bytes stand, which is in every second place for
     * UTF-16; else UTF-8, which other encodings hardly ever look like, then the Western ones of older spreadsheets. None
     * when the bytes are no text.
     *
     * @param head the first bytes of the file, an even number unless they are all
     */
    static List<Encoding> of(byte[] head) {
        if (startsWith(head, 0xEF, 0xBB, 0xBF)) {
            return List.of(new Encoding(StandardCharsets.UTF_8, 3, Bundle.Encoding_utf8Mark()));
        }
        if (startsWith(head, 0xFF, 0xFE)) {
            return List.of(new Encoding(StandardCharsets.UTF_16LE, 2, Bundle.Encoding_utf16()));
        }
        if (startsWith(head, 0xFE, 0xFF)) {
            return List.of(new Encoding(StandardCharsets.UTF_16BE, 2, Bundle.Encoding_utf16()));
        }
        int even = zeros(head, 0);
        int odd = zeros(head, 1);
        if (even + odd == 0) {
            return List.of(
                    new Encoding(StandardCharsets.UTF_8, 0, Bundle.Encoding_utf8()),
                    new Encoding(Charset.forName("windows-1252"), 0, Bundle.Encoding_windows()),
                    new Encoding(StandardCharsets.ISO_8859_1, 0, Bundle.Encoding_latin()));
        }
        if (even > 8 * odd || odd > 8 * even) {
            Charset charset = odd > even ? StandardCharsets.UTF_16LE : StandardCharsets.UTF_16BE;
            return List.of(new Encoding(charset, 0, Bundle.Encoding_utf16()));
        }
        return List.of();
    }

    private static boolean startsWith(byte[] head, int... mark) {
        if (head.length < mark.length) {
            return false;
        }
        for (int i = 0; i < mark.length; i++) {
            if ((head[i] & 0xFF) != mark[i]) {
                return false;
            }
        }
        return true;
    }

    private static int zeros(byte[] head, int from) {
        int zeros = 0;
        for (int i = from; i < head.length; i += 2) {
            if (head[i] == 0) {
                zeros++;
            }
        }
        return zeros;
    }
}
