package org.glintery.commands.workshop;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class CopiedTest {

    @Test
    void oneIsNotSeveral_andThousandsAreSetApart() {
        assertThat(Copied.counts(1, 1, 1)).isEqualTo("1 document, 1 movement, 1 picture");
        assertThat(Copied.counts(1_234, 0, 2)).isEqualTo("1\u2009234 documents, 0 movements, 2 pictures");
    }
}
