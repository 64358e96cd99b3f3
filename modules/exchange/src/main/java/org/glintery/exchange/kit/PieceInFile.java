package org.glintery.exchange.kit;

import java.util.List;
import java.util.Optional;
import org.glintery.api.ledger.Shape;
import org.glintery.api.stash.Canvas;
import org.glintery.api.stash.Coverage;
import org.glintery.api.stash.Standing;
import org.glintery.api.time.About;

/** A piece as a file tells it. */
record PieceInFile(
        String title,
        Optional<Standing> standing,
        Optional<About> standingSince,
        Optional<Coverage> coverage,
        Optional<Shape> shape,
        Optional<Canvas> canvas,
        Optional<Integer> sections,
        Optional<String> story,
        Optional<List<PictureInFile>> pictures,
        Optional<List<LineInFile>> legend,
        Optional<PictureInFile> legendPhoto) {}
