package org.glintery.club.signing;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.glintery.api.GlinteryException;
import org.openide.util.NbBundle.Messages;

/** A member's key on paper, in groups that can be typed, the last of which finds a typing error. Pure; any thread. */
public final class RecoverySheet {
    private static final int GROUP = 4;
    private static final int CHECK_BYTES = 2;
    private static final Pattern KEY = Pattern.compile("(?m)^\\s*((?:[0-9a-fA-F]{4}[\\s-]+){16}[0-9a-fA-F]{4})\\s*$");

    private RecoverySheet() {}

    @Messages({
        "# {0} - name",
        "# {1} - club",
        "# {2} - club code",
        "# {3} - key",
        "RecoverySheet.text=Recovery sheet for {0}, {1}\n\n"
                + "Print this sheet and keep it where nobody else finds it: whoever has it can sign as you.\n"
                + "It brings you back into the club when your computer is lost. Delete the file once it is printed.\n\n"
                + "The club''s code:\n{2}\n\nYour key:\n{3}\n"
    })
    public static String text(String member, String clubName, String club, MemberKey key) {
        byte[] seed = key.seed();
        byte[] whole = Arrays.copyOf(seed, seed.length + CHECK_BYTES);
        System.arraycopy(check(seed), 0, whole, seed.length, CHECK_BYTES);
        return Bundle.RecoverySheet_text(
                member, clubName, club, grouped(HexFormat.of().formatHex(whole)));
    }

    /** The key on a sheet as it was typed; empty when there is none, or it was mistyped. */
    public static Optional<MemberKey> read(String sheet) {
        Matcher found = KEY.matcher(sheet);
        if (!found.find()) {
            return Optional.empty();
        }
        byte[] whole = HexFormat.of().parseHex(found.group(1).replaceAll("[\\s-]", ""));
        byte[] seed = Arrays.copyOf(whole, MemberKey.SEED_BYTES);
        byte[] check = Arrays.copyOfRange(whole, MemberKey.SEED_BYTES, whole.length);
        return Arrays.equals(check, check(seed)) ? Optional.of(MemberKey.ofSeed(seed)) : Optional.empty();
    }

    private static String grouped(String figures) {
        return figures.replaceAll("(.{" + GROUP + "})(?=.)", "$1 ");
    }

    private static byte[] check(byte[] seed) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            digest.update("recovery sheet".getBytes(StandardCharsets.UTF_8));
            return Arrays.copyOf(digest.digest(seed), CHECK_BYTES);
        } catch (NoSuchAlgorithmException e) {
            throw new GlinteryException("no SHA-256 in this Java", e);
        }
    }
}
