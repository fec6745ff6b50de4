/**
 * Options that several commands share, so that one thing has one name everywhere. A command takes
 * them in as a mixin; start with {@link org.undercap.cli.option.OutputOptions}.
 */
package org.undercap.cli.option;
