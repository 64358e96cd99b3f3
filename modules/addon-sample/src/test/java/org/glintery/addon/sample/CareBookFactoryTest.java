package org.glintery.addon.sample;

import org.glintery.api.workshop.ServiceFactory;
import org.glintery.testkit.contract.ServiceFactoryContract;

class CareBookFactoryTest extends ServiceFactoryContract {

    @Override
    protected ServiceFactory factory() {
        return new CareBookFactory();
    }
}
