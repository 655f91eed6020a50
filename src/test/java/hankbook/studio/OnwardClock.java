package hankbook.studio;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.concurrent.atomic.AtomicLong;

/** Begins at noon of a day and goes on by a millisecond whenever it is looked at, so that what is done later is recorded later. */
public final class OnwardClock extends Clock {
  private final AtomicLong millis = new AtomicLong(Instant.parse("2026-03-14T12:00:00Z").toEpochMilli());

  @Override
  public ZoneId getZone() {
    return ZoneOffset.UTC;
  }

  @Override
  public Clock withZone(ZoneId zone) {
    throw new UnsupportedOperationException("wanted in UTC alone");
  }

  @Override
  public Instant instant() {
    return Instant.ofEpochMilli(millis.getAndIncrement());
  }
}
