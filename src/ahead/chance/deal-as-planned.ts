import { balance } from '#ahead/chance/balance'
import { type EvenShare, shareEvenly } from '#ahead/chance/even-share'
import { type PlannedPractice, restPlace, seatCount, seatPlaces } from '#ahead/chance/planned-practice'
import { columnCount, type Standing } from '#ahead/chance/standing'

/** Who came: the first `count` places of `here` name players. */
export type Came = { readonly here: Int32Array; readonly count: number }

/** Plays a practice: adds to a standing what those who came got in it. */
export type Dealer = (practice: PlannedPractice, came: Came, standing: Standing) => void

/** Rounds over all seat columns in which what is off the plan is made good: a third changes hardly anything. */
const rounds = 2
/** What lies between the plan and an even share counts so much of what is off the plan: those who can best spare give first. */
const insideWeight = 0.25
/** Seconds off the plan that nobody makes good. */
const hair = 1e-6

/**
 * Deals as the plan means it, among those who came. First everyone gets what the plan means for it. Then, column by
 * column, who is behind the plan gets more and who is ahead of it less, as far as it is gentle in this one practice (or as
 * far as the plan itself goes in it) and nobody sits longer than the practice lasts; what some get more, others get less.
 * Who stands between the plan and an even share is not off the plan, and gives the sooner the nearer to even it is. Where
 * everyone comes for certain nobody is ever off it, and the plan itself comes out. Our own rule; no source.
 */
export function dealerAsPlanned(playerCount: number): Dealer {
  const even: EvenShare = { able: new Float64Array(seatCount), others: new Float64Array(seatCount) }
  const list = () => new Float64Array(playerCount)
  const desk = { wish: list(), low: list(), high: list() }
  /** By place among those who came and seat column: above the even share. */
  const lean = new Float64Array(playerCount * seatCount)
  const room = list()

  return (practice, came, standing) => {
    const { here, count } = came
    if (count === 0) return
    shareEvenly(practice, came, even)
    const evenOf = (at: number) => (practice.keeps[here[at] ?? 0] ? even.able : even.others)
    const limit = (seat: number, isRoomCounted: boolean) => {
      const { least, most } = practice.gentle
      for (let at = 0; at < count; at++) {
        const share = evenOf(at)[seat] ?? 0
        const meant = practice.lean[(here[at] ?? 0) * seatCount + seat] ?? 0
        desk.low[at] = Math.max(-share, Math.min((least - 1) * share, meant))
        const high = share > 0 ? Math.max((most - 1) * share, meant) : 0
        desk.high[at] = isRoomCounted
          ? Math.min(high, (lean[at * seatCount + seat] ?? 0) + (room[at] ?? 0))
          : high
      }
    }
    for (const seat of practice.columns) {
      limit(seat, false)
      for (let at = 0; at < count; at++)
        desk.wish[at] = practice.lean[(here[at] ?? 0) * seatCount + seat] ?? 0
      balance({ count, ...desk })
      for (let at = 0; at < count; at++) lean[at * seatCount + seat] = desk.wish[at] ?? 0
    }
    const scale = shrinkToFit(practice, count, { evenOf, lean, room })
    for (let at = 0; at < count; at++)
      for (const seat of practice.columns) {
        const own = (lean[at * seatCount + seat] ?? 0) * scale
        lean[at * seatCount + seat] = own
        addLean(standing.gap, { player: here[at] ?? 0, seat, seconds: own })
      }
    for (let round = 0; round < rounds; round++)
      for (const seat of practice.columns) {
        if (!wishCloser({ practice, came, standing, seat, lean, wish: desk.wish })) continue
        limit(seat, true)
        balance({ count, ...desk })
        for (let at = 0; at < count; at++) {
          const change = (desk.wish[at] ?? 0) - (lean[at * seatCount + seat] ?? 0)
          lean[at * seatCount + seat] = desk.wish[at] ?? 0
          room[at] = Math.max(0, (room[at] ?? 0) - change)
          addLean(standing.gap, { player: here[at] ?? 0, seat, seconds: change })
        }
      }
    for (let at = 0; at < count; at++)
      addPlayed(practice, standing, {
        player: here[at] ?? 0,
        seconds: practice.liveSeconds - (room[at] ?? 0),
      })
  }
}

/**
 * The part of all leans, 1 at most, with which nobody sits longer than the practice lasts; `room` becomes the seconds
 * that each then has left.
 */
export function shrinkToFit(
  { liveSeconds, columns }: PlannedPractice,
  count: number,
  {
    evenOf,
    lean,
    room,
  }: {
    readonly evenOf: (at: number) => Float64Array
    readonly lean: Float64Array
    readonly room: Float64Array
  },
): number {
  let scale = 1
  for (let at = 0; at < count; at++) {
    let [free, more] = [liveSeconds, 0]
    for (const seat of columns) {
      free -= evenOf(at)[seat] ?? 0
      more += lean[at * seatCount + seat] ?? 0
    }
    room[at] = free
    if (more > free + hair) scale = Math.min(scale, Math.max(0, free) / more)
  }
  for (let at = 0; at < count; at++) {
    let own = room[at] ?? 0
    for (const seat of columns) own -= scale * (lean[at * seatCount + seat] ?? 0)
    room[at] = Math.max(0, own)
  }
  return scale
}

/** Fills the wishes for one seat column: what would bring everyone to the plan; whether there is anything to wish. */
function wishCloser({
  practice: { meant },
  came: { here, count },
  standing: { gap },
  seat,
  lean,
  wish,
}: {
  readonly practice: PlannedPractice
  readonly came: Came
  readonly standing: Standing
  readonly seat: number
  readonly lean: Float64Array
  readonly wish: Float64Array
}): boolean {
  const { role = 0, situation = -1 } = seatPlaces[seat] ?? {}
  let isAny = false
  const pull = (player: number, place: number) => {
    const own = gap[player * columnCount + place] ?? 0
    const off = offPlan(own, meant[player * columnCount + place] ?? 0)
    if (Math.abs(off) > hair) isAny = true
    return off + insideWeight * (own - off)
  }
  for (let at = 0; at < count; at++) {
    const player = here[at] ?? 0
    const own = pull(player, role) - pull(player, restPlace)
    const step = situation < 0 ? own / 2 : (own + pull(player, situation)) / 3
    wish[at] = (lean[at * seatCount + seat] ?? 0) - step
  }
  return isAny
}

/** How far a gap is from what lies between an even share and what the plan means. */
function offPlan(gap: number, meant: number): number {
  if (meant < 0) return gap < meant ? gap - meant : Math.max(0, gap)
  return gap > meant ? gap - meant : Math.min(0, gap)
}

function addLean(
  gap: Float64Array,
  { player, seat, seconds }: { readonly player: number; readonly seat: number; readonly seconds: number },
): void {
  const { role = 0, situation = -1 } = seatPlaces[seat] ?? {}
  const first = player * columnCount
  gap[first + role] = (gap[first + role] ?? 0) + seconds
  if (situation >= 0) gap[first + situation] = (gap[first + situation] ?? 0) + seconds
  gap[first + restPlace] = (gap[first + restPlace] ?? 0) - seconds
}

function addPlayed(
  { themes }: PlannedPractice,
  standing: Standing,
  { player, seconds }: { readonly player: number; readonly seconds: number },
): void {
  standing.played[player] = (standing.played[player] ?? 0) + seconds
  const first = player * (standing.themes.length / standing.played.length)
  for (const theme of themes) standing.themes[first + theme] = (standing.themes[first + theme] ?? 0) + seconds
}
