import 'server-only'
import { z } from 'zod'
import { Prisma } from '#data/generated/client'
import type { ClubTx } from '#data/in-club'
import { sql } from '#data/sql'
import type { ChildCopy } from '#rights/child-copy'
import type { PlayerId } from '#squad/player'

const mentionRow = z.object({ where: z.string(), text: z.string() })

/**
 * Texts that people wrote about something else and that hold the child's whole name. An erasure does not change them,
 * since a program cannot tell who is meant: the administrator is shown where they are, to put them right by hand. What
 * was written of another child is that child's, and its text is left out.
 */
export async function listMentions(
  tx: ClubTx,
  { playerId, name }: { readonly playerId: PlayerId; readonly name: string },
): Promise<ChildCopy['mentions']> {
  const club = Prisma.sql`"clubId" = ${tx.clubId}::uuid`
  const names = (column: string) => Prisma.sql`position(lower(${name}) in lower(${Prisma.raw(column)})) > 0`
  return sql(
    tx,
    mentionRow,
    Prisma.sql`
      select 'the title of a practice or match on ' || day as where, title as text from "Session" where ${club} and ${names('title')}
      union all select 'the place of a practice or match on ' || day, place from "Session" where ${club} and ${names('place')}
      union all select 'the name of a design', name from "PracticeDesign" where ${club} and ${names('name')}
      union all select 'the note of the design ' || name, note from "PracticeDesign" where ${club} and ${names('note')}
      union all select 'a coach’s answer in a term’s review', answer from "TermReview" where ${club} and ${names('answer')}
      union all select 'an answer to a flag of another player', '' from "FlagState"
        where ${club} and "playerId" <> ${playerId}::uuid and ${names('"acknowledgedReason"')}
      union all select 'a coach’s note for another family', '' from "FamilyNote"
        where ${club} and "playerId" <> ${playerId}::uuid and ${names('text')}
      union all select 'a request of another family', '' from "ChildRequest"
        where ${club} and "playerId" <> ${playerId}::uuid and ${names('text')}
      union all select 'the answer to another family', '' from "ChildRequest"
        where ${club} and "playerId" <> ${playerId}::uuid and ${names('answer')}
      union all select 'a page confirmed for another family', '' from "FamilyPage"
        where ${club} and "playerId" <> ${playerId}::uuid and ${names('page::text')}
      union all select 'the title of a round of ' || s.day, e.round from "TurnEvent" e join "Session" s
        on s."clubId" = e."clubId" and s.id = e."sessionId" where e.${club} and ${names('e.round')}
      order by 1, 2 limit 200`,
  )
}
