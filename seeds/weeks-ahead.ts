import { designsThatServe } from '#practice/our-designs/designs-that-serve'
import type { ClosedDays } from '#squad/closed-days'
import type { Ground } from '#squad/ground'
import type { PlayerAway } from '#squad/player-away'
import type { ProgrammeBlock } from '#themes/programme-rule'
import { demoSquads, springId } from './club'
import { designId } from './designs'
import { fields } from './fields'
import { demoId } from './ids'
import { playerId } from './names'
import { themeId } from './programme'

const closed = (
  key: string,
  name: string,
  days: Pick<ClosedDays, 'firstDay' | 'lastDay'>,
  squadId: string | null = null,
): ClosedDays => ({ id: demoId(`closed/${key}`), squadId, name, ...days })

/** School holidays, and late in June a fair on the field where the under-tens would practise. */
export const demoClosedDays: readonly ClosedDays[] = [
  closed('autumn', 'Half term', { firstDay: '2025-10-25', lastDay: '2025-11-02' }),
  closed('winter', 'Winter holidays', { firstDay: '2025-12-20', lastDay: '2026-01-04' }),
  closed('february', 'Half term', { firstDay: '2026-02-14', lastDay: '2026-02-22' }),
  closed('easter', 'Spring holidays', { firstDay: '2026-03-28', lastDay: '2026-04-12' }),
  closed('may', 'Half term', { firstDay: '2026-05-25', lastDay: '2026-05-29' }),
  closed('summer', 'Summer holidays', { firstDay: '2026-07-01', lastDay: '2026-08-31' }),
  closed(
    'fair',
    'Fair on the field',
    { firstDay: '2026-06-22', lastDay: '2026-06-23' },
    demoSquads.underTen.id,
  ),
]

/** The cage is too small for some of the club's designs, and one design is too large for the field. */
export const demoGrounds: readonly Ground[] = [
  { place: fields.main, lengthM: 60, widthM: 40 },
  { place: fields.small, lengthM: 34, widthM: 26 },
]

/** Known to be away in June. */
export const demoAway: readonly PlayerAway[] = [
  { id: demoId('away/jiho'), playerId: playerId('jiho'), firstDay: '2026-06-15', lastDay: '2026-06-26' },
  { id: demoId('away/farid'), playerId: playerId('farid'), firstDay: '2026-06-22', lastDay: '2026-06-30' },
]

/** The under-tens end their season with the ball. */
export const demoBlocks: readonly (ProgrammeBlock & { readonly squadId: string; readonly termId: string })[] =
  [
    {
      squadId: demoSquads.underTen.id,
      termId: springId,
      themeId: themeId('attacking'),
      firstWeek: 27,
      lastWeek: 27,
    },
  ]

export const demoThemeDesigns = designsThatServe.map((pair) => ({
  themeId: themeId(pair.themeId),
  designId: designId(pair.designId),
}))
