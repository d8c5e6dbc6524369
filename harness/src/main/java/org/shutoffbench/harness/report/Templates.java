package org.shutoffbench.harness.report;

import com.samskivert.mustache.Mustache;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import tools.jackson.databind.json.JsonMapper;

/** Resources of the pages: templates, style sheets, scripts and the chart library. Whatever a template fills in is escaped. */
public final class Templates {

    private static final JsonMapper JSON = JsonMapper.builder().build();

    private final Class<?> room;
    private final Mustache.Compiler compiler;

    /** The resources beside a class. */
    public Templates(Class<?> room) {
        this.room = room;
        this.compiler = Mustache.compiler().escapeHTML(true).withLoader(name -> reader(room, name + ".html"));
    }

    /** Fills a template, named without its ending, from the accessors of a record or the entries of a map. */
    public String fill(String template, Object context) {
        try (Reader reader = reader(room, template + ".html")) {
            return compiler.compile(reader).execute(context);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The text of a resource. */
    public String text(String name) {
        try (InputStream in = open(room, name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The chart library as it comes in its artifact, safe to stand inside a script element. */
    public static String chartLibrary() {
        try (InputStream in = Templates.class
                .getClassLoader()
                .getResourceAsStream(
                        "META-INF/resources/_static/echarts/" + CHARTS_VERSION + "/dist/echarts.common.min.js")) {
            if (in == null) {
                throw new IllegalStateException("the chart library is not on the class path");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).replace("</script", "<\\/script");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** JSON that may stand inside a script element: no character of it can end the element. */
    public static String json(Object value) {
        return JSON.writeValueAsString(value)
                .replace("<", "\\u003c")
                .replace("\u2028", "\\u2028")
                .replace("\u2029", "\\u2029");
    }

    private static final String CHARTS_VERSION = "6.0.0";

    private static Reader reader(Class<?> room, String name) {
        return new InputStreamReader(open(room, name), StandardCharsets.UTF_8);
    }

    private static InputStream open(Class<?> room, String name) {
        InputStream in = room.getResourceAsStream(name);
        if (in == null) {
            throw new IllegalStateException("no resource " + name + " beside " + room.getName());
        }
        return in;
    }
}
