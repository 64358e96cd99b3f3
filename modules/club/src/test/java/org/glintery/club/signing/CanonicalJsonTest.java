package org.glintery.club.signing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HexFormat;
import java.util.Random;
import org.glintery.api.Json;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The examples are RFC 8785's own: sections 3.2.2 to 3.2.4 and appendix B. */
class CanonicalJsonTest {

    private static String again(String text) throws BoundedJson.GivenUpException {
        return CanonicalJson.text(BoundedJson.read(text));
    }

    @Test
    void writesTheExampleOfSection324_byteByByte() throws BoundedJson.GivenUpException {
        String in = "{\"numbers\":[333333333.33333329,1E30,4.50,2e-3,0.000000000000000000000000001],"
                + "\"string\":\"\\u20ac$\\u000F\\u000aA'\\u0042\\u0022\\u005c\\\\\\\"\\/\",\"literals\":[null,true,false]}";
        // the first number has more digits than a double keeps, which a document of ours must not
        assertThatThrownBy(() -> again(in)).isInstanceOf(IllegalArgumentException.class);
        byte[] bytes = CanonicalJson.bytes(BoundedJson.read(in.replace("333333333.33333329", "333333333.3333333")));
        assertThat(HexFormat.ofDelimiter(" ").formatHex(bytes))
                .isEqualTo("7b 22 6c 69 74 65 72 61 6c 73 22 3a 5b 6e 75 6c 6c 2c 74 72"
                        + " 75 65 2c 66 61 6c 73 65 5d 2c 22 6e 75 6d 62 65 72 73 22 3a"
                        + " 5b 33 33 33 33 33 33 33 33 33 2e 33 33 33 33 33 33 33 2c 31"
                        + " 65 2b 33 30 2c 34 2e 35 2c 30 2e 30 30 32 2c 31 65 2d 32 37"
                        + " 5d 2c 22 73 74 72 69 6e 67 22 3a 22 e2 82 ac 24 5c 75 30 30"
                        + " 30 66 5c 6e 41 27 42 5c 22 5c 5c 5c 5c 5c 22 2f 22 7d");
    }

    @Test
    void sortsByCodeUnits_asSection323Does() throws BoundedJson.GivenUpException {
        String in =
                "{\"\\u20ac\":\"Euro Sign\",\"\\r\":\"Carriage Return\",\"\\ufb33\":\"Hebrew Letter Dalet With Dagesh\","
                        + "\"1\":\"One\",\"\\ud83d\\ude00\":\"Emoji: Grinning Face\",\"\\u0080\":\"Control\","
                        + "\"\\u00f6\":\"Latin Small Letter O With Diaeresis\"}";
        String out = again(in);
        assertThat(out.replaceAll("\"[^\"]*\":\"([^\"]*)\"", "$1"))
                .isEqualTo("{Carriage Return,One,Control,Latin Small Letter O With Diaeresis,Euro Sign,"
                        + "Emoji: Grinning Face,Hebrew Letter Dalet With Dagesh}");
    }

    @ParameterizedTest
    @CsvSource({
        "0000000000000000,0",
        "8000000000000000,0",
        "0000000000000001,5e-324",
        "8000000000000001,-5e-324",
        "7fefffffffffffff,1.7976931348623157e+308",
        "ffefffffffffffff,-1.7976931348623157e+308",
        "4340000000000000,9007199254740992",
        "c340000000000000,-9007199254740992",
        "4430000000000000,295147905179352830000",
        "44b52d02c7e14af5,9.999999999999997e+22",
        "44b52d02c7e14af6,1e+23",
        "44b52d02c7e14af7,1.0000000000000001e+23",
        "444b1ae4d6e2ef4e,999999999999999700000",
        "444b1ae4d6e2ef4f,999999999999999900000",
        "444b1ae4d6e2ef50,1e+21",
        "3eb0c6f7a0b5ed8c,9.999999999999997e-7",
        "3eb0c6f7a0b5ed8d,0.000001",
        "41b3de4355555553,333333333.3333332",
        "41b3de4355555554,333333333.33333325",
        "41b3de4355555555,333333333.3333333",
        "41b3de4355555556,333333333.3333334",
        "41b3de4355555557,333333333.33333343",
        "becbf647612f3696,-0.0000033333333333333333",
        "43143ff3c1cb0959,1424953923781206.2"
    })
    void writesTheNumbersOfAppendixB(String bits, String written) {
        assertThat(EcmaNumber.text(Double.longBitsToDouble(Long.parseUnsignedLong(bits, 16))))
                .isEqualTo(written);
    }

    @Test
    void readsBackEveryNumberThatItWrites() {
        Random random = new Random(8785);
        for (int i = 0; i < 20_000; i++) {
            double value = Double.longBitsToDouble(random.nextLong());
            if (Double.isFinite(value)) {
                assertThat(Double.parseDouble(EcmaNumber.text(value))).isEqualTo(value);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void refusesWhatIsNoNumberOfJson(double value) {
        assertThatThrownBy(() -> EcmaNumber.text(value)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void refusesHalfOfAPair() {
        assertThatThrownBy(() -> CanonicalJson.text(new Json.Text("\ud83d")))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
