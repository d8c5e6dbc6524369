package org.shutoffbench.harness.lesson;

import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * How a request names itself in its query: {@code page=...&token=...}.
 *
 * @param page chosen by the page when it opened
 * @param token of the server that handed the page out
 */
record Names(String page, @Nullable String token) {

    private static final Pattern PAGE = Pattern.compile("[0-9a-f]{16}");
    private static final int LONGEST = 200;

    static Names of(@Nullable String query) {
        String page = "";
        String token = null;
        if (query != null && query.length() <= LONGEST) {
            for (String part : query.split("&", -1)) {
                if (part.startsWith("page=")) {
                    page = part.substring("page=".length());
                } else if (part.startsWith("token=")) {
                    token = part.substring("token=".length());
                }
            }
        }
        return new Names(page, token);
    }

    boolean pageIsSound() {
        return PAGE.matcher(page).matches();
    }
}
