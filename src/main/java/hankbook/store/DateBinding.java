package hankbook.store;

import java.sql.SQLException;
import java.sql.Types;
import java.time.LocalDate;
import org.jooq.BindingGetResultSetContext;
import org.jooq.BindingSetStatementContext;
import org.jooq.Converter;
import org.jooq.impl.AbstractBinding;

/** Hands dates to the database as they are. Through java.sql.Date, which jOOQ would use, a day that the time zone or the old calendar skipped becomes another. */
public final class DateBinding extends AbstractBinding<LocalDate, LocalDate> {
  private static final long serialVersionUID = 1L;

  @Override
  public Converter<LocalDate, LocalDate> converter() {
    return Converter.of(LocalDate.class, LocalDate.class, date -> date, date -> date);
  }

  @Override
  public void set(BindingSetStatementContext<LocalDate> context) throws SQLException {
    if (context.value() == null) {
      context.statement().setNull(context.index(), Types.DATE);
    } else {
      context.statement().setObject(context.index(), context.value());
    }
  }

  @Override
  public void get(BindingGetResultSetContext<LocalDate> context) throws SQLException {
    context.value(context.resultSet().getObject(context.index(), LocalDate.class));
  }
}
