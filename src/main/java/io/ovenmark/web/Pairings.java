package io.ovenmark.web;

import io.ovenmark.notebook.Refusal;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The devices that may use the viewer from the network, and the code by which one more gets in. A
 * code works once, for a few minutes, and is void after a few wrong tries. Whoever gives it gets a
 * random key of 256 bits, of which only the digest is kept here. Nothing is written to disk: when
 * the viewer ends, so do all pairings.
 */
final class Pairings {
  /** How long a code works. */
  static final Duration CODE_WORKS = Duration.ofMinutes(10);

  /** How long a device stays paired. */
  static final Duration PAIRING_LASTS = Duration.ofHours(12);

  /** Wrong tries after which a code is void. */
  static final int TRIES = 5;

  /** Devices at one time. */
  static final int MOST_DEVICES = 16;

  /** Letters and digits that are not taken for one another: those of Crockford's Base32. */
  private static final String ALPHABET = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";

  private static final int CODE_LENGTH = 8;
  private static final int KEY_BYTES = 32;
  private static final int ID_BYTES = 9;
  private static final int LONGEST_NAME = 60;

  /**
   * A code that works at present.
   *
   * @param text eight letters and digits in two groups
   * @param until when it ceases to work
   */
  record Code(String text, Instant until) {}

  /**
   * A paired device.
   *
   * @param id names it on the page; opens nothing
   * @param name of its person; may be empty
   * @param since when it was paired
   * @param until when the pairing ends
   */
  record Device(String id, String name, Instant since, Instant until) {}

  /**
   * What a device gets when it is paired.
   *
   * @param key what it must show with every request
   * @param device how it is known
   */
  record Paired(String key, Device device) {}

  private record Known(byte[] digest, Device device) {}

  private final SecureRandom random = new SecureRandom();
  private final Clock clock;
  private final List<Known> devices = new ArrayList<>();
  private Code code;
  private int wrong;
  private boolean voided;

  Pairings(Clock clock) {
    this.clock = clock;
  }

  /** A new code; the one before works no more. */
  synchronized Code newCode() {
    StringBuilder text = new StringBuilder();
    for (int at = 0; at < CODE_LENGTH; at++) {
      text.append(at == CODE_LENGTH / 2 ? "-" : "");
      text.append(ALPHABET.charAt(random.nextInt(ALPHABET.length())));
    }
    code = new Code(text.toString(), clock.instant().plus(CODE_WORKS));
    wrong = 0;
    voided = false;
    return code;
  }

  /** The code that works at present. */
  synchronized Optional<Code> code() {
    if (code != null && !clock.instant().isBefore(code.until())) {
      code = null;
    }
    return Optional.ofNullable(code);
  }

  /** Whether the last code was given up because of wrong tries. */
  synchronized boolean isVoid() {
    return voided;
  }

  /**
   * Pairs a device, whereupon the code works no more.
   *
   * @param given the code as typed: small letters, other groups, and O for 0 are taken as meant
   * @param name of the person, blank for none
   * @return its key
   * @throws Refusal when no code works at present, or it is another, or the name cannot be
   */
  synchronized Paired pair(String given, String name) {
    String shown = name.strip();
    if (shown.length() > LONGEST_NAME || !shown.matches("[^<>\\p{Cntrl}\\p{Cf}]*")) {
      throw new Refusal(
          Refusal.Reason.INVALID,
          "name",
          "The name is longer than " + LONGEST_NAME + " letters or holds signs it cannot.",
          "Give the name by which you are known at the bench.");
    }
    Code open = code().orElseThrow(this::noCode);
    if (!MessageDigest.isEqual(digest(bare(given)), digest(bare(open.text())))) {
      throw wrongCode();
    }
    if (devices().size() >= MOST_DEVICES) {
      throw new Refusal(
          Refusal.Reason.CONFLICT,
          "code",
          "There are " + MOST_DEVICES + " devices paired already.",
          "End the pairing of one at the desk, on the page “Phone”.");
    }
    code = null;
    byte[] key = new byte[KEY_BYTES];
    random.nextBytes(key);
    byte[] id = new byte[ID_BYTES];
    random.nextBytes(id);
    Instant now = clock.instant();
    String text = Base64.getUrlEncoder().withoutPadding().encodeToString(key);
    Device device =
        new Device(
            Base64.getUrlEncoder().withoutPadding().encodeToString(id),
            shown,
            now,
            now.plus(PAIRING_LASTS));
    devices.add(new Known(digest(text), device));
    return new Paired(text, device);
  }

  /**
   * The device that shows a key.
   *
   * @param key what it shows
   * @return empty when there is none, or its time is over
   */
  synchronized Optional<Device> of(String key) {
    byte[] shown = digest(key);
    Optional<Device> found = Optional.empty();
    forgetExpired();
    for (Known each : devices) {
      if (MessageDigest.isEqual(each.digest(), shown)) {
        found = Optional.of(each.device());
      }
    }
    return found;
  }

  /** All that are paired at present, in the order in which they came. */
  synchronized List<Device> devices() {
    forgetExpired();
    return devices.stream().map(Known::device).toList();
  }

  /**
   * Ends a pairing; nothing happens when there is no such device.
   *
   * @param id of the device
   */
  synchronized void end(String id) {
    devices.removeIf(each -> each.device().id().equals(id));
  }

  private void forgetExpired() {
    Instant now = clock.instant();
    devices.removeIf(each -> !now.isBefore(each.device().until()));
  }

  private Refusal noCode() {
    return new Refusal(
        Refusal.Reason.INVALID,
        "code",
        voided
            ? "Too many wrong codes were given, so the code works no more."
            : "No code works at present: each works once, for "
                + CODE_WORKS.toMinutes()
                + " minutes.",
        "Make a new one at the desk, on the page “Phone”.");
  }

  private Refusal wrongCode() {
    wrong++;
    if (wrong >= TRIES) {
      code = null;
      voided = true;
      return noCode();
    }
    return new Refusal(
        Refusal.Reason.INVALID,
        "code",
        "That is not the code.",
        "Type it as it stands at the desk; tries left: " + (TRIES - wrong) + ".");
  }

  private static String bare(String text) {
    return text.toUpperCase(Locale.ROOT)
        .replaceAll("[\\s-]", "")
        .replace('O', '0')
        .replaceAll("[IL]", "1");
  }

  private static byte[] digest(String text) {
    try {
      return MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
