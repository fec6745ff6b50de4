package org.undercap.cli.fuzz;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.MethodSource;
import org.undercap.cli.report.ManifestFile;

/** Hunts for manifests that the reader stumbles over. */
class ManifestFuzzTest {

  static Stream<byte[]> seeds() {
    return Stream.of(Hunt.bytes(Path.of("..", "reports", "saltmere-garth", "manifest.json")));
  }

  @MethodSource("seeds")
  @FuzzTest
  void manifest(byte[] bytes) {
    Hunt.program("manifest.json", bytes, ManifestFile::read);
  }
}
