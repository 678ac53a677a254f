package io.ovenmark.change;

import java.util.function.Function;

/** The same thing on three sides. */
record Three<T>(T base, T ours, T theirs) {
  <U> Three<U> map(Function<? super T, ? extends U> part) {
    return new Three<>(part.apply(base), part.apply(ours), part.apply(theirs));
  }

  T on(Choice choice) {
    return switch (choice) {
      case OURS -> ours;
      case THEIRS -> theirs;
      case BASE -> base;
    };
  }
}
