package hankbook.studio;

/** Hears how far something long has come, and may stop it: then nothing of it is written. */
@FunctionalInterface
public interface Progress {
  /** Nobody listens, and nobody stops it. */
  Progress UNHEARD = (_, _) -> {};

  /**
   * So much of it is done.
   *
   * @param done from 0 to all
   * @param all more than 0 where it is known
   * @throws java.util.concurrent.CancellationException if it is to be stopped
   */
  void at(long done, long all);
}
