import type { AheadPractice, AheadTheme, Offer } from '#ahead/problem'
import type { AheadRequest, GroundSize, RequestedDesign, RequestedPractice } from '#ahead/request'
import { roundsFor, type SeatsOffered, seatsOfRounds } from '#ahead/seats-of-rounds'
import { themeWithAbove } from '#ahead/theme-with-above'
import { askedThemes } from '#ahead/themes-of-request'
import type { Turnout } from '#practice/stretch-areas'

/** Less than so many seconds of play is no practice of a design: our own judgement. */
const leastSeconds = 60

/**
 * What may be chosen in each practice: each design that fits its ground and those expected, with each theme that it
 * serves and the programme asks for. What the coach holds is among them, asked for or not. `themes`: the request's, in its
 * order.
 */
export function offersOf(
  request: AheadRequest,
  themes: readonly AheadTheme[],
): (practice: RequestedPractice, of: Pick<AheadPractice, 'held' | 'comes'>) => readonly Offer[] {
  const isAsked = askedThemes(request)
  const themeAt = new Map(request.themes.map(({ id }, index) => [id, index]))
  const serves = request.designs.map(({ themeIds }) =>
    [...new Set(themeIds)].flatMap((id) => themeAt.get(id) ?? []),
  )
  const known = new Map<string, SeatsOffered | null>()
  return (practice, { held, comes }) => {
    const turnout = turnoutOf(request, comes)
    return request.designs.flatMap((design, index): readonly Offer[] => {
      if (!fitsGround(design, practice.ground)) return []
      const played = seatsFor(index, { turnout, lengthSeconds: practice.lengthSeconds })
      if (!played) return []
      const own = (serves[index] ?? []).filter((theme) => isAsked[theme] || isAsHeld(theme, held))
      const isOwnChoice = held !== null && held.design === index && !own.includes(held.theme)
      return [...own, ...(isOwnChoice ? [held.theme] : [])].map((theme) => ({
        theme,
        design: index,
        ...played,
      }))
    })
  }

  function isAsHeld(theme: number, held: AheadPractice['held']): boolean {
    return held !== null && themeWithAbove(themes, theme).includes(held.theme)
  }

  function seatsFor(
    design: number,
    day: { readonly turnout: Turnout; readonly lengthSeconds: number | null },
  ): SeatsOffered | null {
    const key = `${design} ${day.turnout.present} ${day.turnout.keepersAble} ${day.lengthSeconds}`
    const before = known.get(key)
    if (before !== undefined) return before
    const rounds = roundsFor(request.designs[design]?.rounds ?? [], day.turnout)
    const played = rounds ? seatsOfRounds(rounds, day.lengthSeconds) : null
    const seats = played && played.liveSeconds >= leastSeconds ? played : null
    known.set(key, seats)
    return seats
  }
}

/**
 * As many as are to be expected, in whole players. Where anybody who may keep could come, one is counted on: a goal is
 * planned for, and the day itself does without where nobody comes for it. Common practice, no source.
 */
function turnoutOf({ players }: AheadRequest, comes: readonly number[]): Turnout {
  const sum = (chances: readonly number[]) => chances.reduce((all, chance) => all + chance, 0)
  const present = Math.round(sum(comes))
  const keepers = sum(comes.filter((_, index) => players[index]?.keeps))
  return { present, keepersAble: keepers > 0 ? Math.min(present, Math.max(1, Math.round(keepers))) : 0 }
}

/** Either way round. */
function fitsGround({ lengthM, widthM }: RequestedDesign, ground: GroundSize | null): boolean {
  if (!ground) return true
  const [long, short] = [Math.max(ground.lengthM, ground.widthM), Math.min(ground.lengthM, ground.widthM)]
  return Math.max(lengthM, widthM) <= long && Math.min(lengthM, widthM) <= short
}
