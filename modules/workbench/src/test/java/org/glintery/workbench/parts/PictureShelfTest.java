package org.glintery.workbench.parts;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.lang.reflect.Proxy;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import javax.swing.SwingUtilities;
import org.glintery.api.workshop.Workshop;
import org.junit.jupiter.api.Test;

class PictureShelfTest {

    /** A workshop whose pictures can't be read. */
    private static Workshop failing(Throwable trouble) {
        return (Workshop) Proxy.newProxyInstance(
                Workshop.class.getClassLoader(), new Class<?>[] {Workshop.class}, (proxy, method, arguments) -> {
                    throw trouble;
                });
    }

    @Test
    void tellsWhoeverWaits_whateverWentWrong() throws Exception {
        assertThat(answered("closed", new IllegalStateException("planted"))).isEmpty();
        assertThat(answered("too large", new OutOfMemoryError("planted"))).isEmpty();
    }

    private static Optional<BufferedImage> answered(String hash, Throwable trouble) throws Exception {
        var answer = new CompletableFuture<Optional<BufferedImage>>();
        SwingUtilities.invokeAndWait(() -> PictureShelf.scaled(failing(trouble), hash, 8, 8, answer::complete));
        return answer.get(30, TimeUnit.SECONDS);
    }
}
