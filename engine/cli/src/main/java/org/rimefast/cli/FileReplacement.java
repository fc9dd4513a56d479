package org.rimefast.cli;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;

/** Replaces a file as a whole: whoever reads it sees the old bytes or the new ones. */
final class FileReplacement {
  private FileReplacement() {}

  /**
   * Writes the bytes beside the file, then moves them into its place. Permissions stay; a link
   * still leads to the file.
   *
   * @throws IOException if that cannot be done; the file is then as it was
   */
  static void write(Path link, byte[] bytes) throws IOException {
    Path file = link.toRealPath();
    // A file that must not be written could still be replaced, if its folder may be written.
    if (!Files.isWritable(file)) {
      throw new AccessDeniedException(file.toString());
    }
    Path folder = file.getParent();
    if (folder == null) {
      throw new IOException("it stands in no folder");
    }
    Path beside = Files.createTempFile(folder, ".rimefast-", ".tmp");
    try {
      try (FileChannel channel = FileChannel.open(beside, StandardOpenOption.WRITE)) {
        ByteBuffer rest = ByteBuffer.wrap(bytes);
        while (rest.hasRemaining()) {
          channel.write(rest);
        }
        channel.force(true);
      }
      keepPermissions(file, beside);
      Files.move(beside, file, StandardCopyOption.ATOMIC_MOVE);
    } finally {
      Files.deleteIfExists(beside);
    }
  }

  private static void keepPermissions(Path from, Path to) throws IOException {
    PosixFileAttributeView old = Files.getFileAttributeView(from, PosixFileAttributeView.class);
    PosixFileAttributeView fresh = Files.getFileAttributeView(to, PosixFileAttributeView.class);
    // Where files have no such permissions, a new one takes those of its folder.
    if (old != null && fresh != null) {
      fresh.setPermissions(old.readAttributes().permissions());
    }
  }
}
