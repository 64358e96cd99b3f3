package org.glintery.stash.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.glintery.api.exchange.LegendReader.Reading;
import org.glintery.workbench.parts.WrappedText;
import org.junit.jupiter.api.Test;

class LegendPreviewTest {

    @Test
    void saysPlainlyHowAFileWasUnderstood_andNamesItsEncodingOnlyWhereItIsLookedFor() {
        Reading reading = new Reading(Map.of(), List.of(), Map.of(), List.of(), List.of(), "UTF-8", "semicolons");
        WrappedText words = LegendPreview.understood(reading);

        assertThat(words.getText()).isEqualTo("Understood as a table whose columns are set apart by semicolons.");
        assertThat(words.getToolTipText()).contains("letters").contains("UTF-8");
    }
}
