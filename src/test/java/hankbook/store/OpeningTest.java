package hankbook.store;

import static hankbook.store.Examples.CORAL;
import static hankbook.store.Examples.add;
import static hankbook.store.Examples.chain;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hankbook.measure.Unreadable;
import java.io.BufferedReader;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A ledger opens without a word, or says in one sentence why it does not and lets go of what it took. */
class OpeningTest {
  @TempDir private Path folder;

  @ParameterizedTest
  @EnumSource
  void aLedgerIsMadeAndOpenedAgainWithoutAWord(Vendor vendor) throws Exception {
    LedgerAddress address = vendor.blank(folder);
    for (int time = 0; time < 2; time++) {
      Process program = OtherProgram.start(OtherProgram.class, spoken(address));
      try (BufferedReader out = program.inputReader(); BufferedReader err = program.errorReader()) {
        program.getOutputStream().close();
        assertThat(out.lines()).containsExactly(OtherProgram.OPEN);
        assertThat(err.lines()).isEmpty();
        assertThat(program.waitFor()).isZero();
      } finally {
        program.destroyForcibly();
      }
    }
  }

  @Test
  void aFileThatAnotherProgramHoldsIsNotOpenedUntilThatLetsGo() throws Exception {
    LedgerAddress address = Vendor.H2.ledger(folder);
    Process program = OtherProgram.start(OtherProgram.class, address.text());
    try (BufferedReader out = program.inputReader()) {
      assertThat(out.readLine()).isEqualTo(OtherProgram.OPEN);
      saysOnly(address, "is open in another program; close it there first (to be shared it must lie on a PostgreSQL server)");
      program.getOutputStream().close();
      assertThat(program.waitFor()).isZero();
      Store.open(address).close();
    } finally {
      program.destroyForcibly();
    }
  }

  @Test
  void aLedgerIsOneFileWithNothingBesideIt() throws Exception {
    try (Store store = Store.open(Vendor.H2.blank(folder.resolve("new").resolve("folders")))) {
      add(store, CORAL);
      assertThatThrownBy(() -> add(store, CORAL)).isInstanceOf(RuntimeException.class);
    }
    try (Stream<Path> files = Files.list(folder.resolve("new").resolve("folders"))) {
      assertThat(files).containsExactly(folder.resolve("new").resolve("folders").resolve("ledger.mv.db"));
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"the studio's yarn", "garn åäö 毛糸 #1 %20 &c=x?y", "~", "ledger.db"})
  void aLedgerMayBeCalledAnything(String name) throws Exception {
    LedgerAddress address = LedgerAddress.parse(folder.resolve(name).toString());
    try (Store store = Store.open(address)) {
      add(store, CORAL);
    }
    assertThat(Path.of(address.text())).isRegularFile();
    try (Store store = Store.open(LedgerAddress.parse(address.text()))) {
      assertThat(chain(store)).isEmpty();
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"hello", "this is a shopping list, and no ledger"})
  void aFileThatIsNoLedgerIsLeftAsItIs(String text) throws Exception {
    LedgerAddress address = Vendor.H2.blank(folder);
    Path file = Files.writeString(Path.of(address.text()), text.repeat(200));
    saysOnly(address, "cannot be read, since it is damaged or no ledger at all; put back a copy of it, or give another with --ledger");
    assertThat(file).hasContent(text.repeat(200));
    letGo(file);
  }

  @Test
  void aFolderIsNoLedger() throws Exception {
    LedgerAddress address = Vendor.H2.blank(folder);
    String wanted = "cannot be made, since there is a folder of that name; give a file in it, such as " + folder.resolve("ledger").resolve("ledger");
    Files.createDirectory(folder.resolve("ledger"));
    saysOnly(address, wanted);
    Files.move(folder.resolve("ledger"), Path.of(address.text()));
    saysOnly(address, wanted);
  }

  @Test
  void aLedgerCannotLieInAFile() throws Exception {
    Files.writeString(folder.resolve("note"), "a file");
    saysOnly(Vendor.H2.blank(folder.resolve("note")), "cannot be made, since its folder cannot be; choose another with --ledger");
  }

  @Test
  @EnabledOnOs(OS.LINUX)
  void aLedgerCannotLieWhereNoFileCanBeMade() {
    saysOnly(new LedgerAddress.InFile(Path.of("/proc/ledger")), "cannot be made, since its folder takes no file; choose another with --ledger");
  }

  @ParameterizedTest
  @EnabledOnOs(OS.LINUX)
  @ValueSource(strings = {"mine;yours", "mine\\yours", "a;folder/ledger"})
  void aNameThatTheDatabaseWouldMistakeIsNotTaken(String name) {
    saysOnly(
        new LedgerAddress.InFile(folder.resolve(name)),
        "has a semicolon or a backslash in its name, which the database cannot take; give another with --ledger");
    assertThat(folder).isEmptyDirectory();
  }

