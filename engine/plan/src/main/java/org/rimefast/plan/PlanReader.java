package org.rimefast.plan;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.rimefast.plan.internal.Assembler;
import org.rimefast.plan.internal.Digest;
import org.rimefast.plan.internal.Faults;
import org.rimefast.plan.internal.json.JsonTree;
import org.rimefast.plan.internal.json.Places;

/**
 * Reads plans. Immutable and safe for use by many threads.
 *
 * <p>Use:
 *
 * <pre>{@code
 * PlanReading reading = new PlanReader().read(Path.of("wet-lab.json"));
 * reading.faults().forEach(fault -> System.out.println(fault.message()));
 * }</pre>
 *
 * <p>The format is described by {@link PlanSchema}. Plans are JSON (RFC 8259) in UTF-8; a leading
 * byte order mark is passed over. What is wrong with a plan is reported as {@link PlanFault}s, all
 * together and in the order of the file; no file makes a reader throw, or use memory beyond what
 * its length and the limits allow.
 */
public final class PlanReader {
  private final PlanLimits limits;

  /** A reader with {@link PlanLimits#DEFAULT}. */
  public PlanReader() {
    this(PlanLimits.DEFAULT);
  }

  /** A reader with limits of its own. */
  public PlanReader(PlanLimits limits) {
    this.limits = limits;
  }

  /**
   * Reads a file.
   *
   * @throws IOException if the file cannot be read
   */
  public PlanReading read(Path file) throws IOException {
    String name = file.toString().replace('\\', '/');
    if (Files.size(file) > limits.bytes()) {
      return tooLarge();
    }
    return read(name, Files.readAllBytes(file));
  }

  /**
   * Reads the bytes of a plan.
   *
   * @param name how messages name the plan
   * @param utf8 the text; not kept and not changed
   */
  public PlanReading read(String name, byte[] utf8) {
    if (utf8.length > limits.bytes()) {
      return tooLarge();
    }
    int wrong = firstNotUtf8(utf8);
    Faults faults = new Faults(limits.faults());
    if (wrong >= 0) {
      faults.add(
          "not-utf8",
          "",
          Places.at(utf8, wrong),
          "The file is not text in UTF-8: byte " + wrong + " does not belong there.",
          "Save the file with the encoding UTF-8.");
      return new PlanReading(Optional.empty(), faults.sorted());
    }
    int start = hasMark(utf8) ? 3 : 0;
    JsonTree tree = JsonTree.read(utf8, start, limits);
    JsonTree.Trouble trouble = tree.trouble();
    Optional<Plan> plan =
        tree.root() == null
            ? Optional.empty()
            : Assembler.assemble(tree.root(), trouble == null, limits, faults);
    if (trouble != null) {
      faults.add(
          trouble.code(), trouble.pointer(), trouble.place(), trouble.message(), trouble.remedy());
    }
    return new PlanReading(
        plan.map(found -> found.withSource(source(name, utf8, start))), faults.sorted());
  }

  private PlanSource source(String name, byte[] utf8, int start) {
    return new PlanSource(name, Digest.sha256(utf8), new Places(utf8.clone(), start, limits));
  }

  private PlanReading tooLarge() {
    Faults faults = new Faults(1);
    faults.add(
        "too-large",
        "",
        new PlanSource.Place(1, 1),
        "The file is longer than " + limits.bytes() + " bytes.",
        "Split the plan, or raise the reader's limit.");
    return new PlanReading(Optional.empty(), faults.sorted());
  }

  private static boolean hasMark(byte[] utf8) {
    return utf8.length >= 3
        && utf8[0] == (byte) 0xEF
        && utf8[1] == (byte) 0xBB
        && utf8[2] == (byte) 0xBF;
  }

  /**
   * The first byte that cannot belong to a JSON text in UTF-8; -1 if there is none. A zero byte
   * counts too: it is how UTF-16 shows, which the parser would otherwise guess and accept.
   */
  private static int firstNotUtf8(byte[] utf8) {
    for (int i = 0; i < Math.min(4, utf8.length); i++) {
      if (utf8[i] == 0) {
        return i;
      }
    }
    CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
    ByteBuffer in = ByteBuffer.wrap(utf8);
    CharBuffer out = CharBuffer.allocate(8192);
    while (true) {
      CoderResult result = decoder.decode(in, out, true);
      if (result.isError()) {
        return in.position();
      }
      if (result.isUnderflow()) {
        return -1;
      }
      out.clear();
    }
  }
}
