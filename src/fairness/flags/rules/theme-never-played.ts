import { measureColumn, withoutTurnGap } from '#fairness/flags/column-finding'
import type { FlagRule } from '#fairness/flags/flag-rule'

/** Waiting through one turn of a theme is nothing yet. */
const leastTurnsPresent = 2

export const rule: FlagRule = {
  name: 'themeNeverPlayed',
  scopes: ['practice'],
  title: 'There for a theme, never played in it',
  sentence: (finding, { themeName }) =>
    `There when “${themeName(finding.subject)}” was on, and waited every time.`,
  cureGroup: 'theme',
  speaksEarly: false,
  sizeIn: 'seconds',
  replaces: ['themeShort'],
  judge: (standing, { policy }) =>
    [...standing.themes]
      .filter(([, figure]) => figure.turnsPresent >= leastTurnsPresent && figure.seconds === 0)
      .map(([subject, figure]) => withoutTurnGap(measureColumn({ figure, policy, subject }))),
}
