package org.glintery.exchange.kit;

import java.util.Optional;

/** A picture as a file tells it: its bytes in base64, or the name of a file beside it. */
record PictureInFile(Optional<String> bytes, Optional<String> file, Optional<String> caption) {}
