package org.glintery.testkit;

import org.glintery.api.JsonCodec;
import org.glintery.testkit.contract.JsonCodecContract;

class PlainCodecTest extends JsonCodecContract {

    @Override
    protected JsonCodec codec() {
        return new PlainCodec();
    }
}
