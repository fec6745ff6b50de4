/**
 * From a comparison to advice that a keeper can act on.
 *
 * <p>Start with {@link org.undercap.advice.Advice}: which plan, how sure, what rules plans out,
 * what would change the advice, whether another wash is worth it, and what to count afterwards.
 * {@link org.undercap.advice.Refusal} is what comes instead where the model was not tested.
 */
package org.undercap.advice;
