package io.ovenmark.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.ovenmark.cli.LanAddresses.Connection;
import io.ovenmark.notebook.Refusal;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Addresses are of private networks (RFC 1918) or for documents (RFC 5737, RFC 3849). */
class LanAddressesTest {
  private static final Connection LOOPBACK = of("lo", 1, false, "127.0.0.1", "::1");
  private static final Connection KITCHEN = of("wlan0", 4, true, "fe80::1", "192.168.1.20");

  private static Connection of(String name, int index, boolean usable, String... addresses) {
    return new Connection(
        name, index, usable, Stream.of(addresses).map(LanAddressesTest::address).toList());
  }

  private static InetAddress address(String text) {
    try {
      return InetAddress.getByName(text);
    } catch (UnknownHostException e) {
      throw new IllegalStateException(e);
    }
  }

  @Test
  void theFirstPrivateAddressOfAUsableConnectionIsChosen() {
    Connection cable = of("eth0", 2, true, "10.1.2.3");
    assertThat(LanAddresses.choose(List.of(LOOPBACK, KITCHEN)).getHostAddress())
        .isEqualTo("192.168.1.20");
    assertThat(LanAddresses.choose(List.of(KITCHEN, LOOPBACK, cable)).getHostAddress())
        .isEqualTo("10.1.2.3");
  }

  @Test
  void bridgesTunnelsPublicAddressesAndConnectionsThatAreDownAreLeftOut() {
    List<Connection> connections =
        List.of(
            LOOPBACK,
            of("docker0", 2, true, "172.17.0.1"),
            of("br-1a2b", 3, true, "172.18.0.1"),
            of("tun0", 5, true, "10.8.0.2"),
            of("eth1", 6, true, "203.0.113.5", "2001:db8::5"),
            of("eth2", 7, false, "192.168.7.7"));
    assertThatThrownBy(() -> LanAddresses.choose(connections))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("in no network that a phone could share");
    assertThat(
            LanAddresses.choose(Stream.concat(connections.stream(), Stream.of(KITCHEN)).toList()))
        .isEqualTo(address("192.168.1.20"));
  }

  @Test
  void anAddressThatIsNamedMustBeOfThisMachine() {
    List<Connection> connections = List.of(LOOPBACK, KITCHEN);
    assertThat(LanAddresses.named("192.168.1.20", connections)).isEqualTo(address("192.168.1.20"));
    assertThatThrownBy(() -> LanAddresses.named("192.168.1.21", connections))
        .isInstanceOfSatisfying(
            Refusal.class,
            refusal -> assertThat(refusal.hint()).isEqualTo("It has 192.168.1.20."));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "127.0.0.1", "0.0.0.0", "255.255.255.255", "::1", "localhost", "192.168.1", "1", "",
        "192.168.1.20.", "192.168.1.020x", "saltmarsh.example"
      })
  void neitherThisMachineAloneNorEverythingNorANameIsTaken(String text) {
    assertThatThrownBy(() -> LanAddresses.named(text, List.of(LOOPBACK, KITCHEN)))
        .isInstanceOf(Refusal.class);
  }

  @Test
  void aMachineWithoutNetworkSaysSo() {
    assertThatThrownBy(() -> LanAddresses.named("192.168.1.20", List.of(LOOPBACK)))
        .isInstanceOfSatisfying(
            Refusal.class,
            refusal -> assertThat(refusal.hint()).isEqualTo("It is in no network at present."));
  }

  @Test
  void theCommandRefusesAnAddressOfAnotherMachineBeforeItOpensAnything(@TempDir Path folder) {
    Bench.Result result = new Bench(folder).run("view", "--lan=203.0.113.9");
    assertThat(result.code()).isEqualTo(1);
    assertThat(result.err()).contains("has no address 203.0.113.9");
    assertThat(result.out()).isEmpty();
  }

  @Test
  void aFolderHasAPortOfItsOwn() {
    int port = ViewCommand.usualPort(Path.of("/home/ines/bench"));
    assertThat(port).isEqualTo(ViewCommand.usualPort(Path.of("/home/ines/bench")));
    assertThat(port).isNotEqualTo(ViewCommand.usualPort(Path.of("/home/ines/other")));
    for (int i = 0; i < 1000; i++) {
      assertThat(ViewCommand.usualPort(Path.of("bench-" + i))).isBetween(20_000, 31_999);
    }
  }
}
