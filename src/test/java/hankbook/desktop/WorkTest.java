package hankbook.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class WorkTest {
  private final List<String> heard = new ArrayList<>();

  @Test
  void anErrandIsDoneAwayAndItsAnswerComesHere() {
    List<Runnable> away = new ArrayList<>();
    List<Runnable> here = new ArrayList<>();
    new Work(away::add, here::add).run(() -> "done", heard::add, trouble -> heard.add("trouble"));
    assertThat(here).isEmpty();
    away.getFirst().run();
    assertThat(heard).isEmpty();
    here.getFirst().run();
    assertThat(heard).containsExactly("done");
  }

  @Test
  void aFailureIsToldInsteadOfAnAnswer() {
    new Work(Runnable::run, Runnable::run).run(
        () -> {
          throw new IllegalStateException("no ledger");
        },
        answer -> heard.add("answer"),
        trouble -> heard.add(Status.words(trouble)));
    assertThat(heard).singleElement().asString().contains("no ledger");
  }

  @Test
  void evenAnErrorIsTold() {
    new Work(Runnable::run, Runnable::run).run(
        () -> {
          throw new StackOverflowError();
        },
        answer -> heard.add("answer"),
        trouble -> heard.add(Status.words(trouble)));
    assertThat(heard).singleElement().asString().contains("StackOverflowError");
  }

  @Test
  void onlyTheAnswerToTheLatestQuestionIsHeard() {
    Latest latest = new Latest();
    var first = latest.<String>only(heard::add);
    var second = latest.<String>only(heard::add);
    second.accept("second");
    first.accept("first");
    assertThat(heard).containsExactly("second");
  }
}
