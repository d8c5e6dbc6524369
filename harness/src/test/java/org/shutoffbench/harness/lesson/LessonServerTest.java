package org.shutoffbench.harness.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.NetworkInterface;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.BooleanSupplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What the server lets in, over raw sockets on loopback. */
class LessonServerTest {

    private static final String PAGE = "0123456789abcdef";
    private static final String START = "{\"action\":\"START\",\"knobs\":{\"prevailingNm\":10,\"stiffnessKnPerMm\":300,"
            + "\"friction\":0.13,\"battery\":1},\"count\":0,\"blows\":0,\"family\":0}";
    private static final String PLAY = "{\"action\":\"PLAY\",\"knobs\":null,\"count\":0,\"blows\":0,\"family\":0}";

    private LessonServer server;
    private int port;
    private String token;

    @BeforeEach
    void start() throws IOException {
        server = LessonServer.start();
        port = server.address().getPort();
        Matcher found = Pattern.compile("\"token\":\"([0-9a-f]{32})\"").matcher(get("/", "127.0.0.1:" + port));
        assertThat(found.find()).isTrue();
        token = found.group(1);
    }

    @AfterEach
    void stop() {
        server.close();
    }

    private String get(String path, String host) throws IOException {
        return exchange("GET " + path + " HTTP/1.1\r\nHost: " + host + "\r\nConnection: close\r\n\r\n");
    }

    private String ask(String body, String... headers) throws IOException {
        String extra = headers.length == 0 ? "" : String.join("\r\n", headers) + "\r\n";
        return exchange("POST /ask?page=" + PAGE + "&token=" + token + " HTTP/1.1\r\nHost: 127.0.0.1:" + port + "\r\n"
                + extra + "Content-Type: application/json\r\nContent-Length: "
                + body.getBytes(StandardCharsets.UTF_8).length + "\r\nConnection: close\r\n\r\n" + body);
    }

    private String exchange(String request) throws IOException {
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
            socket.setSoTimeout(5000);
            socket.getOutputStream().write(request.getBytes(StandardCharsets.UTF_8));
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private Socket openPage(String page) throws IOException {
        Socket socket = new Socket(InetAddress.getLoopbackAddress(), port);
        socket.setSoTimeout(5000);
        socket.getOutputStream()
                .write(("GET /events?page=" + page + "&token=" + token + " HTTP/1.1\r\nHost: 127.0.0.1:" + port
                                + "\r\n\r\n")
                        .getBytes(StandardCharsets.UTF_8));
        int before = server.pages();
        until(() -> server.pages() > before || server.pages() > 0);
        return socket;
    }

    private static void until(BooleanSupplier condition) {
        Instant late = Instant.now().plus(Duration.ofSeconds(8));
        while (!condition.getAsBoolean()) {
            assertThat(Instant.now()).as("still waiting").isBefore(late);
            Thread.onSpinWait();
        }
    }

    @Test
    void listensOnLoopbackOnly() throws Exception {
        assertThat(InetAddress.getByName(server.address().getHost()).isLoopbackAddress())
                .isTrue();
        for (NetworkInterface card : Collections.list(NetworkInterface.getNetworkInterfaces())) {
            for (InetAddress address : Collections.list(card.getInetAddresses())) {
                if (!address.isLoopbackAddress()) {
                    try (Socket socket = new Socket()) {
                        assertThat(connects(socket, address))
                                .as(address.toString())
                                .isFalse();
                    }
                }
            }
        }
    }

    private boolean connects(Socket socket, InetAddress address) {
        try {
            socket.connect(new InetSocketAddress(address, port), 500);
            return true;
        } catch (IOException refused) {
            return false;
        }
    }

    @Test
    void answersUnderThisMachinesNamesOnly() throws IOException {
        assertThat(get("/", "localhost:" + port)).startsWith("HTTP/1.1 200");
        assertThat(get("/", "bench.example:" + port)).startsWith("HTTP/1.1 421");
        assertThat(get("/", "127.0.0.1")).startsWith("HTTP/1.1 421");
        assertThat(exchange("GET / HTTP/1.1\r\nConnection: close\r\n\r\n")).doesNotContain(token);
    }

    @Test
    void turnsAwayPostsOfOtherPages() throws IOException {
        try (Socket open = openPage(PAGE)) {
            assertThat(open.isConnected()).isTrue();
            assertThat(ask(PLAY, "Origin: http://bench.example")).startsWith("HTTP/1.1 403");
            assertThat(ask(PLAY, "Origin: null")).startsWith("HTTP/1.1 403");
            assertThat(ask(PLAY, "Origin: http://127.0.0.1:" + port)).startsWith("HTTP/1.1 204");
        }
        token = "0".repeat(32);
        assertThat(ask(PLAY)).startsWith("HTTP/1.1 403");
    }

    @Test
    void touchesNoFile() throws IOException {
        for (String path : List.of(
                "/../pom.xml",
                "/%2e%2e/pom.xml",
                "/etc/passwd",
                "//etc/passwd",
                "/lesson.js",
                "/?file=/etc/passwd/..")) {
            assertThat(get(path, "127.0.0.1:" + port)).doesNotContain("root:").doesNotContain("<project");
        }
        assertThat(get("/lesson.yaml", "127.0.0.1:" + port)).startsWith("HTTP/1.1 404");
    }

    @Test
    void boundsSizeAndWork() throws IOException {
        try (Socket open = openPage(PAGE)) {
            assertThat(open.isConnected()).isTrue();
            assertThat(ask(" ".repeat(5000))).startsWith("HTTP/1.1 413");
            assertThat(ask(START.replace("\"blows\":0", "\"blows\":100000"))).startsWith("HTTP/1.1 400");
            assertThat(ask(START.replace("\"count\":0", "\"count\":-1"))).startsWith("HTTP/1.1 400");
            assertThat(ask(START.replace(":10,", ":1e300,"))).startsWith("HTTP/1.1 400");
            assertThat(ask(START.replace(":10,", ":\"NaN\","))).startsWith("HTTP/1.1 400");
            assertThat(ask(START)).startsWith("HTTP/1.1 204");
        }
    }

    @Test
    void letsInSoManyPagesAndNoMore() throws IOException {
        List<Socket> open = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            open.add(openPage(String.format("%016x", i)));
        }
        until(() -> server.pages() == 40);
        assertThat(get("/events?page=" + PAGE + "&token=" + token, "127.0.0.1:" + port))
                .startsWith("HTTP/1.1 503");
        assertThat(get("/", "127.0.0.1:" + port)).startsWith("HTTP/1.1 200");
        for (Socket socket : open) {
            socket.close();
        }
        until(() -> server.pages() == 0);
    }

