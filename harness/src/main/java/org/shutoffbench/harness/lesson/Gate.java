package org.shutoffbench.harness.lesson;

import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Who may ask: a page that this server handed out, opened under this machine's own name. A foreign Host header (a name that
 * was pointed here), a foreign Origin and a missing token are turned away.
 */
final class Gate {

    private final Set<String> hosts;
    private final String token;

    Gate(int port, String token) {
        this.hosts = Set.of("127.0.0.1:" + port, "localhost:" + port, "[::1]:" + port);
        this.token = token;
    }

    /** Whether the Host header names this machine, once. */
    boolean hostIsOurs(HttpExchange exchange) {
        List<String> host = exchange.getRequestHeaders().get("Host");
        return host != null && host.size() == 1 && hosts.contains(host.get(0));
    }

    /** Whether an Origin header, where there is one, is this server. */
    boolean originIsOurs(Headers headers) {
        List<String> origin = headers.get("Origin");
        return origin == null
                || (origin.size() == 1 && hosts.stream().anyMatch(h -> ("http://" + h).equals(origin.get(0))));
    }

    /** Compares in constant time. */
    boolean tokenIsOurs(@Nullable String given) {
        return given != null
                && MessageDigest.isEqual(
                        given.getBytes(StandardCharsets.UTF_8), token.getBytes(StandardCharsets.UTF_8));
    }
}
