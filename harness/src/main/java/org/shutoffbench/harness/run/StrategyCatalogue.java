package org.shutoffbench.harness.run;

import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.net.MalformedURLException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import org.shutoffbench.controller.StrategyDescriptor;
import org.shutoffbench.controller.StrategyFactory;
import org.shutoffbench.controller.conformance.Thrown;
import org.shutoffbench.controller.strategy.Strategies;
import org.shutoffbench.harness.scenario.StrategyDirectory;
import org.shutoffbench.harness.scenario.StrategyEntry;

/** Finds strategies: ours by name, anybody's by class and jar. */
public final class StrategyCatalogue implements StrategyDirectory {

    private static final int MOST_NAMES = 12;

    private final Map<String, StrategyFactory> external = new ConcurrentHashMap<>();

    @Override
    public Set<String> names() {
        return Strategies.byName().keySet();
    }

    @Override
    public StrategyDescriptor descriptor(String name) {
        return ours(name).descriptor();
    }

    @Override
    public StrategyDescriptor external(String className, Path jar) {
        StrategyFactory factory = externalFactory(className, jar);
        StrategyDescriptor descriptor;
        try {
            descriptor = factory.descriptor();
        } catch (RuntimeException | AssertionError | LinkageError | StackOverflowError broken) {
            throw new IllegalArgumentException(className + ": descriptor() threw " + Thrown.inWords(broken), broken);
        }
        if (descriptor == null) {
            throw new IllegalArgumentException(className + ": descriptor() returned nothing");
        }
        return descriptor;
    }

    /** The factory of a scenario's strategy. */
    public StrategyFactory factory(StrategyEntry entry) {
        StrategyEntry.External from = entry.external();
        return from == null ? ours(entry.name()) : externalFactory(from.className(), from.file());
    }

    private static StrategyFactory ours(String name) {
        StrategyFactory factory = Strategies.byName().get(name);
        if (factory == null) {
            throw new IllegalArgumentException("no strategy is called \"" + name + "\"");
        }
        return factory;
    }

    /**
     * Loads a strategy from a jar. Its code runs with all rights of this program: use jars you trust.
     *
     * @throws IllegalArgumentException with a message for people, where it cannot be had
     */
    public StrategyFactory externalFactory(String className, Path jar) {
        Path file = jar.toAbsolutePath().normalize();
        return external.computeIfAbsent(file + "!" + className, key -> load(className, file));
    }

    private static StrategyFactory load(String className, Path jar) {
        if (!Files.isReadable(jar)) {
            throw new IllegalArgumentException("the jar " + jar + " cannot be read");
        }
        try {
            URL[] path = {jar.toUri().toURL()};
            // stays open: classes are loaded from it for as long as the strategy is used
            @SuppressWarnings("resource")
            ClassLoader loader = new URLClassLoader(path, StrategyFactory.class.getClassLoader());
            Class<?> type = Class.forName(className, true, loader);
            if (!StrategyFactory.class.isAssignableFrom(type)) {
                throw new IllegalArgumentException(className + " is no factory; name the class that implements "
                        + StrategyFactory.class.getName());
            }
            return (StrategyFactory) type.getDeclaredConstructor().newInstance();
        } catch (ClassNotFoundException missing) {
            throw new IllegalArgumentException(
                    "the jar " + jar + " has no class " + className + "; its classes are " + classes(jar), missing);
        } catch (NoSuchMethodException | IllegalAccessException | InstantiationException hidden) {
            throw new IllegalArgumentException(
                    className + " must be public, not abstract, and have a public constructor without parameters",
                    hidden);
        } catch (InvocationTargetException thrown) {
            throw new IllegalArgumentException(
                    "the constructor of " + className + " threw " + Thrown.inWords(cause(thrown)), thrown);
        } catch (UnsupportedClassVersionError newer) {
            throw new IllegalArgumentException(
                    className + " is compiled for a newer Java than the "
                            + Runtime.version().feature() + " that runs here; compile it with --release "
                            + Runtime.version().feature(),
                    newer);
        } catch (ExceptionInInitializerError thrown) {
            throw new IllegalArgumentException(
                    "a static field of " + className + " threw " + Thrown.inWords(cause(thrown)), thrown);
        } catch (LinkageError broken) {
            throw new IllegalArgumentException(className + " cannot be loaded: " + broken, broken);
        } catch (MalformedURLException odd) {
            throw new IllegalArgumentException("the jar " + jar + " cannot be read", odd);
        }
    }

    private static Throwable cause(Throwable wrapper) {
        Throwable cause = wrapper.getCause();
        return cause == null ? wrapper : cause;
    }

    /** Names of the first classes of a jar, those inside others left out. */
    private static String classes(Path jar) {
        try (JarFile file = new JarFile(jar.toFile())) {
            List<String> names = file.stream()
                    .map(JarEntry::getName)
                    .filter(name -> name.endsWith(".class") && name.indexOf('$') < 0)
                    .map(name ->
                            name.substring(0, name.length() - ".class".length()).replace('/', '.'))
                    .sorted()
                    .limit(MOST_NAMES)
                    .toList();
            return names.isEmpty() ? "none" : String.join(", ", names);
        } catch (IOException noJar) {
            return "unknown, as the file is no jar";
        }
    }
}
