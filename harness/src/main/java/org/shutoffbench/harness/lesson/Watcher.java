package org.shutoffbench.harness.lesson;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import tools.jackson.databind.json.JsonMapper;

/** One open page: messages wait in a bounded queue until its event stream takes them. */
final class Watcher {

    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final int MOST_WAITING = 512;
    private static final byte[] PING = ": still here\n\n".getBytes(StandardCharsets.UTF_8);

    private final BlockingQueue<String> waiting = new ArrayBlockingQueue<>(MOST_WAITING);
    private final AtomicBoolean open = new AtomicBoolean(true);

    /** Queues a message; a page that takes none is let go. */
    void say(Message message) {
        String event = message.getClass().getSimpleName();
        if (!waiting.offer("event: " + event + "\ndata: " + JSON.writeValueAsString(message) + "\n\n")) {
            close();
        }
    }

    boolean isOpen() {
        return open.get();
    }

    void close() {
        open.set(false);
    }

    /** Writes messages as they come, and a sign of life in between, until the page is gone or let go. */
    void pump(OutputStream out, long signOfLifeMillis) throws IOException, InterruptedException {
        while (isOpen()) {
            String next = waiting.poll(signOfLifeMillis, TimeUnit.MILLISECONDS);
            out.write(next == null ? PING : next.getBytes(StandardCharsets.UTF_8));
            out.flush();
        }
    }
}
