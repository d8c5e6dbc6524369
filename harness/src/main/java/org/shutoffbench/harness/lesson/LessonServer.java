package org.shutoffbench.harness.lesson;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.SynchronousQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.json.JsonMapper;

/**
 * Serves the lesson on this machine alone: the page, one event stream per open page, and what the page asks for. Touches no
 * file. Every request is bounded in size and work, every page in number.
 */
public final class LessonServer implements AutoCloseable {

    private static final int MOST_PAGES = 40;
    private static final int MOST_THREADS = MOST_PAGES + 24;
    private static final int MOST_BODY_BYTES = 2048;
    private static final int MOST_JOBS_WAITING = 64;
    private static final int WORKERS = 2;
    private static final long SIGN_OF_LIFE_MILLIS = 400;
    private static final int TOKEN_BYTES = 16;

    private static final JsonMapper JSON = JsonMapper.builder()
            .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
            .disable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
            .build();

    static {
        // A client that never finishes its request is dropped; read by the JDK's server when it is first used.
        System.setProperty("sun.net.httpserver.maxReqTime", "10");
        System.setProperty("sun.net.httpserver.nodelay", "true");
    }

    private final HttpServer server;
    private final Gate gate;
    private final LessonBench bench;
    private final byte[] page;
    private final Map<String, LessonSession> sessions = new ConcurrentHashMap<>();
    private final ThreadPoolExecutor threads = new ThreadPoolExecutor(
            4, MOST_THREADS, 10, TimeUnit.SECONDS, new SynchronousQueue<>(), LessonServer::daemon);
    private final ScheduledExecutorService clock = Executors.newScheduledThreadPool(1, LessonServer::daemon);
    private final ExecutorService work = new ThreadPoolExecutor(
            WORKERS, WORKERS, 0, TimeUnit.SECONDS, new LinkedBlockingQueue<>(MOST_JOBS_WAITING), LessonServer::daemon);

    private LessonServer(HttpServer server, LessonBench bench, String token) {
        this.server = server;
        this.bench = bench;
        this.gate = new Gate(server.getAddress().getPort(), token);
        this.page = LessonPage.live(bench, token).getBytes(StandardCharsets.UTF_8);
    }

    private static Thread daemon(Runnable task) {
        Thread thread = new Thread(task, "lesson");
        thread.setDaemon(true);
        return thread;
    }

    /**
     * Starts on a free port.
     *
     * @throws IOException if this machine gives no port
     */
    public static LessonServer start() throws IOException {
        HttpServer http = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 32);
        byte[] token = new byte[TOKEN_BYTES];
        new SecureRandom().nextBytes(token);
        LessonServer lesson =
                new LessonServer(http, LessonBench.ofTheLesson(), HexFormat.of().formatHex(token));
        http.setExecutor(lesson.threads);
        http.createContext("/", lesson::handle);
        http.start();
        return lesson;
    }

    /** Where the page is. */
    public URI address() {
        return URI.create("http://127.0.0.1:" + server.getAddress().getPort() + "/");
    }

    /** Pages that are open. */
    int pages() {
        return sessions.size();
    }

    /** Pages for which something is being simulated. */
    long busyPages() {
        return sessions.values().stream().filter(LessonSession::busy).count();
    }

    private void handle(HttpExchange exchange) throws IOException {
        try (exchange) {
            String path = exchange.getRequestURI().getPath();
            if (!gate.hostIsOurs(exchange)) {
                refuse(exchange, 421, "this bench answers only on this machine");
            } else if (!gate.originIsOurs(exchange.getRequestHeaders())) {
                refuse(exchange, 403, "asked by another page");
            } else if ("/".equals(path) && "GET".equals(exchange.getRequestMethod())) {
                sendPage(exchange);
            } else if ("/events".equals(path) && "GET".equals(exchange.getRequestMethod())) {
                stream(exchange);
            } else if ("/ask".equals(path) && "POST".equals(exchange.getRequestMethod())) {
                ask(exchange);
            } else {
                refuse(exchange, 404, "nothing here");
            }
        }
    }

    private void sendPage(HttpExchange exchange) throws IOException {
        exchange.getResponseHeaders().set("Content-Type", "text/html; charset=utf-8");
        protect(exchange);
        exchange.sendResponseHeaders(200, page.length);
        exchange.getResponseBody().write(page);
    }

    private static void protect(HttpExchange exchange) {
        exchange.getResponseHeaders().set("Cache-Control", "no-store");
        exchange.getResponseHeaders().set("X-Content-Type-Options", "nosniff");
        exchange.getResponseHeaders().set("Referrer-Policy", "no-referrer");
        exchange.getResponseHeaders().set("Cross-Origin-Resource-Policy", "same-origin");
        exchange.getResponseHeaders().set("X-Frame-Options", "DENY");
    }

    /** The event stream of one page; the page is gone when it can no longer be written to. */
    private void stream(HttpExchange exchange) throws IOException {
        Names names = Names.of(exchange.getRequestURI().getRawQuery());
        if (!gate.tokenIsOurs(names.token()) || !names.pageIsSound()) {
            refuse(exchange, 403, "open the page again");
            return;
        }
        LessonSession session = new LessonSession(bench, clock, work);
        if (sessions.size() >= MOST_PAGES || sessions.putIfAbsent(names.page(), session) != null) {
            refuse(exchange, 503, "too many pages are open");
            return;
        }
        try {
            exchange.getResponseHeaders().set("Content-Type", "text/event-stream; charset=utf-8");
            protect(exchange);
            exchange.sendResponseHeaders(200, 0);
            exchange.getResponseBody().write(": hello\n\n".getBytes(StandardCharsets.UTF_8));
            exchange.getResponseBody().flush();
            session.watcher().pump(exchange.getResponseBody(), SIGN_OF_LIFE_MILLIS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } finally {
            sessions.remove(names.page(), session);
            session.close();
        }
    }

    private void ask(HttpExchange exchange) throws IOException {
        Names names = Names.of(exchange.getRequestURI().getRawQuery());
        String type = exchange.getRequestHeaders().getFirst("Content-Type");
        if (!gate.tokenIsOurs(names.token()) || type == null || !type.startsWith("application/json")) {
            refuse(exchange, 403, "open the page again");
            return;
        }
        LessonSession session = sessions.get(names.page());
        if (session == null) {
            refuse(exchange, 409, "this page is not open");
            return;
        }
        byte[] body = exchange.getRequestBody().readNBytes(MOST_BODY_BYTES + 1);
        if (body.length > MOST_BODY_BYTES) {
            refuse(exchange, 413, "too long");
            return;
        }
        try {
            session.handle(JSON.readValue(body, Request.class));
            protect(exchange);
            exchange.sendResponseHeaders(204, -1);
        } catch (JacksonException | IllegalArgumentException | NullPointerException e) {
            refuse(exchange, 400, "not understood");
        } catch (RejectedExecutionException e) {
            refuse(exchange, 503, "busy");
        }
    }

    private static void refuse(HttpExchange exchange, int status, String why) throws IOException {
        byte[] text = (why + "\n").getBytes(StandardCharsets.UTF_8);
        exchange.getResponseHeaders().set("Content-Type", "text/plain; charset=utf-8");
        protect(exchange);
        exchange.sendResponseHeaders(status, text.length);
        exchange.getResponseBody().write(text);
    }

    /** Lets every page go and stops. */
    @Override
    public void close() {
        sessions.values().forEach(LessonSession::close);
        server.stop(0);
        clock.shutdownNow();
        work.shutdownNow();
        threads.shutdownNow();
    }
}
