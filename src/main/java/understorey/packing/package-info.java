/**
 * What to carry and what to leave at home, and the cautions that fit the day. Weights are grams, cards
 * gigabytes.
 */
package understorey.packing;
