import type { Attendance } from '#fairness/account'
import type { FamilySentence, FamilyTopic } from '#fairness/family-sentences'
import type { ThemeMeeting } from '#themes/theme-meetings'
import { AttendancePart } from '#ui/family/attendance-part'
import { doingLabel, familySentenceText, metText, restsOnText } from '#ui/family/family-words'
import { aboutMinutesText } from '#ui/figures/minutes'
import { Empty } from '#ui/page/empty'
import { SectionTitle } from '#ui/page/section-title'
import { words } from '#ui/words'

type FamilyKind = {
  readonly kind: 'practice' | 'match'
  readonly held: number
  readonly written: number
  readonly said: {
    readonly sentences: readonly FamilySentence[]
    readonly did: readonly { readonly topic: FamilyTopic; readonly seconds: number; readonly turns: number }[]
    readonly liveSeconds: number
  } | null
  readonly attendance: readonly {
    readonly sessionId: string
    readonly day: string
    readonly attendance: Attendance | null
  }[]
}

type FamilySquad = {
  readonly squadName: string
  readonly kinds: readonly FamilyKind[]
  readonly themes: readonly {
    readonly name: string
    readonly depth: number
    readonly meeting: ThemeMeeting
  }[]
}

/** One child's season in plain words. Nothing of any other child, nothing that judges how good anyone is. */
export function FamilyBody({ squads }: { readonly squads: readonly FamilySquad[] }) {
  return (
    <>
      {squads.length === 0 ? <Empty>Your child belongs to no squad this season.</Empty> : null}
      {squads.map((squad) => (
        <SquadPart key={squad.squadName} squad={squad} hasName={squads.length > 1} />
      ))}
      <p className="max-w-prose border-t border-rule pt-4 text-soft">
        This page counts turns. It does not say how good anyone is.
      </p>
    </>
  )
}

function SquadPart({ squad, hasName }: { readonly squad: FamilySquad; readonly hasName: boolean }) {
  const sum = (of: 'held' | 'written') => squad.kinds.reduce((total, kind) => total + kind[of], 0)
  return (
    <div className="space-y-8">
      {hasName ? <h2 className="text-xl font-semibold">{squad.squadName}</h2> : null}
      <p className="text-lg">{restsOnText({ held: sum('held'), written: sum('written') })}</p>
      {squad.kinds
        .filter(({ held }) => held > 0)
        .map((kind) => (
          <KindPart key={kind.kind} of={kind} />
        ))}
      <section>
        <SectionTitle>What was practised</SectionTitle>
        {squad.themes.length === 0 ? <p className="text-soft">No theme is written down yet.</p> : null}
        <dl className="max-w-3xl">
          {squad.themes.map(({ name, depth, meeting }) => (
            <div
              key={meeting.themeId}
              style={{ paddingLeft: `${depth * 1.25}rem` }}
              className="border-b border-rule py-2 sm:grid sm:grid-cols-[1fr_1fr] sm:gap-x-4"
            >
              <dt className="font-medium">{name}</dt>
              <dd className="max-sm:text-soft">{metText(meeting)}</dd>
            </div>
          ))}
        </dl>
      </section>
      <section>
        <SectionTitle>Coming along</SectionTitle>
        {squad.kinds.map(({ kind, attendance }) => (
          <AttendancePart key={kind} kind={kind} attendance={attendance} />
        ))}
      </section>
    </div>
  )
}

function KindPart({ of }: { readonly of: FamilyKind }) {
  const { kind, said } = of
  return (
    <section>
      <SectionTitle>{words.kinds[kind]}</SectionTitle>
      {said ? (
        <Said kind={kind} said={said} />
      ) : (
        <p>
          {of.written} of {kind === 'practice' ? words.practices(of.held) : words.matches(of.held)}{' '}
          {of.written === 1 ? 'is' : 'are'} written down. That is not enough to say more.
        </p>
      )}
    </section>
  )
}

function Said({
  kind,
  said,
}: {
  readonly kind: 'practice' | 'match'
  readonly said: NonNullable<FamilyKind['said']>
}) {
  return (
    <>
      <div className="max-w-prose space-y-2 text-lg">
        {said.sentences.map((sentence) => (
          <p key={sentence.topic}>{familySentenceText(sentence, kind)}</p>
        ))}
      </div>
      {said.did.length > 0 ? (
        <dl className="mt-4 max-w-md">
          {said.did.map(({ topic, seconds, turns }) => (
            <div key={topic} className="flex justify-between gap-4 border-b border-rule py-2">
              <dt className="font-medium">{doingLabel[topic]}</dt>
              <dd className="figures text-right">
                {aboutMinutesText(seconds)}
                {kind === 'practice' ? ` in ${words.turns(turns)}` : ''}
                {topic === 'played' ? ` of ${aboutMinutesText(said.liveSeconds)}` : ''}
              </dd>
            </div>
          ))}
        </dl>
      ) : null}
    </>
  )
}
