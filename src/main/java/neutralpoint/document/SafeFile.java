package neutralpoint.document;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Objects;
import java.util.Optional;

/**
 * Writes a file so that a reader, a power cut or a full disk only ever leaves the old text or the
 * new: a temporary file in the same folder, forced to disk, then moved over the old one.
 */
public final class SafeFile {
    private SafeFile() {}

    public static void write(Path file, String text) {
        Path target = file.toAbsolutePath();
        if (Files.exists(target) && !Files.isWritable(target)) {
            throw new BadInput(file + " is read-only, so it was left as it is; choose another file name.");
        }
        Path temporary = target.resolveSibling("." + target.getFileName() + ".saving");
        try {
            writeThrough(temporary, text.getBytes(StandardCharsets.UTF_8));
            move(temporary, target);
            Optional.ofNullable(target.getParent()).ifPresent(SafeFile::forceFolder);
        } catch (IOException e) {
            discard(temporary);
            throw new BadInput(file + " could not be saved (" + reason(e) + "); what it held before is unchanged.", e);
        }
    }

    private static void writeThrough(Path temporary, byte[] bytes) throws IOException {
        try (FileChannel channel = FileChannel.open(temporary, StandardOpenOption.CREATE,
                StandardOpenOption.WRITE, StandardOpenOption.TRUNCATE_EXISTING)) {
            ByteBuffer buffer = ByteBuffer.wrap(bytes);
            while (buffer.hasRemaining()) {
                channel.write(buffer);
            }
            channel.force(true);
        }
    }

    private static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    private static void forceFolder(Path folder) {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException e) {
            // Some systems cannot open a folder; the file itself is already on disk.
            return;
        }
    }

    private static void discard(Path temporary) {
        try {
            Files.deleteIfExists(temporary);
        } catch (IOException e) {
            // A stray temporary file is harmless: the next save writes over it.
            return;
        }
    }

    private static String reason(IOException e) {
        if (e instanceof java.nio.file.NoSuchFileException) {
            return "the folder does not exist";
        }
        if (e instanceof java.nio.file.AccessDeniedException) {
            return "the folder may not be written to";
        }
        return Objects.requireNonNullElse(e.getMessage(), e.getClass().getSimpleName());
    }
}
