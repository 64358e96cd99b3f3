package org.glintery.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;
import org.glintery.api.stash.Kit;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.LedgerQuery;
import org.glintery.api.workshop.Workshop;
import org.glintery.testkit.DiskWork;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever reads or writes the disk refuses to do so on the event thread, and has done nothing then. */
class EventThreadTest {
    @TempDir
    Path temp;

    private final H2Workshops workshops = new H2Workshops();
    private Workshop workshop;

    @BeforeEach
    void open() {
        workshop = workshops.create(temp.resolve("w")).orThrow();
    }

    @AfterEach
    void close() {
        workshop.close();
    }

    private Map<String, Runnable> diskWork() {
        ChangeSet change = ChangeSet.named("Shelve")
                .create(Kit.TYPE, UUID.randomUUID(), Kit.titled("Crane"))
                .build();
        Map<String, Runnable> work = new LinkedHashMap<>();
        work.put("isWorkshop", () -> workshops.isWorkshop(temp.resolve("w")));
        work.put("open", () -> workshops.open(temp.resolve("w")));
        work.put("create", () -> workshops.create(temp.resolve("other")));
        work.put("restore", () -> workshops.restore(temp.resolve("a.zip"), temp.resolve("other")));
        work.put("apply", () -> workshop.apply(change));
        work.put("undo", workshop::undo);
        work.put("redo", workshop::redo);
        work.put("history", () -> workshop.history(1));
        work.put("ledger", () -> workshop.ledger(LedgerQuery.all(), entry -> {}));
        work.put("blob", () -> workshop.blob("00"));
        work.put("check", workshop::check);
        work.put("backup", () -> workshop.backup(temp.resolve("a.zip")));
        work.put("lastBackup", workshop::lastBackup);
        work.put("exportJson", () -> workshop.exportJson(temp.resolve("a.json")));
        work.put("importJson", () -> workshop.importJson(temp.resolve("a.json")));
        work.put("close", workshop::close);
        return work;
    }

    @Test
    void refusesDiskWork_onTheEventThread() throws InterruptedException {
        Map<String, Runnable> work = diskWork();
        Map<String, String> refused = DiskWork.refusedOnTheEventThread(work);
        assertThat(refused.keySet()).containsExactlyElementsOf(work.keySet());
        assertThat(refused.values()).containsOnly(DiskWork.REFUSED);
        assertThat(workshop.view().revision()).isZero();
        assertThat(Files.exists(temp.resolve("other"))).isFalse();
        assertThat(workshop.history(1)).isEmpty();
    }
}