  @ParameterizedTest
  @EnumSource
  void aLedgerOfANewerProgramIsLeftAlone(Vendor vendor) throws Exception {
    LedgerAddress address = vendor.ledger(folder);
    Vendor.run(address, "insert into flyway_schema_history (installed_rank, version, description, type, script, installed_by, execution_time, success)"
        + " values (99, '" + (Schema.NEWEST + 1) + "', 'later', 'SQL', 'later.sql', 'someone', 1, true)");
    saysOnly(address, "was written by a newer Hankbook than this one; use that, or give another ledger with --ledger");
    letGo(address);
  }

  @ParameterizedTest
  @EnumSource
  void aDatabaseOfSomethingElseIsLeftAlone(Vendor vendor) throws Exception {
    LedgerAddress address = vendor.blank(folder);
    Vendor.run(address, "create table recipe (name varchar(20))");
    saysOnly(address, "holds something else, and no ledger; give an empty database, or another ledger with --ledger");
    letGo(address);
  }

  @Test
  void anotherSchemaOfTheSameDatabaseIsNoneOfItsBusiness() throws Exception {
    LedgerAddress address = Postgres.blank();
    Vendor.run(address, "create schema other", "create table other.flyway_schema_history (version varchar(20))", "create table other.recipe (name varchar(20))");
    try (Store store = Store.open(address)) {
      assertThat(chain(store)).isEmpty();
    }
  }

  @Test
  void aServerThatRefusesSaysSo() throws Exception {
    int free;
    try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      free = socket.getLocalPort();
    }
    saysOnly(new LedgerAddress.AtServer("jdbc:postgresql://localhost:" + free + "/guild"), "does not answer; see that its server runs and that the address is right");
  }

  @Test
  void aServerThatNeverAnswersIsGivenUp() throws Exception {
    try (ServerSocket silent = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      saysOnly(
          new LedgerAddress.AtServer("jdbc:postgresql://localhost:" + silent.getLocalPort() + "/guild?user=ida&password=secret&loginTimeout=1"),
          "does not answer; see that its server runs and that the address is right");
    }
  }

  @Test
  void aDatabaseThatIsNotThereSaysSo() {
    LedgerAddress.AtServer there = Postgres.blank();
    saysOnly(new LedgerAddress.AtServer(there.url().replaceFirst("ledger_\\d+", "nowhere")), "is not on its server; have a database of that name made there first");
  }

  @Test
  void aUserWhomTheServerDoesNotKnowIsNotLetIn() {
    saysOnly(Postgres.as("stranger", Postgres.blank()), "does not let you in; see that the user and the password are right");
  }

  @Test
  void aServerWithoutRoomForASecondConnectionSaysSoAndTheFirstIsClosed() throws Exception {
    LedgerAddress.AtServer address = Postgres.ledger();
    Postgres.run("create role single login connection limit 1");
    Vendor.run(address, "grant all on all tables in schema public to single");
    for (int time = 0; time < 2; time++) {
      saysOnly(Postgres.as("single", address), "takes no more connections; try again when fewer programs use it");
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"jdbc:postgresql://localhost:port/guild", "jdbc:h2:mem:guild", "jdbc:", "/"})
  void anAddressThatIsNoneIsNotTaken(String text) {
    assertThatThrownBy(() -> LedgerAddress.parse(text)).isInstanceOf(Unreadable.class).hasMessageContaining("wanted a path, or a PostgreSQL address");
  }

  @Test
  void aPasswordIsNotShownWithTheAddress() {
    assertThat(LedgerAddress.parse("jdbc:postgresql://host/guild?user=ida&password=secret").text()).isEqualTo("jdbc:postgresql://host/guild");
  }

  private static void saysOnly(LedgerAddress address, String reason) {
    assertThatThrownBy(() -> Store.open(address)).isInstanceOf(LedgerUnavailable.class).hasMessage("The ledger " + address.text() + " " + reason + ".");
  }

  /** A file that this program still held could not be locked again. */
  private static void letGo(Path file) throws Exception {
    try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
      assertThat(channel.tryLock()).isNotNull();
    }
  }

  private static void letGo(LedgerAddress address) throws Exception {
    switch (address) {
      case LedgerAddress.InFile file -> letGo(Path.of(file.text()));
      case LedgerAddress.AtServer server -> Postgres.run("drop database " + server.text().replaceFirst(".*/", ""));
    }
  }

  private static String spoken(LedgerAddress address) {
    return address instanceof LedgerAddress.AtServer(String url) ? url : address.text();
  }
}
