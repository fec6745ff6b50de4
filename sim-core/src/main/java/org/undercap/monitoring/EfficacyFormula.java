package org.undercap.monitoring;

/** How the efficacy of a treatment is reckoned from counts. */
public enum EfficacyFormula {
  /**
   * Simple reduction in treated colonies: {@code 1 - after / before}. What season and arrivals did
   * in the meantime counts as the treatment's doing.
   */
  REDUCTION("reduction from before to after", "arithmetic"),
  /**
   * Abbott's formula, against untreated colonies after the treatment: {@code 1 - treated /
   * untreated}. Both groups must have been alike before.
   */
  ABBOTT("treated against untreated colonies, after", "abbott-1925"),
  /**
   * Henderson and Tilton's formula, which corrects the reduction by what untreated colonies did:
   * {@code 1 - (treated after / treated before) (untreated before / untreated after)}.
   */
  HENDERSON_TILTON("reduction against that of untreated colonies", "henderson-tilton-1955"),
  /**
   * Critical test: {@code killed / (killed + killed by a follow-up treatment that kills the rest)}.
   */
  CRITICAL_TEST("killed out of all, by a follow-up treatment", "ema-2008");

  private final String words;
  private final String sourceKey;

  EfficacyFormula(String words, String sourceKey) {
    this.words = words;
    this.sourceKey = sourceKey;
  }

  /**
   * What it compares, in a few words.
   *
   * @return words for tables
   */
  public String words() {
    return words;
  }

  /**
   * Where the formula comes from.
   *
   * @return key of the source in the bibliography
   */
  public String sourceKey() {
    return sourceKey;
  }
}
