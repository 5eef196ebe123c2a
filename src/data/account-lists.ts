import 'server-only'
import { z } from 'zod'
import { InvariantError } from '#common/result'
import { attendanceOf, columnLineOf, namesOf, roleOf, situationOf } from '#data/enums'
import { Prisma } from '#data/generated/client'
import { noThemeId } from '#data/no-theme'
import type { AccountLine, PresenceAccount } from '#fairness/account'

// The rows of a session travel as a list for each column: half the work of a list for each row, on both sides.

const figures = z.array(z.number())

export const lineLists = z.object({
  playerId: z.array(z.string()),
  role: z.array(z.enum(roleOf)),
  situation: z.array(z.enum(namesOf(situationOf))),
  line: z.array(z.enum(namesOf(columnLineOf))),
  themeId: z.array(z.string()),
  seconds: figures,
  turns: figures,
  fairSeconds: figures,
  fairTurns: figures,
  fullFairSeconds: figures,
  openGoalFairSeconds: figures,
})

export const presenceLists = z.object({
  playerId: z.array(z.string()),
  isMember: z.array(z.boolean()),
  attendance: z.array(z.enum(attendanceOf)),
  liveSeconds: figures,
  turnsPresent: figures,
  longestRestTurns: figures,
})

/** The lists of a schema as one JSON object, made of the rows of a table named `rows`; null when there is none. */
export function listsOf(schema: { readonly shape: object }): Prisma.Sql {
  const lists = Object.keys(schema.shape).map((name) => `'${name}', json_agg(rows."${name}")`)
  return Prisma.raw(`case when count(*) > 0 then json_build_object(${lists.join(', ')}) end`)
}

export function linesOf(lists: z.infer<typeof lineLists> | null): readonly AccountLine[] {
  if (!lists) return []
  return lists.playerId.map((playerId, index) => {
    const themeId = at(lists.themeId, index)
    return {
      playerId,
      role: at(lists.role, index),
      situation: situationOf[at(lists.situation, index)],
      line: columnLineOf[at(lists.line, index)],
      themeId: themeId === noThemeId ? null : themeId,
      seconds: at(lists.seconds, index),
      turns: at(lists.turns, index),
      fairSeconds: at(lists.fairSeconds, index),
      fairTurns: at(lists.fairTurns, index),
      fullFairSeconds: at(lists.fullFairSeconds, index),
      openGoalFairSeconds: at(lists.openGoalFairSeconds, index),
    }
  })
}

export function presencesOf(lists: z.infer<typeof presenceLists> | null): readonly PresenceAccount[] {
  if (!lists) return []
  return lists.playerId.map((playerId, index) => ({
    playerId,
    isMember: at(lists.isMember, index),
    attendance: at(lists.attendance, index),
    liveSeconds: at(lists.liveSeconds, index),
    turnsPresent: at(lists.turnsPresent, index),
    longestRestTurns: at(lists.longestRestTurns, index),
  }))
}

function at<Value>(list: readonly Value[], index: number): Value {
  if (index >= list.length) throw new InvariantError('Lists of one set of rows have one length.', { index })
  return list[index] as Value
}
