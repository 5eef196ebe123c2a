'use client'

import { useState } from 'react'
import type { AheadDraft } from '#ahead/draft/ahead-draft'
import type { AheadSolver } from '#ahead/draft/ahead-solver'
import { awayFor, dropPractice, movePractice } from '#ahead/what-if'
import { isDay } from '#common/time'
import type { AheadTerm, NameOfPlace } from '#ui/ahead/ahead-types'
import { moveFault } from '#ui/ahead/move-fault'
import { WhatIfResult } from '#ui/ahead/what-if-result'
import type { WhatIf, WhatIfSends } from '#ui/ahead/what-if-types'
import { formatDay, formatDays } from '#ui/format-day'
import { Button } from '#ui/page/button'
import { fieldLook } from '#ui/page/field'
import { Select } from '#ui/page/select'

type WhatIfPartProps = {
  readonly squadId: string
  readonly term: AheadTerm
  readonly draft: AheadDraft
  readonly solver: AheadSolver
  readonly nameOf: NameOfPlace
  readonly sends: WhatIfSends
}

const kinds = [
  { value: 'move', label: 'A practice is moved' },
  { value: 'drop', label: 'A practice is dropped' },
  { value: 'away', label: 'A player is away' },
]

/** What would become of everyone if a practice were moved or dropped, or a player away: seen before anything is done. */
export function WhatIfPart({ squadId, term, draft, solver, nameOf, sends }: WhatIfPartProps) {
  const practices = draft.asked.practices
  const [kind, setKind] = useState('move')
  const [practiceId, setPracticeId] = useState(practices[0]?.id ?? '')
  const [playerId, setPlayerId] = useState(draft.asked.players[0]?.id ?? '')
  const [from, setFrom] = useState(practices[0]?.day ?? '')
  const [to, setTo] = useState(practices.at(-1)?.day ?? '')
  const [asked, setAsked] = useState<WhatIf | null>(null)
  const own = practices.find(({ id }) => id === practiceId)
  const [fault, setFault] = useState<string | null>(null)
  const see = () => {
    const made = whatIf()
    setFault(typeof made === 'string' ? made : null)
    setAsked(typeof made === 'string' ? null : made)
  }
  return (
    <div className="space-y-4">
      <div className="flex flex-wrap items-end gap-3">
        <Select
          name="what-if"
          label="What if"
          value={kind}
          options={kinds}
          onChange={(event) => setKind(event.target.value)}
        />
        {kind === 'away' ? (
          <Select
            name="what-if-player"
            label="Player"
            value={playerId}
            options={draft.asked.players.map(({ id }, place) => ({ value: id, label: nameOf(place) }))}
            onChange={(event) => setPlayerId(event.target.value)}
          />
        ) : (
          <Select
            name="what-if-practice"
            label="Practice"
            value={practiceId}
            options={practices.map(({ id, day }) => ({ value: id, label: formatDay(day) }))}
            onChange={(event) => setPracticeId(event.target.value)}
          />
        )}
        {kind === 'drop' ? null : (
          <DayField
            name="what-if-from"
            label={kind === 'move' ? 'To the day' : 'From'}
            day={from}
            onChange={setFrom}
          />
        )}
        {kind === 'away' ? <DayField name="what-if-to" label="To" day={to} onChange={setTo} /> : null}
        <Button type="button" weight="plain" onClick={see}>
          See what changes
        </Button>
      </div>
      {fault ? (
        <p role="alert" className="font-medium text-warn">
          {fault}
        </p>
      ) : null}
      {asked ? (
        <WhatIfResult
          key={asked.key}
          asked={asked}
          squadId={squadId}
          base={draft}
          solver={solver}
          nameOf={nameOf}
          sends={sends}
          onClose={() => setAsked(null)}
        />
      ) : null}
    </div>
  )

  function whatIf(): WhatIf | string {
    const { request } = draft
    const key = JSON.stringify([kind, practiceId, playerId, from, to])
    if (kind === 'away') {
      const place = draft.asked.players.findIndex(({ id }) => id === playerId)
      if (!isDay(from) || !isDay(to) || to < from)
        return 'Choose a first day, and a last one that is not before it.'
      const span = { firstDay: from, lastDay: to }
      return {
        key,
        title: `${nameOf(place)} is away ${formatDays(span)}`,
        request: awayFor(request, { playerId, span }),
        deed: { kind: 'away', playerId, ...span },
      }
    }
    const session = term.sessions.find(({ id }) => id === practiceId)
    if (!own || !session) return 'Choose a practice.'
    if (kind === 'drop')
      return {
        key,
        title: `${formatDay(own.day)} is dropped`,
        request: dropPractice(request, own.id),
        deed: { kind: 'drop', sessionId: own.id },
      }
    const cannot = moveFault({ from: own.day, to: from, term })
    if (cannot !== null || !isDay(from)) return cannot ?? 'Choose the day it is moved to.'
    return {
      key,
      title: `${formatDay(own.day)} is moved to ${formatDay(from)}`,
      request: movePractice(request, { practiceId: own.id, day: from }),
      deed: { kind: 'move', session, day: from },
    }
  }
}

type DayFieldProps = {
  readonly name: string
  readonly label: string
  readonly day: string
  readonly onChange: (day: string) => void
}

function DayField({ name, label, day, onChange }: DayFieldProps) {
  return (
    <div>
      <label htmlFor={`field-${name}`} className="block text-sm font-medium text-soft">
        {label}
      </label>
      <input
        id={`field-${name}`}
        type="date"
        value={day}
        className={`${fieldLook} mt-1`}
        onChange={(event) => onChange(event.target.value)}
      />
    </div>
  )
}
