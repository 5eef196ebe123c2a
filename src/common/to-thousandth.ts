/**
 * Seconds to a thousandth. A sum's last digits depend on the order in which it was added up, which a database does not
 * keep from one reading to the next; what is compared or kept must not.
 */
export function toThousandth(value: number): number {
  return Math.round(value * 1000) / 1000 + 0
}
