package plumbrow.app.command;

import java.nio.file.Path;
import java.util.concurrent.CountDownLatch;
import org.springframework.boot.web.server.PortInUseException;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.context.event.ContextClosedEvent;
import plumbrow.app.json.Json;

/** The desk while it is open. */
final class Serving {
    static final int PORT = 8040;

    private Serving() {}

    private record Open(String desk, String book) {}

    static int untilStopped(Screen screen, DeskDoor door, Path book, int port, boolean json) {
        demandPort(port);
        CountDownLatch closed = new CountDownLatch(1);
        try (ConfigurableApplicationContext desk = open(door, book, port)) {
            desk.addApplicationListener(event -> {
                if (event instanceof ContextClosedEvent) {
                    closed.countDown();
                }
            });
            String address = "http://127.0.0.1:" + desk.getEnvironment().getProperty("local.server.port", "" + port);
            screen.say(
                    json
                            ? Json.of(new Open(address, book.toString()))
                            : "The desk is open: " + address + "\nCtrl-C closes it.");
            screen.out().flush();
            if (Warming.asked()) {
                Warming.pages(address);
                return Exit.GOOD;
            }
            if (desk.isActive()) {
                closed.await();
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
        return Exit.GOOD;
    }

    static void demandPort(int port) {
        if (port < 0 || port > 65_535) {
            throw new BadInputException("The port is " + port + "; expected 0 to 65535.");
        }
    }

    private static ConfigurableApplicationContext open(DeskDoor door, Path book, int port) {
        try {
            return door.open(book, port);
        } catch (RuntimeException fault) {
            for (Throwable cause = fault; cause != null; cause = cause.getCause()) {
                if (cause instanceof PortInUseException) {
                    throw new BadInputException("Port " + port
                            + " is taken by another program; choose another with --port, or 0 for a free one.");
                }
            }
            throw fault;
        }
    }
}
