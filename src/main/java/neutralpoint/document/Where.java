package neutralpoint.document;

/** A place in a file. Line 0 means the file as a whole. */
public record Where(String file, int line) {
    @Override
    public String toString() {
        return line > 0 ? file + ", line " + line : file;
    }
}
