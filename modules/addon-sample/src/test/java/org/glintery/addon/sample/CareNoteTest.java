package org.glintery.addon.sample;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.glintery.api.time.About;
import org.glintery.api.workshop.DocumentType;
import org.glintery.testkit.contract.DocumentTypeContract;

class CareNoteTest extends DocumentTypeContract<CareNote> {

    @Override
    protected DocumentType<CareNote> type() {
        return CareNote.TYPE;
    }

    @Override
    protected List<Earlier<CareNote>> earlier() {
        String json = """
                {"piece":"00000000-0000-0001-0000-000000000002","day":"2024-03-31","words":"Dusted"}""";
        About on = About.on(LocalDate.of(2024, 3, 31));
        return List.of(new Earlier<>(1, json, new CareNote(new UUID(1, 2), on, "Dusted")));
    }
}
