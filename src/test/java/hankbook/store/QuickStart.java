package hankbook.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.stream.Stream;

/** Starts one program many times in half the time, from an archive of the classes it loads. Such an archive takes jars only, so folders are packed first. */
final class QuickStart {
  private final Class<?> main;
  private final String classPath;
  private final Path archive;

  /**
   * @param folder for the archive and what it is made of
   * @param training what to run once so that all classes are loaded; it must end by itself
   */
  QuickStart(Path folder, Class<?> main, String... training) throws IOException, InterruptedException {
    this.main = main;
    this.classPath = jarsOnly(folder);
    this.archive = folder.resolve("classes.jsa");
    Process trained = OtherProgram.start(List.of("-Xlog:disable", "-XX:ArchiveClassesAtExit=" + archive), classPath, main, training);
    try (BufferedReader out = trained.inputReader(); BufferedReader err = trained.errorReader()) {
      assertThat(err.lines()).isEmpty();
      assertThat(out.lines()).isNotEmpty();
    }
    assertThat(trained.waitFor()).isZero();
  }

  Process start(String... args) throws IOException {
    return OtherProgram.start(List.of("-XX:SharedArchiveFile=" + archive), classPath, main, args);
  }

  private static String jarsOnly(Path folder) throws IOException {
    String all = System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
    List<String> jars = new ArrayList<>();
    for (String part : all.split(File.pathSeparator, -1)) {
      Path path = Path.of(part);
      jars.add(Files.isDirectory(path) ? packed(path, folder.resolve(jars.size() + ".jar")) : part);
    }
    return String.join(File.pathSeparator, jars);
  }

  private static String packed(Path classes, Path jar) throws IOException {
    try (OutputStream out = Files.newOutputStream(jar); JarOutputStream entries = new JarOutputStream(out); Stream<Path> files = Files.walk(classes)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        entries.putNextEntry(new JarEntry(classes.relativize(file).toString().replace(File.separatorChar, '/')));
        Files.copy(file, entries);
      }
    }
    return jar.toString();
  }
}
