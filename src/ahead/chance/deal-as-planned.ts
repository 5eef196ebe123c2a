import { balance } from '#ahead/chance/balance'
import type { Came, Dealer } from '#ahead/chance/dealer'
import type { Desk } from '#ahead/chance/desk'
import { type EvenShare, shareEvenly } from '#ahead/chance/even-share'
import { leanTowardsPlan } from '#ahead/chance/lean-towards-plan'
import type { PracticeToDeal } from '#ahead/chance/practice-to-deal'
import { columnCount, type Standing } from '#ahead/chance/standing'
import { addSeat } from '#ahead/seat-moves'
import { seatCount } from '#ahead/seat-places'

/**
 * Deals as the plan means it, among those who came. First everyone gets what the plan means for it. Then who is behind
 * the plan gets more and who is ahead of it less (`leanTowardsPlan`), as far as it is gentle in this one practice, or as
 * far as the plan itself goes in it, and nobody sits longer than the practice lasts; what some get more, others get less.
 * Where everyone comes for certain nobody is ever off the plan, and the plan itself comes out. Our own rule; no source.
 */
export function dealerAsPlanned(playerCount: number): Dealer {
  const even: EvenShare = { able: new Float64Array(seatCount), others: new Float64Array(seatCount) }
  const list = (length = playerCount) => new Float64Array(length)
  const desk: Desk = {
    least: list(playerCount * seatCount),
    most: list(playerCount * seatCount),
    lean: list(playerCount * seatCount),
    room: list(),
    wish: list(),
    low: list(),
    high: list(),
  }
  return (practice, came, standing) => {
    const { here, count } = came
    if (count === 0) return
    shareEvenly(practice, came, even)
    setLimits(practice, { came, even, desk })
    leanAsMeant(practice, { came, desk })
    for (let at = 0; at < count; at++)
      for (const seat of practice.columns)
        addSeat(standing.gap, seat, {
          first: (here[at] ?? 0) * columnCount,
          seconds: desk.lean[at * seatCount + seat] ?? 0,
        })
    leanTowardsPlan(practice, { came, desk, gap: standing.gap })
    for (let at = 0; at < count; at++)
      addPlayed(practice, standing, {
        player: here[at] ?? 0,
        seconds: practice.liveSeconds - (desk.room[at] ?? 0),
      })
  }
}

/** Fills `least`, `most` and the room that even shares leave. */
function setLimits(
  practice: PracticeToDeal,
  {
    came: { here, count },
    even,
    desk,
  }: { readonly came: Came; readonly even: EvenShare; readonly desk: Desk },
): void {
  const { keeps, columns, gentle, lean, liveSeconds } = practice
  for (let at = 0; at < count; at++) {
    const player = here[at] ?? 0
    const shares = keeps[player] ? even.able : even.others
    let room = liveSeconds
    for (const seat of columns) {
      const share = shares[seat] ?? 0
      const meant = lean[player * seatCount + seat] ?? 0
      room -= share
      desk.least[at * seatCount + seat] = Math.max(-share, Math.min((gentle.least - 1) * share, meant))
      desk.most[at * seatCount + seat] = share > 0 ? Math.max((gentle.most - 1) * share, meant) : 0
    }
    desk.room[at] = Math.max(0, room)
  }
}

/** Fills `lean` with what the plan means, made to add up among those who came, and takes it out of the room. */
function leanAsMeant(
  practice: PracticeToDeal,
  { came: { here, count }, desk }: { readonly came: Came; readonly desk: Desk },
): void {
  for (const seat of practice.columns) {
    for (let at = 0; at < count; at++) {
      desk.wish[at] = practice.lean[(here[at] ?? 0) * seatCount + seat] ?? 0
      desk.low[at] = desk.least[at * seatCount + seat] ?? 0
      desk.high[at] = desk.most[at * seatCount + seat] ?? 0
    }
    balance({ count, ...desk })
    for (let at = 0; at < count; at++) desk.lean[at * seatCount + seat] = desk.wish[at] ?? 0
  }
  // Where somebody would sit longer than the practice lasts, all leans are made smaller alike.
  const moreOf = (at: number) => {
    let more = 0
    for (const seat of practice.columns) more += desk.lean[at * seatCount + seat] ?? 0
    return more
  }
  let part = 1
  for (let at = 0; at < count; at++) {
    const [more, room] = [moreOf(at), desk.room[at] ?? 0]
    if (more > room + hair) part = Math.min(part, room / more)
  }
  for (let at = 0; at < count; at++) {
    desk.room[at] = Math.max(0, (desk.room[at] ?? 0) - part * moreOf(at))
    for (const seat of practice.columns)
      desk.lean[at * seatCount + seat] = part * (desk.lean[at * seatCount + seat] ?? 0)
  }
}

/** Seconds that sums may be off by. */
const hair = 1e-6

function addPlayed(
  { themes }: PracticeToDeal,
  standing: Standing,
  { player, seconds }: { readonly player: number; readonly seconds: number },
): void {
  standing.played[player] = (standing.played[player] ?? 0) + seconds
  const first = player * (standing.themes.length / standing.played.length)
  for (const theme of themes) standing.themes[first + theme] = (standing.themes[first + theme] ?? 0) + seconds
}
