package hankbook.desktop.say;

import com.sun.source.tree.AnnotationTree;
import com.sun.source.tree.BinaryTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.ExpressionTree;
import com.sun.source.tree.LiteralTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.tree.NewClassTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
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
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.jspecify.annotations.Nullable;

/**
 * What the sources say: the texts given to {@link Say}, to phrases and refusals, and as what is wanted in the place of what cannot be read; the words of enums; and
 * literals that look like a text and are none of these.
 */
final class TextsInCode {
  private static final Pattern LOOKS_LIKE_A_TEXT = Pattern.compile(".*\\p{L}\\p{Ll}+ \\p{L}.*|\\p{Lu}\\p{Ll}+[.:,…]?|.*\\p{Ll} |[,;:]? \\p{Ll}{2,}.*", Pattern.DOTALL);
  private static final Set<String> SAYS = Set.of("Say.text", "Say.meaning", "Say.count", "Phrase.of", "Phrase.count", "NotDone.because");
  /** These two take what others wrote. */
  private static final Set<String> PASS_ON = Set.of("Unreadable.java", "NotDone.java");
  private static final Set<String> FAULTS_OF_OUR_OWN =
      Set.of("IllegalArgumentException", "IllegalStateException", "UncheckedIOException", "AssertionError", "UnsupportedOperationException", "Unreadable");

  private final Set<String> texts = new TreeSet<>();
  private final SortedMap<String, String> counted = new TreeMap<>();
  private final Set<String> wanted = new TreeSet<>();
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

  /** English texts for one by those for many, where something is counted. */
  SortedMap<String, String> counted() {
    return counted;
  }

  /** Every English text that a language has a text or two forms for. */
  Set<String> keys() {
    Set<String> keys = new TreeSet<>(texts);
    keys.addAll(wanted);
    keys.addAll(counted.keySet());
    return keys;
  }

  /** Literals that look like a text but are not said, each after its file and line. */
  List<String> unsaid() {
    return unsaid;
  }

  private void read(CompilationUnitTree unit, SourcePositions positions) {
    Path path = Path.of(unit.getSourceFile().getName());
    String file = path.getFileName().toString();
    boolean inWindow = path.toString().replace('\\', '/').contains("/desktop/");
    if (PASS_ON.contains(file)) {
      return;
    }
    new TreeScanner<Void, Void>() {
      private boolean inEnum;

      @Override
      public Void visitClass(ClassTree type, Void nothing) {
        boolean outer = inEnum;
        inEnum = type.getKind() == Tree.Kind.ENUM;
        super.visitClass(type, null);
        inEnum = outer;
        return null;
      }

      // The words of an enum are said when they are asked for; what is wanted of a text stands in a constant of that name.
      @Override
      public Void visitVariable(VariableTree variable, Void nothing) {
        if (variable.getName().toString().startsWith("WANTED")) {
          text(variable.getInitializer()).ifPresent(wanted::add);
          return null;
        }
        if (inWindow && inEnum && variable.getInitializer() instanceof NewClassTree constant && constant.getIdentifier().toString().equals(variable.getType().toString())) {
          constant.getArguments().forEach(argument -> text(argument).filter(TextsInCode::looksLikeAText).ifPresent(texts::add));
          constant.getArguments().stream().filter(argument -> text(argument).isEmpty()).forEach(argument -> scan(argument, null));
          return null;
        }
        return super.visitVariable(variable, null);
      }

      @Override
      public Void visitMethodInvocation(MethodInvocationTree call, Void nothing) {
        String method = call.getMethodSelect().toString();
        if (!SAYS.contains(method)) {
          return super.visitMethodInvocation(call, null);
        }
        int texts = say(method, call.getArguments(), file + ":" + line(call));
        call.getArguments().stream().skip(texts).forEach(value -> scan(value, null));
        return null;
      }

      @Override
      public Void visitNewClass(NewClassTree made, Void nothing) {
        String type = made.getIdentifier().toString();
        if (type.equals("Unreadable") && made.getArguments().size() == 2) {
          text(made.getArguments().get(1)).ifPresent(wanted::add);
          scan(made.getArguments().get(1) instanceof LiteralTree ? null : made.getArguments().get(1), null);
          return null;
        }
        if (type.equals("Phrase.Word")) {
          text(made.getArguments().getFirst()).ifPresent(texts::add);
        }
        return FAULTS_OF_OUR_OWN.contains(type) ? null : super.visitNewClass(made, null);
      }

      @Override
      public Void visitAnnotation(AnnotationTree annotation, Void nothing) {
        return null;
      }

      @Override
      public Void visitLiteral(LiteralTree literal, Void nothing) {
        if (inWindow && literal.getValue() instanceof String text && looksLikeAText(text)) {
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
      case "Say.text", "Phrase.of" -> {
        texts.add(constant(arguments.getFirst(), where));
        yield 1;
      }
      case "Say.meaning" -> {
        texts.add(constant(arguments.get(1), where) + " (" + constant(arguments.getFirst(), where) + ")");
        yield 2;
      }
      case "Say.count", "Phrase.count" -> {
        String one = constant(arguments.get(1), where);
        String former = counted.put(constant(arguments.get(2), where), one);
        if (former != null && !former.equals(one)) {
          throw new AssertionError(where + " says \"" + one + "\" of one thing where elsewhere it is \"" + former + "\" with the same text for many");
        }
        yield 3;
      }
      case "NotDone.because" -> {
        text(arguments.getFirst()).ifPresent(texts::add);
        yield arguments.getFirst() instanceof LiteralTree || text(arguments.getFirst()).isPresent() ? 1 : 0;
      }
      default -> 0;
    };
  }

  private static String constant(ExpressionTree tree, String where) {
    return text(tree).orElseThrow(() -> new AssertionError(where + " says " + tree + ", wanted a text that stands there as it is"));
  }

  private static boolean looksLikeAText(String text) {
    return LOOKS_LIKE_A_TEXT.matcher(text).matches();
  }

  private static Optional<String> text(@Nullable ExpressionTree tree) {
    return switch (tree) {
      case null -> Optional.empty();
      case LiteralTree literal when literal.getValue() instanceof String text -> Optional.of(text);
      case BinaryTree sum when sum.getKind() == Tree.Kind.PLUS -> text(sum.getLeftOperand()).flatMap(left -> text(sum.getRightOperand()).map(left::concat));
      default -> Optional.empty();
    };
  }

  /** Prints what is said and unsaid: {@code texts}, {@code counted}, {@code keys} or {@code unsaid} of a folder. */
  public static void main(String[] arguments) throws IOException {
    TextsInCode found = under(Path.of(arguments[1]));
    switch (arguments[0]) {
      case "texts" -> found.texts().forEach(System.out::println);
      case "counted" -> found.counted().forEach((many, one) -> System.out.println(one + "|" + many));
      case "keys" -> found.keys().forEach(System.out::println);
      default -> found.unsaid().forEach(System.out::println);
    }
  }
}
