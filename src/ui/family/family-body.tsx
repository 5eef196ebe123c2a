import type { ReactNode } from 'react'
import { type FamilySquad, FamilySquadPart } from '#ui/family/family-squad-part'
import { askLead, askNobody, lastLine, leftSquad, meanings } from '#ui/family/family-words'
import { TimePatterns } from '#ui/family/time-picture'
import { Details } from '#ui/page/details'

type FamilyBodyProps = {
  readonly squads: readonly FamilySquad[]
  /** Whom to ask, in the club's own words. */
  readonly askWhom: string
  /** The way to ask or object; none where a coach looks. */
  readonly ask?: ReactNode
}

/** One child's season in plain words. Nothing of any other child, nothing that judges how good anyone is. */
export function FamilyBody({ squads, askWhom, ask }: FamilyBodyProps) {
  return (
    <>
      <TimePatterns />
      {squads.length === 0 ? <p className="max-w-prose text-lg">{leftSquad}</p> : null}
      {squads.map((squad) => (
        <FamilySquadPart key={squad.squadId} squad={squad} hasName={squads.length > 1} />
      ))}
      <div>
        <Details summary="What the words mean">
          <dl className="max-w-prose space-y-1.5">
            {meanings.map(({ word, means }) => (
              <div key={word}>
                <dt className="inline font-medium">{word}: </dt>
                <dd className="inline">{means}</dd>
              </div>
            ))}
          </dl>
        </Details>
        <Details summary="How to ask, or to say no">
          <div className="max-w-prose space-y-3">
            <p>{askLead}</p>
            <p className="whitespace-pre-line">{askWhom || askNobody}</p>
            {ask}
          </div>
        </Details>
      </div>
      <p className="max-w-prose border-t border-rule pt-4 text-soft">{lastLine}</p>
    </>
  )
}
