package org.glintery.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.glintery.api.exchange.TableFiles;
import org.glintery.api.workshop.Workshop;
import org.glintery.api.workshop.Workshop.CopyReport;
import org.glintery.testkit.DocumentTypes;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Everything that a workshop can hold goes out and comes in again the same. */
class RoundTripTest {
    @TempDir
    Path temp;

    private Workshop first;
    private Workshop second;

    @BeforeEach
    void open() {
        first = TestWorkshops.create(temp.resolve("first"));
        second = TestWorkshops.create(temp.resolve("second"));
        WholeWorkshop.fill(first);
    }

    @AfterEach
    void close() {
        first.close();
        second.close();
    }

    @Test
    void givesAnEqualWorkshop_throughTables() {
        Path zip = temp.resolve("tables.zip");
        CopyReport out =
                first.find(TableFiles.class).orElseThrow().exportTables(zip).orThrow();
        CopyReport in =
                second.find(TableFiles.class).orElseThrow().importTables(zip).orThrow();
        assertThat(in).isEqualTo(out);
        assertThat(out.documents()).isEqualTo(18 * 3 + 2);
        assertThat(out.movements()).isEqualTo(5);
        assertThat(out.blobs()).isEqualTo(2);
        WholeWorkshop.assertEqual(first, second);
        assertThat(second.history(10)).hasSize(1);
        assertThat(second.folder().toFile().list()).noneMatch(name -> name.startsWith("import"));
    }

    @Test
    void givesAnEqualWorkshop_throughJson() {
        Path file = temp.resolve("workshop.json");
        first.exportJson(file).orThrow();
        second.importJson(file).orThrow();
        WholeWorkshop.assertEqual(first, second);
    }

    @Test
    void carriesEveryKindOfDocumentThatTheApiDeclares() {
        assertThat(DocumentTypes.ofTheApi()).hasSizeGreaterThanOrEqualTo(20);
        assertThat(first.view().putOrder().stream().map(ref -> ref.owner() + "." + ref.type()))
                .containsAll(DocumentTypes.ofTheApi().stream()
                        .map(type -> type.owner() + "." + type.name())
                        .toList());
    }
}
