package org.glintery.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.glintery.api.PlainText;
import org.glintery.api.charts.ChartLine;
import org.glintery.api.kinds.DocumentKinds;
import org.glintery.api.ledger.LedgerAction;
import org.glintery.api.ledger.Spot;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.DocumentType;
import org.glintery.testkit.FilledRecords;
import org.junit.jupiter.api.Test;

/** No record keeps a control character, however it came in, but for line breaks and tabs in what may be long. */
class PlainRecordsTest {
    private static final int LEAST_TEXTS = 80;
    private static final String HOSTILE = "\u001b[31m\u0007\u0000\u007f\u009b\r\n\tend\u2028";
    private static final List<String> SEVERAL_LINES = List.of(
            "Answer.because",
            "Finish.altered",
            "Finish.comments",
            "Finish.making",
            "FramePlan.notes",
            "Holder.notes",
            "KeepingPlace.notes",
            "Kit.notes",
            "LegendLine.extras",
            "Piece.story",
            "Question.text",
            "Sitting.note");

    private final FilledRecords filled = new FilledRecords().writing(text -> text + HOSTILE);
    private final Set<String> severalLines = new TreeSet<>();
    private final List<String> unclean = new ArrayList<>();
    private int looked;

    @Test
    void keepsNoControlCharacterInAnyTextOfADocumentOrMovement() throws ReflectiveOperationException {
        for (DocumentType<?> type : DocumentKinds.ALL) {
            look(filled.of(type.record()), "");
        }
        for (Class<?> action : LedgerAction.class.getPermittedSubclasses()) {
            look(filled.of(action.asSubclass(Record.class)), "");
        }
        look(filled.of(Spot.Boundary.class), "");
        look(filled.of(ChartLine.class), "");
        look(ChangeSet.named("a" + HOSTILE).build(), "");
        assertThat(unclean).isEmpty();
        assertThat(severalLines).containsExactlyElementsOf(SEVERAL_LINES);
        assertThat(looked).isGreaterThan(LEAST_TEXTS);
    }

    private void look(Object value, String where) throws ReflectiveOperationException {
        if (value instanceof String text) {
            looked++;
            if (text.chars().anyMatch(c -> c == '\n' || c == '\t')) {
                severalLines.add(where);
            }
            if (text.chars().anyMatch(c -> PlainText.isControl(c) && c != '\n' && c != '\t')) {
                unclean.add(where);
            }
        } else if (value instanceof Optional<?> optional && optional.isPresent()) {
            look(optional.get(), where);
        } else if (value instanceof Iterable<?> items) {
            for (Object item : items) {
                look(item, where);
            }
        } else if (value instanceof Map<?, ?> map) {
            look(map.keySet(), where);
            look(map.values(), where);
        } else if (value instanceof Record record && record.getClass().getName().startsWith("org.glintery.api")) {
            for (RecordComponent component : record.getClass().getRecordComponents()) {
                component.getAccessor().setAccessible(true);
                look(
                        component.getAccessor().invoke(record),
                        record.getClass().getSimpleName() + "." + component.getName());
            }
        }
    }
}
