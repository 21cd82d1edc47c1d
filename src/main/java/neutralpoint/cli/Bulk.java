package neutralpoint.cli;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import neutralpoint.document.BadInput;
import neutralpoint.job.Job;
import neutralpoint.report.Tally;
import neutralpoint.rulebase.Assessment;

/**
 * Judges many jobs on all processors, in bounded memory and in their order: only a few are read ahead of the one that is
 * written next, and each is written as soon as all before it are.
 */
final class Bulk {
    private static final int AHEAD_EACH = 16;

    private final Function<Assessment, String> shown;
    private final Function<Job, Assessment> judge;
    private final boolean strict;
    private final Progress progress;
    private final Tally tally = new Tally();
    private int code;
    private volatile boolean stopped;

    /**
     * @param shown    what is written of each job
     * @param strict   true to stop at the first that cannot be used
     */
    Bulk(Function<Job, Assessment> judge, Function<Assessment, String> shown, boolean strict, Progress progress) {
        this.judge = judge;
        this.shown = shown;
        this.strict = strict;
        this.progress = progress;
    }

    /** One job still to be read; reading it may refuse it. */
    record Item(int line, Supplier<Job> job) {}

    /** What came of one job: what is written and counted, or why it cannot be used. */
    private record Result(int line, String text, Optional<Tally.TalliedHome> counted, Optional<BadInput> refused) {}

    /**
     * Judges until there are no more jobs.
     *
     * @param next the next job; empty at the end. Called from one thread
     * @return 0 judged, 1 with a stop, 2 when some could not be used
     */
    int run(Supplier<Optional<Item>> next) {
        int processors = Runtime.getRuntime().availableProcessors();
        ExecutorService judges = Executors.newFixedThreadPool(processors);
        BlockingQueue<Future<Optional<Result>>> ahead = new ArrayBlockingQueue<>(AHEAD_EACH * processors);
        ExecutorService writer = Executors.newSingleThreadExecutor();
        Future<?> writing = writer.submit(() -> write(ahead));
        try {
            read(next, item -> put(ahead, judges.submit(() -> Optional.of(judged(item))), writing), writing);
        } finally {
            put(ahead, CompletableFuture.completedFuture(Optional.empty()), writing);
            await(writing);
            judges.shutdownNow();
            writer.shutdownNow();
            progress.close();
        }
        return code;
    }

    private void read(Supplier<Optional<Item>> next, Consumer<Item> taken, Future<?> writing) {
        for (Optional<Item> item = next.get(); item.isPresent() && !stopped && !writing.isDone(); item = next.get()) {
            taken.accept(item.get());
        }
    }

    private static <T> T await(Future<T> future) {
        try {
            return future.get();
        } catch (InterruptedException e) {
            throw new IllegalStateException("interrupted while judging", e);
        } catch (ExecutionException e) {
            throw e.getCause() instanceof RuntimeException cause ? cause : new IllegalStateException(e.getCause());
        }
    }

    Tally tally() {
        return tally;
    }

    private Result judged(Item item) {
        try {
            Assessment assessment = judge.apply(item.job().get());
            return new Result(item.line(), shown.apply(assessment), Optional.of(Tally.TalliedHome.of(assessment)), Optional.empty());
        } catch (BadInput refused) {
            return new Result(item.line(), "", Optional.empty(), Optional.of(refused));
        }
    }

    /** Waits for room, but not for a writer that has given up. */
    private static <T> void put(BlockingQueue<T> queue, T item, Future<?> writing) {
        try {
            while (!queue.offer(item, 100, TimeUnit.MILLISECONDS)) {
                if (writing.isDone()) {
                    return;
                }
            }
        } catch (InterruptedException e) {
            throw new IllegalStateException("interrupted while judging", e);
        }
    }

    private void write(BlockingQueue<Future<Optional<Result>>> ahead) {
        try {
            Writer out = new BufferedWriter(new OutputStreamWriter(System.out, StandardCharsets.UTF_8), 1 << 16);
            for (Optional<Result> result = await(ahead.take()); result.isPresent() && !stopped; result = await(ahead.take())) {
                write(result.get(), out);
                if (ahead.isEmpty()) {
                    out.flush();
                }
                // Nobody reads on, as when the output is piped into something that has seen enough.
                stopped |= System.out.checkError();
            }
            out.flush();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            throw new IllegalStateException("interrupted while judging", e);
        }
    }

    private void write(Result result, Writer out) throws IOException {
        out.write(result.text());
        result.counted().ifPresent(line -> {
            tally.add(line);
            code = Math.max(code, line.dangers().isEmpty() ? 0 : 1);
        });
        if (result.refused().isPresent()) {
            out.flush();
            progress.aside(naming(result.refused().get().getMessage(), result.line()));
            tally.refuse();
            code = 2;
            stopped = strict;
        }
        progress.step(result.line());
    }

    /** The message with its line, where it does not say it itself. */
    private static String naming(String message, int line) {
        return message.contains("line " + line) ? message : "line " + line + ": " + message;
    }
}
