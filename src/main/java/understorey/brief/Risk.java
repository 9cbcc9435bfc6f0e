package understorey.brief;

import understorey.advice.Advice;

/**
 * Something that could spoil a day.
 *
 * @param weight its chance times the share of the day's pictures that it costs, 0 to 1; above 1 for a danger
 * @param reason with its figures
 */
record Risk(double weight, Advice reason) {
}
