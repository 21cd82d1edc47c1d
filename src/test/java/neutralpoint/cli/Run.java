package neutralpoint.cli;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/** One run of the program as a person or a script meets it: its exit code, what it printed and what it complained of. */
record Run(int code, String out, String err) {

    static Run of(String... args) {
        return reading("", args);
    }

    static Run reading(String input, String... args) {
        PrintStream out = System.out;
        PrintStream err = System.err;
        InputStream in = System.in;
        ByteArrayOutputStream printed = new ByteArrayOutputStream();
        ByteArrayOutputStream complained = new ByteArrayOutputStream();
        try {
            System.setErr(new PrintStream(complained, true, StandardCharsets.UTF_8));
            System.setIn(new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8)));
            int code = Main.run(args, new PrintStream(printed, true, StandardCharsets.UTF_8));
            return new Run(code, printed.toString(StandardCharsets.UTF_8), complained.toString(StandardCharsets.UTF_8));
        } finally {
            System.setOut(out);
            System.setErr(err);
            System.setIn(in);
        }
    }
}
