package org.glintery.workbench.pictures;

import org.glintery.api.workshop.PictureIntake;
import org.glintery.api.workshop.ServiceFactory;
import org.glintery.api.workshop.Workshop;
import org.openide.util.lookup.ServiceProvider;

/** Brings the way in for pictures to every workshop. */
@ServiceProvider(service = ServiceFactory.class)
public final class PictureIntakeFactory implements ServiceFactory<PictureIntake> {
    @Override
    public Class<PictureIntake> service() {
        return PictureIntake.class;
    }

    @Override
    public PictureIntake create(Workshop workshop) {
        return new ShownPictures();
    }
}
