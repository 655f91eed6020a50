package hankbook.ledger;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.UUID;

/** The chain of hashes: each entry's covers its content and the hash before, so that a change to any past entry shows. */
public final class Chain {
  /** What stands before the first entry. */
  public static final String START = "0".repeat(64);

  private Chain() {}

  /** An entry as the next of a chain. */
  public static ChainedEntry link(long number, Entry entry, String previousHash) {
    return new ChainedEntry(number, entry, previousHash, hash(number, entry, previousHash));
  }

  /** SHA-256, in small hexadecimal letters, over the canonical text. */
  public static String hash(long number, Entry entry, String previousHash) {
    byte[] text = canonical(number, entry, previousHash).getBytes(StandardCharsets.UTF_8);
    return HexFormat.of().formatHex(sha256().digest(text));
  }

  /**
   * Each field as its length in bytes, a colon, its text and a line end. With the lengths in front no text in one field can pass for
   * another field, so two different entries never have the same canonical text.
   */
  static String canonical(long number, Entry entry, String previousHash) {
    List<String> fields = new ArrayList<>(List.of(
        "hankbook entry 1", previousHash, Long.toString(number), entry.id().toString(), entry.kind().name(), entry.date().toString(),
        entry.author(), entry.note(), entry.reverses().map(UUID::toString).orElse(""), Integer.toString(entry.transfers().size())));
    for (Transfer transfer : entry.transfers()) {
      fields.add(transfer.skein());
      fields.add(transfer.from().text());
      fields.add(transfer.to().text());
      fields.add(Long.toString(transfer.length().tenthsOfMillimetre()));
    }
    StringBuilder text = new StringBuilder();
    for (String field : fields) {
      text.append(field.getBytes(StandardCharsets.UTF_8).length).append(':').append(field).append('\n');
    }
    return text.toString();
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("Every Java platform must have SHA-256", e);
    }
  }
}
