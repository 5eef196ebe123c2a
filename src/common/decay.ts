/**
 * About e to the power of −x, for x from 0 up: 1 ÷ (1 + x/1024)^1024. Sums, products and one division alone, which every
 * computer works out to the same bits; `Math.exp` may differ from browser to browser, and a search by chance with it.
 */
export function decay(x: number): number {
  let power = 1 + x / 1024
  for (let doubling = 0; doubling < 10; doubling += 1) power *= power
  return 1 / power
}
