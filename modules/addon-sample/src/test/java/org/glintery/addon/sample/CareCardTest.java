package org.glintery.addon.sample;

import org.glintery.testkit.contract.TodayCardContract;
import org.glintery.workbench.spi.TodayCard;

class CareCardTest extends TodayCardContract {

    @Override
    protected TodayCard card() {
        return new CareCard();
    }
}
