package hankbook.store;

import static hankbook.store.schema.tables.ChainEnd.CHAIN_END;

import org.jooq.DSLContext;

/** The ledger within one transaction. */
public final class Session {
  private final DSLContext sql;

  Session(DSLContext sql) {
    this.sql = sql;
  }

  /** The skeins as they came. */
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

  /** One writer at a time: the next waits here until this transaction ends. */
  void lockChain() {
    sql.select(CHAIN_END.LAST_HASH).from(CHAIN_END).forUpdate().fetchSingle();
  }
}
