package neutralpoint.document;

import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Optional;

/** A text read line by line, however long it is; of a line that is too long no more than the limit is held. */
public final class Lines {
    private final InputStream in;
    private int number;

    public Lines(InputStream in) {
        this.in = new BufferedInputStream(in, 1 << 16);
    }

    /**
     * One line as it stands in the text.
     *
     * @param number  counted from 1
     * @param bytes   without the line break
     * @param tooLong true when it is longer than {@link Documents#LARGEST_FILE_BYTES} and so cut off
     */
    @SuppressWarnings("ArrayRecordComponent")
    public record Line(int number, byte[] bytes, boolean tooLong) {

        public boolean isBlank() {
            for (byte b : bytes) {
                if (b > ' ' || b < 0) {
                    return false;
                }
            }
            return true;
        }

        /** The text; refused when it is too long or not UTF-8. */
        public String text(String name) {
            if (tooLong) {
                throw new BadInput(new Where(name, number), "this line is longer than " + Documents.LARGEST_FILE_BYTES / 1_000_000
                        + " MB; a call-out is a few kilobytes, so this is not one.");
            }
            return Documents.decode(new Where(name, number).toString(), bytes);
        }
    }

    /** The next line; empty at the end of the text. */
    public Optional<Line> next() {
        try {
            ByteArrayOutputStream line = new ByteArrayOutputStream(256);
            boolean tooLong = false;
            int b = in.read();
            if (b < 0) {
                return Optional.empty();
            }
            for (; b >= 0 && b != '\n'; b = in.read()) {
                if (line.size() < Documents.LARGEST_FILE_BYTES) {
                    line.write(b);
                } else {
                    tooLong = true;
                }
            }
            return Optional.of(new Line(++number, line.toByteArray(), tooLong));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
