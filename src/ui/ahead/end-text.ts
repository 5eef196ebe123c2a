import type { Seconds } from '#common/time'
import { differenceText } from '#ui/figures/difference'
import { wholeMinutes } from '#ui/figures/minutes'

/** "12 min less", or "even": beside an arrow "the same" would read as unchanged. */
export function endText(gap: Seconds): string {
  const minutes = wholeMinutes(gap)
  return minutes === 0 ? 'even' : differenceText(minutes)
}

/** "12 min less → even"; said once where nothing moves. */
export function endsText({ from, to }: { readonly from: Seconds; readonly to: Seconds }): string {
  const [was, is] = [endText(from), endText(to)]
  return was === is ? is : `${was} → ${is}`
}
