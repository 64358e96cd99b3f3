package org.glintery.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.exchange.KitFiles;
import org.glintery.api.exchange.LegendReader;
import org.glintery.api.exchange.TableFiles;
import org.glintery.api.workshop.Workshop;
import org.glintery.testkit.DiskWork;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever reads or writes files refuses to do so on the event thread. */
class EventThreadTest {
    @TempDir
    Path temp;

    @Test
    void refusesDiskWork_onTheEventThread() throws InterruptedException {
        try (Workshop workshop = TestWorkshops.create(temp.resolve("w"))) {
            LegendReader legends = workshop.find(LegendReader.class).orElseThrow();
            KitFiles kits = workshop.find(KitFiles.class).orElseThrow();
            TableFiles tables = workshop.find(TableFiles.class).orElseThrow();
            Path file = temp.resolve("file");
            Map<String, Runnable> work = new LinkedHashMap<>();
            work.put("legend", () -> legends.read(file, new LegendReader.Assumed("own", Optional.empty())));
            work.put("read kit", () -> kits.read(file));
            work.put("write kit", () -> kits.write(workshop.view(), new UUID(1, 1), file));
            work.put("export tables", () -> tables.exportTables(file));
            work.put("import tables", () -> tables.importTables(file));
            Map<String, String> refused = DiskWork.refusedOnTheEventThread(work);
            assertThat(refused.keySet()).containsExactlyElementsOf(work.keySet());
            assertThat(refused.values()).containsOnly(DiskWork.REFUSED);
            assertThat(file).doesNotExist();
        }
    }
}
