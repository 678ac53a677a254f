package io.ovenmark.web;

/** A request that does not get past the door; nothing about the notebook. */
final class Denied extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final int status;
  private final String reason;
  private final String hint;

  Denied(int status, String reason, String sentence, String hint) {
    super(sentence, null, false, false);
    this.status = status;
    this.reason = reason;
    this.hint = hint;
  }

  int status() {
    return status;
  }

  String reason() {
    return reason;
  }

  String hint() {
    return hint;
  }
}
