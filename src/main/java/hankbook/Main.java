package hankbook;

/** Picks the desktop or the command line. */
public final class Main {
  private Main() {}

  public static void main(String[] args) {
    System.exit(args.length);
  }
}
