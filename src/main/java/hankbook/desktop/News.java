package hankbook.desktop;

import hankbook.studio.Studio;
import java.util.OptionalLong;

/** Looks whether anything was written into the ledger since it was looked last, by whomever. */
final class News {
  private final Studio studio;
  private final Work work;
  private final Status status;
  private final Runnable then;
  private OptionalLong known = OptionalLong.empty();
  private boolean looking;
  private boolean troubled;

  /** @param then is run where there is something new */
  News(Studio studio, Work work, Status status, Runnable then) {
    this.studio = studio;
    this.work = work;
    this.status = status;
    this.then = then;
  }

  /** Looks, unless that is under way. */
  void look() {
    if (!looking) {
      looking = true;
      work.run(studio::written, this::counted, this::notCounted);
    }
  }

  /** Once is enough to say so; looking goes on. */
  private void notCounted(Exception trouble) {
    looking = false;
    if (!troubled) {
      troubled = true;
      status.wrong(trouble);
    }
  }

  private void counted(long written) {
    looking = false;
    troubled = false;
    boolean isNew = known.isPresent() && known.getAsLong() != written;
    known = OptionalLong.of(written);
    if (isNew) {
      then.run();
    }
  }
}
