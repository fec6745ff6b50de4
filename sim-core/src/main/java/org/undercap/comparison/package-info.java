/**
 * What plans are judged by. {@link org.undercap.comparison.WinterRisk} is the loss of colonies that
 * surveys found, shown apart from the model.
 */
package org.undercap.comparison;
