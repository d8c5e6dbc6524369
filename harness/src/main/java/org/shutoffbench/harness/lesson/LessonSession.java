package org.shutoffbench.harness.lesson;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;

/**
 * What one page does at the bench. Every request is small (at most sixty blows, or a race that ends when the page goes), and
 * there is one race and one clock per page.
 */
final class LessonSession {

    private static final long BLOW_EVERY_MILLIS = 550;

    private final LessonBench bench;
    private final ScheduledExecutorService clock;
    private final ExecutorService work;
    private final Watcher watcher = new Watcher();

    private Knobs knobs = Knobs.BENCH_JOINT;
    private LiveTightening tightening = new LiveTightening(knobs, 0);
    private int count;
    private @Nullable Future<?> playing;
    private @Nullable Future<?> racing;

    LessonSession(LessonBench bench, ScheduledExecutorService clock, ExecutorService work) {
        this.bench = bench;
        this.clock = clock;
        this.work = work;
    }

    Watcher watcher() {
        return watcher;
    }

    /**
     * Does what the page asks.
     *
     * @throws IllegalArgumentException where it asks for what the bench does not do
     */
    synchronized void handle(Request request) {
        switch (request.action()) {
            case START -> {
                pause();
                knobs = required(request.knobs());
                count = request.count();
                tightening = new LiveTightening(knobs, count).strikeTo(blows(request));
                sayAll();
            }
            case TURN -> {
                knobs = required(request.knobs());
                tightening = new LiveTightening(knobs, count).strikeTo(tightening.blows());
                sayAll();
            }
            case BLOW -> {
                pause();
                strike();
            }
            case PLAY -> play();
            case PAUSE -> pause();
            case REPEAT -> {
                int blows = counted(request);
                work.execute(() -> watcher.say(new Message.Repeats(blows, bench.repeat(blows))));
            }
            case RACE -> race(request);
        }
    }

    private static Knobs required(@Nullable Knobs knobs) {
        if (knobs == null) {
            throw new IllegalArgumentException("knobs are missing");
        }
        return knobs;
    }

    private static int blows(Request request) {
        if (request.blows() < 0 || request.blows() > LiveTightening.MOST_BLOWS) {
            throw new IllegalArgumentException("blows must lie between 0 and " + LiveTightening.MOST_BLOWS);
        }
        return request.blows();
    }

    private static int counted(Request request) {
        if (request.count() < 1 || request.count() > LiveTightening.MOST_BLOWS) {
            throw new IllegalArgumentException("the count must lie between 1 and " + LiveTightening.MOST_BLOWS);
        }
        return request.count();
    }

    private void sayAll() {
        watcher.say(Message.Joint.of(knobs, count));
        watcher.say(new Message.Frames(tightening.frames(), tightening.done(), tightening.stopped()));
    }

    private void strike() {
        if (!tightening.stopped()) {
            BlowFrame frame = tightening.strike();
            watcher.say(new Message.Frame(frame, tightening.done(), tightening.stopped()));
        }
    }

    private void play() {
        if (playing == null && !tightening.stopped()) {
            playing = clock.scheduleAtFixedRate(this::tick, 0, BLOW_EVERY_MILLIS, TimeUnit.MILLISECONDS);
            watcher.say(new Message.Playing(true));
        }
    }

    private synchronized void tick() {
        if (!watcher.isOpen()) {
            close();
        } else if (playing != null) {
            strike();
            if (tightening.stopped()) {
                pause();
            }
        }
    }

    private void pause() {
        if (playing != null) {
            playing.cancel(false);
            playing = null;
            watcher.say(new Message.Playing(false));
        }
    }

    private void race(Request request) {
        if (request.family() < 0 || request.family() >= bench.families().size()) {
            throw new IllegalArgumentException("no such family");
        }
        if (racing != null && !racing.isDone()) {
            throw new IllegalArgumentException("a race is under way");
        }
        int blows = counted(request);
        racing = work.submit(() -> bench.race(
                request.family(), blows, watcher::isOpen, progress -> watcher.say(new Message.Race(progress))));
    }

    /** Whether anything is simulated for this page right now. */
    synchronized boolean busy() {
        return playing != null || (racing != null && !racing.isDone());
    }

    /** The page is gone: everything stops. */
    synchronized void close() {
        watcher.close();
        if (playing != null) {
            playing.cancel(false);
            playing = null;
        }
    }
}
