/**
 * Resistance of the mites over years, as a study: start with {@link
 * org.undercap.resistance.ResistanceStudy}.
 */
package org.undercap.resistance;
