'use client'

import { useState } from 'react'
import type { AheadEngine, OtherPlan } from '#ahead/draft/ahead-engine'
import { changeTheme } from '#ahead/draft/by-hand'
import { expectedEnd } from '#ahead/expected-end'
import { countInside } from '#ahead/explain/ends-inside'
import { chosenOffer, type SolvedAhead } from '#ahead/plan'
import { firmPractices } from '#ahead/term-plan'
import type { AheadTerm } from '#ui/ahead/ahead-types'
import { practiceDay } from '#ui/ahead/practice-day'
import type { AheadEditing } from '#ui/ahead/use-ahead-draft'
import { useErrand } from '#ui/ahead/use-errand'
import { formatDay } from '#ui/format-day'
import { Button } from '#ui/page/button'
import { Notice } from '#ui/page/notice'
import { Select } from '#ui/page/select'
import { Table } from '#ui/page/table'
import { RunningSearch } from '#ui/planning/running-search'

type OthersPartProps = {
  readonly term: AheadTerm
  readonly editing: AheadEditing
  readonly best: SolvedAhead
  readonly engine: AheadEngine
}

/** Plans nearly as good that begin with another theme, beside each other. */
export function OthersPart({ term, editing, best, engine }: OthersPartProps) {
  const { asked, problem } = editing.draft
  const free = asked.practices.filter(
    ({ id }) => !term.sessions.some((session) => session.id === id && session.isFixed),
  )
  const [practiceId, setPracticeId] = useState(free[0]?.id ?? '')
  const practice = asked.practices.findIndex(({ id }) => id === practiceId)
  const { found, search, hasFailed, run, stop } = useErrand<readonly OtherPlan[]>(problem)
  if (practice < 0) return null
  return (
    <div className="space-y-4">
      <div className="flex flex-wrap items-end gap-3">
        <Select
          name="others-practice"
          label="Another theme on"
          value={practiceId}
          options={free.map(({ id, day }) => ({ value: id, label: formatDay(day) }))}
          onChange={(event) => setPracticeId(event.target.value)}
        />
        <Button
          type="button"
          weight="plain"
          onClick={() => run((watch) => engine.others(problem, { ...watch, solved: best, practice }))}
        >
          Show other plans
        </Button>
      </div>
      {search ? <RunningSearch search={search} says="Planning with other themes" onStop={stop} /> : null}
      {hasFailed ? <Notice>Other plans could not be made on this device.</Notice> : null}
      {found?.length === 0 ? <Notice>No other theme can come then.</Notice> : null}
      {found && found.length > 0 ? (
        <Table
          caption={`Plans side by side, by what ${practiceDay(asked, practice)} is about`}
          head={[
            { key: 'theme', label: 'That practice' },
            { key: 'next', label: 'The next four' },
            { key: 'inside', label: 'End inside' },
            { key: 'costs', label: 'Left over at the end' },
            { key: 'take', label: '' },
          ]}
        >
          <PlanRow solved={best} costs={0} practice={practice} editing={editing} />
          {apart(found).map((other) => (
            <PlanRow
              key={other.theme}
              solved={other.solved}
              costs={other.costs}
              practice={practice}
              editing={editing}
              onTake={() => take(other)}
            />
          ))}
        </Table>
      ) : null}
    </div>
  )

  /** A theme may come as one under it, and then stands there twice. */
  function apart(all: readonly OtherPlan[]): readonly OtherPlan[] {
    const themeOf = ({ solved }: OtherPlan) => chosenOffer(asked, solved.plan.choices, practice)?.theme
    return all.filter((own, index) => all.findIndex((one) => themeOf(one) === themeOf(own)) === index)
  }

  function take({ theme, solved }: OtherPlan): void {
    const { draft } = editing
    editing.ask((request) => changeTheme(request, { draft, practice, theme }), {
      firm: (firm) => new Map([...firm].filter(([id]) => id !== practiceId)),
      choices: solved.plan.choices,
    })
  }
}

type PlanRowProps = {
  readonly solved: SolvedAhead
  readonly costs: number
  readonly practice: number
  readonly editing: AheadEditing
  /** Missing: it is the plan on the page. */
  readonly onTake?: () => void
}

function PlanRow({ solved, costs, practice, editing, onTake }: PlanRowProps) {
  const { asked } = editing.draft
  const nameAt = (at: number) => {
    const offer = chosenOffer(asked, solved.plan.choices, at)
    return asked.themes[offer?.theme ?? -1]?.name ?? ''
  }
  const gaps = expectedEnd(asked, solved.plan).map(({ gap }) => gap)
  return (
    <tr>
      <th scope="row">{nameAt(practice)}</th>
      <td>
        {asked.practices
          .slice(0, firmPractices)
          .map((_, at) => nameAt(at))
          .join(' · ')}
      </td>
      <td>
        {countInside(asked.players, gaps)} of {asked.players.length}
      </td>
      <td>{costsText(costs, onTake === undefined)}</td>
      <td>
        {onTake ? (
          <Button type="button" weight="plain" onClick={onTake}>
            Take this one
          </Button>
        ) : (
          'the plan on this page'
        )}
      </td>
    </tr>
  )
}

function costsText(costs: number, isOwn: boolean): string {
  const whole = Math.round(costs)
  if (isOwn) return '–'
  if (whole === 0) return 'as much'
  return `${Math.abs(whole)} min ${whole > 0 ? 'more' : 'less'}`
}
