package org.glintery.api.workshop;

import org.glintery.api.Stable;

/** A picture that was taken in by {@link PictureIntake}, with its bytes: put both into the same change. */
@Stable
public record NewPicture(Picture picture, Blob blob) {}
