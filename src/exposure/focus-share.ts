import { situationsAt } from '#exposure/situation'
import type { DesignRound } from '#practice/design'
import type { ThemeFocus } from '#themes/theme-focus'

type Rounds = readonly Pick<DesignRound, 'turnCount' | 'turnSeconds' | 'stations'>[]

/**
 * Which part, 0-1, of the time that a design plays is about what a theme is: its roles and, where it names any, its
 * situations. In goal there is no situation: it counts where the theme names the goal. Null: the theme is about anything,
 * or nothing is played.
 */
export function focusShare(rounds: Rounds, { roles, situations }: ThemeFocus): number | null {
  if (roles.length === 0 && situations.length === 0) return null
  let [all, about] = [0, 0]
  for (const { turnCount, turnSeconds, stations } of rounds)
    for (const { attack, defend, keep } of stations) {
      const time = turnCount * turnSeconds
      const situation = situationsAt({ attackers: attack, defenders: defend })
      all += time * (attack + defend + keep)
      for (const [role, seats] of [
        ['attack', attack],
        ['defend', defend],
      ] as const) {
        const own = situation[role]
        const isAbout =
          (roles.length === 0 || roles.includes(role)) &&
          (situations.length === 0 || (own !== null && situations.includes(own)))
        if (isAbout) about += time * seats
      }
      if (roles.includes('keep')) about += time * keep
    }
  return all > 0 ? about / all : null
}
