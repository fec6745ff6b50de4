/**
 * Helpers shared by the packages of the library; not part of its public interface. Start with
 * {@link org.undercap.internal.CsvResource}, which reads the tables that ship with the library, and
 * {@link org.undercap.internal.Catalogue}, which looks their entries up by name.
 */
package org.undercap.internal;
