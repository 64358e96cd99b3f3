package org.glintery.exchange.tables;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.UnaryOperator;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.glintery.api.exchange.TableFiles;
import org.glintery.api.workshop.Workshop;
import org.glintery.exchange.TestWorkshops;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** A workshop that goes out as tables and an empty one that takes them in. */
abstract class TablesFixture {
    @TempDir
    Path temp;

    Workshop first;
    Workshop second;
    Path zip;

    @BeforeEach
    void open() {
        first = TestWorkshops.create(temp.resolve("first"));
        second = TestWorkshops.create(temp.resolve("second"));
        zip = temp.resolve("tables.zip");
    }

    @AfterEach
    void close() {
        first.close();
        second.close();
    }

    TableFiles out() {
        return first.find(TableFiles.class).orElseThrow();
    }

    TableFiles in() {
        return second.find(TableFiles.class).orElseThrow();
    }

    void rewrite(BiFunction<String, byte[], byte[]> change) throws IOException {
        Map<String, byte[]> entries = new LinkedHashMap<>();
        try (var file = new ZipFile(zip.toFile())) {
            for (ZipEntry entry : file.stream().map(ZipEntry.class::cast).toList()) {
                entries.put(entry.getName(), file.getInputStream(entry).readAllBytes());
            }
        }
        try (var made = new ZipOutputStream(Files.newOutputStream(zip))) {
            for (Map.Entry<String, byte[]> entry : entries.entrySet()) {
                byte[] bytes = change.apply(entry.getKey(), entry.getValue());
                if (bytes != null) {
                    made.putNextEntry(new ZipEntry(entry.getKey()));
                    made.write(bytes);
                }
            }
        }
    }

    void spoil(String table, UnaryOperator<String> change) throws IOException {
        rewrite((name, bytes) -> name.equals(table)
                ? change.apply(new String(bytes, StandardCharsets.UTF_8)).getBytes(StandardCharsets.UTF_8)
                : bytes);
    }
}
