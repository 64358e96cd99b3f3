package org.glintery.testkit;

import org.glintery.api.workshop.Workshop;
import org.glintery.testkit.contract.WorkshopContract;

class MemoryWorkshopTest extends WorkshopContract {

    @Override
    protected Workshop create() {
        return new MemoryWorkshop();
    }
}
