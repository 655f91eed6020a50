package hankbook.store;

import static hankbook.store.schema.tables.Setting.SETTING;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jooq.DSLContext;

/** What the owner of the ledger set, by name; nothing that was ever set is lost. */
public final class SettingRows {
  private final DSLContext sql;

  SettingRows(DSLContext sql) {
    this.sql = sql;
  }

  /** The newest content of each that was ever set. */
  public Map<String, String> all() {
    Map<String, String> newest = new LinkedHashMap<>();
    sql.select(SETTING.NAME, SETTING.CONTENT).from(SETTING).orderBy(SETTING.NAME, SETTING.NUMBER).forEach(row -> newest.put(row.value1(), row.value2()));
    return newest;
  }

  /** Sets something, where it is not so already. */
  public void set(String name, String content, String author, Instant now) {
    if (content.equals(all().get(name))) {
      return;
    }
    int next = sql.fetchCount(SETTING, SETTING.NAME.eq(name)) + 1;
    sql.insertInto(SETTING, SETTING.NAME, SETTING.NUMBER, SETTING.CONTENT, SETTING.AUTHOR, SETTING.RECORDED_AT)
        .values(name, next, content, author, now.atOffset(ZoneOffset.UTC))
        .execute();
  }
}
