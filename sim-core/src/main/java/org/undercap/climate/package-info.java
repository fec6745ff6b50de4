/**
 * Season and place: temperature, laying and drone brood through the year. Start with {@link
 * org.undercap.climate.Climate}; {@link org.undercap.climate.ClimateCatalogue} has those that ship
 * with the library.
 */
package org.undercap.climate;
