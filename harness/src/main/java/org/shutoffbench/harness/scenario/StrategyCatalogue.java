package org.shutoffbench.harness.scenario;

import java.net.MalformedURLException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.shutoffbench.controller.StrategyDescriptor;
import org.shutoffbench.controller.StrategyFactory;
import org.shutoffbench.controller.strategy.Strategies;

/** The project's own strategies by name, and others by class and jar. */
public final class StrategyCatalogue implements StrategyDirectory {

    private final Map<String, StrategyFactory> own = Strategies.byName();
    private final Map<String, StrategyFactory> loaded = new ConcurrentHashMap<>();

    @Override
    public Set<String> names() {
        return own.keySet();
    }

    @Override
    public StrategyDescriptor descriptor(String name) {
        return named(name).descriptor();
    }

    @Override
    public StrategyDescriptor external(String className, Path jar) {
        return load(className, jar).descriptor();
    }

    /** The factory of an entry of a scenario. */
    public StrategyFactory factory(StrategyEntry entry) {
        StrategyEntry.External external = entry.external();
        return external == null ? named(entry.name()) : load(external.className(), external.file());
    }

    private StrategyFactory named(String name) {
        StrategyFactory factory = own.get(name);
        if (factory == null) {
            throw new IllegalArgumentException("no strategy is called \"" + name + "\"");
        }
        return factory;
    }

    /**
     * The factory of a class in a jar; the jar stays open as long as this process runs.
     *
     * @throws IllegalArgumentException with a message for people, where it cannot be had
     */
    public StrategyFactory load(String className, Path jar) {
        return loaded.computeIfAbsent(
                className + "\n" + jar.toAbsolutePath().normalize(), key -> loadNew(className, jar));
    }

    private static StrategyFactory loadNew(String className, Path jar) {
        if (!Files.isRegularFile(jar)) {
            throw new IllegalArgumentException("there is no jar " + jar);
        }
        try {
            URL[] place = {jar.toUri().toURL()};
            @SuppressWarnings("resource") // open as long as its classes may load others
            URLClassLoader loader = new URLClassLoader(place, StrategyFactory.class.getClassLoader());
            Class<?> type = Class.forName(className, true, loader);
            if (type.getDeclaredConstructor().newInstance() instanceof StrategyFactory factory) {
                return factory;
            }
            throw new IllegalArgumentException(className + " is no StrategyFactory");
        } catch (MalformedURLException e) {
            throw new IllegalArgumentException(jar + " is not a path of a jar", e);
        } catch (ClassNotFoundException e) {
            throw new IllegalArgumentException("the jar has no class " + className, e);
        } catch (ReflectiveOperationException | LinkageError e) {
            throw new IllegalArgumentException(
                    className + " cannot be made: it needs a public constructor without arguments (" + e + ")", e);
        }
    }
}
