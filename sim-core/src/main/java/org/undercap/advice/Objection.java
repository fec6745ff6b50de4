package org.undercap.advice;

import java.util.Optional;

/**
 * What rules a plan out.
 *
 * @param words the reason, without a full stop
 * @param remedy what the keeper can change so that it no longer holds, an order without a full
 *     stop; empty if the keeper cannot change it
 */
public record Objection(String words, Optional<String> remedy) {
  static Objection lasting(String words) {
    return new Objection(words, Optional.empty());
  }

  static Objection curable(String words, String remedy) {
    return new Objection(words, Optional.of(remedy));
  }
}
