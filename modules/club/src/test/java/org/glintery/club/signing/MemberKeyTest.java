package org.glintery.club.signing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.SecureRandom;
import java.util.HexFormat;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MemberKeyTest {
    private static final HexFormat HEX = HexFormat.of();

    @TempDir
    Path folder;

    /** RFC 8032, section 7.1, tests 1 and 2. */
    @ParameterizedTest
    @CsvSource({
        "9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60,"
                + "d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a,'',"
                + "e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e065224901555fb8821590a33bacc61e39701cf9b46bd25bf5f0595bbe24655141438e7a100b",
        "4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb,"
                + "3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c,72,"
                + "92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da085ac1e43e15996e458f3613d0f11d8c387b2eaeb4302aeeb00d291612bb0c00"
    })
    void signsAsTheRfcDoes(String seed, String publicKey, String message, String signature) {
        MemberKey key = MemberKey.ofSeed(HEX.parseHex(seed));
        assertThat(key.publicKey().hex()).isEqualTo(publicKey);
        byte[] signed = key.sign(HEX.parseHex(message));
        assertThat(HEX.formatHex(signed)).isEqualTo(signature);
        assertThat(key.publicKey().verifies(HEX.parseHex(message), signed)).isTrue();
        assertThat(key.publicKey().verifies(new byte[] {1}, signed)).isFalse();
        signed[3] ^= 1;
        assertThat(key.publicKey().verifies(HEX.parseHex(message), signed)).isFalse();
    }

    @Test
    void comesBackFromItsSheet_andATypingErrorIsFound() {
        MemberKey key = MemberKey.made(new SecureRandom());
        String sheet = RecoverySheet.text("Ann", "Ferry town", key.publicKey().memberId(), key);
        assertThat(RecoverySheet.read(sheet).orElseThrow().publicKey()).isEqualTo(key.publicKey());
        String figures = HEX.formatHex(key.seed()).substring(0, 4);
        String mistyped = figures.startsWith("0") ? "1" + figures.substring(1) : "0" + figures.substring(1);
        assertThat(RecoverySheet.read(sheet.replace("\n" + figures + " ", "\n" + mistyped + " ")))
                .isEmpty();
        assertThat(RecoverySheet.read("no key here")).isEmpty();
    }

    @Test
    @DisabledOnOs(value = OS.WINDOWS, disabledReason = "files have no such rights there")
    void isKeptWhereOnlyItsOwnerReads() throws IOException {
        KeyFolder keys = new KeyFolder(folder.resolve("keys"));
        MemberKey key = MemberKey.made(new SecureRandom());
        keys.keep(key);
        keys.keep(key);
        String id = key.publicKey().memberId();
        Path file = folder.resolve("keys").resolve(id + ".key");
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
                .isEqualTo("rw-------");
        assertThat(keys.find(id).orElseThrow().publicKey()).isEqualTo(key.publicKey());
        Files.writeString(file, "half", StandardCharsets.UTF_8);
        assertThat(keys.find(id)).isEmpty();
    }
}
