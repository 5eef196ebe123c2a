const everyMs = 1000

/** Says what is being done once a second at most, and what begins anew at once, with the seconds gone so far. */
export function startProgress(say: (line: string) => void): {
  readonly now: (doing: string) => void
  readonly sometimes: (doing: string) => void
} {
  const began = Date.now()
  let said = began
  const now = (doing: string) => {
    said = Date.now()
    say(`${((said - began) / 1000).toFixed(1)} s  ${doing}`)
  }
  return { now, sometimes: (doing) => void (Date.now() - said >= everyMs && now(doing)) }
}
