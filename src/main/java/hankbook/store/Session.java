package hankbook.store;

import static hankbook.store.schema.tables.ActualsVersion.ACTUALS_VERSION;
import static hankbook.store.schema.tables.ChainEnd.CHAIN_END;
import static hankbook.store.schema.tables.DueVersion.DUE_VERSION;
import static hankbook.store.schema.tables.LoomVersion.LOOM_VERSION;
import static hankbook.store.schema.tables.PlanVersion.PLAN_VERSION;
import static hankbook.store.schema.tables.PurchaseVersion.PURCHASE_VERSION;
import static hankbook.store.schema.tables.ReedVersion.REED_VERSION;
import static hankbook.store.schema.tables.Setting.SETTING;
import static hankbook.store.schema.tables.SkeinVersion.SKEIN_VERSION;
import static hankbook.store.schema.tables.TurnVersion.TURN_VERSION;

import hankbook.ledger.LastSaid;
import java.util.Optional;
import org.jooq.DSLContext;

/** The ledger within one transaction. */
public final class Session {
  private final DSLContext sql;

  Session(DSLContext sql) {
    this.sql = sql;
  }

  /** The skeins, and what was said of them since. */
  public SkeinRows skeins() {
    return new SkeinRows(sql);
  }

  /** The plans. */
  public PlanVersions plans() {
    return new PlanVersions(sql);
  }

  /** The looms. */
  public LoomVersions looms() {
    return new LoomVersions(sql);
  }

  /** The reeds. */
  public ReedVersions reeds() {
    return new ReedVersions(sql);
  }

  /** When yarn that is on order is expected. */
  public DueVersions dues() {
    return new DueVersions(sql);
  }

  /** In which order plans take their yarn. */
  public TurnVersions turns() {
    return new TurnVersions(sql);
  }

  /** What was done. */
  public Entries entries() {
    return new Entries(sql);
  }

  /** When yarn went to looms and came back. */
  public LoomVisits loomVisits() {
    return new LoomVisits(sql);
  }

  /** How much is where. */
  public BalanceRows balances() {
    return new BalanceRows(sql);
  }

  /** What the owner set. */
  public SettingRows settings() {
    return new SettingRows(sql);
  }

  /** The yarns' own grists. */
  public GristSamples gristSamples() {
    return new GristSamples(sql);
  }

  /** What skeins were measured to hold after they came. */
  public Remeasurements remeasurements() {
    return new Remeasurements(sql);
  }

  /** What was found after cloths were cut off. */
  public ActualsVersions actuals() {
    return new ActualsVersions(sql);
  }

  /** What was paid. */
  public PurchaseVersions purchases() {
    return new PurchaseVersions(sql);
  }

  /** How many versions of plans, of their order, of looms and reeds, of expected days, of purchases and of settings others than an author have written. */
  public long writtenByOthers(String author) {
    return (long) sql.fetchCount(PLAN_VERSION, PLAN_VERSION.AUTHOR.ne(author))
        + sql.fetchCount(TURN_VERSION, TURN_VERSION.AUTHOR.ne(author))
        + sql.fetchCount(LOOM_VERSION, LOOM_VERSION.AUTHOR.ne(author))
        + sql.fetchCount(REED_VERSION, REED_VERSION.AUTHOR.ne(author))
        + sql.fetchCount(DUE_VERSION, DUE_VERSION.AUTHOR.ne(author))
        + sql.fetchCount(SKEIN_VERSION, SKEIN_VERSION.AUTHOR.ne(author))
        + sql.fetchCount(ACTUALS_VERSION, ACTUALS_VERSION.AUTHOR.ne(author))
        + sql.fetchCount(PURCHASE_VERSION, PURCHASE_VERSION.AUTHOR.ne(author))
        + sql.fetchCount(SETTING, SETTING.AUTHOR.ne(author));
  }

  /** The last thing an author said that is no entry. */
  public Optional<LastSaid> lastSaid(String author) {
    return LastSaidRows.by(author, sql);
  }

  /** One writer at a time: the next waits here until this transaction ends. */
  void lockChain() {
    sql.select(CHAIN_END.LAST_HASH).from(CHAIN_END).forUpdate().fetchSingle();
  }
}
