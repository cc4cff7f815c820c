package plumbrow.app.command;

import java.nio.file.Path;
import org.springframework.context.ConfigurableApplicationContext;
import plumbrow.app.serving.Desk;

/** The way into the desk; a door of its own, because no other command needs what stands behind it. */
@FunctionalInterface
interface DeskDoor {
    DeskDoor REAL = Desk::open;

    ConfigurableApplicationContext open(Path book, int port);
}
