package org.glintery.records;

import java.nio.file.Path;
import org.glintery.api.workshop.Workshop;
import org.glintery.testkit.contract.WorkshopContract;
import org.junit.jupiter.api.io.TempDir;

class H2WorkshopContractTest extends WorkshopContract {

    @TempDir
    Path temp;

    @Override
    protected Workshop create() {
        return new H2Workshops().create(temp.resolve("workshop")).orThrow();
    }
}
