package org.glintery.club;

import org.glintery.api.workshop.ServiceFactory;
import org.glintery.api.workshop.Workshop;
import org.openide.util.lookup.ServiceProvider;

/** Brings the club to every workshop. */
@ServiceProvider(service = ServiceFactory.class)
public final class ClubFactory implements ServiceFactory<Club> {

    @Override
    public Class<Club> service() {
        return Club.class;
    }

    @Override
    public Club create(Workshop workshop) {
        return new Club();
    }
}
