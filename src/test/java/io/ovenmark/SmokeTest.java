package io.ovenmark;
import static org.assertj.core.api.Assertions.assertThat;
import org.junit.jupiter.api.Test;
class SmokeTest { @Test void ok() { assertThat(1).isEqualTo(1); } }
