package neutralpoint.cli;

import me.tongfei.progressbar.ConsoleProgressBarConsumer;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarStyle;

/** How far a long run is, on a terminal; elsewhere nothing is shown of it. */
interface Progress extends AutoCloseable {
    int WIDTH = 78;

    /** A job more is done.
     *
     * @param line the line it stands on
     */
    void step(int line);

    /** Says something on standard error without tearing what is shown there. */
    void aside(String message);

    @Override
    void close();

    /**
     * @param shown true when standard error is a terminal
     */
    static Progress of(boolean shown) {
        return shown ? new Bar() : new Silent();
    }

    /** Says only what is said aside. */
    final class Silent implements Progress {
        @Override
        public void step(int line) {}

        @Override
        public void aside(String message) {
            System.err.println(message);
        }

        @Override
        public void close() {}
    }

    /** Counts on the lowest line of the terminal. */
    final class Bar implements Progress {
        private final ProgressBar bar = new ProgressBarBuilder().setTaskName("Judging").setInitialMax(-1).showSpeed().setUnit(" homes", 1)
                .setStyle(ProgressBarStyle.ASCII).setUpdateIntervalMillis(250)
                .setConsumer(new ConsoleProgressBarConsumer(System.err, WIDTH)).clearDisplayOnFinish().build();

        @Override
        public void step(int line) {
            bar.step();
            bar.setExtraMessage("line " + line);
        }

        @Override
        public void aside(String message) {
            System.err.println("\r" + message + " ".repeat(Math.max(0, WIDTH - message.length())));
        }

        @Override
        public void close() {
            bar.close();
        }
    }
}
