package org.glintery.api.workshop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class BlobTest {
    /** FIPS 180-2, appendix B.1: the SHA-256 of "abc". */
    private static final String HASH_OF_ABC = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";

    @Test
    void isNamedByItsContent() {
        assertThat(Blob.of("text/plain", new byte[] {'a', 'b', 'c'}).hash()).isEqualTo(HASH_OF_ABC);
    }

    @Test
    void equalsAnotherOfTheSameContent() {
        Blob blob = Blob.of("text/plain", new byte[] {'a', 'b', 'c'});
        assertThat(blob)
                .isEqualTo(new Blob(HASH_OF_ABC, "text/plain", new byte[] {'a', 'b', 'c'}))
                .hasSameHashCodeAs(Blob.of("text/plain", new byte[] {'a', 'b', 'c'}))
                .isNotEqualTo(Blob.of("text/plain", new byte[] {'a', 'b'}))
                .isNotEqualTo(Blob.of("image/png", new byte[] {'a', 'b', 'c'}));
    }

    @Test
    void isNotMadeWithTheHashOfOtherBytes() {
        assertThatThrownBy(() -> new Blob(HASH_OF_ABC, "text/plain", new byte[] {'a', 'b', 'd'}))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(HASH_OF_ABC);
    }
}
