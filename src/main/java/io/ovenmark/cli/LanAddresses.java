package io.ovenmark.cli;

import io.ovenmark.notebook.Refusal;
import java.net.Inet4Address;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Under which address a phone in the same kitchen finds this machine. */
final class LanAddresses {
  private static final Pattern IPV4 =
      Pattern.compile("(?:(?:25[0-5]|2[0-4]\\d|1?\\d?\\d)(?:\\.(?!$)|$)){4}");

  /** How bridges, tunnels and the networks of virtual machines are called (common practice). */
  private static final Pattern NOT_A_KITCHEN =
      Pattern.compile("(?:docker|br-|veth|virbr|vmnet|vboxnet|tun|tap|wg|utun|ppp|zt|lxc|cni).*");

  /**
   * One connection of this machine to a network.
   *
   * @param name as the system calls it
   * @param index its place in the system's order
   * @param usable whether it is up and leads elsewhere: no loopback, no virtual one, no line to one
   *     other machine
   * @param addresses its addresses
   */
  record Connection(String name, int index, boolean usable, List<InetAddress> addresses) {}

  private LanAddresses() {}

  /** The connections of this machine. */
  static List<Connection> connections() {
    try (Stream<NetworkInterface> all = NetworkInterface.networkInterfaces()) {
      return all.map(LanAddresses::connection).toList();
    } catch (SocketException e) {
      return List.of();
    }
  }

  private static Connection connection(NetworkInterface network) {
    boolean usable;
    try {
      usable =
          network.isUp()
              && !network.isLoopback()
              && !network.isVirtual()
              && !network.isPointToPoint();
    } catch (SocketException e) {
      usable = false;
    }
    return new Connection(
        network.getName(), network.getIndex(), usable, network.inetAddresses().toList());
  }

  /**
   * Chooses: the first address for private networks (RFC 1918) of a usable connection.
   *
   * @throws Refusal when there is none
   */
  static Inet4Address choose(List<Connection> connections) {
    return connections.stream()
        .filter(each -> each.usable() && !NOT_A_KITCHEN.matcher(each.name()).matches())
        .sorted(Comparator.comparingInt(Connection::index))
        .flatMap(each -> each.addresses().stream())
        .flatMap(LanAddresses::privateIpv4)
        .findFirst()
        .orElseThrow(
            () ->
                new Refusal(
                    Refusal.Reason.INVALID,
                    "--lan",
                    "This machine is in no network that a phone could share with it.",
                    "Join the kitchen's network, or name the address: --lan=192.168.1.20"));
  }

  private static Stream<Inet4Address> privateIpv4(InetAddress address) {
    return address instanceof Inet4Address ipv4 && ipv4.isSiteLocalAddress()
        ? Stream.of(ipv4)
        : Stream.empty();
  }

  /**
   * The address that was named; must be one of this machine.
   *
   * @throws Refusal when it is not
   */
  static Inet4Address named(String text, List<Connection> connections) {
    Optional<Inet4Address> found =
        IPV4.matcher(text).matches()
            ? connections.stream()
                .filter(each -> each.usable() || !isLoopback(each))
                .flatMap(each -> each.addresses().stream())
                .filter(each -> each.getHostAddress().equals(text))
                .map(Inet4Address.class::cast)
                .findFirst()
            : Optional.empty();
    return found.orElseThrow(
        () ->
            new Refusal(
                Refusal.Reason.INVALID,
                "--lan",
                "This machine has no address " + text + " in a network.",
                own(connections)));
  }

  private static boolean isLoopback(Connection connection) {
    return connection.addresses().stream().anyMatch(InetAddress::isLoopbackAddress);
  }

  private static String own(List<Connection> connections) {
    List<String> own =
        connections.stream()
            .filter(each -> !isLoopback(each))
            .flatMap(each -> each.addresses().stream())
            .filter(Inet4Address.class::isInstance)
            .map(InetAddress::getHostAddress)
            .toList();
    return own.isEmpty()
        ? "It is in no network at present."
        : "It has " + String.join(", ", own) + ".";
  }
}
