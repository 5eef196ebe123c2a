import type { Measured } from './measure'

/** A Markdown table of medians and their ratio to the peer in the same run. */
export function benchTable(measured: readonly Measured[]): string {
  const rows = measured.map(({ what, ms, peer, peerMs, runs }) => {
    return `| ${what} | ${milliseconds(ms)} | ${peer} | ${milliseconds(peerMs)} | ${(ms / peerMs).toFixed(2)}× | ${runs} |`
  })
  return ['| what | median | against | median | ratio | runs |', '|---|---|---|---|---|---|', ...rows].join(
    '\n',
  )
}

function milliseconds(ms: number): string {
  return ms < 10 ? `${ms.toFixed(1)} ms` : `${Math.round(ms)} ms`
}