    @Test
    void streamsBlowsAndStopsWhenThePageIsGone() throws IOException {
        try (Socket open = openPage(PAGE)) {
            assertThat(ask(START)).startsWith("HTTP/1.1 204");
            assertThat(ask(PLAY)).startsWith("HTTP/1.1 204");
            BufferedReader lines =
                    new BufferedReader(new InputStreamReader(open.getInputStream(), StandardCharsets.UTF_8));
            String line = lines.readLine();
            while (!line.startsWith("event: Frame") || line.equals("event: Frames")) {
                line = lines.readLine();
            }
            BlowFrame first = new LiveTightening(Knobs.LOCK_NUT, 0).strike();
            assertThat(lines.readLine()).contains("\"pastSnugDeg\":" + first.pastSnugDeg());
            assertThat(server.busyPages()).isEqualTo(1);
        }
        until(() -> server.pages() == 0 && server.busyPages() == 0);
    }

    /** Ten thousand requests that are no requests: none may end the server, stop it answering or reach a session. */
    @Test
    void survivesMalformedRequests() throws IOException {
        Random random = new Random(20250);
        String sound = "POST /ask?page=" + PAGE + "&token=" + token + " HTTP/1.1\r\nHost: 127.0.0.1:" + port
                + "\r\nContent-Type: application/json\r\nContent-Length: " + START.length() + "\r\n\r\n" + START;
        for (int i = 0; i < 10_000; i++) {
            byte[] request = sound.getBytes(StandardCharsets.ISO_8859_1);
            int changes = 1 + random.nextInt(12);
            for (int k = 0; k < changes; k++) {
                request[random.nextInt(request.length)] = (byte) random.nextInt(256);
            }
            int length = random.nextInt(4) == 0 ? random.nextInt(request.length) : request.length;
            try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
                socket.getOutputStream().write(request, 0, length);
                socket.shutdownOutput();
                if (i % 50 == 0) {
                    socket.setSoTimeout(50);
                    drain(socket.getInputStream());
                }
            } catch (IOException dropped) {
                assertThat(dropped).isInstanceOf(IOException.class);
            }
        }
        until(() -> {
            try {
                return get("/", "127.0.0.1:" + port).startsWith("HTTP/1.1 200");
            } catch (IOException notYet) {
                return false;
            }
        });
        assertThat(server.pages()).isZero();
    }

    private static void drain(InputStream in) throws IOException {
        while (in.read() >= 0) {
            // whatever it says
        }
    }
}
