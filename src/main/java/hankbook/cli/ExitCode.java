package hankbook.cli;

/** What the program says to the shell that called it. */
public final class ExitCode {
  /** Done, and every yarn asked about is covered. */
  public static final int DONE = 0;

  /** An internal fault. */
  public static final int FAULT = 1;

  /** Bad input; nothing was changed. */
  public static final int BAD_INPUT = 2;

  /** A yarn is short. */
  public static final int SHORT = 3;

  private ExitCode() {}
}
