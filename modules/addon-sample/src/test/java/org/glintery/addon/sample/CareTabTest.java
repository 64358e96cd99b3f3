package org.glintery.addon.sample;

import org.glintery.testkit.contract.PieceTabContract;
import org.glintery.workbench.spi.PieceTab;

class CareTabTest extends PieceTabContract {

    @Override
    protected PieceTab tab() {
        return new CareTab();
    }
}
