package hankbook.desktop.say;

import com.sun.source.tree.AnnotationTree;
import com.sun.source.tree.BinaryTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.ExpressionTree;
import com.sun.source.tree.LiteralTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.tree.NewClassTree;
import com.sun.source.tree.Tree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.SourcePositions;
import com.sun.source.util.TreeScanner;
import com.sun.source.util.Trees;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/** What the sources of the window say: the texts given to {@link Say}, and literals that look like a text and are not given to it. */
final class TextsInCode {
  private static final Pattern LOOKS_LIKE_A_TEXT = Pattern.compile(".*\\p{L}\\p{Ll}+ \\p{L}.*|\\p{Lu}\\p{Ll}+[.:,…]?|.*\\p{Ll} |[,;:]? \\p{Ll}{2,}.*", Pattern.DOTALL);
  private static final Set<String> FAULTS_OF_OUR_OWN =
      Set.of("IllegalArgumentException", "IllegalStateException", "UncheckedIOException", "AssertionError", "UnsupportedOperationException", "Unreadable");

  private final Set<String> texts = new TreeSet<>();
  private final Set<String> counted = new TreeSet<>();
  private final List<String> unsaid = new ArrayList<>();

  /** Reads every source under a folder. */
  static TextsInCode under(Path folder) throws IOException {
    TextsInCode found = new TextsInCode();
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    try (Stream<Path> files = Files.walk(folder);
        StandardJavaFileManager manager = compiler.getStandardFileManager(null, null, null)) {
      List<Path> sources = files.filter(file -> file.toString().endsWith(".java")).sorted().toList();
      JavacTask task = (JavacTask) compiler.getTask(null, manager, null, List.of("-proc:none"), null, manager.getJavaFileObjectsFromPaths(sources));
      for (CompilationUnitTree unit : task.parse()) {
        found.read(unit, Trees.instance(task).getSourcePositions());
      }
    }
    return found;
  }

  /** English texts that are said. */
  Set<String> texts() {
    return texts;
  }

  /** English texts for many that are said of a number, each after its text for one and a bar. */
  Set<String> counted() {
    return counted;
  }

  /** Literals that look like a text but are not said, each after its file and line. */
  List<String> unsaid() {
    return unsaid;
  }

  private void read(CompilationUnitTree unit, SourcePositions positions) {
    String file = Path.of(unit.getSourceFile().getName()).getFileName().toString();
    new TreeScanner<Void, Void>() {
      @Override
      public Void visitMethodInvocation(MethodInvocationTree call, Void nothing) {
        String method = call.getMethodSelect().toString();
        if (!method.startsWith("Say.")) {
          return super.visitMethodInvocation(call, nothing);
        }
        int texts = say(method, call.getArguments(), file + ":" + line(call));
        call.getArguments().stream().skip(texts).forEach(value -> scan(value, nothing));
        return null;
      }

      @Override
      public Void visitNewClass(NewClassTree made, Void nothing) {
        return FAULTS_OF_OUR_OWN.contains(made.getIdentifier().toString()) ? null : super.visitNewClass(made, nothing);
      }

      @Override
      public Void visitAnnotation(AnnotationTree annotation, Void nothing) {
        return null;
      }

      @Override
      public Void visitLiteral(LiteralTree literal, Void nothing) {
        if (literal.getValue() instanceof String text && LOOKS_LIKE_A_TEXT.matcher(text).matches()) {
          unsaid.add(file + ":" + line(literal) + " \"" + text + "\"");
        }
        return null;
      }

      private long line(Tree tree) {
        return unit.getLineMap().getLineNumber(positions.getStartPosition(unit, tree));
      }
    }.scan(unit, null);
  }

  /** Takes the texts of a call; tells how many of its arguments they are. */
  private int say(String method, List<? extends ExpressionTree> arguments, String where) {
    return switch (method) {
      case "Say.text" -> {
        texts.add(constant(arguments.getFirst(), where));
        yield 1;
      }
      case "Say.meaning" -> {
        texts.add(constant(arguments.get(1), where) + " (" + constant(arguments.getFirst(), where) + ")");
        yield 2;
      }
      case "Say.count" -> {
        counted.add(constant(arguments.get(1), where) + "|" + constant(arguments.get(2), where));
        yield 3;
      }
      default -> 0;
    };
  }

  private static String constant(ExpressionTree tree, String where) {
    return text(tree).orElseThrow(() -> new AssertionError(where + " says " + tree + ", wanted a text that stands there as it is"));
  }

  private static Optional<String> text(ExpressionTree tree) {
    return switch (tree) {
      case LiteralTree literal when literal.getValue() instanceof String text -> Optional.of(text);
      case BinaryTree sum when sum.getKind() == Tree.Kind.PLUS -> text(sum.getLeftOperand()).flatMap(left -> text(sum.getRightOperand()).map(left::concat));
      default -> Optional.empty();
    };
  }

  /** Prints what is said and unsaid: {@code texts}, {@code counted} or {@code unsaid} of a folder. */
  public static void main(String[] arguments) throws IOException {
    TextsInCode found = under(Path.of(arguments[1]));
    switch (arguments[0]) {
      case "texts" -> found.texts().forEach(System.out::println);
      case "counted" -> found.counted().forEach(System.out::println);
      default -> found.unsaid().forEach(System.out::println);
    }
  }
}
