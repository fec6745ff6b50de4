package org.undercap.cli.output;

/** The codes that the program ends with. Scripts rely on them: add codes, never change one. */
public final class ExitCodes {
  /** The command did what it was asked to do. */
  public static final int DONE = 0;

  /** Something failed that the user could not foresee. */
  public static final int UNEXPECTED = 1;

  /** The command line itself was wrong: an unknown option, a missing or malformed value. */
  public static final int USAGE = 2;

  /** A file was read and is not valid. */
  public static final int INVALID_FILE = 3;

  /** A check that the user asked for says no, or no plan can be advised. */
  public static final int CHECK_SAYS_NO = 4;

  private ExitCodes() {}
}
